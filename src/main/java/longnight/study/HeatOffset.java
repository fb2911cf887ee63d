package longnight.study;

import java.util.List;
import java.util.stream.IntStream;
import longnight.night.NightLog;
import longnight.night.NightResult;
import longnight.night.Trace;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * The heat production that fits a log best, and the range that it cannot tell from that.
 *
 * <p>Each sensor's half hours lie about the model plus a constant of its own, all normal; the constant is integrated out. A
 * half hour's spread is what is left over at the best fit, but at least the sensor's wander. A note is more or less likely by how much
 * extra heat the model makes at that time (a logistic curve; of notes with one word, one in a half hour counts). The range is where twice the
 * log-likelihood lies within 3.84 of its best (Wilks 1938, the 95 % point of chi-squared with one degree of freedom).
 *
 * @param best   heat production against the usual [1]
 * @param low    lower end of the range [1]
 * @param high   upper end
 * @param told   how well the log tells it
 * @param halfHours of sensors that went in
 * @param notes  that went in
 * @param tried  heat productions tried
 * @param misfit minus twice the log-likelihood at each, its least set to zero
 */
public record HeatOffset(
        double best, double low, double high, Told told, int halfHours, int notes, double[] tried, double[] misfit) {

    /** How well a log tells the offset. */
    public enum Told {
        /** Both ends of the range lie inside what is tried. */
        DETERMINED,
        /** Only that it is not higher. */
        AT_MOST,
        /** Only that it is not lower. */
        AT_LEAST,
        /** The log cannot tell. */
        NOT_DETERMINED,
        /** The log fits best at an end of what is tried: something else than the person is off. */
        AT_BOUND
    }

    private static final double CHI_SQUARED = 3.841;
    private static final double FINE = 0.0005;

    /** Extra heat at which a note is as likely as not, and how soon that turns [W]; share of notes that mean nothing. Engineering estimates. */
    private static final double SHIVERING_AT = 30;

    private static final double COLD_AT = 10;
    private static final double TURN = 15;
    private static final double LAPSE = 0.05;

    /**
     * Whether the offset may be used in other nights: it is determined, or known to be no higher than the usual. One that is only
     * known to be no lower is not used: to believe in more heat than there is would be the dangerous mistake.
     */
    public boolean isUsable() {
        return told == Told.DETERMINED || told == Told.AT_MOST && high <= 1;
    }

    /**
     * Fits runs over the range, least heat production first.
     *
     * @param runs evenly spaced from {@link Replay#LOW} to {@link Replay#HIGH}
     */
    static HeatOffset fit(NightLog log, List<NightResult> runs) {
        int n = runs.size();
        double[] tried = IntStream.range(0, n)
                .mapToDouble(i -> Replay.LOW + i * (Replay.HIGH - Replay.LOW) / (n - 1))
                .toArray();
        double[] misfit = new double[n];
        int halfHours = 0;
        double duration = runs.get(0).scenario().plan().duration();
        boolean ran = runs.stream().allMatch(run -> run.trace().time().length > 1);
        List<NightLog.Note> notes = ran ? counted(log, duration) : List.of();
        if (ran) {
            for (Sensor sensor : Sensor.values()) {
                HalfHours blocks = HalfHours.of(log.time(), sensor.of(log), duration);
                halfHours += blocks.size();
                addSensor(blocks, sensor, runs, misfit);
            }
            for (int i = 0; i < n; i++) {
                for (NightLog.Note note : notes) {
                    misfit[i] -= 2 * StrictMath.log(likely(note, runs.get(i).trace()));
                }
            }
        }
        return ranged(tried, misfit, halfHours, notes.size());
    }

    private static void addSensor(HalfHours blocks, Sensor sensor, List<NightResult> runs, double[] misfit) {
        int m = blocks.size();
        if (m == 0) {
            return;
        }
        double[] mean = new double[runs.size()];
        double[] scatter = new double[runs.size()];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < runs.size(); i++) {
            double[] model = blocks.of(runs.get(i), sensor);
            for (int k = 0; k < m; k++) {
                mean[i] += (blocks.mean()[k] - model[k]) / m;
            }
            for (int k = 0; k < m; k++) {
                double off = blocks.mean()[k] - model[k] - mean[i];
                scatter[i] += off * off;
            }
            least = Math.min(least, scatter[i]);
        }
        double variance = Math.max(sensor.wander() * sensor.wander(), least / Math.max(1, m - 2));
        for (int i = 0; i < runs.size(); i++) {
            misfit[i] +=
                    scatter[i] / variance + mean[i] * mean[i] / (sensor.constant() * sensor.constant() + variance / m);
        }
    }

    /** Of each word the first note in each half hour. */
    private static List<NightLog.Note> counted(NightLog log, double duration) {
        return log.notes().stream()
                .filter(note -> note.time() >= 0 && note.time() <= duration)
                .filter(note -> log.notes().stream()
                        .noneMatch(other -> other.feeling() == note.feeling()
                                && other.time() >= 0
                                && other.time() < note.time()
                                && Math.floor(other.time() / HalfHours.LENGTH)
                                        == Math.floor(note.time() / HalfHours.LENGTH)))
                .toList();
    }

    private static double likely(NightLog.Note note, Trace trace) {
        double extra = extraHeat(trace, note.time());
        double share = switch (note.feeling()) {
            case SHIVERING -> rising(extra - SHIVERING_AT);
            case COLD -> rising(extra - COLD_AT);
            case WARM -> rising(COLD_AT - extra);
            case ASLEEP -> rising(SHIVERING_AT - extra);
        };
        return LAPSE + (1 - 2 * LAPSE) * share;
    }

    private static double rising(double watts) {
        return 1 / (1 + StrictMath.exp(-watts / TURN));
    }

    /** Heat made above rest [W], over the half hour around a time. */
    private static double extraHeat(Trace trace, double time) {
        double end = trace.time()[trace.time().length - 1];
        double from = Math.max(0, Math.min(end, time + HalfHours.LENGTH / 2) - HalfHours.LENGTH);
        double to = Math.min(end, from + HalfHours.LENGTH);
        return (LoggedWeather.at(trace.time(), trace.paidByHeatMade(), to)
                        - LoggedWeather.at(trace.time(), trace.paidByHeatMade(), from))
                / Math.max(1, to - from);
    }

    private static HeatOffset ranged(double[] tried, double[] misfit, int halfHours, int notes) {
        PolynomialSplineFunction curve = new SplineInterpolator().interpolate(tried, misfit);
        int steps = (int) Math.round((Replay.HIGH - Replay.LOW) / FINE);
        double[] at = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> Math.min(Replay.HIGH, Replay.LOW + i * FINE))
                .toArray();
        double[] fine = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> curve.value(at[i]))
                .toArray();
        int best = IntStream.rangeClosed(0, steps)
                .reduce((a, b) -> fine[b] < fine[a] ? b : a)
                .orElseThrow();
        int low = IntStream.rangeClosed(0, steps)
                .filter(i -> fine[i] <= fine[best] + CHI_SQUARED)
                .findFirst()
                .orElseThrow();
        int high = IntStream.rangeClosed(0, steps)
                .filter(i -> fine[i] <= fine[best] + CHI_SQUARED)
                .max()
                .orElseThrow();
        double least = fine[best];
        return new HeatOffset(
                at[best],
                at[low],
                at[high],
                told(low == 0, high == steps, best == 0 || best == steps),
                halfHours,
                notes,
                tried,
                IntStream.range(0, misfit.length)
                        .mapToDouble(i -> misfit[i] - least)
                        .toArray());
    }

    private static Told told(boolean openBelow, boolean openAbove, boolean atBound) {
        if (openBelow && openAbove) {
            return Told.NOT_DETERMINED;
        }
        if (atBound) {
            return Told.AT_BOUND;
        }
        return openBelow ? Told.AT_MOST : openAbove ? Told.AT_LEAST : Told.DETERMINED;
    }
}
