package longnight.study;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.DoubleStream;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.ModelRange;
import longnight.night.NightEngine;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.SiteClimate;
import longnight.outdoors.Surroundings;

/**
 * One kit through many nights. Person and clothes are compiled once; every night begins anew, so the order and the number of
 * threads make no difference.
 */
final class NightByNight {
    private final Scenario question;
    private final NightEngine engine;
    private final NumericalSettings settings;

    NightByNight(Scenario question, NumericalSettings settings) {
        this.question = withoutWeather(question);
        this.settings = settings;
        engine = NightEngine.compile(this.question, ModelChoice.nominal());
    }

    /** Whether a question has weather that another can take the place of: a laboratory has none. */
    static boolean canRun(Scenario question) {
        return question.surroundings() instanceof SiteClimate;
    }

    /** What was guessed or cautioned about the weather that is now replaced does not count. */
    private static Scenario withoutWeather(Scenario from) {
        return new Scenario(
                from.title(),
                from.nightName(),
                from.kitName(),
                from.person(),
                from.outfit(),
                from.surroundings(),
                from.plan(),
                from.guesses().stream()
                        .filter(guess -> !List.of("weather", "record").contains(guess.subject()))
                        .toList(),
                from.cautions().stream()
                        .filter(caution -> caution != Caution.TYPICAL_YEAR && caution != Caution.WEATHER_GUESSED)
                        .toList(),
                from.limits());
    }

    /** All nights, worst first. */
    List<KitNight> worstFirst(List<RecordedNight> nights, int threads) {
        List<Callable<KitNight>> tasks = nights.stream()
                .<Callable<KitNight>>map(night -> () -> run(night))
                .toList();
        return Workers.all(tasks, threads).stream()
                .sorted(KitNight.WORST_FIRST.thenComparing(
                        night -> night.night().date(), Comparator.naturalOrder()))
                .toList();
    }

    KitNight run(RecordedNight night) {
        Surroundings around = question.surroundings().under(weather -> night.weather());
        return isInside(around, night) ? KitNight.of(night, engine.in(around).run(settings)) : KitNight.outside(night);
    }

    private boolean isInside(Surroundings around, RecordedNight night) {
        OutdoorState state = new OutdoorState();
        return DoubleStream.concat(
                        DoubleStream.of(around.firstTime(), around.lastTime()),
                        DoubleStream.of(night.weather().time()))
                .allMatch(time -> {
                    around.at(time, state);
                    return state.airCelsius >= ModelRange.COLDEST_AIR && state.airCelsius <= ModelRange.WARMEST_AIR;
                });
    }
}
