package longnight.study;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import longnight.night.Outline;
import longnight.night.Verdict;

/**
 * A night under many draws. Shares are of these draws of the model; none is a chance of a person.
 *
 * @param over          what was drawn
 * @param draws         how many
 * @param settled       whether the rule was met, see {@link SpreadAnswer}
 * @param moved         by how much an end of the band of shortfall heat moved at most in the last two doublings of the draws, as a
 *     share of that end [1]; infinite when one left the model's range or came back
 * @param shortfallHeat [J]; ends of all four are infinite where so many draws left the model's range
 * @param demand        [1]
 * @param deficitDawn   [J]
 * @param coreDawn      [degC]
 * @param crossing      how many draws cross each line
 */
public record Cloud(
        Set<Doubt> over,
        int draws,
        boolean settled,
        double moved,
        Spread shortfallHeat,
        Spread demand,
        Spread deficitDawn,
        Spread coreDawn,
        Map<Crossed, Integer> crossing) {

    /** A line that a draw may cross. */
    public enum Crossed {
        /** Any of the verdict's lines, or the run stopped: it does not hold. */
        ANY(outline -> !outline.holds()),
        /** Also in a run that stopped before a demand could be told. */
        DEMAND(outline ->
                outline.crosses(Verdict.Line.DEMAND) || Double.isNaN(outline.demand()) && Cloud.stopped(outline)),
        CORE_HEAT_DEFICIT(outline -> outline.crosses(Verdict.Line.CORE_HEAT_DEFICIT)),
        CORE_35(outline -> outline.crosses(Verdict.Line.CORE_35)),
        /** The core reached 32 degC, where the model ends. */
        STOPPED(Cloud::stopped),
        HANDS(outline -> isAtRisk(outline, Verdict.Part.HANDS)),
        FEET(outline -> isAtRisk(outline, Verdict.Part.FEET)),
        FACE(outline -> isAtRisk(outline, Verdict.Part.FACE));

        private final Predicate<Outline> by;

        Crossed(Predicate<Outline> by) {
            this.by = by;
        }

        boolean isCrossed(Outline outline) {
            return by.test(outline);
        }

        private static boolean isAtRisk(Outline outline, Verdict.Part part) {
            return outline.verdict().atRisk().stream().anyMatch(risk -> risk.part() == part);
        }
    }

    /** Sums draws up. */
    static Cloud of(Set<Doubt> over, Draw nominal, List<Draw> draws, boolean settled, double moved) {
        Map<Crossed, Integer> crossing = new EnumMap<>(Crossed.class);
        for (Crossed line : Crossed.values()) {
            crossing.put(line, (int) draws.stream()
                    .filter(draw -> draw.crossing().contains(line))
                    .count());
        }
        return new Cloud(
                over,
                draws.size(),
                settled,
                moved,
                spread(nominal, draws, Draw::shortfallHeat, Double.POSITIVE_INFINITY),
                spread(nominal, draws, Draw::demand, Double.POSITIVE_INFINITY),
                spread(nominal, draws, Draw::deficitDawn, Double.POSITIVE_INFINITY),
                spread(nominal, draws, Draw::coreDawn, Double.NEGATIVE_INFINITY),
                Map.copyOf(crossing));
    }

    /** What a run that stopped would have come to by dawn is beyond telling, and no draw may look better for it. */
    private static Spread spread(Draw nominal, List<Draw> draws, ToDoubleFunction<Draw> quantity, double beyond) {
        return Spread.of(
                nominal.hasStopped() ? beyond : quantity.applyAsDouble(nominal),
                draws.stream()
                        .mapToDouble(draw -> draw.hasStopped() ? beyond : quantity.applyAsDouble(draw))
                        .toArray());
    }

    private static boolean stopped(Outline outline) {
        return !Double.isNaN(outline.stopped());
    }

    /** Draws that cross a line, as a share of all. */
    public double share(Crossed line) {
        return crossing.getOrDefault(line, 0) / (double) draws;
    }
}
