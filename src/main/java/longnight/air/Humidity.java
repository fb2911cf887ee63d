package longnight.air;

import java.util.function.DoubleUnaryOperator;

/** How much vapour the air holds, in the words people report it. Temperatures in K, pressures in Pa, humidity 0 to 1. */
public final class Humidity {

    /** Molar mass of water over that of dry air [1], ASHRAE Handbook Fundamentals, psychrometrics. */
    private static final double MOLAR_RATIO = 0.621945;

    private static final double COLDEST = 130;
    private static final double WARMEST = 330;

    private Humidity() {}

    /**
     * Vapour pressure [Pa] of air whose relative humidity is given over liquid water, as weather services report it at
     * all temperatures (WMO practice); never more than {@link SaturationVapour#stable} (frost or dew takes the surplus).
     */
    public static double vapourPressure(double kelvin, double relativeHumidity) {
        return capped(relativeHumidity * SaturationVapour.overWater(kelvin), kelvin);
    }

    /** {@code vapourPressure} limited to saturation over ice (below 0 degC) or water at this temperature [Pa]. */
    public static double capped(double vapourPressure, double kelvin) {
        return Math.min(vapourPressure, SaturationVapour.stable(kelvin));
    }

    /**
     * Temperature at which the vapour saturates over liquid water [K].
     *
     * @throws IllegalArgumentException when the pressure has no dew point between 130 and 330 K
     */
    public static double dewPoint(double vapourPressure) {
        return invert(vapourPressure, SaturationVapour::logOverWater, SaturationVapour::logSlopeOverWater);
    }

    /**
     * Temperature at which the vapour saturates over ice [K]; above 273.16 K it has no physical meaning.
     *
     * @throws IllegalArgumentException when the pressure has no frost point between 130 and 330 K
     */
    public static double frostPoint(double vapourPressure) {
        return invert(vapourPressure, SaturationVapour::logOverIce, SaturationVapour::logSlopeOverIce);
    }

    /** Mass of vapour per mass of dry air [kg/kg] (ASHRAE Handbook Fundamentals, psychrometrics). */
    public static double humidityRatio(double vapourPressure, double pressure) {
        return MOLAR_RATIO * vapourPressure / (pressure - vapourPressure);
    }

    /** Newton on the logarithm against 1/T, in which saturation is nearly a straight line. */
    private static double invert(double vapourPressure, DoubleUnaryOperator log, DoubleUnaryOperator logSlope) {
        if (!(vapourPressure > 0
                && StrictMath.log(vapourPressure) >= log.applyAsDouble(COLDEST)
                && StrictMath.log(vapourPressure) <= log.applyAsDouble(WARMEST))) {
            throw new IllegalArgumentException(
                    "vapour pressure " + vapourPressure + " Pa has no saturation temperature between 130 and 330 K");
        }
        double target = StrictMath.log(vapourPressure);
        double t = 260;
        for (int i = 0; i < 50; i++) {
            double inverse = 1 / t + (log.applyAsDouble(t) - target) / (t * t * logSlope.applyAsDouble(t));
            double next = 1 / inverse;
            if (Math.abs(next - t) < 1e-10 * t) {
                return next;
            }
            t = next;
        }
        throw new IllegalStateException("no saturation temperature found for " + vapourPressure + " Pa");
    }
}
