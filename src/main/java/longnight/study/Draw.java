package longnight.study;

import java.util.EnumSet;
import java.util.Set;
import longnight.night.Outline;

/**
 * What is kept of one drawn night. Of one that stopped because the core fell below 32 degC, demand, heats and core are those up to that
 * moment.
 *
 * @param shortfallHeat [J]
 * @param demand        [1]; NaN in a run that stopped before it could be told
 * @param deficitDawn   [J]
 * @param coreDawn      [degC]
 * @param stopped       when the run stopped [s from dusk]; NaN when it reached dawn
 * @param crossing      lines that it crosses
 */
public record Draw(
        double shortfallHeat,
        double demand,
        double deficitDawn,
        double coreDawn,
        double stopped,
        Set<Cloud.Crossed> crossing) {

    public Draw {
        crossing = Set.copyOf(crossing);
    }

    static Draw of(Outline outline) {
        Set<Cloud.Crossed> crossing = EnumSet.noneOf(Cloud.Crossed.class);
        for (Cloud.Crossed line : Cloud.Crossed.values()) {
            if (line.isCrossed(outline)) {
                crossing.add(line);
            }
        }
        return new Draw(
                outline.shortfallHeat(),
                outline.demand(),
                outline.deficitDawn(),
                outline.coreDawn(),
                outline.stopped(),
                crossing);
    }

    /** Whether it left the model's range on the way. */
    public boolean hasStopped() {
        return !Double.isNaN(stopped);
    }
}
