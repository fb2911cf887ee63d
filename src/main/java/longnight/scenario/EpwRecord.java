package longnight.scenario;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.air.SaturationVapour;
import longnight.air.Temperature;
import longnight.assumption.Guess;
import longnight.outdoors.ClimateRecord.Hourly;
import longnight.outdoors.Weather;

/**
 * A year's hourly record in the EPW form (EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data
 * Dictionary"): eight lines about the station, then one row per hour. The hour 1 to 24 is the END of the hour; values
 * of the state of the air are taken to hold at that moment, precipitation over the hour before it. Clock times are the
 * record's own standard time, without daylight saving.
 *
 * <p>Rows are joined as the record orders them, from the first of January on. The record of a typical year is put
 * together of months of different years: a night across such a seam is joined too, and said so. The last evening of
 * December is not joined to the first morning of January: nothing in the record says that one followed the other.
 */
final class EpwRecord {
    private static final int HEADER = 8;
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final Pattern DATE = Pattern.compile("(?:([0-9]{4})-)?([0-9]{1,2})-([0-9]{1,2})");

    /** Fields that we read: position in the row, name, smallest and largest value, and from where on it is missing. */
    private enum Field {
        YEAR(0, "year", 1800, 2200, 9999),
        MONTH(1, "month", 1, 12, 99),
        DAY(2, "day", 1, 31, 99),
        HOUR(3, "hour", 1, 24, 99),
        AIR(6, "dry bulb temperature", -90, 60, 99.9),
        DEW_POINT(7, "dew point temperature", -90, 60, 99.9),
        HUMIDITY(8, "relative humidity", 0, 110, 999),
        PRESSURE(9, "atmospheric pressure", 31000, 110000, 999999),
        SKY(12, "horizontal infrared radiation", 40, 600, 9999),
        WIND(21, "wind speed", 0, 75, 999),
        CLOUD(22, "total sky cover", 0, 10, 99),
        RAIN(33, "liquid precipitation depth", 0, 200, 999);

        private final int index;
        private final String label;
        private final double low;
        private final double high;
        private final double missingFrom;

        Field(int index, String label, double low, double high, double missingFrom) {
            this.index = index;
            this.label = label;
            this.low = low;
            this.high = high;
            this.missingFrom = missingFrom;
        }
    }

    private static final int FEWEST_FIELDS = 24;

    /**
     * A night of the record.
     *
     * @param weather the series
     * @param name    what to call the night
     * @param guesses what was chosen or assumed; subject "record" for choices, "weather" for assumptions
     */
    record Night(Weather weather, String name, List<Guess> guesses) {}

    private final TextFile file;
    private final String station;
    private final double altitude;
    private final ClimateRecords.Told place;
    private final boolean typicalYear;
    /** Values by field and hour; hour index i holds at i + 1 hours after the year began. */
    private final double[][] values;

    private EpwRecord(TextFile file) {
        this.file = file;
        List<String> lines = new ArrayList<>(file.text().lines().toList());
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        if (lines.isEmpty() || !lines.get(0).startsWith("LOCATION,")) {
            throw at(1, 1).fault(
                            lines.isEmpty() ? "the file is empty" : "the first line is no LOCATION",
                            "name an EPW file");
        }
        String[] location = lines.get(0).split(",", -1);
        if (location.length < 10) {
            throw at(1, 1).fault("a LOCATION of " + location.length + " fields", "it has 10");
        }
        station = location[5].strip();
        altitude = number(lines.get(0), 1, 9, "elevation", -400, 6000);
        place = new ClimateRecords.Told(
                number(lines.get(0), 1, 6, "latitude", -90, 90),
                number(lines.get(0), 1, 7, "longitude", -180, 180),
                number(lines.get(0), 1, 8, "time zone", -12, 14),
                altitude);
        if (lines.size() < HEADER) {
            throw at(lines.size(), 1).fault("the record ends in its header", "a header has 8 lines");
        }
        if (!lines.get(HEADER - 1).startsWith("DATA PERIODS,1,1,")) {
            throw at(HEADER, 1).fault("not one period with one row per hour", "the line begins with DATA PERIODS,1,1");
        }
        int hours = lines.size() - HEADER;
        values = new double[Field.values().length][hours];
        boolean mixed = false;
        for (int i = 0; i < hours; i++) {
            readRow(lines.get(HEADER + i), i);
            mixed |= get(Field.YEAR, i) != get(Field.YEAR, 0);
        }
        checkOrder(lines);
        String remarks = String.join(" ", lines.subList(0, HEADER)).toUpperCase(Locale.ROOT);
        typicalYear = mixed || remarks.contains("TMY") || remarks.contains("TYPICAL METEOROLOGICAL");
    }

    /** Reads and checks a whole record. */
    static EpwRecord read(TextFile file) {
        return new EpwRecord(file);
    }

    /** Altitude of the station [m]. */
    double altitude() {
        return altitude;
    }

    /** Whether it was put together of months of several years, and so holds no extremes. */
    boolean typicalYear() {
        return typicalYear;
    }

    /** The whole record. A typical year is dated into one year of the same length; its own years mean nothing. */
    ClimateRecords.Part part() {
        int n = values[0].length;
        int[] hour = new int[n];
        int leap = n > 8760 ? 2000 : 2001;
        int start = (int) LocalDate.of(typicalYear ? leap : (int) get(Field.YEAR, 0), 1, 1)
                        .toEpochDay()
                * 24;
        double[] humidity = new double[n];
        double[] cloud = new double[n];
        for (int i = 0; i < n; i++) {
            hour[i] = start + i + 1;
            humidity[i] = Math.min(1, humidity(i));
            cloud[i] = get(Field.CLOUD, i) / 10;
        }
        return new ClimateRecords.Part(
                file.path(),
                station,
                place,
                typicalYear,
                new Hourly(
                        hour,
                        values[Field.AIR.ordinal()],
                        humidity,
                        values[Field.WIND.ordinal()],
                        cloud,
                        values[Field.RAIN.ordinal()],
                        values[Field.PRESSURE.ordinal()],
                        values[Field.SKY.ordinal()]),
                null);
    }

    /** Over liquid water [1]; from the dew point where the record has none. */
    private double humidity(int i) {
        double humidity = get(Field.HUMIDITY, i) / 100;
        return Double.isNaN(humidity)
                ? SaturationVapour.overWater(Temperature.kelvin(get(Field.DEW_POINT, i)))
                        / SaturationVapour.overWater(Temperature.kelvin(get(Field.AIR, i)))
                : humidity;
    }

    /**
     * Chooses a night.
     *
     * @param wanted "coldest", or month and day of its evening, optionally with the year
     * @param hours  from when to when
     * @param at     where the wish was written
     */
    Night night(String wanted, NightHours hours, Place at) {
        if (wanted.equals("coldest")) {
            return coldest(hours, at);
        }
        Matcher parts = DATE.matcher(wanted);
        if (!parts.matches()) {
            throw at.fault("\"night\" is \"" + wanted + "\"", "write coldest, or month and day as in 01-21");
        }
        int month = Integer.parseInt(parts.group(2));
        int day = Integer.parseInt(parts.group(3));
        for (int d = 0; d < days(); d++) {
            int noon = d * 24 + 11;
            if (get(Field.MONTH, noon) == month && get(Field.DAY, noon) == day) {
                if (parts.group(1) != null && get(Field.YEAR, noon) != Integer.parseInt(parts.group(1))) {
                    throw at.fault(
                            "\"night\" is \"" + wanted + "\"",
                            "the record has that day of the year " + (int) get(Field.YEAR, noon)
                                    + "; write month and day alone");
                }
                if (!covers(d, hours)) {
                    throw at.fault(
                            "\"night\" is \"" + wanted + "\", " + hours.shown(),
                            "the record ends before; it runs from 01-01 01:00 to 12-31 24:00 and is not joined to itself");
                }
                int missing = firstMissing(d, hours);
                if (missing >= 0) {
                    Field field = missingField(missing);
                    throw place(missing, field)
                            .fault(
                                    "a gap in the record: no value of the " + field.label + " in this row",
                                    "choose a night without gaps");
                }
                return build(d, hours, new ArrayList<>());
            }
        }
        throw at.fault(
                "\"night\" is \"" + wanted + "\", which the record does not have", "write month and day as in 01-21");
    }

    private Night coldest(NightHours hours, Place at) {
        int best = -1;
        double lowest = Double.POSITIVE_INFINITY;
        int complete = 0;
        for (int d = 0; d < days(); d++) {
            if (covers(d, hours) && firstMissing(d, hours) < 0) {
                complete++;
                double mean = meanAir(d, hours);
                if (mean < lowest) {
                    lowest = mean;
                    best = d;
                }
            }
        }
        if (best < 0) {
            throw at.fault("a record in which no night from " + hours.shown() + " is complete", "name another record");
        }
        List<Guess> guesses = new ArrayList<>();
        guesses.add(Guess.word(
                "record",
                "night",
                date(best),
                String.format(
                        Locale.ROOT,
                        "the lowest mean air temperature from %s, %.1f degC, of %d complete nights",
                        hours.shown(),
                        lowest,
                        complete)));
        return build(best, hours, guesses);
    }

    private Night build(int d, NightHours hours, List<Guess> guesses) {
        double start = startHour(d, hours);
        double end = start + hours.duration() / 3600;
        int first = (int) Math.floor(start - hours.before() / 3600) - 1;
        int last = (int) Math.ceil(end) - 1;
        if (get(Field.YEAR, first) != get(Field.YEAR, last)) {
            guesses.add(Guess.word(
                    "record",
                    "seam",
                    (int) get(Field.YEAR, first) + " and " + (int) get(Field.YEAR, last),
                    "the record joins two source years in this night; taken as it stands"));
        }
        boolean cloudUnknown = false;
        boolean rainUnknown = false;
        WeatherSeries series = new WeatherSeries();
        for (int i = first; i <= last; i++) {
            double air = get(Field.AIR, i);
            double humidity = humidity(i);
            double sky = get(Field.SKY, i);
            double cloud = get(Field.CLOUD, i) / 10;
            cloudUnknown |= Double.isNaN(cloud) && Double.isNaN(sky);
            // What fell in the hour that ends with the next row falls from this row on.
            double rain = i + 1 < values[0].length ? get(Field.RAIN, i + 1) : get(Field.RAIN, i);
            rainUnknown |= Double.isNaN(rain);
            series.add(new WeatherSeries.Row(
                    rowPlace(i),
                    (i + 1 - start) * 3600,
                    air,
                    Math.min(1, humidity),
                    get(Field.WIND, i),
                    Double.isNaN(cloud) ? 0 : cloud,
                    Double.isNaN(rain) ? 0 : rain,
                    get(Field.PRESSURE, i),
                    sky));
        }
        if (cloudUnknown) {
            guesses.add(Guess.number(
                    "weather", "cloud cover", 0, "1", "missing in the record; a clear sky, the coldest case"));
        }
        if (rainUnknown) {
            guesses.add(Guess.number("weather", "precipitation", 0, "mm/h", "missing in the record; none assumed"));
        }
        return new Night(series.over(hours), "station " + station + ", night of " + date(d), guesses);
    }

    /** Mean of the air temperature, straight between the hours, from start to end. */
    private double meanAir(int d, NightHours hours) {
        double start = startHour(d, hours);
        double end = start + hours.duration() / 3600;
        double sum = 0;
        double from = start;
        while (from < end) {
            double to = Math.min(end, Math.floor(from) + 1);
            sum += (to - from) * airAt((from + to) / 2);
            from = to;
        }
        return sum / (end - start);
    }

    private double airAt(double hour) {
        int i = (int) Math.floor(hour) - 1;
        double f = hour - Math.floor(hour);
        return f == 0 ? get(Field.AIR, i) : (1 - f) * get(Field.AIR, i) + f * get(Field.AIR, i + 1);
    }

    private boolean covers(int d, NightHours hours) {
        double start = startHour(d, hours);
        return start - hours.before() / 3600 >= 1 && start + hours.duration() / 3600 <= values[0].length;
    }

    /** Index of the first row of the plan that lacks what cannot be done without; -1 when there is none. */
    private int firstMissing(int d, NightHours hours) {
        double start = startHour(d, hours);
        int last = (int) Math.ceil(start + hours.duration() / 3600) - 1;
        for (int i = (int) Math.floor(start - hours.before() / 3600) - 1; i <= last; i++) {
            boolean noVapour = Double.isNaN(get(Field.HUMIDITY, i)) && Double.isNaN(get(Field.DEW_POINT, i));
            if (Double.isNaN(get(Field.AIR, i)) || Double.isNaN(get(Field.WIND, i)) || noVapour) {
                return i;
            }
        }
        return -1;
    }

    private Field missingField(int i) {
        return Double.isNaN(get(Field.AIR, i))
                ? Field.AIR
                : Double.isNaN(get(Field.WIND, i)) ? Field.WIND : Field.HUMIDITY;
    }

    private static double startHour(int d, NightHours hours) {
        return d * 24 + hours.from() / 3600;
    }

    private int days() {
        return values[0].length / 24;
    }

    private String date(int d) {
        int noon = d * 24 + 11;
        return String.format(
                Locale.ROOT,
                "%02d-%02d (recorded in %d)",
                (int) get(Field.MONTH, noon),
                (int) get(Field.DAY, noon),
                (int) get(Field.YEAR, noon));
    }

    private double get(Field field, int i) {
        return values[field.ordinal()][i];
    }

    private void readRow(String line, int i) {
        int lineNumber = HEADER + 1 + i;
        String[] cells = line.split(",", -1);
        if (cells.length < FEWEST_FIELDS) {
            throw at(lineNumber, 1)
                    .fault(
                            "a row of " + cells.length + " fields",
                            "a row of an EPW record has 35, the first 24 are needed");
        }
        for (Field field : Field.values()) {
            double value = Double.NaN;
            if (field.index < cells.length) {
                String cell = cells[field.index].strip();
                value = plainNumber(cell);
                boolean missing = value >= field.missingFrom || value <= -9900 || field == Field.SKY && value == 0;
                if (missing && field.index > Field.HOUR.index) {
                    value = Double.NaN;
                } else if (!(value >= field.low && value <= field.high)) {
                    throw at(lineNumber, column(line, field.index))
                            .fault(
                                    "the " + field.label + " is \"" + cell + "\"",
                                    String.format(Locale.ROOT, "a number from %.0f to %.0f", field.low, field.high));
                }
            }
            values[field.ordinal()][i] = value;
        }
    }

    /** The year must run hour by hour from the first of January to the last of December. */
    private void checkOrder(List<String> lines) {
        int month = 1;
        int day = 1;
        int hour = 1;
        int hours = values[0].length;
        for (int i = 0; i < hours; i++) {
            boolean leapDay =
                    month == 3 && day == 1 && hour == 1 && get(Field.MONTH, i) == 2 && get(Field.DAY, i) == 29;
            if (leapDay) {
                month = 2;
                day = 29;
            }
            if (get(Field.MONTH, i) != month || get(Field.DAY, i) != day || get(Field.HOUR, i) != hour) {
                int lineNumber = HEADER + 1 + i;
                throw at(lineNumber, column(lines.get(lineNumber - 1), 1))
                        .fault(
                                String.format(
                                        Locale.ROOT,
                                        "a gap in the record: month %d, day %d, hour %d",
                                        (int) get(Field.MONTH, i),
                                        (int) get(Field.DAY, i),
                                        (int) get(Field.HOUR, i)),
                                month > 12
                                        ? "the year ended with the row before"
                                        : String.format(
                                                Locale.ROOT,
                                                "here belongs month %d, day %d, hour %d",
                                                month,
                                                day,
                                                hour));
            }
            if (++hour > 24) {
                hour = 1;
                if (++day > DAYS[month - 1]) {
                    day = 1;
                    month++;
                }
            }
        }
        if (month != 13) {
            throw at(lines.size(), 1)
                    .fault("the record ends after " + hours + " hours", "a year has 8760, a leap year 8784");
        }
    }

    private double number(String line, int lineNumber, int index, String label, double low, double high) {
        String cell = line.split(",", -1)[index].strip();
        double value = plainNumber(cell);
        if (!(value >= low && value <= high)) {
            throw at(lineNumber, column(line, index))
                    .fault(
                            "the " + label + " is \"" + cell + "\"",
                            String.format(Locale.ROOT, "a number from %.0f to %.0f", low, high));
        }
        return value;
    }

    /** The number of a cell; not-a-number for anything else. A hundred thousand cells are read, so without patterns. */
    private static double plainNumber(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            if ("0123456789.+-eE".indexOf(cell.charAt(i)) < 0) {
                return Double.NaN;
            }
        }
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException fault) {
            return Double.NaN;
        }
    }

    /** Column of a field, from 1. */
    private static int column(String line, int index) {
        int at = 0;
        for (int i = 0; i < index; i++) {
            at = line.indexOf(',', at) + 1;
        }
        return line.codePointCount(0, at) + 1;
    }

    private Place place(int i, Field field) {
        String line = file.text().lines().skip(HEADER + i).findFirst().orElseThrow();
        return at(HEADER + 1 + i, column(line, field.index));
    }

    private Place rowPlace(int i) {
        return at(HEADER + 1 + i, 1);
    }

    private Place at(int line, int column) {
        return new Place(file.path(), line, column);
    }
}
