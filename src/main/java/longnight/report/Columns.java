package longnight.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A tall sheet in columns side by side.
 *
 * @param starts where each begins on the tall sheet [px]
 * @param height of the highest, margins included [px]
 */
record Columns(List<Double> starts, double height) {

    /**
     * At most so many columns, the highest as low as can be.
     *
     * @param seams  where a column may begin, rising, the upper edge of the sheet first [px]
     * @param end    lower edge of what is on the sheet [px]
     * @param margin above and below [px]
     * @param count  1 and up
     */
    static Columns of(List<Double> seams, double end, double margin, int count) {
        Columns best = from(seams, 0, end, count);
        return new Columns(best.starts(), best.height() + 2 * margin);
    }

    private static Columns from(List<Double> seams, int first, double end, int count) {
        Columns best = new Columns(List.of(seams.get(first)), end - seams.get(first));
        for (int next = first + 1; count > 1 && next < seams.size(); next++) {
            double here = seams.get(next) - seams.get(first);
            if (here >= best.height()) {
                break;
            }
            Columns rest = from(seams, next, end, count - 1);
            double highest = Math.max(here, rest.height());
            if (highest < best.height()) {
                List<Double> starts = new ArrayList<>(List.of(seams.get(first)));
                starts.addAll(rest.starts());
                best = new Columns(starts, highest);
            }
        }
        return best;
    }

    /** By how much a sheet of a width shrinks or grows to fit a page [1]. */
    double scale(double width, double pageWidth, double pageHeight) {
        return Math.min(pageWidth / (width * starts.size()), pageHeight / height);
    }
}
