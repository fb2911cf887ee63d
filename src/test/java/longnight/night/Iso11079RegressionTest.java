package longnight.night;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import longnight.clothing.Oracles;
import longnight.night.Iso11079.Balance;
import longnight.night.Iso11079.Conditions;
import longnight.night.Iso11079.Criterion;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Worked values of the ISO 11079:2007 equations, computed once with another program: they catch slips of coding only. */
class Iso11079RegressionTest {

    @TestFactory
    Stream<DynamicTest> saturation() {
        return Oracles.of("PSATISO-")
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    double expected = row.path("expected").path("p_kPa").asDouble();
                    // The printed value carries four decimals; half a digit of it is added to the stated tolerance.
                    assertThat(Iso11079.saturation(
                                    row.path("inputs").path("t_C").asDouble()))
                            .isCloseTo(expected, within(Oracles.tolerance(row, expected) + 5e-5));
                }));
    }

    @TestFactory
    Stream<DynamicTest> requiredInsulation() {
        return Oracles.of("IREQ-")
                .filter(row -> row.path("expected").has("IREQmin_m2K_W"))
                .map(row -> dynamicTest(Oracles.name(row), () -> {
                    JsonNode expected = row.path("expected");
                    Conditions at = conditions(row.path("inputs"));
                    assertThat(Iso11079.required(Criterion.MINIMAL, at))
                            .isCloseTo(expected.path("IREQmin_m2K_W").asDouble(), within(Oracles.tolerance(row, 0)));
                    assertThat(Iso11079.required(Criterion.NEUTRAL, at))
                            .isCloseTo(
                                    expected.path("IREQneutral_m2K_W").asDouble(), within(Oracles.tolerance(row, 0)));
                }));
    }

    @Test
    void oneBalanceStepByStep() {
        JsonNode row = Oracles.one("IREQ-STEP-90");
        JsonNode expected = row.path("expected");
        Conditions at = conditions(row.path("inputs"));
        double insulation = row.path("inputs").path("I_clr_m2K_W").asDouble();
        Balance balance = Iso11079.balance(Criterion.NEUTRAL, at, insulation);
        check(row, "tsk_C", balance.skin());
        check(row, "E_W_m2", balance.evaporation());
        check(row, "Hres_W_m2", balance.respiration());
        check(row, "fcl", balance.areaFactor());
        check(row, "Iar", balance.boundaryLayer());
        check(row, "tcl_C", balance.surface());
        check(row, "RplusC_W_m2", balance.dry());
        check(row, "S_W_m2", balance.storage());
        check(row, "Dlim_h", Iso11079.exposure(Criterion.NEUTRAL, at, insulation));
        assertThat(expected.size()).isEqualTo(9);
    }

    @Test
    void moreInsulationIsNeverRequiredInWarmerAir() {
        for (Criterion criterion : Criterion.values()) {
            double before = Double.POSITIVE_INFINITY;
            for (double air = -40; air <= 10; air += 2) {
                double required = Iso11079.required(criterion, new Conditions(70, air, air, 0.4, 0, 0.5));
                assertThat(required).isLessThan(before);
                before = required;
            }
        }
    }

    @Test
    void aColderSkyAsksForMore() {
        double even = Iso11079.required(Criterion.MINIMAL, new Conditions(70, -10, -10, 0.4, 0, 0.5));
        double clear = Iso11079.required(Criterion.MINIMAL, new Conditions(70, -10, -25, 0.4, 0, 0.5));
        assertThat(clear).isGreaterThan(even * 1.01);
    }

    @Test
    void basicAndResultantAreInverse() {
        for (double basic : new double[] {0.1, 0.3, 0.5}) {
            double resultant = Iso11079.resultant(basic, 8, 3, 0.2);
            assertThat(Iso11079.basic(resultant, 8, 3, 0.2)).isCloseTo(basic, within(1e-9));
            double total = basic + 0.085 / Iso11079.areaFactor(basic);
            assertThat(Iso11079.basicFromTotal(total)).isCloseTo(basic, within(1e-9));
        }
    }

    private static void check(JsonNode row, String name, double value) {
        double expected = row.path("expected").path(name).asDouble();
        assertThat(value).as(name).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
    }

    private static Conditions conditions(JsonNode in) {
        double air = in.path("ta_C").asDouble();
        return new Conditions(
                in.path("M_W_m2").asDouble(),
                air,
                air,
                in.path("v_m_s").asDouble(),
                in.path("w_m_s").asDouble(),
                in.path("rh_pct").asDouble() / 100);
    }
}
