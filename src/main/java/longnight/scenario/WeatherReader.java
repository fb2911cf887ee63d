package longnight.scenario;

import java.util.List;
import java.util.stream.Stream;
import longnight.air.SaturationVapour;
import longnight.air.Temperature;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.outdoors.Weather;
import longnight.outdoors.law.NightCourse;

/** The night's weather from a table, a file, a year's record, or from not more than its extremes. */
final class WeatherReader {
    private static final String UNKNOWN = "not given; ";

    /** Humidity taken when nobody measured it: engineering estimate, no source. */
    private static final double USUAL_HUMIDITY = 0.8;

    /**
     * Weather of the one night.
     *
     * @param weather  the series
     * @param name     what to call it
     * @param altitude of the station [m]; NaN when unknown
     */
    record Found(Weather weather, String name, double altitude) {}

    private final Section section;
    private final NightHours night;
    private final Findings findings;

    private WeatherReader(Section section, NightHours night, Findings findings) {
        this.section = section;
        this.night = night;
        this.findings = findings;
    }

    static Found read(Section section, NightHours night, Findings findings) {
        return new WeatherReader(section, night, findings).found();
    }

    private Found found() {
        List<String> ways =
                Stream.of("table", "file", "record", "max").filter(section::has).toList();
        if (ways.size() != 1) {
            Place place = ways.isEmpty() ? section.place() : section.keyAt(ways.get(1));
            throw place.fault(
                    ways.isEmpty()
                            ? "a weather that says nothing"
                            : "\"" + ways.get(1) + "\" beside \"" + ways.get(0) + "\"",
                    "write one of table, file, record, or max with min");
        }
        for (String key : List.of("min", "sunset", "sunrise", "wind", "humidity", "cloud")) {
            if (section.has(key) && !section.has("max")) {
                throw section.keyAt(key).fault("\"" + key + "\" without \"max\"", "it goes with max and min only");
            }
        }
        if (section.has("night") && !section.has("record")) {
            throw section.keyAt("night").fault("\"night\" without \"record\"", "it chooses a night of a record");
        }
        return switch (ways.get(0)) {
            case "table" -> new Found(fromRows(section.sections("table"), section.at("table")), name(""), Double.NaN);
            case "file" -> {
                CsvFile csv = findings.shelf.csv(section.written("file"));
                List<Section> rows = csv.rows().stream()
                        .map(row -> new Section(row, Tables.WEATHER_ROW))
                        .toList();
                yield new Found(fromRows(rows, csv.header()), name(""), Double.NaN);
            }
            case "record" -> fromRecord();
            default -> new Found(fromExtremes(), name(""), Double.NaN);
        };
    }

    private String name(String otherwise) {
        return section.textOr("name", otherwise);
    }

    private Weather fromRows(List<Section> rows, Place table) {
        if (rows.isEmpty()) {
            throw table.fault("a weather without rows", "write at least two rows");
        }
        for (String key : List.of("humidity", "cloud", "precipitation", "pressure", "sky-radiation")) {
            boolean given = rows.get(0).has(key);
            for (Section row : rows) {
                if (row.has(key) != given) {
                    throw (given ? row.place() : row.keyAt(key))
                            .fault(
                                    "a row " + (given ? "without" : "with") + " \"" + key
                                            + "\", other than the first row",
                                    "write it in every row or in none");
                }
            }
        }
        Section first = rows.get(0);
        boolean skyKnown = first.has("sky-radiation");
        if (!first.has("humidity")) {
            guess("relative humidity", USUAL_HUMIDITY, "1", "engineering estimate, no source");
        }
        if (!first.has("cloud") && !skyKnown) {
            guess("cloud cover", 0, "1", "a clear sky, the coldest case");
        }
        if (!first.has("precipitation")) {
            guess("precipitation", 0, "mm/h", "none assumed");
        }
        WeatherSeries series = new WeatherSeries();
        double time = Double.NaN;
        for (Section row : rows) {
            double clock = row.clock("time");
            if (Double.isNaN(time)) {
                time = night.near(clock);
            } else {
                double step = ((clock - (night.from() + time)) % NightHours.DAY + 2 * NightHours.DAY) % NightHours.DAY;
                if (step == 0) {
                    throw row.at("time")
                            .fault(
                                    "the time " + row.text("time") + " for the second time",
                                    "each row has a later time");
                }
                time += step;
            }
            series.add(new WeatherSeries.Row(
                    row.at("time"),
                    time,
                    row.quantity("air"),
                    row.quantityOr("humidity", USUAL_HUMIDITY),
                    row.quantity("wind"),
                    row.quantityOr("cloud", 0),
                    row.quantityOr("precipitation", 0),
                    row.quantityOr("pressure", Double.NaN),
                    row.quantityOr("sky-radiation", Double.NaN)));
        }
        if (series.start() > -night.before() && series.start() <= 0) {
            guess(
                    "weather from " + night.clockAt(-night.before()) + " to " + night.clockAt(series.start()),
                    "as at " + night.clockAt(series.start()),
                    "before the first row; its values are held back");
        }
        return series.over(night);
    }

    private Found fromRecord() {
        EpwRecord record = findings.shelf.record(section.written("record"));
        Place at = section.has("night") ? section.at("night") : section.place();
        String wanted = section.textOr("night", "");
        if (wanted.isEmpty()) {
            throw at.fault(
                    "a record without \"night\"", "write \"night: coldest\", or month and day as in \"night: 01-21\"");
        }
        EpwRecord.Night chosen = record.night(wanted, night, at);
        findings.guesses.addAll(chosen.guesses());
        if (chosen.guesses().stream().anyMatch(guess -> !guess.subject().equals("record"))) {
            findings.cautions.add(Caution.WEATHER_GUESSED);
        }
        if (record.typicalYear()) {
            findings.cautions.add(Caution.TYPICAL_YEAR);
        }
        return new Found(chosen.weather(), name(chosen.name()), record.altitude());
    }

    /**
     * Day and night when only their extremes are known: by day the half sine of Parton and Logan (1981), by night the
     * curve of Goudriaan and van Laar (1994), which reaches the minimum at sunrise; vapour pressure as at sunset.
     */
    private Weather fromExtremes() {
        double max = section.quantity("max");
        double min = section.quantity("min");
        if (min > max) {
            throw section.at("min")
                    .fault("\"min\" is \"" + section.text("min") + "\"", "at most \"max\", " + section.text("max"));
        }
        double sunset = section.clock("sunset");
        double sunrise = section.clock("sunrise");
        double wind = section.quantity("wind");
        double nightLength = ((sunrise - sunset) % NightHours.DAY + NightHours.DAY) % NightHours.DAY / 3600;
        double dayLength = 24 - nightLength;
        if (!(nightLength >= 4 && nightLength <= 20)) {
            throw section.at("sunrise")
                    .fault(
                            "a night of " + Math.round(10 * nightLength) / 10.0 + " h from sunset to sunrise",
                            "allowed is from 4 h to 20 h");
        }
        if (!section.has("humidity")) {
            guess("relative humidity at sunset", USUAL_HUMIDITY, "1", "engineering estimate, no source");
        }
        if (!section.has("cloud")) {
            guess("cloud cover", 0, "1", "a clear sky, the coldest case");
        }
        guess("precipitation", 0, "mm/h", "none assumed");
        findings.guesses.add(Guess.word(
                "weather",
                "course of the air temperature",
                "from highest and lowest",
                "Goudriaan and van Laar 1994 by night, Parton and Logan 1981 by day (from memory)"));
        findings.cautions.add(Caution.WEATHER_GUESSED);
        double atSunset = NightCourse.day(min, max, dayLength - NightCourse.LAG_AFTER_SUNRISE, dayLength);
        double vapour = section.quantityOr("humidity", USUAL_HUMIDITY)
                * SaturationVapour.overWater(Temperature.kelvin(atSunset));
        double cloud = section.quantityOr("cloud", 0);
        double start = -night.near(sunset) / 3600; // hours from sunset to the start of the night
        WeatherSeries series = new WeatherSeries();
        int earlier = (int) Math.ceil(night.before() / 1800);
        int steps = (int) Math.ceil(night.duration() / 1800);
        for (int i = -earlier; i <= steps; i++) {
            double afterSunset = start + i * 0.5;
            double air;
            if (afterSunset < 0) {
                air = NightCourse.day(min, max, dayLength - NightCourse.LAG_AFTER_SUNRISE + afterSunset, dayLength);
            } else if (afterSunset <= nightLength) {
                air = NightCourse.night(atSunset, min, afterSunset, nightLength, NightCourse.RELAXATION_HOURS);
            } else {
                air = NightCourse.day(min, max, afterSunset - nightLength, dayLength);
            }
            double humidity = Math.min(1, vapour / SaturationVapour.overWater(Temperature.kelvin(air)));
            series.add(new WeatherSeries.Row(
                    section.at("max"), i * 1800.0, air, humidity, wind, cloud, 0, Double.NaN, Double.NaN));
        }
        return series.over(night);
    }

    private void guess(String quantity, String word, String reason) {
        findings.guesses.add(Guess.word("weather", quantity, word, UNKNOWN + reason));
        findings.cautions.add(Caution.WEATHER_GUESSED);
    }

    private void guess(String quantity, double value, String unit, String reason) {
        findings.guesses.add(Guess.number("weather", quantity, value, unit, UNKNOWN + reason));
        findings.cautions.add(Caution.WEATHER_GUESSED);
    }
}
