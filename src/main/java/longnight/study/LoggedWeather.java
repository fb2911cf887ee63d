package longnight.study;

import java.util.Arrays;
import java.util.TreeSet;
import longnight.air.SaturationVapour;
import longnight.air.Temperature;
import longnight.night.NightLog;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;
import longnight.outdoors.Weather;
import org.jspecify.annotations.Nullable;

/**
 * A night's own weather with what was logged put in its place. The log was kept where the person sat, so the site's offset is taken
 * off again; a recorded sky keeps its emissivity. Gaps are bridged straight, both ends held.
 */
final class LoggedWeather {
    private LoggedWeather() {}

    static Surroundings of(Scenario night, NightLog log) {
        Surroundings own = night.surroundings();
        Weather[] found = new Weather[1];
        own.under(weather -> {
            found[0] = weather;
            return weather;
        });
        Weather base = java.util.Objects.requireNonNull(found[0]);
        OutdoorState state = new OutdoorState();
        own.at(base.time()[0], state);
        double offset = state.airCelsius - base.airCelsius()[0];
        return own.under(weather -> mixed(base, log, offset));
    }

    private static Weather mixed(Weather base, NightLog log, double offset) {
        double first = base.time()[0];
        double end = base.time()[base.time().length - 1];
        TreeSet<Double> times = new TreeSet<>();
        Arrays.stream(base.time()).forEach(times::add);
        for (int i = 0; i < log.time().length; i++) {
            if (log.time()[i] > first && log.time()[i] < end && !Double.isNaN(log.air()[i])) {
                times.add(log.time()[i]);
            }
        }
        double[] time = times.stream().mapToDouble(Double::doubleValue).toArray();
        double[][] v = new double[7][time.length];
        double @Nullable [][] air = known(log.time(), log.air());
        double @Nullable [][] humidity = known(log.time(), log.humidity());
        double @Nullable [][] wind = known(log.time(), log.wind());
        for (int i = 0; i < time.length; i++) {
            double t = time[i];
            double own = at(base.time(), base.airCelsius(), t);
            double here = air == null ? own + offset : at(air[0], air[1], t);
            v[0][i] = here - offset;
            v[1][i] = humidity == null
                    ? at(base.time(), base.relativeHumidity(), t)
                    : Math.min(1, at(humidity[0], humidity[1], t) * water(here) / water(here - offset));
            v[2][i] = wind == null ? at(base.time(), base.wind10(), t) : at(wind[0], wind[1], t);
            v[3][i] = at(base.time(), base.cloud(), t);
            v[4][i] = base.precipitation()[before(base.time(), t)];
            v[5][i] = at(base.time(), base.pressure(), t);
            double ratio = Temperature.kelvin(here - offset) / Temperature.kelvin(own);
            v[6][i] = at(base.time(), base.skyLongwave(), t) * ratio * ratio * ratio * ratio;
        }
        return new Weather(time, v[0], v[1], v[2], v[3], v[4], v[5], v[6]);
    }

    private static double water(double celsius) {
        return SaturationVapour.overWater(Temperature.kelvin(celsius));
    }

    /** Times and values of what was read; null when nothing was. */
    static double @Nullable [][] known(double[] time, double[] values) {
        int[] at = java.util.stream.IntStream.range(0, time.length)
                .filter(i -> !Double.isNaN(values[i]))
                .toArray();
        return at.length == 0
                ? null
                : new double[][] {
                    Arrays.stream(at).mapToDouble(i -> time[i]).toArray(),
                    Arrays.stream(at).mapToDouble(i -> values[i]).toArray()
                };
    }

    private static int before(double[] time, double t) {
        int i = Arrays.binarySearch(time, t);
        return i >= 0 ? i : Math.max(0, -i - 2);
    }

    /** Straight between neighbours, held at the ends. */
    static double at(double[] time, double[] values, double t) {
        int i = before(time, t);
        if (t <= time[0] || i + 1 >= time.length) {
            return values[i];
        }
        return values[i] + (t - time[i]) / (time[i + 1] - time[i]) * (values[i + 1] - values[i]);
    }
}
