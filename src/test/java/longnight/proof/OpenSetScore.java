package longnight.proof;

import java.util.List;
import java.util.Set;
import longnight.night.ModelChoice;
import longnight.proof.Check.Pool;
import longnight.proof.Experiment.Variant;
import longnight.scenario.ExperimentReader;

/** What a model makes of all experiments with the set-ups as written. */
final class OpenSetScore {

    /** Errors count fully up to about this many widths, then ever less, so that one odd study does not lead a fit. */
    private static final double FAR = 2;

    /** Every experiment that runs. */
    static final List<Experiment> ALL =
            ExperimentReader.shipped().stream().filter(Experiment::runs).toList();

    private final List<double[]> values;

    private OpenSetScore(List<double[]> values) {
        this.values = values;
    }

    static OpenSetScore of(ModelChoice model) {
        return new OpenSetScore(
                ALL.stream().map(e -> e.evaluate(model, Variant.NOMINAL)).toList());
    }

    /** Value of a quantity of an experiment. */
    double value(int experiment, int quantity) {
        return values.get(experiment)[quantity];
    }

    /** The same for the experiment whose id begins so. */
    double value(String source, int quantity) {
        int e = 0;
        while (!ALL.get(e).id().startsWith(source)) {
            e++;
        }
        return value(e, quantity);
    }

    /** Gates missed. */
    int gatesMissed() {
        int missed = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Check> quantities = ALL.get(e).checks();
            for (int i = 0; i < quantities.size(); i++) {
                Band gate = quantities.get(i).gate();
                missed += gate.exists() && !gate.holds(value(e, i)) ? 1 : 0;
            }
        }
        return missed;
    }

    /** Share of goals met [1], every experiment counting once. */
    double goals() {
        double sum = 0;
        int n = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Check> quantities = ALL.get(e).checks();
            double met = 0;
            int of = 0;
            for (int i = 0; i < quantities.size(); i++) {
                Band goal = quantities.get(i).goal();
                of += goal.exists() ? 1 : 0;
                met += goal.exists() && goal.holds(value(e, i)) ? 1 : 0;
            }
            sum += of > 0 ? met / of : 0;
            n += of > 0 ? 1 : 0;
        }
        return sum / n;
    }

    double bias(Pool... kinds) {
        return pooled(false, Set.of(kinds));
    }

    double rootMeanSquare(Pool... kinds) {
        return Math.sqrt(pooled(true, Set.of(kinds)));
    }

    static long count(Pool... kinds) {
        return ALL.stream()
                .flatMap(e -> e.checks().stream())
                .filter(q -> Set.of(kinds).contains(q.pool()) && !Double.isNaN(q.measured()))
                .count();
    }

    /** Mean error or mean squared error of some kinds; heat relative to the measured value, the rest in K. */
    private double pooled(boolean squared, Set<Pool> kinds) {
        double sum = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Check> quantities = ALL.get(e).checks();
            for (int i = 0; i < quantities.size(); i++) {
                Check q = quantities.get(i);
                if (kinds.contains(q.pool()) && !Double.isNaN(q.measured())) {
                    double error = value(e, i) - q.measured();
                    error = q.pool() == Pool.HEAT ? error / q.measured() : error;
                    sum += squared ? error * error : error;
                }
            }
        }
        return sum / count(kinds.toArray(Pool[]::new));
    }

    /** Mean skin, with the heat held where the source says what was made [K]. */
    double skinHeld() {
        double sum = 0;
        int n = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Check> checks = ALL.get(e).checks();
            boolean held = checks.stream().anyMatch(check -> check.pool() == Pool.SKIN_HELD);
            for (int i = 0; i < checks.size(); i++) {
                if (checks.get(i).pool() == (held ? Pool.SKIN_HELD : Pool.SKIN)) {
                    double error = value(e, i) - checks.get(i).measured();
                    sum += error * error;
                    n++;
                }
            }
        }
        return Math.sqrt(sum / n);
    }

    /** Sum of {@link #misfit} over all experiments but one (-1: over all). */
    static double misfit(ModelChoice model, int but) {
        double sum = 0;
        for (int e = 0; e < ALL.size(); e++) {
            Experiment experiment = ALL.get(e);
            sum += e == but ? 0 : misfit(experiment, experiment.evaluate(model, Variant.NOMINAL));
        }
        return sum;
    }

    double misfit(int experiment) {
        return misfit(ALL.get(experiment), values.get(experiment));
    }

    /** Mean over the banded quantities of an experiment of {@code 2 ln(1 + z2/2)}, about z2 while z is small [1]. */
    private static double misfit(Experiment experiment, double[] values) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            Check q = experiment.checks().get(i);
            if (q.gate().exists() || q.goal().exists()) {
                double z = widths(q, values[i]);
                sum += FAR * Math.log1p(z * z / FAR);
                n++;
            }
        }
        return n == 0 ? 0 : sum / n;
    }

    /**
     * Distance from the measured value (or the middle of the band) in half widths of the goal, or in two thirds of those of
     * the gate. A band with one end counts beyond it only, in tenths of the limit, at least 0.2. No value: three.
     */
    private static double widths(Check q, double value) {
        if (Double.isNaN(value)) {
            return 3;
        }
        Band band = q.goal().exists() ? q.goal() : q.gate();
        if (Double.isNaN(band.low()) || Double.isNaN(band.high())) {
            double limit = Double.isNaN(band.low()) ? band.high() : band.low();
            double outside = band.holds(value) ? 0 : Math.abs(value - limit);
            return outside / Math.max(0.2, 0.1 * Math.abs(limit));
        }
        double middle = Double.isNaN(q.measured()) ? 0.5 * (band.low() + band.high()) : q.measured();
        double half = 0.5 * (band.high() - band.low());
        return (value - middle) / (q.goal().exists() ? half : half / 1.5);
    }
}
