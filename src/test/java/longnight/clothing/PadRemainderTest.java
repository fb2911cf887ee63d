package longnight.clothing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import longnight.assumption.ParameterSet;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A pad too small for all that touches the ground: what lies beside it has no pad, and no trace of one. */
class PadRemainderTest {

    @Test
    @DisplayName("a patch has either no pad under it or one that is more than rounding")
    void noTraceOfAPad() {
        double[] area = new double[BodySegment.COUNT];
        int beside = 0;
        for (double scale = 0.10; scale < 0.30; scale += 0.007) {
            Arrays.fill(area, scale);
            for (Posture posture : Posture.values()) {
                for (double size : new double[] {0.05, 0.1, 0.2}) {
                    Pad pad = new Pad("pad", "pad", 0.3, size, 0.1, 500);
                    Outfit.Kit kit = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of(pad));
                    for (PatchStack patch :
                            Stacks.compile(kit, posture, area, ParameterSet.nominal(ClothingParameter.class), true)) {
                        if (patch.contact()) {
                            assertTrue(patch.padResistance() == 0 || patch.padResistance() > 1e-5);
                            beside += patch.padResistance() == 0 ? 1 : 0;
                        } else {
                            assertEquals(0, patch.padResistance(), 0);
                        }
                    }
                }
            }
        }
        assertTrue(beside > 100, "patches beside the pad: " + beside);
    }
}
