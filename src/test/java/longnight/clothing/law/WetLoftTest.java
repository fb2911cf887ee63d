package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dry resistance left in wet fills. The values were worked out once from the same engineering estimates (note C-74): they
 * catch slips of coding, and say nothing of real fills, for which no measurement was found.
 */
class WetLoftTest {
    private static final WetLoft.Constants NOMINAL = new WetLoft.Constants(0.45, 0.3, 0.3);

    /**
     * Printed to 0.01, so held to half of that. The densities behind the printed values were not stated: short staple and
     * active batt return them at their nominal 9 and 12 kg/m3; for down one density was fitted to the six values of both
     * kinds (2.48, between fill power and overfill of a jacket), for continuous filament one to its three (8.4).
     */
    @ParameterizedTest
    @CsvSource({
        "0.15, 0.5, 2.48, 0.06, 0.75, 0.37, 0.19",
        "0.30, 1.2, 2.48, 0.06, 0.91, 0.72, 0.52",
        "0.65, 1.5, 9, 0.15, 0.93, 0.79, 0.64",
        "0.75, 2.0, 8.4, 0.22, 0.96, 0.87, 0.77",
        "0.75, 2.0, 12, 0.18, 0.94, 0.81, 0.67",
    })
    void workedShares(
            double least, double range, double density, double radiation, double damp, double wet, double soaked) {
        WetLoft fill = WetLoft.fill(least, range, density, radiation, NOMINAL);
        assertThat(fill.resistance(0.3, 0)).isCloseTo(damp, within(0.0051));
        assertThat(fill.resistance(1, 0)).isCloseTo(wet, within(0.0051));
        assertThat(fill.resistance(2, 0)).isCloseTo(soaked, within(0.0051));
    }

    /** Misfit: at its nominal 8 kg/m3 continuous filament comes out 0.010 and 0.009 above the printed 0.87 and 0.77. */
    @Test
    void continuousFilamentAtItsNominalDensity() {
        WetLoft fill = WetLoft.fill(0.75, 2.0, 8, 0.22, NOMINAL);
        assertThat(fill.resistance(1, 0) - 0.87).isCloseTo(0.010, within(5e-4));
        assertThat(fill.resistance(2, 0) - 0.77).isCloseTo(0.009, within(5e-4));
    }

    /** Dry is exactly dry; more water never warms; ice costs less loft than the same liquid. */
    @Test
    void orders() {
        WetLoft down = WetLoft.fill(0.15, 0.5, 2.6, 0.06, NOMINAL);
        WetLoft treated = WetLoft.fill(0.30, 1.2, 2.6, 0.06, NOMINAL);
        WetLoft batt = WetLoft.fill(0.75, 2, 8, 0.22, NOMINAL);
        assertThat(down.resistance(0, 0)).isEqualTo(1);
        assertThat(down.loft(0, 0)).isEqualTo(1);
        double before = 1;
        for (double x = 0.05; x < 5; x += 0.05) {
            double here = down.resistance(x, 0);
            assertThat(here).isPositive().isLessThan(before);
            assertThat(treated.resistance(x, 0)).isGreaterThan(here);
            assertThat(batt.resistance(x, 0)).isGreaterThan(treated.resistance(x, 0));
            assertThat(down.resistance(0, x)).isGreaterThan(here);
            assertThat(down.resistance(down.loft(x, 0.1), x, 0.1)).isEqualTo(down.resistance(x, 0.1));
            before = here;
        }
    }

    /** The trade's "more than 90 % kept when wet" holds for a damp batt up to 0.3 water per mass, not for a soaked one. */
    @Test
    void ninetyPercentClaim() {
        WetLoft batt = WetLoft.fill(0.65, 1.5, 9, 0.15, NOMINAL);
        assertThat(batt.resistance(0.3, 0)).isGreaterThan(0.9);
        assertThat(batt.resistance(2, 0)).isLessThan(0.7);
    }

    /** A thin cloth at constant thickness: resistances add as 1/R = k/d, k = k_dry + 0.45 times the share of water. */
    @Test
    void thinClothConductsByItsWater() {
        WetLoft cloth = WetLoft.cloth(1, 1, 0.13, 0.0008, 0.018, NOMINAL);
        double theta = 0.13 * 1.5 / (1000 * 0.0008);
        double wet = 0.0008 / (0.0008 / 0.018 + 0.45 * theta);
        assertThat(cloth.resistance(1.5, 0) * 0.018).isCloseTo(wet, within(1e-12));
        double frost = 0.0008 / (0.0008 / 0.018 + 0.45 * 0.9 * theta);
        assertThat(cloth.resistance(0, 1.5) * 0.018).isCloseTo(frost, within(1e-12));
    }

    /** The law itself, max(0.4, exp(-X/0.3)), within the rounding of its corner. */
    @Test
    void gapsClose() {
        assertThat(WetLoft.cling(0, 0.4, 0.3)).isEqualTo(1);
        double before = 1;
        for (double x = 0.01; x < 4; x += 0.01) {
            double here = WetLoft.cling(x, 0.4, 0.3);
            assertThat(here).isLessThan(before).isGreaterThan(0.4 - 1e-3);
            // Half the rounding at the corner, 0.025.
            assertThat(here).isCloseTo(Math.max(0.4, Math.exp(-x / 0.3)), within(0.0251));
            before = here;
        }
        assertThat(before).isCloseTo(0.4, within(1e-3));
    }
}
