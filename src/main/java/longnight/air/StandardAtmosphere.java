package longnight.air;

/** Pressure against altitude. */
public final class StandardAtmosphere {

    /** Pressure at sea level [Pa], exact by definition. */
    public static final double SEA_LEVEL_PRESSURE = 101325;

    private StandardAtmosphere() {}

    /** Pressure [Pa] at an altitude [m], US Standard Atmosphere 1976 in the ASHRAE form; -400 to 11000 m. */
    public static double pressure(double altitude) {
        return SEA_LEVEL_PRESSURE * StrictMath.pow(1 - 2.25577e-5 * altitude, 5.25588);
    }
}
