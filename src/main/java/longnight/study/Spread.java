package longnight.study;

import java.util.Arrays;

/**
 * Where a quantity lies over the draws.
 *
 * @param nominal what the nominal model gives; NaN when it gives none
 * @param low     one draw in ten lies below
 * @param middle  half lie below
 * @param high    one draw in ten lies above; infinite when that many left the model's range on the way
 */
public record Spread(double nominal, double low, double middle, double high) {

    /** Whether the nominal value lies between one draw in ten and nine in ten. */
    public boolean holdsNominal() {
        return nominal >= low && nominal <= high;
    }

    /** Of values of which some may be infinite; NaN counts as plus infinity, since a run that has no value stopped early. */
    static Spread of(double nominal, double[] values) {
        double[] sorted = Arrays.stream(values)
                .map(v -> Double.isNaN(v) ? Double.POSITIVE_INFINITY : v)
                .sorted()
                .toArray();
        return new Spread(nominal, quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9));
    }

    /**
     * Hyndman and Fan (1996), type 7.
     *
     * @param sorted rising, may begin and end in infinities
     * @param share  0 to 1
     */
    static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        double f = place - below;
        if (f == 0 || below + 1 >= sorted.length) {
            return sorted[below];
        }
        double a = sorted[below];
        double b = sorted[below + 1];
        return Double.isInfinite(a) ? a : Double.isInfinite(b) ? b : a + f * (b - a);
    }
}
