package longnight.outdoors.law;

import longnight.air.AirProperties;

/** Temperature that a snow surface takes at night between sky, air and the snow below it. */
public final class SnowSurface {

    /** Snow emissivity [1], textbook. */
    private static final double EMISSIVITY = 0.98;

    private static final double VON_KARMAN = 0.4;

    /** Height of air temperature and wind in the balance [m]. */
    public static final double HEIGHT = 2;

    private static final double GRAVITY = 9.81;

    /** Exchange with air in a calm [W/(m2 K)]: engineering estimate, no source. */
    private static final double LEAST_EXCHANGE = 1;

    private SnowSurface() {}

    /**
     * Surface temperature [K] at which the balance closes. Long-wave in and out, exchange with the air damped by stable
     * stratification (1/(1 + 10 Ri), a form used in simple snow models; from memory), conduction from below. The balance
     * falls strictly with surface temperature, so there is one root; bisected to 1e-9 K.
     *
     * @param air         air temperature at 2 m [K]
     * @param incoming    long-wave radiation onto the surface, obstacles included [W/m2]
     * @param wind        at 2 m [m/s]
     * @param roughness   roughness length of the surface [m], below 1
     * @param pressure    [Pa]
     * @param conductance from the depth where {@code deep} holds to the surface [W/(m2 K)]
     * @param deep        temperature there [K]
     */
    public static double temperature(
            double air,
            double incoming,
            double wind,
            double roughness,
            double pressure,
            double conductance,
            double deep) {
        double low = air - 80;
        double high = Math.max(air, deep) + 40;
        double root = VON_KARMAN / StrictMath.log(HEIGHT / roughness);
        double exchange = AirProperties.density(air, pressure, 0) * AirProperties.SPECIFIC_HEAT * root * root * wind;
        while (high - low > 1e-9) {
            double t = 0.5 * (low + high);
            double difference = air - t;
            double richardson = wind > 0 ? GRAVITY * HEIGHT * difference / (air * wind * wind) : 0;
            double stable = difference > 0 ? 1 / (1 + 10 * richardson) : 1;
            double balance = EMISSIVITY * (incoming - Radiation.black(t))
                    + Math.max(LEAST_EXCHANGE, exchange * stable) * difference
                    + conductance * (deep - t);
            if (balance > 0) {
                low = t;
            } else {
                high = t;
            }
        }
        return 0.5 * (low + high);
    }
}
