package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import longnight.clothing.Oracles;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Worked values of the dry laws, computed once with another program: they catch slips of coding, not wrong science. */
class ComputedRegressionTest {
    private static final double IN3_PER_OZ = 5.78037e-4;

    @TestFactory
    Stream<DynamicTest> windCorrectionsOfIso9920() {
        return Oracles.of("ISO9920-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    double v = row.path("inputs").path("var_m_s").asDouble();
                    double w = row.path("inputs").path("w_m_s").asDouble();
                    check(row, "corrIT", WindRatio.clothed(v, w));
                    check(row, "corrIa", WindRatio.bare(v, w));
                    check(row, "corrRe", WindRatio.vapour(v, w));
                }));
    }

    @TestFactory
    Stream<DynamicTest> windCorrectionsOfThickClothing() {
        return Oracles.of("IT-P-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    JsonNode in = row.path("inputs");
                    double v = in.path("v_m_s").asDouble();
                    double p = in.path("p_L_m2_s").asDouble();
                    check(
                            row,
                            "ratio_iso11079",
                            WindRatio.of(v, p, in.path("w_m_s").asDouble(), 0.5));
                    check(
                            row,
                            "ratio_havenith_nilsson",
                            WindRatio.havenithNilsson(v, in.path("w_m_s").asDouble(), p));
                }));
    }

    @TestFactory
    Stream<DynamicTest> downByFillPower() {
        return Oracles.of("DOWN-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    JsonNode in = row.path("inputs");
                    double density = Loft.downDensity(
                            in.path("fill_power").asDouble() * IN3_PER_OZ,
                            in.path("overfill").asDouble());
                    check(row, "rho_kg_m3", density);
                    check(
                            row,
                            "R_per_areal_mass",
                            Loft.resistance(1, density, in.path("C").asDouble(), 1));
                }));
    }

    @TestFactory
    Stream<DynamicTest> squeezedFills() {
        return Oracles.of("COMP-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    double pressure = row.path("inputs").path("P_Pa").asDouble();
                    double down = Loft.downDensity(850 * IN3_PER_OZ, 1);
                    check(row, "down850_R_ratio", kept(down, Loft.compressionConstant(14.7, down), 0.06, pressure));
                    check(row, "batt_rho9_C015_R_ratio", kept(9, Loft.compressionConstant(15, 9), 0.15, pressure));
                }));
    }

    private static double kept(double density, double constant, double radiation, double pressure) {
        return Loft.resistance(1, Loft.squeezed(density, constant, pressure), radiation, 1)
                / Loft.resistance(1, density, radiation, 1);
    }

    @Test
    void trunkStackByTheLawsAlone() {
        JsonNode row = Oracles.one("EX-TRUNK");
        double[][] layers = {
            {0.0014, 0.032},
            {0.0005, AirGap.resistance(0.0005)},
            {0.004, 0.095},
            {0.003, AirGap.resistance(0.003)},
            {0.1 / 9, Loft.resistance(0.1, 9, 0.15, 0.9)},
            {0.003, AirGap.resistance(0.003)},
            {0.0005, 0.010}
        };
        CurvedStack stack = new CurvedStack(0.150, false);
        double flat = 0;
        double curved = 0;
        for (double[] layer : layers) {
            flat += layer[1];
            curved += layer[1] * stack.add(layer[0]);
        }
        double total = curved + 0.085 / stack.growth();
        check(row, "flat_sum", flat);
        check(row, "curved_sum", curved);
        check(row, "f", stack.growth());
        check(row, "RT_static", total);
        JsonNode wind = row.path("inputs").path("wind");
        for (int i = 0; i < wind.size(); i++) {
            double expected = row.path("expected").path("RT_wind").path(i).asDouble();
            double ratio = WindRatio.of(
                    wind.path(i).path(0).asDouble(), wind.path(i).path(1).asDouble(), 0, curved);
            assertThat(total * ratio).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
        }
    }

    /** Notes C-13, C-14, C-24, C-16 of the science sheet; last digit printed there. */
    @Test
    void smallWorkedValues() {
        CurvedStack arm = new CurvedStack(0.050, false);
        assertThat(0.030 / 0.045 * arm.add(0.030)).isCloseTo(0.522, within(0.001));
        assertThat(arm.growth()).isCloseTo(1.60, within(0.001));
        CurvedStack finger = new CurvedStack(0.009, false);
        assertThat(0.010 / 0.045 * finger.add(0.010)).isCloseTo(0.149, within(0.001));
        assertThat(finger.growth()).isCloseTo(2.11, within(0.005));
        double[][] gaps = {{1, 0.034}, {2, 0.060}, {3, 0.080}, {5, 0.108}, {8, 0.136}, {10, 0.149}, {12, 0.159}};
        for (double[] gap : gaps) {
            assertThat(AirGap.resistance(gap[0] / 1000)).isCloseTo(gap[1], within(0.0006));
        }
        assertThat(WholeBody.garment(0.003, 0.45) / WholeBody.CLO).isCloseTo(0.368, within(0.0006));
        assertThat(WholeBody.ceiling(0.7, 0.45)).isCloseTo(0.57, within(0.005));
        assertThat(WholeBody.ceiling(0.7, 0.50)).isCloseTo(0.70, within(0.005));
    }

    private static void check(JsonNode row, String name, double value) {
        double expected = row.path("expected").path(name).asDouble();
        assertThat(value).as(name).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
    }
}
