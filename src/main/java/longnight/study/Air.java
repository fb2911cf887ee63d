package longnight.study;

import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;

/**
 * The air of a night, dusk to dawn.
 *
 * @param mean   [degC]
 * @param lowest [degC]
 */
public record Air(double mean, double lowest) {
    private static final double STEP = 300;

    /** From the surroundings, every five minutes. */
    static Air of(Scenario night) {
        OutdoorState state = new OutdoorState();
        double duration = night.plan().duration();
        long steps = Math.round(Math.ceil(duration / STEP));
        double sum = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (long i = 0; i <= steps; i++) {
            night.surroundings().at(i * duration / steps, state);
            sum += (i == 0 || i == steps ? 0.5 : 1) * state.airCelsius;
            lowest = Math.min(lowest, state.airCelsius);
        }
        return new Air(sum / steps, lowest);
    }

    /** The same night warmer by so many kelvin. */
    Air warmer(double kelvin) {
        return new Air(mean + kelvin, lowest + kelvin);
    }
}
