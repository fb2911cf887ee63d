package longnight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Heat of vaporisation and sublimation; fusion as their difference. */
class MurphyKoop2005LatentHeatTest {

    static Stream<Row> sublimations() {
        return EnvironmentOracles.of("latent_sublimation");
    }

    @ParameterizedTest
    @MethodSource("sublimations")
    void sublimations_as_given(Row row) {
        row.check(LatentHeat.sublimation(row.kelvin()));
    }

    static Stream<Row> vaporisations() {
        return EnvironmentOracles.of("latent_vaporisation");
    }

    @ParameterizedTest
    @MethodSource("vaporisations")
    void vaporisations_as_given(Row row) {
        row.check(LatentHeat.vaporisation(row.kelvin()));
    }

    /** Rogers and Yau 1989: polynomials by another author, 0.02 % apart between -30 and 30 degC by their own rounding; fusion 333.5 kJ/kg. */
    @Test
    void rogers_yau_1989_agrees() {
        for (double c = -25; c <= 30; c += 5) {
            double v = 1e3 * (2500.8 - 2.36 * c + 0.0016 * c * c - 0.00006 * c * c * c);
            assertThat(LatentHeat.vaporisation(c + 273.15) / v).isCloseTo(1, within(5e-4));
        }
        for (double c = -40; c <= 0; c += 5) {
            double s = 1e3 * (2834.1 - 0.29 * c - 0.004 * c * c);
            assertThat(LatentHeat.sublimation(c + 273.15) / s).isCloseTo(1, within(5e-4));
        }
        assertThat(LatentHeat.fusion(273.15)).isCloseTo(333.5e3, within(0.3e3));
    }
}
