package longnight.night;

import java.util.List;

/**
 * The answer in words' place: codes and times, no prose (prose lives in the report).
 *
 * @param outcome     what the night amounts to
 * @param from        seconds from the start of the night from which it does not hold; NaN otherwise
 * @param reasons     why it does not hold, in the order of the clock
 * @param atRisk      hands, feet or face at risk
 * @param limits      for {@link Outcome#OUTSIDE_THE_MODEL}: why; may also flag extrapolation below 34 degC core
 * @param extrapolated true when the core fell below 34 degC
 */
public record Verdict(
        Outcome outcome,
        double from,
        List<Crossing> reasons,
        List<AtRisk> atRisk,
        List<String> limits,
        boolean extrapolated) {

    /** Outcomes, best first. */
    public enum Outcome {
        HOLDS_EASILY,
        HOLDS_BY_SHIVERING,
        DOES_NOT_HOLD,
        OUTSIDE_THE_MODEL
    }

    /** Lines whose crossing ends "holds". */
    public enum Line {
        /** Demand above 2.0. */
        DEMAND,
        /** Core-heat deficit above 15 kJ at dawn (the time is its last rise above 15 kJ). */
        CORE_HEAT_DEFICIT,
        /** Core below 35 degC. */
        CORE_35
    }

    /** A line crossed at a time [s from the start]. */
    public record Crossing(Line line, double time) {}

    /** A part of the body that is in danger from a time on [s from the start], and its lowest temperature [degC]. */
    public record AtRisk(Part part, double time, double lowest, double warningMinutes) {}

    /** Parts reported apart from the core. */
    public enum Part {
        HANDS,
        FEET,
        FACE
    }
}
