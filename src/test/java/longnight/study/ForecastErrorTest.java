package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import longnight.outdoors.Weather;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

class ForecastErrorTest {
    private static final double HOUR = 3600;
    private static final double NIGHT = 14 * HOUR;
    private static final double[] MOMENTS = ForecastError.moments(NIGHT);
    private static final int DRAWS = 4096;

    private static double[] all(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    private static Weather forecast(double wind, double cloud, double rain, double sky) {
        double[] time = IntStream.rangeClosed(-1, 14).mapToDouble(h -> h * HOUR).toArray();
        int n = time.length;
        return new Weather(
                time,
                all(n, -5),
                all(n, 0.8),
                all(n, wind),
                all(n, cloud),
                all(n, rain),
                all(n, Double.NaN),
                all(n, sky));
    }

    private static List<Weather> drawn(Weather forecast) {
        int places = ForecastError.places(MOMENTS.length);
        return new Rows(places, 1)
                .first(0, DRAWS).stream()
                        .map(place -> ForecastError.usual().at(forecast, MOMENTS, place))
                        .toList();
    }

    private static double[] airAt(List<Weather> drawn, int entry) {
        return drawn.stream()
                .mapToDouble(weather -> weather.airCelsius()[entry] + 5)
                .toArray();
    }

    /** A constant of 1.5 K and a part that grows from nothing toward 1 K, cut at 2.5 standard deviations (times 0.955). */
    @Test
    void the_error_of_the_air_grows_through_the_night() {
        List<Weather> drawn = drawn(forecast(5, 0.5, 0, Double.NaN));
        double[] spread = IntStream.of(0, 1, 3, 5, 15)
                .mapToDouble(entry -> new StandardDeviation().evaluate(airAt(drawn, entry)))
                .toArray();
        double cut = 0.9546; // standard deviation of a normal distribution cut at 2.5
        assertThat(spread[0]).isCloseTo(1.5 * cut, within(0.02));
        assertThat(spread[1]).isCloseTo(1.5 * cut, within(0.02)); // dusk
        double two = 1 - Math.exp(-2 * 2.0 / 6);
        assertThat(spread[2]).isCloseTo(cut * Math.sqrt(2.25 + two), within(0.03));
        double four = 1 - Math.exp(-2 * 4.0 / 6);
        assertThat(spread[3]).isCloseTo(cut * Math.sqrt(2.25 + four), within(0.03));
        double end = 1 - Math.exp(-2 * 14.0 / 6);
        assertThat(spread[4]).isCloseTo(cut * Math.sqrt(2.25 + end), within(0.03));
        double farthest = Arrays.stream(airAt(drawn, 15)).map(Math::abs).max().orElseThrow();
        assertThat(farthest).isLessThanOrEqualTo(ForecastError.usual().air().most());
    }

    /** What is over and above the constant part is forgotten as exp(-t / 6 h). */
    @Test
    void the_wandering_part_remembers_for_hours() {
        List<Weather> drawn = drawn(forecast(5, 0.5, 0, Double.NaN));
        double[] dusk = airAt(drawn, 1);
        double[] at8 = wandered(airAt(drawn, 9), dusk);
        double[] at10 = wandered(airAt(drawn, 11), dusk);
        double[] at14 = wandered(airAt(drawn, 15), dusk);
        assertThat(correlation(at8, at10)).isCloseTo(remembered(8, 10), within(0.03));
        assertThat(correlation(at8, at14)).isCloseTo(remembered(8, 14), within(0.03));
    }

    private static double remembered(double early, double late) {
        double from = 1 - Math.exp(-2 * early / 6);
        double to = 1 - Math.exp(-2 * late / 6);
        return Math.exp(-(late - early) / 6) * Math.sqrt(from / to);
    }

    private static double[] wandered(double[] late, double[] dusk) {
        return IntStream.range(0, late.length)
                .mapToDouble(i -> late[i] - dusk[i])
                .toArray();
    }

    private static double correlation(double[] one, double[] other) {
        return new PearsonsCorrelation().correlation(one, other);
    }

    @Test
    void quantities_err_independently() {
        List<Weather> drawn = drawn(forecast(8, 0.5, 1, Double.NaN));
        double[] air = airAt(drawn, 10);
        double[] wind =
                drawn.stream().mapToDouble(weather -> weather.wind10()[10]).toArray();
        double[] rain = drawn.stream()
                .mapToDouble(weather -> Math.log(weather.precipitation()[10]))
                .toArray();
        assertThat(correlation(air, wind)).isCloseTo(0, within(0.03));
        assertThat(correlation(wind, rain)).isCloseTo(0, within(0.03));
        assertThat(new StandardDeviation().evaluate(wind)).isCloseTo(8 * 0.28, within(0.15));
    }

    @Test
    void nothing_leaves_its_range_and_dry_stays_dry() {
        for (Weather weather : drawn(forecast(0, 1, 0, Double.NaN))) {
            assertThat(weather.precipitation()).containsOnly(0);
            assertThat(Arrays.stream(weather.cloud()).max().orElseThrow()).isLessThanOrEqualTo(1);
            assertThat(Arrays.stream(weather.wind10()).min().orElseThrow()).isNotNegative();
        }
        assertThat(drawn(forecast(0, 1, 0, Double.NaN)).stream()
                        .mapToDouble(weather -> weather.wind10()[8])
                        .max()
                        .orElseThrow())
                .isGreaterThan(1); // a calm that was forecast may be none
    }

    @Test
    void the_middle_of_all_places_is_the_forecast() {
        Weather forecast = forecast(5, 0.5, 2, Double.NaN);
        Weather same = ForecastError.usual().at(forecast, MOMENTS, all(ForecastError.places(MOMENTS.length), 0.5));
        for (int i = 0; i < forecast.time().length; i++) {
            assertThat(same.airCelsius()[i]).isCloseTo(-5, within(1e-9));
            assertThat(same.wind10()[i]).isCloseTo(5, within(1e-9));
            assertThat(same.precipitation()[i]).isCloseTo(2, within(1e-9));
        }
    }

    @Test
    void moments_part_the_night_evenly() {
        assertThat(ForecastError.moments(14 * HOUR))
                .hasSize(7)
                .startsWith(2 * HOUR)
                .endsWith(14 * HOUR);
        assertThat(ForecastError.moments(HOUR)).containsExactly(HOUR);
        assertThat(ForecastError.moments(48 * HOUR)).hasSize(12).startsWith(4 * HOUR);
    }

    @Test
    void entries_added_to_a_forecast_change_nothing() {
        Weather forecast = new Weather(
                new double[] {0, HOUR, 3 * HOUR},
                new double[] {0, -2, -6},
                new double[] {0.5, 0.7, 0.9},
                new double[] {1, 3, 3},
                new double[] {0, 1, 1},
                new double[] {0, 4, 0},
                all(3, Double.NaN),
                new double[] {300, Double.NaN, 200});
        Weather more = forecast.withEntriesAt(new double[] {-HOUR, HOUR, 2 * HOUR, 9 * HOUR});
        assertThat(more.time()).containsExactly(0, HOUR, 2 * HOUR, 3 * HOUR);
        assertThat(more.airCelsius()).containsExactly(0, -2, -4, -6);
        assertThat(more.precipitation()).containsExactly(0, 4, 4, 0);
        assertThat(more.relativeHumidity()[2]).isCloseTo(0.8, within(1e-12));
        assertThat(more.skyLongwave()[0]).isEqualTo(300);
        assertThat(more.skyLongwave()[2]).isNaN();
    }
}
