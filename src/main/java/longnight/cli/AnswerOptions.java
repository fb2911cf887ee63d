package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import longnight.report.Bundle;
import longnight.report.Console;
import longnight.report.Outputs;
import longnight.report.Prose;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where an answer goes and how many threads work on it: the same for every verb that runs many nights. */
final class AnswerOptions {
    private static final String STANDARD_OUTPUT = "-";
    private static final int MOST_THREADS = 64;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", paramLabel = "FILE", descriptionKey = "json")
    private @Nullable String json;

    @Option(names = "--threads", paramLabel = "N", descriptionKey = "threads")
    private @Nullable Integer threads;

    /** How many threads may work. */
    int threads() {
        if (threads == null) {
            return Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw new ParameterException(
                    spec.commandLine(),
                    Prose.text("fault.threads", String.valueOf(threads), String.valueOf(MOST_THREADS)));
        }
        return threads;
    }

    /**
     * Refuses places that cannot take the answer, before any work is done.
     *
     * @param input file whose name the folder takes when none was said
     * @param verb  that is appended to it
     * @param names of files that the folder will hold
     */
    void require(Path input, String verb, List<String> names) throws IOException {
        threads();
        @Nullable Path folder = folder(input, verb);
        if (folder != null) {
            Outputs.requireFolder(folder, names);
        }
        if (json != null && !jsonAlone()) {
            Outputs.requireFile(Path.of(json));
        }
    }

    /** Writes the folder and the JSON, and prints the page, or the JSON alone. */
    void deliver(Path input, String verb, Bundle bundle, String page, String data) throws IOException {
        PrintWriter console = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        @Nullable Path folder = folder(input, verb);
        Outputs.@Nullable Written written = folder == null ? null : Outputs.write(bundle, folder);
        if (json != null && !jsonAlone()) {
            Outputs.write(data, Path.of(json));
        }
        console.print(jsonAlone() ? data : page);
        if (written != null && folder != null) {
            if (!jsonAlone()) {
                console.print(Console.files(folder, written));
            }
            if (written.note() != null) {
                err.println("longnight: " + written.note());
            }
        }
        console.flush();
        err.flush();
    }

    private boolean jsonAlone() {
        return STANDARD_OUTPUT.equals(json);
    }

    /** Beside where the caller stands, not beside the file: the file's folder may be shared or read-only. */
    private @Nullable Path folder(Path input, String verb) {
        if (out != null || jsonAlone()) {
            return out;
        }
        Path last = input.getFileName();
        String name = last == null ? "night" : last.toString();
        int dot = name.lastIndexOf('.');
        return Path.of((dot > 0 ? name.substring(0, dot) : name) + "-" + verb);
    }
}
