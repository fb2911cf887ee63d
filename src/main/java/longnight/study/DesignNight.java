package longnight.study;

import java.util.List;
import longnight.assumption.Guess;
import longnight.outdoors.Weather;
import org.jspecify.annotations.Nullable;

/**
 * A night to plan for.
 *
 * @param kind    which of the three
 * @param origin  where it comes from
 * @param weather the series
 * @param summary its means
 * @param guesses everything in it that the record does not tell
 * @param of      how many nights or days it was chosen from; 0 for one that was made
 */
public record DesignNight(
        Kind kind, Origin origin, Weather weather, RecordedNight summary, List<Guess> guesses, int of) {

    /** The three kinds. The coldest air is calm, and seldom the hardest night. */
    public enum Kind {
        CLEAR_CALM,
        WINDY,
        WET;

        /** "clear-calm". */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** Whether the night was recorded hour by hour, made from a day's extremes, or made for the coldest to expect. */
    public enum Origin {
        RECORDED,
        FROM_DAY,
        EXPECTED,
        LOWEST_RECORDED
    }

    /** With null for "not in this record". */
    static List<DesignNight> listed(@Nullable DesignNight... nights) {
        return java.util.Arrays.stream(nights)
                .filter(java.util.Objects::nonNull)
                .toList();
    }
}
