package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Properties of the wind correction between and beyond its published ranges. */
class WindRatioTest {
    private static final double[] PERMEABILITY = {0, 0.5, 5, 50, 600, 3000, Double.POSITIVE_INFINITY};
    private static final double ROUNDING = 1e-12;

    @Test
    void moreWindNeverInsulatesBetter() {
        for (double p : PERMEABILITY) {
            for (double r = 0; r < 0.6; r += 0.02) {
                WindRatio ratio = new WindRatio(p, r, 1);
                double before = 1;
                for (double v = 0; v <= 18; v += 0.05) {
                    double now = ratio.at(v, 0);
                    assertThat(now).isGreaterThan(0).isLessThanOrEqualTo(before + ROUNDING);
                    before = now;
                }
            }
        }
    }

    @Test
    void moreClothNeverInsulatesWorseInWind() {
        for (double p : PERMEABILITY) {
            for (double v = 0; v <= 18; v += 0.5) {
                double before = 0;
                for (double r = 0; r < 0.6; r += 0.002) {
                    double now = WholeBody.total(r) * WindRatio.of(v, p, 0, r);
                    assertThat(now).as("v %s p %s r %s", v, p, r).isGreaterThanOrEqualTo(before - ROUNDING);
                    before = now;
                }
            }
        }
    }

    /** Where the law bends back (many litres, hardly any wind) it gains less than 0.02; elsewhere it never gains. */
    @Test
    void looserClothNeverStopsMoreWind() {
        for (double v = 0; v <= 18; v += 0.25) {
            double before = 1;
            for (double p = 0.1; p < 2000; p *= 1.1) {
                double now = WindRatio.of(v, p, 0, 0.5);
                double slack = v < 1.0 && p > 200 ? 0.02 : ROUNDING;
                assertThat(now).isLessThanOrEqualTo(before + slack);
                before = Math.min(before, now);
            }
        }
    }

    @Test
    void walkingCostsAndVapourFollowsDry() {
        assertThat(WindRatio.of(0.4, 10, 0.7, 0.5)).isLessThan(WindRatio.of(0.4, 10, 0, 0.5));
        assertThat(WindRatio.vapourFromDry(1)).isCloseTo(1, within(1e-12));
        double before = 0;
        for (double c = 0; c <= 1; c += 0.01) {
            double now = WindRatio.vapourFromDry(c);
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    /** ISO 11079 and Havenith and Nilsson (2004) were recalled apart; they agree within 0.08 over their common range. */
    @Test
    void twoPublishedLawsAgree() {
        double worst = 0;
        for (double v = 0.4; v <= 18; v += 0.2) {
            for (double p = 5; p <= 1000; p *= 1.3) {
                double difference = WindRatio.havenithNilsson(v, 0, p) - WindRatio.of(v, p, 0, 0.5);
                worst = Math.max(worst, Math.abs(difference));
            }
        }
        System.out.printf("two laws for thick clothing in wind differ by at most %.3f%n", worst);
        assertThat(worst).isLessThan(0.085);
    }
}
