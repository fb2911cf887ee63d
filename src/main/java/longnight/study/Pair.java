package longnight.study;

/**
 * Two changes made together.
 *
 * @param one   the first, by rank
 * @param other the second
 * @param joint shortfall heat that both save together [J]
 * @param sum   the sum of what each saves alone [J]
 */
public record Pair(Effect one, Effect other, double joint, double sum) {
    /** Share of the larger of the two effects by which the joint one may differ from the sum before that is told [1]. */
    public static final double SHARE = 0.2;

    /** Differences below this are never told [J]; about a cup of tea's warmth. */
    public static final double FLOOR = 30e3;

    /** Whether the two depend on each other. */
    public boolean depends() {
        double larger = Math.max(Math.abs(one.shortfall()), Math.abs(other.shortfall()));
        return Math.abs(joint - sum) > Math.max(FLOOR, SHARE * larger);
    }
}
