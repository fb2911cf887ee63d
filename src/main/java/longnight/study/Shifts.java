package longnight.study;

import longnight.night.ModelRange;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;

/**
 * A night made warmer or colder as a whole, as far as the model's air reaches. Wind, cloud, precipitation and relative humidity
 * stay; whether rain or snow falls follows from the temperature. A ground temperature that was written stays too.
 */
final class Shifts {
    /** Keeps the ends of the range inside it after rounding [K]. */
    private static final double INSIDE = 1e-6;

    private final Scenario night;
    private final double coldest;
    private final double warmest;
    private final Air air;
    private final boolean wet;

    /** @throws UnsupportedOperationException in a chamber, which has no weather */
    Shifts(Scenario night) {
        this.night = night;
        night.surroundings().under(weather -> weather);
        OutdoorState state = new OutdoorState();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        boolean falls = false;
        double end = night.plan().duration();
        for (double t = night.plan().start(); t < end + 60; t += 60) {
            night.surroundings().at(Math.min(t, end), state);
            low = Math.min(low, state.airCelsius);
            high = Math.max(high, state.airCelsius);
            falls |= state.precipitation > 0;
        }
        coldest = ModelRange.COLDEST_AIR - low + INSIDE;
        warmest = ModelRange.WARMEST_AIR - high - INSIDE;
        wet = falls;
        air = Air.of(night);
    }

    /** The night warmer by so many kelvin, {@link #coldest()} to {@link #warmest()}. */
    Scenario at(double kelvin) {
        return kelvin == 0
                ? night
                : night.withSurroundings(night.surroundings().under(weather -> weather.warmer(kelvin)));
    }

    /** The coldest that the model's range allows [K]. */
    double coldest() {
        return coldest;
    }

    /** The warmest that the model's range allows [K]. */
    double warmest() {
        return warmest;
    }

    /** Air of the unmoved night. */
    Air air() {
        return air;
    }

    /** Whether anything falls in this night. */
    boolean isWet() {
        return wet;
    }
}
