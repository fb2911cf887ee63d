package longnight.proof;

/**
 * A closed interval; NaN at an end that is open.
 *
 * @param low  least value inside
 * @param high largest value inside
 */
public record Band(double low, double high) {
    /** No band at all. */
    public static final Band NONE = new Band(Double.NaN, Double.NaN);

    public Band {
        if (low > high) {
            throw new IllegalArgumentException("a band from " + low + " to " + high);
        }
    }

    /** Whether there is anything to hold against it. */
    public boolean exists() {
        return !Double.isNaN(low) || !Double.isNaN(high);
    }

    /** Whether a value lies inside; NaN never does. */
    public boolean holds(double value) {
        return !Double.isNaN(value) && !(value < low) && !(value > high);
    }
}
