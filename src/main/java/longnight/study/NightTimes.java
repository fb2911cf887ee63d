package longnight.study;

import longnight.night.NightPlan;

/**
 * From when to when a night is cut out of a record.
 *
 * @param startOfDay clock time of dusk [s after midnight]
 * @param before     how long before it the plan begins [s]
 * @param duration   [s]
 */
public record NightTimes(double startOfDay, double before, double duration) {

    /** A winter's night when no plan says otherwise: engineering estimate, no source. */
    public static final NightTimes USUAL = new NightTimes(17.5 * 3600, 0, 14 * 3600);

    static NightTimes of(NightPlan plan) {
        return new NightTimes(plan.startOfDay(), -plan.start(), plan.duration());
    }
}
