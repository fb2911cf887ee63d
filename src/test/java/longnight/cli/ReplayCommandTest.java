package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.report.Prose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb on the shipped log and on spoilt ones. */
class ReplayCommandTest {
    private static final String NIGHT = "scenarios/clear-valley.yaml";
    private static final String LOG = "scenarios/logs/invented-night.csv";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** The log was made with 90 %. */
    @Test
    void the_example_of_the_help_holds_what_was_planted_and_carries_its_cautions() throws Exception {
        Path there = folder.resolve("o");
        assertThat(run(NIGHT, LOG, "--out", there.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("half hours of sensors", "95 % range", "clock of +01:00")
                .doesNotContain("°");
        JsonNode json = new ObjectMapper().readTree(there.resolve("replay.json").toFile());
        assertThat(json.at("/heatFactorLow").asDouble()).isLessThanOrEqualTo(0.9);
        assertThat(json.at("/heatFactorHigh").asDouble()).isGreaterThanOrEqualTo(0.9);
        String caution = flat(Prose.text("caution.PLANNING_AID.short"));
        String full = flat(Prose.text("caution.PLANNING_AID.full"));
        assertThat(flat(out.toString())).contains(caution);
        for (String name : List.of("log-and-model.svg", "replay.csv", "replay.json", "notes.txt")) {
            String text = flat(Files.readString(there.resolve(name), StandardCharsets.UTF_8)
                    .replaceAll("<[^>]*>", " ")
                    .replace("&quot;", "\"")
                    .replace("\\n", " ")
                    .replace("\\\"", "\""));
            assertThat(text).as(name).containsAnyOf(caution, full);
        }
        assertThat(there.resolve("log-and-model.png")).isNotEmptyFile();
        assertThat(BrowserPage.check(there)).contains("This log", "half hours of sensors", "logged [°C]");
    }

    @Test
    void imperial_readers_find_no_metric_unit() throws Exception {
        Path there = folder.resolve("o");
        assertThat(run(NIGHT, LOG, "--units", "imperial", "--out", there.toString()))
                .isZero();
        String page = BrowserPage.check(there);
        assertThat(page).contains("logged [°F]", "°F with the person as in the file");
        assertThat(Files.readString(there.resolve("replay.csv"))).contains("logged [degF]");
        for (String text : List.of(
                out.toString(),
                page,
                Files.readString(there.resolve("replay.csv")),
                Files.readString(there.resolve("notes.txt")),
                Files.readString(there.resolve("log-and-model.svg")))) {
            assertThat(text).doesNotContain("°C", "degC", " kJ", " K ", "m/s", " g/m", " mm");
        }
        assertThat(run(NIGHT, LOG, "--units", "nautical", "--json", "-")).isEqualTo(2);
    }

    @Test
    void threads_make_no_difference() {
        assertThat(run(NIGHT, LOG, "--json", "-", "--threads", "1")).isZero();
        String one = out.toString();
        out.getBuffer().setLength(0);
        assertThat(run(NIGHT, LOG, "--json", "-", "--threads", "3")).isZero();
        assertThat(out.toString()).isEqualTo(one);
    }

    @Test
    void a_result_that_uses_an_offset_says_so_everywhere() throws Exception {
        Path there = folder.resolve("o");
        assertThat(Main.run(
                        Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)),
                        "night",
                        "scenarios/damp-valley.yaml",
                        "--out",
                        there.toString()))
                .isZero();
        String said = "heat production 95 % of the usual";
        assertThat(flat(out.toString())).contains(said);
        for (String name : List.of("core-heat-deficit.svg", "where-the-heat-goes.svg", "hours.csv", "notes.txt")) {
            assertThat(flat(Files.readString(there.resolve(name)).replaceAll("<[^>]*>", " ")))
                    .as(name)
                    .contains(said);
        }
    }

    @Test
    void faults_of_input_end_with_two_and_write_nothing() throws Exception {
        String at = folder.resolve("o").toString();
        assertThat(run(NIGHT, "no-such.csv", "--out", at)).isEqualTo(2);
        assertThat(run("scenarios/laboratory.yaml", LOG, "--out", at)).isEqualTo(2);
        assertThat(run(NIGHT, LOG, "--threads", "0", "--out", at)).isEqualTo(2);
        assertThat(run(NIGHT, "--out", at)).isEqualTo(2);
        Path odd = Files.writeString(folder.resolve("odd.csv"), "time,air [°C]\n18:00,-9\n19:00,cold");
        assertThat(run(NIGHT, odd.toString(), "--out", at)).isEqualTo(2);
        assertThat(err.toString())
                .contains(
                        "no-such.csv",
                        "a laboratory cannot be replayed",
                        "--threads 0: from 1 to 512",
                        "LOG",
                        "odd.csv:3:7: ");
        assertThat(out.toString()).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(odd);
        }
    }

    @Test
    void help_has_a_worked_example() {
        assertThat(run("--help")).isZero();
        assertThat(flat(out.toString()))
                .contains("longnight replay scenarios/clear-valley.yaml " + LOG, "time [+01:00]");
    }

    private static String flat(String text) {
        return text.replaceAll("[\\s#]+", " ");
    }

    private int run(String... args) {
        String[] all = Stream.concat(Stream.of("replay"), Stream.of(args)).toArray(String[]::new);
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), all);
    }
}
