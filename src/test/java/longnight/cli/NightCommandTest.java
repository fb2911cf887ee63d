package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.report.BandFixture;
import longnight.report.NightFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb without its engine: what is asked of it, what goes where, and which code comes back. */
class NightCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final List<NumericalSettings> asked = new ArrayList<>();
    private final List<String> banded = new ArrayList<>();
    private NightResult answer = NightFixture.shivering();

    @Test
    void the_page_names_the_folder_and_a_night_that_does_not_hold_is_an_answer_too() throws Exception {
        answer = NightFixture.failing();
        assertThat(run("night.yaml", "--out", folder.resolve("out").toString())).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .contains("does not hold from")
                .contains(folder.resolve("out").toString());
        assertThat(folder.resolve("out/core-heat-deficit.png")).isNotEmptyFile();
        assertThat(asked).containsExactly(NumericalSettings.standard());
    }

    @Test
    void json_to_the_output_comes_alone_and_leaves_nothing_behind() throws Exception {
        assertThat(run("night.yaml", "--json", "-", "--reference")).isZero();
        assertThat(new ObjectMapper().readTree(out.toString()).at("/format").asText())
                .isEqualTo("longnight-night/1");
        assertThat(err.toString()).contains("Reference integrator");
        assertThat(names()).isEmpty();
        assertThat(Path.of("night-out")).doesNotExist();
    }

    @Test
    void json_to_a_file_comes_beside_the_page() throws Exception {
        Path json = folder.resolve("x.json");
        assertThat(run(
                        "night.yaml",
                        "--json",
                        json.toString(),
                        "--out",
                        folder.resolve("out").toString()))
                .isZero();
        assertThat(new ObjectMapper().readTree(json.toFile()).at("/demand").isNumber())
                .isTrue();
        assertThat(out.toString()).contains("only by shivering");
    }

    @Test
    void the_step_divides_all_of_the_working_integrators_times() {
        assertThat(run("night.yaml", "--json", "-", "--step", "30")).isZero();
        assertThat(asked).containsExactly(NumericalSettings.standard().divided(2));
        assertThat(asked.get(0).water()).isTrue();
    }

    /** The reference follows no water, so it is held against a run without, and the page says that this is another. */
    @Test
    void the_reference_is_held_against_the_same_step_without_water() {
        answer = NightFixture.wet();
        assertThat(run("night.yaml", "--json", "-", "--reference", "--step", "30"))
                .isZero();
        assertThat(asked)
                .containsExactly(
                        NumericalSettings.standard().divided(2),
                        NumericalSettings.dry().divided(2),
                        NumericalSettings.referenceIntegrator());
        assertThat(err.toString()).contains("both without water");
    }

    @Test
    void the_reference_runs_beside_the_working_integrator() {
        assertThat(run("night.yaml", "--out", folder.resolve("out").toString(), "--reference"))
                .isZero();
        assertThat(asked)
                .containsExactly(
                        NumericalSettings.standard(), NumericalSettings.dry(), NumericalSettings.referenceIntegrator());
        assertThat(out.toString()).contains("Reference integrator against");
    }

    @Test
    void the_caller_chooses_the_units() throws Exception {
        Path to = folder.resolve("out");
        assertThat(run("night.yaml", "--out", to.toString(), "--units", "imperial", "--reference"))
                .isZero();
        assertThat(out.toString())
                .contains("kcal", "[F]  mph", "differs by at most 0 F")
                .doesNotContain("kJ");
        assertThat(to.resolve("hours.csv")).content().contains("core [degF]");
        assertThat(to.resolve("night.json")).content().contains("shortfallHeat_J");
    }

    @Test
    void unknown_units_are_refused_with_the_nearest() {
        assertThat(run("night.yaml", "--json", "-", "--units", "imperiel")).isEqualTo(2);
        assertThat(err.toString()).contains("\"imperiel\" is not one of: metric, imperial. did you mean \"imperial\"?");
        assertThat(asked).isEmpty();
    }

    @Test
    void an_impossible_step_is_bad_input() {
        for (String step : new String[] {"0", "-60", "4.9", "301", "NaN", "soon"}) {
            assertThat(run("night.yaml", "--json", "-", "--step", step))
                    .as(step)
                    .isEqualTo(2);
        }
        assertThat(out.toString()).isEmpty();
        assertThat(asked).isEmpty();
    }

    @Test
    void the_band_comes_by_itself() throws Exception {
        assertThat(run("night.yaml", "--out", folder.resolve("out").toString())).isZero();
        assertThat(banded).containsExactly("200 draws, seed 1");
        assertThat(out.toString().replaceAll("\\s+", " ")).contains("50 of 200 draws of the model hold", "10-90 %");
        assertThat(Files.readString(folder.resolve("out/notes.txt"))).contains("What was drawn", "LEG_FLOW");
        assertThat(Files.readString(folder.resolve("out/report.html")))
                .contains("draws of the model hold", "middle 80 % of the model");
        assertThat(Files.readString(folder.resolve("out/hours.csv"))).contains("draws of the model hold");
        assertThat(new ObjectMapper()
                        .readTree(folder.resolve("out/night.json").toFile())
                        .at("/band/shareOfModelThatHolds")
                        .doubleValue())
                .isEqualTo(0.25);
    }

    @Test
    void draws_seed_and_threads_can_be_said() {
        assertThat(run("night.yaml", "--json", "-", "--draws", "40", "--seed", "-7", "--threads", "3"))
                .isZero();
        assertThat(banded).containsExactly("40 draws, seed -7, 3 threads");
        assertThat(out.toString()).contains("\"seed\" : -7");
    }

    @Test
    void without_a_band_nothing_is_drawn() throws Exception {
        assertThat(run("night.yaml", "--json", "-", "--no-band")).isZero();
        assertThat(banded).isEmpty();
        assertThat(new ObjectMapper().readTree(out.toString()).at("/band").isNull())
                .isTrue();
    }

    @Test
    void a_night_outside_the_model_has_no_band() {
        answer = NightFixture.unrun();
        assertThat(run("night.yaml", "--json", "-")).isZero();
        assertThat(banded).isEmpty();
    }

    @Test
    void impossible_draws_are_bad_input() {
        for (String[] bad : new String[][] {
            {"--draws", "19"},
            {"--draws", "2001"},
            {"--draws", "many"},
            {"--seed", "1.5"},
            {"--threads", "0"},
            {"--threads", "513"},
            {"--no-band", "--draws", "50"},
            {"--no-band", "--seed", "2"}
        }) {
            err.getBuffer().setLength(0);
            String[] args = Stream.concat(Stream.of("night.yaml", "--json", "-"), Stream.of(bad))
                    .toArray(String[]::new);
            assertThat(run(args)).as(String.join(" ", bad)).isEqualTo(2);
            assertThat(err.toString()).contains(bad[0]);
        }
        assertThat(out.toString()).isEmpty();
        assertThat(asked).isEmpty();
    }

    @Test
    void a_place_that_cannot_be_written_is_bad_input_and_nothing_is_run() throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        assertThat(run("night.yaml", "--out", file.toString())).isEqualTo(2);
        assertThat(run("night.yaml", "--out", file.resolve("in").toString())).isEqualTo(2);
        assertThat(run(
                        "night.yaml",
                        "--json",
                        folder.toString(),
                        "--out",
                        folder.resolve("out").toString()))
                .isEqualTo(2);
        assertThat(run(
                        "night.yaml",
                        "--json",
                        folder.resolve("no/x.json").toString(),
                        "--out",
                        folder.resolve("out").toString()))
                .isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("not a folder")
                .contains("is a folder")
                .doesNotContain("\tat ");
        assertThat(asked).isEmpty();
        assertThat(names()).containsExactly("taken");
        assertThat(file).hasContent("mine");
    }

    @Test
    void help_explains_every_option() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("not a permission", "YAML", "current folder", "reference integrator", "working step");
    }

    @Test
    void a_file_is_needed() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("FILE");
    }

    private int run(String... args) {
        NightCommand night = new NightCommand(
                file -> answer.scenario(),
                (scenario, settings) -> {
                    asked.add(settings);
                    return answer;
                },
                (nominal, draws, seed, threads) -> {
                    banded.add(draws + " draws, seed " + seed + (threads == 3 ? ", 3 threads" : ""));
                    return BandFixture.of(nominal, draws, seed);
                });
        String[] all = Stream.concat(Stream.of("night"), Stream.of(args)).toArray(String[]::new);
        return Main.run(
                Main.commandLine(night).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), all);
    }

    private List<String> names() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
