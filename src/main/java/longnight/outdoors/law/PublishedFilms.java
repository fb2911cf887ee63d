package longnight.outdoors.law;

import longnight.figure.BodySegment;

/**
 * Whole-body and per-segment convection as published by others, W/(m2 K) from air speed in m/s. The engine itself uses
 * {@link CylinderFlow}; these are what it is held against. Two families lie 1.5 to 1.6 apart: low turbulence ({@link
 * #deDear1997}, ISO) and high turbulence ({@link #ichihara1997}).
 */
public final class PublishedFilms {

    private static final double[] ICHIHARA_A = {15.0, 11.0, 17.0, 13.0, 17.0, 17.0, 20.0, 14.0, 15.8, 15.1};
    private static final double[] ICHIHARA_B = {0.62, 0.67, 0.49, 0.60, 0.59, 0.61, 0.60, 0.61, 0.74, 0.62};

    private PublishedFilms() {}

    /** Whole body, standing or seated, 0.2 to 5 m/s: de Dear et al. 1997, Int J Biometeorol 40:141 (abstract). */
    public static double deDear1997(double speed) {
        return 10.3 * StrictMath.pow(speed, 0.6);
    }

    /** One segment, turbulent room air, 0.2 m/s and more: Ichihara et al. 1997, AIJ 62(501):45. */
    public static double ichihara1997(BodySegment segment, double speed) {
        return ICHIHARA_A[segment.ordinal()] * StrictMath.pow(speed, ICHIHARA_B[segment.ordinal()]);
    }

    /** ISO 7730:2005, equation 3, meant for 1 m/s and less; difference between clothing and air [K]. */
    public static double iso7730(double speed, double difference) {
        return Math.max(still(difference), 12.1 * Math.sqrt(speed));
    }

    /** ISO 7933:2004, annex; difference between clothing and air [K]. */
    public static double iso7933(double speed, double difference) {
        return Math.max(still(difference), speed <= 1 ? 3.5 + 5.2 * speed : 8.7 * StrictMath.pow(speed, 0.6));
    }

    private static double still(double difference) {
        return 2.38 * Math.sqrt(Math.sqrt(Math.abs(difference)));
    }
}
