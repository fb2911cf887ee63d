package longnight.report;

import java.io.IOException;

/** A place for results that cannot take them: a file for a folder, no permission. The person who named it can mend it. */
public final class UnwritableException extends IOException {
    private static final long serialVersionUID = 1L;

    UnwritableException(String message) {
        super(message);
    }
}
