package longnight.study;

/** What may be other than a night's file says. */
public enum Doubt {
    /** Mass, height, fat, age and fitness of who sits there. */
    PEOPLE,
    /** The weather that comes. */
    FORECAST,
    /** The constants of the model itself. */
    MODEL
}
