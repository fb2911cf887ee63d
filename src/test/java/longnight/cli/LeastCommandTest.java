package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb from files to page, chart and tables, and all that it refuses. */
class LeastCommandTest {
    private static final String CAUTION = "This is a tool for planning.";
    private static final String NIGHT = "scenarios/overcast-forest.yaml";

    private static final String FEW = """
            pieces:
              - {id: shirt, kind: base-top, mass: 150 g, fabric: polyester-knit}
              - {id: fleece, kind: mid-top, mass: 310 g, fabric: fleece}
              - {id: parka, kind: parka, mass: 760 g, fill: 120 g/m2, fill-type: short-staple, face: tight, hood: yes}
              - {id: heavy-parka, kind: parka, mass: 1300 g, fill: 240 g/m2, fill-type: short-staple, face: tight, hood: yes}
              - {id: tights, kind: base-bottom, mass: 140 g, fabric: polyester-knit}
              - {id: overtrousers, kind: insulated-trousers, mass: 430 g, fill: 100 g/m2, fill-type: short-staple, face: tight}
              - {id: mittens, kind: mittens, mass: 195 g, fill: 133 g/m2, face: tight}
              - {id: boots, kind: insulated-boots, mass: 1500 g}
            pads:
              - {id: pad, mass: 95 g, length: 42 cm, width: 33 cm, thickness: 20 mm}
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void the_lightest_kit_with_what_was_shown() throws Exception {
        Path results = folder.resolve("results");
        assertThat(run(NIGHT, "--wardrobe", few(), "--out", results.toString()))
                .as(err.toString())
                .isZero();
        String page = out.toString().replaceAll("\\s+", " ");
        assertThat(page)
                .contains("Lightest kit that holds on paper", "Every lighter kit is refuted", "What was shown", "boots")
                .contains("Caution: A planning aid")
                .doesNotContain("NaN");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 114);
        JsonNode json =
                new ObjectMapper().readTree(results.resolve("least.json").toFile());
        assertThat(json.at("/format").asText()).isEqualTo("longnight-least/1");
        assertThat(json.at("/proof/complete").asBoolean()).isTrue();
        double mass = json.at("/kits/0/mass_kg").asDouble();
        assertThat(json.at("/proof/noAdequateKitBelow_kg").asDouble()).isEqualTo(mass);
        for (JsonNode kit : json.at("/kits")) {
            assertThat(kit.at("/mass_kg").asDouble()).isGreaterThanOrEqualTo(mass);
            assertThat(kit.at("/demand").asDouble()).isLessThanOrEqualTo(2);
        }
        // Note R-30, carry no more than needed: with any piece left at home it fails, or leaves something bare.
        assertThat(json.at("/without")).isNotEmpty();
        for (JsonNode each : json.at("/without")) {
            assertThat(!each.at("/allowed").asBoolean() || each.at("/demand").asDouble() > 2)
                    .as(each.toString())
                    .isTrue();
        }
        assertThat(json.at("/cautions/0/text").asText()).startsWith(CAUTION);
        assertThat(Files.readString(results.resolve("least.csv")))
                .startsWith("mass [kg]")
                .contains("# " + CAUTION);
        assertThat(Files.readString(results.resolve("notes.txt"))).contains(CAUTION, "What was guessed");
        assertThat(Files.readString(results.resolve("least.svg"))).contains("planning aid", "boots");
        assertThat(results.resolve("least.png")).isNotEmptyFile();
        assertThat(BrowserPage.check(results)).contains("Lightest kit that holds on paper", "boots");
    }

    @Test
    void imperial_readers_find_no_metric_unit() throws Exception {
        Path results = folder.resolve("results");
        assertThat(run(NIGHT, "--wardrobe", few(), "--units", "imperial", "--out", results.toString()))
                .as(err.toString())
                .isZero();
        String csv = Files.readString(results.resolve("least.csv"));
        assertThat(csv).startsWith("mass [lb]");
        String notes = Files.readString(results.resolve("notes.txt"));
        for (String text : List.of(
                out.toString(),
                csv,
                notes,
                BrowserPage.check(results),
                Files.readString(results.resolve("least.svg")))) {
            assertThat(text)
                    .contains(" lb")
                    .doesNotContain("[kg]", " kJ", " K ", "°C", "[g]", " g;", "m2 K/W")
                    .doesNotContainPattern("\\d kg");
        }
    }

    /** Where it gives up it must give up at the same look, however many threads look. */
    @Test
    void no_figure_depends_on_threads_where_it_gives_up_either() throws Exception {
        List<String> said = new ArrayList<>();
        for (String threads : List.of("1", "4")) {
            out.getBuffer().setLength(0);
            assertThat(run(
                            "scenarios/clear-valley.yaml",
                            "--wardrobe",
                            "scenarios/wardrobes/sixty.yaml",
                            "--demand",
                            "1.9",
                            "--most-nights",
                            "1000",
                            "--threads",
                            threads,
                            "--json",
                            "-"))
                    .as(err.toString())
                    .isZero();
            said.add(out.toString());
        }
        assertThat(said.get(0)).contains("\"complete\" : false").isEqualTo(said.get(1));
    }

    @Test
    void when_nothing_holds_it_says_by_how_much_and_what_would_help() throws Exception {
        assertThat(run("scenarios/clear-valley.yaml", "--wardrobe", few(), "--json", "-"))
                .as(err.toString())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/kits")).isEmpty();
        assertThat(json.at("/nearest/kit/demand").asDouble()).isGreaterThan(1);
        assertThat(json.at("/nearest/warmer_K").asDouble()).isBetween(0.5, 40.0);
        assertThat(json.at("/nearest/helpsMost").asText()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--demand 2.5 | at most 2",
                "--demand 0 | above 0",
                "--colder 3 | unit",
                "--colder -2K | 0 K to 40 K",
                "--colder 39K | colder than -40",
                "--threads 0 | --threads",
                "--most-nights 3 | 1000",
                "--person nobody.yaml | nobody.yaml"
            })
    void bad_input_writes_nothing(String options, String told) throws Exception {
        Path results = folder.resolve("results");
        String[] all = ("scenarios/clear-valley.yaml --wardrobe " + few() + " --out " + results + " " + options.strip())
                .split(" ");
        assertThat(run(all)).isEqualTo(2);
        assertThat(err.toString()).contains(told.strip());
        assertThat(out.toString()).isEmpty();
        assertThat(results).doesNotExist();
    }

    @Test
    void a_laboratory_or_no_wardrobe_is_refused() throws Exception {
        assertThat(run("scenarios/laboratory.yaml", "--wardrobe", few())).isEqualTo(2);
        assertThat(run(NIGHT)).isEqualTo(2);
        assertThat(run(NIGHT, "--wardrobe", "none.yaml")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
    }

    private String few() throws Exception {
        return Files.writeString(folder.resolve("few.yaml"), FEW).toString();
    }

    private int run(String... options) {
        String[] all = new String[options.length + 1];
        all[0] = "least";
        System.arraycopy(options, 0, all, 1, options.length);
        return Main.run(Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err)), all);
    }
}
