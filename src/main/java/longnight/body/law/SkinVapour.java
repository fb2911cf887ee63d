package longnight.body.law;

/**
 * Saturation pressure of water at skin and airway temperatures, in the short form of the physiological literature.
 *
 * <p>{@code p = 610.78 exp(17.2694 t / (t + 237.3))} [Pa]. <b>Source.</b> Tetens 1930 form (from memory). <b>Check
 * value.</b> 34 degC: 5319 Pa. <b>Valid</b> 0 to 50 degC.
 */
public final class SkinVapour {
    private SkinVapour() {}

    /** Saturation pressure [Pa] at a temperature [degC]. */
    public static double saturation(double celsius) {
        return 610.78 * StrictMath.exp(17.2694 * celsius / (celsius + 237.3));
    }

    /** Slope of the saturation pressure [Pa/K], given the temperature [degC] and the pressure there. */
    public static double slope(double celsius, double saturation) {
        double d = celsius + 237.3;
        return saturation * 17.2694 * 237.3 / (d * d);
    }

    /**
     * Skin wettedness of a person who does not sweat [1]: insensible diffusion (Tanabe et al. 2002). It belongs to the film of
     * still air (there 0.06 is the 3.05e-3 W/(m2 Pa) of Fanger 1970, from memory); what diffuses through skin does not grow
     * with the wind.
     */
    public static final double INSENSIBLE_WETTEDNESS = 0.06;

    /** Lewis ratio at skin temperature [K/Pa] (comfort literature, 16.5 K/kPa). */
    public static final double LEWIS = 0.0165;
}
