package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Indices against functions whose indices are known in closed form. */
class IndicesTest {
    private static final int ROWS = 1024;

    /** Ishigami and Homma 1990 with a = 7, b = 0.1; values in closed form (Saltelli et al. 2008, p. 179 and on). */
    private static final double[] ISHIGAMI_FIRST = {0.3139, 0.4424, 0};

    private static final double[] ISHIGAMI_TOTAL = {0.5576, 0.4424, 0.2437};

    private static double ishigami(double[] place) {
        double x = Math.PI * (2 * place[0] - 1);
        double y = Math.PI * (2 * place[1] - 1);
        double z = Math.PI * (2 * place[2] - 1);
        return Math.sin(x) + 7 * Math.sin(y) * Math.sin(y) + 0.1 * Math.pow(z, 4) * Math.sin(x);
    }

    /** Each place is a group. */
    private static Indices of(ToDoubleFunction<double[]> function, int places, int n, long seed) {
        Rows rows = new Rows(places, seed);
        double[][] crossed = IntStream.range(0, places)
                .mapToObj(g -> values(function, rows.crossed(0, n, place -> place == g)))
                .toArray(double[][]::new);
        return Indices.of(values(function, rows.first(0, n)), values(function, rows.second(0, n)), crossed, seed);
    }

    private static double[] values(ToDoubleFunction<double[]> function, List<double[]> points) {
        return points.stream().mapToDouble(function).toArray();
    }

    /** Nine in ten; counting over 200 seeds leaves two or three in a hundred to chance. */
    @Test
    void ishigami_and_homma_1990_lies_within_nine_in_ten_intervals() {
        int held = 0;
        int all = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Indices found = of(IndicesTest::ishigami, 3, 256, seed);
            for (int i = 0; i < 3; i++) {
                held += holds(found.of().get(i).first(), ISHIGAMI_FIRST[i]) ? 1 : 0;
                held += holds(found.of().get(i).total(), ISHIGAMI_TOTAL[i]) ? 1 : 0;
                all += 2;
            }
        }
        assertThat(held / (double) all).isBetween(0.87, 0.97);
    }

    private static boolean holds(Indices.Estimate estimate, double truth) {
        return truth >= estimate.low() && truth <= estimate.high();
    }

    /** So many rows leave little room for an error of the formulas. */
    @Test
    void many_rows_come_near_ishigami_and_homma_1990() {
        Indices found = of(IndicesTest::ishigami, 3, 1 << 16, 1);
        for (int i = 0; i < 3; i++) {
            Indices.Index index = found.of().get(i);
            assertNear(index.first(), ISHIGAMI_FIRST[i], 0.02);
            assertNear(index.total(), ISHIGAMI_TOTAL[i], 0.02);
            assertThat(index.total().value()).isGreaterThan(index.first().value() - 0.01);
        }
        assertNear(found.sum(), 0.7563, 0.03);
    }

    /**
     * Within four standard errors, as the interval tells them (5 to 95 % are 3.29 of them).
     *
     * @param widest the interval may be
     */
    private static void assertNear(Indices.Estimate estimate, double truth, double widest) {
        assertThat(estimate.width()).isLessThan(widest);
        assertThat(estimate.value()).isCloseTo(truth, within(4 / 3.29 * estimate.width()));
    }

    @Test
    void first_orders_sum_to_no_more_than_one_and_totals_are_no_smaller() {
        for (long seed = 1; seed <= 10; seed++) {
            Indices found = of(IndicesTest::ishigami, 3, ROWS, seed);
            assertThat(found.sum().low()).isLessThanOrEqualTo(1);
            for (Indices.Index index : found.of()) {
                assertThat(index.total().high())
                        .isGreaterThanOrEqualTo(index.first().low());
            }
        }
    }

    /** Variances of a sum add up: 1, 4 and 9 parts of 14. */
    @Test
    void an_additive_function_has_first_order_and_total_alike() {
        Indices found = of(place -> 100 + place[0] + 2 * place[1] + 3 * place[2], 3, 1 << 14, 7);
        double[] truth = {1 / 14.0, 4 / 14.0, 9 / 14.0};
        for (int i = 0; i < 3; i++) {
            assertNear(found.of().get(i).first(), truth[i], 0.05);
            assertNear(found.of().get(i).total(), truth[i], 0.05);
        }
        assertNear(found.sum(), 1, 0.06);
    }

    /** A product of two centred inputs has no first order at all. */
    @Test
    void what_acts_only_together_has_no_first_order() {
        Indices found = of(place -> (place[0] - 0.5) * (place[1] - 0.5), 3, ROWS, 3);
        for (int i = 0; i < 2; i++) {
            assertThat(0.0)
                    .isBetween(
                            found.of().get(i).first().low(),
                            found.of().get(i).first().high());
            assertThat(1.0)
                    .isBetween(
                            found.of().get(i).total().low(),
                            found.of().get(i).total().high());
            assertThat(found.of().get(i).first().high()).isLessThan(0.2);
            assertThat(found.of().get(i).total().low()).isGreaterThan(0.8);
        }
        assertThat(found.of().get(2).total().value()).isZero();
    }

    @Test
    void where_nothing_varies_there_is_no_index() {
        Indices found = of(place -> 5, 2, 64, 1);
        assertThat(found.of().get(0).first().value()).isNaN();
        assertThat(found.of().get(0).total().low()).isNaN();
        assertThat(found.sum().value()).isNaN();
    }

    @Test
    void the_seed_makes_the_digits() {
        assertThat(of(IndicesTest::ishigami, 3, 128, 5)).isEqualTo(of(IndicesTest::ishigami, 3, 128, 5));
        assertThat(of(IndicesTest::ishigami, 3, 128, 5)).isNotEqualTo(of(IndicesTest::ishigami, 3, 128, 6));
    }
}
