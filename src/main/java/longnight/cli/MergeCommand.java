package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longnight.report.GridPage;
import longnight.report.GridParts;
import longnight.report.Outputs;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The parts of a grid, worked out here and there, in one table. */
@Command(
        name = "merge",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class MergeCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "PART", descriptionKey = "PART")
    private final List<Path> parts = new ArrayList<>();

    @Option(names = "--out", paramLabel = "TABLE", descriptionKey = "out", required = true)
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path out;

    @Mixin
    private final IndexOption index = new IndexOption();

    @Override
    public Integer call() throws IOException {
        Outputs.requireFile(out);
        index.require(out, spec.commandLine());
        int rows = GridParts.join(parts, out);
        index.write(out);
        PrintWriter page = spec.commandLine().getOut();
        page.print(GridPage.merged(out, rows, parts.size()));
        page.flush();
        return ExitCode.FINE;
    }
}
