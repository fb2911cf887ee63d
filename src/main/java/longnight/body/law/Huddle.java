package longnight.body.law;

/**
 * Share of the body's surface that touches a partner. Between equal partners no heat flows: the patch only stops losing, so
 * a tenth of the surface in contact saves a tenth of the dry loss and no more.
 *
 * <p><b>Source.</b> Geometry, engineering estimate, no source; good to half or one and a half times.
 */
public enum Huddle {
    ALONE(0),
    /** Two, seated back to back. */
    BACK_TO_BACK(0.10),
    /** Two, side by side. */
    SIDE_BY_SIDE(0.10),
    /** In the middle of a tight row. */
    MIDDLE_OF_ROW(0.20),
    /** Three, arms round each other. */
    ARMS_ROUND(0.25),
    /** Lying, one in the bend of the other. */
    SPOONING(0.20);

    private final double contact;

    Huddle(double contact) {
        this.contact = contact;
    }

    /** Share of body surface in contact [1]. */
    public double contactShare() {
        return contact;
    }
}
