package longnight.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * The search for the temperature at which a night reaches a line. Long steps look over the whole range first, since rain near
 * freezing can make a warmer night the harder one; the crossing found is then worked out with the steps of every other answer.
 */
public final class ColdSearch {
    /** Between the nights of the first look [K]. */
    private static final double STRIDE = 12;

    /** The same near freezing, when something falls. */
    private static final double SHORT_STRIDE = 3;

    /** Mean air within which that counts as near freezing [degC]. */
    private static final double NEAR_FREEZING = 9;

    /** How well a crossing is known [K]. */
    private static final double ACCURACY = 0.01;

    /** How well the first look knows it [K]. */
    private static final double ROUGH = 0.1;

    /** How far from a crossing known about right another is looked for at first [K]. */
    private static final double AROUND = 0.3;

    /** Slopes are taken over this [K]. */
    private static final double SLOPE = 0.5;

    /** Steps along the slope before a bracket is sought. */
    private static final int STEPS = 4;

    private static final int TRIES = 200;

    private final Shifts shifts;
    private final Line line;
    private final NumericalSettings fine;
    private final NumericalSettings coarse;

    /**
     * @param night    as given
     * @param line     what it may ask at most
     * @param settings with which the answer is worked out
     * @throws UnsupportedOperationException in a chamber, which has no weather
     */
    public ColdSearch(Scenario night, Line line, NumericalSettings settings) {
        shifts = new Shifts(night);
        this.line = line;
        fine = settings;
        coarse = settings.water()
                ? NumericalSettings.coarse()
                : NumericalSettings.coarse().withoutWater();
    }

    /** The night as it was given, warmer by so many kelvin. */
    public Scenario at(double kelvin) {
        return shifts.at(kelvin);
    }

    /** What a night may ask at most. */
    Line line() {
        return line;
    }

    /** Long steps, for looks and for models of which only the differences count. */
    NumericalSettings coarse() {
        return coarse;
    }

    /** See {@link Shifts#coldest()}. */
    double coldest() {
        return shifts.coldest();
    }

    /** See {@link Shifts#warmest()}. */
    double warmest() {
        return shifts.warmest();
    }

    /** The whole answer for one model. */
    public Limit limit(ModelChoice model) {
        Excess quick = new Excess(model, coarse);
        double[] at = places();
        double[] excess = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            excess[i] = quick.value(at[i]);
        }
        if (excess[0] > 0) {
            return bound(Limit.Reach.NOT_EVEN_WARM, shifts.warmest(), again(quick, at, excess, 0), quick.runs);
        }
        int over = 0;
        while (over < at.length && excess[over] <= 0) {
            over++;
        }
        if (over == at.length) {
            return bound(Limit.Reach.COLDER_THAN_MODEL, shifts.coldest(), List.of(), quick.runs);
        }
        Excess exact = new Excess(model, fine);
        double about = solve(quick, at[over], at[over - 1], ROUGH);
        double shift = refine(exact, about, slope(quick, about));
        List<Limit.Stretch> again = again(quick, at, excess, over);
        if (Double.isNaN(shift)) { // the last hair of the range
            return bound(Limit.Reach.COLDER_THAN_MODEL, shifts.coldest(), again, quick.runs + exact.runs);
        }
        NightResult there = exact.nearest(shift);
        return new Limit(
                Limit.Reach.FOUND,
                shift,
                shifts.air().warmer(shift),
                again,
                there.verdict(),
                there.cautions(),
                quick.runs + exact.runs);
    }

    /**
     * The crossing nearest to one that is known about right, for a model that differs a little; with long steps, since models
     * differ by far more than these do.
     *
     * @param shift where another model has its crossing [K]
     * @return [K]; minus infinity when it lies beyond the model's cold end, plus infinity beyond its warm end
     */
    public double near(ModelChoice model, double shift) {
        Excess quick = new Excess(model, coarse);
        double from = Math.min(shifts.warmest(), Math.max(shifts.coldest(), shift));
        double found = refine(quick, from, slope(quick, from));
        if (!Double.isNaN(found)) {
            return found;
        }
        return quick.value(from) > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    private Limit bound(Limit.Reach reach, double edge, List<Limit.Stretch> again, int runs) {
        return new Limit(reach, Double.NaN, shifts.air().warmer(edge), again, null, List.of(), runs);
    }

    /** Colder stretches that keep to the line again. */
    private List<Limit.Stretch> again(Excess quick, double[] at, double[] excess, int from) {
        List<Limit.Stretch> again = new ArrayList<>();
        double began = Double.NaN;
        for (int i = from + 1; i < at.length; i++) {
            boolean holds = excess[i] <= 0;
            if (holds && Double.isNaN(began)) {
                began = solve(quick, at[i], at[i - 1], ROUGH);
            } else if (!holds && !Double.isNaN(began)) {
                again.add(stretch(began, solve(quick, at[i], at[i - 1], ROUGH), false));
                began = Double.NaN;
            }
        }
        if (!Double.isNaN(began)) {
            again.add(stretch(began, shifts.coldest(), true));
        }
        return List.copyOf(again);
    }

    private Limit.Stretch stretch(double warm, double cold, boolean open) {
        double mean = shifts.air().mean();
        return new Limit.Stretch(mean + warm, mean + cold, open);
    }

    /** Shifts of the first look, warmest first. */
    private double[] places() {
        List<Double> places = new ArrayList<>();
        double at = shifts.warmest();
        while (at > shifts.coldest()) {
            places.add(at);
            boolean close = Math.abs(shifts.air().mean() + at) < NEAR_FREEZING;
            at -= shifts.isWet() && close ? SHORT_STRIDE : STRIDE;
        }
        places.add(shifts.coldest());
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Change of the excess per kelvin at a place. */
    private double slope(Excess excess, double at) {
        double other = at - SLOPE < shifts.coldest() ? at + SLOPE : at - SLOPE;
        return (excess.value(at) - excess.value(other)) / (at - other);
    }

    /** Follows a known slope to the crossing; where that leads nowhere, brackets it. NaN when it is not crossed in the range. */
    private double refine(Excess excess, double about, double slope) {
        double at = about;
        for (int i = 0; i < STEPS && slope < 0; i++) {
            double step = -excess.value(at) / slope;
            if (Math.abs(step) < ACCURACY) {
                return at;
            }
            at += step;
            if (!(at > shifts.coldest() && at < shifts.warmest())) {
                break;
            }
        }
        return bracketed(excess, about);
    }

    /** Widens a bracket around a place until the line is crossed in it, then solves. */
    double bracketed(UnivariateFunction excess, double about) {
        for (double width = AROUND; ; width *= 3) {
            double low = Math.max(shifts.coldest(), about - width);
            double high = Math.min(shifts.warmest(), about + width);
            if (excess.value(low) > 0 != excess.value(high) > 0) {
                return solve(excess, low, high, ACCURACY);
            }
            if (low == shifts.coldest() && high == shifts.warmest()) {
                return Double.NaN;
            }
        }
    }

    private static double solve(UnivariateFunction excess, double low, double high, double accuracy) {
        if (excess.value(low) == 0) {
            return low;
        }
        if (excess.value(high) == 0) {
            return high;
        }
        return new BracketingNthOrderBrentSolver(1e-9, accuracy, 1e-7, 5).solve(TRIES, excess, low, high);
    }

    /** Over the line by so much, as a function of the shift; what was run once is not run again. */
    private final class Excess implements UnivariateFunction {
        private final ModelChoice model;
        private final NumericalSettings settings;
        private final Map<Double, Double> known = new HashMap<>();
        private int runs;
        private double latestAt;
        private @Nullable NightResult latest;

        Excess(ModelChoice model, NumericalSettings settings) {
            this.model = model;
            this.settings = settings;
        }

        @Override
        public double value(double kelvin) {
            return known.computeIfAbsent(kelvin, k -> line.excess(run(k)));
        }

        /** The night there, or one so close that nobody could tell. */
        NightResult nearest(double kelvin) {
            NightResult last = latest;
            return last != null && Math.abs(latestAt - kelvin) <= 2 * ACCURACY ? last : run(kelvin);
        }

        private NightResult run(double kelvin) {
            runs++;
            NightResult result = NightEngine.compile(shifts.at(kelvin), model).run(settings);
            latestAt = kelvin;
            latest = result;
            return result;
        }
    }
}
