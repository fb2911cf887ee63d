package longnight.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** Which program this is, so that figures of two are not mixed. */
final class Program {
    private Program() {}

    /** The version, without blanks. */
    static String version() {
        @Nullable String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "(unpackaged)" : version;
    }

    /** The version, and the digest of the jar where there is one. */
    static String fingerprint() throws IOException {
        @Nullable CodeSource source = Main.class.getProtectionDomain().getCodeSource();
        try {
            Path jar =
                    source == null ? Path.of("") : Path.of(source.getLocation().toURI());
            return Files.isRegularFile(jar) ? version() + "-" + digest(jar) : version();
        } catch (URISyntaxException fault) {
            return version();
        }
    }

    private static String digest(Path jar) throws IOException {
        try (InputStream in = Files.newInputStream(jar)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[1 << 16];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 16);
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException(fault); // every Java has it
        }
    }
}
