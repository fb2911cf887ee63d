package longnight.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One figure of an experiment and what is held against it. Its value is made of one reading: taken together over some runs,
 * then less, or over, the same of other runs.
 *
 * @param name     shown to people, without unit
 * @param reading  what is read off each run
 * @param how      how readings of several runs become one figure
 * @param of       runs
 * @param less     runs whose figure is taken off; empty for none
 * @param over     runs by whose figure is divided; empty for none
 * @param overHow  how theirs become one figure
 * @param minute   when [min after the lead-in]; {@link #END} for the end of each run
 * @param since    start of a mean, for readings of minutes; or the minute that changes count from [min]
 * @param mean     true for the mean from {@code since} to {@code minute}
 * @param against  the other reading of a slope or crossing; null for none
 * @param level    that the reading passes; NaN for none
 * @param measured what the source says; NaN when it gives no number
 * @param spread   standard deviation or half range of it; NaN when unknown
 * @param gate     outside: wrong physics
 * @param goal     outside: counts against the score
 * @param pool     which pooled error it enters
 * @param basis    why these bands, and how the figure was obtained
 * @param second   what a second, independent calculation of the same equations gave; NaN for nothing
 * @param secondRange its range over the same kind of variants
 * @param missed   why a band is missed, as far as we know; empty for nothing
 */
public record Check(
        String name,
        Reading reading,
        How how,
        List<String> of,
        List<String> less,
        List<String> over,
        How overHow,
        int minute,
        int since,
        boolean mean,
        @Nullable Reading against,
        double level,
        double measured,
        double spread,
        Band gate,
        Band goal,
        Pool pool,
        String basis,
        double second,
        Band secondRange,
        String missed) {

    /** The end of a run. */
    public static final int END = -1;

    public Check {
        of = List.copyOf(of);
        less = List.copyOf(less);
        over = List.copyOf(over);
    }

    /** The same with what it is held against. */
    public Check against(double measuredValue, double measuredSpread, Band gateBand, Band goalBand) {
        return new Check(
                name,
                reading,
                how,
                of,
                less,
                over,
                overHow,
                minute,
                since,
                mean,
                against,
                level,
                measuredValue,
                measuredSpread,
                gateBand,
                goalBand,
                pool,
                basis,
                second,
                secondRange,
                missed);
    }

    /** The same with what a second calculation gave. */
    public Check beside(double value, Band range) {
        return new Check(
                name, reading, how, of, less, over, overHow, minute, since, mean, against, level, measured, spread,
                gate, goal, pool, basis, value, range, missed);
    }

    /** How readings of several runs become one figure. */
    public enum How {
        /** Their mean. */
        MEAN,
        /** The least. */
        LEAST,
        /** Slope of a line of least squares over the other reading. */
        SLOPE,
        /** The other reading where this one first passes the level from below, between runs in their order. */
        OTHER_AT_LEVEL,
        /** This reading where the other one first passes the level from above, between runs in their order. */
        WHERE_OTHER_AT_LEVEL
    }

    /** What a measured value is pooled with. */
    public enum Pool {
        CORE,
        SKIN,
        /** Mean skin with the heat held that the source says was made: the shell alone. */
        SKIN_HELD,
        HEAT,
        NONE
    }

    /** The unit of the figure. */
    public String unit() {
        if (!over.isEmpty()) {
            return "";
        }
        return switch (how) {
            case SLOPE -> reading.unit() + " per " + other().unit();
            case OTHER_AT_LEVEL -> other().unit();
            default -> !less.isEmpty() && reading.unit().equals("°C") ? "K" : reading.unit();
        };
    }

    /** Decimals that the figure deserves. */
    public int decimals() {
        return switch (unit()) {
            case "W", "W/m2", "kJ/m2", "min", "percent" -> 0;
            case "°C", "h", "W/m2K" -> 1;
            default -> 2;
        };
    }

    private Reading other() {
        if (against == null) {
            throw new IllegalStateException(name + " needs another reading");
        }
        return against;
    }

    double evaluate(Runs runs) {
        double value = figure(runs, of, how);
        if (!less.isEmpty()) {
            value -= figure(runs, less, how);
        }
        return over.isEmpty() ? value : value / figure(runs, over, overHow);
    }

    private double figure(Runs runs, List<String> ids, How by) {
        double[] here =
                ids.stream().mapToDouble(id -> read(reading, runs.get(id))).toArray();
        return switch (by) {
            case MEAN -> mean(here);
            case LEAST -> least(here);
            case SLOPE -> slope(others(runs, ids), here);
            case OTHER_AT_LEVEL -> crossing(here, others(runs, ids), true);
            case WHERE_OTHER_AT_LEVEL -> crossing(others(runs, ids), here, false);
        };
    }

    private double[] others(Runs runs, List<String> ids) {
        return ids.stream().mapToDouble(id -> read(other(), runs.get(id))).toArray();
    }

    private double read(Reading what, Run run) {
        if (what.isOfWholeRun()) {
            return what.ofWhole(run, level);
        }
        int end = minute == END ? run.minutes() : minute;
        if (!mean) {
            return what.at(run, end, since);
        }
        double sum = 0;
        for (int m = since + 1; m <= end; m++) {
            sum += what.at(run, m, since);
        }
        return sum / (end - since);
    }

    /** Value of {@code y} where {@code x} first passes the level; NaN when it never does. */
    private double crossing(double[] x, double[] y, boolean rising) {
        int sign = rising ? 1 : -1;
        for (int i = 1; i < x.length; i++) {
            if (sign * (x[i] - level) >= 0 && sign * (x[i - 1] - level) < 0) {
                return y[i - 1] + (y[i] - y[i - 1]) * (level - x[i - 1]) / (x[i] - x[i - 1]);
            }
        }
        return Double.NaN;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double slope(double[] x, double[] y) {
        double mx = mean(x);
        double my = mean(y);
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
        }
        return xy / xx;
    }
}
