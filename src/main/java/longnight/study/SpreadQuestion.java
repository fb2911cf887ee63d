package longnight.study;

import java.util.Arrays;
import java.util.Set;
import longnight.night.ModelRange;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;

/**
 * What is in doubt about a night.
 *
 * @param night    as its files say, outdoors and within the model's range
 * @param over     what is in doubt, at least one thing
 * @param people   who may sit there
 * @param forecast by how much the forecast may be wrong
 * @param colder   of the worst plausible night against the one given [K], 0 and up
 * @param windier  the same, as a share of the wind [1], 0 and up
 * @param most     draws at most, {@link #FEWEST} and up
 * @param seed     any number
 */
public record SpreadQuestion(
        Scenario night,
        Set<Doubt> over,
        PeopleRange people,
        ForecastError forecast,
        double colder,
        double windier,
        int most,
        long seed) {
    /** No answer rests on fewer draws. */
    public static final int FEWEST = 64;

    /** Draws at most when nothing else is said. */
    public static final int USUAL_MOST = 1024;

    /** The worst plausible night when nothing else is said [K], [1]: engineering estimates, no source. */
    public static final double USUAL_COLDER = 2;

    public static final double USUAL_WINDIER = 0.3;

    private static final double MOST_WIND = 75;

    public SpreadQuestion {
        over = Set.copyOf(over);
        if (over.isEmpty()) {
            throw new IllegalArgumentException("nothing is in doubt");
        }
        if (most < FEWEST) {
            throw new IllegalArgumentException("draws: " + most);
        }
    }

    /** The coldest air that any draw of either night may meet [degC]. */
    public double coldestAir() {
        return Arrays.stream(air()).min().orElseThrow() - off() - colder;
    }

    /** The warmest air that any draw of the night as given may meet [degC]. */
    public double warmestAir() {
        return Arrays.stream(air()).max().orElseThrow() + off();
    }

    private double off() {
        return over.contains(Doubt.FORECAST) ? forecast.air().most() : 0;
    }

    /** Air of the night, minute by minute [degC]. */
    private double[] air() {
        OutdoorState state = new OutdoorState();
        double start = night.plan().start();
        double end = night.plan().duration();
        double[] air = new double[(int) Math.ceil((end - start) / 60) + 1];
        for (int i = 0; i < air.length; i++) {
            night.surroundings().at(Math.min(start + 60.0 * i, end), state);
            air[i] = state.airCelsius;
        }
        return air;
    }

    /** Whether every draw stays in air for which the model has an answer. */
    public boolean isWithinTheModel() {
        return coldestAir() >= ModelRange.COLDEST_AIR && warmestAir() <= ModelRange.WARMEST_AIR;
    }

    /** The night that all is held against: a recorded sky gives way to the clouds where the forecast is in doubt. */
    Scenario given() {
        return over.contains(Doubt.FORECAST)
                ? night.withSurroundings(night.surroundings().under(longnight.outdoors.Weather::withoutRecordedSky))
                : night;
    }

    /** The worst plausible night. */
    Scenario worst() {
        return given().withSurroundings(given().surroundings()
                .under(weather -> weather.warmer(-colder).windier(1 + windier, MOST_WIND)));
    }
}
