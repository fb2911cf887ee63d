package longnight.body;

/**
 * Choices of model form for a body, beside its numbers.
 *
 * @param law       shivering law
 * @param limbs     how deep limb vessels constrict
 * @param basalHeat basal heat imposed [W]; NaN for the person's own by formula
 * @param peakHeat  cap on the extra heat of shivering imposed [W]; NaN for the person's own
 */
public record BodyOptions(Law law, Limbs limbs, double basalHeat, double peakHeat) {

    /** Shivering laws; a law belongs to a shell and the two must not be mixed at will. */
    public enum Law {
        /** Skin-led, slope measured in air; the nominal law. */
        AIR_SLOPE,
        /** Gated cold-water form; the second law of the band. */
        GATED
    }

    /** Rules for deep limb flow. */
    public enum Limbs {
        /** Strong, effective-flow rule that the nominal constants were fitted with. */
        EFFECTIVE,
        /** The milder first form: skin divisors with a floor of the limb parameter, fat as elsewhere. */
        SKIN_DIVISOR
    }

    /** Law A on the strong shell, the person's own resting heat and peak. */
    public static BodyOptions nominal() {
        return new BodyOptions(Law.AIR_SLOPE, Limbs.EFFECTIVE, Double.NaN, Double.NaN);
    }
}
