package longnight.night;

import java.util.List;
import java.util.Set;
import longnight.night.ColdAirExperiments.Band;
import longnight.night.ColdAirExperiments.Experiment;
import longnight.night.ColdAirExperiments.Kind;
import longnight.night.ColdAirExperiments.Quantity;
import longnight.night.ColdAirExperiments.Variant;

/** What a model makes of all experiments with the assumed builds and air: some 120 runs in a fifth of a second. */
final class ColdAirScore {

    /** Errors count fully up to about this many widths, then ever less, so that one odd study does not lead a fit. */
    private static final double FAR = 2;

    private final List<double[]> values;

    private ColdAirScore(List<double[]> values) {
        this.values = values;
    }

    static ColdAirScore of(ModelChoice model) {
        Variant variant = Variant.of(model);
        return new ColdAirScore(
                ColdAirExperiments.ALL.stream().map(e -> e.run().apply(variant)).toList());
    }

    /** Value of a quantity of an experiment. */
    double value(int experiment, int quantity) {
        return values.get(experiment)[quantity];
    }

    /** The same for the experiment whose source begins so. */
    double value(String source, int quantity) {
        int e = 0;
        while (!ColdAirExperiments.ALL.get(e).source().startsWith(source)) {
            e++;
        }
        return value(e, quantity);
    }

    /** Gates missed. */
    int gatesMissed() {
        int missed = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Quantity> quantities = ColdAirExperiments.ALL.get(e).quantities();
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
            List<Quantity> quantities = ColdAirExperiments.ALL.get(e).quantities();
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

    double bias(Kind... kinds) {
        return pooled(false, Set.of(kinds));
    }

    double rootMeanSquare(Kind... kinds) {
        return Math.sqrt(pooled(true, Set.of(kinds)));
    }

    static long count(Kind... kinds) {
        return ColdAirExperiments.ALL.stream()
                .flatMap(e -> e.quantities().stream())
                .filter(q -> Set.of(kinds).contains(q.kind()))
                .count();
    }

    /** Mean error or mean squared error of some kinds; heat relative to the measured value, the rest in K. */
    private double pooled(boolean squared, Set<Kind> kinds) {
        double sum = 0;
        for (int e = 0; e < values.size(); e++) {
            List<Quantity> quantities = ColdAirExperiments.ALL.get(e).quantities();
            for (int i = 0; i < quantities.size(); i++) {
                Quantity q = quantities.get(i);
                if (kinds.contains(q.kind())) {
                    double error = value(e, i) - q.measured();
                    error = q.kind() == Kind.HEAT ? error / q.measured() : error;
                    sum += squared ? error * error : error;
                }
            }
        }
        return sum / count(kinds.toArray(Kind[]::new));
    }

    /** Sum of {@link #misfit} over all experiments but one (-1: over all). */
    static double misfit(ModelChoice model, int but) {
        Variant variant = Variant.of(model);
        double sum = 0;
        for (int e = 0; e < ColdAirExperiments.ALL.size(); e++) {
            Experiment experiment = ColdAirExperiments.ALL.get(e);
            sum += e == but ? 0 : misfit(experiment, experiment.run().apply(variant));
        }
        return sum;
    }

    double misfit(int experiment) {
        return misfit(ColdAirExperiments.ALL.get(experiment), values.get(experiment));
    }

    /** Mean over the banded quantities of an experiment of {@code 2 ln(1 + z2/2)}, about z2 while z is small [1]. */
    private static double misfit(Experiment experiment, double[] values) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            Quantity q = experiment.quantities().get(i);
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
    private static double widths(Quantity q, double value) {
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
