package longnight.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import longnight.night.NightEngine;
import longnight.report.DataFault;
import longnight.report.Prose;
import longnight.report.UnwritableException;
import longnight.scenario.InputFault;
import longnight.scenario.ScenarioReader;
import longnight.study.Band;
import longnight.study.Draws;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The top command. It does nothing by itself; each verb is a subcommand with one question to answer. */
@Command(
        name = "longnight",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    private Main() {}

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        System.exit(run(args));
    }

    static int run(String... args) {
        return run(commandLine(), args);
    }

    static int run(CommandLine commandLine, String... args) {
        try {
            return commandLine.execute(args);
        } catch (Error fault) { // the parser hands on exceptions, but lets errors through
            return report(fault, commandLine.getErr());
        }
    }

    static CommandLine commandLine() {
        return commandLine(new NightCommand(
                file -> ScenarioReader.read(file).scenario(),
                NightEngine::run,
                (nominal, draws, seed, threads) -> Band.of(nominal, Draws.of(draws, seed), threads)));
    }

    static CommandLine commandLine(NightCommand night) {
        return new CommandLine(new Main())
                .addSubcommand(new StartCommand(Main::terminal))
                .addSubcommand(night)
                .addSubcommand(new ProofCommand())
                .addSubcommand(new CompareCommand())
                .addSubcommand(new GridCommand())
                .addSubcommand(new MergeCommand())
                .addSubcommand(new ColdestCommand())
                .addSubcommand(new WorthCommand())
                .addSubcommand(new GroupCommand())
                .addSubcommand(new SpreadCommand())
                .addSubcommand(new PocketCommand())
                .addSubcommand(new WintersCommand())
                .addSubcommand(new ReplayCommand())
                .addSubcommand(new LeastCommand())
                .addSubcommand(new LessonCommand())
                .addSubcommand(new CheckCommand())
                .addSubcommand(new SchemaCommand())
                .addSubcommand(new CompletionCommand())
                .addSubcommand(new ManualCommand())
                .setExecutionExceptionHandler(Main::explain)
                .setExitCodeExceptionMapper(Main::exitCodeOf);
    }

    /** The lines of a person at a terminal; null in scripts and pipes. */
    private static @Nullable BufferedReader terminal() {
        @Nullable Console console = System.console();
        return console != null && isTerminal(console) ? new BufferedReader(console.reader()) : null;
    }

    /** From Java 22 on there is a console without a terminal too, and a question to tell them apart. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException olderJava) {
            return true;
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), Prose.text("fault.missing-command"));
    }

    private static int explain(Exception fault, CommandLine commandLine, ParseResult parsed) {
        int code = exitCodeOf(fault);
        PrintWriter err = commandLine.getErr();
        if (code == ExitCode.OUR_FAULT) {
            return report(fault, err);
        }
        // A fault of input begins with its place, so that editors and terminals can jump there.
        err.println(
                fault instanceof InputFault || fault instanceof DataFault
                        ? messageOf(fault)
                        : "longnight: " + messageOf(fault));
        err.flush();
        return code;
    }

    private static int report(Throwable fault, PrintWriter err) {
        fault.printStackTrace(err);
        err.println(Prose.text("fault.ours"));
        err.flush();
        return ExitCode.OUR_FAULT;
    }

    private static int exitCodeOf(Throwable fault) {
        if (fault instanceof ParameterException
                || fault instanceof InputFault
                || fault instanceof DataFault
                || fault instanceof UnwritableException) {
            return ExitCode.BAD_INPUT;
        }
        if (fault instanceof IOException || fault instanceof UncheckedIOException) {
            return ExitCode.FAILED;
        }
        return ExitCode.OUR_FAULT;
    }

    private static String messageOf(Throwable fault) {
        @Nullable String message = fault.getMessage();
        return message == null ? fault.toString() : message;
    }

    /** The version as the build wrote it into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"longnight " + Program.version()};
        }
    }
}
