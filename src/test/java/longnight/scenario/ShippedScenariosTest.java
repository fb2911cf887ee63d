package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Outfit;
import longnight.night.Caution;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files we ship: each reads, and says what its remarks promise. */
class ShippedScenariosTest {
    private static final Path SCENARIOS = Path.of("scenarios");

    static List<Path> nights() throws IOException {
        return files("").stream()
                .filter(file -> !file.endsWith("wardrobe.yaml"))
                .toList();
    }

    static List<Path> kits() throws IOException {
        return files("kits");
    }

    static List<Path> people() throws IOException {
        return files("people");
    }

    private static List<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void thereIsEnoughToChooseFrom() throws IOException {
        assertThat(nights()).hasSizeGreaterThanOrEqualTo(6);
        assertThat(kits()).hasSizeGreaterThanOrEqualTo(4);
        assertThat(people()).hasSizeGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("nights")
    void nightIsCoveredAndInsideTheModel(Path night) {
        Scenario scenario = ScenarioReader.read(night).scenario();
        assertThat(scenario.limits()).isEmpty();
        assertThat(scenario.surroundings().firstTime()).isLessThanOrEqualTo(0);
        assertThat(scenario.surroundings().lastTime())
                .isGreaterThanOrEqualTo(scenario.plan().duration());
    }

    @ParameterizedTest
    @MethodSource("kits")
    void kitIsWorn(Path kit) {
        Outfit.Kit worn = kit(kit);
        assertThat(worn.pieces()).hasSizeGreaterThanOrEqualTo(8);
    }

    @ParameterizedTest
    @MethodSource("people")
    void personIsRead(Path person) {
        Findings findings = new Findings();
        Section section = new Section(YamlFile.read(TextFile.read(person, Place.of(person))), Tables.PERSON);
        assertThat(PersonReader.read(section, findings).name()).isNotBlank();
        assertThat(findings.limits).isEmpty();
    }

    @Test
    void heavierKitsAreHeavier() {
        assertThat(mass("light")).isLessThan(mass("typical"));
        assertThat(mass("typical")).isLessThan(mass("heavy"));
        // What the remark in cotton.yaml claims, boots and shoes apart.
        assertThat(mass("cotton") - footwear("cotton")).isGreaterThan(mass("light") - footwear("light"));
    }

    @Test
    void firstNightIsTheColdestOfTheRecord() {
        Loaded loaded = ScenarioReader.read(SCENARIOS.resolve("first-night.yaml"));
        assertThat(loaded.scenario().nightName()).isEqualTo("station 725300, night of 01-07 (recorded in 1986)");
        assertThat(loaded.scenario().kitName()).isEqualTo("typical");
        assertThat(loaded.cautions()).contains(Caution.TYPICAL_YEAR, Caution.PERSON_GUESSED);
        OutdoorState state = new OutdoorState();
        loaded.scenario().surroundings().at(0, state);
        assertThat(state.airCelsius).isEqualTo(-16.7);
    }

    /** how much of its free warmth a sewn piece keeps stands among the guesses. */
    @Test
    void constructionIsAmongTheGuesses() {
        List<Guess> guesses = ScenarioReader.read(SCENARIOS.resolve("first-night.yaml"))
                .scenario()
                .guesses();
        assertThat(guesses)
                .anyMatch(guess -> guess.subject().equals("batt-parka")
                        && guess.quantity().contains("kept")
                        && guess.value() == 0.9);
    }

    /** an old parka with worn-out finish is a piece like any other. */
    @Test
    void theOldParka() {
        GarmentSpec old = wardrobe("wardrobe.yaml").pieces().get("old-parka").spec();
        assertThat(old.condition()).isEqualTo(GarmentSpec.Finish.GONE);
        assertThat(old.mass()).isCloseTo(1.95, within(1e-12));
    }

    /** One wardrobe, two forms: the pieces that both have are the same pieces. */
    @Test
    void spreadsheetAndYamlAgree() {
        WardrobeReader.Wardrobe yaml = wardrobe("wardrobe.yaml");
        WardrobeReader.Wardrobe csv = wardrobe("wardrobe.csv");
        assertThat(csv.pieces()).hasSize(14);
        csv.pieces().forEach((id, piece) -> {
            if (!id.equals("down-jacket")) { // says less in the spreadsheet
                assertThat(piece.spec()).isEqualTo(yaml.pieces().get(id).spec());
            }
        });
        assertThat(csv.pieces().get("down-jacket").spec().name()).isEqualTo("light down jacket, \"sewn through\"");
        assertThat(csv.pads().get("sit-pad").pad())
                .isEqualTo(yaml.pads().get("sit-pad").pad());
    }

    private static WardrobeReader.Wardrobe wardrobe(String name) {
        Path path = SCENARIOS.resolve(name);
        return WardrobeReader.read(TextFile.read(path, Place.of(path)));
    }

    private static Outfit.Kit kit(Path path) {
        Section section = new Section(YamlFile.read(TextFile.read(path, Place.of(path))), Tables.KIT);
        Dress dress = KitReader.read(section, new Findings());
        return dress.outfit(dress.whole(), true);
    }

    private static double mass(String kit) {
        Outfit.Kit worn = kit(SCENARIOS.resolve("kits").resolve(kit + ".yaml"));
        double pads = worn.pads().stream().mapToDouble(pad -> pad.mass()).sum();
        return pads + worn.pieces().stream().mapToDouble(g -> g.spec().mass()).sum();
    }

    private static double footwear(String kit) {
        return kit(SCENARIOS.resolve("kits").resolve(kit + ".yaml")).pieces().stream()
                .map(Garment::spec)
                .filter(spec -> spec.name().contains("boots") || spec.name().contains("shoes"))
                .mapToDouble(GarmentSpec::mass)
                .sum();
    }
}
