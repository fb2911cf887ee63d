package longnight.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import longnight.assumption.Guess;

/** Numbers as people read them: rounded to what they are worth, the same in every country. */
final class Figures {
    /** Core-heat deficits below this are not told apart from none [J]; pathfinder's spread over people whose core holds. */
    static final double DEAD_BAND = 15e3;

    /** One clo [m2 K/W]; Gagge, Burton and Bazett 1941. */
    private static final double CLO = 0.155;

    /** Sums of numbers near one cannot be told apart below this. */
    private static final double LAST_DIGIT = 1e-16;

    /** What stands where there is no number. */
    static final String NONE = "-";

    private Figures() {}

    /** Local clock, HH:MM to the nearest minute; 24:00 is 00:00. */
    static String clock(double secondsAfterMidnight) {
        if (!Double.isFinite(secondsAfterMidnight)) {
            return NONE;
        }
        long minutes = Math.floorMod(Math.round(secondsAfterMidnight / 60), 24L * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    /** A number with so many decimals, no minus before a zero. */
    static String decimals(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NONE;
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }

    static String whole(double value) {
        return decimals(value, 0);
    }

    static String kilojoules(double joules) {
        return decimals(joules / 1e3, 0);
    }

    /** {@link Units#deficitNumber} in kJ. */
    static String deficit(double joules) {
        return Units.METRIC.deficitNumber(joules);
    }

    /** "19-57"; "to" between them where a sign would be taken for a dash; no end where there is none. */
    static String range(double low, double high, int decimals) {
        if (Double.isNaN(low) || Double.isNaN(high)) {
            return NONE;
        }
        String from = decimals(low, decimals);
        String to = Double.isInfinite(high) ? "?" : decimals(high, decimals);
        return low < 0 || high < 0 ? from + " to " + to : from + "-" + to;
    }

    static String clo(double resistance) {
        return decimals(resistance / CLO, 1);
    }

    /** A very small misfit, as a power of ten above it: 3.1e-13 is "1e-12"; none at all is still no less than a digit can tell. */
    static String order(double misfit) {
        return Double.isFinite(misfit)
                ? "1e" + (int) Math.ceil(StrictMath.log10(Math.max(LAST_DIGIT, Math.abs(misfit))))
                : NONE;
    }

    /** So many significant digits, without an exponent; whole numbers keep all of theirs. */
    static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return NONE;
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
        if (rounded.scale() < 0) {
            rounded = exact.setScale(0, RoundingMode.HALF_UP);
        }
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** For data files: six significant digits, empty where there is no number. */
    static String exact(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value)
                        .round(new MathContext(6, RoundingMode.HALF_UP))
                        .toPlainString()
                : "";
    }

    /** {@link Units#guessedQuantity} in metric units. */
    static String guessedQuantity(Guess guess) {
        return Units.METRIC.guessedQuantity(guess);
    }

    /** {@link Units#guessedValue} in metric units. */
    static String guessedValue(Guess guess, int digits) {
        return Units.METRIC.guessedValue(guess, digits);
    }
}
