package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longnight.figure.BodySegment;
import longnight.figure.Posture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Shares of Kurazumi et al. 2008 spread over the segments. */
class KurazumiPostureTest {

    @ParameterizedTest
    @EnumSource(Posture.class)
    void area_mean_is_the_published_share(Posture posture) {
        double[] shares = new double[BodySegment.COUNT];
        for (BodySegment segment : BodySegment.values()) {
            shares[segment.ordinal()] = PostureExchange.radiating(posture, segment);
            assertThat(shares[segment.ordinal()]).isBetween(0.3, 1.0);
        }
        assertThat(PostureExchange.areaMean(shares)).isCloseTo(posture.radiatingShare(), within(1e-9));
    }

    /** Standing shares as 0.77/4.70 of the measured coefficients, capped at 1: printed to 0.01 for the standing manikin. */
    @Test
    void standing_shares_match_the_printed_ones() {
        double[] printed = {0.80, 0.71, 0.67, 0.71, 0.75, 0.73, 0.69, 0.78, 0.87, 1.00};
        for (BodySegment segment : BodySegment.values()) {
            assertThat(PostureExchange.radiating(Posture.STANDING, segment))
                    .isCloseTo(printed[segment.ordinal()], within(0.011));
        }
    }

    /** A manikin's coefficient per whole skin holds its posture's share already; only other postures change it. */
    @Test
    void measured_postures_keep_their_coefficients() {
        for (Posture measured : new Posture[] {Posture.STANDING, Posture.CHAIR}) {
            assertThat(PostureExchange.stillShare(measured)).isEqualTo(1);
            assertThat(PostureExchange.windShare(measured)).isEqualTo(1);
        }
        assertThat(PostureExchange.stillShare(Posture.SITTING_KNEES_UP)).isCloseTo(0.865 / 0.910, within(1e-12));
        assertThat(PostureExchange.windShare(Posture.LYING_SUPINE)).isCloseTo(0.811 / 0.942, within(1e-12));
        assertThat(PostureExchange.stillShare(Posture.LYING_SUPINE)).isEqualTo(0.811);
    }

    @Test
    void the_lower_the_posture_the_nearer_the_ground() {
        for (BodySegment segment : BodySegment.values()) {
            double standing = PostureExchange.height(Posture.STANDING, segment);
            double chair = PostureExchange.height(Posture.CHAIR, segment);
            double head = PostureExchange.height(Posture.CHAIR, BodySegment.HEAD);
            assertThat(chair).isGreaterThanOrEqualTo(PostureExchange.height(Posture.SITTING_KNEES_UP, segment));
            assertThat(head).isLessThan(PostureExchange.height(Posture.STANDING, BodySegment.HEAD));
            assertThat(standing).isBetween(0.05, 1.7);
        }
    }
}
