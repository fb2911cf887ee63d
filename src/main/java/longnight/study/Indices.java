package longnight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Which share of a quantity's variance comes from each of several groups of inputs (Sobol 1993). The first-order index is the share
 * that would go if the group were known; the total index is the share that would stay if everything else were known (Homma and Saltelli
 * 1996). First order: Saltelli et al. 2010, Computer Physics Communications 181:259, table 2, formula b; total: Jansen 1999, formula f of
 * that table. Intervals hold 90 % of {@link #RESAMPLED} bootstrap samples over the rows (Archer, Saltelli and Sobol 1997); rows of a
 * Latin hypercube err less than independent ones, so that they are wide rather than narrow.
 *
 * @param of  the groups, in the order in which they were asked for
 * @param sum of the first-order indices: 1 where groups only add up, less where they act together
 */
public record Indices(List<Index> of, Estimate sum) {
    /** Bootstrap samples. */
    public static final int RESAMPLED = 1000;

    private static final double TAIL = 0.05;

    /** A value and the interval that holds it. NaN throughout where nothing varies. */
    public record Estimate(double value, double low, double high) {
        /** How wide the interval is. */
        public double width() {
            return high - low;
        }
    }

    /** Of one group. */
    public record Index(Estimate first, Estimate total) {}

    /**
     * Estimates them.
     *
     * @param a       the quantity at the first points of the rows
     * @param b       at the second points
     * @param crossed for each group: at the first points with the group's places from the second ones
     * @param seed    of the bootstrap
     */
    static Indices of(double[] a, double[] b, double[][] crossed, long seed) {
        int n = a.length;
        int groups = crossed.length;
        int[] rows = new int[n];
        Arrays.setAll(rows, i -> i);
        double[] best = estimate(a, b, crossed, rows);
        double[][] samples = new double[best.length][RESAMPLED];
        RandomGenerator chance = new Well19937c(seed);
        for (int s = 0; s < RESAMPLED; s++) {
            Arrays.setAll(rows, i -> chance.nextInt(n));
            double[] sample = estimate(a, b, crossed, rows);
            for (int k = 0; k < best.length; k++) {
                samples[k][s] = sample[k];
            }
        }
        List<Index> of = new ArrayList<>();
        for (int g = 0; g < groups; g++) {
            of.add(new Index(interval(best[g], samples[g]), interval(best[groups + g], samples[groups + g])));
        }
        return new Indices(List.copyOf(of), interval(best[2 * groups], samples[2 * groups]));
    }

    private static Estimate interval(double best, double[] samples) {
        if (Double.isNaN(best)) {
            return new Estimate(Double.NaN, Double.NaN, Double.NaN);
        }
        double[] sorted =
                Arrays.stream(samples).filter(v -> !Double.isNaN(v)).sorted().toArray();
        return new Estimate(best, Spread.quantile(sorted, TAIL), Spread.quantile(sorted, 1 - TAIL));
    }

    /** First order of each group, total of each group, sum of the first orders. */
    private static double[] estimate(double[] a, double[] b, double[][] crossed, int[] rows) {
        int n = rows.length;
        int groups = crossed.length;
        double mean = 0;
        for (int row : rows) {
            mean += (a[row] + b[row]) / (2 * n);
        }
        double variance = 0;
        double[] out = new double[2 * groups + 1];
        for (int row : rows) {
            double fromA = a[row] - mean;
            double fromB = b[row] - mean;
            variance += (fromA * fromA + fromB * fromB) / (2 * n);
            for (int g = 0; g < groups; g++) {
                double moved = crossed[g][row] - a[row];
                out[g] += fromB * moved / n;
                out[groups + g] += moved * moved / (2 * n);
            }
        }
        for (int k = 0; k < 2 * groups; k++) {
            out[k] = variance > 0 ? out[k] / variance : Double.NaN;
        }
        for (int g = 0; g < groups; g++) {
            out[2 * groups] += out[g];
        }
        return out;
    }
}
