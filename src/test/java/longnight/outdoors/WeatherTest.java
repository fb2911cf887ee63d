package longnight.outdoors;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import longnight.assumption.ParameterSet;
import longnight.figure.Posture;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WeatherTest {

    private static final double NONE = Double.NaN;

    private static Weather weather(double sky) {
        return new Weather(
                new double[] {0, 36000},
                new double[] {-5, -15},
                new double[] {0.7, 0.9},
                new double[] {2, 4},
                new double[] {0, 0.5},
                new double[] {0, 0},
                new double[] {NONE, NONE},
                new double[] {sky, sky});
    }

    @Test
    @DisplayName("a warmer course keeps relative humidity and the emissivity of the sky")
    void warmer() {
        Weather warm = weather(220).warmer(10);
        assertArrayEquals(new double[] {5, -5}, warm.airCelsius(), 1e-12);
        assertArrayEquals(weather(220).relativeHumidity(), warm.relativeHumidity(), 0);
        assertEquals(220 * Math.pow(278.15 / 268.15, 4), warm.skyLongwave()[0], 1e-9);
        assertTrue(Double.isNaN(weather(NONE).warmer(3).skyLongwave()[0]));
        assertThrows(IllegalArgumentException.class, () -> weather(NONE).warmer(70));
    }

    @Test
    @DisplayName("a site meets the changed course as if it had been recorded")
    void under() {
        Site site = new Site(
                300, 0.005, 1, 1, 0, 0, SiteWords.floor("snow").orElseThrow().ground());
        SiteClimate made = climate(site, weather(NONE).warmer(-3).inWind(6));
        Surroundings moved =
                climate(site, weather(NONE)).under(w -> w.warmer(-3).inWind(6));
        OutdoorState a = new OutdoorState();
        OutdoorState b = new OutdoorState();
        for (double t = 0; t <= 36000; t += 3600) {
            made.at(t, a);
            moved.at(t, b);
            assertEquals(a.airCelsius, b.airCelsius, 0);
            assertEquals(a.radiantCelsius, b.radiantCelsius, 0);
            assertEquals(a.vapourPressure, b.vapourPressure, 0);
            assertEquals(6, b.wind10, 0);
        }
    }

    private static SiteClimate climate(Site site, Weather weather) {
        return new SiteClimate(site, weather, Posture.SITTING_KNEES_UP, ParameterSet.nominal(OutdoorParameter.class));
    }
}
