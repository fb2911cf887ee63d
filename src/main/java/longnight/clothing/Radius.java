package longnight.clothing;

import longnight.figure.Zone;

/** Radii of the bare reference body [m]; engineering estimates, no source. The scalp is a sphere, the rest cylinders. */
final class Radius {
    static final double HAND = 0.035;

    private Radius() {}

    static double of(Zone zone) {
        return switch (zone) {
            case SCALP, FACE -> 0.095;
            case NECK -> 0.060;
            case CHEST, BACK, PELVIS -> 0.150;
            case UPPER_ARM -> 0.047;
            case FOREARM -> 0.040;
            case HAND -> HAND;
            case THIGH -> 0.080;
            case CALF -> 0.055;
            case FOOT -> 0.040;
        };
    }
}
