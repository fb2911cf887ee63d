package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published and worked check values of the body's laws; tolerance: half a unit of the last digit given. */
class BodyLawCheckValuesTest {

    @ParameterizedTest
    @DisplayName("DuBois and DuBois 1916")
    @CsvSource({"74.43, 1.72, 1.8690, 1e-4", "80, 1.78, 1.976, 1e-3", "62, 1.66, 1.685, 1e-3"})
    void area(double mass, double height, double expected, double tolerance) {
        assertEquals(expected, BodyArea.duBois(mass, height), tolerance);
    }

    @ParameterizedTest
    @DisplayName("Mifflin, St Jeor et al. 1990")
    @CsvSource({"74.43, 1.72, 30, true, 81.1", "80, 1.78, 35, true, 84.4", "62, 1.66, 30, false, 65.2"})
    void restingHeat(double mass, double height, double age, boolean male, double expected) {
        assertEquals(expected, RestingHeat.mifflin(mass, height, age, male), 0.06);
    }

    @Test
    @DisplayName("Deurenberg 1991: 80 kg, 1.78 m, 35-year-old man 22.2 percent")
    void bodyFat() {
        assertEquals(22.2, BodyFat.deurenberg(80, 1.78, 35, true), 0.06);
    }

    @Test
    @DisplayName("Eyolfson et al. 2001: VO2max 45, BMI 24, 30 years: 5.81 W/kg")
    void peak() {
        double height = 1.75;
        double mass = 24 * height * height;
        assertEquals(5.81, PeakHeat.eyolfson(mass, height, 30, 45, 90) / mass, 0.006);
        // outside the fitted people it never falls below 2.5 x rest
        assertEquals(250, PeakHeat.eyolfson(120, 1.60, 70, 20, 100), 1e-9);
    }

    @ParameterizedTest
    @DisplayName("Webb 1955: 14, 15, 17 kcal/h at 600 L/h; the rule gives 14.1, 15.8, 17.0 (dry air density 1.2)")
    @CsvSource({"0, 14, 0.2, 14.1", "-20, 15, 0.9, 15.8", "-40, 17, 0.2, 17.0"})
    void breath(double air, double measured, double tolerance, double computed) {
        double vapour = longnight.air.SaturationVapour.overWater(273.15 + air); // the worked values hold for damp air
        double flow = 0.6 * 1.2 / 3600;
        double kcalPerHour = flow * Breath.lossPerMassOfAir(air, vapour, 101325) * 3600 / 4184;
        assertEquals(computed, kcalPerHour, 0.06, "worked value");
        assertEquals(measured, kcalPerHour, tolerance, "Webb's measurement; the rule is 5 % high at -20 degC");
    }

    @Test
    @DisplayName("Fanger 1970: a breath of room air takes 1.7e-5 (5867 - pa) W of vapour per W of heat made")
    void breathWater() {
        double vapour = 0.5 * SkinVapour.saturation(20);
        double fanger = 1.7e-5 * (5867 - vapour) / 2.43e6;
        // Fanger expires at 34 to 35 degC whatever the air, Webb's rule at 33; 12 % in the water
        assertEquals(fanger, Breath.waterPerHeatMade(20, vapour, 101325), 0.12 * fanger);
        // the colder the air, the colder the breath and the less water
        double cold = Breath.waterPerHeatMade(-20, SkinVapour.saturation(-20), 101325);
        assertTrue(cold > 0.5 * fanger && cold < fanger, "at -20 degC " + cold + " kg/J");
    }

    @Test
    @DisplayName("Saturation at skin temperature: 34 degC gives 5319 Pa")
    void skinVapour() {
        double p = SkinVapour.saturation(34);
        assertEquals(5319, p, 1);
        assertEquals(
                (SkinVapour.saturation(34.001) - SkinVapour.saturation(33.999)) / 0.002, SkinVapour.slope(34, p), 1e-3);
    }

    @ParameterizedTest
    @DisplayName("Tikuisis and Giesbrecht 1999, as recalled: full skin term, gate open")
    @CsvSource({"37, 33, 15, 0", "37, 30, 15, 32.8", "36.8, 28, 15, 58.6", "36.5, 26, 20, 73.7", "35, 20, 25, 131.3"})
    void gatedLawWithoutItsGate(double core, double skin, double fat, double expected) {
        // a gate far above every skin temperature is an open gate
        GatedShivering open = new GatedShivering(155.5, 1.0, 100, fat);
        assertEquals(expected, open.heat(skin, skin, 0, core - 37), 0.06);
    }

    @Test
    @DisplayName("Onset gate at 15 % fat: closed at 30, half open at 28.5, open at 27 degC")
    void gate() {
        GatedShivering law = new GatedShivering(155.5, 1.0, 30, 15);
        GatedShivering open = new GatedShivering(155.5, 1.0, 100, 15);
        assertEquals(0, law.heat(30, 30, 0, 0));
        assertEquals(0.5, law.heat(28.5, 28.5, 0, 0) / open.heat(28.5, 28.5, 0, 0), 1e-12);
        assertEquals(1.0, law.heat(27, 27, 0, 0) / open.heat(27, 27, 0, 0), 1e-12);
    }

    @Test
    @DisplayName("Timbal et al. 1976: about 5 W/m2 per K of skin at a neutral core, 15 % fat")
    void airSlope() {
        AirSlopeShivering law = new AirSlopeShivering(5.0, 155.5, 31.2, 0.7, 0.15, 0.75, 10, 15);
        assertEquals(5.0, law.heat(28, 28, 0, 0) - law.heat(29, 29, 0, 0), 1e-9);
        assertTrue(law.heat(28, 28, 0, 0.5) < law.heat(28, 28, 0, 0), "a warm core brakes");
        assertEquals(155.5 / StrictMath.sqrt(15), law.heat(28, 28, 0, -1) - law.heat(28, 28, 0, 0), 1e-9);
        // fat: the same cooling gives less in proportion to one over the root of fat
        AirSlopeShivering fat = new AirSlopeShivering(5.0, 155.5, 31.2, 0.7, 0.15, 0.75, 10, 30);
        assertEquals(StrictMath.sqrt(0.5), fat.heat(28, 28, 0, 0) / law.heat(28, 28, 0, 0), 1e-9);
    }

    @Test
    @DisplayName("The clock: zero at 21:00, lowest at 04:30")
    void clock() {
        assertEquals(0, SetLevel.clockShift(21 * 3600, 0.4), 1e-12);
        double lowest = SetLevel.clockShift(4.5 * 3600, 0.4);
        assertTrue(lowest < SetLevel.clockShift(4.4 * 3600, 0.4) && lowest < SetLevel.clockShift(4.6 * 3600, 0.4));
        assertEquals(SetLevel.clockShift(3600, 0.4), SetLevel.clockShift(3600 + 86400, 0.4), 1e-12);
    }
}
