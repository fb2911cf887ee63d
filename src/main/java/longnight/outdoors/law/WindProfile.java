package longnight.outdoors.law;

/** Wind near the ground. */
public final class WindProfile {

    /** Height at which wind is measured and reported [m] (WMO practice). */
    private static final double REFERENCE_HEIGHT = 10;

    private WindProfile() {}

    /**
     * Wind at a height over wind at 10 m [1]: the neutral logarithmic law (textbook, from memory). Below {@code 2
     * roughness} the value at that height is kept. Clear calm nights are stable and have less wind near the ground, so
     * this is an upper bound.
     *
     * @param height    above ground [m]
     * @param roughness roughness length [m], below 5 (Davenport-Wieringa classes run from 0.0002 to 2)
     */
    public static double factor(double height, double roughness) {
        double z = Math.max(height, 2 * roughness);
        return StrictMath.log(z / roughness) / StrictMath.log(REFERENCE_HEIGHT / roughness);
    }
}
