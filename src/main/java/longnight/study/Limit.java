package longnight.study;

import java.util.List;
import longnight.night.Caution;
import longnight.night.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * How cold a night a kit carries. Coming from the warm side, the first temperature at which the line is reached; nights that are
 * colder still and keep to the line all the same are listed apart.
 *
 * @param reach     what was found
 * @param shift     how much warmer that night is than the one given [K]; NaN unless {@link Reach#FOUND}
 * @param air       of that night; of the coldest or warmest night tried otherwise
 * @param again     colder stretches in which the line is kept again, warmest first
 * @param verdict   of that night; null unless found
 * @param cautions  that apply to that night
 * @param nights    how many nights were run for it
 */
public record Limit(
        Reach reach,
        double shift,
        Air air,
        List<Stretch> again,
        @Nullable Verdict verdict,
        List<Caution> cautions,
        int nights) {

    /** What a search can find. */
    public enum Reach {
        /** A night that just keeps to the line. */
        FOUND,
        /** The line is kept at every temperature that the model knows. */
        COLDER_THAN_MODEL,
        /** The line is passed even in the warmest air that the model knows. */
        NOT_EVEN_WARM
    }

    /**
     * Nights by their mean air [degC].
     *
     * @param warmest warm end
     * @param coldest cold end
     * @param open    whether the cold end is the model's and not the line's
     */
    public record Stretch(double warmest, double coldest, boolean open) {}
}
