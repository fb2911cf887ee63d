package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import longnight.night.Scenario;
import longnight.report.ColdestFiles;
import longnight.report.ColdestJson;
import longnight.report.ColdestPage;
import longnight.report.Prose;
import longnight.scenario.Instead;
import longnight.study.Coldest;
import longnight.study.Draws;
import longnight.study.Line;
import longnight.study.People;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How cold a night a kit carries. */
@Command(
        name = "coldest",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class ColdestCommand implements Callable<Integer> {
    private static final String VERB = "coldest";

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "NIGHT", descriptionKey = "NIGHT")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @ArgGroup
    private @Nullable LineOptions line;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private List<Path> people = List.of();

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private @Nullable Path kit;

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
        Line most = LineOptions.line(line, spec);
        if (people.size() > 2) {
            throw new ParameterException(
                    spec.commandLine(), Prose.text("fault.persons", String.valueOf(people.size())));
        }
        drawn.check(spec.commandLine());
        int together = threads.count(spec.commandLine());
        to.require(OutdoorNight.folder(file, VERB), ColdestFiles.NAMES);
        Scenario night =
                OutdoorNight.read(file, new Instead(people.isEmpty() ? null : people.get(0), kit), spec.commandLine());
        Coldest coldest = coldest(night, most, together);
        to.write(
                spec.commandLine(),
                ColdestFiles.of(coldest, shown.units()),
                ColdestPage.page(coldest, shown.units()),
                () -> ColdestJson.text(coldest),
                () -> "");
        return ExitCode.FINE;
    }

    private Coldest coldest(Scenario night, Line most, int together) {
        OutdoorNight.requireWindow(night, most, file, spec.commandLine());
        @Nullable Draws draws = drawn.draws(Coldest.DRAWS);
        if (people.size() < 2) {
            return Coldest.of(night, People.smallAndLean(Prose.text("coldest.weak")), most, draws, together);
        }
        Scenario other = OutdoorNight.read(file, new Instead(people.get(1), kit), spec.commandLine());
        return Coldest.of(night, other.person(), most, draws, together);
    }
}
