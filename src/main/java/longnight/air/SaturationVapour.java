package longnight.air;

/**
 * Saturation pressure of water vapour: Murphy and Koop 2005, QJRMS 131:1539. Arguments in K, results in Pa. No check of
 * the argument is made here: these laws run inside the time loop.
 */
public final class SaturationVapour {

    private SaturationVapour() {}

    /** Over liquid water, supercooled too [Pa], equation 10; 123 to 332 K. */
    public static double overWater(double kelvin) {
        return StrictMath.exp(logOverWater(kelvin));
    }

    /** Over ice [Pa], equation 7; 110 to 273.16 K. */
    public static double overIce(double kelvin) {
        return StrictMath.exp(logOverIce(kelvin));
    }

    /** Over ice below 0 degC, over water from there up [Pa]: what air in contact with a surface can hold. */
    public static double stable(double kelvin) {
        return kelvin < Temperature.ZERO_CELSIUS ? overIce(kelvin) : overWater(kelvin);
    }

    /** Slope of {@link #overWater} [Pa/K], the same equation differentiated. */
    public static double overWaterSlope(double kelvin) {
        return overWater(kelvin) * logSlopeOverWater(kelvin);
    }

    /** Slope of {@link #overIce} [Pa/K], the same equation differentiated. */
    public static double overIceSlope(double kelvin) {
        return overIce(kelvin) * logSlopeOverIce(kelvin);
    }

    static double logOverWater(double t) {
        double ln = StrictMath.log(t);
        return 54.842763
                - 6763.22 / t
                - 4.210 * ln
                + 0.000367 * t
                + StrictMath.tanh(0.0415 * (t - 218.8)) * (53.878 - 1331.22 / t - 9.44523 * ln + 0.014025 * t);
    }

    static double logOverIce(double t) {
        return 9.550426 - 5723.265 / t + 3.53068 * StrictMath.log(t) - 0.00728332 * t;
    }

    static double logSlopeOverWater(double t) {
        double tanh = StrictMath.tanh(0.0415 * (t - 218.8));
        double bracket = 53.878 - 1331.22 / t - 9.44523 * StrictMath.log(t) + 0.014025 * t;
        return 6763.22 / (t * t)
                - 4.210 / t
                + 0.000367
                + 0.0415 * (1 - tanh * tanh) * bracket
                + tanh * (1331.22 / (t * t) - 9.44523 / t + 0.014025);
    }

    static double logSlopeOverIce(double t) {
        return 5723.265 / (t * t) + 3.53068 / t - 0.00728332;
    }
}
