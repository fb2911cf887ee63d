package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Outfit;
import longnight.night.Caution;
import longnight.night.GroupNight;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.night.WaterReport;
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
        assertThat(scenario.surroundings().firstTime())
                .isLessThanOrEqualTo(scenario.plan().start());
        assertThat(scenario.surroundings().lastTime())
                .isGreaterThanOrEqualTo(scenario.plan().duration());
    }

    /** Each runs to its dawn, with its water and its heat accounted for. */
    @ParameterizedTest
    @MethodSource("nights")
    void nightRuns(Path night) {
        NightResult result = run(ScenarioReader.read(night).scenario());
        assertThat(result.stopped()).isNaN();
        assertThat(result.ledger().heatClosure()).isLessThan(1e-9);
        assertThat(result.water().closure()).isLessThan(1e-9);
        for (double core : result.trace().core()) {
            assertThat(core).isBetween(34.0, 39.5);
        }
    }

    /** The classroom's first pair: wet, the down parka costs more than the batt parka; dry, it is the other way round. */
    @Test
    void wetDownAgainstWetBatt() {
        Scenario down = night("wet-down");
        Scenario batt = night("wet-batt");
        assertThat(mass(down, "down-parka")).isEqualTo(mass(batt, "batt-parka"));
        NightResult wetDown = run(down);
        NightResult wetBatt = run(batt);
        assertThat(liquidAtDusk(wetDown)).isCloseTo(1.0, within(1e-9));
        assertThat(liquidAtDusk(wetBatt)).isCloseTo(1.0, within(1e-9));
        assertThat(wetDown.shortfallHeat()).isGreaterThan(wetBatt.shortfallHeat());
        double dryDown = run(withoutDamp(down)).shortfallHeat();
        double dryBatt = run(withoutDamp(batt)).shortfallHeat();
        assertThat(dryDown).isLessThan(dryBatt);
        assertThat(wetDown.shortfallHeat() - dryDown).isGreaterThan(2 * (wetBatt.shortfallHeat() - dryBatt));
    }

    /** The second pair: nineteen minutes without the parka cost heat that the night does not give back. */
    @Test
    void parkaInMinuteOneAgainstMinuteTwenty() {
        NightResult early = run(night("parka-minute-1"));
        NightResult late = run(night("parka-minute-20"));
        assertThat(late.shortfallHeat()).isGreaterThan(early.shortfallHeat() + 50e3);
        assertThat(late.ledger().made()).isGreaterThan(early.ledger().made());
        assertThat(late.fuel().storeAtDawn()).isLessThan(early.fuel().storeAtDawn());
        assertThat(late.wholeBodyDebt()).isGreaterThan(early.wholeBodyDebt());
        // The kit is the night's, not that of the first minutes.
        assertThat(early.kitResistance()).isEqualTo(late.kitResistance()).isGreaterThan(2 * 0.155);
    }

    /** What the march leaves in the clothes is there at dusk, and costs. */
    @Test
    void wetArrivalAgainstDry() {
        NightResult wet = run(night("arrival-wet"));
        NightResult dry = run(night("arrival-dry"));
        assertThat(wet.fuel().sweatBefore()).isGreaterThan(2 * dry.fuel().sweatBefore());
        assertThat(wet.water().before()).isGreaterThan(0.3);
        assertThat(dry.water().before()).isLessThan(0.1);
        assertThat(wet.shortfallHeat()).isGreaterThan(dry.shortfallHeat() + 300e3);
        assertThat(wet.wholeBodyDebt()).isGreaterThan(dry.wholeBodyDebt());
    }

    @Test
    void secondNightCostsMoreThanADryOne() {
        Scenario damp = night("second-night");
        assertThat(run(damp).shortfallHeat())
                .isGreaterThan(run(withoutDamp(damp)).shortfallHeat() + 100e3);
    }

    /** Six degrees and rain: the water is liquid and comes from outside. The front: what was liquid is ice by morning. */
    @Test
    void rainAndFront() {
        NightResult rain = run(night("wet-ridge-rain"));
        assertThat(rain.water().fromOutside()).isGreaterThan(0.5);
        assertThat(rain.water().layers()).allMatch(layer -> layer.iceAtDawn() == 0);
        assertThat(rain.water().layers()).anyMatch(layer -> layer.id().equals("wool-top"));
        NightResult front = run(night("sleet-front"));
        assertThat(front.water().fromOutside()).isGreaterThan(0.5);
        double ice = 0;
        double liquid = 0;
        for (WaterReport.Layer layer : front.water().layers()) {
            ice += layer.iceAtDawn();
            liquid += layer.liquidAtDawn();
        }
        assertThat(ice).isGreaterThan(3 * liquid);
    }

    static List<Path> grids() throws IOException {
        return files("grids");
    }

    /** Reading looks at every combination; each is within the model's range. */
    @ParameterizedTest
    @MethodSource("grids")
    void gridCanBeRun(Path file) {
        Grid grid = Grid.read(file);
        assertThat(grid.rows()).isGreaterThanOrEqualTo(32);
        for (int row = 0; row < grid.rows(); row++) {
            assertThat(grid.question(row).limits()).isEmpty();
        }
    }

    static List<Path> groups() throws IOException {
        return files("groups");
    }

    @ParameterizedTest
    @MethodSource("groups")
    void groupIsReadAndInsideTheModel(Path file) {
        GroupNight group = GroupReader.read(file);
        assertThat(group.members()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(group.members()).allMatch(member -> member.alone().limits().isEmpty());
        assertThat(FileCheck.check(file).faults()).isEmpty();
        assertThat(FileCheck.check(file).kind()).isEqualTo(FileKind.GROUP);
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

    private static Scenario night(String name) {
        return ScenarioReader.read(SCENARIOS.resolve(name + ".yaml")).scenario();
    }

    private static NightResult run(Scenario scenario) {
        return NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    private static Scenario withoutDamp(Scenario scenario) {
        NightPlan plan = scenario.plan();
        return scenario.withPlan(new NightPlan(
                plan.startOfDay(),
                plan.duration(),
                plan.clockActive(),
                plan.imposedHeat(),
                plan.phases(),
                plan.intakes(),
                plan.heats(),
                Map.of(),
                plan.fuel()));
    }

    private static double liquidAtDusk(NightResult result) {
        return result.water().layers().stream()
                .mapToDouble(WaterReport.Layer::liquidAtDusk)
                .sum();
    }

    private static double mass(Scenario scenario, String id) {
        return ((Outfit.Kit) scenario.outfit())
                .pieces().stream()
                        .map(Garment::spec)
                        .filter(spec -> spec.id().equals(id))
                        .mapToDouble(GarmentSpec::mass)
                        .sum();
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
