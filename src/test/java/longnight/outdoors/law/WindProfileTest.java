package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The neutral logarithmic law. */
class WindProfileTest {

    static Stream<Row> ratios() {
        return EnvironmentOracles.of("wind_ratio_log");
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void ratios_as_given(Row row) {
        row.check(WindProfile.factor(row.in("z_m"), row.in("z0_m")));
    }

    /** The wind chill index of 2001 takes 2/3 from 10 m to 1.5 m: the law at 0.03 m roughness gives 0.673. */
    @Test
    void index_of_2001_uses_two_thirds() {
        assertThat(WindProfile.factor(1.5, 0.03)).isCloseTo(2.0 / 3, within(0.01));
    }

    @Test
    void wind_rises_with_height_and_never_stops() {
        for (double z0 : new double[] {1e-4, 0.005, 0.25, 2}) {
            double before = 0;
            for (double z = 0.01; z <= 10; z *= 1.5) {
                double f = WindProfile.factor(z, z0);
                assertThat(f).isPositive().isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(1);
                before = f;
            }
        }
    }
}
