package longnight.study;

/**
 * From here to there, every value alike likely.
 *
 * @param low  finite
 * @param high finite, at least {@code low}
 */
public record Extent(double low, double high) {

    /** @throws IllegalArgumentException when the ends are not finite or stand the wrong way round */
    public Extent {
        if (!(low <= high && low > Double.NEGATIVE_INFINITY && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("from " + low + " to " + high);
        }
    }

    /** @param place 0 to 1 */
    double at(double place) {
        return low + place * (high - low);
    }

    /** What of it lies between two bounds; where nothing does, the nearer bound. */
    Extent within(double least, double most) {
        return new Extent(Math.min(most, Math.max(least, low)), Math.min(most, Math.max(least, high)));
    }
}
