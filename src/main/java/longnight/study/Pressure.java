package longnight.study;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.night.ModelChoice;
import longnight.night.ModelRange;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.night.Trace;
import longnight.outdoors.Chamber;
import longnight.outdoors.OutdoorState;

/**
 * How much of a night's shortfall heat goes when one stress is taken from its weather and all else stays. A stress can save
 * less than nothing: a breeze may warm clothes that a clear sky cools. Savings do not add up, for stresses work through each
 * other.
 *
 * @param bill  shortfall heat of the night as it is [J]
 * @param saved by each stress taken away [J]; where a run stopped early, up to then; a stress that the night has not, or without
 *     which it would leave the model's range, is missing
 */
public record Pressure(double bill, Map<Stress, Double> saved) {
    /** A saving below this share of the bill names nothing; the model's own scatter (about a tenth), engineering estimate, no source. */
    public static final double TELLING = 0.1;

    /** Savings that lie so near to the largest are named with it; the same scatter. */
    public static final double NEAR = 0.9;

    /** Least saving that names a stress [J]; as the dead band of the core-heat deficit, engineering estimate, no source. */
    public static final double LEAST = 15e3;

    private static final double SAMPLE = 60; // s, as the reader looks at the air

    public Pressure {
        saved = Collections.unmodifiableMap(saved.isEmpty() ? new EnumMap<>(Stress.class) : new EnumMap<>(saved));
    }

    /**
     * Runs a night again without each of its stresses.
     *
     * @param night the night as it is
     */
    static Pressure on(NightResult night, NumericalSettings settings) {
        Map<Stress, Double> saved = new EnumMap<>(Stress.class);
        Scenario scenario = night.scenario();
        if (!(scenario.surroundings() instanceof Chamber) && !night.hours().isEmpty()) {
            for (Stress stress : Stress.values()) {
                if (presses(stress, scenario)) {
                    saved.put(stress, saved(night, stress, settings));
                }
            }
        }
        return new Pressure(night.shortfallHeat(), saved);
    }

    /** The stress that limits the night, first; then those as good as equal to it. Empty when none saves a tenth of the bill. */
    public List<Stress> limiting() {
        double most = saved.values().stream().mapToDouble(v -> v).max().orElse(0);
        if (!(most >= Math.max(LEAST, TELLING * bill))) {
            return List.of();
        }
        return saved.entrySet().stream()
                .filter(each -> each.getValue() >= NEAR * most)
                .sorted(Map.Entry.<Stress, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static double saved(NightResult night, Stress stress, NumericalSettings settings) {
        Scenario scenario = night.scenario();
        NightResult without = NightEngine.compile(
                        scenario.withSurroundings(scenario.surroundings().under(stress::without)),
                        ModelChoice.nominal())
                .run(settings);
        double end = Math.min(end(night), end(without));
        return billAt(night.trace(), end) - billAt(without.trace(), end);
    }

    private static double end(NightResult result) {
        double[] time = result.trace().time();
        return time[time.length - 1];
    }

    private static double billAt(Trace trace, double when) {
        double[] time = trace.time();
        int i = 1;
        while (i < time.length - 1 && time[i] < when) {
            i++;
        }
        double share = (when - time[i - 1]) / (time[i] - time[i - 1]);
        return trace.shortfall()[i - 1] + share * (trace.shortfall()[i] - trace.shortfall()[i - 1]);
    }

    private static boolean presses(Stress stress, Scenario scenario) {
        OutdoorState state = new OutdoorState();
        double warmest = Double.NEGATIVE_INFINITY;
        double rain = 0;
        double duration = scenario.plan().duration();
        for (double time = scenario.plan().start(); time < duration + SAMPLE; time += SAMPLE) {
            scenario.surroundings().at(Math.min(time, duration), state);
            warmest = Math.max(warmest, state.airCelsius);
            rain = Math.max(rain, state.precipitation);
        }
        return switch (stress) {
            case COLD -> warmest + Stress.WARMER <= ModelRange.WARMEST_AIR;
            case WET -> rain > 0;
            case WIND, SKY -> true;
        };
    }
}
