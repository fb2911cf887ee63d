package longnight.clothing.law;

import longnight.figure.Smooth;

/**
 * Water bound in the fibres themselves, in balance with the humidity of the air between them, and the heat that binding
 * it sets free.
 *
 * <p><b>Source.</b> Form of the curve and of the heat for wool, scaled to other fibres by their regain at 65 %: Gibson 1996
 * after Morton and Hearle, Physical Properties of Textile Fibres (from memory, note C-70). The curve overshoots near
 * saturation and is therefore held under a cap; the corner there is rounded over 3 % of the cap, which moves the curve by
 * less than 0.25 % while it lies below 85 % of the cap.
 */
public final class Sorption {
    private static final double ROUNDING = 0.03;

    private Sorption() {}

    /**
     * Bound water in balance [kg per kg of dry fibre].
     *
     * @param humidity relative humidity between the fibres, over water above 0 degC [1]; taken as 0 to 1
     * @param regain65 regain at 65 % [1], 0 to 0.2
     * @param cap      most the fibre binds [1], 0 and up
     */
    public static double regain(double humidity, double regain65, double cap) {
        double phi = Math.min(1, Math.max(0, humidity));
        double free = 0.578 * regain65 * phi * (1 / (0.321 + phi) + 1 / (1.262 - phi));
        double width = ROUNDING * cap;
        return Smooth.least(free, cap, width) - Smooth.least(0, cap, width);
    }

    /** Slope of {@link #regain} over humidity [1]; arguments as there, humidity inside 0 to 1. */
    public static double regainSlope(double humidity, double regain65, double cap) {
        double below = 1 / (0.321 + humidity);
        double above = 1 / (1.262 - humidity);
        double slope = 0.578 * regain65 * (0.321 * below * below + 1.262 * above * above);
        double off = 0.578 * regain65 * humidity * (below + above) - cap;
        double width = ROUNDING * cap;
        return slope * 0.5 * (1 - off / Math.sqrt(off * off + width * width));
    }

    /**
     * Heat of binding water, on top of the latent heat of condensing it [J/kg].
     *
     * @param humidity relative humidity [1]; taken as 0 to 1
     */
    public static double heat(double humidity) {
        double phi = Math.min(1, Math.max(0, humidity));
        return 1.95e5 * (1 - phi) * (1 / (0.2 + phi) + 1 / (1.05 - phi));
    }

    /**
     * Share of the way to balance gone in one step [1]; ask once for a step, not for a node.
     *
     * @param step         [s]
     * @param timeConstant [s], above 0
     */
    public static double share(double step, double timeConstant) {
        return -StrictMath.expm1(-step / timeConstant);
    }
}
