package longnight.outdoors.law;

import longnight.air.AirProperties;
import longnight.air.SaturationVapour;
import longnight.figure.Smooth;

/**
 * Supercooled cloud: drops that freeze where they hit, or wet what is warm, though it is far below 0 degC.
 *
 * <p><b>Source.</b> Share of the drops that hit a cylinder across the wind: Finstad, Lozowski and Gates 1988, J Atmos Oceanic
 * Technol 5:160, as used by ISO 12494 (from memory). When there is such a cloud, and how much water is in it: common
 * practice and engineering estimates, no source.
 */
public final class Rime {
    private static final double WATER_DENSITY = 1000;

    /** Least share that still hits, ISO 12494 (from memory). */
    private static final double LEAST = 0.01;

    private Rime() {}

    /**
     * How much of the air is supercooled cloud [1]: none above 0 degC, none below -15 degC, where drops have turned to ice, and
     * none unless the air is all but saturated over liquid water. Air that is saturated over ice alone, as over frost and in
     * snowfall, is no cloud of drops. In between, smooth.
     *
     * @param celsius  air temperature [degC]
     * @param humidity over liquid water, as observed: not held down to saturation over ice [1]
     */
    public static double cloud(double celsius, double humidity) {
        double kelvin = celsius + 273.15;
        double overIce = humidity * SaturationVapour.overWater(kelvin) / SaturationVapour.stable(kelvin);
        return Smooth.step((humidity - 0.96) / 0.03)
                * Smooth.step((overIce - 1.005) / 0.01)
                * Smooth.step(-celsius)
                * Smooth.step((celsius + 15) / 3);
    }

    /**
     * Share of the drops in the wind's way that hit a cylinder [1].
     *
     * @param wind        [m/s], 0 and up
     * @param cylinder    diameter [m]
     * @param drop        median diameter [m], 5e-6 to 5e-5
     * @param kelvin      air temperature [K]
     * @param pressure    [Pa]
     */
    public static double efficiency(double wind, double cylinder, double drop, double kelvin, double pressure) {
        double viscosity = AirProperties.viscosity(kelvin);
        double inertia = WATER_DENSITY * drop * drop * wind / (9 * viscosity * cylinder);
        if (inertia < 0.02) { // the formula underflows; drops this light go round
            return LEAST;
        }
        double reynolds = AirProperties.density(kelvin, pressure, 0) * drop * wind / viscosity;
        double phi = reynolds * reynolds / inertia;
        double a = 1.066 * StrictMath.pow(inertia, -0.00616) * StrictMath.exp(-1.103 * StrictMath.pow(inertia, -0.688));
        double b = 3.641 * StrictMath.pow(inertia, -0.498) * StrictMath.exp(-1.497 * StrictMath.pow(inertia, -0.694));
        double c = 0.00637 * StrictMath.pow(Math.max(0, phi - 100), 0.381);
        return LEAST + Smooth.above(a - 0.028 - c * (b - 0.0454) - LEAST, LEAST / 2);
    }

    /**
     * Rime through an upright plane that hits [kg/(m2 s)], to be laid on the windward area of a segment
     * ({@link Precipitation#sideOn}).
     *
     * @param cloud      share from {@link #cloud}
     * @param water      liquid water in the cloud [kg/m3], usually 1e-4 to 5e-4
     * @param wind       at the body [m/s]
     * @param efficiency from {@link #efficiency}
     */
    public static double flux(double cloud, double water, double wind, double efficiency) {
        return cloud * water * wind * efficiency;
    }
}
