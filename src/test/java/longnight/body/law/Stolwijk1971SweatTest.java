package longnight.body.law;

import static longnight.body.BodyParameter.SWEAT_CAP;
import static longnight.body.BodyParameter.SWEAT_CORE_GAIN;
import static longnight.body.BodyParameter.SWEAT_SKIN_GAIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sweat: Stolwijk 1971 with the shares of Tanabe et al. 2002; heat balance; Fiala et al. 2001. */
class Stolwijk1971SweatTest {
    private static final Sweat LAW =
            new Sweat(SWEAT_CORE_GAIN.nominal(), SWEAT_SKIN_GAIN.nominal(), SWEAT_CAP.nominal());
    private static final double[] NEUTRAL = new double[10];

    @Test
    @DisplayName("371.2 W per K of head core, 33.6 W per K of skin; shares over the whole body sum to 1.002")
    void gains() {
        double[] out = new double[10];
        assertEquals(1.002 * 371.2, LAW.rates(1, 0, NEUTRAL, out) * Sweat.LATENT, 1e-6);
        assertEquals(1.002 * 33.6, LAW.rates(0, 1, NEUTRAL, out) * Sweat.LATENT, 1e-6);
        assertEquals(LAW.rates(0, 1, NEUTRAL, out), Arrays.stream(out).sum(), 1e-18);
    }

    @Test
    @DisplayName("a cool skin holds sweat back, and nothing is ever taken up")
    void brake() {
        double[] out = new double[10];
        double core = LAW.rates(0.3, 0, NEUTRAL, out);
        assertTrue(LAW.rates(0.3, -1, NEUTRAL, out) < core);
        assertEquals(0, LAW.rates(0.3, -5, NEUTRAL, out));
        assertEquals(0, Arrays.stream(out).sum());
    }

    @Test
    @DisplayName("skin 10 K above neutral doubles the sweat there, and only there")
    void local() {
        double[] neutral = new double[10];
        double[] warm = new double[10];
        LAW.rates(0.2, 0, NEUTRAL, neutral);
        double[] error = new double[10];
        error[1] = 10;
        LAW.rates(0.2, 0, error, warm);
        assertEquals(2, warm[1] / neutral[1], 1e-12);
        assertEquals(neutral[2], warm[2]);
        assertEquals(0.146 / 0.081, neutral[1] / neutral[0], 1e-12);
        assertEquals(2 * 0.073 / 0.081, neutral[7] / neutral[0], 1e-12);
    }

    @Test
    @DisplayName("never above 1 kg/h, shares kept")
    void cap() {
        double[] out = new double[10];
        assertEquals(1.0, LAW.rates(5, 3, NEUTRAL, out) * 3600, 1e-12);
        assertEquals(1.0, Arrays.stream(out).sum() * 3600, 1e-12);
        assertEquals(0.146 / 0.081, out[1] / out[0], 1e-12);
    }

    @Test
    @DisplayName("Fiala et al. 2001 at skin +1 K, core +0.3 K: 2.69 g/min; this law asks a third more, 3.59")
    void fiala() {
        double x = 1;
        double y = 0.3;
        double rival =
                (0.8 * StrictMath.tanh(0.59 * x - 0.19) + 1.2) * x + (5.7 * StrictMath.tanh(1.98 * y - 1.03) + 6.3) * y;
        assertEquals(2.69, rival, 0.005);
        double here = LAW.rates(y, x, NEUTRAL, new double[10]) * 60e3;
        assertEquals(3.59, here, 0.005);
    }

    @ParameterizedTest
    @DisplayName("heat balance of a march, 450 W, 1.9 m2, -10 degC: only the parka differs (g/h)")
    @CsvSource({"0.35, 255", "0.28, 168", "0.20, 0"})
    void balance(double resistance, double gramsPerHour) {
        // the sheet rounds 171.6 W to 172 W
        assertEquals(gramsPerHour, Sweat.byHeatBalance(450, 0.10, 1.9, -10, resistance, 1) * 3.6e6, 1.0);
    }

    @Test
    @DisplayName("heat balance: poorer evaporation asks for more, up to 1 kg/h")
    void balanceCap() {
        double good = Sweat.byHeatBalance(450, 0.10, 1.9, -10, 0.35, 1);
        assertEquals(2 * good, Sweat.byHeatBalance(450, 0.10, 1.9, -10, 0.35, 0.5), 1e-15);
        assertEquals(1.0 / 3600, Sweat.byHeatBalance(1500, 0.10, 1.9, 20, 0.35, 0.5), 1e-15);
    }
}
