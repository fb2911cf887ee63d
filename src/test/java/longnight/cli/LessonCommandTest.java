package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.NightResult;
import longnight.report.LessonPage;
import longnight.report.Prose;
import longnight.study.Comparison;
import longnight.study.Lesson;
import longnight.study.Taught;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LessonCommandTest {
    private static final String CAUTION = "A planning aid, not permission to try";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    /** If this fails, a lesson tells its class something that the model no longer says. */
    @ParameterizedTest
    @EnumSource(Lesson.class)
    void every_lesson_runs_and_comes_out_as_it_was_made_to(Lesson lesson) throws Exception {
        Taught taught = Taught.of(lesson, LessonNights.of(lesson), 2);
        List<NightResult> results =
                taught.all().all().stream().map(Comparison.One::result).toList();
        assertThat(results).hasSizeBetween(2, 3);
        results.forEach(result -> assertThat(result.scenario().limits()).isEmpty());
        results.forEach(result -> assertThat(result.stopped()).isNaN());
        assertThat(taught.order())
                .as("%s", results.stream().map(NightResult::shortfallHeat).toList())
                .isEqualTo(Taught.Order.AS_EXPECTED);
        String page = flat(LessonPage.page(taught));
        assertThat(page)
                .contains(flat(Prose.text("lesson." + lesson.word() + ".question")), CAUTION)
                .contains(flat(Prose.text("lesson." + lesson.word() + ".reason")))
                .contains(flat(Prose.text("lesson.try.always")))
                .doesNotContain(flat(Prose.text("lesson.turned")));
    }

    /** The words follow the runs: the same nights handed over in the other order are no proof of the lesson. */
    @Test
    void a_lesson_whose_order_turns_says_so_and_gives_no_reason() throws Exception {
        Lesson lesson = Lesson.SIT_PAD;
        List<longnight.night.Scenario> nights = LessonNights.of(lesson);
        Taught turned = Taught.of(lesson, List.of(nights.get(1), nights.get(0)), 1);
        assertThat(flat(LessonPage.page(turned)))
                .contains(flat(Prose.text("lesson.turned")), "A on the pad")
                .doesNotContain(flat(Prose.text("lesson.sit-pad.reason")));
        Taught same = Taught.of(lesson, List.of(nights.get(0), nights.get(0)), 1);
        assertThat(flat(LessonPage.page(same)))
                .contains(flat(Prose.text("lesson.too-close")))
                .doesNotContain(flat(Prose.text("lesson.sit-pad.reason")));
    }

    @Test
    void the_folder_holds_the_chart_and_the_words_each_with_its_cautions() throws Exception {
        Path there = folder.resolve("out");
        assertThat(run("lesson", "sit-pad", "--out", there.toString(), "--threads", "1"))
                .isZero();
        assertThat(flat(out.toString())).contains("What came out", "ground", CAUTION);
        assertThat(out.toString().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        assertThat(names(there))
                .containsExactlyInAnyOrder(
                        "lesson.png", "lesson-slide.png", "lesson-print.png", "lesson.svg", "lesson.txt");
        assertThat(flat(Files.readString(there.resolve("lesson.svg")))).contains(CAUTION);
        assertThat(flat(Files.readString(there.resolve("lesson.txt")))).contains("is a permission to go and try one");
    }

    @Test
    void the_question_alone_gives_nothing_away_and_writes_nothing() throws Exception {
        assertThat(run("lesson", "sit-pad", "--ask")).isZero();
        assertThat(out.toString())
                .contains("What is the pad worth?", "on the pad", "on the snow", CAUTION)
                .doesNotContain("Shortfall", "kJ", Prose.text("lesson.why"));
        assertThat(Path.of("sit-pad-lesson")).doesNotExist();
    }

    @Test
    void the_list_names_them_all() {
        assertThat(run("lesson", "list")).isZero();
        for (Lesson lesson : Lesson.values()) {
            assertThat(out.toString()).contains(lesson.word());
        }
        assertThat(Lesson.values().length).isGreaterThanOrEqualTo(8);
        assertThat(flat(out.toString())).contains(CAUTION);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"sit-pat", "", "sit-pad --threads 0", "sit-pad --ask --out x", "list --out x", "sit-pad row"})
    void bad_input_is_refused_and_nothing_is_written(String args) throws Exception {
        assertThat(run(("lesson " + args).strip().split(" "))).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).isNotEmpty();
        assertThat(Path.of("x")).doesNotExist();
    }

    @Test
    void a_misspelt_lesson_is_told_the_nearest() {
        assertThat(run("lesson", "sit-pat")).isEqualTo(2);
        assertThat(err.toString()).contains("sit-pat", "did you mean \"sit-pad\"?", "wet-parka");
    }

    @Test
    void help_has_an_example() {
        assertThat(run("lesson", "--help")).isZero();
        assertThat(out.toString()).contains("longnight lesson sit-pad --ask");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static String flat(String text) {
        return text.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
    }
}
