package longnight.night;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longnight.figure.Zone;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.law.FaceFreezing;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Turns a night's course into an outcome. The lines are choices of this project, grounded in where the modelled core begins
 * to give way in ordinary people; none of them is a limit of safety.
 */
final class VerdictRule {

    /** Up to this demand the night holds easily; engineering estimate. */
    static final double EASY = 1.25;
    /** Up to this demand it holds by shivering; engineering estimate, near a third of peak shivering. */
    static final double SHIVERING = 2.0;
    /** Dead band of the core-heat deficit [J]; engineering estimate, the scatter of holding nights. */
    static final double DEAD_BAND = 15e3;
    /** Mild hypothermia begins here [degC] (accidental hypothermia staging, 2016 update, table 1). */
    static final double CORE = 35.0;
    /** Below this core the model is extrapolated [degC]; engineering estimate. */
    static final double EXTRAPOLATION = 34.0;

    /**
     * Hand or foot below 10 degC for an hour: fine manipulation lost at 10 to 12.8 (Gaydos 1958, abstract), cold injury
     * without freezing possible below 15 in hours; the hour is an engineering estimate. Below 0 degC at once.
     */
    static final double EXTREMITY = 10.0;

    private static final double EXTREMITY_TIME = 3600.0;

    private VerdictRule() {}

    static Verdict judge(Trace trace, Network net, double stopped) {
        double[] time = trace.time();
        int last = time.length - 1;
        List<Verdict.Crossing> reasons = new ArrayList<>();
        double demandTime = firstAbove(time, trace.demand(), SHIVERING);
        if (!Double.isNaN(demandTime)) {
            reasons.add(new Verdict.Crossing(Verdict.Line.DEMAND, demandTime));
        }
        if (trace.coreHeatDeficit()[last] > DEAD_BAND) {
            reasons.add(new Verdict.Crossing(
                    Verdict.Line.CORE_HEAT_DEFICIT, lastRise(time, trace.coreHeatDeficit(), DEAD_BAND)));
        }
        double[] below = new double[time.length];
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= last; i++) {
            below[i] = -trace.core()[i];
            lowest = Math.min(lowest, trace.core()[i]);
        }
        double coreTime = firstAbove(time, below, -CORE);
        if (!Double.isNaN(coreTime)) {
            reasons.add(new Verdict.Crossing(Verdict.Line.CORE_35, coreTime));
        }
        reasons.sort(Comparator.comparingDouble(Verdict.Crossing::time));

        double demand = 0;
        for (double d : trace.demand()) {
            demand = Double.isNaN(d) ? demand : Math.max(demand, d);
        }
        List<Verdict.AtRisk> atRisk = new ArrayList<>();
        extremity(Verdict.Part.HANDS, time, trace.hand(), atRisk);
        extremity(Verdict.Part.FEET, time, trace.foot(), atRisk);
        face(time, net, atRisk);

        boolean extrapolated = lowest < EXTRAPOLATION;
        if (!Double.isNaN(stopped)) {
            return new Verdict(
                    Verdict.Outcome.OUTSIDE_THE_MODEL,
                    reasons.isEmpty() ? stopped : reasons.get(0).time(),
                    reasons,
                    atRisk,
                    List.of("core-below-32"),
                    true);
        }
        Verdict.Outcome outcome = !reasons.isEmpty()
                ? Verdict.Outcome.DOES_NOT_HOLD
                : demand <= EASY ? Verdict.Outcome.HOLDS_EASILY : Verdict.Outcome.HOLDS_BY_SHIVERING;
        return new Verdict(
                outcome,
                reasons.isEmpty() ? Double.NaN : reasons.get(0).time(),
                reasons,
                atRisk,
                List.of(),
                extrapolated);
    }

    private static void extremity(Verdict.Part part, double[] time, double[] celsius, List<Verdict.AtRisk> out) {
        double lowest = Double.POSITIVE_INFINITY;
        double since = Double.NaN;
        double from = Double.NaN;
        for (int i = 0; i < time.length; i++) {
            lowest = Math.min(lowest, celsius[i]);
            if (celsius[i] >= EXTREMITY) {
                since = Double.NaN;
            } else if (Double.isNaN(since)) {
                since = time[i];
            }
            boolean cold = celsius[i] < 0 || (!Double.isNaN(since) && time[i] - since >= EXTREMITY_TIME);
            if (cold && Double.isNaN(from)) {
                from = celsius[i] < 0 ? time[i] : since;
            }
        }
        if (!Double.isNaN(from)) {
            out.add(new Verdict.AtRisk(part, from, lowest, Double.NaN));
        }
    }

    private static void face(double[] time, Network net, List<Verdict.AtRisk> out) {
        if (!net.hasBare(Zone.FACE)) {
            return;
        }
        OutdoorState state = new OutdoorState();
        double from = Double.NaN;
        double shortest = Double.POSITIVE_INFINITY;
        for (double t : time) {
            net.surroundings.at(t, state);
            double minutes = FaceFreezing.warningMinutes(state.airCelsius, state.wind10);
            if (!Double.isNaN(minutes)) {
                from = Double.isNaN(from) ? t : from;
                shortest = Math.min(shortest, minutes);
            }
        }
        if (!Double.isNaN(from)) {
            out.add(new Verdict.AtRisk(Verdict.Part.FACE, from, Double.NaN, shortest));
        }
    }

    private static double firstAbove(double[] time, double[] value, double line) {
        for (int i = 0; i < time.length; i++) {
            if (value[i] > line) {
                return i == 0 || Double.isNaN(value[i - 1]) ? time[i] : crossing(time, value, i, line);
            }
        }
        return Double.NaN;
    }

    private static double lastRise(double[] time, double[] value, double line) {
        for (int i = time.length - 1; i > 0; i--) {
            if (value[i - 1] <= line) {
                return crossing(time, value, i, line);
            }
        }
        return time[0];
    }

    /** Where the curve through the stops crosses a line between stop i - 1 and stop i. */
    private static double crossing(double[] time, double[] value, int i, double line) {
        int from = Math.max(0, i - 4);
        while (from < i - 1 && Double.isNaN(value[from])) {
            from++;
        }
        int to = Math.min(time.length, i + 4);
        int n = to - from;
        UnivariateFunction curve;
        if (n >= 5) {
            double[] t = java.util.Arrays.copyOfRange(time, from, to);
            double[] v = java.util.Arrays.copyOfRange(value, from, to);
            PolynomialSplineFunction spline = new AkimaSplineInterpolator().interpolate(t, v);
            curve = x -> spline.value(x) - line;
        } else {
            double a = value[i - 1];
            double b = value[i];
            double t0 = time[i - 1];
            double t1 = time[i];
            curve = x -> a + (b - a) * (x - t0) / (t1 - t0) - line;
        }
        double low = value[i - 1] - line;
        double high = value[i] - line;
        if (low == 0 || low * high > 0) {
            return time[i - 1];
        }
        return new BracketingNthOrderBrentSolver(1e-3, 5)
                .solve(200, curve, time[i - 1], time[i], AllowedSolution.ANY_SIDE);
    }
}
