package longnight.night;

/**
 * How a night is integrated.
 *
 * @param step           working step [s], 5 to 300; 60 s moves the core by less than 0.005 K against 30 s
 * @param settlingStep   step in the first 20 minutes and after every abrupt change [s]
 * @param boundary       longest time between two linearisations of the surface exchange [s]
 * @param settlingBoundary the same in the first 20 minutes and after every abrupt change [s]
 * @param water          true to follow water in the clothing; the reference integrator leaves it out
 * @param reference      true for the reference integrator: Dormand-Prince 5(4), the surface exchange evaluated at every stage
 * @param tolerance      error tolerance of the reference integrator, absolute [K] and relative [1]
 */
public record NumericalSettings(
        double step,
        double settlingStep,
        double boundary,
        double settlingBoundary,
        boolean water,
        boolean reference,
        double tolerance) {

    public NumericalSettings {
        if (water && reference) {
            throw new IllegalArgumentException("the reference integrator follows no water");
        }
    }

    /** The default: 60 s, 30 s while settling; surface exchange every five minutes, every minute while settling. */
    public static NumericalSettings standard() {
        return new NumericalSettings(60, 30, 300, 60, true, false, 1e-6);
    }

    /** The default without water. */
    public static NumericalSettings dry() {
        return standard().withoutWater();
    }

    /** The same steps without water. */
    public NumericalSettings withoutWater() {
        return new NumericalSettings(step, settlingStep, boundary, settlingBoundary, false, reference, tolerance);
    }

    /**
     * For many nights of which only the differences count: the surface is looked at every half hour, fast water every ten minutes
     * (docs/band.md says what that moves). The body's step stays, since much longer ones break down under some models.
     */
    public static NumericalSettings coarse() {
        return new NumericalSettings(60, 30, 1800, 600, true, false, 1e-6);
    }

    /** The reference integrator. */
    public static NumericalSettings referenceIntegrator() {
        return new NumericalSettings(60, 30, 300, 60, false, true, 1e-6);
    }

    /** The working integrator with every step and interval divided. */
    public NumericalSettings divided(double by) {
        return new NumericalSettings(
                step / by, settlingStep / by, boundary / by, settlingBoundary / by, water, reference, tolerance);
    }
}
