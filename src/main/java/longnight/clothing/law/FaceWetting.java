package longnight.clothing.law;

import longnight.figure.Smooth;

/**
 * Rain on the outermost cloth: what its finish throws off, what the face soaks up, what goes through and what runs off.
 *
 * <p><b>Source.</b> Engineering estimates, no source (notes C-75, C-76), but for the direction of the cold: coatings pass
 * less vapour in the cold, Osczevski (2003), DRDC TR 2003-070 (abstract).
 */
public final class FaceWetting {
    /** Rain at which an hour tires the finish half as much as an hour of downpour [mm/h]. */
    private static final double LIGHT = 0.5;

    /** A membrane is as tight as it gets at -10 degC and below, and begins to tighten at -5 degC (the latter: estimate). */
    private static final double COLD_FROM = -5;

    private static final double COLD_TO = -10;

    private FaceWetting() {}

    /**
     * Share of the rain that the finish throws off [1].
     *
     * @param fresh    share when the rain begins [1]
     * @param rained   seconds of steady rain since the piece was last dry, see {@link #tiring}
     * @param halfTime rain after which half of it is left [s]
     */
    public static double repelled(double fresh, double rained, double halfTime) {
        return fresh * StrictMath.exp(-0.6931471805599453 * rained / halfTime);
    }

    /** How much a second of such rain counts as steady rain [1], 0 for none, towards 1 in a downpour; rate in mm/h. */
    public static double tiring(double rain) {
        return rain / (rain + LIGHT);
    }

    /**
     * Water that the face takes up in one step [kg/m2]: drops find room on the share of the face that is still free, so
     * that it fills without ever running over whatever the step. Exact for a constant rate.
     *
     * @param arriving water not thrown off in this step [kg/m2], 0 and up
     * @param water    liquid in the face [kg/m2]
     * @param hold     most the face holds [kg/m2], above 0
     */
    public static double uptake(double arriving, double water, double hold) {
        return Math.max(0, hold - water) * -StrictMath.expm1(-arriving / hold);
    }

    /** Factor on the vapour resistance of a face of which the given share is wetted out [1]. */
    public static double vapourFactor(double wetted, double factorWhenWet) {
        return 1 + (factorWhenWet - 1) * Math.min(1, Math.max(0, wetted));
    }

    /** Factor on the vapour resistance of a membrane in the cold [1]; its temperature in degC. */
    public static double coldMembrane(double celsius, double factorWhenCold) {
        return 1 + (factorWhenCold - 1) * Smooth.step((celsius - COLD_FROM) / (COLD_TO - COLD_FROM));
    }
}
