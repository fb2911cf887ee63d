package longnight.study;

import java.util.Comparator;
import longnight.night.NightResult;

/**
 * One member of a group and how their night goes.
 *
 * @param id     within the group
 * @param result of their night
 */
public record Standing(String id, NightResult result) {
    /** Demand from which on a night no longer holds [1]; the line of the verdict. */
    public static final double LINE = 2.0;

    /**
     * The most exposed first: by outcome; among runs that stopped, the earlier stop; then the smaller reserve. Those who tie in
     * this go by shortfall heat and by core-heat deficit, and only who ties in all figures goes by id, so that neither the order
     * of a file nor the names in it move anybody's figures.
     */
    public static final Comparator<Standing> MOST_EXPOSED_FIRST = Comparator.comparing(
                    (Standing one) -> one.result.verdict().outcome(), Comparator.reverseOrder())
            .thenComparingDouble(
                    one -> Double.isNaN(one.result.stopped()) ? Double.POSITIVE_INFINITY : one.result.stopped())
            .thenComparingDouble(Standing::reserve)
            .thenComparingDouble(one -> -one.result.shortfallHeat())
            .thenComparingDouble(one -> -one.result.coreHeatDeficitDawn())
            .thenComparing(Standing::id);

    /**
     * What is left to the line [1]: {@link #LINE} less the night's demand, in times the person's own heat at rest, so that large
     * and small people compare; below zero there is none. NaN where no demand is known.
     */
    public double reserve() {
        return LINE - result.demand();
    }

    /** The reserve as heat [W]. */
    public double reserveHeat() {
        return reserve() * result.restHeat();
    }
}
