package longnight.night;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.figure.Posture;

/**
 * What the person does. Time 0 is dusk, the start of the night; phases before it (a march, a halt) have negative times and
 * set the state in which the night begins. The night's bill is counted from dusk.
 *
 * @param startOfDay   local clock time of dusk [s after midnight], 0 to 86400
 * @param duration     length of the night [s], 1800 to 72000 (0.5 to 20 h)
 * @param clockActive  whether the daily rhythm of the set level runs (off only in laboratory cases)
 * @param imposedHeat  total heat production held by the laboratory [W/m2]; NaN for the person's own
 * @param phases       without holes or overlaps, the last one ending at dawn, one of them beginning at dusk
 * @param intakes      food and drink, in the order of time
 * @param heats        bottles and heat packs
 * @param damp         water in a piece at the start of the first phase, by garment id [kg per kg of its cloth and fill]
 * @param fuel         share of the carbohydrate store at the start of the first phase [1]: 1 rested and fed
 */
public record NightPlan(
        double startOfDay,
        double duration,
        boolean clockActive,
        double imposedHeat,
        List<Phase> phases,
        List<Intake> intakes,
        List<HeatBrought> heats,
        Map<String, Double> damp,
        double fuel) {

    private static final double HOUR = 3600;

    public NightPlan {
        double at = phases.get(0).from();
        boolean dusk = false;
        for (Phase phase : phases) {
            if (Math.abs(phase.from() - at) > 1e-6) {
                throw new IllegalArgumentException(
                        "phase " + phase.name() + " begins at " + phase.from() + " s, the one before ends at " + at);
            }
            dusk |= Math.abs(phase.from()) < 1e-6;
            at = phase.to();
        }
        if (!dusk || Math.abs(at - duration) > 1e-6) {
            throw new IllegalArgumentException("phases must have one that begins at dusk and end at dawn");
        }
        phases = List.copyOf(phases);
        intakes = List.copyOf(intakes);
        heats = List.copyOf(heats);
        damp = Map.copyOf(damp);
    }

    /** One stationary phase from dusk to dawn, dry, rested and fed. */
    public static NightPlan still(
            double startOfDay,
            double duration,
            Posture posture,
            boolean sleepAllowed,
            boolean clockActive,
            double imposedHeat) {
        return new NightPlan(
                startOfDay,
                duration,
                clockActive,
                imposedHeat,
                List.of(Phase.still("night", 0, duration, posture, sleepAllowed)),
                List.of(),
                List.of(),
                Map.of(),
                1);
    }

    /** The same with other phases. */
    public NightPlan withPhases(List<Phase> others) {
        return new NightPlan(startOfDay, duration, clockActive, imposedHeat, others, intakes, heats, damp, fuel);
    }

    /** The same with other water in the pieces at the start. */
    public NightPlan withDamp(Map<String, Double> other) {
        return new NightPlan(startOfDay, duration, clockActive, imposedHeat, phases, intakes, heats, other, fuel);
    }

    /** The same with other food and drink. */
    public NightPlan withIntakes(List<Intake> others) {
        return new NightPlan(startOfDay, duration, clockActive, imposedHeat, phases, others, heats, damp, fuel);
    }

    /** The same with another share of the carbohydrate store at the start [1]. */
    public NightPlan withFuel(double share) {
        return new NightPlan(startOfDay, duration, clockActive, imposedHeat, phases, intakes, heats, damp, share);
    }

    /**
     * The phases with every warming drill played out: so many minutes at the start of each hour, wide awake, then rest. Phases
     * without a drill come back as they are.
     */
    List<Phase> stretches() {
        List<Phase> out = new ArrayList<>();
        for (Phase phase : phases) {
            if (phase.drillShare() <= 0 || phase.drillShare() >= 1) {
                out.add(phase);
                continue;
            }
            for (double from = phase.from(); from < phase.to() - 1e-6; from += HOUR) {
                double to = Math.min(phase.to(), from + HOUR);
                double turn = from + phase.drillShare() * (to - from);
                out.add(phase.part(from, turn, 1));
                out.add(phase.part(turn, to, 0));
            }
        }
        return out;
    }

    /** The phase that begins at dusk. */
    public Phase firstOfNight() {
        for (Phase phase : phases) {
            if (Math.abs(phase.from()) < 1e-6) {
                return phase;
            }
        }
        throw new IllegalStateException("no phase at dusk");
    }

    /** Start of the first phase [s from dusk]. */
    public double start() {
        return phases.get(0).from();
    }
}
