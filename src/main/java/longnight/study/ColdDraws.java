package longnight.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import org.hipparchus.analysis.UnivariateFunction;

/**
 * How cold a night a kit carries under models drawn from what is plausible. Each draw's crossing is sought from the usual
 * model's: along the usual slope first, then along the draw's own. Nights take long steps, and a draw counts as what separates
 * it from the usual model under the same steps. Its losses are off as its skin is, as in {@link Band}.
 *
 * <p>The crossing is the one nearest to the usual model's. Where a colder night is carried again, a draw may be told by another
 * crossing than by the first from the warm side.
 */
final class ColdDraws {
    /** A step along a draw's own slope that is shorter than this is taken and not looked at again [K]. */
    private static final double SHORT = 0.2;

    /** Nights along a draw's slope before a bracket is sought. */
    private static final int STEPS = 6;

    /** The usual night's slope and warmth are taken over this [K]. */
    private static final double APART = 4;

    private final ColdSearch search;
    private final Limit limit;
    private final Scenario night;
    private final double from;
    private final double slope;
    private final double warmth;
    private final double warmthSlope;
    private final double bodyArea;
    private final double[] ends;

    /**
     * Where the models have their crossings.
     *
     * @param shifts in the order of the draws: how much warmer than the night given [K]; minus infinity where the line is kept in
     *     the coldest air that the model knows, plus infinity where it is passed in the warmest
     * @param nights how many nights were run to find them
     */
    record Roots(double[] shifts, int nights) {}

    private record Root(double shift, int nights) {}

    /**
     * @param search of the usual model
     * @param limit  what it found
     */
    ColdDraws(ColdSearch search, Limit limit) {
        this.search = search;
        this.limit = limit;
        night = search.at(0);
        from = switch (limit.reach()) {
            case FOUND -> limit.shift();
            case COLDER_THAN_MODEL -> search.coldest();
            case NOT_EVEN_WARM -> search.warmest();
        };
        double other = from - APART < search.coldest() ? from + APART : from - APART;
        NightResult here = usual(from);
        NightResult there = usual(other);
        slope = (search.line().excess(here) - search.line().excess(there)) / (from - other);
        warmth = Band.warmth(here);
        warmthSlope = (warmth - Band.warmth(there)) / (from - other);
        bodyArea = here.bodyArea();
        ends = new double[] {0, night.plan().duration()};
    }

    private NightResult usual(double shift) {
        return NightEngine.compile(search.at(shift), ModelChoice.nominal()).run(search.coarse());
    }

    /**
     * The crossing of every draw.
     *
     * @param threads how many work at once, 1 and up; the answer does not depend on it
     */
    Roots roots(Draws draws, int threads) {
        Root usual = root(ModelChoice.nominal(), 0);
        double moved = limit.reach() == Limit.Reach.FOUND && Double.isFinite(usual.shift())
                ? limit.shift() - usual.shift()
                : 0;
        List<Root> roots = Together.ask(
                IntStream.range(0, draws.size()).boxed().toList(),
                i -> root(draws.models().get(i), draws.skinMisfit(i)),
                threads);
        return new Roots(
                roots.stream().mapToDouble(root -> root.shift() + moved).toArray(),
                2 + usual.nights() + roots.stream().mapToInt(Root::nights).sum());
    }

    private Root root(ModelChoice model, double skinMisfit) {
        Drawn drawn = new Drawn(model, skinMisfit);
        double shift = followed(drawn);
        if (Double.isNaN(shift)) {
            shift = search.bracketed(drawn, from);
        }
        if (Double.isNaN(shift)) {
            shift = drawn.value(from) > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return new Root(shift, drawn.known.size());
    }

    /** NaN where the slope leads nowhere. */
    private double followed(Drawn drawn) {
        double at = from;
        double excess = drawn.value(at);
        double along = slope;
        for (int i = 0; i < STEPS && along < 0; i++) {
            double next = at - excess / along;
            if (!(next > search.coldest() && next < search.warmest())) {
                return Double.NaN;
            }
            if (i > 0 && Math.abs(next - at) < SHORT) {
                return next;
            }
            double there = drawn.value(next);
            if (there == 0) {
                return next;
            }
            along = (there - excess) / (next - at);
            at = next;
            excess = there;
        }
        return Double.NaN;
    }

    /** Over the line by so much, as a function of the shift; what was run once is not run again. */
    private final class Drawn implements UnivariateFunction {
        private final NightEngine engine;
        private final double skinMisfit;
        private final Map<Double, Double> known = new HashMap<>();

        Drawn(ModelChoice model, double skinMisfit) {
            engine = NightEngine.compile(night, model);
            this.skinMisfit = skinMisfit;
        }

        @Override
        public double value(double kelvin) {
            return known.computeIfAbsent(kelvin, this::run);
        }

        private double run(double kelvin) {
            double skinOverAir = Math.max(Band.LEAST_WARMTH, warmth + warmthSlope * (kelvin - from));
            NumericalSettings settings = search.coarse();
            return search.line()
                    .excess(
                            engine.in(search.at(kelvin).surroundings())
                                    .outline(settings, ends)
                                    .losing(skinMisfit / skinOverAir),
                            bodyArea);
        }
    }
}
