package longnight.body.law;

import static longnight.body.BodyParameter.CARBOHYDRATE_SHARE;
import static longnight.body.BodyParameter.CARBOHYDRATE_TURN;
import static longnight.body.BodyParameter.FOOD_SHARE;
import static longnight.body.BodyParameter.FUEL_FLOOR;
import static longnight.body.BodyParameter.FUEL_KNEE;
import static longnight.body.BodyParameter.GLYCOGEN_LIVER;
import static longnight.body.BodyParameter.GLYCOGEN_MUSCLE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Carbohydrate through a cold night: Haman et al. 2002 and 2004, Tikuisis et al. 2002, and how long the store lasts. */
class Haman2002FuelTest {
    /** 70 kg, 15 % fat. */
    private static final double FULL = Fuel.fullStore(59.5, GLYCOGEN_MUSCLE.nominal(), GLYCOGEN_LIVER.nominal());

    private static final Fuel FUEL = new Fuel(
            FULL,
            CARBOHYDRATE_SHARE.nominal(),
            CARBOHYDRATE_TURN.nominal(),
            FOOD_SHARE.nominal(),
            FUEL_KNEE.nominal(),
            FUEL_FLOOR.nominal());
    private static final double REST = 85;

    @Test
    @DisplayName("stores: 350 g in muscle and 90 g in the liver of a 70 kg man, 6.7 to 8.4 MJ by food energy")
    void store() {
        assertEquals(0.350, Fuel.fullStore(59.5, 0.0125, 0) / Fuel.GLUCOSE, 0.001);
        double byFoodEnergy = FULL / Fuel.GLUCOSE * Food.CARBOHYDRATE;
        assertTrue(byFoodEnergy > 6.7e6 && byFoodEnergy < 8.4e6, "store " + byFoodEnergy);
    }

    @Test
    @DisplayName(
            "Haman et al. 2002: glycogen 264, blood sugar 94, fat 177 mg/min are 69, 24, 116 W; 232 W with protein")
    void haman2002() {
        double glycogen = 264e-6 / 60 * Fuel.GLUCOSE;
        double sugar = 94e-6 / 60 * Fuel.GLUCOSE;
        double fat = 177e-6 / 60 * Fuel.FAT;
        assertEquals(69, glycogen, 0.5);
        assertEquals(24, sugar, 0.5);
        assertEquals(116.5, fat, 0.5);
        double whole = (glycogen + sugar + fat) / 0.9; // protein a tenth
        assertEquals(232, whole, 1);
        assertEquals(glycogen + sugar, FUEL.demand(whole, whole / 2.6), 0.5);
    }

    @Test
    @DisplayName("Haman et al. 2004: 100 W more of shivering take 100 W more of carbohydrate; below, 40 W")
    void extraFromCarbohydrate() {
        assertEquals(100, FUEL.demand(330, REST) - FUEL.demand(230, REST), 1e-9);
        assertEquals(40, FUEL.demand(200, REST) - FUEL.demand(100, REST), 1e-9);
    }

    @ParameterizedTest
    @DisplayName("Haman et al. 2004: two hours at 2.6 x rest make the same heat from every starting store")
    @ValueSource(doubles = {1.0, 0.6, 0.4})
    void sameHeatForTwoHours(double start) {
        double left = after(start * FULL, 2.6 * REST, 2);
        assertEquals(1.0, FUEL.peakFactor(left), 1e-12);
    }

    @ParameterizedTest
    @DisplayName(
            "Tikuisis et al. 2002: 61 to 69 % of a 534 W peak went on for 105 to 388 min; the cap does not stop it")
    @CsvSource({"0.61, 250", "0.69, 199", "0.61, 388", "0.69, 388"})
    void endurance(double share, double minutes) {
        double rate = share * 534;
        double left = after(FULL, rate, minutes / 60);
        assertTrue(FUEL.peakFactor(left) * (534 - 109) + 109 > rate, "left " + left / FULL);
    }

    /**
     * Hours until the cap begins to fall and until it stands at nine tenths, against the glycogen clock 350 g x 15.6 kJ/g /
     * (rate x share): 25, 17 and 7.6 h at 200, 300, 400 W (engineering estimate) and 20 to 42 h of a published estimate.
     */
    @ParameterizedTest
    @DisplayName("hours at a steady rate until the peak begins to fall, and until nine tenths of it are left")
    @CsvSource({
        "1.0, 200, 17.9, 19.9", "1.0, 300, 8.5, 9.5", "1.0, 400, 5.35, 5.95",
        "0.4, 200, 3.6, 5.6", "0.4, 300, 1.7, 2.7", "0.4, 400, 1.07, 1.67"
    })
    void hours(double start, double rate, double untilFall, double untilNineTenths) {
        assertEquals(untilFall, hoursUntil(start, rate, 1.0), 0.1);
        assertEquals(untilNineTenths, hoursUntil(start, rate, 0.9), 0.1);
    }

    @Test
    @DisplayName("three to five times rest does not last a twelve-hour night with the peak whole")
    void notSustainable() {
        for (double times = 3; times <= 5; times += 0.5) {
            double left = after(FULL, times * REST, 12.5);
            assertTrue(FUEL.peakFactor(left) < 1, times + " x rest");
        }
        assertTrue(FUEL.peakFactor(after(FULL, 5 * REST, 12)) < 0.55);
    }

    @Test
    @DisplayName("the factor is smooth and rises with the store, from the floor to one")
    void smooth() {
        assertEquals(0.5, FUEL.peakFactor(0));
        assertEquals(1.0, FUEL.peakFactor(0.25 * FULL), 1e-15);
        double slopeBefore = 0;
        double h = 1e-4;
        for (double s = 0; s < 0.3; s += h) {
            double slope = (FUEL.peakFactor((s + h) * FULL) - FUEL.peakFactor(s * FULL)) / h;
            assertTrue(slope >= 0);
            assertEquals(slopeBefore, slope, 48 * h * 1.01, "no kink at " + s); // 6 (1 - floor) / knee^2 = 48
            slopeBefore = slope;
        }
    }

    @Test
    @DisplayName("food covers a share of the heat and at most 60 g/h, spares the store and never refills it")
    void food() {
        assertEquals(0, FUEL.fromFood(300, REST, 0));
        assertEquals(45, FUEL.fromFood(300, REST, 1e6), 1e-9);
        assertEquals(260, FUEL.fromFood(3000, REST, 1e7), 0.1);
        for (double rate = 60; rate < 1000; rate += 20) {
            double alone = FUEL.fromStore(rate, REST, 0, FULL);
            double fed = FUEL.fromStore(rate, REST, 1e6, FULL);
            assertTrue(fed < alone && fed >= 0, "at " + rate);
            assertEquals(alone, fed + FUEL.fromFood(rate, REST, 1e6), 1e-9);
        }
    }

    @Test
    @DisplayName("the store never runs below nothing")
    void neverNegative() {
        assertTrue(after(FULL, 900, 48) >= 0);
        assertEquals(0, FUEL.fromStore(900, REST, 0, 0));
    }

    private static double after(double store, double rate, double hours) {
        double step = 30;
        double left = store;
        for (double t = 0; t < hours * 3600; t += step) {
            left -= FUEL.fromStore(rate, REST, 0, left) * step;
        }
        return left;
    }

    private static double hoursUntil(double start, double rate, double factor) {
        double left = start * FULL;
        double t = 0;
        while (FUEL.peakFactor(left) >= factor && t < 100 * 3600) {
            left -= FUEL.fromStore(rate, REST, 0, left) * 30;
            t += 30;
        }
        return t / 3600;
    }
}
