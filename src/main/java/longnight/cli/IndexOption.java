package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import longnight.report.GridPage;
import longnight.report.Outputs;
import longnight.report.Prose;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A page for browsers beside a table of many nights. */
final class IndexOption {
    @Option(names = "--index", paramLabel = "FILE", descriptionKey = "index")
    private @Nullable Path index;

    /** Refuses what cannot be written, before any work is done. */
    void require(Path table, CommandLine command) throws IOException {
        if (index == null) {
            return;
        }
        if (index.toAbsolutePath().normalize().equals(table.toAbsolutePath().normalize())) {
            throw new ParameterException(command, Prose.text("fault.index", index.toString()));
        }
        Outputs.requireFile(index);
    }

    /** Writes it from the table, where it is wanted. */
    void write(Path table) throws IOException {
        if (index != null) {
            Outputs.write(GridPage.index(table), index);
        }
    }
}
