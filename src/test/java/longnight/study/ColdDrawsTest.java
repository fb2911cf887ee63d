package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Scenario;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColdDrawsTest {
    private static final NumericalSettings SETTINGS = NumericalSettings.standard();
    private static final Line DEMAND = new Line(Line.Measure.DEMAND, 2);

    /** Between the looks for all crossings [K]. */
    private static final double LOOK = 4;

    private static double[] roots(Scenario night, Line line, Draws draws, int threads) {
        ColdSearch search = new ColdSearch(night, line, SETTINGS);
        return new ColdDraws(search, search.limit(ModelChoice.nominal()))
                .roots(draws, threads)
                .shifts();
    }

    /**
     * A band's ends against the draws asked one by one: of all places in the range where a draw passes the line, the one nearest
     * to the usual model's, then halving with the steps of every other answer; the losses off as the skin of the usual night there
     * is.
     */
    @ParameterizedTest
    @CsvSource({
        "first-night, DEMAND, 2.0, false",
        "first-night, DEMAND, 2.0, true",
        "windy-ridge, SHORTFALL_HEAT, 1.5e6, false",
        "first-night, CORE_HEAT_DEFICIT, 15e3, false"
    })
    void the_ends_are_those_of_a_full_search_for_each_draw(
            String name, Line.Measure measure, double most, boolean damp) {
        compare(name, new Line(measure, most), damp, 0.2);
    }

    /** Where rain turns to snow within the band the demand hardly changes with temperature: long looks move a draw further there. */
    @Tag("long")
    @Test
    void where_rain_turns_to_snow_the_ends_are_less_sure() {
        compare("sleet-front", DEMAND, false, 0.5);
    }

    private static void compare(String name, Line line, boolean damp, double by) {
        Scenario given = ColdSearchTest.night(name);
        Scenario night = damp ? ArrivedDamp.damp(given) : ArrivedDamp.dry(given);
        Draws draws = Draws.of(20, 3);
        ColdSearch search = new ColdSearch(night, line, SETTINGS);
        double usual = search.limit(ModelChoice.nominal()).shift();
        double[] full = IntStream.range(0, draws.size())
                .parallel()
                .mapToDouble(i -> searched(search, line, usual, draws, i))
                .toArray();
        double[] quick = roots(night, line, draws, 2);
        Spread slow = Spread.of(usual, full);
        Spread fast = Spread.of(usual, quick);
        assertThat(fast.low()).isCloseTo(slow.low(), within(by));
        assertThat(fast.middle()).isCloseTo(slow.middle(), within(by));
        assertThat(fast.high()).isCloseTo(slow.high(), within(by));
    }

    private static double searched(ColdSearch search, Line line, double usual, Draws draws, int draw) {
        ModelChoice model = draws.models().get(draw);
        double misfit = draws.skinMisfit(draw);
        double nearest = Double.POSITIVE_INFINITY;
        for (double at = search.warmest() - LOOK; at > search.coldest(); at -= LOOK) {
            if (excess(search, line, at, model, misfit) > 0 && !(excess(search, line, at + LOOK, model, misfit) > 0)) {
                double crossing = halved(search, line, at, at + LOOK, model, misfit);
                nearest = Math.abs(crossing - usual) < Math.abs(nearest - usual) ? crossing : nearest;
            }
        }
        return nearest;
    }

    private static double halved(
            ColdSearch search, Line line, double over, double under, ModelChoice model, double misfit) {
        double cold = over;
        double warm = under;
        while (warm - cold > 0.02) {
            double middle = (cold + warm) / 2;
            if (excess(search, line, middle, model, misfit) > 0) {
                cold = middle;
            } else {
                warm = middle;
            }
        }
        return (cold + warm) / 2;
    }

    private static double excess(ColdSearch search, Line line, double shift, ModelChoice model, double misfit) {
        Scenario there = search.at(shift);
        NightResult usual = NightEngine.compile(there, ModelChoice.nominal()).run(SETTINGS);
        Outline drawn = NightEngine.compile(there, model)
                .outline(SETTINGS, new double[] {0, there.plan().duration()});
        return line.excess(drawn.losing(misfit / Band.warmth(usual)), usual.bodyArea());
    }

    @Test
    void the_digits_are_those_of_the_seed_and_of_nothing_else() {
        Scenario night = ArrivedDamp.dry(ColdSearchTest.night("overcast-forest"));
        double[] one = roots(night, DEMAND, Draws.of(20, 5), 1);
        assertThat(roots(night, DEMAND, Draws.of(20, 5), 2)).isEqualTo(one);
        assertThat(roots(night, DEMAND, Draws.of(20, 6), 2)).isNotEqualTo(one);
    }

    /** A line that the usual model keeps everywhere, or nowhere, may still be passed by some draws; the others have no number. */
    @Test
    void draws_beyond_the_range_are_counted_there() {
        Scenario heavy = ArrivedDamp.dry(ColdSearchTest.night("first-night", "heavy"));
        assertThat(roots(heavy, new Line(Line.Measure.DEMAND, 5), Draws.of(20, 1), 2))
                .containsOnly(Double.NEGATIVE_INFINITY);
        Scenario light = ArrivedDamp.dry(ColdSearchTest.night("first-night", "light"));
        assertThat(roots(light, new Line(Line.Measure.DEMAND, 0.05), Draws.of(20, 1), 2))
                .containsOnly(Double.POSITIVE_INFINITY);
        double[] some = roots(light, new Line(Line.Measure.DEMAND, 1.3), Draws.of(40, 1), 2);
        double warmest = new ColdSearch(light, DEMAND, SETTINGS).warmest();
        assertThat(some).contains(Double.POSITIVE_INFINITY);
        assertThat(DoubleStream.of(some).filter(Double::isFinite).toArray())
                .hasSizeGreaterThan(10)
                .satisfies(all ->
                        assertThat(DoubleStream.of(all).max().orElseThrow()).isLessThan(warmest - 0.01));
        Spread half = Spread.of(Double.NaN, new double[] {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, 1, 2, 3});
        assertThat(half.low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(half.middle()).isEqualTo(1);
        assertThat(half.high()).isCloseTo(2.6, within(1e-9));
    }
}
