package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.report.Console;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.report.ReplayFiles;
import longnight.report.ReplayPage;
import longnight.scenario.Instead;
import longnight.scenario.NightLogs;
import longnight.scenario.ScenarioReader;
import longnight.study.Replay;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
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
    private static final String STANDARD_OUTPUT = "-";

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

    @Option(names = "--threads", paramLabel = "N", descriptionKey = "threads")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", paramLabel = "FILE", descriptionKey = "json")
    private @Nullable String json;

    @Override
    public Integer call() throws IOException {
        if (threads < 1 || threads > 256) {
            throw fault("fault.range", "--threads", String.valueOf(threads), "1", "256");
        }
        boolean jsonAlone = STANDARD_OUTPUT.equals(json);
        Path folder = out == null && !jsonAlone ? defaultFolder() : out;
        if (folder != null) {
            Outputs.requireFolder(folder, ReplayFiles.NAMES);
        }
        Path jsonFile = json == null || jsonAlone ? null : Path.of(json);
        if (jsonFile != null) {
            Outputs.requireFile(jsonFile);
        }
        Scenario question = ScenarioReader.read(night, new Instead(person, kit)).scenario();
        if (!Replay.canRun(question)) {
            throw fault("fault.replay.laboratory", night.toString());
        }
        Replay answer = Replay.of(question, NightLogs.read(log, question), NumericalSettings.standard(), threads);

        PrintWriter page = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Outputs.@Nullable Written written = folder == null ? null : Outputs.write(ReplayFiles.of(answer), folder);
        if (jsonFile != null) {
            Outputs.write(ReplayFiles.json(answer), jsonFile);
        }
        page.print(jsonAlone ? ReplayFiles.json(answer) : ReplayPage.text(answer));
        if (written != null && folder != null) {
            if (!jsonAlone) {
                page.print(Console.files(folder, written));
            }
            if (written.note() != null) {
                err.println("longnight: " + written.note());
            }
        }
        page.flush();
        err.flush();
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
