package longnight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import longnight.report.Console;
import longnight.report.Prose;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Spec;

/** One page of manual on all commands, in the language of man pages (man(7)), made from the model of the command line. */
@Command(
        name = "manual",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class ManualCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    private final StringBuilder page = new StringBuilder();

    @Override
    public Integer call() {
        CommandLine root = spec.root().commandLine();
        String program = root.getCommandName();
        macro("TH", program.toUpperCase(Locale.ROOT), "1");
        heading("manual.name");
        text(program + " - " + about(root.getCommandSpec()));
        heading("manual.synopsis");
        macro("B", program);
        text("COMMAND ...");
        options(root.getCommandSpec());
        heading("manual.commands");
        root.getSubcommands().values().forEach(command -> command(program, command.getCommandSpec()));
        heading("manual.codes");
        root.getCommandSpec().usageMessage().exitCodeList().forEach(this::item);
        heading("manual.caution");
        for (String paragraph : Console.cautionInFull().split("\n\n")) {
            macro("PP");
            text(paragraph.replace('\n', ' '));
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(page);
        out.flush();
        return ExitCode.FINE;
    }

    private void command(String program, CommandSpec command) {
        List<String> synopsis = new ArrayList<>(List.of(program, command.name()));
        command.positionalParameters()
                .forEach(word ->
                        synopsis.add(word.arity().min() == 0 ? "[" + word.paramLabel() + "]" : word.paramLabel()));
        macro("SS", String.join(" ", synopsis));
        text(about(command));
        for (PositionalParamSpec word : command.positionalParameters()) {
            item(word.paramLabel(), CompletionCommand.filled(String.join(" ", word.description()), word));
        }
        options(command);
    }

    private void options(CommandSpec command) {
        for (OptionSpec option : command.options()) {
            if (option.hidden()) {
                continue;
            }
            String names = String.join(", ", Arrays.asList(option.names()));
            item(
                    option.arity().max() > 0 ? names + " " + option.paramLabel() : names,
                    CompletionCommand.filled(String.join(" ", option.description()), option));
        }
    }

    private static String about(CommandSpec command) {
        return String.join(" ", command.usageMessage().description());
    }

    private void heading(String key) {
        macro("SH", Prose.text(key));
    }

    private void item(String term, String about) {
        macro("TP");
        macro("B", term);
        text(about);
    }

    private void macro(String name, String... words) {
        page.append('.').append(name);
        for (String word : words) {
            page.append(" \"").append(escaped(word).replace("\"", "\\(dq")).append('"');
        }
        page.append('\n');
    }

    private void text(String text) {
        String escaped = escaped(text);
        page.append(escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" : "")
                .append(escaped)
                .append('\n');
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replace("%%", "%");
    }
}
