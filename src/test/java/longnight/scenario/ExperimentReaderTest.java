package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longnight.night.ModelChoice;
import longnight.proof.Check;
import longnight.proof.Experiment;
import longnight.proof.Experiment.Variant;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Experiments in files that nobody has seen before; people and figures are invented. */
class ExperimentReaderTest {
    private static final String ONE = """
            id: two-rooms
            source: "invented for a test"
            title: a man sits in two rooms
            assumed:
              mass: 12 kg
              wind: [0.2 m/s]
              warm-core: [0.2 K]
            people:
              - {id: man, sex: male, age: 30 years, height: 1.80 m, mass: 75 kg, body-fat: 15 %}
            runs:
              - id: cool
                person: man
                intrinsic: 0.5 clo
                posture: chair
                wind: 0.1 m/s
                humidity: 50 %
                steps:
                  - {air: 28 °C, for: 30 min, lead: yes}
                  - {air: 18 °C, for: 60 min}
              - id: cold
                like: cool
                steps:
                  - {air: 28 °C, for: 30 min, lead: yes}
                  - {air: 8 °C, for: 90 min}
            checks:
              - name: mean skin
                reading: mean-skin
                of: [cool]
                at: 60 min
                measured: 31 °C
                spread: 0.5 °C
                gate: 25 to 35 °C
                goal: above 28 °C
                pool: skin
              - name: skin, cold less cool
                reading: mean-skin
                of: [cold]
                less: [cool]
                at: 1 h
                gate: below 0 K
            """;

    @TempDir
    Path folder;

    private Experiment read(String text) throws Exception {
        Files.writeString(folder.resolve("one.yaml"), text);
        return ExperimentReader.folder(folder).get(0);
    }

    @Test
    @DisplayName("a file written from the page alone is read and runs")
    void runs() throws Exception {
        Experiment experiment = read(ONE);
        assertThat(experiment.variants()).hasSize(3 * 2 * 2);
        Check skin = experiment.checks().get(0);
        assertThat(skin.measured()).isEqualTo(31);
        assertThat(skin.spread()).isEqualTo(0.5);
        assertThat(skin.goal().low()).isEqualTo(28);
        assertThat(skin.goal().high()).isNaN();
        assertThat(experiment.checks().get(1).unit()).isEqualTo("K");
        double[] made = experiment.evaluate(ModelChoice.nominal(), Variant.NOMINAL);
        assertThat(made[0]).isBetween(25.0, 35.0);
        assertThat(made[1]).isNegative();
    }

    @ParameterizedTest(name = "{0} -> {1}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
                    measured: 31 °C | measured: 31 | 30:15 | write a number in °C
                    gate: 25 to 35 °C | gate: 25-35 °C | 32:11 | write it as
                    gate: 25 to 35 °C | gate: 35 to 25 °C | 32:11 | write it as
                    goal: above 28 °C | goal: above 28 K | 33:11 | write a number in °C
                    reading: mean-skin | reading: mean-skni | 27:14 | mean-skin
                    of: [cool] | of: [cold, warm] | 28:16 | no run
                    at: 60 min | at: 61 min | 29:9 | lasts 60 min
                    at: 60 min | at: 60 | 29:9 | 60
                    like: cool | like: cold | 21:11 | before here
                    person: man | person: men | 12:13 | man
                    intrinsic: 0.5 clo | nude: no | 11:5 | write one of
                    for: 60 min} | for: 60.5 min} | 19:27 | whole minutes
                    wind: [0.2 m/s] | wind: [0.2] | 6:10 | 0.2
                    id: cold | id: cool | 20:9 | second time
                    posture: chair | postrue: chair | 14:5 | posture
                    humidity: 50 % | soaked: 50 % | 16:5 | without "kit"
                    humidity: 50 % | ground: turf | 16:5 | without "kit"
                    humidity: 50 % | ground-temperature: 5 °C | 16:5 | without "ground"
                    intrinsic: 0.5 clo | kit: {name: k, wardrobe: none.yaml, worn: [a], pads: []} | 13:30 | none.yaml
                    intrinsic: 0.5 clo | total: 0.05 clo | 13:12 | 0.6 clo
                    mass: 75 kg | mass: 30 kg | 9:63 | must be left
                    warm-core: [0.2 K] | warm-core: [1.2 K] | 7:15 | from 0 to 1 K
                    pool: skin | second: 31 | 34:13 | write a number in °C
                    """)
    @DisplayName("a broken file is refused with the place and what is wanted")
    void broken(String from, String to, String place, String wanted) throws Exception {
        int at = ONE.indexOf(from);
        assertThat(at).isPositive();
        String broken = ONE.substring(0, at) + to + ONE.substring(at + from.length());
        assertThatThrownBy(() -> read(broken))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("one.yaml:" + place)
                .hasMessageContaining(wanted);
    }

    @Test
    @DisplayName("an experiment that cannot be run says why and has nothing to run")
    void cannot() throws Exception {
        String head = ONE.substring(0, ONE.indexOf("assumed:"));
        Experiment experiment = read(head + "cannot: the men lay in water\n");
        assertThat(experiment.runs()).isFalse();
        assertThat(experiment.cannot()).isEqualTo("the men lay in water");
        assertThatThrownBy(() -> read(head + "cannot: the men lay in water\n" + ONE.substring(ONE.indexOf("assumed:"))))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("one.yaml:5:1")
                .hasMessageContaining("beside \"cannot\"");
        assertThatThrownBy(() -> read(head))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("one.yaml:1:1")
                .hasMessageContaining("without \"assumed\"");
    }

    @Test
    @DisplayName("folders that are none, empty, or hold an id twice are refused")
    void folders() throws Exception {
        assertThatThrownBy(() -> ExperimentReader.folder(folder.resolve("none")))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is no folder");
        assertThatThrownBy(() -> ExperimentReader.folder(folder))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("no experiment");
        Files.writeString(folder.resolve("one.yaml"), ONE);
        Files.writeString(folder.resolve("two.yml"), ONE);
        assertThatThrownBy(() -> ExperimentReader.folder(folder))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("second time");
    }

    @Test
    @DisplayName("files are taken by name, whatever order the disk has")
    void order() throws Exception {
        Files.writeString(folder.resolve("b.yaml"), ONE.replace("two-rooms", "b"));
        Files.writeString(folder.resolve("a.yaml"), ONE.replace("two-rooms", "a"));
        Files.writeString(folder.resolve("notes.txt"), "mine");
        List<Experiment> all = ExperimentReader.folder(folder);
        assertThat(all).extracting(Experiment::id).containsExactly("a", "b");
    }
}
