package longnight.study;

import longnight.night.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What a change is worth; what makes the night cheaper counts above zero.
 *
 * @param change    what is done otherwise
 * @param extraHeat mean heat made above rest that it saves [W]; NaN where one of the two runs stopped early
 * @param shortfall shortfall heat at dawn that it saves [J]; NaN likewise
 * @param deficit   core-heat deficit at dawn that it saves [J]; NaN likewise
 * @param kelvin    how much colder a night it lets the kit carry [K]; infinite where the model's range ends first, NaN where
 *     neither of the two nights reaches the line
 * @param demand    the night's demand then [1]
 * @param outcome   the night's outcome then
 * @param stopped   whether the run then stopped early, since the core fell below 32 degC
 * @param drawn     the shortfall heat saved at dawn under the draws of the model, the same with and without the change [J];
 *     infinite where one of the two runs stopped early; null where nothing was drawn
 */
public record Effect(
        Change change,
        double extraHeat,
        double shortfall,
        double deficit,
        double kelvin,
        double demand,
        Verdict.Outcome outcome,
        boolean stopped,
        @Nullable Spread drawn) {

    /** Less than this is rounding [kg]. */
    private static final double LEAST_MASS = 1e-6;

    /** Whether it was drawn and cannot be told from no change at all: zero lies in the middle 80 % of the draws. */
    public boolean isLost() {
        return drawn != null && drawn.holdsZero();
    }

    /** The same with what the draws say. */
    Effect with(Spread spread) {
        return new Effect(change, extraHeat, shortfall, deficit, kelvin, demand, outcome, stopped, spread);
    }

    /** Shortfall heat per mass carried [J/kg]; NaN where no mass changes. */
    public double perMass() {
        return Math.abs(change.mass()) < LEAST_MASS ? Double.NaN : shortfall / change.mass();
    }

    /** Shortfall heat per money paid [J]; NaN where a price is unknown or none changes. */
    public double perPrice() {
        return change.price() == 0 ? Double.NaN : shortfall / change.price();
    }
}
