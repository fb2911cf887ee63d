package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longnight.night.Scenario;
import longnight.report.CompareJson;
import longnight.report.ComparePage;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Comparison.Varied;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A few nights, kits or people on the same axes. */
@Command(
        name = "compare",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class CompareCommand implements Callable<Integer> {
    private static final Path FOLDER = Path.of("compare-out");

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "NIGHT", descriptionKey = "NIGHT")
    private final List<Path> nights = new ArrayList<>();

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private final List<Path> kits = new ArrayList<>();

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private final List<Path> people = new ArrayList<>();

    @Mixin
    private final BandOptions drawn = new BandOptions();

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Mixin
    private final Threads threads = new Threads();

    @Override
    public Integer call() throws IOException {
        Varied varied = varied();
        drawn.check(spec.commandLine());
        int working = threads.count(spec.commandLine());
        to.require(FOLDER, Outputs.COMPARE);
        List<Path> files = files(varied);
        List<Scenario> questions = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            Instead instead = new Instead(at(people, i), at(kits, i));
            questions.add(ScenarioReader.read(nights.get(nights.size() == 1 ? 0 : i), instead)
                    .scenario());
        }
        Comparison.Answer answer = Comparison.of(
                varied, names(varied, questions, files), questions, drawn.draws(ComparedBand.DRAWS), working);
        to.write(
                spec.commandLine(),
                Outputs.of(answer, shown.units()),
                ComparePage.page(answer, shown.units()),
                () -> CompareJson.text(answer),
                () -> "");
        return ExitCode.FINE;
    }

    /** The one of several, the same one for all, or none. */
    private static @Nullable Path at(List<Path> files, int index) {
        return files.isEmpty() ? null : files.get(files.size() == 1 ? 0 : index);
    }

    private List<Path> files(Varied varied) {
        return switch (varied) {
            case NIGHTS -> nights;
            case KITS -> kits;
            case PEOPLE -> people;
        };
    }

    private Varied varied() {
        List<Varied> several = Stream.of(Varied.values())
                .filter(which -> files(which).size() > 1)
                .toList();
        if (several.size() != 1) {
            throw fault(several.isEmpty() ? "fault.compare.one" : "fault.compare.two");
        }
        Varied varied = several.get(0);
        if (files(varied).size() > Comparison.MOST) {
            throw fault("fault.compare.many", String.valueOf(files(varied).size()), String.valueOf(Comparison.MOST));
        }
        return varied;
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }

    /** Names that tell those compared apart; the file's name helps where the names in the files are the same. */
    private List<String> names(Varied varied, List<Scenario> questions, List<Path> files) {
        // a title speaks of the night's own kit and person
        boolean exchanged = varied == Varied.NIGHTS && !(kits.isEmpty() && people.isEmpty());
        List<String> plain = questions.stream()
                .map(question -> exchanged ? question.nightName() : varied.nameOf(question))
                .toList();
        return IntStream.range(0, plain.size())
                .mapToObj(i -> plain.indexOf(plain.get(i)) == plain.lastIndexOf(plain.get(i))
                        ? plain.get(i)
                        : plain.get(i) + " (" + files.get(i).getFileName() + ")")
                .toList();
    }
}
