package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Pandolf, Givoni and Goldman 1977 with Santee et al. 2001 and Yokota et al. 2004 downhill")
class Pandolf1977Santee2001WalkingTest extends WalkingHeatContract {
    private static final PandolfWalking LAW = new PandolfWalking();

    Pandolf1977Santee2001WalkingTest() {
        super(LAW, 0, 2.0, PandolfWalking.STEEPEST_MEASURED);
    }

    @ParameterizedTest
    @DisplayName("check values, 80 kg and 20 kg, exact but for rounding to 0.1 W")
    @CsvSource({"0, 0, 132.5", "1.0, 0, 282.5", "1.34, 0, 401.8", "1.0, 10, 632.5"})
    void values(double speed, double grade, double expected) {
        assertEquals(expected, LAW.rate(80, 20, speed, grade, 1), 0.05);
    }

    @Test
    @DisplayName("the downhill trap: 1977's form refuses what it would answer with 27 W at -8 % and -67 W at -10 %")
    void trap() {
        assertThrows(IllegalArgumentException.class, () -> PandolfWalking.level(80, 20, 1.34, -8, 1));
        assertThrows(IllegalArgumentException.class, () -> PandolfWalking.level(80, 20, 1.34, -10, 1));
        assertThrows(IllegalArgumentException.class, () -> PandolfWalking.level(80, 20, 1.34, Double.NaN, 1));
    }

    @Test
    @DisplayName("signed grade: -8 % is cheaper than level (the absolute grade would ask 692 W); least 312 W at -9.4 %")
    void downhill() {
        double level = LAW.rate(80, 20, 1.34, 0, 1);
        assertTrue(LAW.rate(80, 20, 1.34, -8, 1) < level);
        double best = 0;
        for (double grade = 0; grade > -12; grade -= 0.01) {
            if (LAW.rate(80, 20, 1.34, grade, 1) < LAW.rate(80, 20, 1.34, best, 1)) {
                best = grade;
            }
        }
        assertTrue(best > -11 && best < -7, "measured least at -8 %, here " + best);
        assertEquals(-9.45, best, 0.06);
        assertEquals(312, LAW.rate(80, 20, 1.34, best, 1), 0.5);
    }

    @Test
    @DisplayName("from level to -2 % no step up: the bare correction would start 21.8 W above level")
    void blend() {
        assertEquals(21.8, PandolfWalking.downhill(80, 20, 1.34, -1e-9, 1) - LAW.rate(80, 20, 1.34, 0, 1), 0.05);
        double before = LAW.rate(80, 20, 1.34, 0, 1);
        for (double grade = -0.05; grade > -9; grade -= 0.05) {
            double now = LAW.rate(80, 20, 1.34, grade, 1);
            assertTrue(now <= before + 0.05, "at " + grade);
            before = now;
        }
    }
}
