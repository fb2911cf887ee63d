package longnight.study;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Pairs of points in a unit cube, one after the other and always the same for a seed: the two halves of the points of a Sobol sequence
 * with twice the directions (Joe and Kuo 2008; Saltelli et al. 2010, section 4), moved as a whole by a random shift (Cranley and
 * Patterson 1976).
 */
final class Rows {
    private final int dimensions;
    private final double[] shift;
    private final SobolSequenceGenerator sequence;
    private final List<double[]> first = new ArrayList<>();
    private final List<double[]> second = new ArrayList<>();

    Rows(int dimensions, long seed) {
        this.dimensions = dimensions;
        RandomGenerator chance = new Well19937c(seed);
        shift = new double[2 * dimensions];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = chance.nextDouble();
        }
        sequence = new SobolSequenceGenerator(shift.length);
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
    List<double[]> crossed(int from, int to, java.util.function.IntPredicate fromSecond) {
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
            double[] point = sequence.nextVector();
            for (int d = 0; d < point.length; d++) {
                point[d] = (point[d] + shift[d]) % 1.0;
            }
            first.add(java.util.Arrays.copyOfRange(point, 0, dimensions));
            second.add(java.util.Arrays.copyOfRange(point, dimensions, 2 * dimensions));
        }
    }
}
