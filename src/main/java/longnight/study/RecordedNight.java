package longnight.study;

import java.time.LocalDate;
import longnight.outdoors.Weather;

/**
 * A night of an hourly record.
 *
 * @param date         of its evening
 * @param weather      the series
 * @param meanAir      from dusk to dawn [degC]
 * @param lowestAir    [degC]
 * @param meanWind     at 10 m [m/s]
 * @param meanCloud    [1]
 * @param rain         in all [mm]
 * @param cloudUnknown whether cloud was missing and a clear sky was taken
 * @param rainUnknown  whether precipitation was missing and none was taken
 */
public record RecordedNight(
        LocalDate date,
        Weather weather,
        double meanAir,
        double lowestAir,
        double meanWind,
        double meanCloud,
        double rain,
        boolean cloudUnknown,
        boolean rainUnknown) {

    /** With its means, each straight between the rows. */
    static RecordedNight of(
            LocalDate date, Weather weather, NightTimes times, boolean cloudUnknown, boolean rainUnknown) {
        double[] time = weather.time();
        double end = times.duration();
        double air = 0;
        double wind = 0;
        double cloud = 0;
        double rain = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < time.length; i++) {
            double from = Math.max(0, time[i]);
            double to = Math.min(end, time[i + 1]);
            if (to <= from) {
                continue;
            }
            double f = ((from + to) / 2 - time[i]) / (time[i + 1] - time[i]);
            double share = (to - from) / end;
            air += share * between(weather.airCelsius(), i, f);
            wind += share * between(weather.wind10(), i, f);
            cloud += share * between(weather.cloud(), i, f);
            rain += weather.precipitation()[i] * (to - from) / 3600;
            double step = time[i + 1] - time[i];
            lowest = Math.min(lowest, between(weather.airCelsius(), i, (from - time[i]) / step));
            lowest = Math.min(lowest, between(weather.airCelsius(), i, (to - time[i]) / step));
        }
        return new RecordedNight(date, weather, air, lowest, wind, cloud, rain, cloudUnknown, rainUnknown);
    }

    private static double between(double[] values, int i, double f) {
        return values[i] + f * (values[i + 1] - values[i]);
    }
}
