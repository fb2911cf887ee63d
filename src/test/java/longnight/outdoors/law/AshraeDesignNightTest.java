package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Return levels of the annual minimum. */
class AshraeDesignNightTest {

    static Stream<Row> levels() {
        return EnvironmentOracles.of("annual_min_return_level");
    }

    @ParameterizedTest
    @MethodSource("levels")
    void levels_as_given(Row row) {
        row.check(DesignNight.annualMinimum(row.in("mean_c"), row.in("sd_c"), row.in("n_years")));
    }

    /** Gumbel factors for 2 to 100 years, printed to 0.001. */
    @Test
    void frequency_factors() {
        double[][] rows = {{2, -0.164}, {5, 0.720}, {10, 1.305}, {20, 1.866}, {50, 2.592}, {100, 3.137}};
        for (double[] row : rows) {
            assertThat(DesignNight.frequencyFactor(row[0])).isCloseTo(row[1], within(0.0006));
        }
    }
}
