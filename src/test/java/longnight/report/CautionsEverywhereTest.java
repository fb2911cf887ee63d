package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import longnight.figure.BodySegment;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.night.Verdict;
import longnight.night.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** Whatever reaches a person carries the cautions. Goes through everything that is written, not through a list of it. */
class CautionsEverywhereTest {
    @TempDir
    Path folder;

    static Stream<NightResult> nights() {
        return Stream.of(
                NightFixture.easy(),
                NightFixture.shivering(),
                NightFixture.failing(),
                NightFixture.stopped(),
                NightFixture.brief(),
                NightFixture.wet(),
                NightFixture.unrun());
    }

    @ParameterizedTest
    @MethodSource("nights")
    void every_output_carries_every_caution_and_the_verdict(NightResult night) throws Exception {
        Map<String, String> outputs = new TreeMap<>();
        outputs.put("page", flat(Console.page(night)));
        Outputs.write(night, folder);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (!name.endsWith(".png")) {
                    outputs.put(name, flat(words(name, Files.readAllBytes(file))));
                }
            }
        }
        assertThat(outputs).hasSize(night.water() == null ? 7 : 8);
        outputs.forEach((name, text) -> {
            boolean page = name.equals("page");
            boolean brief = page || name.endsWith(".svg");
            for (Caution caution : night.cautions()) {
                String expected = brief ? Wording.shortText(caution) : Wording.fullText(caution);
                assertThat(text).as(name).contains(flat(page ? Console.plain(expected) : expected));
            }
            String verdict = Wording.verdict(night);
            if (!name.endsWith(".json") || !night.verdict().limits().isEmpty()) {
                assertThat(text).as(name).contains(flat(page ? Console.plain(verdict) : verdict));
            }
        });
    }

    /** A picture cannot be searched for words; but its words come from the sheet that also gives the SVG. */
    @ParameterizedTest
    @MethodSource("nights")
    void the_pixels_hold_the_sheet_that_the_vectors_hold(NightResult night) throws Exception {
        List<Picture> pictures =
                new ArrayList<>(List.of(Charts.coreHeatDeficit(night), Charts.whereTheHeatGoes(night)));
        if (night.water() != null) {
            pictures.add(Charts.waterByLayer(night));
        }
        for (Picture picture : pictures) {
            BufferedImage image = image(picture.whole().png());
            Document svg = parsed(picture.svg());
            assertThat(svg.getDocumentElement().getAttribute("viewBox"))
                    .isEqualTo("0 0 " + image.getWidth() + " " + image.getHeight());
            // Ink on the line of every text, from its first letter on.
            NodeList texts = svg.getElementsByTagName("text");
            int seen = 0;
            for (int i = 0; i < texts.getLength(); i++) {
                org.w3c.dom.Element text = (org.w3c.dom.Element) texts.item(i);
                if (text.getTextContent().isBlank() || text.hasAttribute("transform")) {
                    continue;
                }
                int x = (int) Double.parseDouble(text.getAttribute("x"));
                int y = (int) Double.parseDouble(text.getAttribute("y"));
                assertThat(ink(image, x, y - 24, 60, 30))
                        .as(text.getTextContent())
                        .isGreaterThan(20);
                seen++;
            }
            assertThat(seen).isGreaterThan(10);
        }
    }

    /** All the ink of the tall sheet is on the slide and on the page for print, the cautions with it, at a size that can be read. */
    @ParameterizedTest
    @MethodSource("nights")
    void slides_and_prints_lose_nothing_of_the_sheet(NightResult night) throws Exception {
        for (Picture picture : List.of(Charts.coreHeatDeficit(night), Charts.whereTheHeatGoes(night))) {
            Sheet sheet = picture.whole();
            double tall = darkness(image(sheet.png()));
            for (int[] page : new int[][] {{1920, 1080}, {1654, 2339}}) {
                double scale = sheet.columns(page[0], page[1]).scale(Sheet.WIDTH, page[0], page[1]);
                assertThat(darkness(image(sheet.png(page[0], page[1]))))
                        .isCloseTo(tall * scale * scale, withinPercentage(1));
                // 16 pixels of a slide's 1080, and 9 points of print at 200 to the inch
                assertThat(Sheet.SMALL * scale).isGreaterThan(page[0] == 1920 ? 16 : 9 * 200 / 72.0 * 0.8);
            }
        }
    }

    private static BufferedImage image(byte[] png) throws java.io.IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    /** How much darker than paper, summed over all pixels. */
    private static double darkness(BufferedImage image) {
        double sum = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                sum += (Sheet.PAPER.getRGB() >> 8 & 0xFF) - (image.getRGB(x, y) >> 8 & 0xFF);
            }
        }
        return sum;
    }

    /** Each verb's own test reads its page; here is that none goes without, and that no page drops what it was handed. */
    @Test
    void every_answer_about_many_nights_has_a_page_with_its_cautions() {
        for (List<String> names : List.of(
                Outputs.COMPARE,
                Outputs.LEAST,
                ColdestFiles.NAMES,
                WorthFiles.NAMES,
                WintersFiles.NAMES,
                ReplayFiles.NAMES,
                SpreadFiles.NAMES,
                GroupFiles.NAMES)) {
            assertThat(names).contains(AnswerPage.FILE);
        }
        NightResult night = NightFixture.failing();
        Page page = new AnswerPage(
                        "kind",
                        "answer",
                        "",
                        "about",
                        List.of(),
                        "a caution of this kind alone",
                        EnumSet.allOf(Caution.class),
                        night.guessed(),
                        Units.METRIC)
                .made(Map.of(), Map.of("compare.csv", "name,demand [1]\na,2\n", "compare.json", "{}"));
        String text = flat(Html.text(page)
                .replaceAll("<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&#39;", "'"));
        assertThat(text).contains("a caution of this kind alone");
        for (Caution caution : Caution.values()) {
            assertThat(text).contains(flat(Wording.fullText(caution)));
        }
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void every_caution_has_words(Caution caution) {
        assertThat(Wording.shortText(caution)).hasSizeGreaterThan(40);
        assertThat(Wording.fullText(caution).length())
                .isGreaterThanOrEqualTo(Wording.shortText(caution).length());
    }

    /** A longer name would lose its first letters at the left edge of the picture. */
    @Test
    void the_names_beside_bars_fit() {
        Fonts.install();
        for (Way way : Way.values()) {
            String name = Prose.text("way." + way);
            assertThat(Sheet.width(name, Fonts.plain(Sheet.TEXT))).as(name).isLessThan(Plots.NAME_SPACE - 20);
        }
        for (BodySegment part : BodySegment.values()) {
            String name = Prose.text("part." + part);
            assertThat(Sheet.width(name, Fonts.plain(Sheet.TEXT))).as(name).isLessThan(Plots.NAME_SPACE - 20);
        }
    }

    @Test
    void every_outcome_line_and_part_has_words() {
        for (Verdict.Outcome outcome : Verdict.Outcome.values()) {
            assertThat(Prose.text("verdict." + outcome, "a", "b")).isNotBlank();
        }
        for (Verdict.Line line : Verdict.Line.values()) {
            assertThat(Prose.text("reason." + line, "a", "b", "c", "d")).contains("a");
        }
        for (Verdict.Part part : Verdict.Part.values()) {
            assertThat(Prose.text("risk." + part, "a", "b")).contains("a");
        }
    }

    /** "adequate" and "comfortable" are words of the trade for what the model does not know. */
    @Test
    void nothing_is_promised() throws Exception {
        String prose = new String(
                        Prose.class.getResourceAsStream("prose.properties").readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.joining("\n"))
                .toLowerCase(java.util.Locale.ROOT);
        assertThat(prose)
                .doesNotContainPattern("\\bsafe|guarant|surviv|\\bcomfort|adequate|recommend|you can go|suitable");
    }

    /** The points of the general caution; each must be in both of its lengths. */
    @Test
    void the_general_caution_keeps_every_point() {
        List<String> points = List.of(
                "planning",
                "permission",
                "young",
                "hours",
                "jackets",
                "illness",
                "medicine",
                "injur",
                "age",
                "alcohol",
                "pregnan",
                "tired",
                "hungr|hunger",
                "doctor",
                "frostbite",
                "wet",
                "dry",
                "worn",
                "warm",
                "instructor|watched",
                "stove",
                "bag",
                "agreed",
                "shivering",
                "clumsy",
                "confused",
                "careless",
                "numb|feel",
                "way",
                "time",
                "guidelines",
                "rules",
                "emergency",
                "call for help");
        for (String text : List.of(Wording.shortText(Caution.PLANNING_AID), Wording.fullText(Caution.PLANNING_AID))) {
            for (String point : points) {
                assertThat(text.toLowerCase(java.util.Locale.ROOT)).containsPattern(point);
            }
        }
        assertThat(EnumSet.allOf(Caution.class)).startsWith(Caution.PLANNING_AID);
    }

    private static String words(String name, byte[] file) throws Exception {
        String text = new String(file, StandardCharsets.UTF_8);
        if (name.endsWith(".json")) {
            return new com.fasterxml.jackson.databind.ObjectMapper()
                            .readTree(text).findValuesAsText("text").stream().collect(Collectors.joining(" "))
                    + " "
                    + new com.fasterxml.jackson.databind.ObjectMapper()
                            .readTree(text)
                            .at("/verdict/sentence")
                            .asText();
        }
        if (name.endsWith(".svg")) {
            NodeList texts = parsed(file).getElementsByTagName("text");
            return IntStream.range(0, texts.getLength())
                    .mapToObj(i -> texts.item(i).getTextContent())
                    .collect(Collectors.joining(" "));
        }
        if (name.endsWith(".html")) {
            return text.replaceAll("(?s)<style>.*?</style>|<[^>]*>", " ")
                    .replace("&quot;", "\"")
                    .replace("&#39;", "'")
                    .replace("&gt;", ">")
                    .replace("&lt;", "<")
                    .replace("&amp;", "&");
        }
        return name.endsWith(".csv") ? text.replace("\n# ", "\n") : text;
    }

    private static Document parsed(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static int ink(BufferedImage image, int x, int y, int width, int height) {
        int ink = 0;
        for (int i = Math.max(0, x); i < Math.min(image.getWidth(), x + width); i++) {
            for (int j = Math.max(0, y); j < Math.min(image.getHeight(), y + height); j++) {
                if ((image.getRGB(i, j) & 0xff) < 0x60) {
                    ink++;
                }
            }
        }
        return ink;
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
