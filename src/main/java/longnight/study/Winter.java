package longnight.study;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import longnight.outdoors.ClimateRecord;
import longnight.outdoors.ClimateRecord.Daily;

/**
 * One cold season of a record: July to June in the north, January to December in the south.
 *
 * @param year     in which it begins
 * @param minimum  lowest air temperature recorded in it [degC]
 * @param date     of that minimum
 * @param coverage share of its three coldest months with a minimum recorded [1]: December to February, or June to August
 * @param complete whether the coverage is enough for the minimum to count
 */
public record Winter(int year, double minimum, LocalDate date, double coverage, boolean complete) {

    /** Least coverage of the three coldest months: engineering estimate, no source. */
    public static final double LEAST_COVERAGE = 0.9;

    /** "1986/87" in the north, "1986" in the south. */
    public String label(boolean south) {
        return south
                ? String.valueOf(year)
                : year + "/" + String.valueOf(10000 + year + 1).substring(3);
    }

    /** Whether a place has its winter in July. A place of unknown latitude is taken to be in the north. */
    static boolean isSouthern(ClimateRecord record) {
        return record.latitude() < 0;
    }

    /** All cold seasons of a record that have any minimum, in order. */
    static List<Winter> of(ClimateRecord record) {
        boolean south = isSouthern(record);
        Daily days = record.daily();
        List<Winter> winters = new ArrayList<>();
        int from = 0;
        while (from < days.day().length) {
            int year = year(days.day()[from], south);
            int to = from;
            while (to < days.day().length && year(days.day()[to], south) == year) {
                to++;
            }
            add(days, from, to, year, south, winters);
            from = to;
        }
        return List.copyOf(winters);
    }

    private static void add(Daily days, int from, int to, int year, boolean south, List<Winter> winters) {
        int coldest = -1;
        int known = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(days.minimum()[i])) {
                if (coldest < 0 || days.minimum()[i] < days.minimum()[coldest]) {
                    coldest = i;
                }
                known += isCore(LocalDate.ofEpochDay(days.day()[i]), south) ? 1 : 0;
            }
        }
        if (coldest >= 0) {
            LocalDate first = south ? LocalDate.of(year, Month.JUNE, 1) : LocalDate.of(year, Month.DECEMBER, 1);
            double coverage = known / (double) (first.plusMonths(3).toEpochDay() - first.toEpochDay());
            winters.add(new Winter(
                    year,
                    days.minimum()[coldest],
                    LocalDate.ofEpochDay(days.day()[coldest]),
                    coverage,
                    coverage >= LEAST_COVERAGE));
        }
    }

    private static int year(int day, boolean south) {
        LocalDate date = LocalDate.ofEpochDay(day);
        return south || date.getMonthValue() >= 7 ? date.getYear() : date.getYear() - 1;
    }

    private static boolean isCore(LocalDate date, boolean south) {
        int month = date.getMonthValue();
        return south ? month >= 6 && month <= 8 : month == 12 || month <= 2;
    }

    /** Whether a day belongs to the cold part of the year: November to March, or May to September. */
    static boolean isCold(LocalDate date, boolean south) {
        int month = date.getMonthValue();
        return south ? month >= 5 && month <= 9 : month >= 11 || month <= 3;
    }
}
