package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightLog;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A person with a known heat production wears two sensors through a night; the log has noise, sensors that are off by a constant, odd
 * steps and a gap. Dry and with five-minute steps, so that it is quick.
 */
class ReplayTest {
    private static final NumericalSettings COARSE = NumericalSettings.dry().divided(0.2);
    private static final double[] PLANTED = {0.853, 0.92, 1.0, 1.067, 1.14};

    private static Scenario night;
    private static List<NightResult> runs;
    private static List<NightResult> truths;

    @BeforeAll
    static void run() {
        night = ScenarioReader.read(Path.of("scenarios/clear-valley.yaml")).scenario();
        runs = Replay.runs(night, COARSE, 2);
        truths = Arrays.stream(PLANTED)
                .mapToObj(f -> NightEngine.compile(
                                night.withPerson(night.person().withHeatOffset(f)), ModelChoice.nominal())
                        .run(COARSE))
                .toList();
    }

    /**
     * The stated range is a 95 % one; 90 of 100 must hold the truth. Beside white noise each half hour wanders by itself, as the fit
     * assumes of body and model.
     */
    @Test
    void a_planted_offset_lies_in_the_stated_range() {
        int held = 0;
        int bounded = 0;
        for (int seed = 0; seed < 100; seed++) {
            double planted = PLANTED[seed % PLANTED.length];
            HeatOffset offset = HeatOffset.fit(log(truths.get(seed % PLANTED.length), seed, 1, 1), runs);
            held += offset.low() <= planted && planted <= offset.high() ? 1 : 0;
            bounded += offset.told() != HeatOffset.Told.NOT_DETERMINED ? 1 : 0;
        }
        System.out.println(
                "replay: " + held + " of 100 ranges hold the planted offset, " + bounded + " tell at least one end");
        assertThat(held).isGreaterThanOrEqualTo(90);
        assertThat(bounded).as("logs that tell at least one end").isGreaterThanOrEqualTo(75);
    }

    /** Without noise the best is the planted one; what is between the runs tried is found as well. */
    @Test
    void a_clean_log_gives_the_offset_itself() {
        for (int k = 0; k < PLANTED.length; k++) {
            HeatOffset offset = HeatOffset.fit(log(truths.get(k), 1, 0, 1), runs);
            assertThat(offset.best()).isCloseTo(PLANTED[k], within(0.005));
        }
    }

    @Test
    void readings_without_a_body_in_them_determine_nothing() {
        NightLog log = log(truths.get(2), 1, 1, 1);
        double[] none = new double[log.time().length];
        Arrays.fill(none, Double.NaN);
        NightLog bare = new NightLog(log.time(), log.air(), log.humidity(), log.wind(), none, none, List.of(), "");
        HeatOffset offset = HeatOffset.fit(bare, runs);
        assertThat(offset.told()).isEqualTo(HeatOffset.Told.NOT_DETERMINED);
        assertThat(offset.low()).isEqualTo(0.8);
        assertThat(offset.high()).isCloseTo(1.2, within(1e-9));
    }

    /** One note is a hint, not a measurement. */
    @Test
    void one_note_determines_nothing_but_leans() {
        NightLog log = log(truths.get(2), 1, 1, 1);
        double[] none = new double[log.time().length];
        Arrays.fill(none, Double.NaN);
        HeatOffset offset = HeatOffset.fit(
                new NightLog(
                        log.time(),
                        log.air(),
                        none,
                        none,
                        none,
                        none,
                        List.of(new NightLog.Note(10800, NightLog.Feeling.WARM)),
                        ""),
                runs);
        assertThat(offset.told()).isEqualTo(HeatOffset.Told.NOT_DETERMINED);
        assertThat(offset.isUsable()).isFalse();
        assertThat(offset.notes()).isEqualTo(1);
    }

    @Test
    void more_readings_a_minute_do_not_pretend_to_know_more() {
        HeatOffset sparse = HeatOffset.fit(log(truths.get(1), 3, 1, 1), runs);
        HeatOffset dense = HeatOffset.fit(log(truths.get(1), 3, 1, 0.1), runs);
        double ratio = (dense.high() - dense.low()) / (sparse.high() - sparse.low());
        assertThat(ratio).isBetween(0.6, 1.2);
        assertThat(dense.halfHours()).isLessThanOrEqualTo(sparse.halfHours() + 4);
    }

    /** A log that no person explains is told as such, not fitted by the edge of the range. */
    @Test
    void a_log_beyond_the_range_is_at_the_bound() {
        NightLog log = log(truths.get(0), 5, 0, 1);
        double[] colder = Arrays.stream(log.core()).map(t -> t - 1.5).toArray();
        double[] skin = Arrays.stream(log.skin()).map(t -> t - 9).toArray();
        HeatOffset offset = HeatOffset.fit(
                new NightLog(log.time(), log.air(), log.humidity(), log.wind(), colder, skin, List.of(), ""), runs);
        assertThat(offset.told()).isEqualTo(HeatOffset.Told.AT_BOUND);
    }

    /** The log's air is the air at the person: a site's own offset must not be added to it again. */
    @Test
    void the_logs_air_is_the_air_at_the_place() {
        for (String file : new String[] {"clear-valley", "damp-valley", "windy-ridge"}) {
            Scenario some =
                    ScenarioReader.read(Path.of("scenarios/" + file + ".yaml")).scenario();
            double end = some.plan().duration();
            double[] air = {-7, -11, -9};
            double[] nan = {Double.NaN, Double.NaN, Double.NaN};
            NightLog log = new NightLog(new double[] {0, end / 3, end}, air, nan, nan, nan, nan, List.of(), "");
            OutdoorState state = new OutdoorState();
            LoggedWeather.of(some, log).at(end / 3, state);
            assertThat(state.airCelsius).isCloseTo(-11, within(1e-9));
            LoggedWeather.of(some, log).at(2 * end / 3, state);
            assertThat(state.airCelsius).isCloseTo(-10, within(1e-6));
        }
    }

    /** A log of a night's own weather, unchanged, is that night. */
    @Test
    void a_log_of_the_nights_own_air_changes_nothing() {
        OutdoorState state = new OutdoorState();
        NightLog log = log(truths.get(2), 1, 1, 1);
        for (double t = 0; t < night.plan().duration(); t += 1000) {
            LoggedWeather.of(night, log).at(t, state);
            double air = state.airCelsius;
            night.surroundings().at(t, state);
            assertThat(air).isCloseTo(state.airCelsius, within(0.6));
        }
    }

    private static NightLog log(NightResult truth, long seed, double noise, double step) {
        SplittableRandom chance = new SplittableRandom(seed);
        double coreOff = noise * 0.3 * chance.nextGaussian();
        double skinOff = noise * 1.5 * chance.nextGaussian();
        double end = truth.scenario().plan().duration();
        double[][] wander = new double[2][100];
        for (int i = 0; i < 100; i++) {
            wander[0][i] = noise * 0.1 * chance.nextGaussian();
            wander[1][i] = noise * 0.4 * chance.nextGaussian();
        }
        List<double[]> rows = new ArrayList<>();
        OutdoorState state = new OutdoorState();
        for (double t = 0; t <= end; t += step * (120 + 900 * chance.nextDouble())) {
            if (t > 0.4 * end && t < 0.55 * end) {
                continue; // the logger froze
            }
            night.surroundings().at(t, state);
            rows.add(new double[] {
                t,
                state.airCelsius,
                LoggedWeather.at(truth.trace().time(), truth.trace().core(), t)
                        + coreOff
                        + noise * 0.1 * chance.nextGaussian(),
                LoggedWeather.at(truth.trace().time(), truth.trace().meanSkin(), t)
                        + skinOff
                        + wander[1][(int) (t / 1800)]
                        + noise * 0.4 * chance.nextGaussian()
            });
        }
        double[] none = new double[rows.size()];
        Arrays.fill(none, Double.NaN);
        return new NightLog(
                column(rows, 0), column(rows, 1), none, none, column(rows, 2), column(rows, 3), List.of(), "");
    }

    private static double[] column(List<double[]> rows, int k) {
        return rows.stream().mapToDouble(row -> row[k]).toArray();
    }
}
