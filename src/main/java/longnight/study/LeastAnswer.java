package longnight.study;

import java.util.List;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
import org.jspecify.annotations.Nullable;

/**
 * The lightest kit, what was shown of lighter ones, and what is near it.
 *
 * @param question what was asked
 * @param nights   names of the nights and people asked for, in the order of the question
 * @param air      mean air of the coldest of them, made colder as asked [degC]
 * @param freezing whether the air of any falls below 0 degC: then head and hands must be covered
 * @param proof    the search
 * @param without  for each piece of the lightest kit, what becomes of the rest
 * @param nothing  when no kit is adequate, the best there is; else null
 * @param front    the same question in warmer and colder weather, warmest first; empty when not asked for
 */
public record LeastAnswer(
        LeastQuestion question,
        List<String> nights,
        double air,
        boolean freezing,
        Proof proof,
        List<Without> without,
        @Nullable Nothing nothing,
        List<Point> front) {
    /** Where no kit holds, the weather is made warmer by so much at most [K]. */
    public static final double MOST_WARMER = 40;

    /** And every region is tried with so much more insulation [m2 K/W]. */
    public static final double MORE = 0.2;

    /**
     * An adequate kit.
     *
     * @param kit    what is worn
     * @param mass   [kg]
     * @param nights results in the order of the question
     */
    public record Found(Outfit.Kit kit, double mass, List<NightResult> nights) {

        /** In which night the demand is largest. */
        public int hardest() {
            int most = 0;
            for (int i = 1; i < nights.size(); i++) {
                most = nights.get(i).demand() > nights.get(most).demand() ? i : most;
            }
            return most;
        }

        /** Largest demand [1]. */
        public double demand() {
            return nights.get(hardest()).demand();
        }
    }

    /**
     * The lightest kit with a piece left out.
     *
     * @param id      of the piece
     * @param name    of the piece
     * @param mass    of the piece [kg]
     * @param allowed false when the rules ask for the piece, or one like it
     * @param demand  largest demand of the rest [1]
     */
    public record Without(String id, String name, double mass, boolean allowed, double demand) {}

    /**
     * The warmest kit found where none is adequate.
     *
     * @param best   the kit
     * @param warmer by how much warmer the weather would have to be for it [K]; NaN when 40 K, or what the model can take, are not enough
     * @param most   part of the body where more insulation would help most
     * @param helps  by how much the demand falls with 0.2 m2 K/W more there [1]
     */
    public record Nothing(Found best, double warmer, String most, double helps) {}

    /**
     * A point of the front.
     *
     * @param air   mean air of the coldest night [degC]
     * @param mass  of the lightest adequate kit [kg]; NaN when there is none, or none was found
     * @param lower no adequate kit is lighter [kg]; infinite when there is none
     */
    public record Point(double air, double mass, double lower) {}
}
