package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longnight.DocTable;
import longnight.night.ModelChoice;
import longnight.proof.Check;
import longnight.proof.Experiment;
import longnight.proof.Experiment.Variant;
import longnight.proof.Outcome;
import longnight.proof.Reading;
import longnight.study.ProofRun;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page for outsiders: its tables are those that the reader uses, its example runs, and files written from it do. */
class ExperimentsPageTest {
    @TempDir
    Path folder;

    /** An afternoon in a shed: a slope over three temperatures, after the page's keys alone. */
    private static final String SHED = """
            id: shed
            source: "invented for a test"
            title: two men in a shed at three temperatures
            assumed: {wind: [0.2 m/s], warm-core: [0.2 K], note: "all of it"}
            people:
              - {id: tall, sex: male, age: 40 years, height: 1.9 m, mass: 95 kg, body-fat: 22 %}
            runs:
              - id: mild
                person: tall
                nude: yes
                posture: standing
                wind: 0.1 m/s
                humidity: 40 %
                steps:
                  - {air: 28 °C, for: 30 min, lead: yes}
                  - {air: 22 °C, for: 1 h}
              - {id: cool, like: mild, steps: [{air: 28 °C, for: 30 min, lead: yes}, {air: 16 °C, for: 1 h}]}
              - {id: cold, like: mild, steps: [{air: 28 °C, for: 30 min, lead: yes}, {air: 10 °C, for: 1 h}]}
            checks:
              - name: slope of heat against skin
                reading: heat-made-per-area
                how: slope
                against: mean-skin
                of: [mild, cool, cold]
                at: 60 min
                measured: -4 W/m2 per °C
                gate: below 0 W/m2 per °C
              - name: skin at which heat passes 1.1 times rest
                reading: heat-made-over-rest
                how: other-at-level
                against: mean-skin
                level: "1.1"
                of: [mild, cool, cold]
                at: 60 min
                goal: 24 to 33 °C
            """;

    /** A night in garments on straw, and one whose cover is unknown. */
    private static final String NIGHT = """
            id: straw
            source: "invented for a test"
            title: a woman sleeps on straw
            assumed: {mass: 5 kg, note: "build"}
            people:
              - {id: her, sex: female, age: 28 years, height: 1.66 m, mass: 58 kg, body-fat: 25 %}
            runs:
              - id: bed
                person: her
                total: 1.4 clo
                posture: lying-supine
                bedtime: "23:00"
                wind: 0.1 m/s
                humidity: 50 %
                steps: [{air: 24 °C, for: 3 h}]
              - id: cold
                like: bed
                cover: {reading: trunk-skin, less: 2 K, than: bed, at: 3 h}
                steps: [{air: 8 °C, for: 3 h}]
              - id: straw
                like: bed
                kit: {name: clothes, wardrobe: clothes/wardrobe.yaml, worn: [shirt, parka], pads: [sack]}
                ground: {name: straw, conductivity: 0.05 W/mK, heat-capacity: 100 kJ/m3K, cooling: 0 %, snow: no}
                ground-temperature: 6 °C
                steps: [{air: 8 °C, for: 3 h}]
            checks:
              - {name: cover, reading: cover, of: [cold], gate: 1.4 to 5 clo}
              - {name: rectal change, reading: rectal-change, of: [straw], at: 3 h, gate: -2 to 0.5 K}
              - {name: insulation as found, reading: insulation, of: [straw], at: 3 h, gate: above 0.5 clo}
            """;

    private static final String CLOTHES = """
            pieces:
              - {id: shirt, kind: base-top, mass: 200 g, fabric: wool-knit}
              - {id: parka, kind: parka, mass: 900 g, fill: 100 g/m2, face: tight}
            pads:
              - {id: sack, mass: 1 kg, area: 1 m2, resistance: 0.1 m2K/W}
            """;

    @Test
    @DisplayName("docs/experiments.md lists the keys and readings that there are")
    void pageIsFresh() throws Exception {
        List<String> lines = new ArrayList<>(List.of(top().stripTrailing(), "", "## Readings", ""));
        lines.add("Read at a minute, or as a `mean` over minutes:\n");
        lines.add(readings(false));
        lines.add("\nOf a whole run, without `at`:\n");
        lines.add(readings(true));
        lines.add("\nSeveral runs become one figure by `how`: "
                + String.join(
                        ", ",
                        Key.wordsOf(Check.How.class).stream()
                                .map(w -> "`" + w + "`")
                                .toList())
                + ". Slope goes with `against`; the last two give one reading where the other passes a `level`, straight"
                + " between runs in their order.\n");
        lines.add("## Keys\n");
        for (Table table : List.of(
                Tables.EXPERIMENT,
                Tables.ASSUMED,
                Tables.EXPOSED,
                Tables.RUN,
                Tables.EXPOSURE_STEP,
                Tables.COVER,
                Tables.CHECK)) {
            lines.add("**" + table.name() + "**\n");
            lines.add("| key | needed | what |");
            lines.add("|---|---|---|");
            table.keys().forEach(key -> lines.add(row(key)));
            lines.add("");
        }
        DocTable.check("docs/experiments.md", String.join("\n", lines).stripTrailing() + "\n");
    }

    @Test
    @DisplayName("the page's own example runs and is scored")
    void exampleRuns() throws Exception {
        String page = top();
        int from = page.indexOf("```yaml\n") + 8;
        Files.writeString(folder.resolve("hut.yaml"), page.substring(from, page.indexOf("```\n", from)));
        Outcome outcome = ProofRun.of(ExperimentReader.folder(folder), ModelChoice.nominal(), 2)
                .get(0);
        assertThat(outcome.experiment().variants()).hasSize(27);
        assertThat(outcome.rows())
                .hasSize(3)
                .allSatisfy(row -> assertThat(row.nominal()).isBetween(row.low(), row.high()));
        assertThat(outcome.rows().get(1).nominal()).isPositive();
    }

    @Test
    @DisplayName("two invented files written from the page run")
    void inventedFilesRun() throws Exception {
        Files.createDirectory(folder.resolve("clothes"));
        Files.writeString(folder.resolve("clothes/wardrobe.yaml"), CLOTHES);
        Files.writeString(folder.resolve("a-shed.yaml"), SHED);
        Files.writeString(folder.resolve("b-straw.yaml"), NIGHT);
        List<Experiment> both = ExperimentReader.folder(folder);
        assertThat(both).extracting(Experiment::id).containsExactly("shed", "straw");
        double[] shed = both.get(0).evaluate(ModelChoice.nominal(), Variant.NOMINAL);
        assertThat(shed[0]).isNegative();
        assertThat(shed[1]).isBetween(20.0, 34.0);
        double[] straw = both.get(1).evaluate(ModelChoice.nominal(), Variant.NOMINAL);
        assertThat(straw[0]).isBetween(1.4, 5.0);
        assertThat(straw[1]).isBetween(-2.0, 0.5);
        assertThat(straw[2]).isBetween(0.5, 5.0);
    }

    @Test
    @DisplayName("a cover that would have to be thicker than any, or thinner, gives no figures in place of wrong ones")
    void coverBeyondReach() throws Exception {
        Files.createDirectory(folder.resolve("clothes"));
        Files.writeString(folder.resolve("clothes/wardrobe.yaml"), CLOTHES);
        Files.writeString(folder.resolve("straw.yaml"), NIGHT.replace("less: 2 K", "less: 20 K"));
        double[] thin = ExperimentReader.folder(folder).get(0).evaluate(ModelChoice.nominal(), Variant.NOMINAL);
        assertThat(thin[0]).isNaN();
        assertThat(thin[1]).isFinite();
    }

    @Test
    @DisplayName("a broken one is refused with its place, what was read and what is near, and nothing runs")
    void brokenFile() throws Exception {
        Files.writeString(folder.resolve("a-shed.yaml"), SHED);
        Files.writeString(folder.resolve("broken.yaml"), SHED.replace("how: slope", "how: slop"));
        assertThatThrownBy(() -> ExperimentReader.folder(folder))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("broken.yaml:22:10")
                .hasMessageContaining("\"how\" is \"slop\"")
                .hasMessageContaining("slope");
    }

    private static String top() throws Exception {
        try (InputStream in = Objects.requireNonNull(
                ExperimentsPageTest.class.getResourceAsStream("experiments-top.md"), "experiments-top.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String readings(boolean whole) {
        List<String> words = new ArrayList<>();
        for (Reading reading : Reading.values()) {
            if (reading.isOfWholeRun() == whole) {
                words.add("`" + Key.wordOf(reading) + "` [" + (reading.unit().isEmpty() ? "no unit" : reading.unit())
                        + "]");
            }
        }
        return String.join(", ", words) + ".";
    }

    private static String row(Key key) {
        String what = key.about();
        if (key.form() == Key.Form.QUANTITY) {
            what += "; " + key.range();
        } else if (key.form() == Key.Form.WORD
                && !key.name().equals("reading")
                && !key.name().equals("against")) {
            what += "; one of " + String.join(", ", key.words());
        }
        return "| `" + key.name() + "` | " + (key.required() ? "yes" : "") + " | " + what + " |";
    }
}
