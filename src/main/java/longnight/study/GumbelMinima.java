package longnight.study;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Gumbel's distribution of yearly minima: the chance that a year's minimum lies below x is 1 - exp(-exp((x - mode) / scale)).
 *
 * <p><b>Fit.</b> Maximum likelihood; the scale solves one equation (Johnson, Kotz and Balakrishnan 1995, Continuous Univariate
 * Distributions 2, section 22.9; from memory). <b>Band.</b> Estimates of place and scale move with the data, so the distribution of
 * (estimate - truth) / (estimated scale) is the same whatever the truth; it is drawn once by chance and turned round (Lawless 2003,
 * Statistical Models and Methods for Lifetime Data, section 5.2; from memory). If the minima follow Gumbel, the band holds its
 * promise for any number of years.
 *
 * @param mode  [degC]
 * @param scale [K], positive
 */
public record GumbelMinima(double mode, double scale) {

    /**
     * The most likely one.
     *
     * @param minima at least two, not all alike [degC]
     */
    public static GumbelMinima fit(double[] minima) {
        double mean = DoubleStream.of(minima).average().orElseThrow();
        double[] y = DoubleStream.of(minima).map(x -> mean - x).toArray(); // maxima around zero
        double spread = Math.sqrt(DoubleStream.of(y).map(v -> v * v).sum() / y.length);
        if (!(spread > 0)) {
            throw new IllegalArgumentException("minima that are all alike have no distribution");
        }
        double scale = new BrentSolver(1e-12, 1e-10 * spread)
                .solve(200, b -> b + weightedMean(y, b), 0.02 * spread, 10 * spread);
        double sum = 0;
        for (double v : y) {
            sum += StrictMath.exp(-v / scale);
        }
        return new GumbelMinima(mean + scale * StrictMath.log(sum / y.length), scale);
    }

    private static double weightedMean(double[] y, double scale) {
        double low = Arrays.stream(y).min().orElseThrow();
        double sum = 0;
        double weights = 0;
        for (double v : y) {
            double weight = StrictMath.exp(-(v - low) / scale);
            sum += v * weight;
            weights += weight;
        }
        return sum / weights;
    }

    /** Temperature [degC] that a year's minimum undercuts once in so many years on average (above 1). */
    public double coldest(double years) {
        return mode + scale * reduced(1 / years);
    }

    /** Share of years that stay above what comes once in so many years, on the scale on which Gumbel is a straight line. */
    static double reduced(double chance) {
        return StrictMath.log(-StrictMath.log1p(-chance));
    }

    /** One year's minimum by chance [degC]. */
    double draw(SplittableRandom chance) {
        return mode + scale * reduced(chance.nextDouble(Double.MIN_NORMAL, 1));
    }

    /**
     * Band for the truth behind {@link #coldest}.
     *
     * @param n       years that the fit used
     * @param years   return periods
     * @param inside  chance that the band holds the truth, 0.9 for a 90 % band
     * @param draws   by chance
     * @param seed    of the chance
     * @return lower and upper end for each return period [degC]
     */
    public double[][] bands(int n, double[] years, double inside, int draws, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        GumbelMinima truth = new GumbelMinima(0, 1);
        double[][] pivot = new double[years.length][draws];
        double[] sample = new double[n];
        for (int i = 0; i < draws; i++) {
            Arrays.setAll(sample, k -> truth.draw(chance));
            GumbelMinima again = fit(sample);
            for (int k = 0; k < years.length; k++) {
                pivot[k][i] = (again.coldest(years[k]) - truth.coldest(years[k])) / again.scale();
            }
        }
        double[][] bands = new double[years.length][];
        for (int k = 0; k < years.length; k++) {
            Arrays.sort(pivot[k]);
            double estimate = coldest(years[k]);
            bands[k] = new double[] {
                estimate - scale * Order.quantile(pivot[k], (1 + inside) / 2),
                estimate - scale * Order.quantile(pivot[k], (1 - inside) / 2)
            };
        }
        return bands;
    }
}
