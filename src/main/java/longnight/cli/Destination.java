package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import longnight.report.Bundle;
import longnight.report.Console;
import longnight.report.Outputs;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Where an answer goes: a folder of files, a JSON file, and the page on the terminal or the JSON in its place. */
final class Destination {
    private static final String STANDARD_OUTPUT = "-";

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", paramLabel = "FILE", descriptionKey = "json")
    private @Nullable String json;

    private @Nullable Path folder;
    private @Nullable Path jsonFile;

    /**
     * Refuses what cannot be written, before any work is done.
     *
     * @param usual folder when none is named and the JSON does not stand alone
     * @param names files to be written into the folder
     */
    void require(Path usual, List<String> names) throws IOException {
        folder = out == null && !isJsonAlone() ? usual : out;
        if (folder != null) {
            Outputs.requireFolder(folder, names);
        }
        jsonFile = json == null || isJsonAlone() ? null : Path.of(json);
        if (jsonFile != null) {
            Outputs.requireFile(jsonFile);
        }
    }

    /** The folder that will be written; null for none. Known once {@link #require} was asked. */
    @Nullable
    Path folder() {
        return folder;
    }

    /** The folder that will be written, for files that name others from where they lie; the usual one when none will. */
    Path folder(Path usual) {
        return folder == null ? usual : folder;
    }

    private boolean isJsonAlone() {
        return STANDARD_OUTPUT.equals(json);
    }

    /**
     * Writes an answer everywhere it is wanted.
     *
     * @param more told below the page, or as an aside when the JSON stands alone; asked for after the files are written
     */
    void write(CommandLine command, Bundle bundle, String page, Supplier<String> jsonText, Supplier<String> more)
            throws IOException {
        PrintWriter to = command.getOut();
        PrintWriter err = command.getErr();
        Outputs.@Nullable Written written = folder == null ? null : Outputs.write(bundle, folder);
        if (jsonFile != null) {
            Outputs.write(jsonText.get(), jsonFile);
        }
        to.print(isJsonAlone() ? jsonText.get() : page);
        (isJsonAlone() ? err : to).print(more.get());
        if (written != null && folder != null) {
            if (!isJsonAlone()) {
                to.print(Console.files(folder, written));
            }
            if (written.note() != null) {
                err.println("longnight: " + written.note());
            }
        }
        to.flush();
        err.flush();
    }
}
