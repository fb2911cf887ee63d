package longnight.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** Everything said to people, from the one file of prose. Figures enter it as finished text, so that no locale touches them. */
public final class Prose {
    private static final Properties ALL = load();

    private Prose() {}

    /**
     * The text of a key with its slots filled.
     *
     * @param slots finished texts for {0}, {1}, ...
     * @throws IllegalArgumentException when the file has no such key
     */
    public static String text(String key, String... slots) {
        String pattern = find(key);
        if (pattern == null) {
            throw new IllegalArgumentException("no prose for " + key);
        }
        if (slots.length == 0 && pattern.indexOf('{') < 0) {
            return pattern.replace("''", "'");
        }
        MessageFormat format = new MessageFormat(pattern, Locale.ROOT);
        assert format.getFormatsByArgumentIndex().length <= slots.length : key + " has slots that nothing fills";
        return format.format(slots);
    }

    /** The text of a key without slots, or null. */
    static @Nullable String find(String key) {
        return ALL.getProperty(key);
    }

    private static Properties load() {
        try (InputStream in = Prose.class.getResourceAsStream("prose.properties")) {
            if (in == null) {
                throw new IllegalStateException("the file of prose is missing");
            }
            Properties prose = new Properties();
            prose.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return prose;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
