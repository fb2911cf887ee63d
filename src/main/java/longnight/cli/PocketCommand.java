package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import longnight.night.Scenario;
import longnight.report.Paper;
import longnight.report.PocketFiles;
import longnight.report.Prose;
import longnight.scenario.Gear;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.Line;
import longnight.study.People;
import longnight.study.Pocket;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One night on one sheet of paper. */
@Command(
        name = "pocket",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class PocketCommand implements Callable<Integer> {
    private static final String VERB = "pocket";
    private static final Line LINE = new Line(Line.Measure.DEMAND, 2);

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "NIGHT", descriptionKey = "NIGHT")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private List<Path> people = List.of();

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private @Nullable Path kit;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            descriptionKey = "paper",
            defaultValue = "a4",
            converter = Papers.class,
            completionCandidates = Papers.class)
    private Paper paper = Paper.A4;

    @Option(names = "--date", paramLabel = "DAY", descriptionKey = "date")
    private @Nullable String date;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        @Nullable LocalDate day = day();
        if (people.size() > 2) {
            throw new ParameterException(
                    spec.commandLine(), Prose.text("fault.persons", String.valueOf(people.size())));
        }
        int together = threads.count(spec.commandLine());
        to.require(OutdoorNight.folder(file, VERB), PocketFiles.NAMES);
        Instead instead = new Instead(people.isEmpty() ? null : people.get(0), kit);
        Scenario night = OutdoorNight.read(file, instead, spec.commandLine());
        OutdoorNight.requireWindow(night, LINE, file, spec.commandLine());
        Pocket pocket = pocket(night, ScenarioReader.gear(file, instead), together);
        to.write(
                spec.commandLine(),
                PocketFiles.of(pocket, shown.units(), paper, day),
                PocketFiles.page(pocket, shown.units(), paper),
                () -> PocketFiles.json(pocket),
                () -> "");
        return ExitCode.FINE;
    }

    private Pocket pocket(Scenario night, Gear gear, int together) {
        if (people.size() < 2) {
            return Pocket.of(
                    night, People.smallAndLean(Prose.text("coldest.weak")), gear.pieces(), gear.pads(), together);
        }
        Scenario other = OutdoorNight.read(file, new Instead(people.get(1), kit), spec.commandLine());
        return Pocket.of(night, other.person(), gear.pieces(), gear.pads(), together);
    }

    private @Nullable LocalDate day() {
        try {
            return date == null ? null : LocalDate.parse(date);
        } catch (DateTimeParseException fault) {
            throw new ParameterException(spec.commandLine(), Prose.text("fault.date", String.valueOf(date)));
        }
    }

    /** Words as they are typed. */
    static final class Papers implements ITypeConverter<Paper>, Iterable<String> {
        private static final List<String> WORDS = Stream.of(Paper.values())
                .map(paper -> paper.name().toLowerCase(Locale.ROOT))
                .toList();

        @Override
        public Iterator<String> iterator() {
            return WORDS.iterator();
        }

        @Override
        public Paper convert(String word) {
            return Paper.valueOf(Words.oneOf(word, WORDS).toUpperCase(Locale.ROOT));
        }
    }
}
