package longnight.cli;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a shell needs to complete our words, made from the model of the command line. */
@Command(
        name = "completion",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class CompletionCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(
            paramLabel = "SHELL",
            descriptionKey = "SHELL",
            converter = Shells.class,
            completionCandidates = Shells.class)
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private String shell;

    @Override
    public Integer call() {
        CommandLine root = spec.root().commandLine();
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                shell.equals("fish") ? fish(root) : AutoComplete.bash(root.getCommandName(), root)); // zsh takes bash's
        out.flush();
        return ExitCode.FINE;
    }

    private static String fish(CommandLine root) {
        String program = root.getCommandName();
        StringBuilder script = new StringBuilder("# " + program + " for fish: " + program
                + " completion fish > ~/.config/fish/completions/" + program + ".fish\n");
        String words = String.join(" ", root.getSubcommands().keySet());
        String first = "not __fish_seen_subcommand_from " + words;
        line(script, program, first, "-f");
        options(script, program, first, root.getCommandSpec());
        root.getSubcommands().forEach((name, command) -> {
            String about = about(command.getCommandSpec());
            line(script, program, first, "-f -a " + quoted(name) + " -d " + quoted(about));
            String within = "__fish_seen_subcommand_from " + name;
            options(script, program, within, command.getCommandSpec());
            for (PositionalParamSpec word : command.getCommandSpec().positionalParameters()) {
                if (word.completionCandidates() != null) {
                    line(script, program, within, "-f" + candidates(word));
                }
            }
        });
        return script.toString();
    }

    private static void options(StringBuilder script, String program, String when, CommandSpec command) {
        for (OptionSpec option : command.options()) {
            if (option.hidden()) {
                continue;
            }
            StringBuilder rest = new StringBuilder();
            for (String name : option.names()) {
                rest.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
            }
            if (option.arity().max() > 0) {
                rest.append(" -r").append(option.completionCandidates() == null ? "" : " -f" + candidates(option));
            }
            String[] about = option.description();
            line(
                    script,
                    program,
                    when,
                    rest.substring(1) + " -d " + quoted(about.length == 0 ? "" : filled(about[0], option)));
        }
    }

    private static void line(StringBuilder script, String program, String when, String rest) {
        script.append("complete -c ")
                .append(program)
                .append(" -n ")
                .append(quoted(when))
                .append(' ');
        script.append(rest).append('\n');
    }

    private static String candidates(ArgSpec argument) {
        return " -a " + quoted(String.join(" ", argument.completionCandidates()));
    }

    /** The first sentence of what a command is for. */
    private static String about(CommandSpec command) {
        String[] about = command.usageMessage().description();
        return about.length == 0 ? "" : about[0].replaceFirst("(?s)[.:] .*", "");
    }

    static String filled(String about, ArgSpec argument) {
        @Nullable Iterable<String> words = argument.completionCandidates();
        return words == null ? about : about.replace("${COMPLETION-CANDIDATES}", String.join(", ", words));
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    /** The shells we can speak to. */
    static final class Shells implements ITypeConverter<String>, Iterable<String> {
        private static final List<String> ALL = List.of("bash", "zsh", "fish");

        @Override
        public String convert(String word) {
            return Words.oneOf(word, ALL);
        }

        @Override
        public Iterator<String> iterator() {
            return ALL.iterator();
        }
    }
}
