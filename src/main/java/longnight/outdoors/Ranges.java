package longnight.outdoors;

/** Refuses what lies outside; NaN lies outside everything. */
final class Ranges {

    private Ranges() {}

    static void require(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + ", allowed " + low + " to " + high);
        }
    }

    static void requireRising(String what, double[] values) {
        for (int i = 0; i < values.length; i++) {
            require(what + "[" + i + "]", values[i], -1e9, 1e9);
            if (i > 0 && !(values[i] > values[i - 1])) {
                throw new IllegalArgumentException(
                        what + "[" + i + "] is " + values[i] + ", not after " + values[i - 1] + " before it");
            }
        }
    }

    static void requireAll(String what, double[] values, int length, double low, double high, boolean orUnknown) {
        if (values.length != length) {
            throw new IllegalArgumentException(what + " has " + values.length + " values, time has " + length);
        }
        for (int i = 0; i < length; i++) {
            if (!(orUnknown && Double.isNaN(values[i]))) {
                require(what + "[" + i + "]", values[i], low, high);
            }
        }
    }

    /** Index of the last entry of a rising series that is not after {@code time}; 0 before the first. */
    static int indexBefore(double[] times, double time) {
        int low = 0;
        int high = times.length;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (times[middle] <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
