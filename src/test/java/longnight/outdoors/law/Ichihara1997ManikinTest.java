package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Natural and turbulent forced convection of a manikin, segment by segment. */
class Ichihara1997ManikinTest {

    static Stream<Row> natural() {
        return EnvironmentOracles.of("hc_natural");
    }

    @ParameterizedTest
    @MethodSource("natural")
    void natural_as_given(Row row) {
        Posture posture = row.inputs().get("posture").equals("standing") ? Posture.STANDING : Posture.CHAIR;
        row.check(Convection.naturalPrinted(posture, segment(row), 10));
        row.check(Convection.natural(posture, segment(row), 10));
    }

    static Stream<Row> forced() {
        return EnvironmentOracles.of("hc_forced_high_turbulence");
    }

    @ParameterizedTest
    @MethodSource("forced")
    void forced_as_given(Row row) {
        row.check(PublishedFilms.ichihara1997(segment(row), row.in("v_ms")));
    }

    private static BodySegment segment(Row row) {
        String name = row.inputs().get("segment");
        return switch (name) {
            case "neck" -> BodySegment.HEAD;
            case "leg" -> BodySegment.CALF;
            default -> BodySegment.valueOf(name.toUpperCase(Locale.ROOT));
        };
    }

    /** Kurazumi et al. 2008 print a forearm that gives 26 at 20 K: capped; and small differences keep a floor. */
    @Test
    void lying_values_stay_between_floor_and_cap() {
        assertThat(Convection.naturalPrinted(Posture.LYING_SUPINE, BodySegment.FOREARM, 20))
                .isCloseTo(26.5, within(0.5));
        for (BodySegment segment : BodySegment.values()) {
            double still = Convection.natural(Posture.LYING_SUPINE, segment, 0);
            double before = still;
            assertThat(still).isPositive();
            for (double dt = 0.5; dt < 60; dt += 0.5) {
                double h = Convection.natural(Posture.LYING_SUPINE, segment, dt);
                assertThat(h).isBetween(before, 8.0).isEqualTo(Convection.natural(Posture.LYING_SUPINE, segment, -dt));
                before = h;
            }
        }
    }

    @Test
    void standing_and_sitting_scale_with_the_fourth_root_down_to_half() {
        for (Posture posture : new Posture[] {Posture.STANDING, Posture.SITTING_KNEES_UP}) {
            for (BodySegment segment : BodySegment.values()) {
                double ten = Convection.natural(posture, segment, 10);
                assertThat(Convection.natural(posture, segment, 0)).isEqualTo(0.5 * ten);
                assertThat(Convection.natural(posture, segment, 0.5)).isEqualTo(0.5 * ten);
                assertThat(Convection.natural(posture, segment, 40)).isCloseTo(ten * Math.sqrt(2), within(1e-12));
            }
        }
    }

    /** Churchill's blend: 3.5 with 10 gives 10.14; without wind what is natural remains. */
    @Test
    void wind_adds_to_still_air_by_third_powers() {
        assertThat(Convection.mixed(3.5, 10)).isCloseTo(10.14, within(0.005));
        assertThat(Convection.mixed(3.5, 0)).isCloseTo(3.5, within(1e-15));
    }
}
