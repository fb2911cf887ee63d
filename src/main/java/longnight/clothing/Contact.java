package longnight.clothing;

import java.util.Map;
import longnight.figure.Posture;
import longnight.figure.Zone;

/**
 * Where the body touches the ground. The total comes from {@link Posture#contactShare()}; how it is spread over the zones is
 * an engineering estimate without a source, and so is the place along a zone whose cloth stands for the patch.
 *
 * @param share share of the contact area [1]; the shares of a posture sum to 1
 * @param at    coordinate along the zone whose layers are pressed [1]
 */
record Contact(double share, double at) {

    /** No zone lies down with more than this share of itself: the rest is its upper side. */
    static final double MOST_OF_A_ZONE = 0.7;

    static Map<Zone, Contact> of(Posture posture) {
        return switch (posture) {
            // A chair is furniture: only the soles meet the ground.
            case STANDING, CHAIR -> Map.of(Zone.FOOT, new Contact(1, 0.5));
            case SITTING_KNEES_UP -> Map.of(Zone.PELVIS, new Contact(0.65, 0.85), Zone.FOOT, new Contact(0.35, 0.5));
            case SITTING_CROSS_LEGGED ->
                Map.of(
                        Zone.PELVIS, new Contact(0.60, 0.85),
                        Zone.THIGH, new Contact(0.20, 0.3),
                        Zone.CALF, new Contact(0.12, 0.6),
                        Zone.FOOT, new Contact(0.08, 0.5));
            case SITTING_LEGS_OUT ->
                Map.of(
                        Zone.PELVIS, new Contact(0.45, 0.85),
                        Zone.THIGH, new Contact(0.30, 0.5),
                        Zone.CALF, new Contact(0.20, 0.5),
                        Zone.FOOT, new Contact(0.05, 0.5));
            case LYING_SUPINE ->
                Map.of(
                        Zone.SCALP, new Contact(0.03, 0.5),
                        Zone.BACK, new Contact(0.30, 0.5),
                        Zone.PELVIS, new Contact(0.26, 0.6),
                        Zone.UPPER_ARM, new Contact(0.06, 0.5),
                        Zone.FOREARM, new Contact(0.03, 0.5),
                        Zone.THIGH, new Contact(0.20, 0.5),
                        Zone.CALF, new Contact(0.12, 0.5));
            case LYING_CURLED ->
                Map.of(
                        Zone.CHEST, new Contact(0.15, 0.5),
                        Zone.BACK, new Contact(0.12, 0.5),
                        Zone.PELVIS, new Contact(0.25, 0.6),
                        Zone.UPPER_ARM, new Contact(0.14, 0.5),
                        Zone.THIGH, new Contact(0.22, 0.5),
                        Zone.CALF, new Contact(0.10, 0.5),
                        Zone.FOOT, new Contact(0.02, 0.5));
        };
    }
}
