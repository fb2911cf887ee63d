package longnight.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The program as people get it, in this process: what it said and with which code it ended. */
record Session(int code, String out, String err) {
    static Session of(String... args) {
        return of(Main.commandLine(), args);
    }

    /** With a person who types these lines. */
    static Session typing(String lines, String... args) {
        CommandLine line = Main.commandLine();
        BufferedReader keys = new BufferedReader(new StringReader(lines));
        CommandLine start = new CommandLine(new StartCommand(() -> keys))
                .setExecutionExceptionHandler(line.getExecutionExceptionHandler())
                .setExitCodeExceptionMapper(line.getExitCodeExceptionMapper());
        return of(start, args);
    }

    private static Session of(CommandLine line, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        int code = Main.run(line, args);
        return new Session(code, out.toString(), err.toString());
    }

    /** Broken lines made whole. */
    static String flat(@Nullable String text) {
        return String.valueOf(text).replaceAll("\\s+", " ");
    }
}
