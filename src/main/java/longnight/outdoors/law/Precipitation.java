package longnight.outdoors.law;

import java.util.Arrays;
import longnight.air.LatentHeat;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.figure.Smooth;

/**
 * Rain and snow on a person: what falls, how much of it meets each part of the body, how much stays.
 *
 * <p><b>Source.</b> Catching areas: projected area factors of ISO 7726:1998 (up 0.08 and front 0.35 standing, 0.18 and 0.30
 * seated) times the effective radiating share of that standard (0.725 and 0.70). Lying, legs out and curled, and how the
 * whole is shared over the segments: engineering estimates, no source. Rates are water equivalents [mm/h], the same as
 * kg/(m2 h).
 */
public final class Precipitation {
    private static final Posture[] POSTURES = Posture.values();

    private static final double[][] UP_ON = new double[POSTURES.length][];
    private static final double[][] SIDE_ON = new double[POSTURES.length][];
    private static final double BODY = Arrays.stream(PostureExchange.AREA).sum();

    static {
        for (Posture posture : POSTURES) {
            double[] upShare = upShares(posture);
            double[] upOn = new double[BodySegment.COUNT];
            double[] sideOn = new double[BodySegment.COUNT];
            for (BodySegment segment : BodySegment.values()) {
                int i = segment.ordinal();
                upOn[i] = up(posture) * upShare[i] * BODY / PostureExchange.AREA[i];
                sideOn[i] = side(posture) * PostureExchange.radiating(posture, segment) / posture.radiatingShare();
            }
            UP_ON[posture.ordinal()] = upOn;
            SIDE_ON[posture.ordinal()] = sideOn;
        }
    }

    /** Fall speed of dry and of wet snow [m/s]: middle of 0.8 to 1.2 and of 1.2 to 2, from memory (note E-62). */
    private static final double DRY_SNOW_SPEED = 1.0;

    private static final double WET_SNOW_SPEED = 1.6;

    /** Share of snow that stays at 0 degC wet bulb [1]; engineering estimate, no source. */
    private static final double DAMP_SHARE = 0.5;

    /** Heat to warm ice [J/(kg K)], textbook, at -5 degC. */
    private static final double ICE_HEAT = 2.1e3;

    /** Strength of rain in words: glossary of the American Meteorological Society, "rain". */
    public enum Strength {
        NONE,
        /** Up to 2.5 mm/h. */
        LIGHT,
        /** Above 2.5, up to 7.6 mm/h. */
        MODERATE,
        /** Above 7.6 mm/h. */
        HEAVY
    }

    private Precipitation() {}

    /** In words; rate in mm/h, 0 and up. */
    public static Strength strength(double rate) {
        if (rate <= 0) {
            return Strength.NONE;
        }
        return rate <= 2.5 ? Strength.LIGHT : rate <= 7.6 ? Strength.MODERATE : Strength.HEAVY;
    }

    // --- What comes ---

    /**
     * Precipitation through an upright plane that faces the wind [mm/h]. The rain in it after Lacy 1965
     * ({@link Rain#driving}), the snow in it by its fall speed.
     *
     * @param rate      of rain and snow together [mm/h]
     * @param snowShare share of snow [1], see {@link Rain#snowProbability}
     * @param wetBulb   wet-bulb temperature [degC]: wet snow falls faster
     * @param wind      at the body [m/s]
     */
    public static double driving(double rate, double snowShare, double wetBulb, double wind) {
        double speed = DRY_SNOW_SPEED + (WET_SNOW_SPEED - DRY_SNOW_SPEED) * Smooth.step((wetBulb + 2) / 2);
        return Rain.driving((1 - snowShare) * rate, wind) + snowShare * rate * wind / speed;
    }

    // --- What it meets ---

    /** Catching area seen from above over body area [1]. */
    public static double up(Posture posture) {
        return switch (posture) {
            case STANDING -> 0.08 * 0.725;
            case CHAIR, SITTING_CROSS_LEGGED, SITTING_KNEES_UP -> 0.18 * 0.70;
            case SITTING_LEGS_OUT -> 0.22 * 0.70;
            case LYING_SUPINE -> 0.55 / 1.8;
            case LYING_CURLED -> 0.40 / 1.8;
        };
    }

    /** Catching area seen from windward over body area [1], facing the wind or with the back to it. */
    public static double side(Posture posture) {
        return switch (posture) {
            case STANDING -> 0.35 * 0.725;
            case CHAIR, SITTING_CROSS_LEGGED, SITTING_KNEES_UP, SITTING_LEGS_OUT -> 0.30 * 0.70;
            case LYING_SUPINE -> 0.25 / 1.8;
            case LYING_CURLED -> 0.33 / 1.8;
        };
    }

    /** Area of a segment seen from above over its skin area [1]. */
    public static double upOn(Posture posture, BodySegment segment) {
        return UP_ON[posture.ordinal()][segment.ordinal()];
    }

    /** Area of a segment seen from windward over its skin area [1]; shared as its skin sees the surroundings. */
    public static double sideOn(Posture posture, BodySegment segment) {
        return SIDE_ON[posture.ordinal()][segment.ordinal()];
    }

    /**
     * What meets a segment, per skin area [kg/(m2 s)], of bare size: multiply by the outer surface over skin surface.
     *
     * @param rate    falling [mm/h]
     * @param driving through an upright plane at the wind of this segment [mm/h]
     */
    public static double caught(Posture posture, BodySegment segment, double rate, double driving) {
        return (upOn(posture, segment) * rate + sideOn(posture, segment) * driving) / 3600;
    }

    // --- What stays ---

    /**
     * Share of the snow caught that stays on a cloth [1]: little of dry snow (the rest bounces or is brushed off), rising to 0.5
     * between -2 and 0 degC wet bulb; of wet snow 1/v in wind v above 1 m/s (ISO 12494, wet-snow accretion, from memory), with
     * its corner rounded; all of it on a surface above the melting point, where it melts as it lands. Numbers below 0 degC and
     * the ramps: engineering estimates, no source.
     *
     * @param wetBulb  wet-bulb temperature of the air [degC]
     * @param wind     at the body [m/s], 0 and up
     * @param surface  outermost cloth [degC]
     * @param dryShare of dry snow [1], 0 to 0.5
     */
    public static double sticking(double wetBulb, double wind, double surface, double dryShare) {
        double cold = dryShare + (DAMP_SHARE - dryShare) * Smooth.step((wetBulb + 2) / 2);
        double v4 = wind * wind * wind * wind;
        double wet = 1 / Math.sqrt(Math.sqrt(Math.sqrt(1 + v4 * v4)));
        double stays = cold + (wet - cold) * Smooth.step(wetBulb / 0.5);
        return stays + (1 - stays) * Smooth.step(surface);
    }

    /** Heat that melts snow [J/kg], warmed from {@code celsius}, 0 or below: 334 kJ and 2.1 kJ a degree. */
    public static double meltHeat(double celsius) {
        return LatentHeat.fusion(273.15) - ICE_HEAT * Math.min(0, celsius);
    }

    /** Order of {@link BodySegment}; each row sums to 1. */
    private static double[] upShares(Posture posture) {
        return switch (posture) {
            case STANDING -> new double[] {0.24, 0.20, 0.20, 0.02, 0.20, 0.02, 0.02, 0.02, 0.00, 0.08};
            case CHAIR -> new double[] {0.11, 0.10, 0.10, 0.06, 0.12, 0.08, 0.05, 0.32, 0.01, 0.05};
            case SITTING_CROSS_LEGGED -> new double[] {0.11, 0.07, 0.11, 0.05, 0.12, 0.08, 0.05, 0.26, 0.12, 0.03};
            case SITTING_KNEES_UP -> new double[] {0.11, 0.06, 0.12, 0.05, 0.13, 0.10, 0.05, 0.20, 0.12, 0.06};
            case SITTING_LEGS_OUT -> new double[] {0.09, 0.07, 0.08, 0.05, 0.10, 0.07, 0.04, 0.29, 0.17, 0.04};
            case LYING_SUPINE -> new double[] {0.05, 0.19, 0.00, 0.13, 0.11, 0.07, 0.05, 0.23, 0.12, 0.05};
            case LYING_CURLED -> new double[] {0.09, 0.10, 0.16, 0.12, 0.14, 0.05, 0.03, 0.20, 0.09, 0.02};
        };
    }
}
