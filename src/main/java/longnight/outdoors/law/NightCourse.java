package longnight.outdoors.law;

/** Air temperature through day and night when only extremes are known. Hours and degC. */
public final class NightCourse {

    /** Relaxation time of the engine's own curve [h]: Goudriaan and van Laar 1994 (from memory). */
    public static final double RELAXATION_HOURS = 4;

    /** Coefficients of Parton and Logan 1981, Agric Meteorol 23:205, for air at 1.5 m. */
    public static final double LAG_AFTER_NOON = 1.86;

    public static final double NIGHT_DECAY = 2.20;
    public static final double LAG_AFTER_SUNRISE = -0.17;

    private NightCourse() {}

    /**
     * By day, Parton and Logan 1981: half a sine.
     *
     * @param hoursSinceMinimum hours since the minimum (sunrise plus {@link #LAG_AFTER_SUNRISE})
     * @param dayLength         sunrise to sunset [h]
     */
    public static double day(double minimum, double maximum, double hoursSinceMinimum, double dayLength) {
        return minimum
                + (maximum - minimum) * StrictMath.sin(Math.PI * hoursSinceMinimum / (dayLength + 2 * LAG_AFTER_NOON));
    }

    /** By night, Parton and Logan 1981: does not reach the minimum by sunrise (11 % of the drop is left with b = 2.2). */
    public static double nightPartonLogan(
            double sunset, double minimum, double hoursAfterSunset, double nightLength, double decay) {
        return minimum + (sunset - minimum) * StrictMath.exp(-decay * hoursAfterSunset / nightLength);
    }

    /** By night, Goudriaan and van Laar 1994 (from memory): reaches the minimum at sunrise exactly; the colder of the two. */
    public static double night(
            double sunset, double minimum, double hoursAfterSunset, double nightLength, double relaxation) {
        double end = StrictMath.exp(-nightLength / relaxation);
        double now = StrictMath.exp(-hoursAfterSunset / relaxation);
        return (minimum - sunset * end + (sunset - minimum) * now) / (1 - end);
    }

    /**
     * Air temperature at sunset when only the night's minimum and the day's range are known: 0.73 of the range above the
     * minimum, which is {@link #day} at the sunset of a ten-hour day.
     */
    public static double sunsetFromRange(double minimum, double dailyRange) {
        return minimum + 0.73 * dailyRange;
    }

    /**
     * Most that a bare surface can cool [K] when a constant net loss is paid from the ground alone: Brunt 1932 (from
     * memory). On snow the sky stops it long before.
     *
     * @param netLoss    [W/m2], about 60 under a clear dry sky
     * @param seconds    since sunset [s]
     * @param effusivity of the ground [J/(m2 K s^0.5)]
     */
    public static double bruntCooling(double netLoss, double seconds, double effusivity) {
        return 2 / Math.sqrt(Math.PI) * netLoss * Math.sqrt(seconds) / effusivity;
    }
}
