package longnight.air;

/** Transport properties of air; temperatures in K, pressures in Pa. */
public final class AirProperties {

    /** Specific heat at constant pressure [J/(kg K)], common practice for cold dry air, no source. */
    public static final double SPECIFIC_HEAT = 1006;

    /** Gas constant of dry air [J/(kg K)], textbook value. */
    public static final double GAS_CONSTANT = 287.05;

    private AirProperties() {}

    /** Density of moist air [kg/m3]: ideal gas with the virtual-temperature correction, textbook. */
    public static double density(double kelvin, double pressure, double vapourPressure) {
        return (pressure - 0.378 * vapourPressure) / (GAS_CONSTANT * kelvin);
    }

    /** Dynamic viscosity [Pa s], US Standard Atmosphere 1976, equation 51; 100 to 1900 K. */
    public static double viscosity(double kelvin) {
        return 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
    }

    /** Thermal conductivity [W/(m K)], US Standard Atmosphere 1976, equation 53. */
    public static double conductivity(double kelvin) {
        return 2.64638e-3
                * kelvin
                * Math.sqrt(kelvin)
                / (kelvin + 245.4 * StrictMath.exp(-12 * StrictMath.log(10) / kelvin));
    }

    /** Diffusivity of water vapour in air [m2/s], Massman 1998, Atmos Environ 32:1111. */
    public static double diffusivity(double kelvin, double pressure) {
        return 2.178e-5 * StrictMath.pow(kelvin / Temperature.ZERO_CELSIUS, 1.81) * (101325 / pressure);
    }

    /** Prandtl number [1]. */
    public static double prandtl(double kelvin) {
        return viscosity(kelvin) * SPECIFIC_HEAT / conductivity(kelvin);
    }

    /**
     * Evaporative over convective coefficient [K/Pa], the Lewis relation with the exponent 2/3 of the heat and mass
     * transfer analogy (textbook). About 0.0164 with the heat of vaporisation at 30 degC and sea level, near the 16.5
     * K/kPa of the comfort literature.
     *
     * @param kelvin     film temperature [K]
     * @param pressure   air pressure [Pa]
     * @param latentHeat of the surface's own state [J/kg]: vaporisation when liquid, sublimation when ice
     */
    public static double lewisRatio(double kelvin, double pressure, double latentHeat) {
        double lewis =
                diffusivity(kelvin, pressure) * density(kelvin, pressure, 0) * SPECIFIC_HEAT / conductivity(kelvin);
        double root = StrictMath.cbrt(lewis);
        return 0.622 * latentHeat / (SPECIFIC_HEAT * pressure) * root * root;
    }
}
