package longnight.air;

/** Heat that water takes or gives when it changes state [J/kg]; temperatures in K. */
public final class LatentHeat {

    /** Molar mass of water [kg/mol], Murphy and Koop 2005. */
    private static final double MOLAR_MASS = 0.01801528;

    private LatentHeat() {}

    /** Liquid to vapour, Murphy and Koop 2005, QJRMS 131:1539, equation 9; 236 to 273 K, good to 310 K. */
    public static double vaporisation(double kelvin) {
        return (56579 - 42.212 * kelvin + StrictMath.exp(0.1149 * (281.6 - kelvin))) / MOLAR_MASS;
    }

    /** Ice to vapour, Murphy and Koop 2005, QJRMS 131:1539, equation 5; above 30 K. */
    public static double sublimation(double kelvin) {
        double s = kelvin / 123.75;
        return (46782.5 + 35.8925 * kelvin - 0.07414 * kelvin * kelvin + 541.5 * StrictMath.exp(-s * s)) / MOLAR_MASS;
    }

    /**
     * Ice to liquid, as the difference of the two others, so that every way round the three states closes: 333.5 kJ/kg
     * at 0 degC.
     */
    public static double fusion(double kelvin) {
        return sublimation(kelvin) - vaporisation(kelvin);
    }
}
