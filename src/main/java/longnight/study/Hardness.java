package longnight.study;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Which trials ask most; orders the work and decides nothing. */
final class Hardness {

    /** A trial is asked for a bound when it lies within this of the hardest, over demand. */
    private static final double NEAR = 0.03;

    private long[] refutations = {};
    private double[] demand = {};
    private int hardest;

    /** Takes the demand of one kit in every trial. */
    void learn(List<Double> demands) {
        demand = demands.stream().mapToDouble(Double::doubleValue).toArray();
        refutations = new long[demand.length];
        hardest = order()[0];
    }

    /** The hardest first. */
    int[] order() {
        return IntStream.range(0, demand.length)
                .boxed()
                .sorted(Comparator.comparingLong((Integer t) -> -refutations[t]).thenComparing(t -> -demand[t]))
                .mapToInt(t -> t)
                .toArray();
    }

    /** The one that asked most of the first kit. */
    int hardest() {
        return hardest;
    }

    void refuted(int trial) {
        refutations[trial]++;
    }

    /** On the form so far another trial asks so much more that a run is not worth it. */
    boolean isFarBelow(int trial, int other) {
        return demand[trial] < demand[other] * (1 - NEAR);
    }
}
