package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.NightPlan;
import longnight.night.Scenario;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorState;
import longnight.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioReaderTest {
    private static final String PERSON =
            "{name: x, sex: male, age: 30 years, height: 175 cm, mass: 72 kg, body-fat: 14 %, fitness: 45 mL/kg/min}";
    private static final String CHAMBER = """
            title: t
            person: %s
            plan: {from: 09:00, duration: 2 h, posture: chair, sleep: no, daily-rhythm: no}
            laboratory:
              nude: yes
              air: 10 °C
              wind: 0.2 m/s
              humidity: 50 %%
            """.formatted(PERSON);
    private static final String OUTDOORS = """
            title: t
            person: %s
            plan: {from: 22:00, to: 00:30, posture: standing, sleep: no}
            site: {altitude: 1200 ft, place: hollow, sky: 90 %%, ground: rock}
            weather:
              table:
                - {time: 22:00, air: -1 °C, wind: 1 m/s, humidity: 80 %%, cloud: 0 %%, precipitation: 0 mm/h}
                - {time: 00:30, air: -3 °C, wind: 1 m/s, humidity: 80 %%, cloud: 0 %%, precipitation: 0 mm/h}
            kit: {name: k, wardrobe: w.yaml, worn: [shirt], pads: []}
            """.formatted(PERSON);

    @TempDir
    private Path folder;

    @Test
    void chamber() throws IOException {
        Scenario scenario = read(CHAMBER);
        assertThat(scenario.plan()).isEqualTo(NightPlan.still(9 * 3600, 7200, Posture.CHAIR, false, false, Double.NaN));
        assertThat(((Outfit.Given) scenario.outfit()).resistance()).isEmpty();
        assertThat(scenario.surroundings().ground()).isNull();
        OutdoorState state = new OutdoorState();
        scenario.surroundings().at(3600, state);
        assertThat(state.airCelsius).isEqualTo(10);
        assertThat(state.radiantCelsius).isEqualTo(10);
        assertThat(state.windAt).containsOnly(0.2);
    }

    @Test
    void laboratoryClothingAndHeat() throws IOException {
        Scenario scenario = read(CHAMBER.replace(
                "nude: yes", "heat: 58 W/m2\n  clothing: {chest: 1 clo, upper-arm: 0.5 clo}\n  moisture-index: 40 %"));
        assertThat(scenario.outfit())
                .isEqualTo(new Outfit.Given(Map.of(Zone.CHEST, 0.155, Zone.UPPER_ARM, 0.0775), 0.4));
        assertThat(scenario.plan().imposedHeat()).isEqualTo(58);
        assertThat(scenario.guesses()).isEmpty();
    }

    @Test
    void stepsRunStraight() throws IOException {
        Scenario scenario = read(CHAMBER.replace("  air: 10 °C\n  wind: 0.2 m/s\n  humidity: 50 %\n", """
                  steps:
                    - {at: 0 h, air: 28 °C, wind: 0.1 m/s, humidity: 50 %}
                    - {at: 60 min, air: 10 °C, radiant: 12 °C, wind: 0.3 m/s, humidity: 50 %}
                """));
        OutdoorState state = new OutdoorState();
        scenario.surroundings().at(1800, state);
        assertThat(state.airCelsius).isCloseTo(19, within(1e-12));
        assertThat(state.radiantCelsius).isCloseTo(20, within(1e-12));
        scenario.surroundings().at(7200, state);
        assertThat(state.airCelsius).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "  nude: yes|  nude: no|n.yaml:1:1: a night without \"kit\"; write what is worn, or clothing or nude in the laboratory",
                "  nude: yes|  nude: yes, sir|n.yaml:5:9: \"nude\" is \"yes, sir\"; allowed is yes, no",
                "  air: 10 °C|  radiant: 10 °C|n.yaml:5:3: a laboratory without \"air\"; write \"air\" from -90 °C to 50 °C",
                "  air: 10 °C|  air: 10 °C/h|n.yaml:6:8: \"air\": \"10 °C/h\" is not a temperature; write a temperature in °C, °F, K",
                "  nude: yes|  nude: yes, clothing: x|n.yaml:5:22: a second colon in one line, or a line set in too far;",
                "  humidity: 50 %|  steps: []|n.yaml:6:3: \"air\" beside \"steps\"; write it in the steps",
                "posture: chair|posture: hammock|n.yaml:3:45: \"posture\" is \"hammock\"; allowed is standing, chair,",
            })
    void laboratoryFaults(String written, String instead, String message) throws IOException {
        assertThat(CHAMBER).contains(written);
        assertThat(message(CHAMBER.replace(written, instead))).startsWith(message);
    }

    @Test
    void wordsAndNumbersOfASite() throws IOException {
        Scenario scenario = read(OUTDOORS);
        assertThat(scenario.plan().duration()).isEqualTo(2.5 * 3600);
        assertThat(scenario.surroundings().ground()).isNotNull();
        OutdoorState state = new OutdoorState();
        scenario.surroundings().at(0, state);
        assertThat(state.airCelsius).isEqualTo(-5); // the hollow's cold pool, -4 K
        assertThat(scenario.guesses())
                .anyMatch(guess -> guess.quantity().equals("offset of the air temperature") && guess.value() == -4)
                .noneMatch(guess -> guess.quantity().equals("share of the sky seen"));
    }

    @Test
    void ownGround() throws IOException {
        Scenario scenario = read(OUTDOORS.replace(
                "ground: rock",
                "ground: {name: slab, conductivity: 2 W/mK, heat-capacity: 2000 kJ/m3K, cooling: 20 %, snow: no}"));
        assertThat(scenario.surroundings().ground()).isEqualTo(new Ground("slab", 2, 2e6, 0.2, false));
        assertThat(message(OUTDOORS.replace("ground: rock", "ground: {name: slab}")))
                .isEqualTo(
                        "n.yaml:4:61: a ground without \"conductivity\"; write \"conductivity\" from 0.02 W/mK to 5 W/mK");
        assertThat(message(OUTDOORS.replace("place: hollow, ", "")))
                .startsWith("n.yaml:4:7: a site without \"roughness\"; write a \"place\" (open, ");
    }

    /** A name in a file counts from that file, not from where the program was started. */
    @Test
    void sectionsInFilesOfTheirOwn() throws IOException {
        Files.createDirectory(folder.resolve("people"));
        Files.writeString(folder.resolve("people/x.yaml"), PERSON);
        assertThat(read(CHAMBER.replace(PERSON, "people/x.yaml")).person().name())
                .isEqualTo("x");
        Files.writeString(folder.resolve("people/x.yaml"), PERSON.replace("72 kg", "7 kg"));
        assertThat(message(CHAMBER.replace(PERSON, "people/x.yaml")))
                .isEqualTo("people/x.yaml:1:59: \"mass\" is \"7 kg\"; allowed is from 10 kg to 300 kg");
    }

    @Test
    void layeredSaysSo() throws IOException {
        String two = OUTDOORS.replace("worn: [shirt]", "worn: [shirt, coat, other]");
        assertThat(message(two)).startsWith("n.yaml:9:54: \"other\", a second outer parka beside \"coat\";");
        Outfit.Kit kit = (Outfit.Kit)
                read(two.replace("pads: []", "pads: [], layered: yes")).outfit();
        assertThat(kit.pieces().stream().map(piece -> piece.spec().id())).isEqualTo(List.of("shirt", "coat", "other"));
    }

    /** Every key has its table, and every word, range and example in the tables is good. */
    @Test
    void tablesAreInOrder() {
        for (Table table : Tables.ALL) {
            assertThat(table.names())
                    .as(table.name())
                    .doesNotHaveDuplicates()
                    .allMatch(name -> name.matches("[a-z-]+"));
            for (Key key : table.keys()) {
                assertThat(key.about()).as(key.name()).isNotBlank();
                if (key.dimension() != null) {
                    assertThat(key.allows(Quantities.parse(key.low(), key.dimension())))
                            .isTrue();
                    assertThat(key.allows(Quantities.parse(key.high(), key.dimension())))
                            .isTrue();
                }
                if (key.inner() != null) {
                    assertThat(Tables.ALL).contains(key.inner());
                }
            }
        }
    }

    private Scenario read(String night) throws IOException {
        Files.writeString(folder.resolve("w.yaml"), """
                pieces:
                  - {id: shirt, kind: base-top, mass: 150 g}
                  - {id: coat, kind: parka, mass: 800 g, fill: 100 g/m2}
                  - {id: other, kind: parka, mass: 900 g, fill: 150 g/m2}
                """);
        Path file = folder.resolve("n.yaml");
        Files.writeString(file, night);
        return ScenarioReader.read(file).scenario();
    }

    private String message(String night) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> read(night));
        assertThat(fault).as("nothing was refused").isNotNull();
        return String.valueOf(fault.getMessage()).replace(folder + "/", "");
    }
}
