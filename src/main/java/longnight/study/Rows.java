package longnight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.util.MathArrays;

/**
 * Pairs of points in a unit cube, one after the other and always the same for a seed: a Latin hypercube (McKay, Beckman and Conover 1979)
 * that grows by doubling. Each place runs through the same evenly filling sequence (Sobol's in one direction), moved by a random shift
 * of its own and, within each doubling, in a random order of its own; so after 32, 64, 128 ... points every place has been in
 * each of as many equal parts of its range once, and no two places are correlated but by chance.
 *
 * <p>Not the two halves of one Sobol sequence with as many directions: with three hundred directions and a thousand points some pairs of
 * them are correlated to 0.7, which no bootstrap sees.
 */
final class Rows {
    /** Points before the first doubling. */
    private static final int FIRST = 32;

    private final int dimensions;
    private final RandomGenerator chance;
    private final double[] shift;
    private final SobolSequenceGenerator filling = new SobolSequenceGenerator(1);
    private final List<double[]> first = new ArrayList<>();
    private final List<double[]> second = new ArrayList<>();

    Rows(int dimensions, long seed) {
        this.dimensions = dimensions;
        chance = new Well19937c(seed);
        shift = new double[2 * dimensions];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = chance.nextDouble();
        }
    }

    /** The first point of pairs, from one to before another. */
    List<double[]> first(int from, int to) {
        reach(to);
        return List.copyOf(first.subList(from, to));
    }

    /** The second point of pairs, from one to before another. */
    List<double[]> second(int from, int to) {
        reach(to);
        return List.copyOf(second.subList(from, to));
    }

    /** The first points with some of their places from the second ones. */
    List<double[]> crossed(int from, int to, IntPredicate fromSecond) {
        reach(to);
        List<double[]> points = new ArrayList<>();
        for (int i = from; i < to; i++) {
            double[] point = first.get(i).clone();
            for (int d = 0; d < dimensions; d++) {
                if (fromSecond.test(d)) {
                    point[d] = second.get(i)[d];
                }
            }
            points.add(point);
        }
        return points;
    }

    private void reach(int n) {
        while (first.size() < n) {
            twice();
        }
    }

    /** As many points again. */
    private void twice() {
        double[] fresh = new double[Math.max(FIRST, first.size())];
        int[] order = new int[fresh.length];
        double[][] one = new double[fresh.length][dimensions];
        double[][] other = new double[fresh.length][dimensions];
        for (int i = 0; i < fresh.length; i++) {
            fresh[i] = filling.nextVector()[0];
            order[i] = i;
        }
        for (int d = 0; d < shift.length; d++) {
            MathArrays.shuffle(order, chance);
            for (int i = 0; i < fresh.length; i++) {
                double[] point = d < dimensions ? one[i] : other[i];
                point[d % dimensions] = (fresh[order[i]] + shift[d]) % 1.0;
            }
        }
        first.addAll(List.of(one));
        second.addAll(List.of(other));
    }
}
