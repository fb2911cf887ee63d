package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.report.Prose;
import longnight.report.ReplayFiles;
import longnight.report.ReplayPage;
import longnight.scenario.Instead;
import longnight.scenario.NightLogs;
import longnight.scenario.ScenarioReader;
import longnight.study.Replay;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A night and its log in; the two side by side and the person's own heat production out. */
@Command(
        name = "replay",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class ReplayCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "NIGHT", descriptionKey = "NIGHT")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path night;

    @Parameters(index = "1", paramLabel = "LOG", descriptionKey = "LOG")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path log;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private @Nullable Path person;

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private @Nullable Path kit;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        int working = threads.count(spec.commandLine());
        to.require(defaultFolder(), ReplayFiles.NAMES);
        Scenario question = ScenarioReader.read(night, new Instead(person, kit)).scenario();
        if (!Replay.canRun(question)) {
            throw fault("fault.replay.laboratory", night.toString());
        }
        Replay answer = Replay.of(question, NightLogs.read(log, question), NumericalSettings.standard(), working);

        to.write(
                spec.commandLine(),
                ReplayFiles.of(answer, shown.units()),
                ReplayPage.text(answer, shown.units()),
                () -> ReplayFiles.json(answer),
                () -> "");
        return ExitCode.FINE;
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }

    private Path defaultFolder() {
        String name = String.valueOf(log.getFileName());
        int dot = name.lastIndexOf('.');
        return Path.of((dot > 0 ? name.substring(0, dot) : name) + "-replay");
    }
}
