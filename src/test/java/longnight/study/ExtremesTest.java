package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import longnight.outdoors.law.DesignNight;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.distribution.GumbelDistribution;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Fits give back what was planted, within what theory says of so many years and so many seeds. */
class ExtremesTest {
    private static final GumbelMinima PLANTED = new GumbelMinima(-21, 3);

    /** Another library's distribution: the minimum is a maximum with its sign turned. */
    @Test
    void a_quantile_is_that_of_another_library() {
        GumbelDistribution maxima = new GumbelDistribution(21, 3);
        for (double years : new double[] {1.1, 2, 10, 50, 1000}) {
            assertThat(PLANTED.coldest(years))
                    .isCloseTo(-maxima.inverseCumulativeProbability(1 - 1 / years), within(1e-9));
        }
    }

    /** Another library's search for the largest likelihood ends at the same place. */
    @Test
    void the_most_likely_one_is_that_of_another_search() {
        for (int seed = 0; seed < 20; seed++) {
            double[] sample = sample(PLANTED, 25, seed);
            GumbelMinima fit = GumbelMinima.fit(sample);
            double[] best = new SimplexOptimizer(1e-14, 1e-14)
                    .optimize(
                            new MaxEval(20000),
                            GoalType.MAXIMIZE,
                            new ObjectiveFunction(p -> p[1] <= 0
                                    ? -1e9
                                    : Arrays.stream(sample)
                                            .map(x -> new GumbelDistribution(p[0], p[1]).logDensity(-x))
                                            .sum()),
                            new InitialGuess(new double[] {20, 2}),
                            new NelderMeadSimplex(2))
                    .getPoint();
            assertThat(fit.mode()).isCloseTo(-best[0], within(1e-5));
            assertThat(fit.scale()).isCloseTo(best[1], within(1e-5));
        }
    }

    /**
     * Asymptotic standard errors of the most likely mode and scale are 1.053 and 0.780 scales over the root of n (Johnson, Kotz and
     * Balakrishnan 1995, section 22.9; from memory: variances 1.109 and 0.608). Means over 400 seeds must lie within four of their standard errors and a bias of one n-th; the
     * spreads within four of theirs (a standard deviation from 400 is known to 3.5 %) and a tenth.
     */
    @Test
    void planted_mode_and_scale_come_back_with_the_spread_of_theory() {
        int n = 60;
        int seeds = 400;
        DescriptiveStatistics modes = new DescriptiveStatistics();
        DescriptiveStatistics scales = new DescriptiveStatistics();
        for (int seed = 0; seed < seeds; seed++) {
            GumbelMinima fit = GumbelMinima.fit(sample(PLANTED, n, seed));
            modes.addValue(fit.mode());
            scales.addValue(fit.scale());
        }
        double modeError = 3 * Math.sqrt(1.109 / n);
        double scaleError = 3 * Math.sqrt(0.608 / n);
        assertThat(modes.getMean()).isCloseTo(-21, within(4 * modeError / Math.sqrt(seeds) + 3.0 / n));
        assertThat(scales.getMean()).isCloseTo(3, within(4 * scaleError / Math.sqrt(seeds) + 3.0 / n));
        assertThat(modes.getStandardDeviation() / modeError).isCloseTo(1, within(0.14 + 0.1));
        assertThat(scales.getStandardDeviation() / scaleError).isCloseTo(1, within(0.14 + 0.1));
    }

    /** 90 % bands over 600 records of 25 winters: 540 hold the truth, give or take four times 7.3. */
    @Test
    void the_band_holds_the_truth_as_often_as_it_says() {
        int held = 0;
        for (int seed = 0; seed < 600; seed++) {
            GumbelMinima fit = GumbelMinima.fit(sample(PLANTED, 25, 1000 + seed));
            double[] band = fit.bands(25, new double[] {50}, 0.9, 199, seed)[0];
            double truth = PLANTED.coldest(50);
            held += band[0] <= truth && truth <= band[1] ? 1 : 0;
        }
        assertThat(held).isBetween(540 - 30, 540 + 30);
    }

    @Test
    void the_same_seed_gives_the_same_band() {
        double[] years = {10};
        assertThat(PLANTED.bands(30, years, 0.9, 500, 7)[0]).isEqualTo(PLANTED.bands(30, years, 0.9, 500, 7)[0]);
        assertThat(PLANTED.bands(30, years, 0.9, 500, 8)[0]).isNotEqualTo(PLANTED.bands(30, years, 0.9, 500, 7)[0]);
    }

    /** The formula by moments (ASHRAE's n-year formula) agrees on a long record within its own sampling error. */
    @Test
    void the_formula_by_moments_says_the_same_of_a_long_record() {
        double[] sample = sample(PLANTED, 20000, 5);
        DescriptiveStatistics moments = new DescriptiveStatistics(sample);
        assertThat(GumbelMinima.fit(sample).coldest(50))
                .isCloseTo(
                        DesignNight.annualMinimum(moments.getMean(), moments.getStandardDeviation(), 50), within(0.35));
    }

    /** L-moments of the distribution itself, integrated by another library, give back its three parameters. */
    @Test
    void exact_moments_give_back_location_scale_and_shape() {
        for (double shape : new double[] {-0.2, 0.001, 0.15, 0.4}) {
            GevMinima truth = new GevMinima(-20, 3, shape);
            double[] b = new double[3];
            for (int r = 0; r < 3; r++) {
                int power = r;
                // F = 1 - u^8 tames the ends
                b[r] = new RombergIntegrator(1e-12, 1e-12, 10, 30)
                        .integrate(
                                10_000_000,
                                v -> v <= 0 || v >= 1
                                        ? 0
                                        : -truth.quantile(1 - smooth(v)) * Math.pow(smooth(v), power) * smoothSlope(v),
                                0,
                                1);
            }
            double second = 2 * b[1] - b[0];
            GevMinima back = GevMinima.ofMoments(b[0], second, (6 * b[2] - 6 * b[1] + b[0]) / second);
            assertThat(back.shape()).isCloseTo(shape, within(1e-5));
            assertThat(back.location()).isCloseTo(-20, within(1e-4));
            assertThat(back.scale()).isCloseTo(3, within(1e-4));
        }
    }

    private static double smooth(double v) {
        return v * v * v * (10 + v * (-15 + 6 * v));
    }

    private static double smoothSlope(double v) {
        return 30 * v * v * (1 - v) * (1 - v);
    }

    /**
     * The standard error of the shape by L-moments is about 0.75 over the root of n at shapes near zero and less above (Hosking,
     * Wallis and Wood 1985, table 2; from memory). Over 400 seeds the mean must lie within four standard errors and a bias of one n-th.
     */
    @Test
    void a_planted_shape_comes_back() {
        for (double shape : new double[] {-0.1, 0, 0.2}) {
            GevMinima planted = new GevMinima(-20, 3, shape);
            int n = 60;
            double[] shapes = new double[400];
            double[] far = new double[400];
            for (int seed = 0; seed < shapes.length; seed++) {
                SplittableRandom chance = new SplittableRandom(seed);
                double[] sample = IntStream.range(0, n)
                        .mapToDouble(i -> planted.quantile(chance.nextDouble(1e-12, 1)))
                        .toArray();
                GevMinima fit = GevMinima.fit(sample);
                shapes[seed] = fit.shape();
                far[seed] = fit.coldest(10);
            }
            double error = 0.85 / Math.sqrt(n);
            DescriptiveStatistics all = new DescriptiveStatistics(shapes);
            assertThat(all.getMean()).as("shape %s", shape).isCloseTo(shape, within(4 * error / 20 + 1.0 / n));
            assertThat(all.getStandardDeviation()).isLessThan(error * 1.25);
            assertThat(new DescriptiveStatistics(far).getMean())
                    .as("ten years, shape %s", shape)
                    .isCloseTo(planted.coldest(10), within(0.25));
        }
    }

    @Test
    void the_shape_zero_is_gumbel() {
        assertThat(new GevMinima(-21, 3, 0).coldest(50)).isEqualTo(PLANTED.coldest(50));
        assertThat(new GevMinima(-21, 3, 1e-6).coldest(50)).isCloseTo(PLANTED.coldest(50), within(1e-4));
    }

    private static double[] sample(GumbelMinima from, int n, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        return IntStream.range(0, n).mapToDouble(i -> from.draw(chance)).toArray();
    }
}
