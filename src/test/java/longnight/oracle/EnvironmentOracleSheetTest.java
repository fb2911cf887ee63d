package longnight.oracle;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** No row may go missing, and only observations and cases without a number may lack a tolerance. */
class EnvironmentOracleSheetTest {

    @Test
    void rows_by_kind() {
        assertThat(EnvironmentOracles.all().stream().collect(groupingBy(EnvironmentOracles.Row::kind, counting())))
                .isEqualTo(Map.of("published", 62L, "reference-calculation", 246L, "observed", 18L, "property", 1L));
        assertThat(EnvironmentOracles.all().stream()
                        .map(EnvironmentOracles.Row::id)
                        .distinct())
                .hasSize(327);
    }

    @Test
    void tolerances_are_stated() {
        assertThat(EnvironmentOracles.all().stream()
                        .filter(row -> Double.isNaN(row.absolute()) && Double.isNaN(row.relative()))
                        .map(EnvironmentOracles.Row::quantity)
                        .distinct())
                .containsExactlyInAnyOrder(
                        "frostnip_minutes_observed",
                        "frostnip_percent_of_subjects_45min",
                        "sky_temperature_range_clear",
                        "polar_night");
    }
}
