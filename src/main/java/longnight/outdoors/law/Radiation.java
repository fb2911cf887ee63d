package longnight.outdoors.law;

/** Long-wave exchange. Temperatures in K. */
public final class Radiation {

    /** Stefan-Boltzmann constant [W/(m2 K4)], CODATA 2018, exact in the SI. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Long-wave emissivity of fabric and bare skin [1], 0.95 to 0.98: common practice, no source. */
    public static final double SURFACE_EMISSIVITY = 0.95;

    private Radiation() {}

    /**
     * Radiant coefficient [W/(m2 K)]: the exact difference of fourth powers over the difference of temperatures.
     *
     * @param surface    surface temperature [K]
     * @param radiant    mean radiant temperature [K]
     * @param emissivity of fabric or skin [1], 0.95 to 0.98
     * @param share      share of the surface that sees the surroundings and not the body itself [1]
     */
    public static double coefficient(double surface, double radiant, double emissivity, double share) {
        return emissivity * STEFAN_BOLTZMANN * share * (surface * surface + radiant * radiant) * (surface + radiant);
    }

    /** Emitted by a black surface [W/m2]. */
    public static double black(double kelvin) {
        double square = kelvin * kelvin;
        return STEFAN_BOLTZMANN * square * square;
    }

    /** Temperature of a black surface that emits this [K]. */
    public static double blackTemperature(double wattsPerSquareMetre) {
        return Math.sqrt(Math.sqrt(wattsPerSquareMetre / STEFAN_BOLTZMANN));
    }

    /** What a surface feels of air and radiation together (same unit in as out): ISO 7726 operative temperature. */
    public static double operative(double convective, double air, double radiative, double radiant) {
        return (convective * air + radiative * radiant) / (convective + radiative);
    }

    /**
     * Sky seen by an upright surface [1] inside a ring of obstacles up to an elevation angle [rad]: 1/2 in the open. From
     * the view-factor integral (derived).
     */
    public static double skySeenUpright(double horizonAngle) {
        return 0.5 - horizonAngle / Math.PI - StrictMath.sin(2 * horizonAngle) / (2 * Math.PI);
    }

    /** Sky seen by level ground [1] inside a ring of obstacles up to an elevation angle [rad]: 1 in the open (derived). */
    public static double skySeenLevel(double horizonAngle) {
        double cos = StrictMath.cos(horizonAngle);
        return cos * cos;
    }

    /** Mean radiant temperature [K] of sky, ground and obstacles, each black, weighted by what is seen of it. */
    public static double meanRadiant(
            double skyShare, double sky, double groundShare, double ground, double obstacleShare, double obstacle) {
        return blackTemperature(skyShare * black(sky) + groundShare * black(ground) + obstacleShare * black(obstacle));
    }
}
