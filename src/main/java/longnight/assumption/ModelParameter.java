package longnight.assumption;

/**
 * A named constant of a model law that is not exactly known: nominal value, the range it may plausibly take, and where
 * the number comes from. Implemented by one enum per room, so that every such constant can be listed and varied.
 */
public interface ModelParameter {

    /** Identifier, the enum constant's own name. */
    String name();

    /** Nominal value in the unit given by {@link #unit()}. */
    double nominal();

    /** Smallest plausible value. */
    double low();

    /** Largest plausible value. */
    double high();

    /** Unit as text, SI; "1" for a pure number. */
    String unit();

    /** Author, year, table or equation; or {@code common practice, no source}; or {@code from memory}. */
    String source();
}
