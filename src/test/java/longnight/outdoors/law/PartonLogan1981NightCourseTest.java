package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Temperature through the night by Parton and Logan 1981 and by Goudriaan and van Laar 1994. */
class PartonLogan1981NightCourseTest {

    static Stream<Row> exponential() {
        return EnvironmentOracles.of("night_temp_parton_logan");
    }

    @ParameterizedTest
    @MethodSource("exponential")
    void exponential_as_given(Row row) {
        row.check(NightCourse.nightPartonLogan(
                row.in("t_sunset_c"), row.in("t_min_c"), row.in("h_after_sunset"), row.in("night_h"), row.in("b")));
    }

    static Stream<Row> normalised() {
        return EnvironmentOracles.of("night_temp_normalised_exp");
    }

    @ParameterizedTest
    @MethodSource("normalised")
    void normalised_as_given(Row row) {
        row.check(NightCourse.night(
                row.in("t_sunset_c"), row.in("t_min_c"), row.in("h_after_sunset"), row.in("night_h"), row.in("tau_h")));
    }

    @Test
    void the_default_reaches_the_minimum_and_is_the_colder_one() {
        assertThat(NightCourse.night(0, -10, 0, 14, 4)).isCloseTo(0, within(1e-12));
        assertThat(NightCourse.night(0, -10, 14, 14, 4)).isCloseTo(-10, within(1e-12));
        assertThat(NightCourse.nightPartonLogan(0, -10, 14, 14, 2.2)).isCloseTo(-8.89, within(0.005));
        for (double n = 0.5; n <= 14; n += 0.5) {
            assertThat(NightCourse.night(0, -10, n, 14, 4))
                    .isLessThan(NightCourse.nightPartonLogan(0, -10, n, 14, 2.2));
        }
    }

    /** Sunset of a ten-hour day: the half sine stands at 0.726 of the range; the rounded 0.73 is used. */
    @Test
    void sunset_from_minimum_and_range() {
        double share = NightCourse.day(0, 1, 10 - NightCourse.LAG_AFTER_SUNRISE, 10);
        assertThat(share).isCloseTo(0.726, within(0.005));
        assertThat(NightCourse.sunsetFromRange(-10, 10)).isCloseTo(-2.7, within(1e-12));
    }

    /** Brunt's ceiling after 12 h of 60 W/m2: 9, 23 and 69 K on wet soil, dry soil and fresh snow. */
    @Test
    void brunt_1932_ceiling() {
        double[][] rows = {{1500, 9}, {600, 23}, {205, 69}};
        for (double[] row : rows) {
            assertThat(NightCourse.bruntCooling(60, 12 * 3600, row[0])).isCloseTo(row[1], within(0.75));
        }
    }
}
