package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.outdoors.Surroundings;
import longnight.outdoors.Weather;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the march, the halt, food, warmth and a first night leave behind. */
class DayBeforeTest {

    private static final Posture SIT = Posture.SITTING_KNEES_UP;
    private static final double NIGHT = 10 * 3600;

    private static Surroundings cold(double air) {
        Weather w = Nights.weather(air, air, 2, 1, 0.85, 12);
        double[] time = w.time().clone();
        for (int i = 0; i < time.length; i++) {
            time[i] = time[i] * 3 - 20 * 3600;
        }
        return Nights.outdoors(
                Nights.site(0.1, 0.6, 0.5, Nights.SNOW),
                new Weather(
                        time,
                        w.airCelsius(),
                        w.relativeHumidity(),
                        w.wind10(),
                        w.cloud(),
                        w.precipitation(),
                        w.pressure(),
                        w.skyLongwave()),
                SIT);
    }

    static Outfit.Kit without(Outfit.Kit kit, String... words) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        for (String word : words) {
            pieces.removeIf(g -> g.spec().id().contains(word));
        }
        return new Outfit.Kit(pieces, kit.pads());
    }

    static Phase march(double from, double to, double speed, double grade, double load, double surface, Outfit worn) {
        return new Phase(
                "march",
                from,
                to,
                Posture.STANDING,
                false,
                new March(speed, grade, load, surface),
                0,
                0,
                worn,
                0,
                1,
                false);
    }

    private static NightResult run(List<Phase> phases, Map<String, Double> damp, double air) {
        NightPlan plan = new NightPlan(19 * 3600, NIGHT, true, Double.NaN, phases, List.of(), List.of(), damp, 1);
        Scenario s = Nights.scenario(Nights.man(), Nights.typical(), cold(air), SIT, 10)
                .withPlan(plan);
        return NightEngine.compile(s, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    private static Phase night() {
        return Phase.still("night", 0, NIGHT, SIT, true);
    }

    private static void booksClose(NightResult r) {
        assertEquals(0, r.ledger().heatClosure(), 1e-9);
        assertEquals(0, r.ledger().partClosure(), 1e-9);
        assertEquals(0, r.ledger().payerClosure(), 1e-9);
        assertEquals(0, r.water().closure(), 1e-9);
    }

    @Test
    @DisplayName(
            "a hard march in the parka arrives wetter and ends the night worse than stripped to base and wind layer")
    void parkaOnTheMarch() {
        Outfit.Kit stripped = without(Nights.typical(), "parka", "overtrousers", "vest", "mitts");
        NightResult wet = run(List.of(march(-7200, 0, 0.9, 8, 18, 2.1, null), night()), Map.of(), -10);
        NightResult dry = run(List.of(march(-7200, 0, 0.9, 8, 18, 2.1, stripped), night()), Map.of(), -10);
        booksClose(wet);
        booksClose(dry);
        System.out.printf(
                "parka on: sweat %.0f g, held %.0f g, H %.0f kJ, sweat after %.0f min, cooling after %.0f min%n",
                1e3 * wet.fuel().sweatBefore(),
                1e3 * wet.water().heldAtDusk(),
                wet.shortfallHeat() / 1e3,
                wet.day().sweatingAfter() / 60,
                wet.day().coolingAfter() / 60);
        System.out.printf(
                "stripped: sweat %.0f g, held %.0f g, H %.0f kJ, sweat after %.0f min, cooling after %.0f min%n",
                1e3 * dry.fuel().sweatBefore(),
                1e3 * dry.water().heldAtDusk(),
                dry.shortfallHeat() / 1e3,
                dry.day().sweatingAfter() / 60,
                dry.day().coolingAfter() / 60);
        assertTrue(wet.fuel().sweatBefore() > dry.fuel().sweatBefore());
        assertTrue(wet.water().heldAtDusk() > dry.water().heldAtDusk());
    }

    @Test
    @DisplayName("a damp start costs more than a dry one and is paid for")
    void dampStart() {
        NightResult dry = run(List.of(night()), Map.of(), -10);
        NightResult damp = run(List.of(night()), Map.of("base top", 0.8, "base tights", 0.8), -10);
        booksClose(damp);
        System.out.printf("damp base: H %.0f against %.0f kJ%n", damp.shortfallHeat() / 1e3, dry.shortfallHeat() / 1e3);
        assertTrue(damp.shortfallHeat() > dry.shortfallHeat());
        assertTrue(damp.demand() > dry.demand());
    }

    @Test
    @DisplayName("an open front costs heat on the night and saves sweat on the march")
    void openFront() {
        List<Garment> pieces = new ArrayList<>(Nights.typical().pieces());
        pieces.replaceAll(g -> g.spec().id().equals("parka") || g.spec().id().equals("vest") ? g.opened() : g);
        Outfit.Kit open = new Outfit.Kit(pieces, Nights.typical().pads());
        Phase night = new Phase("night", 0, NIGHT, SIT, true, null, 0, 0, open, 0, 1, false);
        assertTrue(run(List.of(night), Map.of(), -10).shortfallHeat()
                > run(List.of(night()), Map.of(), -10).shortfallHeat());
        NightResult closed = run(List.of(march(-7200, 0, 0.9, 8, 18, 2.1, null), night()), Map.of(), -10);
        NightResult vented = run(List.of(march(-7200, 0, 0.9, 8, 18, 2.1, open), night()), Map.of(), -10);
        booksClose(vented);
        assertTrue(vented.fuel().sweatBefore() < closed.fuel().sweatBefore());
    }

    @Test
    @DisplayName("two nights in a row without drying: the second is not easier, and its water is carried over")
    void twoNights() {
        Phase before = Phase.still("first night", -20 * 3600, -10 * 3600, SIT, true);
        Phase camp = Phase.still("camp", -10 * 3600, -2 * 3600, SIT, false);
        Phase walk = march(-2 * 3600, 0, 1.2, 2, 10, 1.2, without(Nights.typical(), "parka", "overtrousers", "mitts"));
        Map<String, Double> wet = Map.of("parka", 1.0, "vest", 1.0, "overtrousers", 1.0);
        NightResult damp = run(List.of(before, camp, walk, night()), wet, -5);
        NightResult dry = run(List.of(before, camp, walk, night()), Map.of(), -5);
        booksClose(damp);
        booksClose(dry);
        double carried = damp.water().heldAtDusk() - dry.water().heldAtDusk();
        System.out.printf(
                "second night: %.0f g more aboard, %.0f against %.0f kJ%n",
                1e3 * carried, damp.shortfallHeat() / 1e3, dry.shortfallHeat() / 1e3);
        assertTrue(carried > 0.02, "what was wet in the pack is still wet: " + carried);
        assertTrue(damp.shortfallHeat() > dry.shortfallHeat());
    }

    @Test
    @DisplayName("a warming drill is weighed: heat made, heat lost, heat kept add up")
    void drill() {
        Phase stamping = new Phase("night", 0, NIGHT, SIT, true, null, 5.0 / 60, 4.4, null, 0, 1, false);
        NightPlan plan =
                new NightPlan(19 * 3600, NIGHT, true, Double.NaN, List.of(stamping), List.of(), List.of(), Map.of(), 1);
        Scenario s = Nights.scenario(Nights.man(), Nights.typical(), cold(-15), SIT, 10)
                .withPlan(plan);
        NightResult r = NightEngine.run(s, NumericalSettings.standard());
        System.out.printf(
                "drill: made %.0f, lost %.0f, kept %.0f kJ%n",
                r.day().drillMade() / 1e3, r.day().drillLost() / 1e3, r.day().drillKept() / 1e3);
        assertEquals(r.day().drillMade(), r.day().drillLost() + r.day().drillKept(), 1.0);
        assertTrue(r.day().drillLost() > 0);
    }

    @Test
    @DisplayName("a hot drink and a bottle are gains, and the books still close")
    void warmthBrought() {
        NightPlan plan = new NightPlan(
                19 * 3600,
                NIGHT,
                true,
                Double.NaN,
                List.of(night()),
                List.of(new Intake(3600, 2.5e6, 1.5e6, 0.5, 60)),
                List.of(new HeatBrought("bottle", 1800, 1.0, 80, 0, 0)),
                Map.of(),
                0.4);
        Scenario s = Nights.scenario(Nights.man(), Nights.typical(), cold(-10), SIT, 10)
                .withPlan(plan);
        NightResult r = NightEngine.compile(s, ModelChoice.nominal()).run(NumericalSettings.standard());
        booksClose(r);
        double brought = -r.ledger().lostByWay()[Way.BROUGHT.ordinal()];
        System.out.printf(
                "brought %.0f kJ, store %.2f -> %.2f%n",
                brought / 1e3, r.fuel().storeAtDusk(), r.fuel().storeAtDawn());
        // half a litre at 60 degC carries 48 kJ to 37; a litre from 80 degC to skin between 28 and 35 degC 188 to 218
        // kJ
        assertTrue(brought > 236e3 && brought < 266e3, "brought " + brought);
        assertTrue(r.fuel().storeAtDawn() < r.fuel().storeAtDusk());
        assertTrue(r.fuel().lowestPeak() <= 1);
    }
}
