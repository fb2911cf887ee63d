package longnight.clothing.law;

/**
 * Arithmetic of whole-body insulation, as tables of garments use it. The engine builds its stacks from layers; these
 * serve laboratory cases, checks, and the standards.
 *
 * <p><b>Sources.</b> ISO 9920:2007; Olesen (1985); McCullough and Jones (1984), ASHRAE RP-411; coefficients from memory
 * except where said.
 */
public final class WholeBody {
    /** One clo [m2 K/W], by definition. */
    public static final double CLO = 0.155;

    /** Resistance of the air film on a standing body in air of 0.4 m/s or less [m2 K/W], ISO 11079:2007. */
    public static final double STILL_AIR = 0.085;

    private WholeBody() {}

    /** Clothed area over bare area [1], ISO 9920:2007. @param intrinsic [m2 K/W] */
    public static double areaFactor(double intrinsic) {
        return 1 + 1.81 * intrinsic;
    }

    /** Total insulation with the static air film [m2 K/W]. @param intrinsic [m2 K/W] */
    public static double total(double intrinsic) {
        return intrinsic + STILL_AIR / areaFactor(intrinsic);
    }

    /**
     * Intrinsic insulation of an outfit from the sum of its pieces' effective values [m2 K/W], McCullough and Jones (1984):
     * 0.161 clo + 0.835 of the sum. Olesen (1985) takes the plain sum.
     */
    public static double outfitMcCulloughJones(double sumOfEffective) {
        return 0.161 * CLO + 0.835 * sumOfEffective;
    }

    /**
     * Effective whole-body insulation of one garment [m2 K/W], McCullough and Jones (1984).
     *
     * @param thickness fabric thickness [m], at most 0.008: thicker fabrics run above {@link #ceiling}
     * @param covered   covered share of the body [1]
     */
    public static double garment(double thickness, double covered) {
        return CLO * ((0.534 + 135 * thickness) * covered - 0.0549);
    }

    /**
     * What a garment of boundless insulation can add to a whole body at uniform skin temperature when the rest stays bare
     * [m2 K/W]: heat leaves by the bare part alone. Derived from resistances in parallel.
     *
     * @param stillAir resistance of the bare part [m2 K/W]
     * @param covered  covered share [1], below 1
     */
    public static double ceiling(double stillAir, double covered) {
        return stillAir * covered / (1 - covered);
    }
}
