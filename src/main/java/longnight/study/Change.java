package longnight.study;

import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import longnight.night.Scenario;

/**
 * One thing done otherwise than planned.
 *
 * @param kind  what is done
 * @param names what it is done to: pieces, pads or a posture
 * @param slots what it lays hands on; two changes that share one exclude each other
 * @param mass  added to what is carried [kg]
 * @param price added to what is paid, in the wardrobe's money; NaN when unknown
 * @param make  makes the other night; throws {@link IllegalStateException} where that cannot be
 */
public record Change(
        Kind kind, List<String> names, Set<String> slots, double mass, double price, UnaryOperator<Scenario> make) {
    /** Heat of a meal more [J]. */
    public static final double MEAL = 2e6;

    /** What can be done otherwise. */
    public enum Kind {
        /** A piece stays at home. */
        WITHOUT,
        /** A piece of the wardrobe comes along. */
        WITH,
        /** A piece of the wardrobe in place of another. */
        EXCHANGED,
        /** Two pieces worn in the other order. */
        SWAPPED,
        /** A piece with a hood, hood down. */
        HOOD_DOWN,
        WITHOUT_PAD,
        WITH_PAD,
        POSTURE,
        /** The parka goes on 20 minutes later than planned. */
        PARKA_LATE,
        /** All that is worn in the night goes on at its beginning. */
        AT_ONCE,
        BEGUN_DRY,
        /** See {@link ArrivedDamp}. */
        BEGUN_DAMP,
        /** Ten minutes of general exercise at the start of each hour. */
        DRILL,
        NO_DRILL,
        /** 2 MJ half an hour after dusk. */
        MEAL,
        NO_MEALS,
        /** A wall or a pit that keeps off half of the wind that comes now. */
        LESS_WIND,
        /** Cover overhead: nothing falls, a tenth of the sky left. */
        OVERHEAD
    }

    /** Whether this and another can be done together. */
    boolean goesWith(Change other) {
        return slots.stream().noneMatch(other.slots::contains);
    }
}
