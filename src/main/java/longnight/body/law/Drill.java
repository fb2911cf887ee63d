package longnight.body.law;

/**
 * Exercise on the spot to warm up. Heat while it lasts, and what it adds on average.
 *
 * <p>It is not free: it moves air through the clothing, opens the vessels, may start sweat and burns carbohydrate. Those
 * costs arise where they belong, not here.
 *
 * <p><b>Source.</b> 2011 Compendium of Physical Activities, codes 02024, 02030, 02022 and 02020 (from copies).
 */
public enum Drill {
    /** Light calisthenics: swinging arms, stamping. */
    LIGHT(2.8),
    /** General calisthenics. */
    GENERAL(3.5),
    /** Push-ups, lunges, squats. */
    MODERATE(3.8),
    /** Jumping jacks. */
    VIGOROUS(8.0);

    private final double units;

    Drill(double units) {
        this.units = units;
    }

    /** Metabolic rate while drilling [W], with body mass [kg]. */
    public double rate(double mass) {
        return Met.exercise(units, mass);
    }

    /**
     * Average of what it adds to sitting quietly [W]: {@code (units - 1) x 1.162 W/kg x mass x share of the time}.
     *
     * @param mass  [kg]
     * @param share of the time spent drilling [1]
     */
    public double extra(double mass, double share) {
        return Met.exercise(units - 1.0, mass) * share;
    }
}
