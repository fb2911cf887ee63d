package longnight.night;

/**
 * What the day before the night, and a warming drill in it, amount to.
 *
 * @param sweatingAfter from the start of the last march until sweat passes 50 g/h [s]; NaN when it never does, or without march
 * @param coolingAfter  from the end of the last march until the body holds less heat than at its neutral state [s]; NaN when
 *     it never does, or without march
 * @param drillMade     heat made more because of the drill [J]; NaN without drill
 * @param drillLost     heat lost more because of it [J]
 * @param drillKept     heat more in the body at dawn because of it [J]: what the drill is worth
 */
public record DayReport(
        double sweatingAfter, double coolingAfter, double drillMade, double drillLost, double drillKept) {

    /** No march, no drill. */
    static DayReport none() {
        return new DayReport(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
}
