package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bare-face warnings: published formula, bands and observations. */
class FaceFreezingTest {

    static Stream<Row> formula() {
        return EnvironmentOracles.of("frostbite_minutes_5pct");
    }

    @ParameterizedTest
    @MethodSource("formula")
    void formula_as_given(Row row) {
        row.check(FaceFreezing.susceptibleMinutes(row.in("t_c"), row.in("v10_kmh")));
    }

    static Stream<Row> cheeks() {
        return EnvironmentOracles.of("cheek_steady_temp");
    }

    @ParameterizedTest
    @MethodSource("cheeks")
    void cheeks_as_given(Row row) {
        row.check(FaceFreezing.cheekRegression(row.in("t_c"), row.in("v10_kmh")));
    }

    static Stream<Row> bands() {
        return EnvironmentOracles.of("frostbite_band_minutes");
    }

    @ParameterizedTest
    @MethodSource("bands")
    void bands_as_given(Row row) {
        double[] band = FaceFreezing.bandMinutes((int) row.in("wct_c"));
        if (row.expected().equals("none")) {
            assertThat(band).containsOnly(Double.NaN);
        } else {
            String[] expected = row.expected().split(" ");
            assertThat(band).containsExactly(Double.parseDouble(expected[0]), Double.parseDouble(expected[1]));
        }
    }

    static Stream<Row> observedMinutes() {
        return EnvironmentOracles.of("frostnip_minutes_observed");
    }

    @ParameterizedTest
    @MethodSource("observedMinutes")
    void observedMinutes_as_given(Row row) {
        // An observation has no tolerance; a warning may be late by a factor 2 at most, the scatter between people.
        double warning = FaceFreezing.warningMinutes(row.in("t_c"), row.in("v_kmh") / 3.6);
        assertThat(warning).isPositive().isLessThanOrEqualTo(2 * row.value());
    }

    static Stream<Row> observedShares() {
        return EnvironmentOracles.of("frostnip_percent_of_subjects_45min");
    }

    @ParameterizedTest
    @MethodSource("observedShares")
    void observedShares_as_given(Row row) {
        // Where at least half of 12 people froze in moving air, a number must be given.
        double warning = FaceFreezing.warningMinutes(row.in("t_c"), row.in("v_kmh") / 3.6);
        if (row.value() >= 50 && row.in("v_kmh") > 0) {
            assertThat(warning).isLessThanOrEqualTo(45);
        }
        if (row.value() == 0 && row.in("t_c") > -15) {
            assertThat(warning).isNaN();
        }
        if (row.in("v_kmh") == 0 && row.value() > 20) {
            assertThat(warning).isPositive();
        }
    }

    @Test
    void no_number_in_mild_cold_and_never_a_longer_time_for_worse_weather() {
        assertThat(FaceFreezing.warningMinutes(-9, 25)).isNaN();
        assertThat(FaceFreezing.warningMinutes(-20, 0)).isNaN();
        for (double v = 0; v < 60; v += 1.5) {
            double before = Double.POSITIVE_INFINITY;
            for (double t = -10; t >= -60; t -= 0.5) {
                double now = FaceFreezing.warningMinutes(t, v);
                if (!Double.isNaN(now)) {
                    assertThat(now).isLessThanOrEqualTo(before).isGreaterThanOrEqualTo(1);
                    before = now;
                } else {
                    assertThat(before).isInfinite();
                }
            }
        }
    }
}
