package longnight.body.law;

/**
 * Heat given to the breath, per watt of heat made.
 *
 * <p>Expired air leaves saturated at {@code 29 + 0.2 Ta} degC (Webb 1955, resting men, -40 to 25 degC; the same rule as ISO
 * 11079:2007). Ventilation is 1.43e-6 kg/s of air per watt of metabolic rate (Fanger 1970, from memory). Loss =
 * {@code m (1005 (Tex - Ta) + 2.43e6 (wex - wa))}.
 *
 * <p><b>Check value.</b> Webb's 14, 15 and 17 kcal/h at 600 L/h and 0, -20 and -40 degC: this form gives 14.1, 15.8, 17.0.
 */
public final class Breath {
    private static final double VENTILATION = 1.43e-6;
    private static final double HEAT_OF_AIR = 1005.0;
    private static final double LATENT = 2.43e6;

    private Breath() {}

    /**
     * Share of the heat made that leaves with the breath [1].
     *
     * @param airCelsius     air breathed [degC], -40 to 25; colder air is treated with the same rule
     * @param vapourPressure of the air [Pa]
     * @param pressure       station pressure [Pa]
     */
    public static double lossPerHeatMade(double airCelsius, double vapourPressure, double pressure) {
        return VENTILATION * lossPerMassOfAir(airCelsius, vapourPressure, pressure);
    }

    /** Heat per mass of dry air breathed [J/kg]; arguments as above. */
    public static double lossPerMassOfAir(double airCelsius, double vapourPressure, double pressure) {
        return HEAT_OF_AIR * (expired(airCelsius) - airCelsius)
                + LATENT * humidityGained(airCelsius, vapourPressure, pressure);
    }

    /** Water that leaves with the breath per heat made [kg/J]; arguments as above. At rest in dry cold, some 10 g/h. */
    public static double waterPerHeatMade(double airCelsius, double vapourPressure, double pressure) {
        return VENTILATION * humidityGained(airCelsius, vapourPressure, pressure);
    }

    private static double expired(double airCelsius) {
        return 29.0 + 0.2 * airCelsius;
    }

    /** [kg/kg dry air]. */
    private static double humidityGained(double airCelsius, double vapourPressure, double pressure) {
        double vapourOut = SkinVapour.saturation(expired(airCelsius));
        return 0.622 * vapourOut / (pressure - vapourOut) - 0.622 * vapourPressure / (pressure - vapourPressure);
    }
}
