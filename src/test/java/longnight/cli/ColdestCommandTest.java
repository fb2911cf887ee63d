package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.report.ColdestFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColdestCommandTest {
    private static final Path SCENARIOS = Path.of("scenarios").toAbsolutePath();
    private static final String FOREST =
            SCENARIOS.resolve("overcast-forest.yaml").toString();

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    @Test
    void a_kit_is_asked_how_cold_and_every_output_carries_the_cautions() throws Exception {
        Path there = folder.resolve("out");
        Path json = folder.resolve("copy.json");
        assertThat(run(
                        "coldest",
                        FOREST,
                        "--draws",
                        "20",
                        "--seed",
                        "7",
                        "--out",
                        there.toString(),
                        "--json",
                        json.toString()))
                .isZero();
        assertThat(err.toString()).isEmpty();
        String page = out.toString();
        assertThat(flat(page)).contains("Of 20 draws of the model (seed 7) the middle 80 % lie between", "(seed 7)");
        assertThat(page).contains("On paper this kit carries", "Begun damp", "begun dry", "nights were run");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
        for (String name : ColdestFiles.NAMES) {
            assertThat(there.resolve(name)).isNotEmptyFile();
            if (!name.endsWith(".png")) {
                assertThat(flat(Files.readString(there.resolve(name))))
                        .as(name)
                        .contains("not one to go out in", "Of 20 draws of the model (seed 7)")
                        .containsAnyOf("A planning aid, not permission to try", "is a permission to go and try one");
            }
        }
        assertThat(flat(page)).contains("not one to go out in", "A planning aid, not permission to try");
        assertThat(Files.readString(json)).isEqualTo(Files.readString(there.resolve("coldest.json")));
        JsonNode answer = new ObjectMapper().readTree(json.toFile());
        assertThat(answer.at("/format").asText()).isEqualTo("longnight-coldest/1");
        assertThat(answer.at("/curves")).hasSize(4);
        assertThat(answer.at("/table")).hasSize(24);
        assertThat(BrowserPage.check(there)).contains("Begun damp", "mean air [°C]", "nights were run");
        double mean = answer.at("/curves/0/limits/0/meanAir_degC").asDouble();
        assertThat(answer.at("/draws/seed").asLong()).isEqualTo(7);
        assertThat(answer.at("/draws/draws").asInt()).isEqualTo(20);
        JsonNode drawn = answer.at("/curves/0/drawnMeanAir_degC");
        assertThat(drawn.at("/nominal").asDouble()).isEqualTo(mean);
        assertThat(drawn.at("/p10").asDouble()).isLessThan(mean - 1);
        assertThat(drawn.at("/p90").asDouble()).isGreaterThan(mean + 1);
        assertThat(answer.at("/curves/0/drawnReach/p90").asText()).isEqualTo("found");
        List<String> csv = Files.readAllLines(there.resolve("coldest.csv"));
        assertThat(Double.parseDouble(csv.get(1).split(",")[4]))
                .isEqualTo(mean, org.assertj.core.api.Assertions.within(1e-4));
        assertThat(Double.parseDouble(csv.get(1).split(",")[10]))
                .isEqualTo(drawn.at("/p90").asDouble(), org.assertj.core.api.Assertions.within(1e-4));
    }

    @Test
    void without_a_band_nothing_is_drawn() throws Exception {
        assertThat(run("coldest", FOREST, "--json", "-", "--no-band")).isZero();
        JsonNode answer = new ObjectMapper().readTree(out.toString());
        assertThat(answer.at("/draws").isNull()).isTrue();
        assertThat(answer.at("/curves/0/drawnMeanAir_degC").isNull()).isTrue();
        assertThat(answer.at("/sentence").asText()).doesNotContain("draws");
    }

    @Test
    void the_same_in_imperial_units() throws Exception {
        Path there = folder.resolve("out");
        assertThat(run(
                        "coldest",
                        FOREST,
                        "--draws",
                        "20",
                        "--units",
                        "imperial",
                        "--shortfall",
                        "1500 kJ/m2",
                        "--out",
                        there + ""))
                .isZero();
        String page = out.toString();
        assertThat(page).contains(" F (lowest", "kcal/m2", "[mph]", "to 10 % [F]");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
        String metric = "\\d (C|°C|K|kJ|m/s|kJ/m²|kJ/m2)\\b|\\[(°C|C|degC|K|m/s|kJ)\\]";
        assertThat(page).doesNotContainPattern(metric);
        for (String name :
                List.of("coldest.csv", "temperature-by-wind.csv", "coldest-by-wind.svg", "temperature-by-wind.svg")) {
            assertThat(flat(Files.readString(there.resolve(name)))).as(name).doesNotContainPattern(metric);
        }
        assertThat(Files.readString(there.resolve("coldest.csv"))).contains("[degF]", "[mph]");
        JsonNode answer =
                new ObjectMapper().readTree(there.resolve("coldest.json").toFile());
        double mean = answer.at("/curves/0/limits/0/meanAir_degC").asDouble();
        assertThat(page.replaceAll("\\s+", " "))
                .contains("down to a mean of " + Math.round((mean * 1.8 + 32) * 10) / 10.0 + " F");
    }

    @Test
    void json_to_the_output_comes_alone() throws Exception {
        assertThat(run("coldest", FOREST, "--json", "-", "--shortfall", "1200 kJ/m2", "--draws", "20"))
                .isZero();
        assertThat(new ObjectMapper()
                        .readTree(out.toString())
                        .at("/line/limit_J_m2")
                        .asDouble())
                .isEqualTo(1.2e6);
        assertThat(Path.of("overcast-forest-coldest")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--demand 0.5",
                "--demand 9",
                "--demand NaN",
                "--demand warm",
                "--shortfall 1200",
                "--shortfall 12_kJ",
                "--shortfall 0_kJ/m2",
                "--demand 2 --core-heat",
                "--threads 0",
                "--threads 513",
                "--person a.yaml --person b.yaml --person c.yaml",
                "--person nobody.yaml",
                "--kit nothing.yaml",
                "--wind 3",
                "--draws 19",
                "--draws 2001",
                "--draws many",
                "--seed 1.5",
                "--no-band --draws 50",
                "--no-band --seed 2",
                "--units nautical"
            })
    void bad_options_are_bad_input_and_nothing_is_written(String options) throws Exception {
        String[] more = options.split(" ");
        String[] args = new String[4 + more.length];
        args[0] = "coldest";
        args[1] = FOREST;
        args[2] = "--out";
        args[3] = folder.resolve("out").toString();
        for (int i = 0; i < more.length; i++) {
            args[4 + i] = more[i].replace('_', ' ');
        }
        assertThat(run(args)).as(options).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).isNotEmpty();
        assertThat(names()).isEmpty();
    }

    @Test
    void a_laboratory_has_no_weather_to_make_colder() throws Exception {
        assertThat(run("coldest", SCENARIOS.resolve("laboratory.yaml").toString(), "--out", folder.resolve("x") + ""))
                .isEqualTo(2);
        assertThat(err.toString()).contains("a laboratory has no weather");
        assertThat(names()).isEmpty();
    }

    @Test
    void a_person_out_of_range_is_refused_with_the_reason() throws Exception {
        Path giant = folder.resolve("giant.yaml");
        Files.writeString(
                giant, "{name: giant, sex: male, age: 30 years, height: 240 cm, mass: 120 kg, body-fat: 15 %}");
        assertThat(run("coldest", FOREST, "--person", giant.toString(), "--out", folder.resolve("x") + ""))
                .isEqualTo(2);
        assertThat(err.toString()).contains("outside the model's range", "height");
        assertThat(names()).containsExactly("giant.yaml");
    }

    @Test
    void help_has_one_worked_example() {
        assertThat(run("coldest", "--help")).isZero();
        assertThat(out.toString()).contains("Example:", "longnight coldest scenarios/first-night.yaml");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static String flat(String text) {
        return text.replaceAll("<[^>]*>", " ").replace("#", " ").replaceAll("\\s+", " ");
    }
}
