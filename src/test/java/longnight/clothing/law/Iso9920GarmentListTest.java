package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longnight.clothing.Oracles;
import longnight.proof.StandardTable;
import longnight.scenario.StandardReader;
import org.junit.jupiter.api.Test;

/** The list of garments of ISO 7730 and ISO 9920, and the fill-power norm's test load. */
class Iso9920GarmentListTest {
    private static final StandardTable LIST = StandardReader.read(StandardTable.Kind.GARMENT_LIST);

    /** Both columns of the list say the same; it is printed to 0.001 m2K/W and rounded from 0.01 clo. */
    @Test
    void cloAndSiColumnsAgree() {
        assertThat(LIST.rows()).hasSize(20);
        assertThat(LIST.worst()).isLessThanOrEqualTo(0.0012);
    }

    /** A thick garment in the list stays below what its cover allows, however thick it is: half the body at most here. */
    @Test
    void listedJacketsStayBelowTheCeilingOfTheirCover() {
        double still = 0.7 * WholeBody.CLO;
        List<StandardTable.Row> jackets = LIST.rows().stream()
                .filter(row -> row.id().matches("GARM-2[13]"))
                .toList();
        assertThat(jackets).hasSize(2);
        for (StandardTable.Row row : jackets) {
            assertThat(row.expected()).isLessThan(WholeBody.ceiling(still, 0.52));
        }
    }

    @Test
    void identities() {
        var clo = Oracles.one("UNIT-clo");
        assertThat(WholeBody.CLO)
                .isCloseTo(clo.path("expected").path("m2K_W").asDouble(), within(Oracles.tolerance(clo, 0)));
        var piston = Oracles.one("UNIT-piston_US");
        assertThat(Loft.TEST_PRESSURE)
                .isCloseTo(piston.path("expected").path("Pa").asDouble(), within(Oracles.tolerance(piston, 0)));
        var down = Oracles.one("UNIT-fillpower_850_rho");
        assertThat(Loft.downDensity(850 * 5.78037e-4, 1))
                .isCloseTo(down.path("expected").path("kg_m3").asDouble(), within(Oracles.tolerance(down, 0)));
        // The European piston presses the same within 1 %, so one load serves both norms.
        double european =
                Oracles.one("UNIT-piston_EN").path("expected").path("Pa").asDouble();
        assertThat(Loft.TEST_PRESSURE).isCloseTo(european, within(0.01 * european));
    }
}
