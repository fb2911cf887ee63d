package longnight.scenario;

import java.util.Locale;

/**
 * From when to when.
 *
 * @param from     clock time of the start [s after midnight]
 * @param duration length [s]
 * @param before   how long before it the plan begins [s]
 */
record NightHours(double from, double duration, double before) {
    static final double DAY = 86400;

    /** Seconds from the start of the night to a clock time, within half a day before and after the start of the plan. */
    double near(double clock) {
        double after = afterStart(clock);
        return (after > DAY / 2 ? after - DAY : after) - before;
    }

    /** Seconds from the start of the night to the first such clock time in the plan or after it. */
    double first(double clock) {
        return afterStart(clock) - before;
    }

    private double afterStart(double clock) {
        return ((clock - from + before) % DAY + DAY) % DAY;
    }

    String clockAt(double time) {
        long minutes = Math.floorMod(Math.round((from + time) / 60), 24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    /** "18:00 to 06:30". */
    String shown() {
        return clockAt(0) + " to " + clockAt(duration);
    }
}
