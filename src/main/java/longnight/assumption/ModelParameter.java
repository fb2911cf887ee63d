package longnight.assumption;

/**
 * A named constant of a model law that is not exactly known: nominal value, the range it may plausibly take, and where
 * the number comes from. Implemented by one enum per room, so that every such constant can be listed and varied.
 */
public interface ModelParameter {

    /** Identifier, the enum constant's own name. */
    String name();

    /** The value with its range and where it comes from. */
    Span span();

    /** Nominal value in the unit given by {@link #unit()}. */
    default double nominal() {
        return span().nominal();
    }

    /** Smallest plausible value. */
    default double low() {
        return span().low();
    }

    /** Largest plausible value. */
    default double high() {
        return span().high();
    }

    /** Unit as text, SI; "1" for a pure number. */
    default String unit() {
        return span().unit();
    }

    /** Author, year, table or equation; or {@code common practice, no source}; or {@code from memory}. */
    default String source() {
        return span().source();
    }

    /**
     * A value and the range it may plausibly take.
     *
     * @param nominal value used
     * @param low     smallest plausible value, at most {@code nominal}
     * @param high    largest plausible value, at least {@code nominal}
     * @param unit    SI unit as text; "1" for a pure number
     * @param source  where it comes from
     */
    record Span(double nominal, double low, double high, String unit, String source) {
        public Span {
            if (!(low <= nominal && nominal <= high)) {
                throw new IllegalArgumentException(nominal + " outside " + low + " to " + high + " " + unit);
            }
        }
    }
}
