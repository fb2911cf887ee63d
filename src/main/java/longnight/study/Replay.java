package longnight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightLog;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/**
 * A logged night beside the model's, and the person's own heat production as far as the log can tell it.
 *
 * @param log     the log
 * @param asIs    the night in the log's weather with the person as the file has them
 * @param fitted  the same with the fitted heat production
 * @param offset  the fit
 * @param seen    half-hour means of what was logged, with the model beside it
 */
public record Replay(NightLog log, NightResult asIs, NightResult fitted, HeatOffset offset, List<Channel> seen) {

    /** Heat productions that are tried: R-34 of the trade allows 20 % either way. */
    static final double LOW = 0.8;

    static final double HIGH = 1.2;
    private static final int STEPS = 20;

    /**
     * Means of one sensor.
     *
     * @param sensor which
     * @param time   middle of each half hour with readings [s from dusk]
     * @param logged [degC]
     * @param asIs   the model with the person as the file has them [degC]
     * @param fitted the model with the fitted heat production [degC]
     */
    public record Channel(Sensor sensor, double[] time, double[] logged, double[] asIs, double[] fitted) {

        /** Root mean square of logged less model [K]. */
        public double misfit(boolean ofFitted) {
            double[] model = ofFitted ? fitted : asIs;
            return Math.sqrt(IntStream.range(0, logged.length)
                    .mapToDouble(i -> (logged[i] - model[i]) * (logged[i] - model[i]))
                    .average()
                    .orElse(Double.NaN));
        }
    }

    /** Replays a night; the question's own weather serves where the log is silent. */
    public static Replay of(Scenario night, NightLog log, NumericalSettings settings, int threads) {
        Scenario logged = night.withSurroundings(LoggedWeather.of(night, log));
        List<NightResult> tried = runs(logged, settings, threads);
        HeatOffset offset = HeatOffset.fit(log, tried);
        NightResult asIs = run(logged, night.person().heatOffset(), settings);
        NightResult fitted = offset.isUsable() ? run(logged, offset.best(), settings) : asIs;
        List<Channel> seen = new ArrayList<>();
        for (Sensor sensor : Sensor.values()) {
            HalfHours blocks =
                    HalfHours.of(log.time(), sensor.of(log), night.plan().duration());
            if (blocks.size() > 0) {
                seen.add(new Channel(
                        sensor, blocks.time(), blocks.mean(), blocks.of(asIs, sensor), blocks.of(fitted, sensor)));
            }
        }
        return new Replay(log, asIs, fitted, offset, List.copyOf(seen));
    }

    /** Whether a question's night can be replayed: not in a laboratory. */
    public static boolean canRun(Scenario question) {
        return NightByNight.canRun(question);
    }

    /** One run for each heat production tried, least first. */
    static List<NightResult> runs(Scenario logged, NumericalSettings settings, int threads) {
        return Workers.all(
                IntStream.rangeClosed(0, STEPS)
                        .mapToObj(i -> LOW + i * (HIGH - LOW) / STEPS)
                        .<Callable<NightResult>>map(factor -> () -> run(logged, factor, settings))
                        .toList(),
                threads);
    }

    private static NightResult run(Scenario logged, double factor, NumericalSettings settings) {
        double held = Math.max(LOW, Math.min(HIGH, factor));
        return NightEngine.compile(logged.withPerson(logged.person().withHeatOffset(held)), ModelChoice.nominal())
                .run(settings);
    }

    /** Cautions that apply to either run. */
    public List<Caution> cautions() {
        List<Caution> all = new ArrayList<>(asIs.cautions());
        fitted.cautions().stream().filter(caution -> !all.contains(caution)).forEach(all::add);
        return List.copyOf(all);
    }
}
