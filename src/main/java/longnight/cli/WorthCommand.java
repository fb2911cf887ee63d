package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.report.WorthFiles;
import longnight.report.WorthJson;
import longnight.report.WorthPage;
import longnight.scenario.Gear;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.Line;
import longnight.study.Worth;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What each change is worth. */
@Command(
        name = "worth",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class WorthCommand implements Callable<Integer> {
    private static final String VERB = "worth";

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "NIGHT", descriptionKey = "NIGHT")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @ArgGroup
    private @Nullable LineOptions line;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private @Nullable Path person;

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
        drawn.check(spec.commandLine());
        int together = threads.count(spec.commandLine());
        to.require(OutdoorNight.folder(file, VERB), WorthFiles.NAMES);
        Instead instead = new Instead(person, kit);
        Scenario night = OutdoorNight.read(file, instead, spec.commandLine());
        OutdoorNight.requireWindow(night, most, file, spec.commandLine());
        Gear gear = ScenarioReader.gear(file, instead);
        Worth worth = Worth.of(
                night,
                gear.pieces(),
                gear.pads(),
                most,
                NumericalSettings.standard(),
                drawn.draws(Worth.DRAWS),
                together);
        to.write(
                spec.commandLine(),
                WorthFiles.of(worth, shown.units()),
                WorthPage.page(worth, shown.units()),
                () -> WorthJson.text(worth),
                () -> "");
        return ExitCode.FINE;
    }
}
