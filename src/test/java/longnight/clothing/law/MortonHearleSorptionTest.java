package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import longnight.clothing.Oracles;
import longnight.clothing.WaterClass;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Bound water after Gibson 1996, Morton and Hearle. */
class MortonHearleSorptionTest {

    @TestFactory
    Stream<DynamicTest> regainOfWool() {
        return Oracles.of("REGAIN-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    double regain = Sorption.regain(
                            row.path("inputs").path("phi").asDouble(),
                            row.path("inputs").path("r65").asDouble(),
                            0.33);
                    double expected = row.path("expected").path("regain").asDouble();
                    assertThat(regain).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
                }));
    }

    /** Regain at 65 %, ranges as read: wool 0.14 to 0.18, cotton 0.07 to 0.08, nylon 0.04, polyester 0.004. */
    @ParameterizedTest
    @CsvSource({"WOOL, 0.14, 0.18", "COTTON, 0.07, 0.08", "NYLON, 0.0395, 0.0405", "POLYESTER_KNIT, 0.00395, 0.00405"})
    void regainAt65Percent(WaterClass cloth, double low, double high) {
        assertThat(cloth.regain(0.65)).isBetween(low, high);
    }

    /** The curve overshoots at saturation (wool 0.40); caps of wool 0.33 and nylon 0.08 hold it there. */
    @Test
    void capsHold() {
        assertThat(Sorption.regain(1, 0.15, 1e3)).isCloseTo(0.3966, within(1e-3));
        assertThat(WaterClass.WOOL.regain(1)).isLessThanOrEqualTo(0.33).isGreaterThan(0.325);
        assertThat(WaterClass.NYLON.regain(1)).isLessThanOrEqualTo(0.08).isGreaterThan(0.079);
        assertThat(WaterClass.COTTON.regain(1)).isLessThanOrEqualTo(0.24).isGreaterThan(0.19);
    }

    @ParameterizedTest
    @EnumSource(WaterClass.class)
    void regainRisesFromNothingWithoutACorner(WaterClass cloth) {
        assertThat(cloth.regain(0)).isCloseTo(0, within(1e-15));
        double most = cloth.regain(1);
        double before = 0;
        double slopeBefore = Double.NaN;
        double h = 1e-3;
        for (int i = 1; i <= 1000; i++) {
            double here = cloth.regain(i * h);
            assertThat(here).isGreaterThan(before);
            double slope = (here - before) / h;
            if (i > 1) {
                // Steepest true bend of the capped curves is below 2 cap per 0.01 of humidity.
                assertThat(Math.abs(slope - slopeBefore)).isLessThan(1.0 * most);
            }
            before = here;
            slopeBefore = slope;
        }
        assertThat(cloth.regain(1.2)).isEqualTo(most);
        assertThat(cloth.regain(-0.1)).isCloseTo(0, within(1e-15));
    }

    /** What the time loop reads from tables is the law itself. */
    @ParameterizedTest
    @CsvSource({"WOOL, 0.15, 0.33", "POLYESTER_KNIT, 0.004, 0.01", "COTTON, 0.075, 0.24"})
    void tablesFollowTheLaw(WaterClass cloth, double regain65, double cap) {
        for (double humidity = 0; humidity <= 1; humidity += 1.0 / 7919) {
            assertThat(cloth.regain(humidity)).isCloseTo(Sorption.regain(humidity, regain65, cap), within(1e-7 * cap));
            assertThat(cloth.regainSlope(humidity))
                    .isCloseTo(Sorption.regainSlope(humidity, regain65, cap), within(2e-4 * cap));
        }
    }

    /** Worked value: 2.51e5 J/kg at 65 %, printed to three figures. */
    @Test
    void heatOfBinding() {
        assertThat(Sorption.heat(0.65)).isCloseTo(2.51e5, within(0.005e5));
        assertThat(Sorption.heat(1)).isZero();
        assertThat(Sorption.heat(0)).isCloseTo(1.95e5 * (5 + 1 / 1.05), within(1.0));
    }

    @Test
    void wayToBalance() {
        assertThat(Sorption.share(1200, 1200)).isCloseTo(1 - 1 / Math.E, within(1e-12));
        double half = Sorption.share(30, 1200);
        assertThat(1 - Sorption.share(60, 1200)).isCloseTo((1 - half) * (1 - half), within(1e-12));
    }
}
