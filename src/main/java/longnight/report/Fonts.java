package longnight.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The typeface of every picture, carried along so that a chart looks the same everywhere and appears at all on a machine
 * without fonts.
 *
 * <p>Two things are needed for that. The font must be ours, and the toolkit must not look for the machine's: before it
 * draws a single letter it wants a face for each of its five logical families, and gives up with an error if there is
 * none. So both files are laid into a temporary folder together with a description that points every logical family at
 * them, and the toolkit is told to read that. It reads it once, at its first use; call {@link #install()} before.
 */
public final class Fonts {
    private static final String PLAIN = "DejaVuSans.ttf";
    private static final String BOLD = "DejaVuSans-Bold.ttf";
    private static final String DESCRIPTION_PROPERTY = "sun.awt.fontconfig";

    private static @Nullable Fonts installed;

    private final Font plain;
    private final Font bold;

    private Fonts(Font plain, Font bold) {
        this.plain = plain;
        this.bold = bold;
    }

    /** Makes the toolkit headless and independent of the machine's fonts. Later calls do nothing. */
    public static void install() {
        fonts();
    }

    /** The text face at a size in points. */
    public static Font plain(float size) {
        return fonts().plain.deriveFont(size);
    }

    /** The heading face at a size in points. It says that it is bold, so that a drawing in text form can say so too. */
    public static Font bold(float size) {
        return fonts().bold.deriveFont(Font.BOLD, size);
    }

    private static synchronized Fonts fonts() {
        if (installed == null) {
            installed = unpack();
        }
        return installed;
    }

    private static Fonts unpack() {
        System.setProperty("java.awt.headless", "true");
        try {
            Path folder = Files.createTempDirectory("longnight-fonts");
            folder.toFile().deleteOnExit(); // emptied first: the last registered goes first
            Path plain = unpack(PLAIN, folder);
            Path bold = unpack(BOLD, folder);
            if (System.getProperty(DESCRIPTION_PROPERTY) == null) {
                Path description = folder.resolve("fontconfig.properties");
                description.toFile().deleteOnExit();
                // Property files are read as Latin-1; a path may hold any letter, so it is escaped.
                Files.writeString(description, describe(plain, bold), StandardCharsets.ISO_8859_1);
                System.setProperty(DESCRIPTION_PROPERTY, description.toString());
            }
            return new Fonts(
                    Font.createFont(Font.TRUETYPE_FONT, plain.toFile()),
                    Font.createFont(Font.TRUETYPE_FONT, bold.toFile()));
        } catch (IOException fault) {
            throw new UncheckedIOException("The bundled fonts could not be unpacked: " + fault.getMessage(), fault);
        } catch (FontFormatException fault) {
            throw new IllegalStateException("The bundled fonts are damaged.", fault);
        }
    }

    private static Path unpack(String name, Path folder) throws IOException {
        Path file = folder.resolve(name);
        file.toFile().deleteOnExit();
        try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The bundled font " + name + " is missing.");
            }
            Files.copy(in, file);
        }
        return file;
    }

    /** Five logical families in four styles, all of them ours. */
    static String describe(Path plain, Path bold) {
        StringBuilder text = new StringBuilder("version=1\n");
        for (String family : List.of("dialog", "dialoginput", "monospaced", "sansserif", "serif")) {
            for (String style : List.of("plain", "italic")) {
                text.append(family).append('.').append(style).append(".latin-1=DejaVu Sans\n");
            }
            for (String style : List.of("bold", "bolditalic")) {
                text.append(family).append('.').append(style).append(".latin-1=DejaVu Sans Bold\n");
            }
        }
        text.append("sequence.allfonts=latin-1\n");
        text.append("filename.DejaVu_Sans=").append(escaped(plain)).append('\n');
        text.append("filename.DejaVu_Sans_Bold=").append(escaped(bold)).append('\n');
        return text.toString();
    }

    private static String escaped(Path path) {
        StringBuilder text = new StringBuilder();
        for (char c : path.toString().toCharArray()) {
            if (c == '\\') {
                text.append("\\\\");
            } else if (c < ' ' || c > '~') {
                text.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                text.append(c);
            }
        }
        return text.toString();
    }
}
