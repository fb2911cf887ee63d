package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.DocTable;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.report.NightFixture;
import longnight.study.ComparedBand.Amount;
import longnight.study.ComparedBand.Entry;
import org.junit.jupiter.api.Test;

/** How much better the difference of two kits is known than either of them. */
class ComparedBandTest {
    private static final int DRAWS = ComparedBand.DRAWS;
    private static final List<String> NIGHTS = List.of("first-night", "sleet-front");

    /**
     * Neighbours, each pair for its kind: one piece of another fill, one piece more for each part of the body, all pieces of one
     * sort exchanged for thicker ones. The first was named as "the" pair of neighbours before any figure was seen.
     */
    private static final List<List<String>> NEIGHBOURS =
            List.of(List.of("typical", "typical-down"), List.of("light", "typical"), List.of("typical", "heavy"));

    private static final String PAGE = """
            # How well the difference of two kits is known

            `compare` runs all under the same draws of the model (docs/band.md) and takes differences draw by draw, so that what both
            share drops out. The question was whether the middle 80 %% of the difference between neighbours is at most a third as wide as
            that of either. The pair to judge it by was named before any figure was seen: the typical kit with a batt parka and the
            one with a down parka of the same mass, first night. **It is not met there.** The table has every pair of neighbours of the
            shipped kits, %d draws, seed %d.

            | night | kits | quantity | band of the first | of the second | of the difference | as a share of the narrower | a third |
            |---|---|---|---|---|---|---|---|
            %s

            **What drops out and what does not.** Person, weather, skin, most of the clothes and the wind on them are shared. What a batt
            and what a down fill are worth hangs on constants of their own, and so does what is worn by one kit alone; those do not drop out,
            and no number of draws makes them. Between kits of one sort (typical and heavy) the difference is known four
            to five times as well as either kit on the first night and two to three times in sleet; between sorts only about twice as
            well, or hardly better. An order is known better than any of its figures even there: on the first night the middle 80 %% of
            no difference holds zero.
            """;

    private static NightResult night(String night, String kit) {
        return NightEngine.compile(ColdSearchTest.night(night, kit), ModelChoice.nominal())
                .run(NumericalSettings.standard());
    }

    private static double width(Spread spread) {
        return spread.high() - spread.low();
    }

    private static double share(Amount one, Amount other) {
        return width(other.more()) / Math.min(width(one.own()), width(other.own()));
    }

    private static List<Entry> compared(String night, List<String> kits) {
        List<NightResult> results = kits.stream().map(kit -> night(night, kit)).toList();
        return ComparedBand.of(results, Draws.of(DRAWS, Draws.SEED), 2).all();
    }

    /** Within one sort of clothes it is a third and less; the kit named beforehand is of another sort, and the page says so. */
    @Test
    void the_page_shows_how_much_better_a_difference_is_known() throws Exception {
        List<String> rows = new ArrayList<>();
        for (String night : NIGHTS) {
            for (List<String> kits : NEIGHBOURS) {
                List<Entry> entries = compared(night, kits);
                Entry one = entries.get(0);
                Entry other = entries.get(1);
                rows.add(row(night, kits, "demand", one.demand(), other.demand(), 1, 2));
                rows.add(row(night, kits, "shortfall heat [kJ]", one.shortfallHeat(), other.shortfallHeat(), 1e-3, 0));
                if (night.equals("first-night")) {
                    assertThat(share(one.demand(), other.demand())).isLessThan(0.7);
                    boolean oneSort = kits.contains("heavy");
                    assertThat(share(one.demand(), other.demand()) < 1.0 / 3).isEqualTo(oneSort);
                    assertThat(share(one.shortfallHeat(), other.shortfallHeat()) < 1.0 / 3)
                            .isEqualTo(oneSort);
                    assertThat(other.demand().more().holdsZero()).isFalse();
                }
            }
        }
        DocTable.check("docs/differences.md", PAGE.formatted(DRAWS, Draws.SEED, String.join("\n", rows)));
    }

    private static String row(
            String night, List<String> kits, String quantity, Amount one, Amount other, double scale, int decimals) {
        double share = share(one, other);
        return String.format(
                Locale.ROOT,
                "| %s | %s, %s | %s | %s | %s | %s | %.0f %% | %s |",
                night,
                kits.get(0),
                kits.get(1),
                quantity,
                range(one.own(), scale, decimals),
                range(other.own(), scale, decimals),
                range(other.more(), scale, decimals),
                100 * share,
                share <= 1.0 / 3 ? "met" : "**not met**");
    }

    private static String range(Spread spread, double scale, int decimals) {
        String figure = "%." + decimals + "f";
        return String.format(Locale.ROOT, figure + " to " + figure, scale * spread.low(), scale * spread.high());
    }

    /** Draws of their own would leave the difference wider than either band. */
    @Test
    void common_draws_are_what_makes_the_difference_narrow() {
        NightResult typical = night("first-night", "typical");
        NightResult heavy = night("first-night", "heavy");
        double[] ends = {0, typical.scenario().plan().duration()};
        List<Outline> one = Band.outlines(typical, NumericalSettings.coarse(), Draws.of(40, 1), 2, ends);
        List<Outline> same = Band.outlines(heavy, NumericalSettings.coarse(), Draws.of(40, 1), 2, ends);
        List<Outline> others = Band.outlines(heavy, NumericalSettings.coarse(), Draws.of(40, 2), 2, ends);
        assertThat(width(difference(one, same))).isLessThan(0.3 * width(difference(one, others)));
    }

    private static Spread difference(List<Outline> one, List<Outline> other) {
        double[] more = new double[one.size()];
        for (int i = 0; i < more.length; i++) {
            more[i] = ComparedBand.more(other.get(i), one.get(i), Outline::demand);
        }
        return Spread.of(0, more);
    }

    /** What is compared with itself does not differ; what stops early is worse than anything that does not. */
    @Test
    void differences_at_the_edges() {
        List<Entry> twins = compared("first-night", List.of("typical", "typical"));
        assertThat(twins.get(1).shortfallHeat().more()).isEqualTo(new Spread(0, 0, 0, 0));
        assertThat(twins.get(1).demand().own()).isEqualTo(twins.get(0).demand().own());
        Outline whole = Outline.of(night("first-night", "typical"), new double[] {0});
        Outline early = stopped(whole, 3600);
        Outline late = stopped(whole, 7200);
        assertThat(ComparedBand.more(early, whole, Outline::demand)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(ComparedBand.more(whole, early, Outline::demand)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(ComparedBand.more(early, late, Outline::demand)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(ComparedBand.more(early, early, Outline::demand)).isZero();
    }

    @Test
    void what_was_not_run_has_no_band_and_no_difference() {
        List<NightResult> results = List.of(NightFixture.unrun(), night("first-night", "typical"));
        List<Entry> entries = ComparedBand.of(results, Draws.of(20, 1), 2).all();
        assertThat(entries.get(0).holding()).isZero();
        assertThat(entries.get(0).demand().own().low()).isNaN();
        assertThat(entries.get(1).demand().own().low()).isPositive();
        assertThat(entries.get(1).demand().more().low()).isNaN();
        assertThat(entries.get(1).shortfallHeat().more().high()).isNaN();
    }

    private static Outline stopped(Outline o, double when) {
        return new Outline(
                o.restHeat(),
                o.verdict(),
                o.demand(),
                o.shortfallHeat(),
                o.deficitDawn(),
                o.deficitWorst(),
                o.coreDawn(),
                o.coreLowest(),
                o.lowestHand(),
                o.lowestFoot(),
                o.waterDawn(),
                when,
                o.times(),
                o.deficit());
    }
}
