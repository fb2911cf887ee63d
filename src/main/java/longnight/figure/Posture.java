package longnight.figure;

/** Postures of a stationary person, with the shares of body area that convect, radiate and touch (Kurazumi et al. 2008). */
public enum Posture {
    STANDING(0.942, 0.773, 0.013),
    CHAIR(0.910, 0.732, 0.008),
    SITTING_CROSS_LEGGED(0.843, 0.606, 0.029),
    SITTING_KNEES_UP(0.865, 0.609, 0.023),
    SITTING_LEGS_OUT(0.878, 0.686, 0.038),
    LYING_SUPINE(0.811, 0.708, 0.100),
    LYING_CURLED(0.879, 0.600, 0.039);

    private final double convectingShare;
    private final double radiatingShare;
    private final double contactShare;

    Posture(double convectingShare, double radiatingShare, double contactShare) {
        this.convectingShare = convectingShare;
        this.radiatingShare = radiatingShare;
        this.contactShare = contactShare;
    }

    /** Convecting share of body area [1], Kurazumi et al. 2008, Build Environ 43:1555 (abstract). */
    public double convectingShare() {
        return convectingShare;
    }

    /** Radiating share of body area [1]; the curled value 0.60 is an engineering estimate (straight on the side: 0.712). */
    public double radiatingShare() {
        return radiatingShare;
    }

    /** Share of body area that touches the ground, unclothed on a hard floor [1]. */
    public double contactShare() {
        return contactShare;
    }

    /** True when the person lies. */
    public boolean isLying() {
        return this == LYING_SUPINE || this == LYING_CURLED;
    }

    /** True when the person sits on the ground (not on a chair). */
    public boolean isSittingOnGround() {
        return this == SITTING_CROSS_LEGGED || this == SITTING_KNEES_UP || this == SITTING_LEGS_OUT;
    }
}
