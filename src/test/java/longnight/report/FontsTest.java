package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FontsTest {
    @BeforeEach
    void install() {
        Fonts.install();
    }

    @Test
    void the_faces_are_ours_at_the_size_asked() {
        assertThat(Fonts.plain(11.5f).getFontName()).isEqualTo("DejaVu Sans");
        assertThat(Fonts.plain(11.5f).getSize2D()).isCloseTo(11.5f, within(0f));
        assertThat(Fonts.bold(14f).getFontName()).isEqualTo("DejaVu Sans Bold");
        assertThat(Fonts.bold(14f).getSize2D()).isCloseTo(14f, within(0f));
    }

    @Test
    void the_letters_a_night_needs_are_there() {
        assertThat(Fonts.plain(12f).canDisplayUpTo("−18 °C · 100 g/m² · ½ h – µm ≤ ≥ × Δ ä é ø ł"))
                .isEqualTo(-1);
        assertThat(Fonts.bold(12f).canDisplayUpTo("−18 °C · 100 g/m² · ½ h – µm ≤ ≥ × Δ ä é ø ł"))
                .isEqualTo(-1);
    }

    @Test
    void text_leaves_ink_without_a_screen() {
        assertThat(GraphicsEnvironment.isHeadless()).isTrue();
        for (Font font : new Font[] {Fonts.plain(20f), Fonts.bold(20f), new Font(Font.DIALOG, Font.PLAIN, 20)}) {
            BufferedImage image = new BufferedImage(120, 40, BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = image.createGraphics();
            pen.setFont(font);
            pen.drawString("night", 10, 30);
            pen.dispose();
            int ink = 0;
            for (int pixel : image.getRGB(0, 0, 120, 40, null, 0, 120)) {
                if (pixel != 0xff000000) {
                    ink++;
                }
            }
            assertThat(ink).as(font.toString()).isGreaterThan(50);
        }
    }

    @Test
    void the_toolkit_is_told_of_every_logical_family_and_of_files_that_exist() throws Exception {
        Path description = Path.of(System.getProperty("sun.awt.fontconfig"));
        Properties said = new Properties();
        said.load(new StringReader(Files.readString(description)));
        for (String family : new String[] {"dialog", "dialoginput", "monospaced", "sansserif", "serif"}) {
            for (String style : new String[] {"plain", "italic", "bold", "bolditalic"}) {
                String face = said.getProperty(family + "." + style + ".latin-1");
                assertThat(Path.of(said.getProperty("filename." + face.replace(' ', '_'))))
                        .isRegularFile();
            }
        }
    }

    @Test
    void a_path_with_any_letter_survives_the_description() throws Exception {
        Properties said = new Properties();
        said.load(new StringReader(Fonts.describe(Path.of("/tmp/naïve 夜/p.ttf"), Path.of("/tmp/b.ttf"))));
        assertThat(said.getProperty("filename.DejaVu_Sans")).isEqualTo("/tmp/naïve 夜/p.ttf");
    }

    @Test
    void the_licence_travels_with_the_fonts() {
        assertThat(Fonts.class.getResource("fonts/LICENSE")).isNotNull();
    }
}
