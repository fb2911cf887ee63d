package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/**
 * What came out of a lesson's nights.
 *
 * @param lesson which
 * @param order  how it came out
 * @param all    the nights by shortfall heat, the cheapest first; one whose run stopped early comes last
 */
public record Taught(Lesson lesson, Order order, Comparison.Answer all) {
    /** How the nights came out beside what the lesson was made to show. */
    public enum Order {
        AS_EXPECTED,
        /** Two neighbours differ by less than {@link Worth#FLOOR}: the order means nothing. */
        TOO_CLOSE,
        TURNED
    }

    /** A night and where it stands in the expected order. */
    private record Placed(int expected, Comparison.One one) {}

    /**
     * Runs them.
     *
     * @param nights  in the order of {@link Lesson#nights()}
     * @param threads how many work at once, 1 and up; the answer does not depend on it
     */
    public static Taught of(Lesson lesson, List<Scenario> nights, int threads) {
        List<NightResult> results = Together.ask(
                nights,
                night -> NightEngine.compile(night, ModelChoice.nominal()).run(NumericalSettings.standard()),
                threads);
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            NightResult result = results.get(i);
            placed.add(new Placed(i, new Comparison.One(result.scenario().title(), result, null)));
        }
        placed.sort(Comparator.comparingDouble(each -> bill(each.one())));
        List<Comparison.One> all = placed.stream().map(Placed::one).toList();
        return new Taught(lesson, order(placed), new Comparison.Answer(Comparison.Varied.NIGHTS, all));
    }

    private static Order order(List<Placed> placed) {
        Order order = Order.AS_EXPECTED;
        for (int i = 1; i < placed.size(); i++) {
            if (bill(placed.get(i).one()) - bill(placed.get(i - 1).one()) < Worth.FLOOR) {
                return Order.TOO_CLOSE;
            }
            if (placed.get(i).expected() < placed.get(i - 1).expected()) {
                order = Order.TURNED;
            }
        }
        return order;
    }

    /** Shortfall heat at dawn [J]; a run that stopped has no whole bill. */
    private static double bill(Comparison.One one) {
        NightResult result = one.result();
        return Double.isNaN(result.stopped()) ? result.shortfallHeat() : Double.POSITIVE_INFINITY;
    }
}
