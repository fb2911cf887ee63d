package longnight.outdoors.law;

/** The coldest night to expect. */
public final class DesignNight {

    /** Euler-Mascheroni constant [1]. */
    private static final double EULER = 0.5772156649015329;

    private DesignNight() {}

    /** Gumbel frequency factor [1] of a return period [years], above 1; method of moments (textbook). */
    public static double frequencyFactor(double years) {
        return -Math.sqrt(6) / Math.PI * (EULER + StrictMath.log(StrictMath.log(years / (years - 1))));
    }

    /**
     * Annual minimum [degC] reached or undercut once in {@code years} on average, from mean and standard deviation of the
     * annual minima: Gumbel by moments, the same as ASHRAE's n-year formula (from memory).
     */
    public static double annualMinimum(double mean, double standardDeviation, double years) {
        return mean - frequencyFactor(years) * standardDeviation;
    }
}
