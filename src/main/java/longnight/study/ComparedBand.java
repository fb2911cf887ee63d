package longnight.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longnight.night.NightResult;
import longnight.night.Outline;

/**
 * Where those compared lie under the same models drawn, and by how much they lie above the first of them, draw by draw: what both
 * share then drops out. Shares and quantiles are of the model, as in {@link Band}.
 *
 * @param seed  of the draws
 * @param draws how many
 * @param all   one for each of those compared, in their order
 */
public record ComparedBand(long seed, int draws, List<Entry> all) {
    /** Draws of the model when nothing else is said. */
    public static final int DRAWS = 100;

    public ComparedBand {
        all = List.copyOf(all);
    }

    /**
     * One of those compared. NaN throughout where nothing was run; a demand is NaN where the usual model has none, since its run
     * stopped before the first window was full.
     *
     * @param holding       how many draws hold
     * @param demand        [1]
     * @param shortfallHeat [J]
     * @param deficitDawn   core-heat deficit at the end [J], may be negative
     */
    public record Entry(int holding, Amount demand, Amount shortfallHeat, Amount deficitDawn) {}

    /**
     * A quantity.
     *
     * @param own  of the one itself
     * @param more than that of the first; infinite where a run stopped early, which is worse than any that did not
     */
    public record Amount(Spread own, Spread more) {}

    /** Outlines under all draws, and the one under the usual model; neither where nothing was run. */
    private record Drawn(List<Outline> usual, List<Outline> draws) {}

    /**
     * Runs all of them under the same draws.
     *
     * @param threads how many work at once, 1 and up; the digits do not depend on it
     */
    static ComparedBand of(List<NightResult> results, Draws draws, int threads) {
        List<Drawn> all =
                results.stream().map(result -> drawn(result, draws, threads)).toList();
        Drawn first = all.get(0);
        return new ComparedBand(
                draws.seed(),
                draws.size(),
                all.stream().map(each -> entry(each, first)).toList());
    }

    private static Drawn drawn(NightResult result, Draws draws, int threads) {
        if (result.hours().isEmpty()) {
            return new Drawn(List.of(), List.of());
        }
        double[] ends = {0, result.scenario().plan().duration()};
        return new Drawn(
                List.of(Outline.of(result, ends)), Band.outlines(result, Band.quick(result), draws, threads, ends));
    }

    private static Entry entry(Drawn each, Drawn first) {
        return new Entry(
                (int) each.draws().stream().filter(Outline::holds).count(),
                amount(each, first, Outline::demand),
                amount(each, first, Band::bill),
                amount(each, first, Outline::deficitDawn));
    }

    private static Amount amount(Drawn each, Drawn first, ToDoubleFunction<Outline> quantity) {
        return new Amount(
                spread(values(each.usual(), quantity), values(each.draws(), quantity)),
                spread(more(each.usual(), first.usual(), quantity), more(each.draws(), first.draws(), quantity)));
    }

    private static double[] values(List<Outline> outlines, ToDoubleFunction<Outline> quantity) {
        return outlines.stream().mapToDouble(quantity).toArray();
    }

    private static Spread spread(double[] usual, double[] draws) {
        return usual.length == 0 || draws.length == 0 || Double.isNaN(usual[0])
                ? new Spread(Double.NaN, Double.NaN, Double.NaN, Double.NaN)
                : Spread.of(usual[0], draws);
    }

    private static double[] more(List<Outline> each, List<Outline> first, ToDoubleFunction<Outline> quantity) {
        return IntStream.range(0, Math.min(each.size(), first.size()))
                .mapToDouble(i -> more(each.get(i), first.get(i), quantity))
                .toArray();
    }

    /** By how much one run exceeds another; of two of which one stopped early that is the worse, of two that did the earlier. */
    static double more(Outline one, Outline other, ToDoubleFunction<Outline> quantity) {
        if (Double.isNaN(one.stopped()) && Double.isNaN(other.stopped())) {
            return quantity.applyAsDouble(one) - quantity.applyAsDouble(other);
        }
        double oneStopped = Double.isNaN(one.stopped()) ? Double.POSITIVE_INFINITY : one.stopped();
        double otherStopped = Double.isNaN(other.stopped()) ? Double.POSITIVE_INFINITY : other.stopped();
        return oneStopped == otherStopped
                ? 0
                : oneStopped < otherStopped ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
}
