package longnight.outdoors.law;

import longnight.air.AirProperties;

/**
 * Forced convection of a cylinder across the wind: Churchill and Bernstein 1977, J Heat Transfer 99:300 (equation from
 * memory, checked against Hilpert's correlation), with air properties at film temperature. Reynolds times Prandtl above
 * 0.2, Reynolds up to 1e7.
 */
public final class CylinderFlow {

    private static final double COLDEST = 170;
    private static final double WARMEST = 330;

    /** Rows per kelvin. */
    private static final int FINENESS = 2;

    /** By film temperature: density over pressure and viscosity [s/(m2 Pa)], then the two terms of Nu times k. */
    private static final int ROWS = (int) (WARMEST - COLDEST) * FINENESS + 1;

    private static final double[] REYNOLDS_FACTOR = new double[ROWS];
    private static final double[] STILL = new double[ROWS];
    private static final double[] FLOW = new double[ROWS];

    static {
        for (int i = 0; i < ROWS; i++) {
            double t = COLDEST + (double) i / FINENESS;
            REYNOLDS_FACTOR[i] = AirProperties.density(t, 1, 0) / AirProperties.viscosity(t);
            STILL[i] = 0.3 * AirProperties.conductivity(t);
            FLOW[i] = AirProperties.conductivity(t) * prandtlTerm(AirProperties.prandtl(t));
        }
    }

    private CylinderFlow() {}

    /**
     * Heat transfer coefficient [W/(m2 K)] in a low-turbulence stream, the form for the time loop: properties
     * interpolated between half kelvins, roots instead of powers. Within 1e-5 of {@link #forcedExact}.
     *
     * @param speed    air speed [m/s], 0 or more
     * @param diameter of the cylinder [m]
     * @param film     mean of surface and air temperature [K]; held within 170 to 330
     * @param pressure [Pa]
     */
    public static double forced(double speed, double diameter, double film, double pressure) {
        double x = Math.min(Math.max(film, COLDEST), WARMEST - 1e-9) * FINENESS - COLDEST * FINENESS;
        int i = (int) x;
        double f = x - i;
        double reynolds =
                speed * diameter * pressure * (REYNOLDS_FACTOR[i] + f * (REYNOLDS_FACTOR[i + 1] - REYNOLDS_FACTOR[i]));
        double still = STILL[i] + f * (STILL[i + 1] - STILL[i]);
        double flow = FLOW[i] + f * (FLOW[i + 1] - FLOW[i]);
        double r = reynolds / 282000;
        double half = Math.sqrt(r);
        double s = 1 + half * Math.sqrt(Math.sqrt(half)); // r^(5/8)
        return (still + flow * Math.sqrt(reynolds) * s / fifthRoot(s)) / diameter;
    }

    /** The same law as written [W/(m2 K)], for comparison. */
    public static double forcedExact(double speed, double diameter, double film, double pressure) {
        double reynolds = AirProperties.density(film, pressure, 0) * speed * diameter / AirProperties.viscosity(film);
        double nusselt = 0.3
                + prandtlTerm(AirProperties.prandtl(film))
                        * Math.sqrt(reynolds)
                        * StrictMath.pow(1 + StrictMath.pow(reynolds / 282000, 0.625), 0.8);
        return nusselt * AirProperties.conductivity(film) / diameter;
    }

    private static double prandtlTerm(double prandtl) {
        return 0.62 * StrictMath.cbrt(prandtl) / StrictMath.pow(1 + StrictMath.pow(0.4 / prandtl, 2.0 / 3.0), 0.25);
    }

    /** Fifth root of a number from 1 to about 12 by three of Halley's steps (third order) from 1. */
    private static double fifthRoot(double s) {
        double y = (2 + 3 * s) / (3 + 2 * s);
        double p = y * y * y * y * y;
        y *= (2 * p + 3 * s) / (3 * p + 2 * s);
        p = y * y * y * y * y;
        return y * (2 * p + 3 * s) / (3 * p + 2 * s);
    }
}
