package longnight.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** What made an answer, and a fingerprint of what it answers: the same question gives the same to the last digit. */
final class MadeBy {
    private MadeBy() {}

    /** The program's version. */
    static String version() {
        @Nullable String version = MadeBy.class.getPackage().getImplementationVersion();
        return version == null ? Prose.text("html.unpackaged") : version;
    }

    /** Sixteen hexadecimal digits of an answer's data, which begin with its question. */
    static String fingerprint(String json) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(json.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, 16);
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException(fault); // every Java has it
        }
    }

    /** Version and fingerprint in a sentence. */
    static String line(String json) {
        return Prose.text("html.made-by", version(), fingerprint(json));
    }
}
