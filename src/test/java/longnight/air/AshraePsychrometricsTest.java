package longnight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Dew point, frost point and humidity ratio. */
class AshraePsychrometricsTest {

    static Stream<Row> dewPoints() {
        return EnvironmentOracles.of("dew_point");
    }

    @ParameterizedTest
    @MethodSource("dewPoints")
    void dewPoints_as_given(Row row) {
        row.check(Temperature.celsius(Humidity.dewPoint(vapour(row))));
    }

    static Stream<Row> frostPoints() {
        return EnvironmentOracles.of("frost_point");
    }

    @ParameterizedTest
    @MethodSource("frostPoints")
    void frostPoints_as_given(Row row) {
        row.check(Temperature.celsius(Humidity.frostPoint(vapour(row))));
    }

    static Stream<Row> ratios() {
        return EnvironmentOracles.of("humidity_ratio_101325");
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void ratios_as_given(Row row) {
        row.check(Humidity.humidityRatio(vapour(row), 101325));
    }

    private static double vapour(Row row) {
        return row.in("rh_water") * SaturationVapour.overWater(row.kelvin());
    }

    /** Weather reports give humidity over water: full over ice is 82 % over water at -20 degC, and 80 % at -30 is too much. */
    @Test
    void vapour_stops_at_saturation_over_ice() {
        double[][] saturated = {{-5, 0.95}, {-10, 0.91}, {-20, 0.82}, {-30, 0.75}, {-40, 0.68}};
        for (double[] row : saturated) {
            double t = Temperature.kelvin(row[0]);
            assertThat(SaturationVapour.overIce(t) / SaturationVapour.overWater(t))
                    .isCloseTo(row[1], within(0.005));
            assertThat(Humidity.vapourPressure(t, 1)).isEqualTo(SaturationVapour.overIce(t));
        }
        double cold = Temperature.kelvin(-30);
        assertThat(Humidity.vapourPressure(cold, 0.8)).isEqualTo(SaturationVapour.overIce(cold));
        double mild = Temperature.kelvin(5);
        assertThat(Humidity.vapourPressure(mild, 0.7)).isEqualTo(0.7 * SaturationVapour.overWater(mild));
    }

    @Test
    void dew_and_frost_points_invert_saturation() {
        for (double t = 200; t < 310; t += 7.3) {
            assertThat(Humidity.dewPoint(SaturationVapour.overWater(t))).isCloseTo(t, within(1e-7));
            assertThat(Humidity.frostPoint(SaturationVapour.overIce(t))).isCloseTo(t, within(1e-7));
        }
    }

    @Test
    void no_vapour_has_no_dew_point() {
        assertThatIllegalArgumentException().isThrownBy(() -> Humidity.dewPoint(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Humidity.frostPoint(Double.NaN));
    }
}
