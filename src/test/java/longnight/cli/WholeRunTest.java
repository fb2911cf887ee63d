package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.scenario.BadInputTest;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a file to pages and folders, with the reader and the engine that people get. */
class WholeRunTest {
    private static final String RAIN = """
            title: rain, then frost
            person: {name: walker, sex: male, age: 30 years, height: 178 cm, mass: 72 kg, body-fat: 16 %}
            plan: {from: 18:00, to: 02:00, posture: sitting-knees-up, sleep: yes}
            site: {altitude: 300 m, place: open, ground: turf}
            weather:
              name: rain, then frost
              table:
                - {time: 17:00, air: 2 °C, wind: 4 m/s, humidity: 95 %, cloud: 100 %, precipitation: 3 mm/h}
                - {time: 19:30, air: 1 °C, wind: 4 m/s, humidity: 95 %, cloud: 100 %, precipitation: 3 mm/h}
                - {time: 22:00, air: 0 °C, wind: 3 m/s, humidity: 90 %, cloud: 50 %, precipitation: 0 mm/h}
                - {time: 00:30, air: -5 °C, wind: 1 m/s, humidity: 90 %, cloud: 0 %, precipitation: 0 mm/h}
                - {time: 03:00, air: -7 °C, wind: 1 m/s, humidity: 90 %, cloud: 0 %, precipitation: 0 mm/h}
            kit:
              name: cotton
              wardrobe: wardrobe.yaml
              worn: [shirt, hoody, denim]
              pads: []
            """;

    private static final String WARDROBE = """
            pieces:
              - {id: shirt, kind: base-top, mass: 180 g}
              - {id: hoody, kind: mid-top, mass: 600 g, fabric: cotton-knit}
              - {id: denim, kind: trousers, mass: 650 g, fabric: cotton-denim}
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void rain_is_told_drawn_and_written_down() throws Exception {
        Path night = night();
        Path results = folder.resolve("results");
        assertThat(run("night", night.toString(), "--out", results.toString(), "--reference"))
                .as(err.toString())
                .isZero();
        String page = out.toString().replaceAll("\\s+", " ");
        assertThat(page)
                .contains("grnd wet brth", "Water in the clothes", "from outside", "Being wet cost", "Rain or wet snow")
                .contains("kg of water (proves", "both without water")
                .doesNotContain("Dry reckoning", "NaN");
        assertThat(results.resolve("water-by-layer.png")).isNotEmptyFile();
        assertThat(results.resolve("water-by-layer.svg")).isNotEmptyFile();
        JsonNode json =
                new ObjectMapper().readTree(results.resolve("night.json").toFile());
        assertThat(json.at("/water/cost_J").doubleValue()).isPositive();
        assertThat(json.at("/water/fromOutside_kg").doubleValue()).isPositive();
        assertThat(json.at("/fuel/waterLost_kg").doubleValue())
                .isGreaterThan(json.at("/water/fromSkin_kg").doubleValue());
        double losses = 0;
        for (JsonNode way : json.at("/hours/3/lostByWay_W")) {
            losses += way.doubleValue();
        }
        // the same sum in the same order
        assertThat(losses).isEqualTo(json.at("/hours/3/losses_W").doubleValue());
        // What the pieces hold by the trace at the end is what their list says.
        JsonNode trace = json.at("/water/trace/liquidAndIce_kg");
        for (JsonNode piece : json.at("/water/pieces")) {
            JsonNode held = trace.get(piece.get("id").asText());
            assertThat(held.get(held.size() - 1).doubleValue())
                    .isEqualTo(
                            piece.get("liquidAtDawn_kg").doubleValue()
                                    + piece.get("iceAtDawn_kg").doubleValue(),
                            org.assertj.core.api.Assertions.within(1e-12)); // a sum in another order
        }
    }

    /** Bills over different times cannot be compared, so no cost of being wet may be made of them. */
    @Test
    void a_wet_night_that_stops_early_tells_no_cost() throws Exception {
        Path night = night();
        Files.writeString(
                night,
                RAIN.replace("air: 2 °C", "air: -25 °C")
                        .replace("air: 1 °C", "air: -25 °C")
                        .replace("air: 0 °C", "air: -25 °C")
                        .replace("wind: 4 m/s", "wind: 12 m/s")
                        .replace("worn: [shirt, hoody, denim]", "worn: [shirt]"));
        assertThat(run("night", night.toString(), "--json", "-"))
                .as(err.toString())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/stopped_s").isNumber()).isTrue();
        assertThat(json.at("/water/fromOutside_kg").doubleValue()).isPositive();
        assertThat(json.at("/water/cost_J").isNull()).isTrue();
    }

    @Test
    void every_bad_input_ends_with_two_and_leaves_nothing_behind() throws Exception {
        List<Path> nights = BadInputTest.writeAll(folder);
        assertThat(nights).hasSizeGreaterThan(80);
        Set<Path> before = all();
        for (Path night : nights) {
            for (String[] where : new String[][] {
                {"--out", night.resolveSibling("results").toString()},
                {
                    "--out",
                    night.resolveSibling("results").toString(),
                    "--json",
                    night.resolveSibling("x.json").toString()
                },
                {"--json", "-"}
            }) {
                err.getBuffer().setLength(0);
                String[] args = Stream.concat(Stream.of("night", night.toString()), Stream.of(where))
                        .toArray(String[]::new);
                NightCommand command = new NightCommand(
                        file -> ScenarioReader.read(file).scenario(),
                        (scenario, settings) -> {
                            throw new AssertionError("a night was run from " + night);
                        },
                        (nominal, draws, seed, threads) -> {
                            throw new AssertionError("draws were run from " + night);
                        });
                int code = Main.run(
                        Main.commandLine(command)
                                .setOut(new PrintWriter(out, true))
                                .setErr(new PrintWriter(err, true)),
                        args);
                assertThat(code).as(night + ": " + err).isEqualTo(2);
                assertThat(err.toString().lines()).as(err.toString()).hasSize(1);
                assertThat(err.toString()).startsWith(folder.toString()).doesNotContain("\tat ");
            }
        }
        assertThat(out.toString()).isEmpty();
        assertThat(all()).isEqualTo(before);
    }

    private Path night() throws Exception {
        Files.writeString(folder.resolve("wardrobe.yaml"), WARDROBE);
        return Files.writeString(folder.resolve("rain.yaml"), RAIN);
    }

    private int run(String... args) {
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    private Set<Path> all() throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
