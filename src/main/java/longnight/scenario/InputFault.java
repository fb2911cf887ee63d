package longnight.scenario;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A fault in what we were given: which file, where, what was read, what is allowed, and what was perhaps meant. Its
 * message is the whole story in one line, {@code FILE:LINE:COLUMN: found; allowed; hint}.
 */
public final class InputFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String found;
    private final String allowed;
    private final String hint;

    InputFault(Path file, int line, int column, String found, String allowed, String hint) {
        super(new Place(file, line, column)
                + ": "
                + Stream.of(found, allowed, hint)
                        .filter(part -> !part.isEmpty())
                        .map(InputFault::oneLine)
                        .collect(Collectors.joining("; ")));
        this.file = file.toString();
        this.line = line;
        this.column = column;
        this.found = found;
        this.allowed = allowed;
        this.hint = hint;
    }

    /** The file at fault, as it was named. */
    public String file() {
        return file;
    }

    /** Line, from 1; 0 when the file as a whole is at fault. */
    public int line() {
        return line;
    }

    /** Column in characters, from 1; 0 when the file as a whole is at fault. */
    public int column() {
        return column;
    }

    /** What was read and what is wrong with it. */
    public String found() {
        return found;
    }

    /** What is allowed there. */
    public String allowed() {
        return allowed;
    }

    /** What was perhaps meant; may be empty. */
    public String hint() {
        return hint;
    }

    /** Quoted input may hold anything; a message holds no line breaks and nothing that steers a terminal or turns the writing round. */
    private static String oneLine(String text) {
        return text.codePoints()
                .map(c -> Character.isISOControl(c)
                                || Character.getType(c) == Character.FORMAT
                                || c == 0x2028
                                || c == 0x2029
                        ? ' '
                        : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
