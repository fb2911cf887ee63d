package longnight.outdoors.law;

import longnight.air.AirProperties;
import longnight.air.Temperature;

/**
 * The face behind the wind chill index: an upright cylinder that walks into the wind (structure of Osczevski and Bluestein
 * 2005, from memory; it gives the index back within 2.1 K). Shows what the index assumes: a walking speed of 1.34 m/s that a
 * stationary person does not have.
 */
public final class FaceModel {

    private static final double DIAMETER = 0.18;
    private static final double CORE = Temperature.ZERO_CELSIUS + 38;
    private static final double TISSUE = 0.091;
    private static final double EMISSIVITY = 0.97;
    private static final double WALKING = 1.34;

    private FaceModel() {}

    /** Coefficient [W/(m2 K)] 50 degrees from the stagnation line; air speed at the face [m/s], film temperature [K]. */
    static double coefficient(double speed, double film, double pressure) {
        double reynolds = AirProperties.density(film, pressure, 0) * speed * DIAMETER / AirProperties.viscosity(film);
        double angle = 50.0 / 90.0;
        double nusselt = 1.14
                * Math.sqrt(reynolds)
                * StrictMath.pow(AirProperties.prandtl(film), 0.4)
                * (1 - angle * angle * angle);
        return nusselt * AirProperties.conductivity(film) / DIAMETER;
    }

    /** Steady temperature of the skin [degC]; air [degC], air speed at the face [m/s]. */
    public static double skin(double airCelsius, double speed, double pressure) {
        double air = Temperature.kelvin(airCelsius);
        double low = Math.min(air, CORE);
        double high = Math.max(air, CORE);
        while (high - low > 1e-9) {
            double t = 0.5 * (low + high);
            double out = (coefficient(speed, 0.5 * (t + air), pressure) + Radiation.coefficient(t, air, EMISSIVITY, 1))
                    * (t - air);
            if ((CORE - t) / TISSUE > out) {
                low = t;
            } else {
                high = t;
            }
        }
        return Temperature.celsius(0.5 * (low + high));
    }

    /** Air speed at the face of someone who walks into the wind [m/s]; wind at 10 m [m/s]. */
    public static double speedWalking(double wind10) {
        return WALKING + wind10 * 2 / 3;
    }

    /** Air temperature [degC] that cools the same face as much when it walks in a calm. */
    static double equivalent(double airCelsius, double wind10, double pressure) {
        double target = skin(airCelsius, speedWalking(wind10), pressure);
        double low = -150;
        double high = 40;
        while (high - low > 1e-6) {
            double t = 0.5 * (low + high);
            if (skin(t, WALKING, pressure) < target) {
                low = t;
            } else {
                high = t;
            }
        }
        return 0.5 * (low + high);
    }
}
