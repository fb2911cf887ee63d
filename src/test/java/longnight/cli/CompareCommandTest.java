package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb from files to page, chart and tables, and all that it refuses. */
class CompareCommandTest {
    private static final String CAUTION = "This is a tool for planning.";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void kits_on_one_march_and_its_night() throws Exception {
        Path results = folder.resolve("results");
        int code = run(
                night("arrival-dry"),
                "--kit",
                kit("light"),
                "--kit",
                kit("typical"),
                "--kit",
                kit("heavy"),
                "--draws",
                "20",
                "--seed",
                "7",
                "--out",
                results.toString());
        assertThat(code).as(err.toString()).isZero();
        String page = out.toString().replaceAll("\\s+", " ");
        assertThat(page)
                .contains("Kits compared", "A light", "B typical", "C heavy", "Caution: A planning aid")
                .contains("trust it to about +-10 %", "for the draws to tell")
                .contains("Under 20 draws of the model, the same for all (seed 7)", "less A's")
                .doesNotContain("NaN", "limited by");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 114);
        List<CSVRecord> rows = rows(results.resolve("compare.csv"));
        assertThat(rows.stream().map(row -> row.get("name"))).containsExactly("light", "typical", "heavy");
        assertThat(rows.stream().map(row -> Double.parseDouble(row.get("kit mass [kg]"))))
                .isSorted();
        assertThat(Files.readString(results.resolve("compare.csv")))
                .contains("# " + CAUTION, "Draws: 20 models (seed 7)");
        assertThat(Files.readString(results.resolve("notes.txt")))
                .contains(CAUTION, "What was guessed", "B against A under the same draws", "Draws: 20 models (seed 7)");
        assertThat(Files.readString(results.resolve("compare.svg")))
                .contains("planning aid", "heavy", "B less A, draw by draw");
        assertThat(results.resolve("compare.png")).isNotEmptyFile();
        JsonNode json =
                new ObjectMapper().readTree(results.resolve("compare.json").toFile());
        assertThat(json.at("/format").asText()).isEqualTo("longnight-compare/1");
        assertThat(json.at("/compared")).hasSize(3);
        assertThat(json.at("/draws/seed").asLong()).isEqualTo(7);
        JsonNode more = json.at("/compared/2/drawn/shortfallHeat_J_lessFirst");
        assertThat(more.at("/nominal").asDouble())
                .isEqualTo(json.at("/compared/2/shortfallHeat_J").asDouble()
                        - json.at("/compared/0/shortfallHeat_J").asDouble());
        assertThat(more.at("/p10").asDouble()).isLessThan(more.at("/p90").asDouble());
        assertThat(json.at("/compared/2/drawn/toldFromFirst").asText()).isEqualTo("both");
        assertThat(Double.parseDouble(
                        rows.get(2).get("shortfall heat less that of the first, 90 % of the model's draws below [kJ]")))
                .isCloseTo(more.at("/p90").asDouble() / 1e3, org.assertj.core.api.Assertions.within(0.01));
        assertThat(json.at("/compared/0/shortfallHeat_J").doubleValue() / 1e3)
                .isCloseTo(
                        Double.parseDouble(rows.get(0).get("shortfall heat [kJ]")),
                        org.assertj.core.api.Assertions.within(0.01));
        assertThat(json.at("/cautions/0/text").asText()).startsWith(CAUTION);
        assertThat(BrowserPage.check(results)).contains("Kits compared", "light", "heavy", "kit mass [kg]");
    }

    @Test
    void nights_come_ranked_with_what_limits_them() throws Exception {
        assertThat(run(
                        night("clear-valley"),
                        night("sleet-front"),
                        night("cool-clearing"),
                        "--kit",
                        kit("typical"),
                        "--no-band",
                        "--json",
                        "-"))
                .as(err.toString())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/compared/0/name").asText()).contains("Benna clearing");
        assertThat(json.at("/compared/0/outcome").asText()).isEqualTo("holds-by-shivering");
        assertThat(json.at("/compared/2/limitedBy/0").asText()).isEqualTo("cold");
        assertThat(json.at("/compared/0/shortfallHeatSaved_J/wet").isNull()).isTrue();
        assertThat(json.at("/draws").isNull()).isTrue();
        assertThat(json.at("/compared/0/drawn").isNull()).isTrue();
        assertThat(json.at("/notes").toString()).doesNotContain("Draws:");
        assertThat(json.at("/notes").toString()).contains("one thing taken away");
        assertThat(names()).isEmpty();
    }

    @Test
    void the_same_name_twice_is_told_apart_by_its_file() throws Exception {
        Path twin = Files.createDirectories(folder.resolve("people")).resolve("twin.yaml");
        Files.copy(Path.of("scenarios/people/student.yaml"), twin);
        assertThat(run(
                        night("cool-clearing"),
                        "--person",
                        "scenarios/people/student.yaml",
                        "--person",
                        twin.toString(),
                        "--draws",
                        "20",
                        "--out",
                        folder.resolve("out").toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("(student.yaml)", "(twin.yaml)", "People compared");
    }

    @Test
    void what_cannot_be_compared_is_refused_and_nothing_is_written() throws Exception {
        String out = folder.resolve("out").toString();
        refused("nothing to compare", night("clear-valley"), "--out", out);
        refused("nothing to compare", night("clear-valley"), "--kit", kit("light"), "--out", out);
        refused(
                "Too much at once",
                night("clear-valley"),
                night("windy-ridge"),
                "--kit",
                kit("light"),
                "--kit",
                kit("heavy"),
                "--out",
                out);
        String[] seven = Stream.concat(
                        Stream.of(night("clear-valley"), "--out", out),
                        Stream.generate(() -> "--kit=" + kit("light")).limit(7))
                .toArray(String[]::new);
        refused("7 to compare: up to 6", seven);
        refused("--threads 0", night("clear-valley"), night("windy-ridge"), "--threads", "0", "--out", out);
        refused("--draws 19", night("clear-valley"), night("windy-ridge"), "--draws", "19", "--out", out);
        refused("'many'", night("clear-valley"), night("windy-ridge"), "--draws", "many", "--out", out);
        refused("'1.5'", night("clear-valley"), night("windy-ridge"), "--seed", "1.5", "--out", out);
        refused(
                "--seed and --no-band",
                night("clear-valley"),
                night("windy-ridge"),
                "--no-band",
                "--seed",
                "2",
                "--out",
                out);
        refused("nautical", night("clear-valley"), night("windy-ridge"), "--units", "nautical", "--out", out);
        refused("Missing required parameter: 'NIGHT'", "--kit", kit("light"));
        refused("is no piece of the kit", night("wet-ridge-rain"), "--kit", kit("light"), "--kit", kit("heavy"));
        Path taken = Files.writeString(folder.resolve("taken"), "mine");
        refused("not a folder", night("clear-valley"), night("windy-ridge"), "--out", taken.toString());
        assertThat(names()).containsExactly("taken");
        assertThat(Path.of("compare-out")).doesNotExist();
    }

    @Test
    void the_same_in_imperial_units() throws Exception {
        Path results = folder.resolve("results");
        assertThat(run(
                        night("clear-valley"),
                        night("cool-clearing"),
                        "--draws",
                        "20",
                        "--units",
                        "imperial",
                        "--out",
                        results.toString()))
                .as(err.toString())
                .isZero();
        String metric = "\\d (C|°C|K|kJ|kg|g)\\b|\\[(C|°C|degC|K|kJ|kg|g)\\]";
        assertThat(out.toString()).contains("[kcal]", "[F]", "[lb]", "[oz]").doesNotContainPattern(metric);
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 114);
        for (String name : List.of("compare.csv", "compare.svg")) {
            assertThat(Files.readString(results.resolve(name)).replaceAll("<[^>]*>", " "))
                    .as(name)
                    .doesNotContainPattern(metric);
        }
        String notes = Files.readString(results.resolve("notes.txt"));
        assertThat(notes.substring(0, notes.indexOf("What was guessed"))).doesNotContainPattern(metric);
        CSVRecord first = rows(results.resolve("compare.csv")).get(0);
        JsonNode json =
                new ObjectMapper().readTree(results.resolve("compare.json").toFile());
        assertThat(Double.parseDouble(first.get("shortfall heat [kcal]")))
                .isCloseTo(
                        json.at("/compared/0/shortfallHeat_J").doubleValue() / 4184,
                        org.assertj.core.api.Assertions.within(0.01));
        assertThat(first.get("kit mass [lb]")).isNotEmpty();
    }

    @Test
    void help_has_an_example() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).contains("Example", "--kit scenarios/kits/typical.yaml", "not a permission");
    }

    private void refused(String why, String... args) {
        err.getBuffer().setLength(0);
        assertThat(run(args)).as(why).isEqualTo(2);
        assertThat(err.toString()).contains(why).doesNotContain("\tat ");
        assertThat(out.toString()).isEmpty();
    }

    private int run(String... args) {
        String[] all = Stream.concat(Stream.of("compare"), Stream.of(args)).toArray(String[]::new);
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), all);
    }

    private static List<CSVRecord> rows(Path csv) throws Exception {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        return new ArrayList<>(
                format.parse(new StringReader(Files.readString(csv))).getRecords());
    }

    private static String night(String name) {
        return "scenarios/" + name + ".yaml";
    }

    private static String kit(String name) {
        return "scenarios/kits/" + name + ".yaml";
    }

    private List<String> names() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toList());
        }
    }
}
