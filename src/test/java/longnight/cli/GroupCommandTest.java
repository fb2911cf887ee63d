package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import longnight.report.GroupFiles;
import longnight.report.Prose;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb from a file to page, pictures and tables, and all that it refuses. */
class GroupCommandTest {
    private static final String FOUR = "scenarios/groups/four-in-the-forest.yaml";
    private static final String OWN = Prose.text("group.caution");

    @TempDir
    Path folder;

    private Session run(String... args) {
        return Session.of(Stream.concat(Stream.of("group"), Stream.of(args)).toArray(String[]::new));
    }

    @Test
    void everything_is_written_in_either_unit_system_with_every_caution() throws Exception {
        Map<String, JsonNode> json = new TreeMap<>();
        Map<String, String> pages = new TreeMap<>();
        for (String units : List.of("metric", "imperial")) {
            Path there = folder.resolve(units);
            Session session = run(FOUR, "--out", there.toString(), "--units", units);
            assertThat(session.code()).as(session.err()).isZero();
            assertThat(session.err()).isEmpty();
            pages.put(units, session.out());
            assertThat(session.out().lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(114));
            json.put(
                    units,
                    new ObjectMapper().readTree(there.resolve("group.json").toFile()));
            assertThat(BrowserPage.check(there)).contains("A group on one night", "the most exposed always inside");
            List<String> expected = new ArrayList<>();
            json.get(units).at("/cautions").forEach(caution -> expected.add(constant(caution.at("/code"))));
            assertThat(expected).contains("PLANNING_AID", "EXTREMITIES");
            assertThat(Session.flat(session.out())).contains(Session.flat(OWN));
            for (String code : expected) {
                assertThat(Session.flat(session.out())).contains(shortOf(code));
            }
            for (String name : GroupFiles.NAMES) {
                Path file = there.resolve(name);
                assertThat(file).isNotEmptyFile();
                if (name.endsWith(".png")) {
                    assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(1080);
                    continue;
                }
                String text = words(name, Files.readString(file));
                assertThat(text).as(name).contains(Session.flat(OWN));
                for (String code : expected) {
                    assertThat(text.contains(shortOf(code)) || text.contains(fullOf(code)))
                            .as(name + " " + code)
                            .isTrue();
                }
            }
        }
        assertThat(json.get("imperial")).isEqualTo(json.get("metric"));
        assertThat(pages.get("metric")).contains("[kJ/kg]", "[g]").doesNotContain("kcal");
        assertThat(pages.get("imperial")).contains("[kcal/lb]", "[oz]").doesNotContain("kJ", " g ", "[C]");
    }

    private static String constant(JsonNode code) {
        return code.asText().toUpperCase(java.util.Locale.ROOT).replace('-', '_');
    }

    private static String shortOf(String code) {
        return Session.flat(Prose.text("caution." + code + ".short", "34 °C")).replace("°C", "C");
    }

    private static String fullOf(String code) {
        try {
            return Session.flat(Prose.text("caution." + code + ".full", "34 °C"));
        } catch (IllegalArgumentException none) {
            return shortOf(code);
        }
    }

    private static String words(String name, String text) throws Exception {
        if (name.endsWith(".json")) {
            JsonNode json = new ObjectMapper().readTree(text);
            return Session.flat(json.at("/caution").asText() + " " + String.join(" ", json.findValuesAsText("text")));
        }
        return Session.flat(text.replaceAll("<[^>]*>", " ")
                .replace("\n# ", " ")
                .replace("&quot;", "\"")
                .replace("&gt;", ">")
                .replace("&lt;", "<")
                .replace("&apos;", "'"));
    }

    /** The same figures in other units: each column of the one is a multiple, or a temperature, of the other. */
    @Test
    void tables_say_the_same_in_both_units() throws Exception {
        assertThat(run(FOUR, "--out", folder.resolve("m").toString()).code()).isZero();
        assertThat(run(FOUR, "--out", folder.resolve("i").toString(), "--units", "imperial")
                        .code())
                .isZero();
        int compared = 0;
        for (String name : List.of("people.csv", "people-hours.csv", "spares.csv", "rota.csv", "rota-turns.csv")) {
            List<CSVRecord> metric = rows(folder.resolve("m").resolve(name));
            List<CSVRecord> imperial = rows(folder.resolve("i").resolve(name));
            assertThat(imperial).hasSameSizeAs(metric);
            CSVRecord head = metric.get(0);
            for (int column = 0; column < head.size(); column++) {
                for (int row = 1; row < metric.size(); row++) {
                    String expected = metric.get(row).get(column);
                    String found = imperial.get(row).get(column);
                    String unit = head.get(column).replaceAll("^[^\\[]*(\\[(.*)])?$", "$2");
                    String other = imperial.get(0).get(column).replaceAll("^[^\\[]*(\\[(.*)])?$", "$2");
                    if (unit.equals(other)) {
                        assertThat(found).isEqualTo(expected);
                    } else if (!expected.isEmpty()) {
                        double value = Double.parseDouble(expected);
                        double should = inOther(unit, other, value);
                        assertThat(Double.parseDouble(found))
                                .as(name + " " + head.get(column))
                                .isCloseTo(
                                        should, org.assertj.core.api.Assertions.within(1e-5 * Math.abs(should) + 1e-4));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    /** Independent of the program's own units: NIST SP 811 (2008), appendix B. */
    private static double inOther(String unit, String other, double value) {
        return switch (unit + " " + other) {
            case "kJ kcal" -> value / 4.184;
            case "kg lb" -> value / 0.45359237;
            case "g oz" -> value / 28.349523125;
            case "kJ/kg kcal/lb" -> value / 4.184 * 0.45359237;
            case "°C °F" -> 1.8 * value + 32;
            default -> throw new AssertionError(unit + " against " + other);
        };
    }

    private static List<CSVRecord> rows(Path file) throws Exception {
        CSVFormat format = CSVFormat.RFC4180.builder().setCommentMarker('#').get();
        try (CSVParser parser = CSVParser.parse(Files.readString(file), format)) {
            return parser.getRecords();
        }
    }

    @Test
    void the_json_says_who_is_exposed_what_helps_and_what_turns_give() throws Exception {
        Session session = run(FOUR, "--json", "-", "--threads", "1");
        JsonNode json = new ObjectMapper().readTree(session.out());
        assertThat(json.at("/format").asText()).isEqualTo("longnight-group/1");
        assertThat(json.at("/mostExposed").asText()).isEqualTo("tall");
        assertThat(json.at("/people")).hasSize(4);
        assertThat(json.at("/people/0/id").asText()).isEqualTo("tall");
        assertThat(json.at("/people/0/reserve").asDouble())
                .isEqualTo(2 - json.at("/people/0/demand").asDouble());
        assertThat(json.at("/outcome")).isEqualTo(json.at("/people/0/outcome"));
        assertThat(json.at("/bestSpareForMostExposed")).isEqualTo(json.at("/spares/0/spare"));
        assertThat(json.at("/sparesNobodyWouldPutOn")).hasSize(1);
        assertThat(json.at("/handedOut/0/to").asText()).isEqualTo("tall");
        assertThat(json.at("/rotas")).hasSize(4);
        assertThat(json.at("/rotas/1/turns").asText()).isEqualTo("even");
        assertThat(json.at("/rotas/1/outside")).hasSize(22);
        assertThat(run(FOUR, "--json", "-", "--threads", "2").out()).isEqualTo(session.out());
    }

    @Test
    void without_spares_and_huddle_there_are_people_alone() throws Exception {
        Path file = two("");
        Session session = run(file.toString(), "--out", folder.resolve("o").toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).contains("2 people").doesNotContain("spare", "Huddle", "{");
        assertThat(folder.resolve("o/people.csv")).exists();
        assertThat(folder.resolve("o/spares.csv")).doesNotExist();
        assertThat(folder.resolve("o/rota.svg")).doesNotExist();
    }

    /** Everybody has boots on. */
    @Test
    void where_nothing_helps_it_says_so() throws Exception {
        Path file = two("wardrobe: W\nspares: [{id: felt-boots}]\n");
        Session session = run(file.toString(), "--out", folder.resolve("o").toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(Session.flat(session.out()))
                .contains("None of the spares saves a,", "Nobody of the group would put on: felt-boots.")
                .doesNotContain("felt-boots helps", "felt-boots to ");
        assertThat(Session.flat(Files.readString(folder.resolve("o/spares.svg")).replaceAll("<[^>]*>", " ")))
                .contains("Nothing that they would put on.");
    }

    /** Nothing in a name steers a terminal, turns writing round or breaks a table; JSON has it whole. */
    @Test
    void hostile_names_stay_names() throws Exception {
        Path file = two(
                "wardrobe: W\nspares: [{id: mat}, {id: vest}]\nhuddle: {inner: spooning, outer: alone, outer-places: 1, swap: 1 h}\n");
        Files.writeString(file, Files.readString(file).replace("id: a,", "id: \"a\\u202e, <b> '\\\" | c\","));
        Path there = folder.resolve("o");
        Session session = run(file.toString(), "--out", there.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).doesNotContain("\u202e").contains("a , <b> '\" | c");
        for (String name : GroupFiles.NAMES) {
            if (name.endsWith(".svg") || name.endsWith(".csv") || name.endsWith(".txt")) {
                assertThat(Files.readString(there.resolve(name))).as(name).doesNotContain("\u202e");
            }
            if (name.endsWith(".svg")) {
                assertThat(Files.readString(there.resolve(name))).as(name).doesNotContain("<b>");
            }
            if (name.endsWith(".csv")) {
                List<CSVRecord> rows = rows(there.resolve(name));
                assertThat(rows).allMatch(row -> row.size() == rows.get(0).size());
            }
        }
        JsonNode json = new ObjectMapper().readTree(there.resolve("group.json").toFile());
        assertThat(json.findValuesAsText("id")).contains("a\u202e, <b> '\" | c");
    }

    private Path two(String more) throws Exception {
        Path scenarios = Path.of("scenarios").toAbsolutePath();
        return Files.writeString(
                folder.resolve("two.yaml"),
                ("name: two\nnight: S/overcast-forest.yaml\npeople:\n"
                                + "  - {id: a, person: S/people/student.yaml, kit: S/kits/light.yaml}\n"
                                + "  - {id: b, person: S/people/instructor.yaml}\n" + more)
                        .replace("S/", scenarios + "/")
                        .replace("wardrobe: W", "wardrobe: " + scenarios.resolve("wardrobe.yaml")));
    }

    @ParameterizedTest
    @CsvSource({
        "name: two,naem: two,'two.yaml:1:1: unknown key \"naem\"'",
        "'id: b','id: a','two.yaml:5:10: id \"a\" for the second time; line 4 has this one'",
        "people/instructor.yaml,people/nobody.yaml,'two.yaml:5:21: there is no file'"
    })
    void bad_files_end_with_two_and_write_nothing(String written, String instead, String message) throws Exception {
        Path file = two("");
        Files.writeString(file, Files.readString(file).replace(written, instead));
        Session session = run(file.toString(), "--out", folder.resolve("o").toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err().replace(folder + "/", "")).startsWith(message);
        assertThat(folder.resolve("o")).doesNotExist();
    }

    @Test
    void a_night_in_laboratory_clothing_is_refused() throws Exception {
        Path file = two("");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("overcast-forest.yaml", "laboratory.yaml")
                        .replaceAll(", kit: [^}]*", ""));
        Session session = run(file.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("two.yaml:2:8: a night in laboratory clothing; name a night with kits");
    }

    @Test
    void nights_that_cannot_be_compared_are_refused() throws Exception {
        Path file = two("");
        String text = Files.readString(file);
        Files.writeString(file, text.replace("people/instructor.yaml", "people/child.yaml"));
        Path child = folder.resolve("child.yaml");
        Files.writeString(child, "name: child\nsex: male\nage: 9 years\nheight: 135 cm\nmass: 31 kg\n");
        Files.writeString(
                file, text.replaceAll("\\S+people/instructor.yaml", Matcher.quoteReplacement(child.toString())));
        Session outside = run(file.toString());
        assertThat(outside.code()).isEqualTo(2);
        assertThat(outside.err()).contains("the night of \"b\" lies outside the model's range", "age");
        String night = Files.readString(Path.of("scenarios/overcast-forest.yaml"))
                .replace("people/", Path.of("scenarios/people").toAbsolutePath() + "/")
                .replace("kits/", Path.of("scenarios/kits").toAbsolutePath() + "/")
                .replace("to: 06:00", "to: 22:00");
        Path brief = Files.writeString(folder.resolve("brief.yaml"), night);
        Files.writeString(file, text.replaceAll("night: \\S+", Matcher.quoteReplacement("night: " + brief)));
        Session session = run(file.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("the night of \"a\" is shorter than the four hours");
    }

    @Test
    void bad_options_are_bad_input() {
        assertThat(run(FOUR, "--units", "furlongs").code()).isEqualTo(2);
        assertThat(run(FOUR, "--threads", "0").code()).isEqualTo(2);
        assertThat(run().code()).isEqualTo(2);
        assertThat(run("no-such.yaml").code()).isEqualTo(2);
    }

    @Test
    void the_example_of_the_help_runs_as_written() {
        Session help = run("--help");
        assertThat(help.code()).isZero();
        Matcher example = Pattern.compile("Example:\\s+longnight (group \\S+)").matcher(help.out());
        assertThat(example.find()).isTrue();
        List<String> words = new ArrayList<>(List.of(example.group(1).split(" ")));
        words.addAll(List.of("--out", folder.resolve("o").toString())); // not into the project
        Session session = Session.of(words.toArray(String[]::new));
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).contains("Most exposed: tall");
    }

    @Test
    void check_reads_a_group_back() {
        Session check = Session.of("check", FOUR);
        assertThat(check.code()).as(check.err()).isZero();
        assertThat(Session.flat(check.out())).contains("read as a group", "swap 30 min", "A planning aid");
    }
}
