package longnight.night;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A night in short: what is kept of a run when hundreds of them are compared. Heats in J, temperatures in degC, times in
 * seconds from dusk. Of a run that stopped because the core fell below 32 degC, demand, heats and temperatures are those up to
 * that moment.
 *
 * @param restHeat      heat at rest [W]
 * @param verdict       outcome, times and reasons
 * @param demand        largest 4-hour mean of losses over heat at rest [1]; NaN in a run that stopped before such a window was full
 * @param shortfallHeat [J]
 * @param deficitDawn   core-heat deficit at the end [J], may be negative
 * @param deficitWorst  largest core-heat deficit [J]
 * @param coreDawn      core at the end [degC]
 * @param coreLowest    [degC]
 * @param lowestHand    [degC]
 * @param lowestFoot    [degC]
 * @param waterDawn     water of all kinds in all pieces at the end [kg]; NaN when water was not followed
 * @param stopped       when the run stopped [s]; NaN when it reached dawn
 * @param times         moments of the course [s from dusk], shared by all outlines of one question; not to be changed
 * @param deficit       core-heat deficit at those moments [J]; NaN after a stop
 */
public record Outline(
        double restHeat,
        Verdict verdict,
        double demand,
        double shortfallHeat,
        double deficitDawn,
        double deficitWorst,
        double coreDawn,
        double coreLowest,
        double lowestHand,
        double lowestFoot,
        double waterDawn,
        double stopped,
        double[] times,
        double[] deficit) {

    /** Whether it holds, easily or by shivering, by the lines of the verdict. */
    public boolean holds() {
        return Double.isNaN(stopped)
                && !crosses(Verdict.Line.DEMAND)
                && !crosses(Verdict.Line.CORE_HEAT_DEFICIT)
                && !crosses(Verdict.Line.CORE_35);
    }

    /** Whether one of the verdict's lines is crossed, by the numbers kept here. */
    public boolean crosses(Verdict.Line line) {
        return switch (line) {
            case DEMAND -> demand > VerdictRule.SHIVERING;
            case CORE_HEAT_DEFICIT -> !(deficitDawn <= VerdictRule.DEAD_BAND);
            case CORE_35 -> !(coreLowest >= VerdictRule.CORE);
        };
    }

    /**
     * The outline moved by what separates two others: so a run with long steps loses the error that it shares with another run
     * with those steps. The verdict's words stay those of this run. A number that one of the others lacks stays as it is.
     *
     * @param from the other run with these steps
     * @param to   that run with steps as short as wanted
     */
    public Outline moved(Outline from, Outline to) {
        return new Outline(
                restHeat,
                verdict,
                moved(demand, from.demand, to.demand),
                moved(shortfallHeat, from.shortfallHeat, to.shortfallHeat),
                moved(deficitDawn, from.deficitDawn, to.deficitDawn),
                moved(deficitWorst, from.deficitWorst, to.deficitWorst),
                moved(coreDawn, from.coreDawn, to.coreDawn),
                moved(coreLowest, from.coreLowest, to.coreLowest),
                moved(lowestHand, from.lowestHand, to.lowestHand),
                moved(lowestFoot, from.lowestFoot, to.lowestFoot),
                moved(waterDawn, from.waterDawn, to.waterDawn),
                stopped,
                times,
                IntStream.range(0, times.length)
                        .mapToDouble(i -> moved(deficit[i], from.deficit[i], to.deficit[i]))
                        .toArray());
    }

    /**
     * The outline of a run in which more heat was lost than reckoned.
     *
     * @param share of the losses [1]
     */
    public Outline losing(double share) {
        double end = Double.isNaN(stopped) ? times[times.length - 1] : stopped;
        return new Outline(
                restHeat,
                verdict,
                demand * (1 + share),
                shortfallHeat + share * (shortfallHeat + restHeat * end),
                deficitDawn,
                deficitWorst,
                coreDawn,
                coreLowest,
                lowestHand,
                lowestFoot,
                waterDawn,
                stopped,
                times,
                deficit);
    }

    private static double moved(double value, double from, double to) {
        double by = to - from;
        return Double.isNaN(by) ? value : value + by;
    }

    /**
     * The outline of a full answer.
     *
     * @throws IllegalArgumentException when it lies outside the model's range and nothing was run
     */
    public static Outline of(NightResult result, double[] times) {
        if (result.trace().time().length == 0) {
            throw new IllegalArgumentException("nothing was run");
        }
        return of(
                result.trace(),
                result.restHeat(),
                result.verdict(),
                result.water() == null ? Double.NaN : result.water().heldAtDawn(),
                result.stopped(),
                times);
    }

    static Outline of(Trace trace, double restHeat, Verdict verdict, double water, double stopped, double[] times) {
        int last = trace.time().length - 1;
        return new Outline(
                restHeat,
                verdict,
                greatest(trace.demand()),
                trace.shortfall()[last],
                trace.coreHeatDeficit()[last],
                greatest(trace.coreHeatDeficit()),
                trace.core()[last],
                least(trace.core()),
                least(trace.hand()),
                least(trace.foot()),
                water,
                stopped,
                times,
                Arrays.stream(times)
                        .map(t -> at(trace.time(), trace.coreHeatDeficit(), t))
                        .toArray());
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN);
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElse(Double.NaN);
    }

    /** Straight between the stops of the trace; NaN after its end. */
    private static double at(double[] time, double[] value, double when) {
        int i = Arrays.binarySearch(time, when);
        if (i >= 0) {
            return value[i];
        }
        int after = -i - 1;
        if (after == 0) {
            return value[0];
        }
        if (after == time.length) {
            return when - time[after - 1] < 1e-6 ? value[after - 1] : Double.NaN;
        }
        double f = (when - time[after - 1]) / (time[after] - time[after - 1]);
        return value[after - 1] + f * (value[after] - value[after - 1]);
    }
}
