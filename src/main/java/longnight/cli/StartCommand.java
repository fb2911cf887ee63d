package longnight.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.quantity.UnitSystem;
import longnight.report.Console;
import longnight.report.MapJson;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.scenario.FileKind;
import longnight.scenario.InputFault;
import longnight.scenario.Schema;
import longnight.scenario.StartFolder;
import longnight.scenario.StartFolder.Question;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A first folder: asks a few questions at a terminal, or takes the answers as options, and writes files that run. */
@Command(
        name = "start",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class StartCommand implements Callable<Integer> {
    /** A person who answers wrong this often is not there, or does not want to. */
    private static final int PATIENCE = 5;

    private final Supplier<@Nullable BufferedReader> terminal;

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", descriptionKey = "DIR", arity = "0..1", defaultValue = "my-night")
    private Path folder = Path.of("my-night");

    @Option(names = "--name", paramLabel = "TEXT", descriptionKey = "name")
    private @Nullable String name;

    @Option(names = "--sex", paramLabel = "WORD", descriptionKey = "sex")
    private @Nullable String sex;

    @Option(names = "--age", paramLabel = "AGE", descriptionKey = "age")
    private @Nullable String age;

    @Option(names = "--height", paramLabel = "LENGTH", descriptionKey = "height")
    private @Nullable String height;

    @Option(names = "--mass", paramLabel = "MASS", descriptionKey = "mass")
    private @Nullable String mass;

    @Option(names = "--cold", paramLabel = "TEMPERATURE", descriptionKey = "cold")
    private @Nullable String cold;

    @Option(names = "--wind", paramLabel = "SPEED", descriptionKey = "wind")
    private @Nullable String wind;

    @Option(names = "--posture", paramLabel = "WORD", descriptionKey = "posture")
    private @Nullable String posture;

    @Option(names = "--kit", paramLabel = "WORD", descriptionKey = "kit")
    private @Nullable String kit;

    @Option(names = "--defaults", descriptionKey = "defaults")
    private boolean defaults;

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    /** @param terminal gives the lines that a person types; null where nobody sits */
    StartCommand(Supplier<@Nullable BufferedReader> terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Outputs.requireFolder(folder, List.of());
        Map<Question, String> answers = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            @Nullable String option = option(question);
            if (option != null) {
                answers.put(question, question.read(option));
            }
        }
        PrintWriter out = spec.commandLine().getOut();
        ask(answers, out);
        List<Question> taken = Stream.of(Question.values())
                .filter(question -> !answers.containsKey(question))
                .toList();
        UnitSystem system = shown.system();
        taken.forEach(question -> answers.put(question, question.usual(system)));
        Map<String, String> files = new LinkedHashMap<>(StartFolder.write(answers, Console.cautionInFull()));
        for (FileKind kind : FileKind.values()) {
            files.put("schema/" + kind.schemaFile(), MapJson.of(Schema.of(kind)));
        }
        Outputs.writeNew(files, folder);
        tell(files, taken, answers, out);
        return ExitCode.FINE;
    }

    private @Nullable String option(Question question) {
        return switch (question) {
            case NAME -> name;
            case SEX -> sex;
            case AGE -> age;
            case HEIGHT -> height;
            case MASS -> mass;
            case COLD -> cold;
            case WIND -> wind;
            case POSTURE -> posture;
            case KIT -> kit;
        };
    }

    /** Asks for what no option says. An end of the input ends the questions, as does an empty line each. */
    private void ask(Map<Question, String> answers, PrintWriter out) throws IOException {
        @Nullable BufferedReader lines = defaults ? null : terminal.get();
        if (lines == null) {
            return;
        }
        out.println(Prose.text("start.hello"));
        for (Question question : Question.values()) {
            if (!answers.containsKey(question) && !ask(question, answers, lines, out)) {
                return;
            }
        }
    }

    private boolean ask(Question question, Map<Question, String> answers, BufferedReader lines, PrintWriter out)
            throws IOException {
        String usual = question.usual(shown.system());
        for (int i = 0; i < PATIENCE; i++) {
            out.print(Prose.text("start.ask." + question.name(), String.join(", ", question.words())) + " [" + usual
                    + "] ");
            out.flush();
            @Nullable String line = lines.readLine();
            if (line == null) {
                out.println();
                return false;
            }
            try {
                answers.put(question, question.read(line.isBlank() ? usual : line));
                return true;
            } catch (InputFault fault) {
                out.println("  " + Prose.text("start.refused", kindly(fault)));
            }
        }
        throw new ParameterException(spec.commandLine(), Prose.text("start.patience", usual));
    }

    private static String kindly(InputFault fault) {
        return Stream.of(fault.found(), fault.allowed(), fault.hint())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private void tell(Map<String, String> files, List<Question> taken, Map<Question, String> answers, PrintWriter out) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(Prose.text("start.written", folder.toString(), String.join(", ", files.keySet())));
        if (!taken.isEmpty()) {
            String usual = taken.stream()
                    .map(question ->
                            "--" + question.name().toLowerCase(Locale.ROOT) + " \"" + answers.get(question) + "\"")
                    .collect(Collectors.joining(" "));
            paragraphs.add(Prose.text("start.taken", usual));
        }
        out.print(Console.paragraphs(paragraphs));
        out.println(Prose.text("start.next"));
        out.println();
        out.println("    longnight night " + quoted(folder.resolve("night.yaml")));
        out.println();
        out.print(Console.paragraphs(List.of(Console.caution())));
        out.flush();
    }

    /** As a shell takes it. */
    static String quoted(Path path) {
        String text = path.toString();
        return text.matches("[A-Za-z0-9_./\\\\:-]+") ? text : "'" + text.replace("'", "'\\''") + "'";
    }
}
