package longnight.figure;

/**
 * Surface zones that clothing covers. Each zone belongs to one thermal segment and carries a coordinate from 0 (top or
 * near end: crown, shoulder, hip, elbow, knee, ankle) to 1 (bottom or far end). For {@link #FACE} 0 is the rim that a
 * hood reaches and 1 the middle of the face; for {@link #NECK} 0 is under the chin and 1 the collar bone; for
 * {@link #PELVIS} 0 is the waist and 1 the crotch.
 *
 * <p>Shares of the head segment: neck 0.029 of 0.139 m2 (Takahashi et al. 2021); face 0.035 of 0.140 m2 (from memory,
 * low confidence; physiology P-06); scalp the rest.
 */
public enum Zone {
    SCALP(BodySegment.HEAD, 0.541),
    FACE(BodySegment.HEAD, 0.250),
    NECK(BodySegment.HEAD, 0.209),
    CHEST(BodySegment.CHEST, 1.0),
    BACK(BodySegment.BACK, 1.0),
    PELVIS(BodySegment.PELVIS, 1.0),
    UPPER_ARM(BodySegment.UPPER_ARM, 1.0),
    FOREARM(BodySegment.FOREARM, 1.0),
    HAND(BodySegment.HAND, 1.0),
    THIGH(BodySegment.THIGH, 1.0),
    CALF(BodySegment.CALF, 1.0),
    FOOT(BodySegment.FOOT, 1.0);

    private final BodySegment segment;
    private final double shareOfSegment;

    Zone(BodySegment segment, double shareOfSegment) {
        this.segment = segment;
        this.shareOfSegment = shareOfSegment;
    }

    /** The thermal segment below this zone. */
    public BodySegment segment() {
        return segment;
    }

    /** Share of the segment's skin area [1]; the shares of one segment sum to 1. */
    public double shareOfSegment() {
        return shareOfSegment;
    }
}
