package longnight.report;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which rows of a grid: number i of n takes every n-th row, the first of them row i - 1, so that all have as much to do.
 *
 * @param number from 1
 * @param of     how many parts there are; 1 for the whole
 */
public record Part(int number, int of) {
    /** All rows. */
    public static final Part WHOLE = new Part(1, 1);

    private static final Pattern WRITTEN = Pattern.compile("([1-9][0-9]{0,3})/([1-9][0-9]{0,3})");

    /**
     * From "2/3".
     *
     * @throws IllegalArgumentException when it is nothing of the kind
     */
    public static Part parse(String text) {
        Matcher parts = WRITTEN.matcher(text);
        if (parts.matches()) {
            Part part = new Part(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)));
            if (part.number <= part.of) {
                return part;
            }
        }
        throw new IllegalArgumentException(Prose.text("fault.part", text));
    }

    /** Whether a row belongs to it. */
    public boolean has(int row) {
        return row % of == number - 1;
    }

    /** How many of so many rows belong to it. */
    int share(int rows) {
        return (rows - number + of) / of;
    }

    @Override
    public String toString() {
        return number + "/" + of;
    }
}
