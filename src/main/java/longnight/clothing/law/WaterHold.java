package longnight.clothing.law;

import longnight.figure.Smooth;

/**
 * How much liquid a layer holds, passes on and lets go. All amounts per skin area [kg/m2].
 *
 * <p><b>Source.</b> Engineering estimates, no source (notes C-74, C-77). That little is lost or gained by the kind of fibre
 * agrees with Crow (1996), DCIEM 96-TM-17 (abstract): drying depends on the amount of water alone.
 */
public final class WaterHold {
    /** Width of the rounding at a full layer, as a share of what it holds. */
    private static final double ROUNDING = 0.05;

    private WaterHold() {}

    /**
     * Liquid that drains away [kg/m2]: what is above the hold, with the onset rounded over 5 % of it on both sides.
     *
     * @param liquid in the layer
     * @param hold   most it holds, 0 and up
     */
    public static double excess(double liquid, double hold) {
        return Math.min(Math.max(0, liquid), Smooth.above(liquid - hold, ROUNDING * hold));
    }

    /** Liquid left after wringing or shaking, where wrung is the most that is left [kg/m2]. */
    public static double wrung(double liquid, double wrung) {
        return Math.min(liquid, wrung);
    }

    /**
     * Liquid that creeps from one layer into the one it touches [kg/(m2 s)]: in proportion to the difference in how full
     * they are, as fast as the slower of the two lets it. Positive from the first to the second.
     *
     * @param first        liquid over hold of the first layer [1]
     * @param second       of the second [1]
     * @param firstWicking wicking coefficient of the first [kg/(m2 s)], 0 for what does not wick
     * @param secondWicking of the second
     */
    public static double wicking(double first, double second, double firstWicking, double secondWicking) {
        return Math.min(firstWicking, secondWicking) * (first - second);
    }
}
