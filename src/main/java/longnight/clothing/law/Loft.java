package longnight.clothing.law;

/**
 * Heat through a light fill of fibres or down, free and squeezed.
 *
 * <p>Conductivity of a light fill is that of air plus a radiation term that falls with density, k = k_air + C/rho; with
 * thickness m/rho the resistance is R = eta m/(k_air rho + C).
 *
 * <p><b>Source.</b> Two-flux radiation in battings: Farnworth (1983), Textile Research Journal 53:717 (form from memory);
 * the linear law in 1/rho and a value of C: Donovan (1986), US patent 4588635. Squeezing: van Wyk (1946), pressure rises
 * with the cube of density. Valid for 1 to 60 kg/m3; for down the law is untested here and C is a guess with a range.
 */
public final class Loft {
    /** Load on down in a fill-power test [Pa]: a piston of 68.3 g and 241 mm (fill-power norm, US 2000). */
    public static final double TEST_PRESSURE = 0.0683 * 9.80665 / (Math.PI / 4 * 0.241 * 0.241);

    private Loft() {}

    /**
     * Thermal resistance of a fill [m2 K/W].
     *
     * @param arealMass    fill mass per area [kg/m2]
     * @param density      bulk density [kg/m3]
     * @param radiation    C [W kg/(m4 K)]
     * @param construction share that the construction leaves [1]
     */
    public static double resistance(double arealMass, double density, double radiation, double construction) {
        return construction * arealMass / (AirGap.AIR_CONDUCTIVITY * density + radiation);
    }

    /**
     * Density of down under the test load, or in a garment that holds more down than would fill it [kg/m3].
     *
     * @param fillPower volume per mass under the test load [m3/kg], 0.2 to 0.6
     * @param overfill  mass put in over the mass that just fills the chambers [1]
     */
    public static double downDensity(double fillPower, double overfill) {
        return overfill / fillPower;
    }

    /**
     * Constant K of the squeeze law P = K rho^3 [Pa m9/kg3].
     *
     * @param pressure a load [Pa] at which the fill has {@code density}
     * @param density  bulk density at that load [kg/m3]
     */
    public static double compressionConstant(double pressure, double density) {
        return pressure / (density * density * density);
    }

    /**
     * Density under a load, never below the free one [kg/m3].
     *
     * @param freeDensity [kg/m3]
     * @param constant    K of {@link #compressionConstant}
     * @param pressure    load [Pa], 0 and up
     */
    public static double squeezed(double freeDensity, double constant, double pressure) {
        return Math.max(freeDensity, StrictMath.cbrt(pressure / constant));
    }
}
