package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import longnight.air.StandardAtmosphere;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A cylinder across the wind, as written and in the form for the time loop. */
class ChurchillBernstein1977CylinderTest {

    static Stream<Row> cylinders() {
        return EnvironmentOracles.of("hc_cylinder_churchill_bernstein");
    }

    @ParameterizedTest
    @MethodSource("cylinders")
    void cylinders_as_given(Row row) {
        row.check(exact(row));
        row.check(CylinderFlow.forced(row.in("v_ms"), row.in("d_m"), row.in("t_film_k"), row.in("p_pa")));
    }

    private static double exact(Row row) {
        return CylinderFlow.forcedExact(row.in("v_ms"), row.in("d_m"), row.in("t_film_k"), row.in("p_pa"));
    }

    /** Interpolation over 0.5 K costs h^2 f''/8 relative, 2e-6 at 200 K; 1e-5 leaves room. */
    @Test
    void the_fast_form_is_the_same_law() {
        for (double v = 0; v <= 30; v = v * 1.7 + 0.03) {
            for (double d : new double[] {0.02, 0.08, 0.18, 0.5}) {
                for (double t = 200.3; t < 310; t += 9.1) {
                    for (double p : new double[] {50e3, 101325}) {
                        assertThat(CylinderFlow.forced(v, d, t, p) / CylinderFlow.forcedExact(v, d, t, p))
                                .isCloseTo(1, within(1e-5));
                    }
                }
            }
        }
    }

    @Test
    void more_wind_and_thinner_limbs_lose_more() {
        for (double v = 0.05; v < 30; v *= 1.3) {
            double h = CylinderFlow.forced(v, 0.16, 263.15, 101325);
            assertThat(CylinderFlow.forced(v * 1.01, 0.16, 263.15, 101325)).isGreaterThan(h);
            assertThat(CylinderFlow.forced(v, 0.17, 263.15, 101325)).isLessThan(h);
            assertThat(CylinderFlow.forced(v, 0.16, 263.15, 80e3)).isLessThan(h);
        }
    }

    /** Convection against sea level at 1500, 3000 and 5000 m: 0.89, 0.79, 0.68 printed for several speeds together, so 0.02. */
    @Test
    void thin_air_carries_less() {
        double[][] rows = {{1500, 0.89}, {3000, 0.79}, {5000, 0.68}};
        for (double[] row : rows) {
            double ratio = CylinderFlow.forced(5, 0.16, 263.15, StandardAtmosphere.pressure(row[0]))
                    / CylinderFlow.forced(5, 0.16, 263.15, 101325);
            assertThat(ratio).isCloseTo(row[1], within(0.02));
        }
    }

    /** Hilpert's correlation for Re 4e3 to 4e4, C 0.193 and n 0.618: prints 30.8 at 5 m/s and 0.08 m. */
    @Test
    void hilpert_agrees_where_it_holds() {
        assertThat(CylinderFlow.forced(5, 0.08, 263.15, 101325)).isCloseTo(30.8, within(0.1));
    }

    /** Whole body, no turbulence, no natural part: check column printed to 0.1 W/(m2 K), computed elsewhere. */
    @Test
    void composite_of_the_body_matches_the_comparison() {
        double[][] column = {{0.5, 6.5}, {1, 9.5}, {2, 14.1}, {5, 24.6}, {10, 38.8}, {20, 63.4}};
        for (double[] row : column) {
            assertThat(composite(row[0], 0)).isCloseTo(row[1], within(0.051));
        }
    }

    /** Without turbulence the composite stays near the manikin in a calm stream, de Dear et al. 1997. */
    @Test
    void composite_stays_within_ten_percent_of_de_dear_1997() {
        for (double v : new double[] {0.5, 1, 2, 3, 5}) {
            assertThat(composite(v, 1)).isCloseTo(PublishedFilms.deDear1997(v), withinPercentage(10));
        }
    }

    /** Area mean over the segments, the neck (0.029 of 1.868 m2, 0.12 m thick) apart from the head as in the comparison. */
    private static double composite(double v, double naturalShare) {
        double[] h = new double[BodySegment.COUNT];
        for (BodySegment segment : BodySegment.values()) {
            h[segment.ordinal()] = mixed(v, naturalShare, segment, PostureExchange.diameter(segment));
        }
        double neck = mixed(v, naturalShare, BodySegment.HEAD, 0.12) - h[BodySegment.HEAD.ordinal()];
        return PostureExchange.areaMean(h) + 0.029 / 1.868 * neck;
    }

    private static double mixed(double v, double naturalShare, BodySegment segment, double diameter) {
        return Convection.mixed(
                naturalShare * Convection.natural(Posture.STANDING, segment, 10),
                CylinderFlow.forced(v, diameter, 263.15, 101325));
    }
}
