package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longnight.night.ModelRange;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import longnight.report.LeastJson;
import longnight.report.LeastPage;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.scenario.Gear;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.Least;
import longnight.study.LeastAnswer;
import longnight.study.LeastQuestion;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The lightest kit from a wardrobe that holds. */
@Command(
        name = "least",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class LeastCommand implements Callable<Integer> {
    private static final Path FOLDER = Path.of("least-out");
    private static final double MOST_DEMAND = 2;
    private static final double MOST_COLDER = 40;
    private static final int OTHERS = 5;
    private static final int FEWEST_NIGHTS = 1000;
    /** Shifts for the front, colder is positive [K]. */
    private static final List<Double> FRONT = List.of(-9.0, -6.0, -3.0, 0.0, 3.0, 6.0);

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "NIGHT", descriptionKey = "NIGHT")
    private final List<Path> nights = new ArrayList<>();

    @Option(names = "--wardrobe", required = true, paramLabel = "FILE", descriptionKey = "wardrobe")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path wardrobe;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private final List<Path> people = new ArrayList<>();

    @Option(names = "--demand", paramLabel = "X", descriptionKey = "demand")
    private double demand = MOST_DEMAND;

    @Option(names = "--colder", paramLabel = "KELVIN", descriptionKey = "colder")
    private @Nullable String colder;

    @Option(names = "--front", descriptionKey = "front")
    private boolean front;

    @Option(names = "--most-nights", paramLabel = "N", descriptionKey = "most-nights")
    private int mostNights = 200_000;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        double kelvin = colder();
        if (!(demand > 0 && demand <= MOST_DEMAND)) {
            throw fault("fault.least.demand", String.valueOf(demand));
        }
        if (mostNights < FEWEST_NIGHTS) {
            throw fault("fault.least.nights", String.valueOf(mostNights));
        }
        int working = threads.count(spec.commandLine());
        to.require(FOLDER, Outputs.LEAST);
        Gear gear = ScenarioReader.wardrobe(wardrobe);
        List<Scenario> questions = questions(kelvin);
        LeastAnswer answer = Least.of(new LeastQuestion(
                questions,
                gear.pieces(),
                gear.pads(),
                demand,
                kelvin,
                OTHERS,
                NumericalSettings.standard(),
                working,
                mostNights,
                front ? reachable(questions, kelvin) : List.of()));
        to.write(
                spec.commandLine(),
                Outputs.of(answer, shown.units()),
                LeastPage.page(answer, shown.units()),
                () -> LeastJson.text(answer),
                () -> "");
        return ExitCode.FINE;
    }

    private List<Scenario> questions(double kelvin) {
        List<Scenario> questions = new ArrayList<>();
        List<@Nullable Path> who =
                people.isEmpty() ? java.util.Collections.singletonList(null) : new ArrayList<>(people);
        for (Path night : nights) {
            for (@Nullable Path person : who) {
                Scenario question =
                        ScenarioReader.read(night, new Instead(person, null)).scenario();
                if (!Least.isChoosable(question)) {
                    throw fault("fault.least.laboratory", night.toString());
                }
                if (!question.limits().isEmpty()) {
                    throw fault("fault.least.outside", night.toString(), String.join("; ", question.limits()));
                }
                if (Least.coldest(question) - kelvin < ModelRange.COLDEST_AIR) {
                    throw fault("fault.least.cold", String.valueOf(colder), String.valueOf(ModelRange.COLDEST_AIR));
                }
                questions.add(question);
            }
        }
        return questions;
    }

    /** Shifts that stay within the model's range. */
    private static List<Double> reachable(List<Scenario> questions, double kelvin) {
        double coldest = questions.stream().mapToDouble(Least::coldest).min().orElseThrow();
        return FRONT.stream()
                .filter(shift -> coldest - kelvin - shift >= ModelRange.COLDEST_AIR)
                .toList();
    }

    private double colder() {
        if (colder == null) {
            return 0;
        }
        double kelvin;
        try {
            kelvin = Quantities.parse(colder, Dimension.TEMPERATURE_DIFFERENCE);
        } catch (QuantityFault fault) {
            throw new ParameterException(spec.commandLine(), "--colder: " + fault.getMessage(), fault);
        }
        if (!(kelvin >= 0 && kelvin <= MOST_COLDER)) {
            throw fault("fault.least.colder", colder);
        }
        return kelvin;
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }
}
