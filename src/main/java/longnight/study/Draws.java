package longnight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longnight.assumption.ModelParameter;
import longnight.assumption.ParameterSet;
import longnight.body.BodyOptions;
import longnight.body.BodyParameter;
import longnight.clothing.ClothingParameter;
import longnight.night.ModelChoice;
import longnight.outdoors.OutdoorParameter;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Models drawn from what is plausible: every constant within its published range, both laws of shivering. The same seed gives the
 * same models, so that two kits may be compared draw by draw and the scatter does not drown their difference.
 *
 * <p>The points are those of a Sobol sequence (Joe and Kuo 2008), moved as a whole by a random shift (Cranley and Patterson 1976)
 * that the seed makes. A constant lies below its nominal value in half of the draws and above it in the other half; on each side
 * its distance from nominal falls off as the two-sided power distribution does (van Dorp and Kotz 2002) with the exponent
 * {@link #PEAK}. That constants move independently except within a {@link Factor} is an engineering estimate, no source.
 */
public final class Draws {

    /** Draws when nothing else is said. */
    public static final int USUAL = 200;

    /** Seed when nothing else is said. */
    public static final long SEED = 1;

    /** Exponent of the distributions: 1 uniform, 2 triangular, more is narrower; docs/band.md tells how it was chosen. */
    public static final double PEAK = 2;

    /** Share of draws with the gated law of shivering; engineering estimate, no source: the nominal law was fitted, so it weighs more. */
    public static final double GATED_SHARE = 1.0 / 3;

    /**
     * By how much the model itself misses mean skin, beside what its constants leave open, standard deviation [K]: what the draws
     * leave unexplained of the open human experiments (the discrepancy of Kennedy and O'Hagan 2001). docs/band.md tells how it
     * was estimated, and that change of the core needs none. Losses are off with the skin.
     */
    public static final double SKIN_MISFIT = 1.4;

    private final long seed;
    private final List<ModelChoice> models;
    private final double[] misfits;

    private Draws(long seed, List<ModelChoice> models, double[] misfits) {
        this.seed = seed;
        this.models = List.copyOf(models);
        this.misfits = misfits;
    }

    /**
     * Draws models.
     *
     * @param n    how many, 1 and up
     * @param seed any number
     */
    public static Draws of(int n, long seed) {
        return of(n, seed, PEAK);
    }

    /** Draws models with another exponent, 1 and up; for those who judge the width. */
    public static Draws of(int n, long seed, double peak) {
        RandomGenerator chance = new Well19937c(seed);
        int factors = Factors.ALL.size();
        double[] shift = new double[factors + 1];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = chance.nextDouble();
        }
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(shift.length);
        List<ModelChoice> models = new ArrayList<>(n);
        double[] misfits = new double[n];
        for (int i = 0; i < n; i++) {
            double[] point = sequence.nextVector();
            for (int d = 0; d < point.length; d++) {
                point[d] = (point[d] + shift[d]) % 1.0;
            }
            models.add(model(point, 0, peak));
            misfits[i] = misfit(point[factors]);
        }
        return new Draws(seed, models, misfits);
    }

    /**
     * The model at a place of the usual distributions.
     *
     * @param place 0 to 1 in each direction of {@link #factors}, the first of them at {@code from}
     */
    static ModelChoice model(double[] place, int from) {
        return model(place, from, PEAK);
    }

    /** How much warmer the skin is taken to be than a model says, at a place 0 to 1 of its distribution [K]. */
    static double misfit(double place) {
        return SKIN_MISFIT * new NormalDistribution().inverseCumulativeProbability(inside(place));
    }

    /** Away from the ends, where a normal value is infinite. */
    private static double inside(double u) {
        return Math.min(1 - 1e-6, Math.max(1e-6, u));
    }

    private static ModelChoice model(double[] point, int from, double peak) {
        ParameterSet<BodyParameter> body = ParameterSet.nominal(BodyParameter.class);
        ParameterSet<ClothingParameter> clothing = ParameterSet.nominal(ClothingParameter.class);
        ParameterSet<OutdoorParameter> outdoors = ParameterSet.nominal(OutdoorParameter.class);
        BodyOptions options = BodyOptions.nominal();
        for (int d = 0; d < Factors.ALL.size(); d++) {
            Factor factor = Factors.ALL.get(d);
            if (factor.members().isEmpty() && point[from + d] < GATED_SHARE) {
                options = new BodyOptions(
                        BodyOptions.Law.GATED, options.limbs(), options.basalHeat(), options.peakHeat());
            }
            for (Factor.Member member : factor.members()) {
                double value = member.at(point[from + d], peak);
                ModelParameter parameter = member.parameter();
                if (parameter instanceof BodyParameter of) {
                    body = body.with(of, value);
                } else if (parameter instanceof ClothingParameter of) {
                    clothing = clothing.with(of, value);
                } else {
                    outdoors = outdoors.with((OutdoorParameter) parameter, value);
                }
            }
        }
        return new ModelChoice(body, options, clothing, outdoors);
    }

    /** What is drawn, in the order of the sequence's dimensions. */
    public static List<Factor> factors() {
        return Factors.ALL;
    }

    /** The seed. */
    public long seed() {
        return seed;
    }

    /** How many. */
    public int size() {
        return models.size();
    }

    /** The models. */
    public List<ModelChoice> models() {
        return models;
    }

    /** How much warmer the skin is taken to be under one of the models than it says [K]. */
    public double skinMisfit(int draw) {
        return misfits[draw];
    }

    /**
     * Asks every model the same.
     *
     * @param threads how many work at once, 1 and up; the answers do not depend on it
     * @return answers in the order of the draws
     */
    public <T> List<T> ask(Function<ModelChoice, T> question, int threads) {
        return Together.ask(models, question, threads);
    }
}
