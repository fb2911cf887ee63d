package longnight.clothing;

import java.util.Map;
import longnight.figure.Zone;

/** What a piece is filled with. */
public sealed interface Fill {

    /** No fill: a plain fabric. */
    record None() implements Fill {}

    /**
     * A polyester batt.
     *
     * @param type      class of batt
     * @param arealMass batt mass per area [kg/m2], 0.02 to 0.6, where no zone says otherwise
     * @param byZone    areal mass of single zones [kg/m2]; may be empty
     */
    record Batt(BattType type, double arealMass, Map<Zone, Double> byZone) implements Fill {}

    /**
     * Down.
     *
     * @param fillMass  total fill mass of the piece [kg], 0.01 to 1.5
     * @param fillPower fill power in cubic metres per kilogram (SI; 1 in3/oz = 5.78037e-4 m3/kg), 0.2 to 0.6
     * @param treated   water-repellent down
     * @param constructionFactor share of the free-loft resistance that the sewn construction leaves [1]; NaN when unknown
     */
    record Down(double fillMass, double fillPower, boolean treated, double constructionFactor) implements Fill {}

    /** Classes of polyester batt (clothing.md 6.2). */
    enum BattType {
        SHORT_STAPLE,
        CONTINUOUS_FILAMENT,
        ACTIVE
    }
}
