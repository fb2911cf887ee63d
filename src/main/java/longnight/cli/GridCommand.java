package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import longnight.report.GridJournal;
import longnight.report.GridPage;
import longnight.report.Outputs;
import longnight.report.Part;
import longnight.scenario.Grid;
import longnight.study.Sweep;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many kits on many nights with many people: one table. */
@Command(
        name = "grid",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class GridCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Option(names = "--out", paramLabel = "TABLE", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--part", paramLabel = "I/N", descriptionKey = "part")
    private @Nullable String partText;

    @Mixin
    private final IndexOption index = new IndexOption();

    @Mixin
    private final Threads threads = new Threads();

    @Override
    public Integer call() throws IOException {
        Part part = part();
        int working = threads.count(spec.commandLine());
        Path table = out == null ? usual(part) : out;
        Outputs.requireFile(table);
        Outputs.requireFile(GridJournal.beside(table));
        index.require(table, spec.commandLine());
        Grid grid = Grid.read(file);

        PrintWriter err = spec.commandLine().getErr();
        Progress progress = new Progress(err);
        try (GridJournal journal = GridJournal.open(table, grid.digest(), Program.fingerprint(), grid.rows(), part)) {
            int resumed = journal.done();
            Sweep.over(
                    grid.rows(),
                    journal::lacks,
                    grid::question,
                    (row, result) -> {
                        journal.add(row, grid.files(row), result);
                        progress.tell(journal.done(), journal.wanted());
                    },
                    working);
            progress.end();
            journal.finish(table);
            index.write(table);
            PrintWriter page = spec.commandLine().getOut();
            page.print(GridPage.done(table, journal.wanted(), resumed));
            page.flush();
        }
        return ExitCode.FINE;
    }

    private Part part() {
        try {
            return partText == null ? Part.WHOLE : Part.parse(partText);
        } catch (IllegalArgumentException fault) {
            throw new ParameterException(spec.commandLine(), String.valueOf(fault.getMessage()));
        }
    }

    /** Beside where the caller stands, as with other verbs. */
    private Path usual(Part part) {
        Path last = file.getFileName();
        String name = last == null ? "grid" : last.toString();
        int dot = name.lastIndexOf('.');
        String whole = dot > 0 ? name.substring(0, dot) : name;
        return Path.of(
                part.equals(Part.WHOLE) ? whole + ".csv" : whole + "-" + part.number() + "-of-" + part.of() + ".csv");
    }
}
