package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import longnight.report.Console;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet is one page, in type that can be read, with all its cautions, whatever the names are. */
class PocketCommandTest {
    private static final Path SCENARIOS = Path.of("scenarios").toAbsolutePath();
    private static final String MARCH = SCENARIOS.resolve("arrival-dry.yaml").toString();

    /** Height of the tallest letters and depth of the deepest, in type of 12 points. */
    private static final double INK = 12;

    @TempDir
    Path folder;

    /** Every letter on the page where it stands. */
    private static final class Letters extends PDFTextStripper {
        final List<TextPosition> all = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition text) {
            all.add(text);
            super.processTextPosition(text);
        }
    }

    @Test
    void a_sheet_of_letter_paper_in_imperial_units_has_the_same_bytes_on_one_thread_and_on_two() throws Exception {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        for (Path out : List.of(one, two)) {
            Session session = Session.of(
                    "pocket",
                    MARCH,
                    "--paper",
                    "letter",
                    "--units",
                    "imperial",
                    "--date",
                    "2027-01-16",
                    "--threads",
                    out == one ? "1" : "2",
                    "--out",
                    out.toString());
            assertThat(session.code()).as(session.err()).isZero();
            assertThat(session.out())
                    .contains("KIT", "MHN", "lb", "permission", "letter")
                    .doesNotContain(" kJ", "°C");
        }
        for (String name : List.of("pocket.pdf", "pocket.csv", "pocket.json", "notes.txt")) {
            assertThat(one.resolve(name)).as(name).hasSameBinaryContentAs(two.resolve(name));
        }
        String text = read(one.resolve("pocket.pdf"), 612, 792);
        assertThat(text)
                .contains("steady 2.24 mph in the open", "2027-01-16.", "10 min after stopping", "Walking, open up")
                .contains("Emergency words", "Latest time", "Exit", "Names", "T typical: the instructor; W weakest")
                .doesNotContain("°C", " kJ", " m/s");
        assertThat(Files.readString(one.resolve("pocket.csv")).lines().filter(line -> !line.startsWith("#")))
                .hasSize(1 + 8 * 2 * 3 * 2);
        JsonNode json = new ObjectMapper().readTree(one.resolve("pocket.json").toFile());
        assertThat(json.at("/table")).hasSize(8 * 2 * 3 * 2);
        for (JsonNode caution : json.at("/cautions")) {
            assertThat(caution.at("/text").asText()).isNotBlank();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-night", "wet-ridge-rain"})
    void a_sheet_of_a4_holds_every_caution_in_full(String night) throws Exception {
        Path out = folder.resolve("out");
        Session session =
                Session.of("pocket", SCENARIOS.resolve(night + ".yaml").toString(), "--out", out.toString());
        assertThat(session.code()).as(session.err()).isZero();
        String text = read(out.resolve("pocket.pdf"), 595.276f, 841.89f);
        assertThat(text)
                .contains(
                        "steady 1 m/s in the open", "HELPS MOST", "WORST LEFT OUT", "EAT", "GUESSED", "input ", "Date")
                .containsPattern("\\d\\.\\d\\d no \\d\\d:\\d\\d");
        for (JsonNode caution :
                new ObjectMapper().readTree(out.resolve("pocket.json").toFile()).at("/cautions")) {
            assertThat(text).contains(Session.flat(caution.at("/text").asText()));
        }
    }

    /** Two verbs that are asked the same must not give two answers. */
    @Test
    void a_typical_person_begun_dry_is_told_what_coldest_tells() throws Exception {
        String night = SCENARIOS.resolve("overcast-forest.yaml").toString();
        assertThat(Session.of("coldest", night, "--out", folder.resolve("c").toString())
                        .code())
                .isZero();
        assertThat(Session.of("pocket", night, "--out", folder.resolve("p").toString())
                        .code())
                .isZero();
        List<String> told = rows(folder.resolve("c/temperature-by-wind.csv")).stream()
                .map(row -> String.join(",", row.get(0), row.get(2), row.get(3), row.get(4), row.get(5)))
                .toList();
        List<String> typical = rows(folder.resolve("p/pocket.csv")).stream()
                .filter(row -> row.get(4).equals("dry") && !row.get(2).equals("a small lean person"))
                .map(row -> String.join(",", row.get(0), row.get(3), row.get(5), row.get(6), row.get(7)))
                .toList();
        assertThat(typical).hasSize(8 * 3).isEqualTo(told);
    }

    private static List<CSVRecord> rows(Path table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = format.parse(Files.newBufferedReader(table))) {
            return parser.getRecords();
        }
    }

    @Test
    void no_name_breaks_it() throws Exception {
        Path to = folder.resolve("mine");
        assertThat(Session.of("start", to.toString(), "--name", "x".repeat(10_000), "--cold", "5 °C")
                        .code())
                .isZero();
        put(to.resolve("night.yaml"), "name: a place of my own", "name: \"<script>alert(1)</script> \\u202e x\"");
        put(to.resolve("night.yaml"), "title: .*", "title: \"\\U0001F9E5\"");
        put(
                to.resolve("kits/typical.yaml"),
                "name: typical",
                "name: \"\u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627 (1)\"");
        String piece = "\"\\U0001F9E5\\U0001F3D4 e\\u0301 " + "w".repeat(300) + "\"";
        put(to.resolve("kits/typical.yaml"), "- batt-parka", "- " + piece);
        put(to.resolve("wardrobe.yaml"), "id: batt-parka", "id: " + piece);
        Path out = folder.resolve("out");
        Session session = Session.of("pocket", to.resolve("night.yaml").toString(), "--out", out.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(read(out.resolve("pocket.pdf"), 595.276f, 841.89f)).contains("<script>alert(1)", "\u25a1\u25a1");
    }

    /** One page of black type of at least 12 points, all of it on the paper and none of it over other type. */
    private static String read(Path file, float width, float height) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isOne();
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isEqualTo(width);
            assertThat(page.getMediaBox().getHeight()).isEqualTo(height);
            Letters letters = new Letters();
            String text = letters.getText(document);
            assertThat(letters.all).hasSizeGreaterThan(2500).allSatisfy(each -> {
                assertThat(each.getFontSizeInPt()).isGreaterThanOrEqualTo(12);
                assertThat(each.getYScale()).isGreaterThanOrEqualTo(12);
                assertThat(each.getX()).isGreaterThanOrEqualTo(14);
                assertThat(each.getX() + each.getWidth()).isLessThanOrEqualTo(width - 14);
                assertThat(each.getY()).isBetween(14 + 9f, height - 14);
            });
            assertApart(letters.all);
            String flat = Session.flat(text);
            assertThat(flat).contains(Session.flat(Console.cautionInFull().substring("Caution".length())));
            return flat;
        }
    }

    private static void assertApart(List<TextPosition> letters) {
        List<TextPosition> placed = new ArrayList<>(letters);
        placed.sort(Comparator.comparingDouble(TextPosition::getY).thenComparingDouble(TextPosition::getX));
        for (int i = 1; i < placed.size(); i++) {
            TextPosition one = placed.get(i - 1);
            TextPosition other = placed.get(i);
            if (other.getY() - one.getY() < 0.01) {
                assertThat(other.getX())
                        .as(one.getUnicode() + other.getUnicode())
                        .isGreaterThanOrEqualTo(one.getX() + one.getWidth() - 0.1f);
            } else {
                assertThat(other.getY() - one.getY()).isGreaterThanOrEqualTo((float) INK);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--paper a5",
                "--date 2027-02-30",
                "--date tomorrow",
                "--threads 0",
                "--kit none.yaml",
                "--person none.yaml",
                "--units nautical"
            })
    void bad_options_are_bad_input_and_nothing_is_written(String options) throws Exception {
        String[] more = options.split(" ");
        Session session =
                Session.of("pocket", MARCH, "--out", folder.resolve("x").toString(), more[0], more[1]);
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err()).isNotEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void a_laboratory_is_refused() {
        Session session =
                Session.of("pocket", SCENARIOS.resolve("laboratory.yaml").toString(), "--json", "-");
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("a laboratory has no weather");
    }

    @Test
    void help_has_one_worked_example() {
        Session session = Session.of("pocket", "--help");
        assertThat(session.code()).isZero();
        assertThat(session.out()).contains("Example:", "longnight pocket scenarios/arrival-dry.yaml --paper letter");
    }

    private static void put(Path file, String pattern, String text) throws Exception {
        String old = Files.readString(file);
        String changed = old.replaceFirst(pattern, Matcher.quoteReplacement(text));
        assertThat(changed).as(pattern).isNotEqualTo(old);
        Files.writeString(file, changed);
    }
}
