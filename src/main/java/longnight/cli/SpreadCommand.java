package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import longnight.night.ModelRange;
import longnight.night.Scenario;
import longnight.quantity.Dimension;
import longnight.report.Prose;
import longnight.report.SpreadFiles;
import longnight.report.SpreadJournal;
import longnight.report.SpreadJson;
import longnight.report.SpreadPage;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.Doubt;
import longnight.study.ForecastError;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadQuestion;
import longnight.study.SpreadStudy;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How far a night's answer is open, and what opens it. */
@Command(
        name = "spread",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class SpreadCommand implements Callable<Integer> {
    private static final String VERB = "spread";
    private static final double MOST_COLDER = 20;
    private static final double MOST_WINDIER = 3;
    private static final double MOST_AIR_ERROR = 5;
    private static final double MOST_WIND_ERROR = 1;
    private static final int MOST_DRAWS = 16_384;

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "NIGHT", descriptionKey = "NIGHT")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Option(names = "--over", paramLabel = "WHAT", split = ",", descriptionKey = "over")
    private List<String> over = List.of();

    @Mixin
    private final PeopleOptions people = new PeopleOptions();

    @Option(names = "--air-error", paramLabel = "KELVIN", descriptionKey = "air-error")
    private @Nullable String airError;

    @Option(names = "--wind-error", paramLabel = "SHARE", descriptionKey = "wind-error")
    private @Nullable String windError;

    @Option(names = "--colder", paramLabel = "KELVIN", descriptionKey = "colder")
    private @Nullable String colder;

    @Option(names = "--windier", paramLabel = "SHARE", descriptionKey = "windier")
    private @Nullable String windier;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "draws")
    private int draws = SpreadQuestion.USUAL_MOST;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "seed")
    private long seed = 1;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private @Nullable Path person;

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private @Nullable Path kit;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption units = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        Set<Doubt> doubts = doubts();
        if (draws < SpreadQuestion.FEWEST || draws > MOST_DRAWS) {
            throw fault(
                    "fault.range",
                    "--draws",
                    String.valueOf(draws),
                    String.valueOf(SpreadQuestion.FEWEST),
                    String.valueOf(MOST_DRAWS));
        }
        people.read(doubts.contains(Doubt.PEOPLE));
        ForecastError forecast = forecast(doubts.contains(Doubt.FORECAST));
        double kelvin =
                amount("--colder", colder, Dimension.TEMPERATURE_DIFFERENCE, SpreadQuestion.USUAL_COLDER, MOST_COLDER);
        double wind = amount("--windier", windier, Dimension.FRACTION, SpreadQuestion.USUAL_WINDIER, MOST_WINDIER);
        int together = threads.count(spec.commandLine());
        to.require(OutdoorNight.folder(file, VERB), SpreadFiles.NAMES);
        Instead instead = new Instead(person, kit);
        Scenario night = OutdoorNight.read(file, instead, spec.commandLine());
        SpreadQuestion question =
                new SpreadQuestion(night, doubts, people.of(night), forecast, kelvin, wind, draws, seed);
        if (!question.isWithinTheModel()) {
            throw fault(
                    "fault.spread.air",
                    file.toString(),
                    String.format(Locale.ROOT, "%.1f", question.coldestAir()),
                    String.format(Locale.ROOT, "%.1f", question.warmestAir()),
                    String.valueOf((int) ModelRange.COLDEST_AIR),
                    String.valueOf((int) ModelRange.WARMEST_AIR));
        }
        @Nullable Path folder = to.folder();
        if (folder == null) { // the JSON alone: nothing is written, so nothing is kept
            deliver(SpreadStudy.of(question, together));
            return ExitCode.FINE;
        }
        String inputs = ScenarioReader.digest(file, instead);
        try (SpreadJournal journal = SpreadJournal.open(folder, inputs, Program.fingerprint(), question)) {
            int known = journal.size();
            if (known > 0) {
                spec.commandLine().getErr().println(Prose.text("spread.resumed", String.valueOf(known)));
                spec.commandLine().getErr().flush();
            }
            Progress progress = new Progress(spec.commandLine().getErr());
            SpreadAnswer answer = SpreadStudy.of(question, journal.telling(progress::tell), together);
            progress.end();
            deliver(answer);
            journal.finish();
        }
        return ExitCode.FINE;
    }

    private void deliver(SpreadAnswer answer) throws IOException {
        to.write(
                spec.commandLine(),
                SpreadFiles.of(answer, units.units()),
                SpreadPage.page(answer, units.units()),
                () -> SpreadJson.text(answer),
                () -> "");
    }

    private Set<Doubt> doubts() {
        if (over.isEmpty()) {
            return EnumSet.allOf(Doubt.class);
        }
        List<String> words = Stream.of(Doubt.values()).map(SpreadCommand::word).toList();
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        for (String each : over) {
            doubts.add(Doubt.valueOf(Words.oneOf("--over", each, words, spec).toUpperCase(Locale.ROOT)));
        }
        return doubts;
    }

    private static String word(Doubt doubt) {
        return doubt.name().toLowerCase(Locale.ROOT);
    }

    private ForecastError forecast(boolean used) {
        if (!used && (airError != null || windError != null)) {
            throw fault("fault.spread.unused", airError != null ? "--air-error" : "--wind-error", word(Doubt.FORECAST));
        }
        ForecastError error = ForecastError.usual();
        if (airError != null) {
            error = error.withAir(ForecastError.Part.of(
                    amount("--air-error", airError, Dimension.TEMPERATURE_DIFFERENCE, 0, MOST_AIR_ERROR)));
        }
        if (windError != null) {
            error = error.withWind(
                    ForecastError.Part.of(amount("--wind-error", windError, Dimension.FRACTION, 0, MOST_WIND_ERROR)));
        }
        return error;
    }

    private double amount(String option, @Nullable String text, Dimension dimension, double usual, double most) {
        return text == null ? usual : Amounts.between(option, text, dimension, 0, most, spec);
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }
}
