package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longnight.assumption.Guess;
import longnight.night.HourRow;
import longnight.night.NightResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConsoleTest {
    static java.util.stream.Stream<NightResult> nights() {
        return CautionsEverywhereTest.nights();
    }

    /** Fifty rows is the height of a tall terminal window. */
    @ParameterizedTest
    @MethodSource("nights")
    void the_page_fits_a_window_and_is_plain(NightResult night) {
        List<String> lines = Console.page(night).lines().toList();
        assertThat(lines)
                .hasSizeLessThanOrEqualTo(night.water() == null ? 50 : 60) // rain, march and drill have more to tell
                .allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(Console.page(night)).matches("(?s)[\\x20-\\x7e\\n]+").endsWith("\n");
        assertThat(Console.page(night))
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("{");
    }

    @ParameterizedTest
    @MethodSource("nights")
    void the_page_with_a_band_fits_as_well(NightResult night) {
        if (!Wording.hasRun(night)) {
            return;
        }
        String page = Console.page(night, BandFixture.of(night, 200, 1), Units.METRIC);
        assertThat(page.lines().toList())
                .hasSizeLessThanOrEqualTo(night.water() == null ? 50 : 62)
                .allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(page.replaceAll("\\s+", " "))
                .contains("50 of 200 draws of the model hold.", "10-90%", "of the person it says nothing")
                .doesNotContain("NaN", "Infinity", "+-10 %");
    }

    @Test
    void the_band_stands_under_its_heading() {
        NightResult night = NightFixture.failing();
        List<String> lines = Console.page(night, BandFixture.of(night, 200, 1), Units.METRIC)
                .lines()
                .toList();
        int head = 0;
        while (!lines.get(head).contains("10-90%")) {
            head++;
        }
        String units = lines.get(head);
        HourRow last = night.hours().get(night.hours().size() - 1);
        String row = lines.get(head + night.hours().size());
        assertEnds(row, units.indexOf("here") + 4, " " + Figures.deficit(last.coreHeatDeficit()));
        double kilojoules = last.coreHeatDeficit() / 1e3;
        assertEnds(
                row,
                units.indexOf("10-90%") + 6,
                " " + Figures.whole(kilojoules - 10) + "-" + Figures.whole(1.3 * kilojoules + 10));
        assertEnds(row, units.indexOf("skin") + 4, Figures.decimals(last.meanSkin(), 1));
    }

    /** Every figure of a row ends under the last letter of its heading, or the reader takes one column for another. */
    @Test
    void figures_stand_under_their_headings() {
        NightResult night = NightFixture.failing();
        List<String> lines = Console.page(night).lines().toList();
        int head = 0;
        while (!lines.get(head).startsWith("clock")) {
            head++;
        }
        String units = lines.get(head + 1);
        String row = lines.get(head + 3);
        HourRow second = night.hours().get(1);
        assertThat(row).startsWith(Figures.clock(second.clock()));
        assertEnds(row, lines.get(head).indexOf("body") + 4, Figures.decimals(second.windAtBody(), 1));
        assertEnds(row, lines.get(head).indexOf("made") + 4, Figures.whole(second.heatMade()));
        assertEnds(row, units.indexOf("air") + 3, Figures.whole(second.lostByWay()[0]));
        assertEnds(row, units.indexOf("sky") + 3, Figures.whole(second.lostByWay()[1]));
        assertEnds(row, units.indexOf("grnd") + 4, Figures.whole(second.lostByWay()[2]));
        assertEnds(row, units.indexOf("clth") + 4, Figures.whole(second.lostByWay()[5]));
        assertEnds(row, units.indexOf("shell") + 5, Figures.kilojoules(second.paidByShell()));
        assertEnds(row, units.indexOf("deficit") + 7, Figures.deficit(second.coreHeatDeficit()));
        assertEnds(row, units.indexOf("skin") + 4, Figures.decimals(second.meanSkin(), 1));
        assertEnds(row, units.indexOf("foot") + 4, Figures.decimals(second.foot(), 1));
    }

    private static void assertEnds(String row, int end, String figure) {
        assertThat(row.substring(0, end)).endsWith(figure);
    }

    @Test
    void every_guess_is_on_the_page_while_there_is_room() {
        NightResult night = NightFixture.easy();
        String page = Console.page(night).replaceAll("\\s+", " ");
        night.guessed().forEach(guess -> assertThat(page).contains(guess.subject()));
        assertThat(page).doesNotContain("in notes.txt").contains("Guessed (31)");
    }

    @Test
    void guesses_without_room_are_named() {
        NightResult night = NightFixture.easy();
        List<Guess> many = new ArrayList<>(night.guessed());
        for (int i = 0; i < 60; i++) {
            many.add(Guess.word("garment " + i, "covers", "UPPER_ARM 0.0-1.0 and FOREARM 0.0-1." + i, "from memory"));
        }
        String page = Console.page(NightFixture.guessing(night, many)).replaceAll("\\s+", " ");
        assertThat(page).contains("Guessed (91)", "and 60 more in notes.txt: covers.", "Ilse 24");
        assertThat(Notes.text(NightFixture.guessing(night, many)))
                .contains("garment 59: covers upper arm 0.0-1.0 and forearm");
    }

    @Test
    void the_other_integration_is_compared_not_hidden() {
        NightResult one = NightFixture.shivering();
        assertThat(Console.comparison(one, one, one, Units.METRIC))
                .contains("at most 0 K")
                .contains("0 kJ (0 %)")
                .doesNotContain("water");
        assertThat(Console.comparison(one, one, NightFixture.failing(), Units.METRIC))
                .doesNotContain("at most 0 K");
        assertThat(Console.comparison(NightFixture.wet(), one, one, Units.METRIC))
                .contains("without water", "at most 0 K");
        assertThat(Console.comparison(NightFixture.unrun(), NightFixture.unrun(), NightFixture.unrun(), Units.METRIC))
                .contains("nothing was reckoned");
    }

    /** Every row's ways, rain and warmth brought along included, add up to what is lost. */
    @ParameterizedTest
    @MethodSource("nights")
    void the_ways_of_a_row_add_up(NightResult night) {
        List<String> lines = Console.page(night).lines().toList();
        int first = lines.indexOf(lines.stream()
                        .filter(line -> line.contains("[m/s]") || line.contains(" m/s  [W]  air"))
                        .findFirst()
                        .orElse(""))
                + 1;
        boolean brought = Console.page(night).contains(" brgt ");
        for (int i = 1; i < night.hours().size(); i++) {
            String[] cells = lines.get(first + i).strip().split("\\s+");
            int sum = 0;
            for (int way = 0; way < (brought ? 7 : 6); way++) {
                sum += Integer.parseInt(cells[4 + way]);
            }
            // each of at most seven figures is rounded by half a watt
            assertThat((double) sum).isCloseTo(night.hours().get(i).losses(), within(3.5));
        }
    }

    @Test
    void rain_and_warmth_brought_along_have_room_only_where_there_are_some() {
        assertThat(Console.page(NightFixture.shivering()))
                .contains("grnd vapr brth clth  heat")
                .doesNotContain("grnd  wet", "wet: vapour", "brgt");
        String page = Console.page(NightFixture.wet());
        assertThat(page).contains("grnd  wet brth clth brgt  heat", "wet: vapour", "brgt: heat");
        HourRow second = NightFixture.wet().hours().get(2);
        List<String> lines = page.lines().toList();
        int head = lines.indexOf(lines.stream()
                .filter(line -> line.contains("brgt  heat"))
                .findFirst()
                .orElseThrow());
        String units = lines.get(head);
        String row = lines.get(head + 3);
        assertThat(row).startsWith(Figures.clock(second.clock()));
        assertEnds(row, units.indexOf("wet") + 3, Figures.whole(second.lostByWay()[3] + second.lostByWay()[6]));
        assertEnds(row, units.indexOf("brgt") + 4, "-9");
        assertEnds(row, units.indexOf("shell") + 5, Figures.kilojoules(second.paidByShell()));
        assertEnds(row, units.indexOf("deficit") + 7, Figures.deficit(second.coreHeatDeficit()));
    }

    @Test
    void books_that_close_exactly_close_within_the_last_digit() {
        assertThat(Console.page(NightFixture.wet()))
                .contains("Books close within 1e-12 of")
                .contains(", 1e-16 kg of water");
    }
}
