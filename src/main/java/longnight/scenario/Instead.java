package longnight.scenario;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Files that take the place of what a night file says.
 *
 * @param person a person's file; null for the night's own
 * @param kit    a kit's file; null for the night's own
 */
public record Instead(@Nullable Path person, @Nullable Path kit) {
    /** The night file as it stands. */
    public static final Instead NOTHING = new Instead(null, null);
}
