package longnight.air;

/** Celsius and Kelvin. Names say which one a number is; nothing converts silently. */
public final class Temperature {

    /** 0 degC in K, exact by definition of the Celsius scale. */
    public static final double ZERO_CELSIUS = 273.15;

    private Temperature() {}

    /** Kelvin from degrees Celsius. */
    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS;
    }

    /** Degrees Celsius from Kelvin. */
    public static double celsius(double kelvin) {
        return kelvin - ZERO_CELSIUS;
    }
}
