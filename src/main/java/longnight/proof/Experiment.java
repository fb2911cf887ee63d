package longnight.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longnight.night.ModelChoice;

/**
 * A published experiment as data.
 *
 * @param id      short name, unique in its set
 * @param source  authors, year and where its figures were read
 * @param title   what was done, shown to people
 * @param note    what to know about it; empty for nothing
 * @param cannot  why the engine cannot express it, in which case it has no runs and checks; else empty
 * @param assumed what the source does not say and how far it is moved
 * @param cases   what was done to whom, by id
 * @param checks  what was measured and what is held against it
 */
public record Experiment(
        String id,
        String source,
        String title,
        String note,
        String cannot,
        Assumed assumed,
        Map<String, Case> cases,
        List<Check> checks) {

    public Experiment {
        cases = Map.copyOf(new LinkedHashMap<>(cases));
        checks = List.copyOf(checks);
    }

    /**
     * How far the set-up is moved where the source is silent.
     *
     * @param mass  of the person, up and down [kg]
     * @param fat   body fat, up and down [percent of the body's mass]
     * @param winds air speeds beside the one of each case [m/s]
     * @param warm  starts above the set level beside the one at it [K]
     * @param words what is assumed, for people; may be empty
     */
    public record Assumed(double mass, double fat, List<Double> winds, List<Double> warm, String words) {
        public Assumed {
            winds = List.copyOf(winds);
            warm = List.copyOf(warm);
        }
    }

    /**
     * One set of assumptions.
     *
     * @param mass added to the person's [kg]
     * @param fat  added to body fat [percent]
     * @param wind air speed [m/s]; NaN for the one of each case
     * @param warm start above the set level [K]
     */
    public record Variant(double mass, double fat, double wind, double warm) {
        /** As the file says. */
        public static final Variant NOMINAL = new Variant(0, 0, Double.NaN, 0);
    }

    /** Whether the engine can express it. */
    public boolean runs() {
        return cannot.isEmpty();
    }

    /** All combinations of what is assumed, the nominal one first. */
    public List<Variant> variants() {
        List<Double> winds = new ArrayList<>(List.of(Double.NaN));
        winds.addAll(assumed.winds);
        List<Double> warm = new ArrayList<>(List.of(0.0));
        warm.addAll(assumed.warm);
        List<Variant> all = new ArrayList<>();
        for (double m : spread(assumed.mass)) {
            for (double f : spread(assumed.fat)) {
                for (double w : winds) {
                    warm.forEach(k -> all.add(new Variant(m, f, w, k)));
                }
            }
        }
        return List.copyOf(all);
    }

    private static double[] spread(double by) {
        return by > 0 ? new double[] {0, -by, by} : new double[] {0};
    }

    /** What a model makes of every check under a set of assumptions, in their order; NaN where a threshold is never met. */
    public double[] evaluate(ModelChoice choice, Variant variant) {
        Runs runs = new Runs(this, choice, variant);
        return checks.stream().mapToDouble(check -> check.evaluate(runs)).toArray();
    }
}
