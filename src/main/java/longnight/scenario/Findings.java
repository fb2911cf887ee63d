package longnight.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import longnight.assumption.Guess;
import longnight.night.Caution;

/** What comes to light while files are read and is no fault: guesses, cautions, and where the model's range ends. */
final class Findings {
    /** Where files are read; many readings may share one. */
    final Shelf shelf;

    final List<Guess> guesses = new ArrayList<>();
    final List<String> limits = new ArrayList<>();
    final Set<Caution> cautions = EnumSet.noneOf(Caution.class);

    Findings() {
        this(new Shelf());
    }

    Findings(Shelf shelf) {
        this.shelf = shelf;
    }

    /** Notes a limit when a value lies outside the range for which the model was made. */
    void limit(String what, double value, double low, double high, String unit) {
        if (value < low || value > high) {
            limits.add("%s is %s %s, the model was made for %s to %s %s"
                    .formatted(what, plain(value), unit, plain(low), plain(high), unit));
        }
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
