package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longnight.figure.BodySegment;
import longnight.figure.Posture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What of the rain meets a person: projected areas of ISO 7726, driving rain of Lacy 1965; snow by its fall speed. */
class Iso7726PrecipitationCatchTest {
    private static final double BODY = 1.8;

    /** Worked values for 1.8 m2, 5 mm/h and 4 m/s, printed to 0.01 kg/h; areas to 0.001 m2. */
    @ParameterizedTest
    @CsvSource({"STANDING, 0.104, 0.457, 0.52, 1.67, 2.19", "CHAIR, 0.227, 0.378, 1.14, 1.38, 2.52"})
    void workedCatch(Posture posture, double upArea, double sideArea, double up, double side, double total) {
        double driving = Precipitation.driving(5, 0, 8, 4);
        assertThat(BODY * Precipitation.up(posture)).isCloseTo(upArea, within(5.1e-4));
        assertThat(BODY * Precipitation.side(posture)).isCloseTo(sideArea, within(5.1e-4));
        assertThat(BODY * Precipitation.up(posture) * 5).isCloseTo(up, within(0.0101));
        assertThat(BODY * Precipitation.side(posture) * driving).isCloseTo(side, within(0.0051));
        assertThat(caught(posture, 5, driving)).isCloseTo(total, within(0.0101));
    }

    /** Sitting doubles what falls straight down: 0.52 against 1.14. */
    @Test
    void sittingDoublesTheUprightCatch() {
        assertThat(caught(Posture.CHAIR, 5, 0) / caught(Posture.STANDING, 5, 0)).isCloseTo(1.14 / 0.52, within(0.03));
    }

    /** Supine about 0.55 m2 seen from above. */
    @Test
    void supine() {
        assertThat(caught(Posture.LYING_SUPINE, 1, 0)).isCloseTo(0.55, within(0.005));
    }

    /** Segments make up the whole, and none shows more of itself than a half cylinder shows (2/pi). */
    @ParameterizedTest
    @EnumSource(Posture.class)
    void segmentsMakeUpTheWhole(Posture posture) {
        assertThat(caught(posture, 1, 0)).isCloseTo(BODY * Precipitation.up(posture), within(1e-12));
        assertThat(caught(posture, 0, 1)).isCloseTo(BODY * Precipitation.side(posture), within(1e-12));
        for (BodySegment segment : BodySegment.values()) {
            assertThat(Precipitation.upOn(posture, segment)).isBetween(0.0, 2 / Math.PI);
            assertThat(Precipitation.sideOn(posture, segment)).isBetween(0.0, 2 / Math.PI);
        }
    }

    /** Sum over a body of 1.8 m2 in the standard proportions [kg/h]. */
    private static double caught(Posture posture, double rate, double driving) {
        double sum = 0;
        double area = 0;
        for (BodySegment segment : BodySegment.values()) {
            double here = PostureExchange.AREA[segment.ordinal()];
            sum += here * 3600 * Precipitation.caught(posture, segment, rate, driving);
            area += here;
        }
        return sum * BODY / area;
    }

    /** Snow through an upright plane is 3 to 5 times what falls, in 4 m/s (dry 0.8 to 1.2 m/s, wet 1.2 to 2 m/s). */
    @Test
    void snowDrives() {
        assertThat(Precipitation.driving(1, 1, -10, 4)).isBetween(3.0, 5.0);
        assertThat(Precipitation.driving(1, 1, 0.5, 4)).isBetween(2.0, 4 / 1.2);
        assertThat(Precipitation.driving(5, 0, 8, 6)).isEqualTo(Rain.driving(5, 6));
        assertThat(Precipitation.driving(0, 0.5, 0, 6)).isZero();
    }

    /** 0.05 when dry, 0.5 at 0 degC wet bulb, ISO 12494's 1/v when wet. */
    @Test
    void snowSticks() {
        assertThat(Precipitation.sticking(-2, 4, -5, 0.05)).isEqualTo(0.05);
        assertThat(Precipitation.sticking(-12, 0, -15, 0.05)).isEqualTo(0.05);
        assertThat(Precipitation.sticking(0, 4, 0, 0.05)).isCloseTo(0.5, within(1e-12));
        assertThat(Precipitation.sticking(1, 4, 0, 0.05)).isCloseTo(0.25, within(1e-4));
        assertThat(Precipitation.sticking(1, 0.3, 0, 0.05)).isCloseTo(1, within(1e-4));
        assertThat(Precipitation.sticking(-12, 4, 1, 0.05)).isEqualTo(1);
    }

    @Test
    void stickingHasNoJump() {
        for (double v : new double[] {0, 1, 2, 8}) {
            double before = Precipitation.sticking(-4, v, -1, 0.05);
            for (double t = -4; t < 3; t += 0.001) {
                double here = Precipitation.sticking(t, v, -1, 0.05);
                assertThat(here).isBetween(0.05, 1.0);
                // Steepest ramp: 0.5 over 0.5 degC, cubic, slope 1.5.
                assertThat(Math.abs(here - before)).isLessThan(0.0016);
                before = here;
            }
        }
    }

    /** 1 kg of snow melted takes 93 Wh. */
    @Test
    void melting() {
        assertThat(Precipitation.meltHeat(0) / 3600).isCloseTo(93, within(0.5));
        assertThat(Precipitation.meltHeat(-10) - Precipitation.meltHeat(0)).isCloseTo(2.1e4, within(1e-6));
        assertThat(Precipitation.meltHeat(3)).isEqualTo(Precipitation.meltHeat(0));
    }

    /** Glossary of the American Meteorological Society: light to 2.5, moderate 2.6 to 7.6, heavy above. */
    @Test
    void strengths() {
        assertThat(Precipitation.strength(0)).isEqualTo(Precipitation.Strength.NONE);
        assertThat(Precipitation.strength(2.5)).isEqualTo(Precipitation.Strength.LIGHT);
        assertThat(Precipitation.strength(2.6)).isEqualTo(Precipitation.Strength.MODERATE);
        assertThat(Precipitation.strength(7.6)).isEqualTo(Precipitation.Strength.MODERATE);
        assertThat(Precipitation.strength(7.7)).isEqualTo(Precipitation.Strength.HEAVY);
    }
}
