package longnight.outdoors.law;

/** Rain and snow on their way to the person. */
public final class Rain {

    private Rain() {}

    /** Rain through an upright plane [mm/h] from rain [mm/h] and wind at the body [m/s]: Lacy 1965, as given in van Mook 2002. */
    public static double driving(double rain, double wind) {
        return 0.222 * wind * StrictMath.pow(rain, 0.88);
    }

    /** Probability that precipitation falls as snow [1]: Jennings et al. 2018, bivariate (from memory); humidity 0 to 1. */
    public static double snowProbability(double airCelsius, double relativeHumidity) {
        return 1 / (1 + StrictMath.exp(-10.04 + 1.41 * airCelsius + 0.09 * 100 * relativeHumidity));
    }

    /** Wet-bulb temperature [degC] near sea level, humidity 0.05 to 0.99: Stull 2011, J Appl Meteorol Climatol 50:2267. */
    public static double wetBulb(double airCelsius, double relativeHumidity) {
        double percent = 100 * relativeHumidity;
        return airCelsius * StrictMath.atan(0.151977 * Math.sqrt(percent + 8.313659))
                + StrictMath.atan(airCelsius + percent)
                - StrictMath.atan(percent - 1.676331)
                + 0.00391838 * percent * Math.sqrt(percent) * StrictMath.atan(0.023101 * percent)
                - 4.686035;
    }
}
