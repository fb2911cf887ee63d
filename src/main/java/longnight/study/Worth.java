package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import longnight.clothing.Garment;
import longnight.clothing.Pad;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * What each change is worth in one night, and which assumption moves that night most.
 *
 * @param asPlanned   the night as planned
 * @param line        by which colder nights are told
 * @param shift       from the night given to the coldest that the kit carries [K]; infinite where the model's range ends first
 * @param effects     one change at a time, the largest first
 * @param pairs       the largest changes two at a time
 * @param assumptions what moves the night, the most first
 * @param draws       of the model, for the bands of the first {@link #DRAWN} effects; null when none were asked for
 * @param cautions    that apply to the night as planned or as changed, the general one first
 * @param nights      how many nights were run
 */
public record Worth(
        NightResult asPlanned,
        Line line,
        double shift,
        List<Effect> effects,
        List<Pair> pairs,
        List<Assumption> assumptions,
        @Nullable Draws draws,
        List<Caution> cautions,
        int nights) {
    /** Below this the order of effects means nothing [J]. */
    public static final double FLOOR = 15e3;

    /** Draws of the model when nothing else is said. */
    public static final int DRAWS = 50;

    /** So many of the largest changes are run under the draws. */
    public static final int DRAWN = 24;

    /** So many of the largest changes are tried two at a time. */
    private static final int PAIRED = 6;

    private static final ModelChoice NOMINAL = ModelChoice.nominal();

    /** An effect and the night it was read from. */
    private record Tried(Effect effect, NightResult result) {}

    /** What one change gave. */
    record Run(NightResult result, double shift) {}

    /**
     * Works it all out.
     *
     * @param night    the question, within the model's range, in clothes made of pieces
     * @param pieces   of the wardrobe
     * @param pads     of the wardrobe
     * @param line     by which colder nights are told
     * @param settings for every night but those of the search and the assumptions, which take longer steps
     * @param draws    of the model, for the bands of the largest effects; null for none
     * @param threads  how many work at once, 1 and up; the answer does not depend on it
     */
    public static Worth of(
            Scenario night,
            List<Garment> pieces,
            List<Pad> pads,
            Line line,
            NumericalSettings settings,
            @Nullable Draws draws,
            int threads) {
        List<Change> changes = Changes.of(night, pieces, pads);
        ColdSearch search = new ColdSearch(night, line, settings);
        NightResult base = run(night, settings);
        Limit limit = search.limit(NOMINAL);
        double about = limit.reach() == Limit.Reach.FOUND ? limit.shift() : 0;
        double shift = search.near(NOMINAL, about);
        List<Run> runs = Together.ask(
                changes,
                change -> {
                    Scenario other = change.make().apply(night);
                    return new Run(run(other, settings), new ColdSearch(other, line, settings).near(NOMINAL, about));
                },
                threads);
        List<Tried> tried = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            tried.add(new Tried(
                    effect(changes.get(i), base, runs.get(i), shift),
                    runs.get(i).result()));
        }
        tried.sort(
                Comparator.comparingDouble((Tried each) -> size(each.effect())).reversed());
        List<Effect> effects =
                draws == null ? tried.stream().map(Tried::effect).toList() : drawn(base, tried, draws, threads);
        List<Pair> pairs = pairs(night, base, effects, settings, threads);
        List<Assumption> assumptions = Assumptions.of(night, NumericalSettings.coarse(), threads);
        Set<Caution> cautions = new LinkedHashSet<>(base.cautions());
        runs.forEach(run -> cautions.addAll(run.result().cautions()));
        return new Worth(
                base,
                line,
                shift,
                effects,
                pairs,
                assumptions,
                draws,
                List.copyOf(cautions),
                drawnNights(tried.size(), draws)
                        + 1
                        + limit.nights()
                        + changes.size()
                        + pairs.size()
                        + Assumptions.nights(assumptions));
    }

    private static NightResult run(Scenario night, NumericalSettings settings) {
        return NightEngine.compile(night, NOMINAL).run(settings);
    }

    static Effect effect(Change change, NightResult base, Run run, double shift) {
        NightResult other = run.result();
        boolean comparable = Double.isNaN(base.stopped()) && Double.isNaN(other.stopped());
        double none = comparable ? 0 : Double.NaN;
        return new Effect(
                change,
                none + extraHeat(base) - extraHeat(other),
                none + base.shortfallHeat() - other.shortfallHeat(),
                none + base.coreHeatDeficitDawn() - other.coreHeatDeficitDawn(),
                shift - run.shift(),
                other.demand(),
                other.verdict().outcome(),
                !Double.isNaN(other.stopped()),
                null);
    }

    /** The effects in their order, the first of them with what the same draws say with and without the change. */
    private static List<Effect> drawn(NightResult base, List<Tried> tried, Draws draws, int threads) {
        double[] ends = {0, base.scenario().plan().duration()};
        List<Outline> planned = Band.outlines(base, Band.quick(base), draws, threads, ends);
        List<Effect> effects = new ArrayList<>();
        for (Tried each : tried) {
            if (effects.size() < DRAWN) {
                NightResult other = each.result();
                List<Outline> changed = Band.outlines(other, Band.quick(other), draws, threads, ends);
                double[] saved = IntStream.range(0, draws.size())
                        .mapToDouble(i -> ComparedBand.more(planned.get(i), changed.get(i), Outline::shortfallHeat))
                        .toArray();
                effects.add(each.effect().with(Spread.of(each.effect().shortfall(), saved)));
            } else {
                effects.add(each.effect());
            }
        }
        return List.copyOf(effects);
    }

    /** The draws of the night as planned and of each change drawn, and the usual model in their steps. */
    private static int drawnNights(int changes, @Nullable Draws draws) {
        return draws == null ? 0 : (1 + Math.min(DRAWN, changes)) * (1 + draws.size());
    }

    /** Mean heat made above rest [W]. */
    private static double extraHeat(NightResult night) {
        double[] paid = night.trace().paidByHeatMade();
        return paid[paid.length - 1] / night.trace().time()[paid.length - 1];
    }

    /** What stops the run is larger than anything. */
    private static double size(Effect effect) {
        return Double.isNaN(effect.shortfall()) ? Double.POSITIVE_INFINITY : Math.abs(effect.shortfall());
    }

    private static List<Pair> pairs(
            Scenario night, NightResult base, List<Effect> effects, NumericalSettings settings, int threads) {
        List<Effect> largest = new ArrayList<>();
        for (Effect effect : effects) {
            boolean free = largest.stream().allMatch(each -> each.change().goesWith(effect.change()));
            if (largest.size() < PAIRED && free && !Double.isNaN(effect.shortfall())) {
                largest.add(effect);
            }
        }
        record Two(Effect one, Effect other) {}
        List<Two> twos = new ArrayList<>();
        for (int i = 0; i < largest.size(); i++) {
            for (int k = i + 1; k < largest.size(); k++) {
                twos.add(new Two(largest.get(i), largest.get(k)));
            }
        }
        return Together.ask(
                twos,
                two -> {
                    Scenario both = two.other()
                            .change()
                            .make()
                            .apply(two.one().change().make().apply(night));
                    NightResult result = run(both, settings);
                    double joint =
                            Double.isNaN(result.stopped()) ? base.shortfallHeat() - result.shortfallHeat() : Double.NaN;
                    return new Pair(
                            two.one(),
                            two.other(),
                            joint,
                            two.one().shortfall() + two.other().shortfall());
                },
                threads);
    }
}
