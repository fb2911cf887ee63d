package longnight.study;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import longnight.outdoors.ClimateRecord.Hourly;
import longnight.outdoors.Weather;
import org.jspecify.annotations.Nullable;

/** Nights cut out of an hourly record. */
final class RecordedNights {
    /** Longest gap over which values are drawn straight on [h]; what happens in a longer one nobody knows. */
    private static final int LONGEST_GAP = 3;

    private final Hourly record;
    private final NightTimes times;
    /** Rows with everything that a night cannot do without. */
    private final int[] good;

    private int incomplete;

    RecordedNights(Hourly record, NightTimes times) {
        this.record = record;
        this.times = times;
        int[] rows = new int[record.hour().length];
        int n = 0;
        for (int i = 0; i < rows.length; i++) {
            if (!Double.isNaN(record.air()[i] + record.humidity()[i] + record.wind()[i])) {
                rows[n++] = i;
            }
        }
        good = java.util.Arrays.copyOf(rows, n);
    }

    /** All nights that the record covers without a gap of more than three hours. */
    List<RecordedNight> all() {
        List<RecordedNight> nights = new ArrayList<>();
        incomplete = 0;
        if (record.hour().length == 0) {
            return nights;
        }
        int first = Math.floorDiv(record.hour()[0], 24) - 1;
        int last = Math.floorDiv(record.hour()[record.hour().length - 1], 24) + 1;
        int at = 0;
        for (int day = first; day <= last; day++) {
            double start = day * 24.0 + times.startOfDay() / 3600;
            double from = start - times.before() / 3600;
            double to = start + times.duration() / 3600;
            if (from < record.hour()[0] || to > record.hour()[record.hour().length - 1]) {
                continue;
            }
            while (at + 1 < good.length && record.hour()[good[at + 1]] <= from) {
                at++;
            }
            @Nullable RecordedNight night = cut(day, start, from, to, at);
            if (night == null) {
                incomplete++;
            } else {
                nights.add(night);
            }
        }
        return nights;
    }

    /** Nights inside the record that have a gap; after {@link #all}. */
    int incomplete() {
        return incomplete;
    }

    private @Nullable RecordedNight cut(int day, double start, double from, double to, int at) {
        if (good.length == 0 || record.hour()[good[at]] > from) {
            return null;
        }
        int end = at;
        while (record.hour()[good[end]] < to) {
            if (end + 1 >= good.length || record.hour()[good[end + 1]] - record.hour()[good[end]] > LONGEST_GAP) {
                return null;
            }
            end++;
        }
        if (end == at) {
            return null;
        }
        return night(day, start, at, end);
    }

    private RecordedNight night(int day, double start, int at, int end) {
        int n = end - at + 1;
        double[][] v = new double[8][n];
        boolean cloudUnknown = false;
        boolean rainUnknown = false;
        for (int k = 0; k < n; k++) {
            int i = good[at + k];
            v[0][k] = (record.hour()[i] - start) * 3600;
            v[1][k] = record.air()[i];
            v[2][k] = record.humidity()[i];
            v[3][k] = record.wind()[i];
            cloudUnknown |= Double.isNaN(record.cloud()[i]) && Double.isNaN(record.sky()[i]);
            v[4][k] = Double.isNaN(record.cloud()[i]) ? 0 : record.cloud()[i];
            // what fell in the hour that ends with the next row falls from this row on
            double rain = record.precipitation()[Math.min(i + 1, record.hour().length - 1)];
            rainUnknown |= Double.isNaN(rain);
            v[5][k] = Double.isNaN(rain) ? 0 : rain;
            v[6][k] = record.pressure()[i];
            v[7][k] = record.sky()[i];
        }
        Weather weather = new Weather(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]);
        return RecordedNight.of(LocalDate.ofEpochDay(day), weather, times, cloudUnknown, rainUnknown);
    }
}
