package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.night.Scenario;
import longnight.scenario.ScenarioReader;
import longnight.study.SpreadAnswer.Quantity;
import org.junit.jupiter.api.Test;

class SpreadStudyTest {
    private static final Set<Doubt> ALL = EnumSet.allOf(Doubt.class);

    /** Everything drawn 64 times, two threads; several tests look at it. */
    private static final SpreadAnswer RIDGE = SpreadStudy.of(question(night("windy-ridge.yaml"), ALL, 64, 3), 2);

    /** The model alone, more often. */
    private static final SpreadAnswer MODEL =
            SpreadStudy.of(question(night("windy-ridge.yaml"), EnumSet.of(Doubt.MODEL), 256, 1), 2);

    private static Scenario night(String file) {
        return ScenarioReader.read(Path.of("scenarios", file)).scenario();
    }

    private static SpreadQuestion question(Scenario night, Set<Doubt> over, int most, long seed) {
        return new SpreadQuestion(
                night,
                over,
                PeopleRange.of(PeopleRange.Group.LIKE, night),
                ForecastError.usual(),
                SpreadQuestion.USUAL_COLDER,
                SpreadQuestion.USUAL_WINDIER,
                most,
                seed);
    }

    /** Records have arrays nowhere, so that equal means: the same digits. */
    @Test
    void the_seed_makes_the_digits_and_threads_do_not() {
        SpreadAnswer one = SpreadStudy.of(RIDGE.question(), 1);
        SpreadAnswer two = RIDGE;
        assertThat(two.given().clouds()).isEqualTo(one.given().clouds());
        assertThat(two.worst().clouds()).isEqualTo(one.worst().clouds());
        assertThat(two.indices()).isEqualTo(one.indices());
        assertThat(two.sums()).isEqualTo(one.sums());
        Set<Doubt> people = EnumSet.of(Doubt.PEOPLE);
        assertThat(SpreadStudy.of(question(night("windy-ridge.yaml"), people, 64, 4), 2)
                        .given()
                        .all())
                .isNotEqualTo(one.given().clouds().get(0));
    }

    @Test
    void a_run_that_goes_on_gives_the_same_digits_and_runs_the_rest_alone() {
        SpreadQuestion question = question(night("windy-ridge.yaml"), EnumSet.of(Doubt.PEOPLE), 64, 1);
        Notebook whole = new Notebook(List.of());
        SpreadAnswer first = SpreadStudy.of(question, whole, 2);
        Notebook half = new Notebook(whole.kept.subList(0, 100));
        SpreadAnswer second = SpreadStudy.of(question, half, 2);
        assertThat(second.given().clouds()).isEqualTo(first.given().clouds());
        assertThat(second.indices()).isEqualTo(first.indices());
        assertThat(half.kept).isEqualTo(whole.kept.subList(100, whole.kept.size()));
    }

    private static final class Notebook implements DrawMemory {
        private final List<Draw> known;
        private final List<Draw> kept = new ArrayList<>();

        Notebook(List<Draw> known) {
            this.known = new ArrayList<>(known);
        }

        @Override
        public List<Draw> known(int most) {
            List<Draw> next = new ArrayList<>(known.subList(0, Math.min(most, known.size())));
            known.subList(0, next.size()).clear();
            return next;
        }

        @Override
        public void keep(Draw draw) {
            kept.add(draw);
        }
    }

    /** Without errors and ranges every draw is the night as written. */
    @Test
    void where_nothing_can_differ_every_draw_is_the_night_as_written() {
        Scenario night = night("windy-ridge.yaml");
        ForecastError.Part none = new ForecastError.Part(0, 0);
        PeopleRange only = PeopleRange.of(PeopleRange.Group.LIKE, night)
                .withMass(new Extent(night.person().mass(), night.person().mass()))
                .withHeight(new Extent(night.person().height(), night.person().height()))
                .withFat(new Extent(night.person().bodyFat(), night.person().bodyFat()))
                .withAge(new Extent(night.person().age(), night.person().age()))
                .withFitness(
                        new Extent(night.person().peakOxygen(), night.person().peakOxygen()));
        SpreadAnswer answer = SpreadStudy.of(
                new SpreadQuestion(
                        night,
                        EnumSet.of(Doubt.PEOPLE, Doubt.FORECAST),
                        only,
                        new ForecastError(none, none, none, none, none),
                        0,
                        0,
                        64,
                        1),
                2);
        NightResult plain = NightEngine.compile(night, ModelChoice.nominal()).run(NumericalSettings.standard());
        for (SpreadAnswer.Side side : List.of(answer.given(), answer.worst())) {
            assertThat(side.asWritten().shortfallHeat()).isEqualTo(plain.shortfallHeat());
            for (Cloud cloud : side.clouds()) {
                assertThat(cloud.settled()).isFalse(); // 64 draws doubled once only
                assertThat(cloud.shortfallHeat().low()).isCloseTo(plain.shortfallHeat(), within(1e-3));
                assertThat(cloud.shortfallHeat().high()).isCloseTo(plain.shortfallHeat(), within(1e-3));
                assertThat(cloud.deficitDawn().middle()).isCloseTo(plain.coreHeatDeficitDawn(), within(1e-3));
            }
        }
    }

    @Test
    void the_worst_plausible_night_is_the_night_made_colder_and_windier() {
        Scenario night = night("first-night.yaml");
        SpreadAnswer answer = SpreadStudy.of(question(night, EnumSet.of(Doubt.PEOPLE), 64, 1), 2);
        Scenario worst = night.withSurroundings(
                night.surroundings().under(weather -> weather.warmer(-2).windier(1.3, 75)));
        NightResult by = NightEngine.compile(worst, ModelChoice.nominal()).run(NumericalSettings.standard());
        assertThat(answer.worst().asWritten().shortfallHeat()).isEqualTo(by.shortfallHeat());
        assertThat(by.shortfallHeat()).isGreaterThan(answer.given().asWritten().shortfallHeat());
        assertThat(answer.worst().all().shortfallHeat().low())
                .isGreaterThan(answer.given().all().shortfallHeat().low());
    }

    /** The model alone, drawn here, must scatter as the band of the verb night does: other points of the same distributions. */
    @Test
    void the_model_alone_has_the_band_that_a_night_shows() {
        Band band = Band.of(MODEL.given().asWritten(), Draws.of(256, 1), 2);
        Spread here = MODEL.given().all().shortfallHeat();
        double width = band.shortfallHeat().high() - band.shortfallHeat().low();
        assertThat(here.nominal()).isEqualTo(band.shortfallHeat().nominal());
        assertThat(here.low()).isCloseTo(band.shortfallHeat().low(), within(0.15 * width));
        assertThat(here.middle()).isCloseTo(band.shortfallHeat().middle(), within(0.15 * width));
        assertThat(here.high()).isCloseTo(band.shortfallHeat().high(), within(0.15 * width));
    }

    /** Every place belongs to one group, and each group has some. */
    @Test
    void places_are_parted_among_the_groups() {
        Scenario night = night("first-night.yaml");
        Set<Driver> seen = EnumSet.noneOf(Driver.class);
        IntStream.range(0, DoubtfulNight.dimensions(night))
                .forEach(place -> seen.add(DoubtfulNight.driver(night, place)));
        assertThat(seen).containsExactlyInAnyOrder(Driver.values());
    }

    @Test
    void indices_of_a_night_keep_the_sum_rules() {
        for (Quantity quantity : Quantity.values()) {
            Map<Driver, Indices.Index> of = MODEL.indices().get(quantity);
            assertThat(of).hasSize(5);
            assertThat(MODEL.sums().get(quantity).low()).isLessThanOrEqualTo(1);
            double totals = of.values().stream()
                    .mapToDouble(index -> index.total().high())
                    .sum();
            assertThat(totals).isGreaterThanOrEqualTo(1);
            // one interval in ten may miss; what hardly moves anything misses by as little
            of.values()
                    .forEach(index -> assertThat(index.total().high() + 0.01)
                            .isGreaterThanOrEqualTo(index.first().low()));
        }
    }

    @Test
    void what_cannot_matter_has_an_index_of_nothing() {
        SpreadAnswer answer = RIDGE;
        assertThat(answer.indices().get(Quantity.DEMAND)).containsOnlyKeys(Driver.values());
        // a dry night: an error of the rain cannot move it; wind on a ridge does
        Map<Driver, Indices.Index> heat = answer.indices().get(Quantity.SHORTFALL_HEAT);
        assertThat(heat.get(Driver.PRECIPITATION).total().value()).isZero();
        assertThat(heat.get(Driver.WIND).total().low()).isPositive();
        assertThat(heat.get(Driver.SKIN_MISFIT).total().low()).isPositive();
        assertThat(answer.indices()
                        .get(Quantity.CORE_HEAT_DEFICIT)
                        .get(Driver.SKIN_MISFIT)
                        .total()
                        .value())
                .isZero();
    }

    @Test
    void few_draws_are_called_open() {
        SpreadAnswer answer = RIDGE;
        assertThat(answer.rows()).isEqualTo(64);
        assertThat(answer.settled()).isFalse();
        assertThat(answer.given().all().draws()).isEqualTo(64);
        assertThat(answer.given().all().settled()).isFalse();
    }

    /** A run that stopped may not look warmer for it. */
    @Test
    void draws_that_stopped_are_beyond_telling_in_every_column() {
        Draw fine = new Draw(1e6, 1.5, 1e4, 36, Double.NaN, Set.of());
        Draw stopped = new Draw(2e5, Double.NaN, 4e5, 32, 7200, Set.of(Cloud.Crossed.ANY, Cloud.Crossed.STOPPED));
        List<Draw> draws = List.of(fine, fine, fine, stopped, stopped);
        Cloud cloud = Cloud.of(EnumSet.of(Doubt.MODEL), fine, draws, true, 0);
        assertThat(cloud.shortfallHeat().high()).isInfinite();
        assertThat(cloud.demand().high()).isInfinite();
        assertThat(cloud.deficitDawn().high()).isInfinite();
        assertThat(cloud.coreDawn().low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(cloud.coreDawn().high()).isEqualTo(36);
        assertThat(cloud.share(Cloud.Crossed.ANY)).isEqualTo(0.4);
        assertThat(cloud.share(Cloud.Crossed.FACE)).isZero();
    }

    @Test
    void holding_and_crossing_agree() {
        NightResult night = NightEngine.compile(night("windy-ridge.yaml"), ModelChoice.nominal())
                .run(NumericalSettings.standard());
        Draw draw = Draw.of(
                Outline.of(night, new double[] {0, night.scenario().plan().duration()}));
        assertThat(draw.crossing())
                .contains(
                        Cloud.Crossed.ANY,
                        Cloud.Crossed.DEMAND,
                        Cloud.Crossed.CORE_HEAT_DEFICIT,
                        Cloud.Crossed.HANDS,
                        Cloud.Crossed.FEET,
                        Cloud.Crossed.FACE)
                .doesNotContain(Cloud.Crossed.STOPPED, Cloud.Crossed.CORE_35);
    }

    @Test
    void draws_stay_in_air_that_the_model_has_an_answer_for() {
        Scenario night = night("windy-ridge.yaml");
        Air air = Air.of(night);
        SpreadQuestion fine = question(night, ALL, 64, 1);
        assertThat(fine.isWithinTheModel()).isTrue();
        assertThat(fine.coldestAir()).isCloseTo(air.lowest() - 2.5 * 2.5 - 2, within(0.1));
        assertThat(question(night, EnumSet.of(Doubt.MODEL), 64, 1).coldestAir())
                .isCloseTo(air.lowest() - 2, within(0.1));
        Scenario warm = night.withSurroundings(
                night.surroundings().under(weather -> weather.warmer(30 - fine.warmestAir() + 2.5 * 2.5)));
        assertThat(question(warm, EnumSet.of(Doubt.MODEL), 64, 1).isWithinTheModel())
                .isTrue();
        assertThat(question(warm, ALL, 64, 1).isWithinTheModel()).isFalse();
    }

    @Test
    void a_question_needs_a_doubt_and_draws() {
        Scenario night = night("windy-ridge.yaml");
        assertThatThrownBy(() -> question(night, Set.of(), 64, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> question(night, ALL, 63, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A hundred is no doubling of 64: the last step must not count, and one doubling alone settles nothing. */
    @Test
    void only_doublings_count() {
        SpreadAnswer answer = SpreadStudy.of(question(night("windy-ridge.yaml"), EnumSet.of(Doubt.PEOPLE), 100, 1), 2);
        Cloud all = answer.given().all();
        assertThat(all.draws()).isEqualTo(64);
        assertThat(all.settled()).isFalse();
        assertThat(all.moved()).isFinite();
    }
}
