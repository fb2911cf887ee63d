package longnight.night;

import java.util.List;

/**
 * What somebody wrote down or a logger kept in a night. Readings come at times of their own; what was not read at a time is NaN.
 *
 * @param time     seconds from dusk, rising
 * @param air      at the place [degC]
 * @param humidity over liquid water [1]
 * @param wind     10 m above the ground in the open, as in weather files [m/s]
 * @param core     of the body, from a pill or probe [degC]
 * @param skin     mean of the skin, or of one sensor under the clothes at the trunk [degC]
 * @param notes    what was felt or seen
 * @param clock    how the log's clock was read, for people
 */
public record NightLog(
        double[] time,
        double[] air,
        double[] humidity,
        double[] wind,
        double[] core,
        double[] skin,
        List<Note> notes,
        String clock) {

    /** What was felt or seen at a time [s from dusk]. */
    public record Note(double time, Feeling feeling) {}

    /** Words of a note. */
    public enum Feeling {
        SHIVERING,
        COLD,
        WARM,
        ASLEEP
    }
}
