package longnight.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One night, written once in metric and once in customary units, is one night. */
class UnitSystemsTest {

    private static final String NIGHT = """
            title: the same night
            person: {name: someone, sex: female, age: 34 years, height: %s, mass: %s, body-fat: 24 %%, fitness: 42 mL/kg/min}
            plan: {from: 20:00, to: 22:30, posture: sitting-knees-up, sleep: yes}
            site: {place: open, ground: snow, altitude: %s}
            weather:
              name: invented
              table:
                - {time: 20:00, air: %s, wind: %s, humidity: 80 %%, cloud: 30 %%, pressure: %s}
                - {time: 22:30, air: %s, wind: %s, humidity: 80 %%, cloud: 30 %%, pressure: %s}
            kit:
              name: both
              wardrobe: wardrobe.yaml
              worn: [base, tights, parka]
              pads: [pad]
            """;

    private static final String WARDROBE = """
            pieces:
              - {id: base, name: base top, kind: base-top, mass: %s}
              - {id: tights, name: base tights, kind: base-bottom, mass: %s}
              - {id: parka, name: parka, kind: parka, mass: %s, fill-type: down, fill: %s, fill-power: %s, face: tight}
            pads:
              - {id: pad, name: pad, mass: %s, length: %s, width: %s, resistance: %s}
            """;

    private static NightResult run(Path folder, String night, String wardrobe) throws IOException {
        Files.writeString(folder.resolve("wardrobe.yaml"), wardrobe);
        Path file = folder.resolve("night.yaml");
        Files.writeString(file, night);
        return NightEngine.run(ScenarioReader.read(file).scenario(), NumericalSettings.standard());
    }

    @Test
    @DisplayName("metric and customary units give the same demand, shortfall heat and core")
    void sameNight(@TempDir Path metric, @TempDir Path customary) throws IOException {
        NightResult a = run(
                metric,
                NIGHT.formatted(
                        "165.1 cm",
                        "58.059818 kg",
                        "304.8 m",
                        "-10 °C",
                        "4.4704 m/s",
                        "1000 hPa",
                        "-15 °C",
                        "8.9408 m/s",
                        "1000 hPa"),
                WARDROBE.formatted(
                        "141.747615625 g",
                        "113.3980925 g",
                        "453.59237 g",
                        "198.446661875 g",
                        "0.404626 m3/kg",
                        "56.69904625 g",
                        "40.64 cm",
                        "30.48 cm",
                        "0.352220 m2K/W"));
        NightResult b = run(
                customary,
                NIGHT.formatted(
                        "65 in", "128 lb", "1000 ft", "14 °F", "10 mph", "100 kPa", "5 °F", "20 mph", "100 kPa"),
                WARDROBE.formatted(
                        "5 oz", "4 oz", "1 lb", "7 oz", "700 in3/oz", "2 oz", "16 in", "12 in", "2 ft2hF/Btu"));
        // the rounded last digits of fill power and pad are worth 1e-6
        assertEquals(a.demand(), b.demand(), 1e-5 * a.demand());
        assertEquals(a.shortfallHeat(), b.shortfallHeat(), 1e-5 * a.shortfallHeat());
        assertEquals(
                a.hours().get(a.hours().size() - 1).coreCelsius(),
                b.hours().get(b.hours().size() - 1).coreCelsius(),
                1e-4);
    }
}
