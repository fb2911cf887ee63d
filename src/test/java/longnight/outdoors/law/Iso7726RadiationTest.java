package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** View factors, mean radiant temperature and the radiant coefficient. */
class Iso7726RadiationTest {

    static Stream<Row> upright() {
        return EnvironmentOracles.of("sky_view_vertical_surface");
    }

    @ParameterizedTest
    @MethodSource("upright")
    void upright_as_given(Row row) {
        row.check(Radiation.skySeenUpright(Math.toRadians(row.in("horizon_deg"))));
    }

    static Stream<Row> level() {
        return EnvironmentOracles.of("sky_view_horizontal_surface");
    }

    @ParameterizedTest
    @MethodSource("level")
    void level_as_given(Row row) {
        row.check(Radiation.skySeenLevel(Math.toRadians(row.in("horizon_deg"))));
    }

    static Stream<Row> radiant() {
        return EnvironmentOracles.of("tmrt");
    }

    @ParameterizedTest
    @MethodSource("radiant")
    void radiant_as_given(Row row) {
        row.check(Radiation.meanRadiant(
                        row.in("F_sky"),
                        row.in("t_sky_c") + 273.15,
                        row.in("F_ground"),
                        row.in("t_ground_c") + 273.15,
                        row.in("F_obst"),
                        row.in("t_obst_c") + 273.15)
                - 273.15);
    }

    /** Under dense canopy: printed -12.8, computed elsewhere. */
    @Test
    void trees_warm_what_is_seen() {
        double t = Radiation.meanRadiant(0.1, 243.15, 0.5, 261.15, 0.4, 263.15) - 273.15;
        assertThat(t).isCloseTo(-12.8, within(0.1));
    }

    /** Standing, share 0.77, emissivity 0.95: 3.02, 2.39 and 4.18 at -10, -30 and 20 degC. The cold takes a third away. */
    @Test
    void radiant_coefficient_falls_with_cold() {
        double[][] rows = {{263.15, 3.02}, {243.15, 2.39}, {293.15, 4.18}};
        for (double[] row : rows) {
            assertThat(Radiation.coefficient(row[0], row[0], 0.95, 0.77)).isCloseTo(row[1], within(0.01));
        }
    }

    @Test
    void coefficient_times_difference_is_the_difference_of_fourth_powers() {
        double h = Radiation.coefficient(268, 241, 0.95, 0.7);
        assertThat(h * (268 - 241)).isCloseTo(0.95 * 0.7 * (Radiation.black(268) - Radiation.black(241)), within(1e-9));
    }

    /** -10 air, -22.2 walls, radiant 3.0: with 3.5, 10 and 20 convective, printed to 0.1. */
    @Test
    void wind_hides_the_cold_sky() {
        double[][] rows = {{3.5, -15.6}, {10, -12.8}, {20, -11.6}};
        for (double[] row : rows) {
            assertThat(Radiation.operative(row[0], -10, 3.0, -22.2)).isCloseTo(row[1], within(0.06));
        }
    }

    /** Standing, outer cloth at -8 degC among -22.1: a net loss of 40 W per m2 of body, computed elsewhere. */
    @Test
    void net_loss_to_a_clear_night() {
        double h = Radiation.coefficient(265.15, 251.05, Radiation.SURFACE_EMISSIVITY, 0.77);
        assertThat(h * 14.1).isCloseTo(40, within(0.5));
    }
}
