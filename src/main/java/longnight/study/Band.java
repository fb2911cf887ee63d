package longnight.study;

import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Scenario;

/**
 * The nominal night and, beside it, the same night under models drawn from what is plausible. Shares and quantiles are of the
 * model: how far its own constants are known. They are no chances of a person.
 *
 * @param seed          of the draws
 * @param draws         how many
 * @param settings      how the draws were integrated
 * @param holding       how many of them hold
 * @param stopped       how many left the model's range on the way
 * @param demand        [1]
 * @param shortfallHeat [J]
 * @param deficitDawn   [J]
 * @param deficitWorst  [J]
 * @param coreDawn      [degC]
 * @param lowestHand    [degC]
 * @param lowestFoot    [degC]
 * @param waterDawn     [kg]; NaN throughout when water was not followed
 * @param times         moments of the course [s from dusk]: every quarter of an hour of the clock, dusk and dawn
 * @param deficit       core-heat deficit at those moments [J]
 */
public record Band(
        long seed,
        int draws,
        NumericalSettings settings,
        int holding,
        int stopped,
        Spread demand,
        Spread shortfallHeat,
        Spread deficitDawn,
        Spread deficitWorst,
        Spread coreDawn,
        Spread lowestHand,
        Spread lowestFoot,
        Spread waterDawn,
        double[] times,
        List<Spread> deficit) {

    private static final double QUARTER = 900;

    /** In nearly warm air what the skin is off by says little about losses: engineering estimate, no source [K]. */
    static final double LEAST_WARMTH = 5;

    /**
     * Runs the draws and sums them up.
     *
     * @param nominal  the nominal answer, for which something was run
     * @param settings for the draws
     * @param threads  how many run at once, 1 and up; the digits do not depend on it
     */
    public static Band of(NightResult nominal, NumericalSettings settings, Draws draws, int threads) {
        double[] times = times(nominal.scenario().plan());
        List<Outline> outlines = outlines(nominal, settings, draws, threads, times);
        return of(Outline.of(nominal, times), outlines, settings, draws.seed());
    }

    /** Runs the draws in coarse steps, with water where the answer has it. */
    public static Band of(NightResult nominal, Draws draws, int threads) {
        return of(nominal, quick(nominal), draws, threads);
    }

    /** Coarse steps, with water where the answer has it. */
    static NumericalSettings quick(NightResult nominal) {
        NumericalSettings coarse = NumericalSettings.coarse();
        return nominal.water() == null ? coarse.withoutWater() : coarse;
    }

    /**
     * The draws' outlines, in their order, for those who compare: each is the nominal answer and what separates it from the
     * nominal model at the draws' settings; its losses are off as its skin is.
     *
     * @param times of the course, as of {@link #times}
     */
    public static List<Outline> outlines(
            NightResult nominal, NumericalSettings settings, Draws draws, int threads, double[] times) {
        Scenario scenario = nominal.scenario();
        Mended mended = Mended.of(nominal, scenario, settings, times);
        List<Outline> run =
                draws.ask(model -> NightEngine.compile(scenario, model).outline(settings, times), threads);
        return IntStream.range(0, run.size())
                .mapToObj(i -> mended.of(run.get(i), draws.skinMisfit(i)))
                .toList();
    }

    /**
     * What makes up for long steps and adds the misfit of the skin.
     *
     * @param coarse the nominal model in long steps
     * @param fine   the nominal model in the steps of the answer
     * @param warmth how much warmer the skin is than the air [K]
     */
    record Mended(Outline coarse, Outline fine, double warmth) {

        /** @param same the nominal answer's scenario, perhaps with more corners in its weather */
        static Mended of(NightResult nominal, Scenario same, NumericalSettings settings, double[] times) {
            return new Mended(
                    NightEngine.compile(same, ModelChoice.nominal()).outline(settings, times),
                    Outline.of(nominal, times),
                    Band.warmth(nominal));
        }

        /** @param misfit how much warmer the skin is taken to be than the run says [K] */
        Outline of(Outline run, double misfit) {
            return run.moved(coarse, fine).losing(misfit / warmth);
        }
    }

    /** How much warmer the skin is than the air, mean of the rows, at least {@link #LEAST_WARMTH} [K]. */
    static double warmth(NightResult nominal) {
        return Math.max(
                LEAST_WARMTH,
                nominal.hours().stream()
                        .mapToDouble(row -> row.meanSkin() - row.airCelsius())
                        .average()
                        .orElseThrow());
    }

    /** The moments at which a plan's course is taken [s from dusk]: dusk, every quarter of an hour of the clock, dawn. */
    public static double[] times(NightPlan plan) {
        TreeSet<Double> times = new TreeSet<>();
        times.add(0.0);
        for (double t = QUARTER - plan.startOfDay() % QUARTER; t < plan.duration(); t += QUARTER) {
            times.add(t);
        }
        times.add(plan.duration());
        return times.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Band of(Outline nominal, List<Outline> outlines, NumericalSettings settings, long seed) {
        return new Band(
                seed,
                outlines.size(),
                settings,
                count(outlines, Outline::holds),
                count(outlines, outline -> !Double.isNaN(outline.stopped())),
                spread(nominal, outlines, Outline::demand),
                spread(nominal, outlines, Band::bill),
                spread(nominal, outlines, Outline::deficitDawn),
                spread(nominal, outlines, Outline::deficitWorst),
                spread(nominal, outlines, Outline::coreDawn),
                spread(nominal, outlines, Outline::lowestHand),
                spread(nominal, outlines, Outline::lowestFoot),
                spread(nominal, outlines, Outline::waterDawn),
                nominal.times(),
                IntStream.range(0, nominal.times().length)
                        .mapToObj(i -> spread(nominal, outlines, outline -> outline.deficit()[i]))
                        .toList());
    }

    private static int count(List<Outline> outlines, Predicate<Outline> kind) {
        return (int) outlines.stream().filter(kind).count();
    }

    /** A run that stopped has a bill beyond telling. */
    static double bill(Outline outline) {
        return Double.isNaN(outline.stopped()) ? outline.shortfallHeat() : Double.POSITIVE_INFINITY;
    }

    private static Spread spread(Outline nominal, List<Outline> outlines, ToDoubleFunction<Outline> quantity) {
        return Spread.of(
                quantity.applyAsDouble(nominal),
                outlines.stream().mapToDouble(quantity).toArray());
    }

    /** The spread of the deficit at one of the moments; of a time between them nothing but NaN is known. */
    public Spread deficitAt(double time) {
        for (int i = 0; i < times.length; i++) {
            if (Math.abs(times[i] - time) < 1e-3) {
                return deficit.get(i);
            }
        }
        return new Spread(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
}
