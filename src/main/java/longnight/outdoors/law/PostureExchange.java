package longnight.outdoors.law;

import longnight.figure.BodySegment;
import longnight.figure.Posture;

/** How a body in a posture meets the air around it: shares of skin that see it, diameters, heights. */
public final class PostureExchange {

    /** Skin areas [m2] of the standard body, both sides, neck with the head: Takahashi et al. 2021. */
    static final double[] AREA = {0.139, 0.175, 0.161, 0.221, 0.192, 0.126, 0.100, 0.418, 0.224, 0.112};

    /** Measured radiant coefficients [W/(m2 K)]: Ichihara et al. 1997, AIJ 62(501):45 (standing, chair). */
    private static final double[] STANDING = {4.89, 4.32, 4.09, 4.32, 4.55, 4.43, 4.21, 4.77, 5.34, 6.14};

    private static final double[] SITTING = {4.96, 3.99, 4.64, 4.21, 4.96, 4.21, 4.74, 4.10, 4.74, 6.36};

    /** Kurazumi et al. 2008, 13(1):17. */
    private static final double[] LYING = {5.475, 3.463, 3.463, 3.463, 4.249, 4.835, 4.119, 4.440, 5.547, 6.085};

    /** Bare diameters [m] and heights of the middle above ground [m]: engineering estimates, no source. */
    private static final double[] DIAMETER = {0.18, 0.33, 0.33, 0.35, 0.10, 0.08, 0.05, 0.16, 0.11, 0.08};

    private static final double[] HEIGHT_STANDING = {1.60, 1.30, 1.30, 1.00, 1.25, 1.00, 0.80, 0.70, 0.30, 0.06};
    private static final double[] HEIGHT_CHAIR = {1.20, 0.90, 0.90, 0.60, 0.87, 0.80, 0.70, 0.55, 0.28, 0.08};
    private static final double[] HEIGHT_GROUND = {0.75, 0.45, 0.45, 0.15, 0.42, 0.35, 0.35, 0.25, 0.25, 0.08};
    private static final double[] HEIGHT_LYING = {0.12, 0.15, 0.10, 0.12, 0.15, 0.15, 0.15, 0.12, 0.10, 0.10};

    private static final double[][] RADIATING = new double[Posture.values().length][];

    static {
        for (Posture posture : Posture.values()) {
            RADIATING[posture.ordinal()] = scaled(
                    posture.isLying() ? LYING : posture == Posture.STANDING ? STANDING : SITTING,
                    posture.radiatingShare());
        }
    }

    private PostureExchange() {}

    /**
     * Share of a segment's whole skin that radiates to the surroundings [1], 0 to 1. The pattern over the body follows the
     * measured radiant coefficients, the area mean equals {@link Posture#radiatingShare()}. Skin pressed on the ground counts
     * as not radiating here: who leaves contact skin out of the area divides by what is left.
     */
    public static double radiating(Posture posture, BodySegment segment) {
        return RADIATING[posture.ordinal()][segment.ordinal()];
    }

    /**
     * Factor on the still-air coefficients of {@link Convection} for a posture [1]. The manikin's standing and chair values
     * are heat per whole skin, so the convecting share of those two postures is in them already; other sitting postures
     * count against the chair. Kurazumi's lying values are taken as heat per convecting skin and get their whole share.
     */
    public static double stillShare(Posture posture) {
        return posture.isLying() ? posture.convectingShare() : windShare(posture);
    }

    /**
     * Factor on the forced coefficients of {@link CylinderFlow} for a posture [1]. Averaged over the body the cylinder law
     * gives, as it stands, what a standing or seated manikin lost per whole skin (de Dear et al. 1997, {@link
     * PublishedFilms#deDear1997}: 8 % more at 0.1 m/s, equal at 0.25, 12 % less at 3), so the shares of other postures count
     * against those two, the chair for sitting and standing for lying.
     */
    public static double windShare(Posture posture) {
        Posture measured = posture == Posture.STANDING || posture.isLying() ? Posture.STANDING : Posture.CHAIR;
        return posture.convectingShare() / measured.convectingShare();
    }

    /** Diameter of the bare segment [m]. */
    public static double diameter(BodySegment segment) {
        return DIAMETER[segment.ordinal()];
    }

    /** Height of the segment's middle above ground [m]. */
    public static double height(Posture posture, BodySegment segment) {
        double[] heights = posture.isLying()
                ? HEIGHT_LYING
                : posture.isSittingOnGround()
                        ? HEIGHT_GROUND
                        : posture == Posture.CHAIR ? HEIGHT_CHAIR : HEIGHT_STANDING;
        return heights[segment.ordinal()];
    }

    /** Area mean of one value per segment over the standard body. */
    static double areaMean(double[] values) {
        double sum = 0;
        double area = 0;
        for (int i = 0; i < AREA.length; i++) {
            sum += AREA[i] * values[i];
            area += AREA[i];
        }
        return sum / area;
    }

    /** Shares in the ratio of {@code pattern}, none above 1, with a given area mean. */
    private static double[] scaled(double[] pattern, double mean) {
        double low = 0;
        double high = 1;
        double[] shares = new double[pattern.length];
        while (high - low > 1e-15) {
            double factor = 0.5 * (low + high);
            for (int i = 0; i < pattern.length; i++) {
                shares[i] = Math.min(1, factor * pattern[i]);
            }
            if (areaMean(shares) < mean) {
                low = factor;
            } else {
                high = factor;
            }
        }
        return shares;
    }
}
