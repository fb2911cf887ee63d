package longnight.cli;

import longnight.report.Prose;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How many nights are worked out at once. Results do not depend on it. */
final class Threads {
    private static final int MOST = 512;

    @Option(names = "--threads", paramLabel = "N", descriptionKey = "threads")
    private @Nullable Integer threads;

    /** As many as asked for; else as many as the machine has processors. */
    int count(CommandLine command) {
        if (threads == null) {
            return Runtime.getRuntime().availableProcessors();
        }
        if (threads < 1 || threads > MOST) {
            throw new ParameterException(
                    command, Prose.text("fault.threads", String.valueOf(threads), String.valueOf(MOST)));
        }
        return threads;
    }
}
