package longnight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Pages in docs that a test writes: the test makes the text anew and fails when the page says something else. */
public final class DocTable {
    private DocTable() {}

    /**
     * Holds a page against the text it should have, or writes it when the tests run with {@code -Ddocs.write=true}.
     *
     * @param page from the project's root, for example {@code docs/breeze.md}
     * @param text the whole page
     */
    public static void check(String page, String text) {
        Path file = Path.of(System.getProperty("basedir", "."), page);
        try {
            if (Boolean.getBoolean("docs.write")) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, text);
            }
            String found = Files.exists(file) ? Files.readString(file).replace("\r\n", "\n") : "";
            if (!found.equals(text)) {
                assertEquals(
                        text,
                        found,
                        page + " is stale; run this test with -Ddocs.write=true to rewrite it. It should say:\n\n"
                                + text + "\n");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Formats with a decimal point and without digit grouping wherever it runs. */
    public static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
