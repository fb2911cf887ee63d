package longnight.study;

import java.util.List;

/**
 * What a run of the same question that was broken off knew already. Draws are asked for in an order that the question alone makes,
 * so that their place in the order tells them.
 */
public interface DrawMemory {
    /** Knows nothing and keeps nothing. */
    DrawMemory NONE = new DrawMemory() {
        @Override
        public List<Draw> known(int most) {
            return List.of();
        }

        @Override
        public void keep(Draw draw) {
            // nothing is kept
        }
    };

    /** The next draws, as far as they are known, at most so many; they are not told again. */
    List<Draw> known(int most);

    /** Keeps the next draw, when no more are known. */
    void keep(Draw draw);
}
