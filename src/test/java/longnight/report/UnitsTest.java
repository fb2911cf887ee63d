package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.study.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** One night told in metric and in imperial units. */
class UnitsTest {
    private static final Pattern METRIC_UNIT =
            Pattern.compile("\\d (kJ|MJ|°C|C|K|m/s|kg|g|L|kJ/m²)\\b|\\[(kJ|C|degC|g|kg|m/s)\\b|> kJ|34 °C|kJ since");

    static Stream<NightResult> nights() {
        return CautionsEverywhereTest.nights();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "TEMPERATURE, -20, -20.0 °C, -4.0 °F",
                "DIFFERENCE, 5, 5.0 K, 9.0 °F",
                "WIND, 10, 10.0 m/s, 22.4 mph",
                "HEAT, 418400, 418 kJ, 100 kcal",
                "HEAT, NaN, - kJ, - kcal",
                "TURNOVER, 4184e3, 4.2 MJ, 1000 kcal",
                "HEAT_PER_AREA, 144e3, 144 kJ/m², 34 kcal/m²",
                "HEAT_FLUX, 58, 58 W/m², 58 W/m²",
                "POWER, 91.4, 91 W, 91 W",
                "INSULATION, 0.31, 2.0 clo, 2.0 clo",
                "LOAD, 4.5359237, 4.54 kg, 10.00 lb",
                "PIECE, 0.028349523125, 28 g, 1.0 oz",
                "DRINK, 1.892705892, 1.9 L, 2.0 US qt",
            })
    void one_quantity_in_both(Measure measure, double engine, String metric, String imperial) {
        assertThat(Units.METRIC.text(measure, engine)).isEqualTo(metric);
        assertThat(Units.IMPERIAL.text(measure, engine)).isEqualTo(imperial);
    }

    @Test
    void a_rate_of_sweat_in_both() {
        assertThat(Units.METRIC.text(Measure.SWEAT_RATE, 0.05 / 3600)).isEqualTo("50 g/h");
        assertThat(Units.IMPERIAL.text(Measure.SWEAT_RATE, 0.05 / 3600)).isEqualTo("1.8 oz/h");
    }

    @ParameterizedTest
    @CsvSource({"-40000, 0", "2091, 0", "2093, <3.6", "14999, <3.6", "15000, 4", "41840, 10", "NaN, -"})
    void the_dead_band_is_the_same_band(double joules, String shown) {
        assertThat(Units.IMPERIAL.deficitNumber(joules)).isEqualTo(shown);
    }

    @Test
    void guesses_speak_the_language_of_labels_there_too() {
        Guess batt = Guess.number("parka", "batt", 0.1, "kg/m2", "from memory");
        assertThat(Units.IMPERIAL.guessedQuantity(batt) + " " + Units.IMPERIAL.guessedValue(batt, 3))
                .isEqualTo("batt [oz/yd²] 2.95");
        Guess offset = Guess.number("site", "offset", -5, "K", "from memory");
        assertThat(Units.IMPERIAL.guessedQuantity(offset) + " " + Units.IMPERIAL.guessedValue(offset, 3))
                .isEqualTo("offset [°F] -9");
    }

    @ParameterizedTest
    @MethodSource("nights")
    void nothing_metric_is_left_on_an_imperial_page_or_in_its_files(NightResult night) {
        outputs(night, Units.IMPERIAL)
                .forEach((name, text) -> assertThat(
                                name.equals("notes")
                                        ? text.substring(0, text.indexOf(Prose.text("notes.guessed")))
                                        : text)
                        .as(name)
                        .doesNotContainPattern(METRIC_UNIT));
    }

    @ParameterizedTest
    @MethodSource("nights")
    void nothing_imperial_is_on_a_metric_page_or_in_its_files(NightResult night) {
        outputs(night, Units.METRIC)
                .forEach((name, text) -> assertThat(text)
                        .as(name)
                        .doesNotContainPattern("kcal|°F|degF|\\[F\\]|mph|\\blb\\b|\\boz\\b|\\bqt\\b"));
    }

    @ParameterizedTest
    @MethodSource("nights")
    void the_imperial_page_fits_the_same_window(NightResult night) {
        List<String> lines = Console.page(night, null, Units.IMPERIAL).lines().toList();
        assertThat(lines)
                .hasSizeLessThanOrEqualTo(night.water() == null ? 50 : 61)
                .allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(Console.page(night, null, Units.IMPERIAL))
                .matches("(?s)[\\x20-\\x7e\\n]+")
                .doesNotContain("{");
    }

    @Test
    void figures_stand_under_their_headings_there_too() {
        NightResult night = NightFixture.failing();
        List<String> lines = Console.page(night, null, Units.IMPERIAL).lines().toList();
        int head = 0;
        while (!lines.get(head).startsWith("clock")) {
            head++;
        }
        String units = lines.get(head + 1);
        String row = lines.get(head + 3);
        HourRow second = night.hours().get(1);
        assertEnds(row, units.indexOf("[F]") + 3, fahrenheit(second.airCelsius()));
        assertEnds(row, units.indexOf("mph") + 3, Figures.decimals(second.windAtBody() / 0.44704, 1));
        assertEnds(row, units.indexOf("shell") + 5, Figures.whole(second.paidByShell() / 4184));
        assertEnds(row, units.indexOf("core") + 4, Figures.whole(second.paidByCore() / 4184));
        assertEnds(row, units.lastIndexOf("core") + 4, fahrenheit(second.coreCelsius()));
        assertEnds(row, units.indexOf("foot") + 4, fahrenheit(second.foot()));
        assertThat(lines.get(head - 1).length()).isLessThanOrEqualTo(Console.WIDTH);
    }

    /** The band has columns of its own on the page and words of its own everywhere. */
    @Test
    void a_band_is_told_in_the_same_units() {
        NightResult night = NightFixture.wet();
        Band band = BandFixture.of(night, 200, 1);
        String page = Console.page(night, band, Units.IMPERIAL);
        assertThat(page).contains("deficit [kcal]", "kcal", " F").doesNotContainPattern(METRIC_UNIT);
        assertThat(page.lines()).allMatch(line -> line.length() <= Console.WIDTH);
        List<String> lines = page.lines().toList();
        int head = 0;
        while (!lines.get(head).startsWith("clock")) {
            head++;
        }
        String units = lines.get(head + 1);
        HourRow second = night.hours().get(1);
        String row = lines.stream()
                .filter(line -> line.startsWith(Figures.clock(second.clock())))
                .findFirst()
                .orElseThrow();
        assertEnds(row, units.indexOf("here") + 4, Units.IMPERIAL.deficitNumber(second.coreHeatDeficit()));
        assertEnds(row, units.indexOf("10-90%") + 6, Wording.deficits(band.deficitAt(second.time()), Units.IMPERIAL));
        assertEnds(row, units.lastIndexOf("core") + 4, fahrenheit(second.coreCelsius()));
        assertThat(lines.get(head).length()).isLessThanOrEqualTo(units.indexOf("10-90%") + 6);
        for (String text : List.of(
                Notes.text(night, band, Units.IMPERIAL),
                HourCsv.text(night, band, Units.IMPERIAL),
                new String(Charts.coreHeatDeficit(night, band, Units.IMPERIAL).svg(), StandardCharsets.UTF_8))) {
            assertThat(text.lines().filter(line -> line.contains("middle 80 %")))
                    .noneMatch(line -> METRIC_UNIT.matcher(line).find());
        }
    }

    @Test
    void the_data_of_programs_is_the_same() {
        NightResult night = NightFixture.wet();
        Map<String, byte[]> metric = files(night, Units.METRIC);
        Map<String, byte[]> imperial = files(night, Units.IMPERIAL);
        assertThat(imperial.get(ResultJson.FILE)).isEqualTo(metric.get(ResultJson.FILE));
        assertThat(imperial.get(HourCsv.FILE)).isNotEqualTo(metric.get(HourCsv.FILE));
    }

    private static Map<String, byte[]> files(NightResult night, Units units) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Outputs.of(night, null, units).make(files);
        return files;
    }

    private static Map<String, String> outputs(NightResult night, Units units) {
        Map<String, String> outputs = new LinkedHashMap<>();
        outputs.put("page", Console.page(night, null, units));
        outputs.put("notes", Notes.text(night, null, units));
        outputs.put("hours", HourCsv.text(night, null, units));
        files(night, units).forEach((name, file) -> {
            if (name.endsWith(".svg") || name.endsWith(".html")) {
                outputs.put(name, new String(file, StandardCharsets.UTF_8).replaceAll("(?s)<style.*?</style>", ""));
            }
        });
        return outputs;
    }

    private static String fahrenheit(double celsius) {
        return Figures.decimals(celsius * 1.8 + 32, 1);
    }

    private static void assertEnds(String row, int end, String figure) {
        assertThat(row.substring(0, end)).as(row).endsWith(" " + figure);
    }
}
