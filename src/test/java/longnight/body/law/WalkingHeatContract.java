package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every walking law owes its caller. */
abstract class WalkingHeatContract {
    private final WalkingHeat law;
    private final double slowest;
    private final double fastest;
    private final double steepestDown;

    WalkingHeatContract(WalkingHeat law, double slowest, double fastest, double steepestDown) {
        this.law = law;
        this.slowest = slowest;
        this.fastest = fastest;
        this.steepestDown = steepestDown;
    }

    @Test
    @DisplayName("dearer with speed, load, climb and worse ground, everywhere in the range")
    void monotone() {
        double step = (fastest - slowest) / 20;
        for (int i = 0; i < 20; i++) {
            double v = slowest + i * step;
            for (double load : new double[] {0, 12, 30, 55}) {
                for (double grade : new double[] {0, 3, 12, 40}) {
                    double here = law.rate(75, load, v, grade, 1);
                    String where = v + " m/s, " + load + " kg, " + grade + " %";
                    assertTrue(law.rate(75, load, Math.min(fastest, v + step), grade, 1) > here, where);
                    assertTrue(law.rate(75, load + 1, v, grade, 1) > here, where);
                    if (v > 0) {
                        assertTrue(law.rate(75, load, v, grade + 1, 1) > here, where);
                        assertTrue(law.rate(75, load, v, grade, 1.2) > here, where);
                    }
                }
            }
        }
    }

    @Test
    @DisplayName("nowhere below standing still, on any grade, ground or speed of the range")
    void neverBelowStanding() {
        double standing = slowest > 0 ? 3.5 / 60 * Met.JOULE_PER_ML * 95 : law.rate(75, 20, 0, 0, 1);
        for (double v = slowest; v <= fastest; v += 0.05) {
            for (double grade = steepestDown; grade <= 45; grade += 0.5) {
                for (double ground : new double[] {1, 2, 4.2}) {
                    assertTrue(
                            law.rate(75, 20, v, grade, ground) >= standing * (1 - 1e-12),
                            v + " m/s, " + grade + " %, ground " + ground + ": " + law.rate(75, 20, v, grade, ground)
                                    + " W, standing " + standing);
                }
            }
        }
    }

    @Test
    @DisplayName("level is one place, whether reached from above or from below")
    void continuousAtLevel() {
        if (steepestDown < 0) {
            double v = 0.5 * (slowest + fastest);
            assertEquals(law.rate(80, 20, v, 0, 1), law.rate(80, 20, v, -1e-9, 1), 1e-6);
        }
    }

    @ParameterizedTest
    @DisplayName("outside its range a law gives no number")
    @CsvSource({
        "0, 20, 1, 0, 1",
        "NaN, 20, 1, 0, 1",
        "80, -1, 1, 0, 1",
        "80, 71, 1, 0, 1",
        "80, 20, -1, 0, 1",
        "80, 20, 2.1, 0, 1",
        "80, 20, NaN, 0, 1",
        "80, 20, 1, 46, 1",
        "80, 20, 1, -41, 1",
        "80, 20, 1, NaN, 1",
        "80, 20, 1, 0, 0.9",
        "80, 20, 1, 0, 4.3",
        "80, 20, 1, 0, NaN"
    })
    void refuses(double mass, double load, double speed, double grade, double ground) {
        assertThrows(IllegalArgumentException.class, () -> law.rate(mass, load, speed, grade, ground));
    }

    @ParameterizedTest
    @DisplayName("refuses a grade just below its steepest")
    @ValueSource(doubles = {1e-6, 1, 5})
    void refusesSteeper(double more) {
        assertThrows(IllegalArgumentException.class, () -> law.rate(80, 20, 1, steepestDown - more, 1));
    }
}
