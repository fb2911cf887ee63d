package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColumnsTest {

    @Test
    void the_highest_column_is_as_low_as_can_be() {
        Columns two = Columns.of(List.of(10.0, 100.0, 300.0, 450.0), 500, 10, 2);
        assertThat(two.starts()).containsExactly(10.0, 300.0);
        assertThat(two.height()).isEqualTo(290 + 20);
        assertThat(Columns.of(List.of(10.0, 100.0), 500, 10, 1).starts()).containsExactly(10.0);
    }

    /** Against every way to break a sheet in three. */
    @Test
    void no_other_way_is_lower() {
        Random random = new Random(3);
        for (int trial = 0; trial < 50; trial++) {
            TreeSet<Double> seams = new TreeSet<>(List.of(0.0));
            IntStream.range(0, 7).forEach(i -> seams.add((double) (1 + random.nextInt(998))));
            List<Double> all = List.copyOf(seams);
            double least = 1000;
            for (double first : all) {
                for (double second : all) {
                    if (first <= second) {
                        least = Math.min(least, Math.max(first, Math.max(second - first, 1000 - second)));
                    }
                }
            }
            assertThat(Columns.of(all, 1000, 0, 3).height()).isEqualTo(least);
        }
    }

    @Test
    void a_page_is_filled_in_one_direction() {
        Columns two = new Columns(List.of(0.0, 500.0), 500);
        assertThat(two.scale(1000, 2000, 1000)).isEqualTo(1);
        assertThat(two.scale(1000, 2000, 250)).isEqualTo(0.5);
    }

    /** A bold line above a drawing names its axes: on a slide it goes with it, heading or not. */
    @Test
    void a_drawing_is_not_parted_from_the_line_that_names_its_axes() {
        Fonts.install();
        Sheet sheet = new Sheet();
        sheet.block(600, (pen, top) -> {});
        double axes = sheet.height() - Sheet.MARGIN;
        sheet.text("Mean air [°C]", Fonts.bold(Sheet.TEXT));
        sheet.block(600, (pen, top) -> {});
        assertThat(sheet.columns(1920, 1080).starts()).containsExactly((double) Sheet.MARGIN, axes);
    }
}
