package longnight.night;

import java.util.TreeSet;
import longnight.outdoors.Surroundings;

/** The moments of one phase: where rows of the table fall, and where the integration must stop to look around. */
final class Course {

    private static final double HOUR = 3600.0;
    /** How long steps stay short after dusk and after an abrupt change [s]. */
    private static final double SETTLING = 1200.0;

    private static final double TINY = 1e-6;

    /** Stops, rising, the first and the last the ends of the phase. */
    final double[] stops;
    /** For each stop: true when it is a row of the hour table. */
    final boolean[] isRow;

    private final double[] changes;
    private final NumericalSettings settings;

    Course(NightPlan plan, Phase phase, Surroundings surroundings, NumericalSettings settings) {
        this.settings = settings;
        double start = phase.from();
        double end = phase.to();
        TreeSet<Double> rows = new TreeSet<>();
        if (Math.abs(end - plan.duration()) < TINY) {
            rows.add(end);
        }
        double toFullHour = HOUR - plan.startOfDay() % HOUR;
        for (double t = toFullHour; t < end + TINY; t += HOUR) {
            if (t > start + TINY && t > TINY) {
                rows.add(Math.min(t, end));
            }
        }
        TreeSet<Double> changing = new TreeSet<>();
        changing.add(start);
        TreeSet<Double> corners = new TreeSet<>(rows);
        corners.add(end);
        for (double t : surroundings.jumps()) {
            if (t > start + TINY && t < end - TINY) {
                corners.add(t);
                changing.add(t);
            }
        }
        for (double t : surroundings.knots()) {
            if (t > start + TINY && t < end - TINY) {
                corners.add(t);
            }
        }
        for (Intake intake : plan.intakes()) {
            if (intake.time() > start + TINY && intake.time() < end - TINY) {
                corners.add(intake.time());
            }
        }
        for (HeatBrought heat : plan.heats()) {
            if (heat.time() > start + TINY && heat.time() < end - TINY) {
                corners.add(heat.time());
                changing.add(heat.time());
            }
        }
        for (double t : changing) {
            if (t + SETTLING < end - TINY) {
                corners.add(t + SETTLING);
            }
        }
        changes = changing.stream().mapToDouble(Double::doubleValue).toArray();
        TreeSet<Double> all = new TreeSet<>();
        double from = start;
        for (double to : corners) {
            if (to - from < TINY) {
                continue;
            }
            double longest = isSettling(0.5 * (from + to)) ? settings.settlingBoundary() : settings.boundary();
            int parts = (int) Math.ceil((to - from) / longest - TINY);
            for (int i = 0; i < parts; i++) {
                all.add(from + (to - from) * i / parts);
            }
            from = to;
        }
        all.add(end);
        stops = all.stream().mapToDouble(Double::doubleValue).toArray();
        isRow = new boolean[stops.length];
        for (int i = 0; i < stops.length; i++) {
            Double near = rows.floor(stops[i] + TINY);
            isRow[i] = near != null && near > stops[i] - TINY;
        }
    }

    private boolean isSettling(double time) {
        for (double change : changes) {
            if (time >= change && time < change + SETTLING) {
                return true;
            }
        }
        return false;
    }

    /** Number of equal steps between a stop and the next. */
    int stepsAfter(int stop) {
        double length = stops[stop + 1] - stops[stop];
        double longest = isSettling(0.5 * (stops[stop] + stops[stop + 1])) ? settings.settlingStep() : settings.step();
        return Math.max(1, (int) Math.ceil(length / longest - TINY));
    }
}
