package longnight.night;

/**
 * How a night is integrated.
 *
 * @param step           working step [s], 5 to 300; 60 s moves the core by less than 0.005 K against 30 s
 * @param settlingStep   step in the first 20 minutes and after every abrupt change [s]
 * @param boundary       longest time between two linearisations of the surface exchange [s]
 * @param settlingBoundary the same in the first 20 minutes and after every abrupt change [s]
 * @param reference      true for the reference integrator: Dormand-Prince 5(4), the surface exchange evaluated at every stage
 * @param tolerance      error tolerance of the reference integrator, absolute [K] and relative [1]
 */
public record NumericalSettings(
        double step,
        double settlingStep,
        double boundary,
        double settlingBoundary,
        boolean reference,
        double tolerance) {

    /** The default: 60 s, 30 s while settling; surface exchange every five minutes, every minute while settling. */
    public static NumericalSettings standard() {
        return new NumericalSettings(60, 30, 300, 60, false, 1e-6);
    }

    /** The reference integrator. */
    public static NumericalSettings referenceIntegrator() {
        return new NumericalSettings(60, 30, 300, 60, true, 1e-6);
    }

    /** The working integrator with every step and interval divided. */
    public NumericalSettings divided(double by) {
        return new NumericalSettings(
                step / by, settlingStep / by, boundary / by, settlingBoundary / by, reference, tolerance);
    }
}
