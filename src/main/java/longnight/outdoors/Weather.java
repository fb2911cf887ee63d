package longnight.outdoors;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import longnight.air.Temperature;

/**
 * A weather series, instantaneous values to be interpolated linearly. Arrays have equal length, at least 2; they are
 * copied on the way in and must not be changed by those who read them.
 *
 * @param time          seconds from the start of the night (negative before it), strictly rising
 * @param airCelsius    air temperature at 1.5 to 2 m [degC], -90 to 60
 * @param relativeHumidity over liquid water at all temperatures [1], 0 to 1
 * @param wind10        10-minute mean wind at 10 m in the open [m/s], 0 to 75
 * @param cloud         cloud fraction [1], 0 to 1
 * @param precipitation liquid-equivalent rate [mm/h] from this time on (step, not interpolated), 0 to 200
 * @param pressure      station pressure [Pa], 3e4 to 1.1e5; NaN where unknown (then from altitude)
 * @param skyLongwave   downward long-wave radiation of the whole sky [W/m2], 40 to 600; NaN where unknown (then from air
 *     and cloud)
 */
public record Weather(
        double[] time,
        double[] airCelsius,
        double[] relativeHumidity,
        double[] wind10,
        double[] cloud,
        double[] precipitation,
        double[] pressure,
        double[] skyLongwave) {

    /** @throws IllegalArgumentException when lengths differ, time does not rise, or a value lies outside its range */
    public Weather {
        time = time.clone();
        airCelsius = airCelsius.clone();
        relativeHumidity = relativeHumidity.clone();
        wind10 = wind10.clone();
        cloud = cloud.clone();
        precipitation = precipitation.clone();
        pressure = pressure.clone();
        skyLongwave = skyLongwave.clone();
        int n = time.length;
        if (n < 2) {
            throw new IllegalArgumentException("a weather series has " + n + " entries, at least 2 are needed");
        }
        Ranges.requireRising("weather time [s]", time);
        Ranges.requireAll("weather airCelsius [degC]", airCelsius, n, -90, 60, false);
        Ranges.requireAll("weather relativeHumidity [1]", relativeHumidity, n, 0, 1, false);
        Ranges.requireAll("weather wind10 [m/s]", wind10, n, 0, 75, false);
        Ranges.requireAll("weather cloud [1]", cloud, n, 0, 1, false);
        Ranges.requireAll("weather precipitation [mm/h]", precipitation, n, 0, 200, false);
        Ranges.requireAll("weather pressure [Pa]", pressure, n, 3e4, 1.1e5, true);
        Ranges.requireAll("weather skyLongwave [W/m2]", skyLongwave, n, 40, 600, true);
    }

    /**
     * The same course with all air temperatures moved; relative humidity and the emissivity of the sky stay, so that vapour never
     * passes saturation and a clear sky stays clear.
     *
     * @param kelvin added to every temperature [K]
     * @throws IllegalArgumentException when a value then lies outside its range
     */
    public Weather warmer(double kelvin) {
        double[] moved = new double[time.length];
        double[] sky = new double[time.length];
        for (int i = 0; i < time.length; i++) {
            moved[i] = airCelsius[i] + kelvin;
            double ratio = Temperature.kelvin(moved[i]) / Temperature.kelvin(airCelsius[i]);
            sky[i] = skyLongwave[i] * ratio * ratio * ratio * ratio;
        }
        return new Weather(time, moved, relativeHumidity, wind10, cloud, precipitation, pressure, sky);
    }

    /**
     * The same course in a steady wind.
     *
     * @param steady 10-minute mean wind at 10 m in the open [m/s], 0 to 75
     */
    public Weather inWind(double steady) {
        double[] wind = new double[time.length];
        Arrays.fill(wind, steady);
        return new Weather(time, airCelsius, relativeHumidity, wind, cloud, precipitation, pressure, skyLongwave);
    }

    /**
     * The same course with all of its wind stronger or weaker.
     *
     * @param factor on the wind [1], 0 and up
     * @param most   to which wind is held [m/s], 0 to 75
     */
    public Weather windier(double factor, double most) {
        double[] wind =
                Arrays.stream(wind10).map(v -> Math.min(most, factor * v)).toArray();
        return new Weather(time, airCelsius, relativeHumidity, wind, cloud, precipitation, pressure, skyLongwave);
    }

    /** The same course without rain and snow; clouds and humidity stay. */
    public Weather withoutPrecipitation() {
        double[] none = new double[time.length];
        return new Weather(time, airCelsius, relativeHumidity, wind10, cloud, none, pressure, skyLongwave);
    }

    /** The same course under a sky wholly covered; what radiation was recorded of another sky is forgotten. */
    public Weather overcast() {
        double[] covered = new double[time.length];
        double[] unknown = new double[time.length];
        Arrays.fill(covered, 1);
        Arrays.fill(unknown, Double.NaN);
        return new Weather(time, airCelsius, relativeHumidity, wind10, covered, precipitation, pressure, unknown);
    }

    /** The same course with what radiation was recorded of the sky forgotten: it then follows from air and cloud. */
    public Weather withoutRecordedSky() {
        double[] unknown = new double[time.length];
        Arrays.fill(unknown, Double.NaN);
        return new Weather(time, airCelsius, relativeHumidity, wind10, cloud, precipitation, pressure, unknown);
    }

    /**
     * The same course with entries at more times, which changes nothing by itself.
     *
     * @param more times wanted [s]; those outside the series are left out
     */
    public Weather withEntriesAt(double[] more) {
        double[] all = DoubleStream.concat(
                        Arrays.stream(time), Arrays.stream(more).filter(t -> t > time[0] && t < time[time.length - 1]))
                .sorted()
                .distinct()
                .toArray();
        double[][] out = new double[7][all.length];
        for (int k = 0; k < all.length; k++) {
            int i = Arrays.binarySearch(time, all[k]);
            int before = i >= 0 ? i : -i - 2;
            int after = i >= 0 ? i : before + 1;
            double f = i >= 0 ? 0 : (all[k] - time[before]) / (time[after] - time[before]);
            out[0][k] = between(airCelsius, before, after, f);
            out[1][k] = between(relativeHumidity, before, after, f);
            out[2][k] = between(wind10, before, after, f);
            out[3][k] = between(cloud, before, after, f);
            out[4][k] = precipitation[before];
            out[5][k] = between(pressure, before, after, f);
            out[6][k] = between(skyLongwave, before, after, f);
        }
        return new Weather(all, out[0], out[1], out[2], out[3], out[4], out[5], out[6]);
    }

    private static double between(double[] values, int before, int after, double f) {
        return f == 0 ? values[before] : values[before] + f * (values[after] - values[before]);
    }
}
