package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Looney et al. 2019")
class Looney2019WalkingTest extends WalkingHeatContract {

    Looney2019WalkingTest() {
        super(new LooneyWalking(), 0, WalkingHeat.FASTEST, WalkingHeat.STEEPEST_DOWN);
    }

    @ParameterizedTest
    @DisplayName("check values for 100 kg, rounded to 1 W")
    @CsvSource({"0, 0, 144", "0.7, 0, 316", "1.0, 0, 362", "1.34, 0, 441", "1.7, 0, 588", "1.0, 10, 695"})
    void values(double speed, double grade, double expected) {
        assertEquals(expected, WalkingHeat.of(80, 20, speed, grade, 1), 0.5);
    }

    @Test
    @DisplayName("cheapest descent at -10.6 %, within -7 to -11 % (Santee et al. 2001 measured -8)")
    void cheapest() {
        double best = 0;
        for (double grade = 0; grade > -40; grade -= 0.01) {
            if (WalkingHeat.of(80, 20, 1.34, grade, 1) < WalkingHeat.of(80, 20, 1.34, best, 1)) {
                best = grade;
            }
        }
        assertEquals(-10.6, best, 0.05);
    }

    @Test
    @DisplayName("ground multiplies level walking above standing and leaves climbing alone")
    void ground() {
        double standing = WalkingHeat.of(80, 20, 0, 0, 1);
        double level = WalkingHeat.of(80, 20, 1, 0, 1);
        double climb = WalkingHeat.of(80, 20, 1, 10, 1) - level;
        assertEquals(standing, WalkingHeat.of(80, 20, 0, 0, 4.2), 1e-9);
        assertEquals(standing + 3 * (level - standing), WalkingHeat.of(80, 20, 1, 0, 3), 1e-9);
        assertEquals(standing + 3 * (level - standing) + climb, WalkingHeat.of(80, 20, 1, 10, 3), 1e-9);
    }

    @Test
    @DisplayName("height: 97.6 W of 100 kg at 1 m/s and 10 %, signed, a minor part of the rate")
    void work() {
        assertEquals(97.6, WalkingHeat.externalWork(100, 1, 10, 1), 0.05);
        assertEquals(-97.6, WalkingHeat.externalWork(100, 1, -10, 1), 0.05);
        assertEquals(-48.8, WalkingHeat.externalWork(100, 1, -10, 0.5), 0.05);
        assertEquals(0, WalkingHeat.externalWork(100, 1, 0, 1));
        for (double grade = 1; grade <= 45; grade++) {
            double share = WalkingHeat.externalWork(100, 1, grade, 1) / WalkingHeat.of(80, 20, 1, grade, 1);
            // isolated muscle reaches about 0.30 (Moseley and Jeukendrup 2001 review whole bodies near 0.20-0.26)
            assertTrue(share > 0 && share < 0.30, grade + " %: " + share);
        }
    }

    @Test
    @DisplayName("what cannot be walked is known: deep snow uphill asks more than 50 mL/kg/min gives")
    void ceiling() {
        double snow = WalkingSurface.snow(0.30);
        assertTrue(WalkingHeat.of(80, 20, 1.0, 15, snow) > WalkingHeat.aerobicCeiling(80, 50));
        assertTrue(WalkingHeat.of(80, 20, 1.0, 0, 1) < 0.5 * WalkingHeat.aerobicCeiling(80, 50));
        assertTrue(WalkingHeat.isHeavy(75, 31) && !WalkingHeat.isHeavy(75, 30));
    }
}
