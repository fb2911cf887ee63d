package longnight.figure;

/**
 * The ten thermal segments of the body, left and right merged (Tanabe et al. 2002, 16 segments with the six paired ones
 * merged). The order of the constants is the order of every array indexed by segment.
 */
public enum BodySegment {
    HEAD,
    CHEST,
    BACK,
    PELVIS,
    UPPER_ARM,
    FOREARM,
    HAND,
    THIGH,
    CALF,
    FOOT;

    /** Number of segments. */
    public static final int COUNT = 10;

    /** How many of it a person has: 2 for arms, hands, legs and feet. */
    public int multiplicity() {
        return ordinal() >= UPPER_ARM.ordinal() ? 2 : 1;
    }

    /** True for arms, hands, thighs, calves and feet. */
    public boolean isLimb() {
        return multiplicity() == 2;
    }

    /** True for chest, back and pelvis. */
    public boolean isTrunk() {
        return this == CHEST || this == BACK || this == PELVIS;
    }
}
