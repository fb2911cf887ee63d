package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import longnight.night.Scenario;
import longnight.quantity.Spelling;
import longnight.report.Console;
import longnight.report.LessonPage;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.study.Lesson;
import longnight.study.Taught;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Demonstrations for a class: a question, then what the model says and why. */
@Command(
        name = "lesson",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class LessonCommand implements Callable<Integer> {
    private static final String LIST = "list";

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "NAME", descriptionKey = "NAME")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private String name;

    @Option(names = "--ask", descriptionKey = "ask")
    private boolean ask;

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
    private @Nullable Path out;

    @Mixin
    private final Threads threads = new Threads();

    @Override
    public Integer call() throws IOException {
        int working = threads.count(spec.commandLine());
        if ((ask || name.equals(LIST)) && out != null) {
            throw new ParameterException(spec.commandLine(), Prose.text("fault.lesson.out"));
        }
        print(name.equals(LIST) ? LessonPage.list() : answer(lesson(), working));
        return ExitCode.FINE;
    }

    private String answer(Lesson lesson, int working) throws IOException {
        Path folder = out == null ? Path.of(lesson.word() + "-lesson") : out;
        if (!ask) {
            Outputs.requireFolder(folder, LessonPage.NAMES);
        }
        List<Scenario> nights = LessonNights.of(lesson);
        if (ask) {
            return LessonPage.question(
                    lesson, nights.stream().map(Scenario::title).toList());
        }
        Taught taught = Taught.of(lesson, nights, working);
        Outputs.Written written = Outputs.write(LessonPage.files(taught), folder);
        if (written.note() != null) {
            spec.commandLine().getErr().println("longnight: " + written.note());
        }
        return LessonPage.page(taught) + Console.files(folder, written);
    }

    private Lesson lesson() {
        return Stream.of(Lesson.values())
                .filter(lesson -> lesson.word().equals(name))
                .findFirst()
                .orElseThrow(() -> new ParameterException(spec.commandLine(), fault()));
    }

    private String fault() {
        List<String> words = Stream.of(Lesson.values()).map(Lesson::word).toList();
        return Prose.text("fault.lesson", name, String.join(", ", words), Spelling.suggestion(name, words))
                .strip();
    }

    private void print(String page) {
        PrintWriter console = spec.commandLine().getOut();
        console.print(page);
        console.flush();
        spec.commandLine().getErr().flush();
    }
}
