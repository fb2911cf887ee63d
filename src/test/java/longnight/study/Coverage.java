package longnight.study;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How often measured values lie inside the central part of what is drawn.
 *
 * @param places for each measured value the share of what is drawn that lies below it [1]
 */
public record Coverage(double[] places) {

    /**
     * Counts.
     *
     * @param measured what was measured
     * @param model    for each draw, what the model gives for each of them; NaN counts as beyond all others
     * @param misfit   for each of them the normal scatter by which the model itself is taken to miss, in its unit; 0 for none
     */
    public static Coverage of(double[] measured, double[][] model, double[] misfit) {
        return new Coverage(IntStream.range(0, measured.length)
                .mapToDouble(q -> place(measured[q], of(model, q), misfit[q]))
                .toArray());
    }

    /** What the draws give for one quantity. */
    public static double[] of(double[][] model, int quantity) {
        return Arrays.stream(model).mapToDouble(draw -> draw[quantity]).toArray();
    }

    /** Share of the measured values inside the central part of the draws that holds a share of them. */
    public double at(double central) {
        return (double) inside(central) / places.length;
    }

    /** How many of the measured values lie there. */
    public long inside(double central) {
        double low = 0.5 * (1 - central);
        return DoubleStream.of(places)
                .filter(place -> place >= low && place <= 1 - low)
                .count();
    }

    private static double place(double value, double[] draws, double misfit) {
        NormalDistribution normal = new NormalDistribution();
        double below = 0;
        for (double draw : draws) {
            if (Double.isNaN(draw)) {
                continue;
            }
            below += misfit > 0
                    ? normal.cumulativeProbability((value - draw) / misfit)
                    : draw < value ? 1 : draw == value ? 0.5 : 0;
        }
        return below / draws.length;
    }
}
