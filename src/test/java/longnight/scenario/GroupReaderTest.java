package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longnight.clothing.Outfit;
import longnight.night.GroupNight;
import longnight.night.Scenario;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of groups: what is read, and where the finger points when something is wrong. Messages are whole, less the folder. */
class GroupReaderTest {
    private static final Path SCENARIOS = Path.of("scenarios").toAbsolutePath();

    private static final String GOOD = """
            name: three
            night: night.yaml
            people:
              - id: one
                person: people/student.yaml
              - id: two
                person: people/veteran.yaml
                kit: kits/light.yaml
              - {id: three, person: {name: x, sex: male, age: 30 years, height: 180 cm, mass: 80 kg}}
            wardrobe: wardrobe.yaml
            spares:
              - {id: down-jacket, count: 2}
              - {id: mat}
            huddle: {inner: middle-of-row, outer: side-by-side, swap: 30 min}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void shipped() throws Exception {
        Files.createDirectories(folder.resolve("kits"));
        Files.createDirectories(folder.resolve("people"));
        for (String name : List.of(
                "wardrobe.yaml",
                "kits/light.yaml",
                "kits/typical.yaml",
                "people/student.yaml",
                "people/veteran.yaml")) {
            Files.copy(SCENARIOS.resolve(name), folder.resolve(name));
        }
        Files.copy(SCENARIOS.resolve("overcast-forest.yaml"), folder.resolve("night.yaml"));
    }

    private GroupNight read(String text) throws Exception {
        return GroupReader.read(Files.writeString(folder.resolve("group.yaml"), text));
    }

    @Test
    void everybody_has_the_night_in_their_own_kit() throws Exception {
        GroupNight group = read(GOOD);
        assertThat(group.name()).isEqualTo("three");
        assertThat(group.members()).extracting(GroupNight.Member::id).containsExactly("one", "two", "three");
        Scenario two = group.members().get(1).alone();
        assertThat(two.person().name()).isEqualTo("the veteran");
        assertThat(two.kitName()).isEqualTo("light");
        assertThat(group.members().get(0).alone().kitName()).isEqualTo("typical");
        assertThat(group.members().get(2).alone().person().mass()).isEqualTo(80);
        Scenario alone = ScenarioReader.read(
                        folder.resolve("night.yaml"),
                        new Instead(folder.resolve("people/veteran.yaml"), folder.resolve("kits/light.yaml")))
                .scenario();
        assertThat(two.plan()).isEqualTo(alone.plan());
        assertThat(two.outfit()).isEqualTo(alone.outfit());
        assertThat(two.guesses()).isEqualTo(alone.guesses());
    }

    @Test
    void spares_keep_apart_from_the_pieces_of_a_kit() throws Exception {
        GroupNight group = read(GOOD);
        GroupNight.Spare jacket = group.spares().get(0);
        assertThat(jacket.id()).isEqualTo("down-jacket");
        assertThat(jacket.count()).isEqualTo(2);
        assertThat(jacket.mass()).isEqualTo(0.290);
        assertThat(jacket.piece()).isNotNull();
        Outfit.Kit light = (Outfit.Kit) group.members().get(1).alone().outfit();
        assertThat(light.pieces())
                .extracting(piece -> piece.spec().id())
                .contains("down-jacket")
                .doesNotContain(jacket.piece().spec().id());
        assertThat(group.spares().get(1).pad()).isNotNull();
        assertThat(group.spares().get(1).count()).isEqualTo(1);
        assertThat(group.places()).isEqualTo(new GroupNight.Places(0.2, 0.1, 2, 1800));
    }

    private record Bad(String written, String instead, String message) {
        @Override
        public String toString() {
            return message;
        }
    }

    static List<Bad> cases() {
        return List.of(
                new Bad(
                        "night: night.yaml",
                        "nihgt: night.yaml",
                        "group.yaml:2:1: unknown key \"nihgt\"; a group has the keys name, night, people, wardrobe, spares, huddle; did you mean \"night\"?"),
                new Bad(
                        "night: night.yaml",
                        "night: none.yaml",
                        "group.yaml:2:8: there is no file \"none.yaml\"; name a file that exists"),
                new Bad(
                        "night: night.yaml",
                        "night: kits/light.yaml",
                        "kits/light.yaml:2:1: this is a kit file, no night; name a night file; \"longnight check\" reads any of them; read for \"one\""),
                new Bad("id: two", "id: one", "group.yaml:6:9: id \"one\" for the second time; line 4 has this one"),
                new Bad(
                        "    person: people/veteran.yaml\n",
                        "",
                        "group.yaml:6:5: a member of a group without \"person\"; write \"person\": who"),
                new Bad(
                        "kit: kits/light.yaml",
                        "kti: kits/light.yaml",
                        "group.yaml:8:5: unknown key \"kti\"; a member of a group has the keys id, person, kit; did you mean \"kit\"?"),
                new Bad(
                        "mass: 80 kg",
                        "mass: 80",
                        "group.yaml:9:83: \"mass\": \"80\" has no unit; write a mass in g, kg, oz, lb; did you mean \"80 kg\" or \"80 lb\"?; read for \"three\""),
                new Bad(
                        "  - id: two\n    person: people/veteran.yaml\n    kit: kits/light.yaml\n  - {id: three, person: {name: x, sex: male, age: 30 years, height: 180 cm, mass: 80 kg}}\n",
                        "",
                        "group.yaml:4:3: a group of 1; allowed is from 2 to 12 people"),
                new Bad(
                        "wardrobe: wardrobe.yaml\n",
                        "",
                        "group.yaml:10:1: \"spares\" without \"wardrobe\"; write the file that has them"),
                new Bad(
                        "id: down-jacket",
                        "id: dwn-jacket",
                        "group.yaml:12:10: unknown piece or pad \"dwn-jacket\"; the wardrobe has: thin-top, "),
                new Bad(
                        "id: mat",
                        "id: down-jacket",
                        "group.yaml:13:10: id \"down-jacket\" for the second time; line 12 has this one"),
                new Bad(
                        "count: 2",
                        "count: 2.5",
                        "group.yaml:12:30: \"count\" is \"2.5\"; write a whole number from 1 to 9"),
                new Bad(
                        "count: 2",
                        "count: 0",
                        "group.yaml:12:30: \"count\" is \"0\"; write a whole number from 1 to 9"),
                new Bad(
                        "count: 2",
                        "count: 10",
                        "group.yaml:12:30: \"count\" is \"10\"; write a whole number from 1 to 9"),
                new Bad(
                        "inner: middle-of-row",
                        "inner: middle-of-rwo",
                        "group.yaml:14:17: \"inner\" is \"middle-of-rwo\"; allowed is alone, back-to-back, side-by-side, middle-of-row, arms-round, spooning; did you mean \"middle-of-row\"?"),
                new Bad(
                        "inner: middle-of-row, outer: side-by-side",
                        "inner: alone, outer: side-by-side",
                        "group.yaml:14:17: \"alone\" inside and \"side-by-side\" outside; the inner place touches at least as much as the outer one"),
                new Bad(
                        "swap: 30 min",
                        "swap: 30",
                        "group.yaml:14:59: \"swap\": \"30\" has no unit; write a length of time in s, min, h; did you mean \"30 min\"?"),
                new Bad(
                        "swap: 30 min",
                        "swap: 5 min",
                        "group.yaml:14:59: \"swap\" is \"5 min\"; allowed is from 10 min to 20 h"),
                new Bad(
                        "swap: 30 min",
                        "swap: 6 h",
                        "group.yaml:14:59: \"swap\" is \"6 h\" in a night of 660 min; allowed is up to half of the night"),
                new Bad(
                        "swap: 30 min",
                        "swap: 30 min, outer-places: 3",
                        "group.yaml:14:81: 3 outer places for 3 people; there is at least one inner place: write \"outer-places\" from 1 to 2"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void is_refused_with_file_line_and_column(Bad bad) throws Exception {
        assertThat(GOOD).contains(bad.written());
        InputFault fault =
                catchThrowableOfType(InputFault.class, () -> read(GOOD.replace(bad.written(), bad.instead())));
        assertThat(fault).isNotNull();
        assertThat(fault.getMessage().replace(folder + "/", "")).startsWith(bad.message());
    }

    @Test
    void a_huddle_beside_the_plans_own_is_refused() throws Exception {
        String night = Files.readString(folder.resolve("night.yaml"));
        Files.writeString(
                folder.resolve("night.yaml"),
                night.replace("sleep: yes}", "sleep: yes, phases: [{name: in touch, to: 06:00, huddle: spooning}]}"));
        InputFault fault = catchThrowableOfType(InputFault.class, () -> read(GOOD));
        assertThat(fault.getMessage().replace(folder + "/", ""))
                .isEqualTo(
                        "group.yaml:14:1: \"huddle\" beside a plan that has one, in \"in touch\"; write one of them");
    }

    /** The plan takes off what one of them does not have: the fault lies where two files meet. */
    @Test
    void a_plan_that_a_kit_cannot_follow_says_whose_it_was_read_for() throws Exception {
        String night = Files.readString(folder.resolve("night.yaml"));
        Files.writeString(
                folder.resolve("night.yaml"),
                night.replace("sleep: yes}", "sleep: yes, phases: [{to: 06:00, off: [batt-parka]}]}"));
        InputFault fault = catchThrowableOfType(InputFault.class, () -> read(GOOD));
        assertThat(fault.file()).endsWith("night.yaml");
        assertThat(fault.line()).isEqualTo(7);
        assertThat(fault.hint()).endsWith("read for \"two\"");
    }
}
