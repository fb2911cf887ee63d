package longnight.scenario;

import java.util.Locale;

/**
 * From when to when.
 *
 * @param from     clock time of the start [s after midnight]
 * @param duration length [s]
 */
record NightHours(double from, double duration) {
    static final double DAY = 86400;

    /** Seconds from the start of the night to a clock time, within half a day before and after the start. */
    double near(double clock) {
        double after = ((clock - from) % DAY + DAY) % DAY;
        return after > DAY / 2 ? after - DAY : after;
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
