package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowsTest {
    /** About as many as a night has. */
    private static final int PLACES = 150;

    private static double[] place(List<double[]> points, int place) {
        return points.stream().mapToDouble(point -> point[place]).toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {32, 64, 512})
    void every_place_fills_its_range_evenly_after_each_doubling(int n) {
        Rows rows = new Rows(PLACES, 5);
        for (List<double[]> points : List.of(rows.first(0, n), rows.second(0, n))) {
            for (int d = 0; d < PLACES; d++) {
                double[] sorted = Arrays.stream(place(points, d)).sorted().toArray();
                for (int i = 1; i < n; i++) {
                    assertThat(sorted[i] - sorted[i - 1]).isBetween(0.999 / n, 1.001 / n);
                }
                assertThat(sorted[0]).isBetween(0.0, 1.0 / n);
                assertThat(sorted[n - 1]).isBetween(1 - 1.0 / n, 1.0);
            }
        }
    }

    /** Chance alone gives a standard deviation of 1/32; among 45 thousand pairs the largest is then near 4.3 of them. */
    @Test
    void no_two_places_are_correlated_but_by_chance() {
        int n = 1024;
        Rows rows = new Rows(PLACES, 1);
        double[][] both = new double[n][2 * PLACES];
        for (int i = 0; i < n; i++) {
            System.arraycopy(rows.first(i, i + 1).get(0), 0, both[i], 0, PLACES);
            System.arraycopy(rows.second(i, i + 1).get(0), 0, both[i], PLACES, PLACES);
        }
        double[][] r = new PearsonsCorrelation(both).getCorrelationMatrix().getData();
        double largest = 0;
        for (int d = 0; d < r.length; d++) {
            for (int e = 0; e < d; e++) {
                largest = Math.max(largest, Math.abs(r[d][e]));
            }
        }
        assertThat(largest).isBetween(3.5 / 32, 5.5 / 32);
    }

    @Test
    void points_do_not_depend_on_how_they_are_asked_for() {
        Rows slowly = new Rows(7, 3);
        Rows atOnce = new Rows(7, 3);
        List<double[]> later = atOnce.first(100, 130);
        slowly.second(0, 10);
        slowly.first(0, 40);
        for (int i = 0; i < 30; i++) {
            assertThat(slowly.first(100 + i, 101 + i).get(0)).containsExactly(later.get(i));
        }
    }

    @Test
    void crossed_points_have_the_places_asked_for_from_the_second() {
        Rows rows = new Rows(4, 2);
        double[] crossed = rows.crossed(9, 10, place -> place == 2).get(0);
        double[] one = rows.first(9, 10).get(0);
        double[] other = rows.second(9, 10).get(0);
        assertThat(crossed).containsExactly(one[0], one[1], other[2], one[3]);
    }
}
