package longnight.clothing.law;

/**
 * Air that reaches what is worn below through the hem, the cuffs and the collar of a loose piece instead of through its
 * cloth: a leak beside the cloth, so it adds to the air permeability of the whole stack and acts through the correction for
 * wind alone.
 *
 * <p><b>Source.</b> Engineering estimate, no source: openings leak 50 to 200 L/(m2 s) over 2 to 5 % of a piece's area; they
 * close where 20 mm of room or less is left unfilled, and gape from 80 mm on; straight in between.
 */
public final class Draught {
    private static final double CLOSED = 0.020;
    private static final double GAPING = 0.080;

    private Draught() {}

    /**
     * What the openings add to the air permeability of the stack [L/(m2 s) at 100 Pa], spread over the covered area.
     *
     * @param spare    room under the piece that nothing fills [m]; NaN when it stretches to fit
     * @param openings permeability of the openings themselves [L/(m2 s) at 100 Pa], 0 and up
     * @param share    their share of the piece's area [1], 0 to 1
     */
    public static double permeability(double spare, double openings, double share) {
        if (!(spare > CLOSED)) {
            return 0;
        }
        return openings * share * Math.min(1, (spare - CLOSED) / (GAPING - CLOSED));
    }
}
