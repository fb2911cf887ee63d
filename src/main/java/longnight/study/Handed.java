package longnight.study;

import java.util.Comparator;
import longnight.night.GroupNight;

/**
 * One spare on one member, and what comes of it.
 *
 * @param spare     what is handed over
 * @param before    the wearer in their own kit
 * @param after     the wearer with it besides
 * @param toWeakest whether the wearer is the most exposed of the group
 * @param weakest   who of the group is most exposed then
 */
public record Handed(GroupNight.Spare spare, Standing before, Standing after, boolean toWeakest, Standing weakest) {

    /** A run that goes on longer by less is no help told from nothing [s]; numerical choice. */
    private static final double LONGER = 600;

    /** What saves a run from stopping, the lightest first; then by what is saved, or how much later a run stops, per mass. */
    static final Comparator<Handed> MOST_HELP_FIRST = Comparator.comparing(Handed::rank)
            .thenComparingDouble(each -> each.rescues() ? each.spare.mass() : 0)
            .thenComparingDouble(each -> each.isComparable() ? -each.perMass() : 0)
            .thenComparingDouble(each -> Double.isNaN(each.longer()) ? 0 : -each.longer() / each.spare.mass())
            .thenComparingDouble(each -> each.spare.mass())
            .thenComparing(each -> each.spare.id())
            .thenComparing(each -> each.before.id());

    /** Those for the most exposed first. */
    static final Comparator<Handed> BEST_FIRST =
            Comparator.comparing(Handed::toWeakest, Comparator.reverseOrder()).thenComparing(MOST_HELP_FIRST);

    /** Shortfall heat that the wearer is saved [J]; NaN where one of the two runs stopped early. */
    public double saved() {
        return isComparable() ? before.result().shortfallHeat() - after.result().shortfallHeat() : Double.NaN;
    }

    /** Bills over different times cannot be compared. */
    private boolean isComparable() {
        return Double.isNaN(before.result().stopped())
                && Double.isNaN(after.result().stopped());
    }

    /** The same per mass of the spare [J/kg]. */
    public double perMass() {
        return saved() / spare.mass();
    }

    /** How much later the run stops [s]; NaN unless both do. */
    public double longer() {
        return after.result().stopped() - before.result().stopped();
    }

    /** Whether the run stops without it and does not with it. */
    public boolean rescues() {
        return !Double.isNaN(before.result().stopped())
                && Double.isNaN(after.result().stopped());
    }

    /** Whether it does enough to be told from nothing. */
    public boolean helps() {
        return rescues() || saved() > Worth.FLOOR || longer() > LONGER;
    }

    private int rank() {
        return rescues() ? 0 : isComparable() ? 1 : 2;
    }
}
