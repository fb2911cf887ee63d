package longnight.assumption;

/**
 * A value that nobody wrote down and that was derived or assumed instead. Guesses travel with a result so that a reader
 * sees and can override every one of them.
 *
 * @param subject  what it is about, for example a garment's id or "person"
 * @param quantity which property, in the field's words, for example "down bulk density in the garment"
 * @param value    the number in SI; NaN when the guess is a word
 * @param unit     SI unit as text ("kg/m3", "1", "m2K/W", "degC"); empty when the guess is a word
 * @param word     the word chosen; empty when the guess is a number
 * @param reason   where it comes from: rule id, source or {@code common practice, no source}
 */
public record Guess(String subject, String quantity, double value, String unit, String word, String reason) {

    /** A guessed number, SI. */
    public static Guess number(String subject, String quantity, double value, String unit, String reason) {
        return new Guess(subject, quantity, value, unit, "", reason);
    }

    /** A guessed word. */
    public static Guess word(String subject, String quantity, String word, String reason) {
        return new Guess(subject, quantity, Double.NaN, "", word, reason);
    }
}
