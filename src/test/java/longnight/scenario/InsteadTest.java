package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import longnight.night.Scenario;
import org.junit.jupiter.api.Test;

class InsteadTest {
    private static final Path NIGHT = Path.of("scenarios", "first-night.yaml");
    private static final Path KIT = Path.of("scenarios", "kits", "heavy.yaml");
    private static final Path PERSON = Path.of("scenarios", "people", "student.yaml");

    @Test
    void another_person_and_kit_take_the_place_of_the_nights_own() {
        Scenario own = ScenarioReader.read(NIGHT).scenario();
        Scenario other = ScenarioReader.read(NIGHT, new Instead(PERSON, KIT)).scenario();
        assertThat(other.person().name()).isEqualTo("the student");
        assertThat(other.kitName()).isEqualTo("heavy");
        assertThat(other.nightName()).isEqualTo(own.nightName());
        assertThat(ScenarioReader.read(NIGHT, Instead.NOTHING).scenario().person())
                .isEqualTo(own.person());
    }

    @Test
    void the_whole_wardrobe_is_at_hand() {
        Gear gear = ScenarioReader.gear(NIGHT, Instead.NOTHING);
        assertThat(gear.pieces()).extracting(piece -> piece.spec().id()).contains("batt-parka", "down-parka");
        assertThat(gear.pads()).isNotEmpty();
        assertThat(ScenarioReader.wardrobe(Path.of("scenarios", "wardrobe.yaml")))
                .isEqualTo(gear);
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        assertThatThrownBy(() -> ScenarioReader.read(NIGHT, new Instead(Path.of("no-such.yaml"), null)))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("no-such.yaml");
    }
}
