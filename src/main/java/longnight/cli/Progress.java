package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import longnight.report.Prose;

/** How far a long run has come, on one line that is written over; nothing at all where nobody sits in front of it. */
final class Progress {
    private static final long SELDOM = 500; // ms

    private final PrintWriter err;
    private final boolean seen;
    private long last;

    Progress(PrintWriter err) {
        this.err = err;
        this.seen = isTerminal();
    }

    void tell(int done, int of) {
        say(Prose.text("grid.progress", String.valueOf(done), String.valueOf(of)));
    }

    /** Where nobody knows how many there will be. */
    void tell(int done) {
        say(Prose.text("spread.progress", String.valueOf(done)));
    }

    private synchronized void say(String text) {
        long now = System.currentTimeMillis();
        if (seen && now - last >= SELDOM) {
            last = now;
            err.print("\r" + text);
            err.flush();
        }
    }

    /** Clears the line. */
    synchronized void end() {
        if (seen && last > 0) {
            err.print("\r" + " ".repeat(60) + "\r");
            err.flush();
        }
    }

    /** Whether the error stream ends at a terminal. The system is asked where it tells; elsewhere Java knows of all streams together. */
    private static boolean isTerminal() {
        Path stream = Path.of("/proc/self/fd/2");
        try {
            if (Files.isSymbolicLink(stream)) {
                String end = Files.readSymbolicLink(stream).toString();
                return end.startsWith("/dev/pts/") || end.startsWith("/dev/tty") || end.equals("/dev/console");
            }
        } catch (IOException fault) {
            return false;
        }
        return System.console() != null;
    }
}
