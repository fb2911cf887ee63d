package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longnight.body.BodyParameter;
import longnight.body.law.Drill;
import longnight.body.law.HeatPack;
import longnight.body.law.WalkingSurface;
import longnight.clothing.Outfit;
import longnight.clothing.PatchStack;
import longnight.figure.Posture;
import longnight.night.Caution;
import longnight.night.March;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightPlan;
import longnight.night.Phase;
import longnight.night.Scenario;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A plan of many phases: what comes of it, and what of it is refused, where, with which words. */
class PlanReaderTest {
    private static final String NIGHT = """
            title: t
            person: {name: tester, sex: female, age: 30 years, height: 170 cm, mass: 65 kg, body-fat: 25 %, fitness: 42 mL/kg/min}
            site: {altitude: 900 m, place: open, ground: snow}
            kit: {name: k, wardrobe: w.yaml, worn: [shirt, trousers, fleece, parka], carried: [wool], pads: [pad]}
            weather:
              table:
                - {time: 15:00, air: -5 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
                - {time: 18:00, air: -5 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
                - {time: 21:00, air: -6 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
                - {time: 00:00, air: -8 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
                - {time: 03:00, air: -9 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
                - {time: 06:00, air: -9 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}
            plan:
              from: 18:00
              to: 06:00
              posture: sitting-knees-up
              sleep: yes
              fuel: missed-meals
              damp: {shirt: 40 %, trousers: 50 g}
              before:
                - duration: 90 min
                  walk: {speed: 3.6 km/h, grade: -8 %, load: 12 kg, footprint: 10 cm}
                  wear: [shirt, trousers, fleece]
                - {duration: 30 min, posture: standing, on: [parka]}
              phases:
                - {from: 18:00, to: 20:00, posture: chair, sleep: no, drill: {effort: light, each-hour: 15 min}}
                - {duration: 3 h, off: [parka], swap: {shirt: wool}, huddle: spooning}
                - {from: 23:00, to: 06:00, on: [parka], shelter: {wind: 20 %, roof: yes}}
              meals:
                - {at: 19:00, energy: 2000 kJ}
              drinks:
                - {at: 16:30, volume: 0.4 L, temperature: 60 °C, energy: 100 kcal, carbohydrate: 90 %}
              warm:
                - {at: 19:30, kind: bottle, mass: 1 kg, temperature: 70 °C}
                - {at: 22:00, kind: iron-pack, mass: 50 g, duration: 10 h}
            """;

    private static final String WARDROBE = """
            pieces:
              - {id: shirt, kind: base-top, mass: 150 g}
              - {id: wool, kind: base-top, mass: 220 g, fabric: wool-knit}
              - {id: trousers, kind: trousers, mass: 400 g, face: open}
              - {id: fleece, kind: mid-top, mass: 300 g, fabric: fleece}
              - {id: parka, kind: parka, mass: 760 g, fill: 100 g/m2, face: tight}
              - {id: spare, kind: parka, mass: 900 g, fill: 130 g/m2, face: tight, finish: new}
            pads:
              - {id: pad, mass: 55 g, area: 0.12 m2, thickness: 12 mm}
            """;

    private static final String WALK = "walk: {speed: 3.6 km/h, grade: -8 %, load: 12 kg, footprint: 10 cm}";
    private static final String SECOND = "{duration: 3 h, off: [parka], swap: {shirt: wool}, huddle: spooning}";
    private static final String THIRD = "{from: 23:00, to: 06:00, on: [parka], shelter: {wind: 20 %, roof: yes}}";
    private static final String PHASE_WORDS =
            "standing, chair, sitting-cross-legged, sitting-knees-up, sitting-legs-out, lying-supine, lying-curled";
    private static final String PIECES =
            "the kit has the pieces: shirt, trousers, fleece, parka, wool; or write a kind of piece";

    @TempDir
    private Path folder;

    @BeforeEach
    void writeWardrobe() throws IOException {
        Files.writeString(folder.resolve("w.yaml"), WARDROBE);
    }

    // --- what comes of it ---

    @Test
    void phases() throws IOException {
        Scenario scenario = read(NIGHT);
        NightPlan plan = scenario.plan();
        assertThat(plan.phases().stream().map(Phase::from)).containsExactly(-7200.0, -1800.0, 0.0, 7200.0, 18000.0);
        assertThat(plan.phases().stream().map(Phase::to)).containsExactly(-1800.0, 0.0, 7200.0, 18000.0, 43200.0);
        assertThat(plan.phases().stream().map(Phase::name))
                .containsExactly("march", "halt", "part 1 of the night", "part 2 of the night", "part 3 of the night");
        Phase march = plan.phases().get(0);
        assertThat(march.march()).isEqualTo(new March(1, -8, 12, WalkingSurface.snow(0.10)));
        assertThat(march.posture()).isEqualTo(Posture.STANDING);
        assertThat(march.sleepAllowed()).isFalse();
        Phase drilling = plan.phases().get(2);
        assertThat(drilling.posture()).isEqualTo(Posture.CHAIR);
        assertThat(drilling.sleepAllowed()).isFalse();
        assertThat(drilling.drillShare()).isEqualTo(0.25);
        assertThat(drilling.drillHeat() * 65).isCloseTo(Drill.LIGHT.rate(65), within(1e-9));
        Phase together = plan.phases().get(3);
        assertThat(together.posture()).isEqualTo(Posture.SITTING_KNEES_UP);
        assertThat(together.sleepAllowed()).isTrue();
        assertThat(together.huddle()).isEqualTo(0.20);
        Phase sheltered = plan.phases().get(4);
        assertThat(sheltered.windShare()).isEqualTo(0.2);
        assertThat(sheltered.underRoof()).isTrue();
    }

    @Test
    void clothing() throws IOException {
        List<Phase> phases = read(NIGHT).plan().phases();
        assertThat(worn(phases.get(0))).containsExactly("shirt", "trousers", "fleece");
        assertThat(((Outfit.Kit) phases.get(0).outfit()).pads()).isEmpty();
        // The whole kit, on the march's halt and at dusk: the scenario's own outfit.
        assertThat(phases.get(1).outfit()).isNull();
        assertThat(phases.get(2).outfit()).isNull();
        assertThat(worn(phases.get(3))).containsExactly("wool", "trousers", "fleece");
        assertThat(((Outfit.Kit) phases.get(3).outfit()).pads()).hasSize(1);
        assertThat(worn(phases.get(4))).containsExactly("wool", "trousers", "fleece", "parka");
    }

    /** What is put on goes where the kit has it, under what is worn over it. */
    @Test
    void putOnUnderneath() throws IOException {
        List<Phase> phases = read(NIGHT.replace("wear: [shirt, trousers, fleece]", "wear: [shirt, trousers, parka]")
                        .replace("on: [parka]}\n  phases", "on: [fleece]}\n  phases"))
                .plan()
                .phases();
        assertThat(phases.get(1).outfit()).isNull();
    }

    /** Kinds in place of ids, so that another kit can take the place of this one. */
    @Test
    void piecesByTheirKind() throws IOException {
        String kinds = NIGHT.replace("wear: [shirt, trousers, fleece]", "wear: [base-top, trousers, rain-top, mid-top]")
                .replace("off: [parka], swap: {shirt: wool}", "off: [mid-top, cape, wind-top]")
                .replace("06:00, on: [parka]", "06:00, on: [mid-top, hood], open: [mid-top, cape]")
                .replace("damp: {shirt: 40 %, trousers: 50 g}", "damp: {base-top: 40 %, cape: 30 g, trousers: 50 g}");
        NightPlan plan = read(kinds).plan();
        List<Phase> phases = plan.phases();
        assertThat(worn(phases.get(0))).containsExactly("shirt", "trousers", "fleece");
        assertThat(worn(phases.get(3))).containsExactly("shirt", "trousers", "parka");
        // over the shirt and under the parka; what is only carried is not meant by its kind
        assertThat(worn(phases.get(4))).containsExactly("shirt", "trousers", "fleece", "parka");
        assertThat(((Outfit.Kit) phases.get(4).outfit()).pieces().get(2).canOpen())
                .isTrue();
        assertThat(((Outfit.Kit) phases.get(4).outfit()).pieces().get(2))
                .isNotEqualTo(((Outfit.Kit) read(NIGHT).outfit()).pieces().get(2));
        assertThat(plan.damp()).isEqualTo(read(NIGHT).plan().damp());
    }

    /** "parka" is an id in this kit, and an id wins: the spare one, of the same kind, stays on. */
    @Test
    void anIdWinsOverAKind() throws IOException {
        String two = NIGHT.replace("fleece, parka], carried", "fleece, parka, spare], layered: yes, carried");
        assertThat(worn(read(two).plan().phases().get(3))).containsExactly("wool", "trousers", "fleece", "spare");
    }

    @Test
    void foodAndWarmth() throws IOException {
        NightPlan plan = read(NIGHT).plan();
        assertThat(plan.intakes()).hasSize(2);
        assertThat(plan.intakes().get(0).time()).isEqualTo(-5400);
        assertThat(plan.intakes().get(0).drink()).isCloseTo(0.4, within(1e-12));
        assertThat(plan.intakes().get(0).celsius()).isEqualTo(60);
        assertThat(plan.intakes().get(0).energy()).isEqualTo(418_400);
        assertThat(plan.intakes().get(0).carbohydrate()).isCloseTo(376_560, within(1e-6));
        assertThat(plan.intakes().get(1).time()).isEqualTo(3600);
        assertThat(plan.intakes().get(1).carbohydrate()).isCloseTo(0.55 * 2e6, within(1e-6));
        assertThat(plan.heats().get(0).bottle()).isEqualTo(1);
        assertThat(plan.heats().get(0).celsius()).isEqualTo(70);
        assertThat(plan.heats().get(1).heat())
                .isCloseTo(
                        BodyParameter.HEAT_PACK_TO_BODY.nominal()
                                * HeatPack.iron(0.05, 36000).heat(),
                        within(1e-6));
        assertThat(plan.fuel()).isEqualTo(BodyParameter.FUEL_MISSED_MEALS.nominal());
    }

    /** Grams become a share of the dry cloth and fill that the engine itself has over this body. */
    @Test
    void dampInGrams() throws IOException {
        Scenario scenario = read(NIGHT);
        assertThat(scenario.plan().damp().get("shirt")).isEqualTo(0.4);
        double dry = 0;
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        for (PatchStack stack : engine.stacks()) { // at dusk; the trousers are the same as on the march
            for (int k = 0; k < stack.layers(); k++) {
                dry += stack.layerIds()[k].equals("trousers") ? stack.area() * stack.dryMass()[k] : 0;
            }
        }
        assertThat(scenario.plan().damp().get("trousers") * dry).isCloseTo(0.05, within(1e-12));
    }

    /** What waits in the pack may be damp as well. */
    @Test
    void dampInThePack() throws IOException {
        Scenario scenario = read(NIGHT.replace("damp: {shirt: 40 %, ", "damp: {wool: 30 %, "));
        assertThat(scenario.plan().damp()).containsKeys("wool", "trousers");
        assertThat(message(NIGHT.replace("damp: {shirt: 40 %, ", "damp: {wool: 30 %, ")
                        .replace("swap: {shirt: wool}, ", "")))
                .isEqualTo("n.yaml:19:10: \"wool\" is damp but never on; name pieces that are worn in some phase");
    }

    @Test
    void moreGramsThanClothCanHold() {
        assertThat(message(NIGHT.replace("trousers: 50 g", "trousers: 5 kg")))
                .matches("n\\.yaml:19:33: damp of \"trousers\" is \"5 kg\", [0-9]{4} % of its dry cloth and fill;"
                        + " allowed is from 0 % to 500 %");
    }

    @Test
    void guessesAreListed() throws IOException {
        Scenario scenario = read(NIGHT);
        List<String> guesses = scenario.guesses().stream()
                .map(guess -> guess.subject() + ": " + guess.quantity())
                .toList();
        assertThat(guesses)
                .contains(
                        "plan: share of carbohydrate in the energy of the meal at 19:00",
                        "plan: share of a full carbohydrate store at the start",
                        "plan: share of the heat of the iron pack that reaches the body",
                        "plan: share of the skin in touch with partners, spooning",
                        "parka: state of the water-repellent finish",
                        "trousers: state of the water-repellent finish")
                .doesNotContain(
                        "shirt: state of the water-repellent finish",
                        "plan: share of carbohydrate in the energy of the drink at 16:30",
                        "plan: worn before the night");
        Scenario fed = read(NIGHT.replace("  fuel: missed-meals\n", ""));
        assertThat(fed.plan().fuel()).isEqualTo(1);
        assertThat(fed.guesses())
                .anyMatch(guess -> guess.quantity().equals("share of a full carbohydrate store at the start")
                        && guess.value() == 1);
        assertThat(read(NIGHT.replace("      wear: [shirt, trousers, fleece]\n", "")
                                .replace(", on: [parka]}\n  phases", "}\n  phases"))
                        .guesses())
                .anyMatch(guess -> guess.quantity().equals("worn before the night"));
    }

    @Test
    void finishThatIsToldIsNoGuess() throws IOException {
        assertThat(read(NIGHT.replace("carried: [wool]", "carried: [wool, spare]"))
                        .guesses())
                .noneMatch(guess -> guess.subject().equals("spare")
                        && guess.quantity().equals("state of the water-repellent finish"));
    }

    @Test
    void heavyLoadIsAGuess() throws IOException {
        assertThat(read(NIGHT).guesses()).noneMatch(guess -> guess.quantity().startsWith("heat of walking"));
        assertThat(read(NIGHT.replace("load: 12 kg", "load: 27 kg")).guesses())
                .anyMatch(guess -> guess.quantity().equals("heat of walking with 27.00 kg"));
    }

    /** Weather that begins at dusk holds back over the march, and says so; weather that begins later is a gap. */
    @Test
    void weatherBeforeDusk() throws IOException {
        assertThat(read(NIGHT).cautions()).doesNotContain(Caution.WEATHER_GUESSED);
        String first =
                "    - {time: 15:00, air: -5 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %, precipitation: 0 mm/h}\n";
        Scenario held = read(NIGHT.replace(first, ""));
        assertThat(held.cautions()).contains(Caution.WEATHER_GUESSED);
        assertThat(held.guesses())
                .anyMatch(guess -> guess.quantity().equals("weather from 16:00 to 18:00")
                        && guess.word().equals("as at 18:00"));
        assertThat(message(NIGHT.replace(first, "").replace("time: 18:00", "time: 18:30")))
                .isEqualTo("n.yaml:7:14: the weather begins at 18:30; it has to cover the night, 18:00 to 06:00");
    }

    /** From highest and lowest temperature alone the weather is known for the march as well. */
    @Test
    void weatherFromExtremesReachesBack() throws IOException {
        int table = NIGHT.indexOf("  table:");
        String night = NIGHT.substring(0, table)
                + "  {max: 1 °C, min: -9 °C, sunset: 17:00, sunrise: 07:30, wind: 2 m/s}\n"
                + NIGHT.substring(NIGHT.indexOf("plan:"));
        Scenario scenario = read(night);
        assertThat(scenario.surroundings().firstTime()).isEqualTo(-7200);
        assertThat(scenario.guesses()).noneMatch(guess -> guess.quantity().startsWith("weather from"));
    }

    /** Cold on the march is part of the question. */
    @Test
    void airBeforeDuskCounts() throws IOException {
        assertThat(read(NIGHT.replace("time: 15:00, air: -5 °C", "time: 15:00, air: -70 °C"))
                        .limits())
                .hasSize(1);
    }

    /** Clock times of a plan that starts the day before midnight and ends after it. */
    @Test
    void afterMidnight() throws IOException {
        NightPlan plan = read(NIGHT.replace("at: 19:00", "at: 01:15")).plan();
        assertThat(plan.intakes().get(1).time()).isEqualTo(7.25 * 3600);
    }

    // --- what is refused ---

    private record Bad(String name, String written, String instead, String message) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Bad> cases() {
        List<Bad> cases = new ArrayList<>();
        // phases
        cases.add(
                new Bad(
                        "overlap",
                        THIRD,
                        THIRD.replace("23:00", "22:30"),
                        "n.yaml:28:14: phases overlap: one begins at 22:30, the one before ends at 23:00; each phase begins where the one before ends"));
        cases.add(
                new Bad(
                        "hole",
                        THIRD,
                        THIRD.replace("23:00", "23:30"),
                        "n.yaml:28:14: a hole in the plan: nothing from 23:00 to 23:30; each phase begins where the one before ends"));
        cases.add(
                new Bad(
                        "hole at the end",
                        "to: 06:00, on",
                        "to: 05:00, on",
                        "n.yaml:28:25: a hole in the plan: nothing from 05:00 to 06:00; phases follow each other without holes up to the end of the night"));
        cases.add(new Bad(
                "past the end",
                "to: 06:00, on",
                "to: 07:00, on",
                "n.yaml:28:25: a phase up to 07:00; the night ends at 06:00"));
        cases.add(
                new Bad(
                        "a phase after the end",
                        SECOND,
                        "{duration: 10 h}",
                        "n.yaml:28:7: a phase after the end of the night; the one before ends at 06:00, and so does the night"));
        cases.add(new Bad(
                "first phase not at dusk",
                "{from: 18:00, to: 20:00",
                "{from: 18:30, to: 20:00",
                "n.yaml:26:14: the first phase of the night begins at 18:30; it begins with the night, at 18:00"));
        cases.add(
                new Bad(
                        "two phases at dusk",
                        SECOND,
                        "{from: 18:00, to: 23:00}",
                        "n.yaml:27:14: a second phase that begins at dusk, 18:00; the phase before ends at 20:00; begin there"));
        cases.add(new Bad(
                "phase that ends before it begins",
                SECOND,
                "{from: 20:00, to: 19:00}",
                "n.yaml:27:25: a phase from 20:00 to 19:00; it ends after it begins"));
        cases.add(new Bad(
                "phase without an end",
                SECOND,
                "{posture: chair}",
                "n.yaml:27:7: a phase without an end; write one of \"to: 22:00\" and \"duration: 2 h\""));
        cases.add(new Bad(
                "to and duration",
                SECOND,
                "{to: 23:00, duration: 3 h}",
                "n.yaml:27:19: \"duration\" beside \"to\"; write one of \"to: 22:00\" and \"duration: 2 h\""));
        cases.add(new Bad(
                "negative duration",
                "duration: 3 h",
                "duration: -3 h",
                "n.yaml:27:18: \"duration\" is \"-3 h\"; allowed is from 1 min to 20 h"));
        cases.add(new Bad(
                "negative duration before dusk",
                "duration: 90 min",
                "duration: −90 min",
                "n.yaml:21:17: \"duration\" is \"−90 min\"; allowed is from 1 min to 20 h"));
        cases.add(new Bad(
                "no duration before dusk",
                "{duration: 30 min, posture",
                "{posture",
                "n.yaml:24:7: a phase without \"duration\"; write \"duration\" from 1 min to 20 h"));
        cases.add(new Bad(
                "clock before dusk",
                "{duration: 30 min, posture",
                "{to: 18:00, duration: 30 min, posture",
                "n.yaml:24:8: \"to\" in a phase before the night; write its duration; the last one ends at 18:00"));
        cases.add(
                new Bad(
                        "too long before dusk",
                        "duration: 90 min",
                        "duration: 13 h",
                        "n.yaml:21:17: phases before the night that last 13.0 h; allowed is up to 12.0 h before a night of 12.0 h"));
        cases.add(
                new Bad(
                        "no phases",
                        "phases:\n    - {from",
                        "phases: []\n  meal:\n    - {from",
                        "n.yaml:26:3: unknown key \"meal\"; a plan has the keys from, to, duration, posture, sleep, daily-rhythm, before, phases, meals, drinks, warm, fuel, damp; did you mean \"meals\"?"));
        cases.add(new Bad(
                "halt without a posture",
                "posture: standing, on",
                "on",
                "n.yaml:24:7: a halt without \"posture\"; write \"posture\", one of " + PHASE_WORDS + ", or \"walk\""));
        cases.add(new Bad(
                "posture of a walk",
                WALK,
                WALK + "\n      posture: chair",
                "n.yaml:23:7: \"posture\" beside \"walk\"; it goes with a halt only"));
        cases.add(new Bad(
                "asleep on the march",
                WALK,
                WALK + "\n      sleep: yes",
                "n.yaml:23:7: \"sleep\" beside \"walk\"; it goes with a halt only"));
        // clothing
        cases.add(new Bad(
                "taken off, not on",
                "off: [parka]",
                "off: [parka, wool]",
                "n.yaml:27:36: \"wool\" is taken off but not on; on at that time: shirt, trousers, fleece"));
        cases.add(new Bad(
                "put on twice",
                THIRD,
                THIRD.replace("on: [parka]", "on: [parka, fleece]"),
                "n.yaml:28:44: \"fleece\" is put on but on already; on at that time: wool, trousers, fleece, parka"));
        cases.add(new Bad(
                "opened, not on",
                THIRD,
                THIRD.replace("on: [parka]", "on: [parka], open: [shirt]"),
                "n.yaml:28:52: \"shirt\" is opened but not on; on at that time: wool, trousers, fleece, parka"));
        cases.add(new Bad(
                "opened, no front",
                THIRD,
                THIRD.replace("on: [parka]", "on: [parka], open: [trousers]"),
                "n.yaml:28:52: \"trousers\" is opened; only pieces that cover the chest have a front to open"));
        cases.add(new Bad(
                "unknown piece put on",
                THIRD,
                THIRD.replace("on: [parka]", "on: [prka]"),
                "n.yaml:28:37: \"prka\" is no piece of the kit; " + PIECES + "; did you mean \"parka\"?"));
        cases.add(new Bad(
                "unknown piece taken off",
                "off: [parka]",
                "off: [cloak]",
                "n.yaml:27:29: \"cloak\" is no piece of the kit; " + PIECES));
        cases.add(new Bad(
                "nothing of these kinds is left to wear",
                "wear: [shirt, trousers, fleece]",
                "wear: [cape, hood]",
                "n.yaml:23:13: a phase in which nothing is worn; name at least one piece"));
        cases.add(new Bad(
                "kinds in the wrong order",
                "wear: [shirt, trousers, fleece]",
                "wear: [mid-top, base-top]",
                "n.yaml:23:23: \"shirt\" (base-top) over \"fleece\"; pieces are listed from the skin outwards"));
        cases.add(new Bad(
                "an id after its kind",
                "wear: [shirt, trousers, fleece]",
                "wear: [base-top, shirt]",
                "n.yaml:23:24: \"shirt\" for the second time; there is one of it; name it once"));
        cases.add(new Bad(
                "a kind of which the suggestion is near",
                "off: [parka]",
                "off: [mid-tops]",
                "n.yaml:27:29: \"mid-tops\" is no piece of the kit; " + PIECES + "; did you mean \"mid-top\"?"));
        cases.add(
                new Bad(
                        "a kind swapped",
                        "swap: {shirt: wool}",
                        "swap: {base-top: wool}",
                        "n.yaml:27:44: \"base-top\" is a kind, and one piece is wanted here; the kit has the pieces: shirt, trousers, fleece, parka, wool"));
        cases.add(
                new Bad(
                        "damp of a kind, too wet",
                        "damp: {shirt: 40 %, trousers: 50 g}",
                        "damp: {base-top: 700 %}",
                        "n.yaml:19:20: damp of \"shirt\" is \"700 %\", 700 % of its dry cloth and fill; allowed is from 0 % to 500 %"));
        cases.add(new Bad(
                "of the wardrobe, not of the kit",
                "swap: {shirt: wool}",
                "swap: {shirt: spare}",
                "n.yaml:27:51: \"spare\" is no piece of the kit; " + PIECES));
        cases.add(new Bad(
                "unknown piece swapped",
                "swap: {shirt: wool}",
                "swap: {shrt: wool}",
                "n.yaml:27:44: \"shrt\" is no piece of the kit; " + PIECES + "; did you mean \"shirt\"?"));
        cases.add(new Bad(
                "swapped, not on",
                "swap: {shirt: wool}",
                "swap: {parka: wool}",
                "n.yaml:27:44: \"parka\" is swapped but not on; on at that time: shirt, trousers, fleece"));
        cases.add(new Bad(
                "swap that is a list",
                "swap: {shirt: wool}",
                "swap: [shirt, wool]",
                "n.yaml:27:43: a list for \"swap\"; write \"swap\": piece by piece, \"{worn: put-on}\""));
        cases.add(new Bad(
                "wear and on",
                "wear: [shirt, trousers, fleece]",
                "wear: [shirt, trousers]\n      on: [fleece]",
                "n.yaml:24:7: \"on\" beside \"wear\"; write one of them"));
        cases.add(new Bad(
                "wear a piece twice",
                "wear: [shirt, trousers, fleece]",
                "wear: [shirt, trousers, shirt]",
                "n.yaml:23:31: \"shirt\" for the second time; there is one of it; name it once"));
        cases.add(new Bad(
                "wear nothing",
                "wear: [shirt, trousers, fleece]",
                "wear: []",
                "n.yaml:23:13: a phase in which nothing is worn; name at least one piece"));
        cases.add(new Bad(
                "wear in the wrong order",
                "wear: [shirt, trousers, fleece]",
                "wear: [fleece, shirt]",
                "n.yaml:23:22: \"shirt\" (base-top) over \"fleece\"; pieces are listed from the skin outwards"));
        cases.add(new Bad(
                "worn and carried",
                "carried: [wool]",
                "carried: [wool, fleece]",
                "n.yaml:4:90: \"fleece\" worn and carried; there is one of it; name it once"));
        // walking
        cases.add(new Bad(
                "too fast",
                "speed: 3.6 km/h",
                "speed: 8 km/h",
                "n.yaml:22:21: \"speed\" is \"8 km/h\"; allowed is from 0.1 m/s to 1.96 m/s"));
        cases.add(new Bad(
                "backwards",
                "speed: 3.6 km/h",
                "speed: -2 km/h",
                "n.yaml:22:21: \"speed\" is \"-2 km/h\"; allowed is from 0.1 m/s to 1.96 m/s"));
        cases.add(new Bad(
                "too steep down",
                "grade: -8 %",
                "grade: -41 %",
                "n.yaml:22:38: \"grade\" is \"-41 %\"; allowed is from -40 % to 45 %"));
        cases.add(new Bad(
                "too steep up",
                "grade: -8 %",
                "grade: 46 %",
                "n.yaml:22:38: \"grade\" is \"46 %\"; allowed is from -40 % to 45 %"));
        cases.add(new Bad(
                "grade without a unit",
                "grade: -8 %",
                "grade: -8",
                "n.yaml:22:38: \"grade\": \"-8\" has no unit; write a share in %; did you mean \"-8 %\"?"));
        cases.add(new Bad(
                "too heavy",
                "load: 12 kg",
                "load: 71 kg",
                "n.yaml:22:50: \"load\" is \"71 kg\"; allowed is from 0 kg to 70 kg"));
        cases.add(
                new Bad(
                        "lighter than what is worn",
                        "load: 12 kg",
                        "load: 600 g",
                        "n.yaml:22:50: \"load\" is \"600 g\", less than the 0.85 kg worn; write the mass of everything worn and carried"));
        cases.add(
                new Bad(
                        "surface and footprint",
                        "footprint: 10 cm",
                        "surface: road, footprint: 10 cm",
                        "n.yaml:22:72: \"footprint\" beside \"surface\"; write one of \"surface\" (road, dirt-road, light-brush, packed-snow, heavy-brush, swamp, loose-sand) and \"footprint\", its depth in snow"));
        cases.add(
                new Bad(
                        "neither surface nor footprint",
                        ", footprint: 10 cm",
                        "",
                        "n.yaml:22:13: a walk without \"surface\"; write one of \"surface\" (road, dirt-road, light-brush, packed-snow, heavy-brush, swamp, loose-sand) and \"footprint\", its depth in snow"));
        cases.add(
                new Bad(
                        "beyond her breath",
                        "grade: -8 %",
                        "grade: 30 %",
                        "n.yaml:22:13: a walk that takes 1252 W; tester has at most 915 W (from \"fitness\"); write less speed, grade or load"));
        // drill, shelter, huddle
        cases.add(new Bad(
                "drill for more than an hour of each",
                "each-hour: 15 min",
                "each-hour: 70 min",
                "n.yaml:26:93: \"each-hour\" is \"70 min\"; allowed is from 1 min to 60 min"));
        cases.add(
                new Bad(
                        "unknown drill",
                        "effort: light",
                        "effort: ligt",
                        "n.yaml:26:75: \"effort\" is \"ligt\"; allowed is light, general, moderate, vigorous; did you mean \"light\"?"));
        cases.add(new Bad(
                "shelter that adds wind",
                "wind: 20 %, roof",
                "wind: 120 %, roof",
                "n.yaml:28:61: \"wind\" is \"120 %\"; allowed is from 3 % to 100 %"));
        cases.add(
                new Bad(
                        "unknown huddle",
                        "huddle: spooning",
                        "huddle: sponing",
                        "n.yaml:27:66: \"huddle\" is \"sponing\"; allowed is alone, back-to-back, side-by-side, middle-of-row, arms-round, spooning; did you mean \"spooning\"?"));
        // food, drink, warmth
        cases.add(new Bad(
                "drink hotter than boiling",
                "temperature: 60 °C",
                "temperature: 104 °C",
                "n.yaml:32:47: \"temperature\" is \"104 °C\"; allowed is from 0 °C to 100 °C"));
        cases.add(new Bad(
                "frozen drink",
                "temperature: 60 °C",
                "temperature: -1 °C",
                "n.yaml:32:47: \"temperature\" is \"-1 °C\"; allowed is from 0 °C to 100 °C"));
        cases.add(new Bad(
                "drink of no size",
                "volume: 0.4 L, ",
                "",
                "n.yaml:32:7: a drink without \"volume\"; write one of \"volume: 0.4 L\" and \"mass: 400 g\""));
        cases.add(new Bad(
                "drink of two sizes",
                "volume: 0.4 L",
                "volume: 0.4 L, mass: 400 g",
                "n.yaml:32:34: \"mass\" beside \"volume\"; write one of \"volume: 0.4 L\" and \"mass: 400 g\""));
        cases.add(new Bad(
                "carbohydrate of nothing",
                "energy: 100 kcal, ",
                "",
                "n.yaml:32:54: \"carbohydrate\" without \"energy\"; write the energy"));
        cases.add(new Bad(
                "meal outside the plan",
                "at: 19:00",
                "at: 07:00",
                "n.yaml:30:12: \"at\" is \"07:00\", outside the plan; the plan runs from 16:00 to 06:00"));
        cases.add(new Bad(
                "meal at dawn",
                "at: 19:00",
                "at: 06:00",
                "n.yaml:30:12: \"at\" is \"06:00\", outside the plan; the plan runs from 16:00 to 06:00"));
        cases.add(new Bad(
                "meal of negative energy",
                "energy: 2000 kJ",
                "energy: -2000 kJ",
                "n.yaml:30:27: \"energy\" is \"-2000 kJ\"; allowed is from 1 kJ to 20 MJ"));
        cases.add(new Bad(
                "bottle outside the plan",
                "at: 19:30",
                "at: 15:59",
                "n.yaml:34:12: \"at\" is \"15:59\", outside the plan; the plan runs from 16:00 to 06:00"));
        cases.add(new Bad(
                "boiling bottle",
                "temperature: 70 °C",
                "temperature: 101 °C",
                "n.yaml:34:58: \"temperature\" is \"101 °C\"; allowed is from 0 °C to 100 °C"));
        cases.add(new Bad(
                "bottle without temperature",
                ", temperature: 70 °C",
                "",
                "n.yaml:34:7: a warm thing without \"temperature\"; write \"temperature\" from 0 °C to 100 °C"));
        cases.add(new Bad(
                "temperature of a pack",
                "mass: 50 g, duration: 10 h",
                "mass: 50 g, duration: 10 h, temperature: 50 °C",
                "n.yaml:35:64: \"temperature\" of kind \"iron-pack\"; it is for a bottle"));
        cases.add(new Bad(
                "second bottle",
                "kind: iron-pack, mass: 50 g, duration: 10 h",
                "kind: bottle, mass: 1 kg, temperature: 60 °C",
                "n.yaml:35:7: a second bottle; one is followed; write one with the mass of both"));
        cases.add(new Bad(
                "unknown fuel",
                "fuel: missed-meals",
                "fuel: hungry",
                "n.yaml:18:9: \"fuel\" is \"hungry\"; allowed is fed, missed-meals, exhausted"));
        // damp
        cases.add(new Bad(
                "damp of an unknown piece",
                "damp: {shirt: 40 %, trousers: 50 g}",
                "damp: {skirt: 40 %}",
                "n.yaml:19:10: \"skirt\" is no piece of the kit; " + PIECES + "; did you mean \"shirt\"?"));
        cases.add(
                new Bad(
                        "damp without a unit",
                        "shirt: 40 %",
                        "shirt: 40",
                        "n.yaml:19:17: damp of \"shirt\" is \"40\"; write a share of its dry cloth and fill, for example \"30 %\", or a mass, for example \"80 g\""));
        cases.add(
                new Bad(
                        "drier than dry",
                        "shirt: 40 %",
                        "shirt: -40 %",
                        "n.yaml:19:17: damp of \"shirt\" is \"-40 %\", -40 % of its dry cloth and fill; allowed is from 0 % to 500 %"));
        cases.add(
                new Bad(
                        "more water than cloth can hold",
                        "shirt: 40 %",
                        "shirt: 600 %",
                        "n.yaml:19:17: damp of \"shirt\" is \"600 %\", 600 % of its dry cloth and fill; allowed is from 0 % to 500 %"));
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedAtItsPlace(Bad bad) throws IOException {
        assertThat(NIGHT).contains(bad.written());
        int at = NIGHT.indexOf(bad.written());
        String night = NIGHT.substring(0, at)
                + bad.instead()
                + NIGHT.substring(at + bad.written().length());
        assertThat(message(night)).isEqualTo(bad.message());
    }

    /** Downhill is a grade like any other. */
    @Test
    void signedGrades() throws IOException {
        for (String grade : List.of("-40 %", "−8 %", "0 %", "+8 %")) {
            assertThat(read(NIGHT.replace("grade: -8 %", "grade: " + grade)).limits())
                    .isEmpty();
        }
    }

    private static List<String> worn(Phase phase) {
        return ((Outfit.Kit) phase.outfit())
                .pieces().stream().map(piece -> piece.spec().id()).toList();
    }

    private Scenario read(String night) throws IOException {
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
