package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Meals (Westerterp 2004), hot drinks and eaten snow. */
class FoodAndDrinkTest {
    private static final double PEAK = 4500;

    @Test
    @DisplayName("Westerterp 2004: 2.5 MJ at a tenth is 250 kJ, 14 W over 5 h; a mixed diet lies within 5 to 15 %")
    void share() {
        assertEquals(13.9, 0.10 * 2.5e6 / (5 * 3600), 0.05);
        double energy = Food.energy(0.0808, 0.0221, 0.0203); // 55, 15 and 30 % of 2.5 MJ
        assertEquals(2.5e6, energy, 5e3);
        double share = Food.digestion(0.0808, 0.0221, 0.0203) / energy;
        assertTrue(share > 0.05 && share < 0.15, "share " + share);
        assertTrue(Food.digestion(0, 1, 0) > Food.digestion(1, 0, 0), "protein above carbohydrate");
        assertTrue(Food.digestion(1, 0, 0) / Food.CARBOHYDRATE > Food.digestion(0, 0, 1) / Food.FAT, "above fat");
    }

    @Test
    @DisplayName("100 g of chocolate, 55 g carbohydrate, 32 g fat, 6 g protein: 2.2 to 2.3 MJ")
    void chocolate() {
        assertEquals(2.25e6, Food.energy(0.055, 0.006, 0.032), 0.05e6);
    }

    @ParameterizedTest
    @DisplayName("the pulse gives all of it and no more, whatever the step")
    @ValueSource(doubles = {30, 600, 3600})
    void integral(double step) {
        double sum = 0;
        double largest = 0;
        double at = 0;
        for (double t = -step; t < 48 * 3600; t += step) {
            double part = Food.givenOff(t + step, PEAK) - Food.givenOff(t, PEAK);
            assertTrue(part >= 0);
            sum += part;
            if (part > largest) {
                largest = part;
                at = t + step / 2;
            }
        }
        assertEquals(1, sum, 1e-14);
        assertEquals(PEAK, at, step);
    }

    @Test
    @DisplayName("peak at 60 to 90 min, nine tenths within 5 h, for the whole range of the peak")
    void shape() {
        for (double peak : new double[] {3600, 4500, 4600}) {
            assertTrue(Food.givenOff(5 * 3600, peak) > 0.9, "peak " + peak);
        }
        assertEquals(0, Food.givenOff(0, PEAK));
        assertEquals(0, Food.givenOff(-60, PEAK));
    }

    @Test
    @DisplayName(
            "0.25 L at 60 degC brings 24.1 kJ, 0.099 K for 70 kg (3.47 kJ/(kg K)); its 30 g of sugar hold 20 times that")
    void drink() {
        double heat = Drink.heat(0.25, 60, 37);
        assertEquals(24.1e3, heat, 50);
        assertEquals(0.099, heat / (70 * 3470), 0.0005);
        assertEquals(21, Food.energy(0.030, 0, 0) / heat, 1);
        assertTrue(Drink.heat(0.5, 5, 37) < 0, "a cold drink costs heat");
    }

    @Test
    @DisplayName(
            "0.5 kg of snow at -15 degC costs 260 kJ (260.2 with 334 kJ/kg; here the latent heat of the air's laws)")
    void snow() {
        assertEquals(-260.2e3, Drink.snow(0.5, -15, 37), 400);
    }

    @Test
    @DisplayName("a drink hotter than boiling, ice as a drink and snow above zero are refused")
    void refused() {
        assertThrows(IllegalArgumentException.class, () -> Drink.heat(0.25, 101, 37));
        assertThrows(IllegalArgumentException.class, () -> Drink.heat(0.25, -1, 37));
        assertThrows(IllegalArgumentException.class, () -> Drink.heat(0.25, Double.NaN, 37));
        assertThrows(IllegalArgumentException.class, () -> Drink.snow(0.25, 1, 37));
    }
}
