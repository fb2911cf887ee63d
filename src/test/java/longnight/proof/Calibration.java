package longnight.proof;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.assumption.ParameterSet;
import longnight.body.BodyParameter;
import longnight.night.ModelChoice;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;

/**
 * Fits some constants of the body to the experiments: CMA-ES within their ranges, from a fixed seed, on the sum of {@link
 * OpenSetScore#misfit} and half the square of how far each constant is moved, in parts of its range.
 */
final class Calibration {

    private static final double PRIOR = 0.5;
    private static final int SEED = 7;
    private static final double FIRST_STEP = 0.2;

    private final Map<BodyParameter, Double> before;
    private final List<BodyParameter> free;
    private final int evaluations;

    /**
     * @param before what the constants are before the fit
     * @param free   constants to be moved
     */
    Calibration(Map<BodyParameter, Double> before, List<BodyParameter> free) {
        this.before = before;
        this.free = free;
        evaluations = 40 + 40 * free.size();
    }

    /** The nominal model with some constants moved. */
    static ModelChoice model(Map<BodyParameter, Double> constants) {
        ParameterSet<BodyParameter> body = ParameterSet.nominal(BodyParameter.class);
        for (Map.Entry<BodyParameter, Double> constant : constants.entrySet()) {
            body = body.with(constant.getKey(), constant.getValue());
        }
        ModelChoice nominal = ModelChoice.nominal();
        return new ModelChoice(body, nominal.options(), nominal.clothing(), nominal.outdoors());
    }

    /** Best constants on all experiments but one (-1: on all). */
    Map<BodyParameter, Double> fit(int but) {
        int n = free.size();
        double[] start = new double[n];
        double[] steps = new double[n];
        double[] ones = new double[n];
        for (int i = 0; i < n; i++) {
            start[i] = share(i, start(i));
            steps[i] = FIRST_STEP;
            ones[i] = 1;
        }
        CMAESOptimizer optimizer = new CMAESOptimizer(
                evaluations, 0, true, 0, 0, new MersenneTwister(SEED), false, new SimpleValueChecker(1e-4, 1e-4));
        return constants(optimizer
                .optimize(
                        new MaxEval(2 * evaluations),
                        GoalType.MINIMIZE,
                        new ObjectiveFunction(x -> OpenSetScore.misfit(model(constants(x)), but) + distance(x, start)),
                        new SimpleBounds(new double[n], ones),
                        new InitialGuess(start),
                        new CMAESOptimizer.Sigma(steps),
                        new CMAESOptimizer.PopulationSize(4 + (int) (3 * Math.log(n))))
                .getPoint());
    }

    private static double distance(double[] x, double[] start) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += PRIOR * (x[i] - start[i]) * (x[i] - start[i]);
        }
        return sum;
    }

    private double start(int i) {
        BodyParameter parameter = free.get(i);
        return before.getOrDefault(parameter, parameter.span().nominal());
    }

    private double share(int i, double value) {
        BodyParameter p = free.get(i);
        return (value - p.span().low()) / (p.span().high() - p.span().low());
    }

    private Map<BodyParameter, Double> constants(double[] shares) {
        Map<BodyParameter, Double> constants = new EnumMap<>(BodyParameter.class);
        constants.putAll(before);
        for (int i = 0; i < free.size(); i++) {
            BodyParameter p = free.get(i);
            constants.put(
                    p, p.span().low() + shares[i] * (p.span().high() - p.span().low()));
        }
        return constants;
    }
}
