package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longnight.body.Person;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Scenario;
import longnight.night.Verdict;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BandTest {

    private static Scenario scenario(String name) {
        return ScenarioReader.read(Path.of("scenarios", name + ".yaml")).scenario();
    }

    private static NightResult nominal(Scenario scenario) {
        return NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    @Test
    void the_digits_are_those_of_the_seed_and_of_nothing_else() {
        NightResult night = nominal(scenario("first-night"));
        Band one = Band.of(night, Draws.of(20, 5), 1);
        Band two = Band.of(night, Draws.of(20, 5), 2);
        assertThat(two.deficit()).isEqualTo(one.deficit());
        assertThat(two.demand()).isEqualTo(one.demand());
        assertThat(two.shortfallHeat()).isEqualTo(one.shortfallHeat());
        assertThat(two.waterDawn()).isEqualTo(one.waterDawn());
        assertThat(two.holding()).isEqualTo(one.holding());
        Band other = Band.of(night, Draws.of(20, 6), 2);
        assertThat(other.demand()).isNotEqualTo(one.demand());
    }

    /** Two seeds of two hundred draws tell the same story: edges within a tenth or so of the band's width. */
    @Test
    void another_seed_moves_the_band_a_little() {
        NightResult night = nominal(scenario("laboratory"));
        Band one = Band.of(night, Draws.of(200, 1), 2);
        Band two = Band.of(night, Draws.of(200, 2), 2);
        assertThat(two.demand().low()).isCloseTo(one.demand().low(), within(0.06));
        assertThat(two.demand().high()).isCloseTo(one.demand().high(), within(0.06));
        assertThat(two.coreDawn().low()).isCloseTo(one.coreDawn().low(), within(0.06));
        assertThat(two.holding()).isCloseTo(one.holding(), within(20));
    }

    @Test
    void quantiles_rise_and_the_course_ends_at_dawn() {
        NightResult night = nominal(scenario("first-night"));
        Band band = Band.of(night, Draws.of(40, 1), 2);
        Stream.concat(
                        band.deficit().stream(),
                        Stream.of(band.demand(), band.shortfallHeat(), band.coreDawn(), band.lowestFoot()))
                .forEach(spread -> assertThat(spread.low() <= spread.middle() && spread.middle() <= spread.high())
                        .as(spread.toString())
                        .isTrue());
        assertThat(band.times()[0]).isZero();
        assertThat(band.times()[band.times().length - 1])
                .isEqualTo(night.scenario().plan().duration());
        int last = band.deficit().size() - 1;
        assertThat(band.deficit().get(last)).isEqualTo(band.deficitDawn());
        night.hours()
                .forEach(row -> assertThat(band.deficitAt(row.time()).nominal())
                        .isCloseTo(row.coreHeatDeficit(), within(1e-6)));
        assertThat(band.demand().holdsNominal()).isTrue();
    }

    /** The outline of the nominal model is what the full answer says, to the last digit, and holds when the verdict does. */
    @ParameterizedTest
    @MethodSource("names")
    void an_outline_says_what_the_answer_says(String name) {
        Scenario scenario = scenario(name);
        double[] times = Band.times(scenario.plan());
        NightResult answer = nominal(scenario);
        Outline full = Outline.of(answer, times);
        Outline brief =
                NightEngine.compile(scenario, ModelChoice.nominal()).outline(NumericalSettings.standard(), times);
        assertThat(brief.deficit()).isEqualTo(full.deficit());
        assertThat(brief)
                .usingRecursiveComparison()
                .withEqualsForType(Double::equals, Double.class)
                .isEqualTo(full);
        assertThat(brief.demand()).isEqualTo(answer.demand());
        assertThat(brief.deficitWorst()).isEqualTo(answer.coreHeatDeficitWorst());
        assertThat(brief.holds())
                .isEqualTo(answer.verdict().outcome() == Verdict.Outcome.HOLDS_EASILY
                        || answer.verdict().outcome() == Verdict.Outcome.HOLDS_BY_SHIVERING);
    }

    static List<String> names() {
        return List.of("laboratory", "first-night", "arrival-wet", "cool-clearing");
    }

    /** What long steps do to a run they do to all runs, so next to nothing of it is left in the band. */
    @ParameterizedTest
    @MethodSource("names")
    void long_steps_do_not_move_the_band(String name) {
        compare(name, 12);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("shipped")
    void long_steps_do_not_move_the_band_of_any_shipped_night(String name) {
        compare(name, 40);
    }

    static Stream<String> shipped() throws Exception {
        return java.nio.file.Files.list(Path.of("scenarios"))
                .map(file -> file.getFileName().toString())
                .filter(file -> file.endsWith(".yaml") && !file.equals("wardrobe.yaml"))
                .map(file -> file.replace(".yaml", ""))
                .sorted();
    }

    private static void compare(String name, int n) {
        NightResult night = nominal(scenario(name));
        Band fine = Band.of(night, NumericalSettings.standard(), Draws.of(n, 1), 2);
        Band coarse = Band.of(night, NumericalSettings.coarse(), Draws.of(n, 1), 2);
        close(fine.demand(), coarse.demand(), 0.02);
        close(fine.shortfallHeat(), coarse.shortfallHeat(), 0.01 * night.shortfallHeat() + 5e3);
        close(fine.deficitWorst(), coarse.deficitWorst(), 2e3);
        close(fine.coreDawn(), coarse.coreDawn(), 0.02);
        IntStream.range(0, fine.times().length)
                .forEach(i -> close(
                        shown(fine.deficit().get(i)), shown(coarse.deficit().get(i)), 2e3));
    }

    /** No deficit below none, as people see it; the warmth of an arrival is read between stops that lie further apart. */
    private static Spread shown(Spread deficit) {
        return new Spread(
                Math.max(0, deficit.nominal()),
                Math.max(0, deficit.low()),
                Math.max(0, deficit.middle()),
                Math.max(0, deficit.high()));
    }

    private static void close(Spread fine, Spread coarse, double by) {
        assertThat(coarse.low()).isCloseTo(fine.low(), within(by));
        assertThat(coarse.high()).isCloseTo(fine.high(), within(by));
    }

    /** With five-minute steps the second law breaks down under some models: that must be seen, not passed over. */
    @Test
    void steps_that_are_too_long_for_a_model_are_seen_and_mended() {
        NightResult night = nominal(scenario("second-night"));
        double[] times = Band.times(night.scenario().plan());
        NumericalSettings tooLong = new NumericalSettings(300, 30, 300, 60, true, false, 1e-6);
        NightEngine stiff =
                NightEngine.compile(night.scenario(), Draws.of(25, 1).models().get(24));
        double right = stiff.outline(NumericalSettings.standard(), times).shortfallHeat();
        assertThat(stiff.outline(tooLong, times).shortfallHeat()).isCloseTo(right, within(0.005 * right));
        assertThat(Band.outlines(night, tooLong, Draws.of(25, 1), 2, times))
                .allMatch(outline -> Double.isFinite(outline.shortfallHeat()));
    }

    /** A light, lean man for whom the usual step is too long: the nominal night must have figures all the same. */
    @Test
    void a_small_person_has_figures_in_the_usual_steps_too() {
        Scenario scenario = scenario("windy-ridge");
        Person small = new Person("small", Person.Sex.MALE, 35, 1.677, 52.23, 10.09, 42, 1);
        NightResult answer = nominal(scenario.withPerson(small));
        assertThat(answer.shortfallHeat()).isFinite();
        assertThat(answer.demand()).isFinite();
    }

    @Test
    void losses_that_are_off_raise_demand_and_bill_alike() {
        Outline outline = Outline.of(
                nominal(scenario("overcast-forest")),
                Band.times(scenario("overcast-forest").plan()));
        double share = 2.2 / outline.demand() - 1;
        Outline more = outline.losing(share);
        assertThat(more.demand()).isCloseTo(2.2, within(1e-12));
        double lost = outline.shortfallHeat()
                + outline.restHeat() * scenario("overcast-forest").plan().duration();
        assertThat(more.shortfallHeat()).isCloseTo(outline.shortfallHeat() + share * lost, within(1e-6));
        assertThat(more.deficitDawn()).isEqualTo(outline.deficitDawn());
        assertThat(outline.demand() <= 2 && outline.holds()).isTrue();
        assertThat(more.holds()).isFalse();
    }
}
