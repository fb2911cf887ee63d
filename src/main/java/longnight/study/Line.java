package longnight.study;

import longnight.night.NightResult;
import longnight.night.Outline;

/**
 * What a night may ask at most. Choices of those who plan; none of them is a limit of safety.
 *
 * @param measure what is limited
 * @param limit   the most of it, in the measure's unit, above 0
 */
public record Line(Measure measure, double limit) {
    /** The dead band of the core-heat deficit, below which deficits are not told apart from none [J]. */
    public static final double DEAD_BAND = 15e3;

    /** Length of the window over which a demand is taken [s]. */
    public static final double DEMAND_WINDOW = 4 * 3600;

    /** What can be limited. */
    public enum Measure {
        /** Largest 4-hour mean of losses over heat at rest [1]. */
        DEMAND,
        /** Shortfall heat at dawn per body area [J/m2]. */
        SHORTFALL_HEAT,
        /** Core-heat deficit at dawn [J]. */
        CORE_HEAT_DEFICIT
    }

    /** Stands for a demand that nobody could reckon, since the run stopped before its first window was full. */
    private static final double UNBEARABLE = 10;

    /** A run that stopped is over the line, if only by this share of it. */
    private static final double JUST_OVER = 1e-3;

    /** @throws IllegalArgumentException when the limit is not above 0 */
    public Line {
        if (!(limit > 0 && limit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(measure + " at most " + limit + ": must be above 0");
        }
    }

    /** What the night asks, in the measure's unit. */
    public double asked(NightResult night) {
        return switch (measure) {
            case DEMAND -> night.demand();
            case SHORTFALL_HEAT -> night.shortfallHeat() / night.bodyArea();
            case CORE_HEAT_DEFICIT -> night.coreHeatDeficitDawn();
        };
    }

    /** How far the night lies over the line, as a share of it [1]; below 0 where it keeps to it. */
    double excess(NightResult night) {
        return excess(asked(night), night.stopped());
    }

    /**
     * The same of a night in short.
     *
     * @param bodyArea of the person [m2]
     */
    double excess(Outline night, double bodyArea) {
        double asked = switch (measure) {
            case DEMAND -> night.demand();
            case SHORTFALL_HEAT -> night.shortfallHeat() / bodyArea;
            case CORE_HEAT_DEFICIT -> night.deficitDawn();
        };
        return excess(asked, night.stopped());
    }

    private double excess(double asked, double stopped) {
        double excess = (Double.isNaN(asked) ? UNBEARABLE : asked) / limit - 1;
        return Double.isNaN(stopped) ? excess : Math.max(JUST_OVER, excess);
    }
}
