package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.night.Phase;
import org.junit.jupiter.api.Test;

/** What the phases of a plan do with a kit that is not their own. */
class WearingTest {

    private final List<Garment> all = LeastFixture.SIXTY.pieces();

    private Outfit.Kit kit(String... ids) {
        return new Outfit.Kit(
                java.util.Arrays.stream(ids)
                        .map(id -> all.stream()
                                .filter(piece -> piece.spec().id().equals(id))
                                .findFirst()
                                .orElseThrow())
                        .toList(),
                List.of());
    }

    @Test
    void kinds_that_a_phase_leaves_off_are_off_and_swapped_ones_stay() {
        Wearing wearing = Wearing.of(
                kit("thin-shirt", "fleece-vest", "batt-parka", "light-trousers"), kit("wool-shirt", "light-trousers"));
        assertThat(wearing.of(kit("gauze-shirt", "down-vest", "down-parka", "stretch-trousers", "knit-cap"))
                        .pieces())
                .extracting(piece -> piece.spec().id())
                .containsExactly("gauze-shirt", "stretch-trousers", "knit-cap");
    }

    @Test
    void a_march_without_vest_and_overtrousers_is_marched_so_in_any_kit() {
        Trial trial = new Trial(LeastFixture.night("wet-ridge-rain", "student"));
        Outfit.Kit other = kit(
                "thin-shirt",
                "down-vest",
                "rain-shell",
                "light-trousers",
                "down-overtrousers",
                "wool-socks",
                "leather-boots");
        List<Phase> phases = trial.in(other).plan().phases();
        assertThat(kinds(phases.get(0))).doesNotContain(GarmentKind.VEST, GarmentKind.INSULATED_TROUSERS);
        assertThat(kinds(phases.get(1))).contains(GarmentKind.VEST, GarmentKind.INSULATED_TROUSERS);
    }

    private static List<GarmentKind> kinds(Phase phase) {
        return ((Outfit.Kit) java.util.Objects.requireNonNull(phase.outfit()))
                .pieces().stream().map(piece -> piece.spec().kind()).toList();
    }
}
