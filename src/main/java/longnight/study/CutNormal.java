package longnight.study;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal distribution without its far ends. */
final class CutNormal {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private CutNormal() {}

    /**
     * The value at a place.
     *
     * @param place 0 to 1
     * @param cut   nothing lies beyond so many standard deviations
     */
    static double at(double place, double cut) {
        double low = NORMAL.cumulativeProbability(-cut);
        double value = NORMAL.inverseCumulativeProbability(low + place * (1 - 2 * low));
        return Math.min(cut, Math.max(-cut, value));
    }
}
