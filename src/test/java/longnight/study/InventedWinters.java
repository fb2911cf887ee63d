package longnight.study;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A station that never was: forty cold seasons, day by day, in the GHCN-Daily form. Each winter's minimum is drawn from Gumbel's
 * distribution with known mode and scale and put on one day; no other day of that winter is colder. One winter lacks a month, one has
 * flagged values, some days are missing.
 */
final class InventedWinters {
    static final long SEED = 1;
    static final GumbelMinima PLANTED = new GumbelMinima(-21.0, 3.0);
    static final int FIRST = 1980;
    static final int SEASONS = 40;
    private static final int PARTIAL = 1997;
    private static final int FLAGGED = 2003;
    private static final String STATION = "XX000INVENT";

    private InventedWinters() {}

    public static void main(String[] args) throws Exception {
        Files.writeString(Path.of(args[0]), text());
    }

    /** The whole record. */
    static String text() {
        return text(SEED);
    }

    static String text(long seed) {
        StringBuilder text = new StringBuilder();
        SplittableRandom chance = new SplittableRandom(seed);
        for (int season = FIRST; season < FIRST + SEASONS; season++) {
            double[][] days = season(season, chance);
            LocalDate first = LocalDate.of(season, 10, 1);
            for (int month = 0; month < 7; month++) {
                if (season == PARTIAL && month == 3) {
                    continue; // no January
                }
                month(text, days, season, first, first.plusMonths(month));
            }
        }
        return text.toString();
    }

    /** Minimum, maximum, precipitation and wind of the days from October to April. */
    private static double[][] season(int season, SplittableRandom chance) {
        LocalDate first = LocalDate.of(season, 10, 1);
        int n = (int) (LocalDate.of(season + 1, 5, 1).toEpochDay() - first.toEpochDay());
        double coldest = PLANTED.draw(chance);
        int when = 75 + chance.nextInt(70);
        double[][] days = new double[4][n];
        double anomaly = 0;
        for (int d = 0; d < n; d++) {
            anomaly = 0.75 * anomaly + 3.2 * normal(chance);
            double windy = Math.exp(0.45 * normal(chance));
            days[3][d] = 3.4 * windy;
            double range = Math.max(2, 9 - 1.8 * days[3][d] / 2 + 1.5 * normal(chance));
            double usual = -6 - 6 * Math.cos(2 * Math.PI * (d - 110) / 365.0);
            days[0][d] = Math.max(usual + anomaly, coldest + 0.3);
            days[1][d] = days[0][d] + range;
            days[2][d] = chance.nextDouble() < 0.35 ? -4 * Math.log(chance.nextDouble(1e-9, 1)) : 0;
        }
        days[0][when] = coldest;
        days[1][when] = coldest + 10 + normal(chance);
        days[2][when] = 0;
        days[3][when] = 1.2;
        return days;
    }

    private static double normal(SplittableRandom chance) {
        return Math.sqrt(-2 * Math.log(chance.nextDouble(Double.MIN_NORMAL, 1)))
                * Math.cos(2 * Math.PI * chance.nextDouble());
    }

    private static void month(StringBuilder text, double[][] days, int season, LocalDate first, LocalDate month) {
        String[] elements = {"TMAX", "TMIN", "PRCP", "AWND"};
        int[] rows = {1, 0, 2, 3};
        for (int k = 0; k < elements.length; k++) {
            StringBuilder line = new StringBuilder(String.format(
                    Locale.ROOT, "%s%04d%02d%s", STATION, month.getYear(), month.getMonthValue(), elements[k]));
            for (int day = 1; day <= 31; day++) {
                int d = (int) (month.toEpochDay() - first.toEpochDay()) + day - 1;
                boolean missing =
                        day > month.lengthOfMonth() || (season + 7 * d) % 151 == 0 && rows[k] == 0 && !coldest(days, d);
                long value = missing ? -9999 : Math.round(10 * days[rows[k]][d]);
                boolean flagged =
                        !missing && season == FLAGGED && month.getMonthValue() == 2 && day == 11 && rows[k] == 0;
                line.append(String.format(
                        Locale.ROOT, "%5d %s%s", flagged ? -400 : value, flagged ? "G" : " ", missing ? " " : "0"));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private static boolean coldest(double[][] days, int d) {
        for (double value : days[0]) {
            if (value < days[0][d]) {
                return false;
            }
        }
        return true;
    }
}
