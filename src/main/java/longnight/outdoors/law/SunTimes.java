package longnight.outdoors.law;

/**
 * Sunrise and sunset of one date, by the low-accuracy solar equations of Meeus as used by NOAA (from memory; held
 * against almanac times within 2 minutes).
 *
 * @param course  whether the sun rises at all
 * @param sunrise minutes after local midnight; NaN unless it rises and sets
 * @param sunset  minutes after local midnight; NaN unless it rises and sets
 */
public record SunTimes(Course course, double sunrise, double sunset) {

    /** What the sun does on that date. */
    public enum Course {
        RISES_AND_SETS,
        /** Polar night. */
        NEVER_RISES,
        /** Midnight sun. */
        NEVER_SETS
    }

    /** Zenith angle of the upper rim on the horizon with refraction [degrees], NOAA. */
    private static final double ZENITH = 90.833;

    /**
     * Times for a place and a Gregorian date.
     *
     * @param latitude  degrees, north positive, -90 to 90
     * @param longitude degrees, east positive, -180 to 180
     * @param utcOffset of the clock used [h]
     */
    public static SunTimes of(int year, int month, int day, double latitude, double longitude, double utcOffset) {
        double midnight = julianDay(year, month, day) - utcOffset / 24;
        double[] times = {360, 1080};
        for (int pass = 0; pass < 3; pass++) {
            for (int event = 0; event < 2; event++) {
                double[] sun = sun(midnight + times[event] / 1440);
                double cosHour =
                        StrictMath.cos(radians(ZENITH)) / (StrictMath.cos(radians(latitude)) * StrictMath.cos(sun[0]))
                                - StrictMath.tan(radians(latitude)) * StrictMath.tan(sun[0]);
                if (cosHour > 1) {
                    return new SunTimes(Course.NEVER_RISES, Double.NaN, Double.NaN);
                }
                if (cosHour < -1) {
                    return new SunTimes(Course.NEVER_SETS, Double.NaN, Double.NaN);
                }
                double hourAngle = StrictMath.toDegrees(StrictMath.acos(cosHour)) * (event == 0 ? 1 : -1);
                times[event] = 720 - 4 * (longitude + hourAngle) - sun[1] + 60 * utcOffset;
            }
        }
        return new SunTimes(Course.RISES_AND_SETS, times[0], times[1]);
    }

    /** Julian day at 0 h of a Gregorian date (Fliegel and Van Flandern 1968). */
    private static double julianDay(int year, int month, int day) {
        int a = (month - 14) / 12;
        int noon = day
                - 32075
                + 1461 * (year + 4800 + a) / 4
                + 367 * (month - 2 - 12 * a) / 12
                - 3 * ((year + 4900 + a) / 100) / 4;
        return noon - 0.5;
    }

    /** Declination [rad] and equation of time [min]. */
    private static double[] sun(double julianDay) {
        double t = (julianDay - 2451545) / 36525;
        double meanLongitude = radians(280.46646 + t * (36000.76983 + 0.0003032 * t));
        double anomaly = radians(357.52911 + t * (35999.05029 - 0.0001537 * t));
        double eccentricity = 0.016708634 - t * (0.000042037 + 1.267e-7 * t);
        double centre = StrictMath.sin(anomaly) * (1.914602 - t * (0.004817 + 1.4e-5 * t))
                + StrictMath.sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                + StrictMath.sin(3 * anomaly) * 0.000289;
        double node = radians(125.04 - 1934.136 * t);
        double apparent = meanLongitude + radians(centre - 0.00569 - 0.00478 * StrictMath.sin(node));
        double obliquity = radians(23
                + (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60
                + 0.00256 * StrictMath.cos(node));
        double declination = StrictMath.asin(StrictMath.sin(obliquity) * StrictMath.sin(apparent));
        double tan = StrictMath.tan(obliquity / 2);
        double y = tan * tan;
        double equation = y * StrictMath.sin(2 * meanLongitude)
                - 2 * eccentricity * StrictMath.sin(anomaly)
                + 4 * eccentricity * y * StrictMath.sin(anomaly) * StrictMath.cos(2 * meanLongitude)
                - 0.5 * y * y * StrictMath.sin(4 * meanLongitude)
                - 1.25 * eccentricity * eccentricity * StrictMath.sin(2 * anomaly);
        return new double[] {declination, 4 * StrictMath.toDegrees(equation)};
    }

    private static double radians(double degrees) {
        return StrictMath.toRadians(degrees);
    }
}
