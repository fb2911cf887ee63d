package longnight.study;

import java.util.List;
import java.util.Locale;

/**
 * Demonstrations for a class: two or three nights that differ in one thing, by the names of their files, in the order in which
 * their shortfall heat is expected to rise. What came out is read from the runs and not from here; this order only says whether
 * the reason written for the lesson may be given.
 */
public enum Lesson {
    /** Two parkas of the same mass with the same water in them. */
    WET_PARKA("wet-batt", "wet-down"),
    /** The march in light clothes, or in parka and overtrousers. */
    DRY_ARRIVAL("arrival-dry", "arrival-wet"),
    /** The parka at once, or when one is cold. */
    PARKA_AT_ONCE("parka-minute-1", "parka-minute-20"),
    SIT_PAD("lessons/pad-with", "lessons/pad-without"),
    /** A wind jacket over fleece, in wind. */
    WIND_SHELL("lessons/shell-with", "lessons/shell-without"),
    /** The same jacket in a tight face and in an open one, in wind. */
    TIGHT_FACE("lessons/face-tight", "lessons/face-open"),
    /** Pullovers of cotton and of polyester, both soaked and wrung. */
    SOAKED_COTTON("lessons/soaked-polyester", "lessons/soaked-cotton"),
    /** Middle of the row, its end, alone. */
    ROW("lessons/row-middle", "lessons/row-end", "lessons/row-alone"),
    /** Little fill of a high fill power, or more of a lower one. */
    LABELS("lessons/label-650", "lessons/label-900");

    private final List<String> nights;

    Lesson(String... nights) {
        this.nights = List.of(nights);
    }

    /** Names of night files without ending, the cheapest first if things go as expected. */
    public List<String> nights() {
        return nights;
    }

    /** As written on a command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
