package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.report.SpreadFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadCommandTest {
    private static final Path SCENARIOS = Path.of("scenarios").toAbsolutePath();
    private static final String RIDGE = SCENARIOS.resolve("windy-ridge.yaml").toString();

    @TempDir
    Path folder;

    private Session run(String... more) {
        List<String> words = new java.util.ArrayList<>(List.of("spread", RIDGE, "--draws", "64"));
        words.addAll(List.of(more));
        return Session.of(words.toArray(String[]::new));
    }

    @Test
    void every_output_says_what_was_drawn_and_carries_the_cautions() throws Exception {
        Path there = folder.resolve("out");
        Session session = run("--out", there.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.err()).isEmpty();
        assertThat(session.out())
                .contains(
                        "draws of the model hold",
                        "The worst plausible night: 2.0 K colder and 30 % windier",
                        "all together",
                        "seed 1",
                        "NOT SETTLED",
                        "forecast: wind");
        assertThat(session.out().lines().filter(line -> !line.contains(folder.toString())))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
        assertThat(Session.flat(session.out()))
                .contains("All shares here are of the model's draws", "A planning aid, not permission to try");
        for (String name : SpreadFiles.NAMES) {
            assertThat(there.resolve(name)).isNotEmptyFile();
            if (!name.endsWith(".png") && !name.endsWith(".html")) {
                assertThat(flat(Files.readString(there.resolve(name))))
                        .as(name)
                        .contains("All shares here are of the model's draws")
                        .containsAnyOf("A planning aid, not permission to try", "is a permission to go and try one");
            }
        }
        assertThat(BrowserPage.check(there))
                .contains(
                        "How far the answer is open",
                        "What opens the answer",
                        "All shares here are of the model's draws",
                        "is a permission to go and try one");
        assertThat(folder.resolve("out.journal")).doesNotExist();
        JsonNode answer =
                new ObjectMapper().readTree(there.resolve("spread.json").toFile());
        assertThat(answer.at("/format").asText()).isEqualTo("longnight-spread/1");
        assertThat(answer.at("/question/seed").asInt()).isEqualTo(1);
        assertThat(answer.at("/worstPlausible/bands")).hasSize(4);
        assertThat(answer.at("/given/bands/3/over").asText()).isEqualTo("people+forecast+model");
        assertThat(answer.at("/given/bands/3/settled").asBoolean()).isFalse();
        assertThat(answer.at("/drivers/shortfall-heat/wind/total/value").asDouble())
                .isBetween(0.05, 0.5);
        assertThat(answer.at("/drivers/shortfall-heat/fitness/partOf").asText()).isEqualTo("people");
        assertThat(Files.readString(there.resolve("bands.csv")))
                .startsWith("night,drawn,draws,settled,\"shortfall heat,");
        assertThat(Files.readString(there.resolve("drivers.csv")))
                .startsWith("quantity,group,part of,first order [1],");
    }

    @Test
    void the_same_seed_gives_the_same_files_whatever_the_threads() throws Exception {
        for (String threads : List.of("1", "2")) {
            assertThat(run(
                                    "--over",
                                    "people,forecast",
                                    "--threads",
                                    threads,
                                    "--out",
                                    folder.resolve(threads).toString())
                            .code())
                    .isZero();
        }
        for (String name : SpreadFiles.NAMES) {
            assertThat(folder.resolve("2").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("1").resolve(name));
        }
    }

    @Test
    void both_unit_systems_say_the_same() {
        Session metric =
                run("--over", "people", "--json", folder.resolve("m.json").toString(), "--out", out("m"));
        Session imperial = run(
                "--over",
                "people",
                "--units",
                "imperial",
                "--json",
                folder.resolve("i.json").toString(),
                "--out",
                out("i"));
        assertThat(metric.out()).contains("shortfall [kJ]", "2.0 K colder", "kg to", "core [C]");
        assertThat(imperial.out())
                .contains("shortfall [kcal]", "3.6 F colder", "lb to", "core [F]")
                .doesNotContain(" kJ", " K ", " kg", "[C]");
        assertThat(folder.resolve("i.json")).hasSameTextualContentAs(folder.resolve("m.json"));
        assertThat(folder.resolve("i/bands.csv"))
                .content()
                .contains("shortfall heat, low [kcal]", "core at dawn, low [°F]");
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void ranges_and_errors_in_place_of_the_usual_ones_are_used_and_told() {
        Session session = run(
                "--over",
                "people,forecast",
                "--group",
                "adults",
                "--mass",
                "60 kg to 176 lb",
                "--air-error",
                "3.6 °F",
                "--wind-error",
                "0 %",
                "--colder",
                "5 K",
                "--windier",
                "0 %",
                "--seed",
                "9",
                "--out",
                out("x"));
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(Session.flat(session.out()))
                .contains(
                        "mass 60.00 kg to 79.83 kg",
                        "height 1.55 m to 1.90 m",
                        "air 2.0 K and 1.3 K; wind 0 and 0 %",
                        "seed 9",
                        "5.0 K colder and 0 % windier");
    }

    @Test
    void one_doubt_alone_has_no_row_for_all_together() {
        Session session = run("--over", "model", "--json", "-");
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).startsWith("{").doesNotContain("\"over\" : \"people");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "--over | modell | did you mean \"model\"",
                "--over | people,weather | people, forecast, model",
                "--group | adult | did you mean \"adults\"",
                "--mass | 60 kg | two ends with their units",
                "--mass | 60 to 80 | has no unit",
                "--mass | 80 kg to 60 kg | the first end lies above the second",
                "--mass | 20 kg to 60 kg | from 30",
                "--fat | 10 % to 70 % | from 4 % to 60 %",
                "--colder | 2 | --colder 2",
                "--colder | 30 K | from 0",
                "--windier | 30 | --windier 30",
                "--windier | -10 % | from 0 %",
                "--air-error | 9 K | from 0",
                "--draws | 10 | from 64 to 16384",
                "--seed | x | --seed",
                "--threads | 0 | --threads",
                "--kit | none.yaml | none.yaml",
                "--units | stone | imperial"
            })
    void bad_options_are_bad_input_and_nothing_is_written(String option, String value, String told) throws Exception {
        Session session =
                Session.of("spread", RIDGE, "--out", folder.resolve("x").toString(), option, value);
        assertThat(session.code()).as(session.err()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err().lines().findFirst().orElseThrow()).contains(told);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void options_that_nothing_reads_are_refused() {
        assertThat(run("--over", "model", "--mass", "60 kg to 80 kg").err())
                .contains("--mass goes with --over people, which was left out");
        assertThat(run("--over", "people", "--air-error", "1 K").err())
                .contains("--air-error goes with --over forecast, which was left out");
    }

    @Test
    void draws_beyond_the_models_air_are_refused_before_anything_is_run() {
        Session session = run("--colder", "20 K", "--air-error", "5 K");
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("the air may lie from -", "the model has an answer from -40 to 32");
    }

    @Test
    void a_laboratory_is_refused() {
        Session session =
                Session.of("spread", SCENARIOS.resolve("laboratory.yaml").toString(), "--json", "-");
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("a laboratory has no weather");
    }

    @Test
    void the_journal_of_other_options_is_refused_and_left_alone() throws Exception {
        Path journal = folder.resolve("x.journal");
        Files.writeString(journal, "longnight-spread-journal/1 inputs=0 program=0\t00000000\n");
        Session session = run("--out", out("x"));
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).startsWith(journal.toString()).contains("had other inputs, options");
        assertThat(journal).content().startsWith("longnight-spread-journal/1 inputs=0");
    }

    /** The example of the help, word for word, from a folder of its own. */
    @Test
    void help_has_one_worked_example_that_runs() {
        Session help = Session.of("spread", "--help");
        assertThat(help.code()).isZero();
        String example =
                Session.flat(help.out()).replaceFirst(".*?Example: longnight (spread .*? --windier \"50 %\").*", "$1");
        assertThat(example).startsWith("spread scenarios/overcast-forest.yaml --over people,forecast");
        List<String> words = new java.util.ArrayList<>();
        java.util.regex.Matcher word =
                java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(example);
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        words.addAll(List.of("--draws", "64", "--out", out("x")));
        Session session = Session.of(words.toArray(String[]::new));
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).contains("2.0 K colder and 50 % windier", "mass 60.00 kg to 90.00 kg");
    }

    private static String flat(String text) {
        return text.replaceAll("<[^>]*>", " ")
                .replace("&apos;", "'")
                .replace("#", " ")
                .replaceAll("\\s+", " ");
    }
}
