package longnight.study;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What earlier answers make likely of the next, by a number and a size; orders the work and decides nothing. */
final class Hunch {

    /** Width of a bin, over the number. */
    private static final double WIDTH = 0.004;

    /** Powers of two of the size in a bin, and how many such bins there are at most. */
    private static final int STRIDE = 6;

    private static final int STRIDES = 64;

    /** Answers before a bin is believed. */
    private static final int FEW = 8;

    /** A question that settles a whole saves the two about its halves. */
    private static final double SHARE = 0.4;

    /** Every so often a bin is asked all the same, since what lies in it changes as the search goes on. */
    private static final int AGAIN = 24;

    private final Map<Integer, Tally> tallies = new HashMap<>();
    private Set<Integer> unlikely = Set.of();

    private static final class Tally {
        private int asked;
        private int settled;
        private int passed;
    }

    /** The bins in which asking seldom settles anything, as known now. */
    Set<Integer> unlikely() {
        return unlikely;
    }

    static int bin(double number, int size) {
        return (int) Math.floor(StrictMath.log(number) / WIDTH) * STRIDES + size / STRIDE;
    }

    /** Whether to ask now; counts how often it was not. */
    boolean isWorthAsking(double number, int size) {
        int bin = bin(number, size);
        return !unlikely.contains(bin) || ++tally(bin).passed % AGAIN == 0;
    }

    void learn(double number, int size, boolean settled) {
        int bin = bin(number, size);
        Tally tally = tally(bin);
        tally.asked++;
        tally.settled += settled ? 1 : 0;
        boolean seldom = tally.asked >= FEW && tally.settled < SHARE * tally.asked;
        if (seldom != unlikely.contains(bin)) {
            Set<Integer> other = new HashSet<>(unlikely);
            if (seldom) {
                other.add(bin);
            } else {
                other.remove(bin);
            }
            unlikely = Set.copyOf(other);
        }
    }

    private Tally tally(int bin) {
        return tallies.computeIfAbsent(bin, key -> new Tally());
    }
}
