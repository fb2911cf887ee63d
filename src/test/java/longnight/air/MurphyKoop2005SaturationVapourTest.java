package longnight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Saturation over water and ice against the paper's own check values and against its formula computed elsewhere. */
class MurphyKoop2005SaturationVapourTest {

    static Stream<Row> water() {
        return EnvironmentOracles.of("es_water");
    }

    @ParameterizedTest
    @MethodSource("water")
    void water_as_given(Row row) {
        row.check(SaturationVapour.overWater(row.kelvin()));
    }

    static Stream<Row> ice() {
        return EnvironmentOracles.of("es_ice");
    }

    @ParameterizedTest
    @MethodSource("ice")
    void ice_as_given(Row row) {
        row.check(SaturationVapour.overIce(row.kelvin()));
    }

    /** The slopes against central differences: step 0.01 K leaves an error of about 1e-8 of the value. */
    @Test
    void slopes_are_the_derivatives() {
        for (double t = 200; t < 310; t += 3.7) {
            double water = (SaturationVapour.overWater(t + 0.01) - SaturationVapour.overWater(t - 0.01)) / 0.02;
            double ice = (SaturationVapour.overIce(t + 0.01) - SaturationVapour.overIce(t - 0.01)) / 0.02;
            assertThat(SaturationVapour.overWaterSlope(t) / water).isCloseTo(1, within(1e-6));
            assertThat(SaturationVapour.overIceSlope(t) / ice).isCloseTo(1, within(1e-6));
        }
    }

    /** Buck 1996 (research manual): a rival by another author; 0.35 % apart at -40 degC over water, less above. */
    @Test
    void buck_1996_agrees() {
        for (double c = -40; c <= 30; c += 5) {
            double water = 611.21 * Math.exp((18.678 - c / 234.5) * c / (257.14 + c));
            double ice = 611.15 * Math.exp((23.036 - c / 333.7) * c / (279.82 + c));
            assertThat(SaturationVapour.overWater(c + 273.15) / water).isCloseTo(1, within(0.004));
            if (c <= 0) {
                assertThat(SaturationVapour.overIce(c + 273.15) / ice).isCloseTo(1, within(0.0005));
            }
        }
    }

    /** Sonntag 1994, Meteorol Z 3:51, over ice: within 0.1 % down to -50 degC. */
    @Test
    void sonntag_1994_agrees_over_ice() {
        for (double t = 223.15; t <= 273.15; t += 5) {
            double ice = Math.exp(
                    -6024.5282 / t + 29.32707 + 1.0613868e-2 * t - 1.3198825e-5 * t * t - 0.49382577 * Math.log(t));
            assertThat(SaturationVapour.overIce(t) / ice).isCloseTo(1, within(0.001));
        }
    }
}
