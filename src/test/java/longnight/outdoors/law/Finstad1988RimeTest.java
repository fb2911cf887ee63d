package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Supercooled cloud on cylinders. */
class Finstad1988RimeTest {
    private static final double AIR = 268.15;
    private static final double PRESSURE = 9e4;

    /**
     * Limits of any collection law (Langmuir and Blodgett 1946, from memory): drops of inertia below 1/8 all but miss, great
     * inertia nearly all hit. Inertia is set by the drop: 1000 d2 v / (9 mu D).
     */
    @Test
    void limits() {
        double mu = 1.69e-5;
        double light = Math.sqrt(0.12 * 9 * mu * 0.3 / (1000 * 10));
        assertThat(Rime.efficiency(10, 0.3, light, AIR, PRESSURE)).isCloseTo(0.01, within(1e-3));
        double heavy = Math.sqrt(100 * 9 * mu * 0.02 / (1000 * 20));
        assertThat(Rime.efficiency(20, 0.02, heavy, AIR, PRESSURE)).isBetween(0.85, 1.0);
        assertThat(Rime.efficiency(0, 0.1, 2e-5, AIR, PRESSURE)).isEqualTo(0.01);
    }

    @Test
    void thinPartsCatchMoreThanTheTrunkAndMoreInMoreWind() {
        double before = 0;
        for (double v = 1; v < 30; v++) {
            double arm = Rime.efficiency(v, 0.10, 2e-5, AIR, PRESSURE);
            assertThat(arm).isGreaterThanOrEqualTo(before).isLessThan(1);
            assertThat(Rime.efficiency(v, 0.33, 2e-5, AIR, PRESSURE)).isLessThanOrEqualTo(arm);
            before = arm;
        }
        assertThat(before).isGreaterThan(0.1);
    }

    @Test
    void onlyColdWaterClouds() {
        assertThat(Rime.cloud(0, 1)).isZero();
        assertThat(Rime.cloud(-4, 0.99)).isEqualTo(1);
        assertThat(Rime.cloud(-4, 0.95)).isZero();
        assertThat(Rime.cloud(-8, 0.99)).isEqualTo(1);
        // hoar frost and snowfall: saturated over ice, 0.981 over water
        assertThat(Rime.cloud(-2, 0.981)).isZero();
        assertThat(Rime.cloud(-1, 0.99)).isZero();
        assertThat(Rime.cloud(-15, 1)).isZero();
        assertThat(Rime.flux(1, 2e-4, 10, 0.05)).isCloseTo(1e-4, within(1e-16));
    }
}
