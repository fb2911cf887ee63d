package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are named in faults as people would name them, and never another file than the one that is read. */
class FaultPathTest {
    @TempDir
    Path folder;

    private Value.Text named(Path in, String name) {
        return new Value.Text(new Place(in, 1, 1), name, "");
    }

    @Test
    void steps_up_and_down_again_are_left_out() throws Exception {
        Path kits = Files.createDirectories(folder.resolve("kits"));
        assertThat(TextFile.path(named(kits.resolve("kit.yaml"), "../wardrobe.yaml")))
                .isEqualTo(folder.resolve("wardrobe.yaml"));
        Files.writeString(folder.resolve("wardrobe.yaml"), "x");
        assertThat(TextFile.path(named(kits.resolve("kit.yaml"), "../wardrobe.yaml")))
                .isEqualTo(folder.resolve("wardrobe.yaml"));
        assertThatThrownBy(() -> TextFile.read(named(kits.resolve("kit.yaml"), "../none.yaml")))
                .hasMessageContaining(folder.resolve("none.yaml").toString());
    }

    /** What lies above a folder that is a link is not what lies above the link. */
    @Test
    void behind_a_link_the_file_that_is_meant_stays() throws Exception {
        Path far = Files.createDirectories(folder.resolve("far/kits"));
        Files.writeString(folder.resolve("far/wardrobe.yaml"), "far");
        Files.writeString(folder.resolve("wardrobe.yaml"), "near");
        Path link = Files.createSymbolicLink(folder.resolve("kits"), far);
        assertThat(TextFile.read(named(link.resolve("kit.yaml"), "../wardrobe.yaml"))
                        .text())
                .isEqualTo("far");
    }
}
