package longnight.body.law;

/**
 * Daily rhythm of the level at which the core is held.
 *
 * <p>{@code s = -a [cos(2 pi (h - 4.5)/24) - cos(2 pi (21 - 4.5)/24)]}, h local hour; zero at 21:00, lowest at 04:30.
 *
 * <p><b>Source.</b> Form and half amplitude 0.4 K: engineering estimate fitted to warm nights of Kreider, Buskirk and Bass
 * 1958 together with a fall of 0.7 K in sleep.
 */
public final class SetLevel {
    private static final double DAY = 86400.0;
    private static final double LOWEST = 4.5 * 3600.0;
    private static final double AT_21 = StrictMath.cos(2.0 * StrictMath.PI * (21.0 * 3600.0 - LOWEST) / DAY);

    private SetLevel() {}

    /**
     * Shift of the set level by the clock [K].
     *
     * @param secondsOfDay  local time [s after midnight], any value (taken modulo a day)
     * @param halfAmplitude [K]
     */
    public static double clockShift(double secondsOfDay, double halfAmplitude) {
        return -halfAmplitude * (StrictMath.cos(2.0 * StrictMath.PI * (secondsOfDay - LOWEST) / DAY) - AT_21);
    }
}
