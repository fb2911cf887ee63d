package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sunrise and sunset. */
class NoaaSunTimesTest {

    static Stream<Row> sunrises() {
        return EnvironmentOracles.of("sunrise_min_after_midnight", "sunrise_almanac");
    }

    @ParameterizedTest
    @MethodSource("sunrises")
    void sunrises_as_given(Row row) {
        row.check(sun(row).sunrise());
    }

    static Stream<Row> sunsets() {
        return EnvironmentOracles.of("sunset_min_after_midnight", "sunset_almanac");
    }

    @ParameterizedTest
    @MethodSource("sunsets")
    void sunsets_as_given(Row row) {
        row.check(sun(row).sunset());
    }

    static Stream<Row> polarNights() {
        return EnvironmentOracles.of("polar_night");
    }

    @ParameterizedTest
    @MethodSource("polarNights")
    void polarNights_as_given(Row row) {
        assertThat(sun(row).course()).isEqualTo(SunTimes.Course.NEVER_RISES);
        assertThat(sun(row).sunrise()).isNaN();
    }

    private static SunTimes sun(Row row) {
        String[] date = row.inputs().get("date").split("-");
        return SunTimes.of(
                Integer.parseInt(date[0]),
                Integer.parseInt(date[1]),
                Integer.parseInt(date[2]),
                row.in("lat"),
                row.in("lon"),
                row.in("utc_offset_h"));
    }

    @Test
    void midnight_sun_is_its_own_case() {
        assertThat(SunTimes.of(2023, 6, 21, 69.6492, 18.9553, 1).course()).isEqualTo(SunTimes.Course.NEVER_SETS);
    }
}
