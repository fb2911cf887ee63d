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

    /** Those for the most exposed first; then by what is saved per mass, by what is saved, and at last by names. */
    static final Comparator<Handed> BEST_FIRST = Comparator.comparing(Handed::toWeakest, Comparator.reverseOrder())
            .thenComparing(Comparator.comparingDouble(Handed::order).reversed())
            .thenComparing(Comparator.comparingDouble((Handed each) -> zero(each.saved()))
                    .reversed())
            .thenComparing(each -> each.spare().id())
            .thenComparing(each -> each.before().id());

    /** Shortfall heat that the wearer is saved [J]; NaN where one of the two runs stopped early. */
    public double saved() {
        boolean comparable = Double.isNaN(before.result().stopped())
                && Double.isNaN(after.result().stopped());
        return comparable ? before.result().shortfallHeat() - after.result().shortfallHeat() : Double.NaN;
    }

    /** The same per mass of the spare [J/kg]. */
    public double perMass() {
        return saved() / spare.mass();
    }

    /** Whether the run stops without it and does not with it. */
    public boolean rescues() {
        return !Double.isNaN(before.result().stopped())
                && Double.isNaN(after.result().stopped());
    }

    /** Whether it saves enough to be told from nothing. */
    public boolean helps() {
        return rescues() || saved() > Worth.FLOOR;
    }

    double order() {
        return rescues() ? Double.POSITIVE_INFINITY : Double.isNaN(saved()) ? Double.NEGATIVE_INFINITY : perMass();
    }

    private static double zero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }
}
