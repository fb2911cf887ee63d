package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rain through an upright plane; phase and wet bulb. */
class Lacy1965DrivingRainTest {

    static Stream<Row> rain() {
        return EnvironmentOracles.of("driving_rain_mm_h");
    }

    @ParameterizedTest
    @MethodSource("rain")
    void rain_as_given(Row row) {
        row.check(Rain.driving(row.in("rain_mm_h"), row.in("v_ms")));
    }

    /** Stull 2011: 20 degC and 50 % give 13.7 degC in the paper. */
    @Test
    void stull_2011_wet_bulb() {
        assertThat(Rain.wetBulb(20, 0.5)).isCloseTo(13.7, within(0.05));
    }

    /** Jennings et al. 2018: half of it snow at 0.7, 1.4 and 3.3 degC with 100, 90 and 60 %; printed to 0.1 degC. */
    @Test
    void jennings_2018_phase() {
        double[][] rows = {{0.7, 1}, {1.4, 0.9}, {3.3, 0.6}};
        for (double[] row : rows) {
            assertThat(Rain.snowProbability(row[0] - 0.06, row[1])).isGreaterThan(0.5);
            assertThat(Rain.snowProbability(row[0] + 0.06, row[1])).isLessThan(0.5);
        }
    }
}
