package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import longnight.clothing.Oracles;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The list of garments of ISO 7730 and ISO 9920, and the fill-power norm's test load. */
class Iso9920GarmentListTest {

    /** Both columns of the list say the same; it is printed to 0.001 m2K/W and rounded from 0.01 clo. */
    @TestFactory
    Stream<DynamicTest> cloAndSiColumnsAgree() {
        return Oracles.of("GARM-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    double clo = row.path("inputs").path("I_clu_clo").asDouble();
                    assertThat(clo * WholeBody.CLO)
                            .isCloseTo(
                                    row.path("expected").path("I_clu_m2K_W").asDouble(),
                                    within(Oracles.tolerance(row, 0)));
                }));
    }

    /** A thick garment in the list stays below what its cover allows, however thick it is: half the body at most here. */
    @Test
    void listedJacketsStayBelowTheCeilingOfTheirCover() {
        double still = 0.7 * WholeBody.CLO;
        for (String id : new String[] {"GARM-21", "GARM-23"}) {
            double listed = Oracles.one(id).path("expected").path("I_clu_m2K_W").asDouble();
            assertThat(listed).isLessThan(WholeBody.ceiling(still, 0.52));
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
