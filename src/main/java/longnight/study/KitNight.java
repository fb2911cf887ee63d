package longnight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.night.Verdict;

/**
 * What a kit came to in one night of a record.
 *
 * @param night     the night
 * @param outcome   of the verdict
 * @param demand    [1]; NaN when nothing was run or the night is shorter than the window
 * @param shortfall heat [J]
 * @param deficit   largest core-heat deficit [J]
 * @param stopped   when the core fell below 32 degC [s from dusk]; NaN when it did not
 * @param lost      by way, {@link longnight.night.Way} ordinals, in the whole night [J]
 * @param atRisk    parts of the body
 * @param cautions  that the night calls for
 */
public record KitNight(
        RecordedNight night,
        Verdict.Outcome outcome,
        double demand,
        double shortfall,
        double deficit,
        double stopped,
        double[] lost,
        List<Verdict.Part> atRisk,
        List<Caution> cautions) {

    /** Deficits below this are as good as none [J]; as in the verdict. */
    private static final double COUNTING = 15e3;

    /**
     * Nights that the model stopped come first, the earliest stop before all; then by core-heat deficit where one counts (above 15
     * kJ), then by shortfall heat. Nights outside the model come last: nothing is known of them.
     */
    static final Comparator<KitNight> WORST_FIRST = Comparator.comparing(KitNight::isOutside)
            .thenComparingDouble(night -> Double.isNaN(night.stopped) ? Double.POSITIVE_INFINITY : night.stopped)
            .thenComparingDouble(night -> -Math.max(COUNTING, night.deficit))
            .thenComparingDouble(night -> -night.shortfall);

    static KitNight of(RecordedNight night, NightResult result) {
        return new KitNight(
                night,
                result.verdict().outcome(),
                result.demand(),
                result.shortfallHeat(),
                result.coreHeatDeficitWorst(),
                result.stopped(),
                result.ledger().lostByWay().clone(),
                result.verdict().atRisk().stream().map(Verdict.AtRisk::part).toList(),
                cautions(night, result.cautions()));
    }

    static KitNight outside(RecordedNight night) {
        return new KitNight(
                night,
                Verdict.Outcome.OUTSIDE_THE_MODEL,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                new double[0],
                List.of(),
                List.of(Caution.PLANNING_AID, Caution.OUT_OF_RANGE));
    }

    private static List<Caution> cautions(RecordedNight night, List<Caution> ofRun) {
        List<Caution> all = new ArrayList<>(ofRun);
        if ((night.cloudUnknown() || night.rainUnknown()) && !all.contains(Caution.WEATHER_GUESSED)) {
            all.add(Caution.WEATHER_GUESSED);
        }
        return List.copyOf(all);
    }

    /** Whether the air left the model's range, so that nothing was run. */
    public boolean isOutside() {
        return lost.length == 0;
    }

    /** Whether the kit holds on paper. */
    public boolean holds() {
        return outcome == Verdict.Outcome.HOLDS_EASILY || outcome == Verdict.Outcome.HOLDS_BY_SHIVERING;
    }

    /** All losses of the night [J]. */
    public double lostInAll() {
        return Arrays.stream(lost).sum();
    }
}
