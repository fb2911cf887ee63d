package longnight.outdoors.law;

import longnight.figure.BodySegment;
import longnight.figure.Posture;

/** Convection at the outer surface of a person: still air, and still air mixed with wind. */
public final class Convection {

    /** Ichihara et al. 1997, AIJ 62(501):45, thermal manikin, W/(m2 K). */
    private static final double[] STANDING = {4.48, 2.97, 2.91, 2.85, 3.61, 3.55, 3.67, 2.80, 2.04, 2.04};

    private static final double[] SITTING = {4.75, 3.12, 2.48, 1.84, 3.76, 3.62, 2.06, 2.98, 2.98, 2.62};

    /** Kurazumi et al. 2008, 13(1):17, lying: h = a dT^b, W/(m2 K). */
    private static final double[] LYING_A = {1.105, 1.211, 1.211, 1.211, 0.913, 2.081, 2.178, 0.945, 0.385, 0.200};

    private static final double[] LYING_B = {0.345, 0.046, 0.046, 0.046, 0.373, 0.850, 0.297, 0.447, 0.580, 0.966};

    /** The forearm's fit runs away (26 at 20 K): engineering estimate, no source. */
    private static final double LYING_CAP = 8;

    /** Difference at which the manikin values hold, and the least factor for smaller ones: engineering estimate, no source. */
    private static final double MANIKIN_DIFFERENCE = 10;

    private static final double LEAST_FACTOR = 0.5;

    private Convection() {}

    /**
     * Natural convection as the sources print it [W/(m2 K)]: standing and sitting constant, lying by the difference and
     * without a cap.
     */
    static double naturalPrinted(Posture posture, BodySegment segment, double difference) {
        int i = segment.ordinal();
        if (posture.isLying()) {
            return LYING_A[i] * StrictMath.pow(Math.abs(difference), LYING_B[i]);
        }
        return posture == Posture.STANDING ? STANDING[i] : SITTING[i];
    }

    /**
     * Natural convection [W/(m2 K)] for any difference between surface and air [K], sign ignored. Standing and sitting
     * values are scaled by the fourth root of the difference over 10 K (laminar free convection, textbook), at least by
     * half; the lying fits take differences below 0.625 K (where that floor lies) as 0.625 K and stop at 8.
     */
    public static double natural(Posture posture, BodySegment segment, double difference) {
        double dt = Math.abs(difference);
        if (posture.isLying()) {
            double least = MANIKIN_DIFFERENCE * LEAST_FACTOR * LEAST_FACTOR * LEAST_FACTOR * LEAST_FACTOR;
            return Math.min(LYING_CAP, naturalPrinted(posture, segment, Math.max(dt, least)));
        }
        double factor = Math.max(LEAST_FACTOR, Math.sqrt(Math.sqrt(dt / MANIKIN_DIFFERENCE)));
        return factor * naturalPrinted(posture, segment, dt);
    }

    /** Natural and forced convection together [W/(m2 K)]: third-power blend of Churchill (from memory). */
    public static double mixed(double natural, double forced) {
        return StrictMath.cbrt(natural * natural * natural + forced * forced * forced);
    }
}
