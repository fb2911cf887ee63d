package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Heat brought along: bottle, packs, partners. Tolerance: half a unit of the last digit given. */
class HeatSourcesTest {

    @Test
    @DisplayName("iron: 822 kJ/mol of oxide are 7.36 kJ/g; 50 g over 10 h 368 kJ, 10.2 W; 12 g over 8 h 88 kJ, 3.1 W")
    void iron() {
        assertEquals(7.36e6, HeatPack.IRON, 5e3);
        HeatPack large = HeatPack.iron(0.050, 36000);
        assertEquals(368e3, large.heat(), 500);
        assertEquals(10.2, large.heat() / large.duration(), 0.05);
        HeatPack hand = HeatPack.iron(0.012, 28800);
        assertEquals(88e3, hand.heat(), 500);
        assertEquals(3.1, hand.heat() / hand.duration(), 0.05);
        assertEquals(0, large.given(-1));
        assertEquals(0.5, large.given(18000));
        assertEquals(1, large.given(1e9));
    }

    @Test
    @DisplayName("a setting pack of 0.2 kg holds 55 kJ")
    void setting() {
        assertEquals(55e3, HeatPack.setting(0.2, 276e3, 3600).heat(), 500);
    }

    @Test
    @DisplayName("1 L from 80 to 35 degC: 188.4 kJ, a twentieth of 100 W over 10 h")
    void bottle() {
        double heat = new HotBottle(1, 1, 1).heat(80, 35);
        assertEquals(188.4e3, heat, 50);
        assertEquals(0.05, heat / 3.6e6, 0.003);
    }

    @Test
    @DisplayName("a bottle's books close over every step, and it ends as a load on the skin")
    void bottleBooks() {
        HotBottle bottle = new HotBottle(1, 1.5, 0.3);
        double now = 80;
        double skin = 0;
        double outside = 0;
        double last = 0;
        for (int i = 0; i < 120; i++) {
            last = bottle.given(now, 34, -10, 600);
            skin += last;
            double next = bottle.after(now, 34, -10, 600);
            outside += bottle.heat(now, next) - last;
            assertTrue(next < now);
            now = next;
        }
        assertEquals(bottle.heat(80, now), skin + outside, 1e-6);
        assertTrue(last < 0, "colder than the skin it takes heat");
        double rest = (1.5 * 34 - 0.3 * 10) / 1.8;
        assertEquals(rest, now, 0.01);
        // the same in one step as in many
        assertEquals(now, bottle.after(80, 34, -10, 72000), 1e-9);
        assertEquals(skin, bottle.given(80, 34, -10, 72000), 1e-5);
        // a bottle with no way out to the air gives all it has to the skin
        assertEquals(bottle.heat(80, 34), new HotBottle(1, 2, 0).given(80, 34, -10, 1e6), 1e-6);
    }

    @Test
    @DisplayName("a huddle only covers: at most a quarter of the surface, two give each other a tenth")
    void huddle() {
        assertEquals(0.10, Huddle.BACK_TO_BACK.contactShare());
        for (Huddle huddle : Huddle.values()) {
            assertTrue(huddle.contactShare() >= 0 && huddle.contactShare() <= 0.25);
        }
        assertEquals(0, Huddle.ALONE.contactShare());
    }
}
