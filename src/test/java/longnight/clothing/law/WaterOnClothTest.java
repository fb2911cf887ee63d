package longnight.clothing.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Holding, dripping, creeping, and rain on a face: bounds and books. */
class WaterOnClothTest {

    @Test
    void onlyTheExcessDrips() {
        assertThat(WaterHold.excess(0, 0.3)).isZero();
        assertThat(WaterHold.excess(0.284, 0.3)).isZero();
        assertThat(WaterHold.excess(0.5, 0.3)).isCloseTo(0.2, within(1e-15));
        assertThat(WaterHold.excess(0.2, 0)).isEqualTo(0.2);
        assertThat(WaterHold.excess(0, 0)).isZero();
        double before = 0;
        for (double w = 0.28; w < 0.33; w += 1e-4) {
            double here = WaterHold.excess(w, 0.3);
            assertThat(here).isBetween(before, w);
            assertThat(here - before).isLessThanOrEqualTo(1.0001e-4);
            before = here;
        }
    }

    @Test
    void wringing() {
        assertThat(WaterHold.wrung(0.5, 0.18)).isEqualTo(0.18);
        assertThat(WaterHold.wrung(0.1, 0.18)).isEqualTo(0.1);
    }

    @Test
    void creepsFromFullToEmptyAndNotAcrossDown() {
        assertThat(WaterHold.wicking(1, 0, 1e-5, 1e-6)).isEqualTo(1e-6);
        assertThat(WaterHold.wicking(0.2, 0.7, 1e-5, 1e-5)).isCloseTo(-5e-6, within(1e-18));
        assertThat(WaterHold.wicking(1, 0, 1e-5, 0)).isZero();
    }

    /** "Falls by half after two hours of steady rain". */
    @Test
    void finishTires() {
        assertThat(FaceWetting.repelled(0.9, 0, 7200)).isEqualTo(0.9);
        assertThat(FaceWetting.repelled(0.9, 7200, 7200)).isCloseTo(0.45, within(1e-12));
        assertThat(FaceWetting.tiring(0)).isZero();
        assertThat(FaceWetting.tiring(5)).isBetween(0.9, 1.0);
        // Fresh stays above worn, worn above gone, for as long as it rains.
        for (double t = 0; t < 12 * 3600; t += 600) {
            assertThat(FaceWetting.repelled(0.9, t, 7200)).isGreaterThan(FaceWetting.repelled(0.6, t, 7200));
            assertThat(FaceWetting.repelled(0.6, t, 7200)).isGreaterThan(FaceWetting.repelled(0.2, t, 7200));
        }
    }

    /** One long step equals many short ones, never takes more than comes and never more than there is room for. */
    @Test
    void faceFillsTheSameWhateverTheStep() {
        double hold = 0.075;
        double fine = 0;
        for (int i = 0; i < 1000; i++) {
            fine += FaceWetting.uptake(0.15 / 1000, fine, hold);
        }
        double coarse = FaceWetting.uptake(0.15, 0, hold);
        // 1000 exact steps of the same exact law: rounding only.
        assertThat(coarse).isCloseTo(fine, within(1e-14));
        assertThat(coarse).isLessThan(hold);
        for (double arriving : new double[] {0, 1e-9, 1e-4, 0.05, 3}) {
            for (double water : new double[] {0, 0.03, 0.075, 0.2}) {
                assertThat(FaceWetting.uptake(arriving, water, hold))
                        .isBetween(0.0, Math.min(arriving, Math.max(0, hold - water)));
            }
        }
    }

    /** A wetted-out face is twice as tight to vapour, a membrane at -10 degC and below twice. */
    @Test
    void vapour() {
        assertThat(FaceWetting.vapourFactor(0, 2)).isEqualTo(1);
        assertThat(FaceWetting.vapourFactor(1, 2)).isEqualTo(2);
        assertThat(FaceWetting.vapourFactor(1.5, 2)).isEqualTo(2);
        assertThat(FaceWetting.coldMembrane(0, 2)).isEqualTo(1);
        assertThat(FaceWetting.coldMembrane(-7.5, 2)).isCloseTo(1.5, within(1e-12));
        assertThat(FaceWetting.coldMembrane(-25, 2)).isEqualTo(2);
    }
}
