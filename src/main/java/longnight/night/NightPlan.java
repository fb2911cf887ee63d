package longnight.night;

import longnight.figure.Posture;

/**
 * What the person does: for now one stationary phase from dusk to dawn.
 *
 * @param startOfDay   local clock time of the start [s after midnight], 0 to 86400
 * @param duration     length of the night [s], 1800 to 72000 (0.5 to 20 h)
 * @param posture      posture held
 * @param sleepAllowed whether the person may sleep
 * @param clockActive  whether the daily rhythm of the set level runs (off only in laboratory cases)
 * @param imposedHeat  total heat production held by the laboratory [W/m2]; NaN for the person's own
 */
public record NightPlan(
        double startOfDay,
        double duration,
        Posture posture,
        boolean sleepAllowed,
        boolean clockActive,
        double imposedHeat) {}
