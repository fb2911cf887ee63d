package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.figure.Posture;
import longnight.outdoors.Weather;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What must survive the border between two phases: the finish's wear, damp in the pack, cold of the pack, the warm seat. */
class WaterOverPhasesTest {

    private static final Posture SIT = Posture.SITTING_KNEES_UP;
    private static final Weather RAIN = Nights.wetWeather(6, 5, 3, 0.97, 8, 1.5, 0, 6);

    private static NightResult run(Scenario s) {
        return NightEngine.compile(s, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    private static WaterReport water(NightResult r) {
        return Objects.requireNonNull(r.water());
    }

    @Test
    @DisplayName("a night cut into phases that change nothing is the same night")
    void cutNight() {
        List<Phase> cut = List.of(
                Phase.still("a", 0, 7200, SIT, true),
                Phase.still("b", 7200, 14400, SIT, true),
                Phase.still("c", 14400, 28800, SIT, true));
        NightResult whole = run(WaterNumericsTest.night(Nights.typical(), RAIN, WaterNumericsTest.still(8), Map.of()));
        NightResult parts = run(WaterNumericsTest.night(Nights.typical(), RAIN, cut, Map.of()));
        // a finish made new at each border would move 30 %, water shared out over a piece 9 %
        assertEquals(1, water(parts).fromOutside() / water(whole).fromOutside(), 1e-4);
        assertEquals(1, parts.shortfallHeat() / whole.shortfallHeat(), 1e-4);
        Weather dry = Nights.weather(-8, -14, 2, 0.5, 0.8, 8);
        double one = run(WaterNumericsTest.night(Nights.typical(), dry, WaterNumericsTest.still(8), Map.of()))
                .shortfallHeat();
        double three = run(WaterNumericsTest.night(Nights.typical(), dry, cut, Map.of()))
                .shortfallHeat();
        assertEquals(1, three / one, 0.001, "a seat grown cold again would show");
    }

    @Test
    @DisplayName("a piece that comes damp from the pack is damp and cold")
    void dampFromThePack() {
        List<Phase> phases = List.of(
                WaterNumericsTest.march("up", -3600, 0, 0.8, 0, 12, Nights.light()),
                Phase.still("night", 0, 28800, SIT, true));
        Weather weather = Nights.weather(-5, -5, 2, 1, 0.8, 8);
        NightEngine engine = NightEngine.compile(
                WaterNumericsTest.night(Nights.typical(), weather, phases, Map.of("parka", 0.5)),
                ModelChoice.nominal());
        NightResult damp = engine.run(NumericalSettings.standard());
        NightResult dry = run(WaterNumericsTest.night(Nights.typical(), weather, phases, Map.of()));
        WaterReport.Layer parka = water(damp).layers().stream()
                .filter(l -> l.id().equals("parka"))
                .findFirst()
                .orElseThrow();
        assertTrue(parka.dryMass() > 0.2);
        assertTrue(damp.shortfallHeat() > dry.shortfallHeat() + 5e4, "drying has its price");
        assertEquals(0, water(damp).closure(), 1e-9);
    }

    @Test
    @DisplayName("a walker whose clothes take no water still sweats")
    void dryComparison() {
        Scenario s = WaterNumericsTest.night(
                Nights.typical(),
                Nights.weather(0, -5, 2, 1, 0.8, 8),
                List.of(
                        WaterNumericsTest.march("up", -5400, 0, 1.0, 6, 12, Nights.light()),
                        Phase.still("night", 0, 28800, SIT, true)),
                Map.of());
        NightEngine engine = NightEngine.compile(s, ModelChoice.nominal());
        double dry = engine.run(NumericalSettings.dry()).hours().get(0).coreCelsius();
        NightResult sweating = engine.run(NumericalSettings.standard());
        double wet = sweating.hours().get(0).coreCelsius();
        assertTrue(sweating.fuel() != null && sweating.fuel().sweatBefore() > 0.1, "the march makes sweat");
        assertEquals(wet, dry, 0.3);
    }

    @Test
    @DisplayName("two bottles cool apart")
    void twoBottles() {
        HeatBrought first = new HeatBrought("first", 0, 1.0, 80, 0, 0);
        HeatBrought second = new HeatBrought("second", 10800, 1.0, 80, 0, 0);
        double a = brought(List.of(first));
        double b = brought(List.of(second));
        double both = brought(List.of(first, second));
        // all heat goes to the skin, so a bottle stops giving where the skin is: with two the skin is a kelvin or two
        // warmer, and
        // a kelvin keeps 4.2 kJ in each; never more than the two alone
        double kept = a + b - both;
        assertTrue(kept >= 0 && kept < 4 * 4186, a + " + " + b + " -> " + both);
    }

    private static double brought(List<HeatBrought> heats) {
        Scenario s = WaterNumericsTest.night(
                Nights.typical(), Nights.weather(-8, -8, 2, 1, 0.8, 8), WaterNumericsTest.still(8), Map.of());
        NightPlan p = s.plan();
        NightResult r = run(s.withPlan(new NightPlan(
                p.startOfDay(), p.duration(), true, Double.NaN, p.phases(), List.of(), heats, Map.of(), 1)));
        return -r.ledger().lostByWay()[Way.BROUGHT.ordinal()];
    }

    @Test
    @DisplayName("sweat under the seat wets the trousers, and ice there melts")
    void seat() {
        Scenario s = WaterNumericsTest.night(
                Nights.typical(),
                Nights.weather(-3, -3, 1, 1, 0.9, 8),
                List.of(Phase.still("night", 0, 28800, SIT, true)),
                Map.of());
        NightEngine engine = NightEngine.compile(s, ModelChoice.nominal());
        Network net = engine.network(s.plan().phases().get(0), true);
        double[] y = net.start();
        Water w = net.water;
        int pressed = 0;
        double melted = 0;
        for (int p = 0; p < net.patches; p++) {
            if (w.length[p] > 0 && w.toAir[p] == 0) {
                pressed++;
                w.ice[net.node(p, 0)] = 1e-4;
            }
        }
        assertTrue(pressed > 0, "cloth under the seat is followed");
        for (int i = 0; i < 20; i++) {
            net.relinearise(60.0 * i, y);
            net.moveWater(60.0 * i, 60, y);
        }
        for (int p = 0; p < net.patches; p++) {
            if (w.length[p] > 0 && w.toAir[p] == 0 && y[net.node(p, 0)] > 2) {
                melted += 1e-4 - w.ice[net.node(p, 0)];
                assertEquals(0, w.ice[net.node(p, 0)], 1e-9, "ice against warm skin melts");
            }
        }
        assertTrue(melted > 0);
    }
}
