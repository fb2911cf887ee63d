package longnight.night;

import java.util.List;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.Pad;
import org.jspecify.annotations.Nullable;

/**
 * Some people out in one night, and what they have between them.
 *
 * @param name    of the group, shown to people
 * @param members with one plan and in one weather, each in clothes of their own; the order says nothing
 * @param spares  that anybody may put on; the order says nothing
 * @param places  in a huddle; null for none beside what the plan says
 */
public record GroupNight(
        String name,
        List<Member> members,
        List<Spare> spares,
        @Nullable Places places) {
    public GroupNight {
        members = List.copyOf(members);
        spares = List.copyOf(spares);
    }

    /**
     * One of them.
     *
     * @param id    within the group
     * @param alone the night in their own kit
     */
    public record Member(String id, Scenario alone) {}

    /**
     * Something that one member may put on or lie on besides.
     *
     * @param id      as the group calls it
     * @param piece   to wear; its own id is that of no other piece. Null for a pad
     * @param pad     to lie or sit on; null for a piece
     * @param count   how many of it there are, 1 and up
     * @param guesses everything that was guessed about it
     */
    public record Spare(
            String id, @Nullable Garment piece, @Nullable Pad pad, int count, List<Guess> guesses) {
        public Spare {
            if ((piece == null) == (pad == null)) {
                throw new IllegalArgumentException("a spare is a piece or a pad: " + id);
            }
            guesses = List.copyOf(guesses);
        }

        /** Of one of it [kg]. */
        public double mass() {
            return piece != null ? piece.spec().mass() : pad != null ? pad.mass() : 0;
        }
    }

    /**
     * The places of a huddle, which are changed at equal intervals from dusk on.
     *
     * @param inner share of the body's area in touch with partners at an inner place [1], 0 to 0.4, not below the outer one
     * @param outer the same at an outer place [1]
     * @param outerPlaces how many outer places there are, 1 and up, fewer than members
     * @param swap  time from one change of places to the next [s], above 0
     */
    public record Places(double inner, double outer, int outerPlaces, double swap) {
        /** The same with other shares in touch, all by the same factor [1]. */
        public Places touching(double factor) {
            return new Places(factor * inner, factor * outer, outerPlaces, swap);
        }

        public Places {
            if (!(inner >= outer && outer >= 0 && outerPlaces >= 1 && swap > 0)) {
                throw new IllegalArgumentException(
                        "places " + inner + ", " + outer + ", " + outerPlaces + ", " + swap + " s");
            }
        }
    }
}
