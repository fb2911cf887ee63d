package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import longnight.report.WorthFiles;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorthCommandTest {
    private static final Path SCENARIOS = Path.of("scenarios").toAbsolutePath();
    private static final String FIRST = SCENARIOS.resolve("first-night.yaml").toString();

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    @Test
    void changes_are_told_and_every_output_carries_the_cautions() throws Exception {
        Path there = folder.resolve("out");
        assertThat(run("worth", FIRST, "--draws", "20", "--seed", "7", "--out", there.toString()))
                .isZero();
        assertThat(err.toString()).isEmpty();
        String page = out.toString();
        assertThat(page)
                .contains(
                        "without batt-parka",
                        "with down-jacket over",
                        "Which assumption",
                        "together",
                        "nights were run",
                        "under 20 draws of the model");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
        assertThat(flat(page)).contains("Worth is told for one night", "A planning aid, not permission to try");
        for (String name : WorthFiles.NAMES) {
            assertThat(there.resolve(name)).isNotEmptyFile();
            if (!name.endsWith(".png")) {
                assertThat(flat(Files.readString(there.resolve(name))))
                        .as(name)
                        .contains("Worth is told for one night")
                        .containsAnyOf("A planning aid, not permission to try", "is a permission to go and try one");
            }
        }
        JsonNode answer =
                new ObjectMapper().readTree(there.resolve("worth.json").toFile());
        assertThat(answer.at("/format").asText()).isEqualTo("longnight-worth/1");
        assertThat(BrowserPage.check(there)).contains("without batt-parka", "shortfall heat saved [kJ]");
        assertThat(answer.at("/effects/0/change").asText()).isEqualTo("without");
        assertThat(answer.at("/effects/0/shortfallSaved_J").asDouble()).isNegative();
        assertThat(answer.at("/draws/seed").asLong()).isEqualTo(7);
        JsonNode drawn = answer.at("/effects/0/drawnShortfallSaved_J");
        assertThat(drawn.at("/nominal").asDouble())
                .isEqualTo(answer.at("/effects/0/shortfallSaved_J").asDouble());
        assertThat(drawn.at("/p90").asDouble()).isNegative();
        assertThat(answer.at("/effects/0/toldFromNothing").asBoolean()).isTrue();
        assertThat(answer.at("/effects/23/drawnShortfallSaved_J/p10").isNumber())
                .isTrue();
        assertThat(answer.at("/effects/24/drawnShortfallSaved_J").isNull()).isTrue();
        assertThat(Files.readString(there.resolve("worth.csv"))).contains("(seed 7)");
        assertThat(flat(Files.readString(there.resolve("worth.svg")))).contains("middle 80 % of 20 draws", "(seed 7)");
        assertThat(Files.readString(there.resolve("worth.csv"))).startsWith("change,extra heat saved [W],");
    }

    /** Two pieces have a price: what they save is told per money as well, and for all others the column stays empty. */
    @Test
    void priced_pieces_are_told_per_money() throws Exception {
        Path priced = Files.createDirectories(folder.resolve("priced"));
        Files.writeString(
                priced.resolve("wardrobe.yaml"),
                Files.readString(SCENARIOS.resolve("wardrobe.yaml"))
                        .replace("  - id: down-jacket\n", "  - id: down-jacket\n    price: 240 EUR\n")
                        .replace("  - id: fleece\n", "  - id: fleece\n    price: 60,50 EUR\n"));
        Path kit = priced.resolve("kit.yaml");
        Files.writeString(
                kit,
                Files.readString(SCENARIOS.resolve("kits/typical.yaml")).replace("../wardrobe.yaml", "wardrobe.yaml"));
        Path there = folder.resolve("out");
        assertThat(run("worth", FIRST, "--kit", kit.toString(), "--out", there.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("kJ per", "money");
        int told = 0;
        for (CSVRecord row : CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get()
                .parse(Files.newBufferedReader(there.resolve("worth.csv")))) {
            String perMoney = row.get("shortfall heat saved per money [kJ]");
            if (perMoney.isEmpty()) {
                continue;
            }
            told++;
            double paid = Double.parseDouble(row.get("paid more [money]"));
            assertThat(Math.abs(paid)).isIn(240.0, 60.5, 240 - 60.5);
            assertThat(Double.parseDouble(perMoney))
                    .isCloseTo(
                            Double.parseDouble(row.get("shortfall heat saved [kJ]")) / paid,
                            withinPercentage(0.002)); // six digits are written
        }
        assertThat(told).isBetween(2, 6);
    }

    @Test
    void the_same_in_imperial_units_and_without_a_band() throws Exception {
        Path there = folder.resolve("out");
        assertThat(run("worth", FIRST, "--no-band", "--units", "imperial", "--out", there.toString()))
                .isZero();
        String page = out.toString();
        String metric = "[\\d-] (C|°C|K|kJ|MJ|g)\\b|\\[(C|°C|degC|K|kJ|kJ/g|g)\\]";
        assertThat(page).contains("[kcal]", "[oz]", "[F]", "kcal/oz").doesNotContain("draws of the model");
        // constants of the model are told in their own units, whoever reads them
        assertThat(page.lines().filter(line -> !line.contains("  model: ")))
                .noneMatch(line -> line.matches(".*(" + metric + ").*"));
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
        for (String name : new String[] {"worth.csv", "worth.svg"}) {
            assertThat(flat(Files.readString(there.resolve(name)))).as(name).doesNotContainPattern(metric);
        }
        JsonNode answer =
                new ObjectMapper().readTree(there.resolve("worth.json").toFile());
        assertThat(answer.at("/draws").isNull()).isTrue();
        String row = Files.readAllLines(there.resolve("worth.csv")).get(1);
        assertThat(Double.parseDouble(row.split(",")[2]))
                .isEqualTo(
                        answer.at("/effects/0/shortfallSaved_J").asDouble() / 4184,
                        org.assertj.core.api.Assertions.within(1e-2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--demand 0",
                "--shortfall 1200",
                "--threads 0",
                "--kit none.yaml",
                "--person none.yaml",
                "--draws 19",
                "--draws 2001",
                "--draws many",
                "--seed 1.5",
                "--units nautical",
                "--no-band --draws=50",
                "--no-band --seed=2"
            })
    void bad_options_are_bad_input_and_nothing_is_written(String options) throws Exception {
        String[] more = options.split(" ");
        assertThat(run("worth", FIRST, "--out", folder.resolve("x").toString(), more[0], more[1]))
                .isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).isNotEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void a_laboratory_is_refused() {
        assertThat(run("worth", SCENARIOS.resolve("laboratory.yaml").toString(), "--json", "-"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("a laboratory has no weather");
    }

    @Test
    void help_has_one_worked_example() {
        assertThat(run("worth", "--help")).isZero();
        assertThat(out.toString()).contains("Example:", "longnight worth scenarios/first-night.yaml");
    }

    private static String flat(String text) {
        return text.replaceAll("<[^>]*>", " ").replace("#", " ").replaceAll("\\s+", " ");
    }
}
