package longnight.quantity;

/**
 * A text that is no quantity of the dimension asked for. Its parts go into the reader's message, which knows the file
 * and the line.
 */
public final class QuantityFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String allowed;
    private final String hint;

    QuantityFault(String found, String allowed, String hint) {
        super(hint.isEmpty() ? found + "; " + allowed : found + "; " + allowed + "; " + hint);
        this.found = found;
        this.allowed = allowed;
        this.hint = hint;
    }

    /** What was read and what is wrong with it. */
    public String found() {
        return found;
    }

    /** What is allowed. */
    public String allowed() {
        return allowed;
    }

    /** What was perhaps meant; empty when nothing comes close. */
    public String hint() {
        return hint;
    }
}
