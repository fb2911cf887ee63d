package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;

/** What a night presses with, found by taking it away. */
class PressureTest {
    private static final NumericalSettings SETTINGS = NumericalSettings.standard();

    @Test
    void the_largest_saving_limits_and_near_ones_are_named_with_it() {
        assertThat(pressure(1e6, 300e3, 100e3, 0, 280e3).limiting()).containsExactly(Stress.COLD, Stress.SKY);
        assertThat(pressure(1e6, 300e3, 800e3, 0, 280e3).limiting()).containsExactly(Stress.WIND);
        // less than a tenth of the bill, or too little to tell
        assertThat(pressure(1e6, 90e3, -50e3, 0, 10e3).limiting()).isEmpty();
        assertThat(pressure(50e3, 14e3, 0, 0, 0).limiting()).isEmpty();
        assertThat(pressure(-20e3, 16e3, 0, 0, 0).limiting()).containsExactly(Stress.COLD);
        assertThat(new Pressure(1e6, Map.of()).limiting()).isEmpty();
    }

    @Test
    void each_saving_is_the_bill_less_the_bill_without() {
        NightResult front = run(read("sleet-front"));
        Pressure pressure = Pressure.on(front, SETTINGS);
        assertThat(pressure.saved().keySet()).containsExactly(Stress.values());
        Scenario dry = front.scenario()
                .withSurroundings(
                        front.scenario().surroundings().under(longnight.outdoors.Weather::withoutPrecipitation));
        OutdoorState state = new OutdoorState();
        for (double time = 0; time < 12 * 3600; time += 600) {
            dry.surroundings().at(time, state);
            assertThat(state.precipitation).isZero();
        }
        assertThat(pressure.saved().get(Stress.WET))
                .isCloseTo(front.shortfallHeat() - run(dry).shortfallHeat(), within(1e-6))
                .isPositive();
        assertThat(pressure.saved().get(Stress.COLD))
                .isGreaterThan(pressure.saved().get(Stress.SKY));
    }

    /** Nothing falls on a dry night, so nothing is said of it; a sky that is covered already gives nothing more. */
    @Test
    void what_a_night_has_not_cannot_be_taken_away() {
        NightResult dry = run(read("clear-valley"));
        assertThat(Pressure.on(dry, SETTINGS).saved()).containsOnlyKeys(Stress.COLD, Stress.WIND, Stress.SKY);
        Scenario covered = dry.scenario()
                .withSurroundings(dry.scenario().surroundings().under(longnight.outdoors.Weather::overcast));
        Pressure pressure = Pressure.on(run(covered), SETTINGS);
        assertThat(pressure.saved().get(Stress.SKY)).isZero();
        assertThat(pressure.bill()).isLessThan(dry.shortfallHeat());
    }

    @Test
    void in_a_storm_the_wind_limits() {
        Scenario front = read("sleet-front");
        Scenario storm = front.withSurroundings(front.surroundings()
                .under(weather -> weather.overcast().warmer(-5).inWind(25)));
        assertThat(Pressure.on(run(storm), SETTINGS).limiting()).startsWith(Stress.WIND);
    }

    @Test
    void a_laboratory_has_no_weather_and_what_was_not_run_no_bill() {
        assertThat(Pressure.on(run(read("laboratory")), SETTINGS).saved()).isEmpty();
        Scenario night = read("clear-valley");
        Scenario outside = new Scenario(
                night.title(),
                night.nightName(),
                night.kitName(),
                night.person(),
                night.outfit(),
                night.surroundings(),
                night.plan(),
                night.guesses(),
                night.cautions(),
                List.of("too cold"));
        assertThat(Pressure.on(run(outside), SETTINGS).saved()).isEmpty();
    }

    /** A night that would leave the range of the model ten kelvin warmer is not asked for its cold. */
    @Test
    void warm_nights_are_not_made_hot() {
        Scenario night = read("cool-clearing");
        Scenario warm = night.withSurroundings(night.surroundings().under(weather -> weather.warmer(15)));
        assertThat(Pressure.on(run(warm), SETTINGS).saved()).containsOnlyKeys(Stress.WIND, Stress.SKY);
    }

    private static Pressure pressure(double bill, double cold, double wind, double wet, double sky) {
        Map<Stress, Double> saved = new EnumMap<>(Stress.class);
        saved.put(Stress.COLD, cold);
        saved.put(Stress.WIND, wind);
        saved.put(Stress.WET, wet);
        saved.put(Stress.SKY, sky);
        return new Pressure(bill, saved);
    }

    private static Scenario read(String name) {
        return ScenarioReader.read(Path.of("scenarios", name + ".yaml")).scenario();
    }

    private static NightResult run(Scenario scenario) {
        return NightEngine.compile(scenario, ModelChoice.nominal()).run(SETTINGS);
    }
}
