package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Units that are easily taken for one another. Tolerance: half a unit of the last digit given. */
class MetUnitTrapsTest {

    @Test
    @DisplayName("comfort and exercise units, 70 kg and 1.8 m2: 104.8 and 81.3 W, a factor of 1.288")
    void twoMets() {
        assertEquals(104.8, Met.comfort(1, 1.8), 0.05);
        assertEquals(81.3, Met.exercise(1, 70), 0.06);
        assertEquals(1.288, Met.comfort(1, 1.8) / Met.exercise(1, 70), 0.0006);
    }

    @Test
    @DisplayName("3.5 mL/kg/min is the exercise unit within 1 %: 82.1 W")
    void oxygen() {
        assertEquals(82.1, Met.oxygen(3.5, 70), 0.05);
        assertEquals(1, Met.oxygen(3.5, 70) / Met.exercise(1, 70), 0.0101);
    }

    @Test
    @DisplayName("1000 and 2000 kcal/day are 48.4 and 96.9 W; a soldier's 6821 are 330 W")
    void kcal() {
        assertEquals(48.4, Met.kcalPerDay(1000), 0.05);
        assertEquals(96.9, Met.kcalPerDay(2000), 0.05);
        assertEquals(330, Met.kcalPerDay(6821), 0.5);
    }

    @Test
    @DisplayName("percent is no fraction: 10 % at 1 m/s read as 0.10 % or as 1000 % cannot pass unseen")
    void grade() {
        assertEquals(695, WalkingHeat.of(80, 20, 1, 10, 1), 0.5);
        assertEquals(680, new AcsmWalking().rate(80, 20, 1, 10, 1), 0.5);
        assertEquals(632.5, new PandolfWalking().rate(80, 20, 1, 10, 1), 0.05);
    }

    @Test
    @DisplayName("zero degrees Fahrenheit are -17.8 degC: below zero is not below freezing everywhere")
    void fahrenheit() {
        assertEquals(-17.8, Quantities.parse("0 F", Dimension.TEMPERATURE), 0.05);
    }
}
