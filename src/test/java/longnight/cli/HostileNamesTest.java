package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

/** Names are people's own: whatever they hold is shown, nothing of it acts, and no file lies where it should not. */
class HostileNamesTest {
    private static final String MANY = "x".repeat(10_000);

    @TempDir
    Path folder;

    static List<String> names() {
        return List.of(
                "<script>alert(1)</script>",
                "</text></svg><script>",
                "../../x",
                "/etc/x",
                "C:\\x",
                "a & b; \"c\" 'd' ${name} {0} %s",
                "=1+1,\"x\"\t#",
                MANY,
                "\u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627",
                "safe \u202e ton si \u2066x",
                "\ud83e\udde5\ud83c\udfd4\ufe0f e\u0301");
    }

    @ParameterizedTest
    @MethodSource("names")
    void names_are_shown_and_nothing_else(String raw) throws Exception {
        String name = raw.replace("\t", " "); // a control character is refused when read
        Path inside = Files.createDirectories(folder.resolve("a/b/c"));
        Path to = inside.resolve("mine");
        Session start = Session.of("start", to.toString(), "--name", name, "--cold", "5 °C");
        assertThat(start.code()).as(start.err()).isZero();
        String quoted = new ObjectMapper().writeValueAsString(name);
        put(to.resolve("night.yaml"), "title: .*", "title: " + quoted);
        put(to.resolve("night.yaml"), "name: a place of my own", "name: " + quoted);
        put(to.resolve("kits/typical.yaml"), "name: typical", "name: " + quoted);
        put(to.resolve("kits/typical.yaml"), "- batt-parka", "- " + quoted);
        put(to.resolve("wardrobe.yaml"), "id: batt-parka", "id: " + quoted);
        put(to.resolve("wardrobe.yaml"), "name: batt parka with hood", "name: " + quoted);
        put(to.resolve("wardrobe.yaml"), "mass: 750 g", "mass: 750 g\n    finish: gone");
        String damp = name.length() < 1000 ? "\n  damp: {" + quoted + ": 30 %}" : ""; // YAML's own limit for a key
        put(to.resolve("night.yaml"), "to: 06:30 .*", "to: 20:00" + damp);
        Path out = inside.resolve("out");
        Session night = Session.of("night", to.resolve("night.yaml").toString(), "--out", out.toString());
        assertThat(night.code()).as(night.err()).isZero();
        Path other = Files.copy(to.resolve("kits/typical.yaml"), to.resolve("kits/other.yaml"));
        put(other, "name: .*", "name: other");
        Path compared = inside.resolve("compared");
        Session compare = Session.of(
                "compare",
                to.resolve("night.yaml").toString(),
                "--kit",
                to.resolve("kits/typical.yaml").toString(),
                "--kit",
                other.toString(),
                "--out",
                compared.toString());
        assertThat(compare.code()).as(compare.err()).isZero();
        assertThat(Session.flat(words("report.html", Files.readString(compared.resolve("report.html")))))
                .contains(Session.flat(shown(name)), "permission");
        Session check = Session.of("check", to.resolve("night.yaml").toString());
        assertThat(check.code()).as(check.err()).isZero();

        Map<String, String> texts = new TreeMap<>(Map.of("page", night.out(), "check", check.out()));
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(file.startsWith(to) || file.startsWith(out) || file.startsWith(compared))
                        .as(file.toString())
                        .isTrue();
                if (file.startsWith(out) && !file.toString().endsWith(".png")) {
                    texts.put(file.getFileName().toString(), Files.readString(file));
                }
            }
        }
        String shown = shown(name);
        texts.forEach((file, text) -> {
            assertThat(text).as(file).contains("permission");
            if (!file.endsWith(".json")) {
                assertThat(text).as(file).doesNotContain("\u202e", "\u2066", "\u001b");
            }
            if (!file.endsWith(".json") && !file.equals("check")) {
                assertThat(Session.flat(words(file, text))).as(file).contains(Session.flat(shown));
            }
        });
        JsonNode json = new ObjectMapper().readTree(out.resolve("night.json").toFile());
        assertThat(json.findValuesAsText("name")).contains(name);
        checkCsv(texts.get("hours.csv"));
        if (name == MANY) {
            assertThat(night.out().lines()).allMatch(line -> line.length() <= 114 || line.contains(out.toString()));
        }
    }

    /** As texts for people give it: no controls, shortened. */
    private static String shown(String name) {
        String clean = name.replaceAll("[\u202e\u2066]", " ");
        return clean.length() > 60 ? clean.substring(0, 57) + "..." : clean;
    }

    private static String words(String file, String text) {
        if (file.endsWith(".html")) {
            assertThat(text).doesNotContain("<script").doesNotContainPattern("(src|href)=\"(?!data:|#)");
            return text.replaceAll("<[^>]*>", " ")
                    .replace("&quot;", "\"")
                    .replace("&#39;", "'")
                    .replace("&lt;", "<")
                    .replace("&gt;", ">")
                    .replace("&amp;", "&");
        }
        if (!file.endsWith(".svg")) {
            return text;
        }
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            Document svg =
                    factory.newDocumentBuilder().parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
            assertThat(svg.getElementsByTagName("script").getLength()).isZero();
            return svg.getDocumentElement().getTextContent();
        } catch (Exception fault) {
            throw new AssertionError(file, fault);
        }
    }

    /** Names stand in remarks only; every row of figures is one. */
    private static void checkCsv(String text) throws Exception {
        CSVFormat format = CSVFormat.RFC4180.builder().setCommentMarker('#').get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<CSVRecord> rows = parser.getRecords();
            assertThat(rows)
                    .hasSize(4)
                    .allMatch(row -> row.size() == rows.get(0).size());
        }
    }

    private static void put(Path file, String pattern, String text) throws Exception {
        String old = Files.readString(file);
        String changed = old.replaceFirst(pattern, Matcher.quoteReplacement(text));
        assertThat(changed).as(pattern).isNotEqualTo(old);
        Files.writeString(file, changed);
    }
}
