package longnight.scenario;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import longnight.air.SaturationVapour;
import longnight.air.Temperature;
import longnight.outdoors.ClimateRecord.Hourly;

/**
 * An hourly record in the ISD-Lite form (NCEI, "Integrated Surface Data - Lite, Format Documentation", 2006): columns parted by
 * blanks, times in UTC, -9999 for what is missing. Temperatures, wind and precipitation in tenths; -1 is a trace. Sky codes 0 to 8 are
 * oktas, 9 is an obscured sky; other codes are taken as missing. Pressure is reduced to sea level there and not used.
 */
final class IsdLite {
    private static final Pattern ROW = Pattern.compile("\\d{4} +\\d{1,2} +\\d{1,2} +\\d{1,2}( +-?\\d+){2,}\\s*");
    private static final int MISSING = -9999;
    private static final String[] NAMES = {
        "year",
        "month",
        "day",
        "hour",
        "air temperature",
        "dew point",
        "pressure",
        "wind direction",
        "wind speed",
        "sky code",
        "precipitation"
    };
    private static final int[][] RANGES = {
        {1800, 2200},
        {1, 12},
        {1, 31},
        {0, 23},
        {-900, 600},
        {-900, 600},
        {8000, 11500},
        {0, 360},
        {0, 750},
        {0, 19},
        {-1, 3000}
    };
    private static final int NEEDED = 10;

    private IsdLite() {}

    static boolean isOne(String firstLine) {
        return ROW.matcher(firstLine).matches();
    }

    /** Reads a file into hours of the station's standard time. */
    static ClimateRecords.Part read(TextFile file, double utcOffset) {
        if (Double.isNaN(utcOffset)) {
            throw Place.of(file.path())
                    .fault(
                            "the times of an ISD-Lite record are UTC, and it does not say where it was kept",
                            "say --utc-offset, for example --utc-offset 1");
        }
        int shift = (int) Math.round(utcOffset);
        List<String> lines = file.text().lines().filter(line -> !line.isBlank()).toList();
        int n = lines.size();
        int[] hour = new int[n];
        double[][] values = new double[7][n];
        for (int i = 0; i < n; i++) {
            int[] row = row(file, lines.get(i), i + 1);
            Place place = new Place(file.path(), i + 1, 1);
            try {
                hour[i] = (int) LocalDate.of(row[0], row[1], row[2]).toEpochDay() * 24 + row[3] + shift;
            } catch (DateTimeException fault) {
                throw place.fault(
                        "a day that no calendar has: " + row[0] + "-" + row[1] + "-" + row[2], "year, month and day");
            }
            if (i > 0) {
                ClimateRecords.requireLater(hour[i - 1], hour[i], place);
            }
            double air = tenths(row[4]);
            double dew = tenths(row[5]);
            values[0][i] = air;
            values[1][i] = Math.min(
                    1,
                    SaturationVapour.overWater(Temperature.kelvin(dew))
                            / SaturationVapour.overWater(Temperature.kelvin(air)));
            values[2][i] = tenths(row[8]);
            values[3][i] = row[9] >= 0 && row[9] <= 9 ? Math.min(8, row[9]) / 8.0 : Double.NaN;
            values[4][i] = row[10] == -1 ? 0 : tenths(row[10]);
            values[5][i] = Double.NaN;
            values[6][i] = Double.NaN;
        }
        return new ClimateRecords.Part(
                file.path(),
                String.valueOf(file.path().getFileName()),
                new ClimateRecords.Told(Double.NaN, Double.NaN, utcOffset, Double.NaN),
                false,
                new Hourly(hour, values[0], values[1], values[2], values[3], values[4], values[5], values[6]),
                null);
    }

    private static double tenths(int value) {
        return value == MISSING ? Double.NaN : value / 10.0;
    }

    private static int[] row(TextFile file, String line, int lineNumber) {
        int[] row = new int[NAMES.length];
        row[NEEDED] = MISSING;
        int at = 0;
        for (int k = 0; k < NAMES.length; k++) {
            while (at < line.length() && line.charAt(at) == ' ') {
                at++;
            }
            int end = at;
            while (end < line.length() && line.charAt(end) != ' ') {
                end++;
            }
            Place place = new Place(file.path(), lineNumber, at + 1);
            if (at == end) {
                if (k >= NEEDED) {
                    break;
                }
                throw place.fault("a row that ends before its " + NAMES[k], "an ISD-Lite row has 12 columns");
            }
            String cell = line.substring(at, end);
            row[k] = k >= 4 && cell.equals("-9999")
                    ? MISSING
                    : ClimateRecords.whole(cell, place, NAMES[k], RANGES[k][0], RANGES[k][1]);
            at = end;
        }
        return row;
    }
}
