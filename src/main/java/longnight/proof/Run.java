package longnight.proof;

import longnight.night.Exposure;
import longnight.night.Exposure.Series;

/** One run of an experiment, its minutes counted from the end of the lead-in. */
final class Run {
    private final Exposure exposure;
    private final int lead;
    private final double mass;
    private final double fat;
    private final double cover;
    private boolean silent;

    Run(Exposure exposure, int lead, double mass, double fat, double cover) {
        this.exposure = exposure;
        this.lead = lead;
        this.mass = mass;
        this.fat = fat;
        this.cover = cover;
    }

    /** The same, every figure of a minute and the cover itself not a number. */
    Run withoutFigures() {
        Run run = new Run(exposure, lead, mass, fat, Double.NaN);
        run.silent = true;
        return run;
    }

    double value(Series series, int minute) {
        double[] values = exposure.of(series);
        int at = lead + minute;
        if (at < 0 || at >= values.length) {
            throw new IllegalArgumentException("minute " + minute + " of a run of " + minutes() + " min");
        }
        return silent ? Double.NaN : values[at];
    }

    double change(Series series, int since, int minute) {
        return value(series, minute) - value(series, since);
    }

    /** Length after the lead-in [min]. */
    int minutes() {
        return exposure.minutes() - lead;
    }

    double area() {
        return exposure.body().bodyArea();
    }

    double mass() {
        return mass;
    }

    double fat() {
        return fat;
    }

    double cover() {
        return cover;
    }

    /** Clothing with its still film, as dry or wet as it is at the start [m2 K/W]. */
    double clothing() {
        return exposure.clothing();
    }

    double basal() {
        return exposure.body().basalHeat();
    }

    /** Heat made at rest [W]. */
    double rest() {
        return lead > 0 ? value(Series.HEAT_MADE, 0) : exposure.body().restHeat();
    }

    /** Minute at which a series first passes a level, on a straight line between minutes; NaN if never. */
    double exceeds(Series series, double level) {
        for (int m = 1; m <= minutes(); m++) {
            double here = value(series, m);
            if (here > level) {
                double before = m == 1 ? Math.min(level, value(series, 0)) : value(series, m - 1);
                return m - (here - level) / (here - before);
            }
        }
        return Double.NaN;
    }

    int lowest(Series series) {
        int at = 0;
        for (int m = 1; m <= minutes(); m++) {
            at = value(series, m) < value(series, at) ? m : at;
        }
        return at;
    }

    double peak(Series series) {
        double most = Double.NEGATIVE_INFINITY;
        for (int m = 1; m <= minutes(); m++) {
            most = Math.max(most, value(series, m));
        }
        return most;
    }
}
