package longnight.outdoors.law;

/**
 * The wind chill index of 2001 (Osczevski and Bluestein 2005; Meteorological Service of Canada, US National Weather
 * Service). It is a number for a bare face that walks into the wind, no air temperature: it must never enter a heat
 * balance.
 */
public final class WindChill {

    private static final double KILOMETRES_PER_HOUR = 3.6;

    private WindChill() {}

    /**
     * Index from air [degC] and wind at 10 m [m/s]. Outside its definition (air above 10 degC or wind below 4.8 km/h) the
     * air temperature itself.
     */
    public static double index(double airCelsius, double wind10) {
        return metric(airCelsius, wind10 * KILOMETRES_PER_HOUR);
    }

    /** The same in the chart's own units: degC and km/h. */
    public static double metric(double celsius, double kilometresPerHour) {
        if (celsius > 10 || kilometresPerHour < 4.8) {
            return celsius;
        }
        double v = StrictMath.pow(kilometresPerHour, 0.16);
        return 13.12 + 0.6215 * celsius - 11.37 * v + 0.3965 * celsius * v;
    }

    /** The United States form: degF and mph. */
    public static double unitedStates(double fahrenheit, double milesPerHour) {
        if (fahrenheit > 50 || milesPerHour < 3) {
            return fahrenheit;
        }
        double v = StrictMath.pow(milesPerHour, 0.16);
        return 35.74 + 0.6215 * fahrenheit - 35.75 * v + 0.4275 * fahrenheit * v;
    }

    /** To the whole number shown in charts: halves go up. */
    public static int rounded(double index) {
        return (int) Math.floor(index + 0.5);
    }
}
