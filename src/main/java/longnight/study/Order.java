package longnight.study;

import java.util.Arrays;

/** What stands where in a sorted row of numbers. */
final class Order {
    private Order() {}

    /** Value below which a share of the sorted numbers lies, straight between neighbours. */
    static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int i = Math.min(sorted.length - 1, (int) Math.floor(at));
        int next = Math.min(sorted.length - 1, i + 1);
        return sorted[i] + (at - i) * (sorted[next] - sorted[i]);
    }

    /** The middle of numbers in any order, NaN left out; NaN when there are none. */
    static double median(double[] values) {
        double[] sorted =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : quantile(sorted, 0.5);
    }
}
