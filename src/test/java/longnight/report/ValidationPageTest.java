package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import longnight.DocTable;
import longnight.body.Person;
import longnight.night.ModelChoice;
import longnight.proof.Case;
import longnight.proof.Check;
import longnight.proof.Check.Pool;
import longnight.proof.Experiment;
import longnight.proof.Outcome;
import longnight.proof.Outcome.Row;
import longnight.proof.Proof;
import longnight.scenario.ExperimentReader;
import longnight.scenario.StandardReader;
import longnight.study.ProofRun;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The shipped experiments with the nominal model, and the page and pictures that show them. */
class ValidationPageTest {
    private static final Proof PROOF = ProofRun.of(
            ExperimentReader.shipped(),
            true,
            StandardReader.shipped(),
            StandardReader.night(),
            ModelChoice.nominal(),
            Math.max(1, Runtime.getRuntime().availableProcessors()));

    private static final Map<Pool, String> PICTURES =
            Map.of(Pool.CORE, ProofCharts.CORE, Pool.SKIN, ProofCharts.SKIN, Pool.HEAT, ProofCharts.HEAT);

    private static Stream<Row> rows() {
        return PROOF.outcomes().stream().flatMap(outcome -> outcome.rows().stream());
    }

    @Test
    @DisplayName("every gate that the second calculation meets is met; what is missed has an explanation")
    void gates() {
        assertThat(rows().filter(row -> row.check().gate().exists())).hasSize(25);
        for (Row row : rows().toList()) {
            Check check = row.check();
            if (!row.meetsGate() || !row.meetsGoal()) {
                assertThat(check.missed()).as(check.name()).isNotBlank();
            }
            if (!row.meetsGate() && !Double.isNaN(check.second())) {
                assertThat(check.gate().holds(check.second())).as(check.name()).isFalse();
            }
        }
    }

    @Test
    @DisplayName("figures lie within the second calculation's own range over mass, fat and wind")
    void insideTheSecondCalculation() {
        List<Row> compared =
                rows().filter(row -> row.check().secondRange().exists()).toList();
        assertThat(compared).hasSize(8);
        for (Row row : compared) {
            assertThat(row.check().secondRange().holds(row.nominal()))
                    .as(row.toString())
                    .isTrue();
        }
    }

    @Test
    @DisplayName("pooled errors stay within the acceptance bands of the set: core 0.4 K, skin 1.8 K")
    void pooledErrors() {
        Map<Pool, Outcome.Pooled> pools = Outcome.score(PROOF.outcomes()).pools();
        assertThat(Objects.requireNonNull(pools.get(Pool.CORE)).rmsd()).isLessThan(0.4);
        assertThat(Objects.requireNonNull(pools.get(Pool.SKIN)).rmsd()).isLessThan(1.8);
        assertThat(Objects.requireNonNull(pools.get(Pool.CORE)).count()).isEqualTo(6);
        assertThat(Objects.requireNonNull(pools.get(Pool.SKIN)).count()).isEqualTo(7);
        assertThat(Objects.requireNonNull(pools.get(Pool.HEAT)).count()).isEqualTo(8);
    }

    @Test
    @DisplayName("page, JSON and pictures carry the caution, the reasons and what cannot be run")
    void outputs() {
        String page = ProofPage.page(PROOF).replaceAll("\\s+", " ");
        String json = ProofJson.text(PROOF);
        for (Experiment experiment : PROOF.cannot()) {
            assertThat(page).contains(experiment.id());
            assertThat(json).contains(experiment.id());
        }
        assertThat(page).contains("not permission").contains("calibration").contains("30 of 30 rows");
        assertThat(json)
                .contains("a permission to go and try one")
                .contains("books-close")
                .contains("clothing-classes");
        assertThat(ProofPage.page(PROOF).lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Console.WIDTH + 25));
        assertThat(new String(ProofCharts.parity(PROOF).svg(), StandardCharsets.UTF_8))
                .contains("permission")
                .contains("fitted to these");
    }

    @Test
    @DisplayName("docs/validation.md and its pictures show these very figures")
    void documentIsFresh() throws Exception {
        List<String> lines = new ArrayList<>();
        lines.add(part("top"));
        lines.add("## Missed, first\n");
        misses(lines);
        lines.add("\n## Score\n");
        ProofTables.score(PROOF.outcomes()).forEach(line -> lines.add("* " + line));
        lines.add("\n" + part("middle"));
        lines.add("## Pictures\n");
        for (Pool pool : List.of(Pool.CORE, Pool.SKIN, Pool.HEAT)) {
            picture(lines, Objects.requireNonNull(PICTURES.get(pool)), ProofCharts.of(PROOF, pool));
        }
        picture(lines, ProofCharts.PARITY, ProofCharts.parity(PROOF));
        lines.add("\n## All figures\n");
        table(lines);
        lines.add("\n## What cannot be run\n");
        for (Experiment experiment : PROOF.cannot()) {
            lines.add("* **" + experiment.id() + "**, " + experiment.title() + ": " + experiment.cannot() + ". "
                    + experiment.source() + ".");
        }
        lines.add("\n## Sources and what is assumed\n");
        for (Outcome outcome : PROOF.outcomes()) {
            Experiment experiment = outcome.experiment();
            lines.add("* **" + experiment.id() + "**: " + experiment.source() + ". Assumed: "
                    + experiment.assumed().words() + "."
                    + (experiment.note().isEmpty() ? "" : " Note: " + experiment.note() + "."));
        }
        lines.add("\n## Printed tables\n");
        ProofTables.tables(PROOF).forEach(line -> lines.add("* " + line));
        lines.add("\n## Arithmetic\n");
        ProofTables.arithmetic(PROOF).forEach(line -> lines.add("* " + line));
        lines.add("\n" + part("end").stripTrailing() + "\n");
        lines.add("What the set-ups of these experiments span, as the files have it:\n");
        span(lines);
        lines.add(part("apply").stripTrailing());
        DocTable.check("docs/validation.md", String.join("\n", lines) + "\n");
    }

    private static String part(String name) throws Exception {
        try (InputStream in = Objects.requireNonNull(
                ValidationPageTest.class.getResourceAsStream("validation-" + name + ".md"), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void misses(List<String> lines) {
        lines.add(row(ProofTables.missColumns()));
        lines.add("|---|---|---|---|---|---|");
        List<ProofTables.Miss> all = ProofTables.misses(PROOF.outcomes());
        all.forEach(miss -> lines.add(row(ProofTables.cells(miss))));
        lines.add("\nWhy, as far as we know:\n");
        all.forEach(miss -> lines.add("* **" + miss.outcome().experiment().id() + ", "
                + miss.row().check().name() + ":** " + miss.row().check().missed() + "."));
    }

    private static void table(List<String> lines) {
        lines.add("| experiment | figure | measured | model (range) | gate | goal | second calculation (range) |");
        lines.add("|---|---|---|---|---|---|---|");
        for (Outcome outcome : PROOF.outcomes()) {
            String name = outcome.experiment().id();
            for (Row row : outcome.rows()) {
                List<String> cells = ProofTables.cells(row);
                lines.add(row(List.of(
                        name,
                        cells.get(0),
                        cells.get(1),
                        cells.get(2) + (cells.get(3).isEmpty() ? "" : " (" + cells.get(3) + ")"),
                        cells.get(4),
                        cells.get(5),
                        ProofTables.second(row.check()))));
                name = "";
            }
        }
    }

    private static void picture(List<String> lines, String name, Picture picture) {
        DocTable.check("docs/validation/" + name + ".svg", new String(picture.svg(), StandardCharsets.UTF_8));
        lines.add("![" + name + "](validation/" + name + ".svg)");
    }

    // --- What the data span ---

    private static void span(List<String> lines) {
        lines.add("| | least | most |");
        lines.add("|---|---|---|");
        span(lines, "air of the exposure [°C]", cases().flatMap(ValidationPageTest::exposed), Case.Step::air, 1);
        span(lines, "length of an exposure [h]", cases(), c -> c.minutes() / 60.0, 1);
        span(lines, "length of a night asleep or trying [h]", nights(), c -> c.minutes() / 60.0, 1);
        span(lines, "air speed, as written [m/s]", cases(), Case::wind, 2);
        span(lines, "age, as written [years]", people(), Person::age, 0);
        span(lines, "body mass, as written [kg]", people(), Person::mass, 0);
        span(lines, "body fat, as written [percent]", people(), Person::bodyFat, 0);
        lines.add("| women among the people, as written | "
                + people().filter(p -> p.sex() == Person.Sex.FEMALE).count() + " of "
                + people().distinct().count() + " | |");
    }

    private static <T> void span(
            List<String> lines, String name, Stream<T> all, ToDoubleFunction<T> value, int decimals) {
        double[] sorted = all.mapToDouble(value).sorted().toArray();
        lines.add("| " + name + " | " + Figures.decimals(sorted[0], decimals) + " | "
                + Figures.decimals(sorted[sorted.length - 1], decimals) + " |");
    }

    /** Without those of a minute, in which only clothing is read. */
    private static Stream<Case> cases() {
        return allCases().filter(c -> c.minutes() > 1);
    }

    private static Stream<Case> allCases() {
        return PROOF.outcomes().stream().flatMap(o -> o.experiment().cases().values().stream());
    }

    private static Stream<Case> nights() {
        return cases().filter(c -> !Double.isNaN(c.bedtime()) && c.minutes() > 180);
    }

    private static Stream<Person> people() {
        return cases().map(Case::person);
    }

    private static Stream<Case.Step> exposed(Case of) {
        return of.steps().stream().filter(step -> !step.lead());
    }

    private static String row(List<String> cells) {
        return "| " + String.join(" | ", cells) + " |";
    }
}
