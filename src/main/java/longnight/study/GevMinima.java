package longnight.study;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Gamma;

/**
 * The generalised extreme value distribution of yearly minima: Gumbel's with a shape more. A positive shape has a floor below which
 * no year falls, a negative one a long tail.
 *
 * <p><b>Fit.</b> L-moments (Hosking, Wallis and Wood 1985, Technometrics 27:251; Hosking 1990, J R Stat Soc B 52:105; from memory),
 * the shape solved for, not approximated.
 *
 * @param location [degC]
 * @param scale    [K], positive
 * @param shape    [1], Hosking's k
 */
public record GevMinima(double location, double scale, double shape) {

    /** Shapes that are looked for; at -1 the mean no longer exists. */
    private static final double LOWEST_SHAPE = -0.95;

    private static final double HIGHEST_SHAPE = 5;

    /** Closer to zero than this the shape is Gumbel's. */
    private static final double STRAIGHT = 1e-7;

    /**
     * Fits the sample L-moments.
     *
     * @param minima at least three, not all alike [degC]
     */
    public static GevMinima fit(double[] minima) {
        double[] y = Arrays.stream(minima).map(x -> -x).sorted().toArray();
        int n = y.length;
        double[] b = new double[3];
        for (int i = 0; i < n; i++) {
            b[0] += y[i] / n;
            b[1] += y[i] / n * i / (n - 1.0);
            b[2] += y[i] / n * i * (i - 1.0) / ((n - 1.0) * (n - 2.0));
        }
        double second = 2 * b[1] - b[0];
        return ofMoments(b[0], second, (6 * b[2] - 6 * b[1] + b[0]) / second);
    }

    /** From mean, second L-moment and L-skewness of the minima with their sign turned. */
    static GevMinima ofMoments(double mean, double second, double skewness) {
        double low = skewness(LOWEST_SHAPE);
        double high = skewness(HIGHEST_SHAPE);
        double shape;
        if (skewness >= low) {
            shape = LOWEST_SHAPE;
        } else if (skewness <= high) {
            shape = HIGHEST_SHAPE;
        } else {
            shape = new BrentSolver(1e-13, 1e-12).solve(200, k -> skewness(k) - skewness, LOWEST_SHAPE, HIGHEST_SHAPE);
        }
        if (Math.abs(shape) < STRAIGHT) {
            double scale = second / StrictMath.log(2);
            return new GevMinima(-(mean - 0.5772156649015329 * scale), scale, 0);
        }
        double gamma = Gamma.gamma(1 + shape);
        double scale = second * shape / (-StrictMath.expm1(-shape * StrictMath.log(2)) * gamma);
        return new GevMinima(-(mean - scale * (1 - gamma) / shape), scale, shape);
    }

    private static double skewness(double shape) {
        if (Math.abs(shape) < STRAIGHT) {
            return 2 * StrictMath.log(3) / StrictMath.log(2) - 3;
        }
        return 2 * StrictMath.expm1(-shape * StrictMath.log(3)) / StrictMath.expm1(-shape * StrictMath.log(2)) - 3;
    }

    /** Temperature [degC] that a year's minimum undercuts once in so many years on average (above 1). */
    public double coldest(double years) {
        return quantile(1 / years);
    }

    double quantile(double chance) {
        double reduced = GumbelMinima.reduced(chance);
        return shape == 0 ? location + scale * reduced : location + scale * StrictMath.expm1(shape * reduced) / shape;
    }
}
