package longnight.scenario;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import longnight.outdoors.ClimateRecord.Daily;

/**
 * A daily record of one station in the forms of the Global Historical Climatology Network (NCEI, "README file for daily Global
 * Historical Climatology Network"): the fixed-width {@code .dly} (a month and an element a line, 31 groups of a value and three
 * flags from column 22 on) and the CSV by station (a day and an element a line). Read are TMIN, TMAX (tenths of degC), PRCP (tenths
 * of mm) and AWND (tenths of m/s); other elements are passed over. -9999 is missing, and so is a value that failed a check of quality
 * (second flag not blank).
 */
final class GhcnDaily {
    private static final Pattern FIXED = Pattern.compile("[A-Z0-9_-]{11}\\d{6}[A-Z0-9]{4}.*");
    private static final Pattern CSV = Pattern.compile("[A-Z0-9_-]{11},\\d{8},[A-Z0-9]{4},.*");
    private static final List<String> ELEMENTS = List.of("TMIN", "TMAX", "PRCP", "AWND");
    private static final int[][] RANGES = {{-900, 600}, {-900, 600}, {0, 20000}, {0, 750}};
    private static final int MISSING = -9999;

    private final TextFile file;
    private final Map<Integer, double[]> days = new TreeMap<>();
    private String station = "";

    private GhcnDaily(TextFile file) {
        this.file = file;
    }

    static boolean isFixed(String firstLine) {
        return FIXED.matcher(firstLine).matches();
    }

    static boolean isCsv(String firstLine) {
        return CSV.matcher(firstLine).matches();
    }

    static ClimateRecords.Part read(TextFile file, boolean csv) {
        return new GhcnDaily(file).part(csv);
    }

    private ClimateRecords.Part part(boolean csv) {
        List<String> lines = file.text().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                if (csv) {
                    separated(lines.get(i), i + 1);
                } else {
                    fixed(lines.get(i), i + 1);
                }
            }
        }
        if (days.isEmpty()) {
            throw Place.of(file.path())
                    .fault("a record without any TMIN, TMAX, PRCP or AWND", "name a record of temperatures");
        }
        double[][] columns = new double[ELEMENTS.size()][days.size()];
        int[] day = new int[days.size()];
        int at = 0;
        for (Map.Entry<Integer, double[]> entry : days.entrySet()) {
            day[at] = entry.getKey();
            for (int k = 0; k < columns.length; k++) {
                columns[k][at] = entry.getValue()[k];
            }
            at++;
        }
        return new ClimateRecords.Part(
                file.path(),
                station,
                ClimateRecords.Told.NOTHING,
                false,
                null,
                new Daily(day, columns[0], columns[1], columns[2], columns[3]));
    }

    private void fixed(String line, int lineNumber) {
        if (!isFixed(line)) {
            throw at(lineNumber, 1)
                    .fault("a line that is not station, year, month and element", "as in XX00000000119800101TMIN");
        }
        same(line.substring(0, 11), lineNumber);
        int year = ClimateRecords.whole(line.substring(11, 15), at(lineNumber, 12), "year", 1700, 2200);
        int month = ClimateRecords.whole(line.substring(15, 17), at(lineNumber, 16), "month", 1, 12);
        int element = ELEMENTS.indexOf(line.substring(17, 21));
        if (element < 0) {
            return;
        }
        for (int d = 1; d <= 31; d++) {
            int start = 21 + 8 * (d - 1);
            if (start >= line.length()) {
                return;
            }
            String cell = line.substring(start, Math.min(line.length(), start + 5));
            boolean good = start + 6 >= line.length() || line.charAt(start + 6) == ' ';
            put(element, cell, good, year, month, d, at(lineNumber, start + 1));
        }
    }

    private void separated(String line, int lineNumber) {
        String[] cells = line.split(",", -1);
        if (!isCsv(line) || cells.length < 6) {
            throw at(lineNumber, 1)
                    .fault(
                            "a line that is not station, date, element, value and flags",
                            "as in XX000000001,19800101,TMIN,-123,,,S,");
        }
        same(cells[0], lineNumber);
        int element = ELEMENTS.indexOf(cells[2]);
        if (element >= 0) {
            int year = ClimateRecords.whole(cells[1].substring(0, 4), at(lineNumber, 13), "year", 1700, 2200);
            int month = ClimateRecords.whole(cells[1].substring(4, 6), at(lineNumber, 17), "month", 1, 12);
            int day = ClimateRecords.whole(cells[1].substring(6, 8), at(lineNumber, 19), "day", 1, 31);
            put(element, cells[3], cells[5].isBlank(), year, month, day, at(lineNumber, 27));
        }
    }

    private void same(String id, int lineNumber) {
        if (!station.isEmpty() && !station.equals(id)) {
            throw at(lineNumber, 1)
                    .fault("station \"" + id + "\" after \"" + station + "\"", "name a file of one station");
        }
        station = id;
    }

    private void put(int element, String cell, boolean good, int year, int month, int day, Place place) {
        if (cell.strip().equals("-9999")) {
            return;
        }
        int value = ClimateRecords.whole(
                cell,
                place,
                ELEMENTS.get(element),
                good ? RANGES[element][0] : MISSING,
                good ? RANGES[element][1] : 99999);
        int epochDay;
        try {
            epochDay = (int) LocalDate.of(year, month, day).toEpochDay();
        } catch (DateTimeException fault) {
            throw place.fault(
                    "a value for a day that no calendar has: " + year + "-" + month + "-" + day, "-9999 there");
        }
        if (!good) {
            return;
        }
        double[] row = days.computeIfAbsent(epochDay, key -> {
            double[] empty = new double[ELEMENTS.size()];
            Arrays.fill(empty, Double.NaN);
            return empty;
        });
        if (!Double.isNaN(row[element])) {
            throw place.fault(
                    "a second " + ELEMENTS.get(element) + " of " + LocalDate.ofEpochDay(epochDay),
                    "one value for each day");
        }
        row[element] = value / 10.0;
    }

    private Place at(int line, int column) {
        return new Place(file.path(), line, column);
    }
}
