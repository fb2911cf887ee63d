package longnight.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longnight.night.Caution;
import longnight.night.NightResult;

/**
 * How far a night's answer is open, and what opens it.
 *
 * <p>A band is settled when both ends of the middle 80 % of shortfall heat moved by less than {@link #TOLERANCE} of themselves, or by less than
 * {@link #FLOOR}, in each of the last two doublings of the draws. Indices are settled when no interval of a total index of shortfall
 * heat is wider than {@link #WIDEST}. Both begin with {@link #FIRST} draws and end unsettled when the question allows no more.
 *
 * @param question what was asked
 * @param given    the night as its files say
 * @param worst    the worst plausible night
 * @param indices  what drives the given night under everything in doubt, by quantity
 * @param sums     of the first-order indices
 * @param rows     of the indices
 * @param settled  whether the indices are
 * @param stopped  runs behind the indices that left the model's range; their heats were extended to dawn in proportion
 * @param cautions of both nights, the general one first
 * @param nights   how many nights were run
 */
public record SpreadAnswer(
        SpreadQuestion question,
        Side given,
        Side worst,
        Map<Quantity, Map<Driver, Indices.Index>> indices,
        Map<Quantity, Indices.Estimate> sums,
        int rows,
        boolean settled,
        int stopped,
        List<Caution> cautions,
        int nights) {
    public static final int FIRST = 32;
    public static final double TOLERANCE = 0.02;

    /** Differences that mean nothing [J]; the verdict's dead band. */
    public static final double FLOOR = 15e3;

    public static final double WIDEST = 0.1;

    public SpreadAnswer {
        indices = Collections.unmodifiableMap(new LinkedHashMap<>(indices)); // in the order of the quantities
        sums = Collections.unmodifiableMap(new LinkedHashMap<>(sums));
    }

    /** Of what indices are told. */
    public enum Quantity {
        SHORTFALL_HEAT,
        DEMAND,
        CORE_HEAT_DEFICIT
    }

    /**
     * One night.
     *
     * @param asWritten without any draw
     * @param clouds    for each thing in doubt alone; then for all together where there are several
     */
    public record Side(NightResult asWritten, List<Cloud> clouds) {

        /** Under everything that is in doubt. */
        public Cloud all() {
            return clouds.get(clouds.size() - 1);
        }
    }
}
