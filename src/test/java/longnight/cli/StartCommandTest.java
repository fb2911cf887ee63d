package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.Scenario;
import longnight.scenario.FileKind;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From nothing to a folder that runs. */
class StartCommandTest {
    @TempDir
    Path folder;

    @Test
    void without_a_terminal_the_usual_is_taken_and_said() throws Exception {
        Path to = folder.resolve("mine");
        Session session = Session.of("start", to.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(Session.flat(session.out()))
                .contains("Taken without asking", "--mass \"68 kg\"", "longnight night ", "Caution: A planning aid");
        assertThat(names(to))
                .containsExactly(
                        "README.txt",
                        "kits/light.yaml",
                        "kits/typical.yaml",
                        "kits/warm.yaml",
                        "night.yaml",
                        "people/me.yaml",
                        "schema/group.schema.json",
                        "schema/kit.schema.json",
                        "schema/night.schema.json",
                        "schema/person.schema.json",
                        "schema/wardrobe.schema.json",
                        "wardrobe.yaml");
        assertThat(Session.flat(Files.readString(to.resolve("README.txt"))))
                .contains("nothing it prints is a permission", "call for help");
        for (String name : names(to)) {
            assertThat(to.resolve(name)).content().doesNotContain("${");
        }
        for (FileKind kind : FileKind.values()) {
            Path schema = to.resolve("schema").resolve(kind.schemaFile());
            assertThat(new ObjectMapper().readTree(schema.toFile()).at("/$id").asText())
                    .endsWith(kind.word());
            assertThat(Files.readString(schema))
                    .isEqualTo(Session.of("schema", kind.word()).out());
        }
    }

    /** Modelines name schemas that are there. */
    @Test
    void editors_find_the_schemas() throws Exception {
        Session.of("start", folder.toString());
        for (String name : List.of("night.yaml", "wardrobe.yaml", "people/me.yaml", "kits/warm.yaml")) {
            Path file = folder.resolve(name);
            String first = Files.readString(file).lines().findFirst().orElseThrow();
            assertThat(first).startsWith("# yaml-language-server: $schema=");
            assertThat(file.resolveSibling(first.substring(first.indexOf('=') + 1)))
                    .isRegularFile();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "sit, typical, metric, -5 °C",
        "lie, light, imperial, 40 °F",
        "sit, warm, imperial, -22 °F",
        "lie, warm, metric, -30 °C",
        "sit, light, metric, 12 °C"
    })
    void every_choice_runs(String posture, String kit, String units, String cold) {
        Session session = Session.of(
                "start", folder.toString(), "--posture", posture, "--kit", kit, "--units", units, "--cold", cold);
        assertThat(session.code()).as(session.err()).isZero();
        Scenario scenario = ScenarioReader.read(folder.resolve("night.yaml")).scenario();
        assertThat(scenario.limits()).isEmpty();
        assertThat(scenario.kitName()).isEqualTo(kit);
        assertThat(scenario.plan().firstOfNight().posture().isLying()).isEqualTo(posture.equals("lie"));
        Session night = Session.of(
                "night",
                folder.resolve("night.yaml").toString(),
                "--out",
                folder.resolve("out").toString());
        assertThat(night.code()).as(night.err()).isZero();
        assertThat(night.out()).contains("On paper this kit");
        for (String name : List.of("night.yaml", "wardrobe.yaml", "people/me.yaml", "kits/" + kit + ".yaml")) {
            Session check = Session.of("check", folder.resolve(name).toString());
            assertThat(check.code()).as(check.err()).isZero();
        }
    }

    @Test
    void at_a_terminal_it_asks_and_refuses_kindly() throws Exception {
        Session session = Session.typing(
                "Wren\nfemale\n41\n41 years\n5.5 ft\n\n14 degrees\n14 °F\n9 mph\nlie\nwarm\n", folder.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out())
                .contains("Not understood: \"age\": \"41\" has no unit")
                .contains("did you mean \"41 years\"?")
                .contains("\"14 degrees\" is not a temperature")
                .contains("Body mass, without clothes [68 kg]");
        assertThat(folder.resolve("people/me.yaml"))
                .content()
                .contains("name: \"Wren\"", "age: 41 years", "height: 5.5 ft", "mass: 68 kg ");
        assertThat(folder.resolve("night.yaml"))
                .content()
                .contains("min: 14 °F ", "max: 26.6 °F ", "wind: 9 mph ", "kits/warm.yaml", "lying-curled");
    }

    @Test
    void what_an_option_says_is_not_asked_and_an_end_of_input_ends_the_questions() {
        Session session = Session.typing("Wren\n", folder.toString(), "--age", "41 years");
        assertThat(session.code()).isZero();
        assertThat(session.out()).doesNotContain("Age [");
        assertThat(Session.flat(session.out())).contains("Taken without asking", "--sex \"female\"");
    }

    @Test
    void whoever_answers_wrong_again_and_again_gets_no_files() {
        Session session = Session.typing(
                "Wren\nx\nx\nx\nx\nx\nx\nx\n", folder.resolve("new").toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("nothing was written");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void nothing_that_is_there_is_overwritten() throws Exception {
        Files.writeString(folder.resolve("wardrobe.yaml"), "mine");
        Session session = Session.of("start", folder.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("has wardrobe.yaml already").hasLineCount(1);
        assertThat(names(folder)).containsExactly("wardrobe.yaml");
        assertThat(folder.resolve("wardrobe.yaml")).hasContent("mine");
    }

    /** A link into nowhere is there too, and is not written through. */
    @Test
    void a_dangling_link_is_not_followed() throws Exception {
        Path away = folder.resolve("away.yaml");
        Path to = Files.createDirectory(folder.resolve("to"));
        Files.createSymbolicLink(to.resolve("night.yaml"), away);
        assertThat(Session.of("start", to.toString()).code()).isEqualTo(2);
        assertThat(away).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--mass=70",
                "--age=old",
                "--sex=x",
                "--kit=tiny",
                "--posture=stand",
                "--cold=-5",
                "--height=",
                "--name=a\nb"
            })
    void an_answer_that_will_not_do_writes_nothing(String option) {
        Session session = Session.of("start", folder.resolve("new").toString(), option);
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err())
                .startsWith(option.substring(0, option.indexOf('=')))
                .hasLineCount(1);
        assertThat(folder.resolve("new")).doesNotExist();
    }

    private static List<String> names(Path folder) throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
