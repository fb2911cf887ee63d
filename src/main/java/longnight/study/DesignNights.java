package longnight.study;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longnight.air.SaturationVapour;
import longnight.air.Temperature;
import longnight.assumption.Guess;
import longnight.outdoors.ClimateRecord;
import longnight.outdoors.ClimateRecord.Daily;
import longnight.outdoors.Weather;
import longnight.outdoors.law.NightCourse;
import longnight.outdoors.law.SunTimes;
import org.jspecify.annotations.Nullable;

/**
 * The three nights to plan for. Clear and calm: the coldest to expect. Windy: among the windiest tenth of the cold months' nights the
 * one at the cold tenth. Wet: among nights around the freezing point with rain, the one at the wet tenth. Which tenth is a decision
 * of ours (engineering estimate, no source).
 *
 * <p>An hourly record gives the last two as they were; a daily one gives a day's extremes, from which the course is made as for
 * {@link NightCourse}.
 */
final class DesignNights {
    private static final double WINDY = 0.9;
    private static final double COLD = 0.1;
    private static final double WET = 0.9;

    /** Rain near the freezing point [degC], and the least that counts as a wet night [mm]: engineering estimate, no source. */
    private static final double WET_FROM = -2;

    private static final double WET_TO = 3;
    private static final double WET_LEAST = 1;

    private static final double CALM = 1; // m/s
    private static final double USUAL_HUMIDITY = 0.8;
    private static final double USUAL_RANGE = 11; // K
    private static final double USUAL_WIND = 3; // m/s
    private static final double STEP = 1800; // s

    private final ClimateRecord record;
    private final NightTimes times;
    private final boolean south;

    DesignNights(ClimateRecord record, NightTimes times) {
        this.record = record;
        this.times = times;
        south = Winter.isSouthern(record);
    }

    // --- Clear and calm ---

    /** A clear, calm night that falls to a temperature [degC]. */
    DesignNight clearCalm(double minimum, List<Winter> winters, DesignNight.Origin origin) {
        List<Guess> guesses = new ArrayList<>();
        double range = range(winters);
        if (Double.isNaN(range)) {
            range = USUAL_RANGE;
            guesses.add(guess(
                    "fall of the air temperature from the day before", range, "K", "a clear calm night; from memory"));
        }
        guesses.add(guess("wind", CALM, "m/s", "a calm night; engineering estimate, no source"));
        guesses.add(guess("cloud cover", 0, "1", "a clear night"));
        Weather weather = course(date(winters), minimum, minimum + range, CALM, 0, 0, guesses);
        return made(DesignNight.Kind.CLEAR_CALM, origin, date(winters), weather, guesses, 0);
    }

    /** Middle of the ranges of the days that held a winter's minimum; NaN when no day has both ends. */
    private double range(List<Winter> winters) {
        Daily days = record.daily();
        return Order.median(winters.stream()
                .mapToDouble(winter -> {
                    int i = java.util.Arrays.binarySearch(
                            days.day(), (int) winter.date().toEpochDay());
                    return days.maximum()[i] - days.minimum()[i];
                })
                .toArray());
    }

    /** The middle of the days on which winters were coldest; its year is the last. */
    private LocalDate date(List<Winter> winters) {
        double after = Order.median(winters.stream()
                .mapToDouble(winter ->
                        winter.date().toEpochDay() - first(winter.year()).toEpochDay())
                .toArray());
        return first(winters.get(winters.size() - 1).year()).plusDays(Math.round(after));
    }

    private LocalDate first(int year) {
        return LocalDate.of(year, south ? 1 : 7, 1);
    }

    // --- Windy and wet, hour by hour ---

    @Nullable
    DesignNight windy(List<RecordedNight> nights) {
        List<RecordedNight> cold = nights.stream()
                .filter(night -> Winter.isCold(night.date(), south))
                .toList();
        if (cold.isEmpty()) {
            return null;
        }
        double gusty = at(cold, RecordedNight::meanWind, WINDY).meanWind();
        List<RecordedNight> windy =
                cold.stream().filter(night -> night.meanWind() >= gusty).toList();
        RecordedNight chosen = at(windy, RecordedNight::meanAir, COLD);
        return recorded(DesignNight.Kind.WINDY, chosen, windy.size());
    }

    @Nullable
    DesignNight wet(List<RecordedNight> nights) {
        List<RecordedNight> wet = nights.stream()
                .filter(night -> night.rain() >= WET_LEAST && night.meanAir() >= WET_FROM && night.meanAir() <= WET_TO)
                .toList();
        return wet.isEmpty() ? null : recorded(DesignNight.Kind.WET, at(wet, RecordedNight::rain, WET), wet.size());
    }

    private static DesignNight recorded(DesignNight.Kind kind, RecordedNight night, int of) {
        return new DesignNight(kind, DesignNight.Origin.RECORDED, night.weather(), night, guesses(night), of);
    }

    static List<Guess> guesses(RecordedNight night) {
        List<Guess> guesses = new ArrayList<>();
        if (night.cloudUnknown()) {
            guesses.add(guess("cloud cover", 0, "1", "missing in the record; a clear sky, the coldest case"));
        }
        if (night.rainUnknown()) {
            guesses.add(guess("precipitation", 0, "mm/h", "missing in the record; none assumed"));
        }
        return guesses;
    }

    // --- Windy and wet, from days ---

    @Nullable
    DesignNight windyDay() {
        Daily days = record.daily();
        List<Integer> known = days(i -> days.minimum()[i] + days.maximum()[i] + days.wind()[i]);
        if (known.isEmpty()) {
            return null;
        }
        double gusty = days.wind()[at(known, i -> days.wind()[i], WINDY)];
        List<Integer> windy =
                known.stream().filter(i -> days.wind()[i] >= gusty).toList();
        int chosen = at(windy, i -> days.minimum()[i], COLD);
        List<Guess> guesses = new ArrayList<>();
        guesses.add(guess("cloud cover", 0, "1", "not in the record; a clear sky, the coldest case"));
        return fromDay(DesignNight.Kind.WINDY, chosen, days.wind()[chosen], 0, 0, guesses, windy.size());
    }

    @Nullable
    DesignNight wetDay() {
        Daily days = record.daily();
        List<Integer> wet = days(i -> days.minimum()[i] + days.maximum()[i] + days.precipitation()[i]).stream()
                .filter(i -> days.precipitation()[i] >= WET_LEAST)
                .filter(i -> {
                    double mean = 0.5 * (days.minimum()[i] + days.maximum()[i]);
                    return mean >= WET_FROM && mean <= WET_TO;
                })
                .toList();
        if (wet.isEmpty()) {
            return null;
        }
        int chosen = at(wet, i -> days.precipitation()[i], WET);
        List<Guess> guesses = new ArrayList<>();
        guesses.add(guess(
                "precipitation",
                days.precipitation()[chosen] / 24,
                "mm/h",
                "the day's sum spread evenly over 24 h; a shorter, harder fall may wet more"));
        guesses.add(guess("cloud cover", 1, "1", "it rains"));
        double wind = days.wind()[chosen];
        if (Double.isNaN(wind)) {
            wind = USUAL_WIND;
            guesses.add(guess("wind", wind, "m/s", "not in the record; engineering estimate, no source"));
        }
        return fromDay(DesignNight.Kind.WET, chosen, wind, 1, days.precipitation()[chosen] / 24, guesses, wet.size());
    }

    private DesignNight fromDay(
            DesignNight.Kind kind, int i, double wind, double cloud, double rain, List<Guess> guesses, int of) {
        Daily days = record.daily();
        LocalDate date = LocalDate.ofEpochDay(days.day()[i]);
        Weather weather = course(date, days.minimum()[i], days.maximum()[i], wind, cloud, rain, guesses);
        return made(kind, DesignNight.Origin.FROM_DAY, date, weather, guesses, of);
    }

    /** Days of the cold months on which a sum of values is known. */
    private List<Integer> days(ToDoubleFunction<Integer> needed) {
        return IntStream.range(0, record.daily().day().length)
                .boxed()
                .filter(i -> !Double.isNaN(needed.applyAsDouble(i)))
                .filter(i -> Winter.isCold(LocalDate.ofEpochDay(record.daily().day()[i]), south))
                .toList();
    }

    // --- The course ---

    /**
     * By night Goudriaan and van Laar 1994, by day Parton and Logan 1981; vapour as at sunset, held at or below saturation.
     */
    private Weather course(
            LocalDate date, double low, double high, double wind, double cloud, double rain, List<Guess> guesses) {
        double[] sun = sun(date, guesses);
        double nightLength = sun[1] - sun[0];
        double dayLength = 24 - nightLength;
        double atSunset = NightCourse.day(low, high, dayLength - NightCourse.LAG_AFTER_SUNRISE, dayLength);
        guesses.add(guess("relative humidity at sunset", USUAL_HUMIDITY, "1", "engineering estimate, no source"));
        double vapour = USUAL_HUMIDITY * SaturationVapour.overWater(Temperature.kelvin(atSunset));
        int first = (int) -Math.ceil(times.before() / STEP);
        int last = (int) Math.ceil(times.duration() / STEP);
        double[][] v = new double[8][last - first + 1];
        for (int k = 0; k < v[0].length; k++) {
            double time = (first + k) * STEP;
            double afterSunset = (times.startOfDay() + time) / 3600 - sun[0];
            double air;
            if (afterSunset < 0) {
                air = NightCourse.day(low, high, dayLength - NightCourse.LAG_AFTER_SUNRISE + afterSunset, dayLength);
            } else if (afterSunset <= nightLength) {
                air = NightCourse.night(atSunset, low, afterSunset, nightLength, NightCourse.RELAXATION_HOURS);
            } else {
                air = NightCourse.day(low, high, afterSunset - nightLength, dayLength);
            }
            v[0][k] = time;
            v[1][k] = air;
            v[2][k] = Math.min(1, vapour / SaturationVapour.overWater(Temperature.kelvin(air)));
            v[3][k] = wind;
            v[4][k] = cloud;
            v[5][k] = rain;
            v[6][k] = Double.NaN;
            v[7][k] = Double.NaN;
        }
        return new Weather(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]);
    }

    /** Sunset, and the sunrise after it [h after midnight of the first day]. */
    private double[] sun(LocalDate date, List<Guess> guesses) {
        if (!Double.isNaN(record.latitude() + record.longitude() + record.utcOffset())) {
            SunTimes sun = SunTimes.of(
                    date.getYear(),
                    date.getMonthValue(),
                    date.getDayOfMonth(),
                    record.latitude(),
                    record.longitude(),
                    record.utcOffset());
            double night = 24 - (sun.sunset() - sun.sunrise()) / 60;
            if (sun.course() == SunTimes.Course.RISES_AND_SETS && night >= 4 && night <= 20) {
                return new double[] {sun.sunset() / 60, sun.sunrise() / 60 + 24};
            }
        }
        guesses.add(Guess.word(
                "weather",
                "sunset and sunrise",
                "16:30 and 07:30",
                "place unknown or far north; engineering estimate, no source"));
        return new double[] {16.5, 31.5};
    }

    private DesignNight made(
            DesignNight.Kind kind,
            DesignNight.Origin origin,
            LocalDate date,
            Weather weather,
            List<Guess> guesses,
            int of) {
        RecordedNight summary = RecordedNight.of(date, weather, times, false, false);
        return new DesignNight(kind, origin, weather, summary, List.copyOf(guesses), of);
    }

    /** The one that stands at a share of the row, smallest first. */
    private static <T> T at(List<T> all, ToDoubleFunction<T> by, double share) {
        List<T> sorted = all.stream().sorted(Comparator.comparingDouble(by)).toList();
        return sorted.get((int) Math.round(share * (sorted.size() - 1)));
    }

    private static Guess guess(String quantity, double value, String unit, String reason) {
        return Guess.number("weather", quantity, value, unit, reason);
    }
}
