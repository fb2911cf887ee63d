package longnight.outdoors.law;

/** Conductivity of snow [W/(m K)] from density [kg/m3]. At 300 the four lie between 0.13 and 0.30; the engine uses {@link #calonne}. */
public final class SnowConductivity {

    private static final double AIR = 0.023;
    private static final double ICE = 2.29;

    private SnowConductivity() {}

    /** Calonne et al. 2011, GRL 38, from images of real snow; 100 to 550 kg/m3. */
    public static double calonne(double density) {
        return 2.5e-6 * density * density - 1.23e-4 * density + 0.024;
    }

    /** Sturm et al. 1997, J Glaciol 43:26, needle probe; up to 600 kg/m3. */
    public static double sturm(double density) {
        double g = density / 1000;
        return g < 0.156 ? 0.023 + 0.234 * g : 0.138 - 1.01 * g + 3.233 * g * g;
    }

    /** Jordan 1991, CRREL SR 91-16. */
    public static double jordan(double density) {
        return AIR + (7.75e-5 * density + 1.105e-6 * density * density) * (ICE - AIR);
    }

    /** Yen 1981, CRREL 81-10 (from memory). */
    public static double yen(double density) {
        return 2.22 * StrictMath.pow(density / 1000, 1.885);
    }
}
