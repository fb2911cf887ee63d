package longnight.clothing;

/** How hard it is to blow through the face fabric: the realistic field test. */
public enum FaceTightness {
    /** Nothing goes through. */
    TIGHT,
    /** Hard to blow through. */
    MEDIUM,
    /** Easy to blow through. */
    OPEN
}
