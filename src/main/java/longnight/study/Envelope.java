package longnight.study;

import static longnight.study.Cells.FACTS;

import java.util.List;
import longnight.study.Cells.Fact;

/**
 * Over a set of choices of one region: the largest and smallest value of every fact of every cell, each cell for itself.
 *
 * @param most     by cell and fact
 * @param least    by cell and fact
 * @param barred   by cell: no choice leaves it bare
 * @param pressedMost  cloth under the body by pressed cell [m2 K/W]
 * @param pressedLeast the same, smallest
 */
record Envelope(float[] most, float[] least, boolean[] barred, float[] pressedMost, float[] pressedLeast) {

    static Envelope of(List<Cells.Measure> measures) {
        Cells.Measure first = measures.get(0);
        float[] most = first.air().clone();
        float[] least = first.air().clone();
        float[] pressedMost = first.ground().clone();
        float[] pressedLeast = first.ground().clone();
        for (Cells.Measure measure : measures) {
            stretch(most, least, measure.air());
            stretch(pressedMost, pressedLeast, measure.ground());
        }
        boolean[] barred = new boolean[most.length / FACTS];
        for (int c = 0; c < barred.length; c++) {
            barred[c] = least[c * FACTS + Fact.CLOTH.ordinal()] > 0;
        }
        return new Envelope(most, least, barred, pressedMost, pressedLeast);
    }

    private static void stretch(float[] most, float[] least, float[] values) {
        for (int k = 0; k < values.length; k++) {
            most[k] = Math.max(most[k], values[k]);
            least[k] = Math.min(least[k], values[k]);
        }
    }

    float most(int cell, Fact fact) {
        return most[cell * FACTS + fact.ordinal()];
    }

    float least(int cell, Fact fact) {
        return least[cell * FACTS + fact.ordinal()];
    }
}
