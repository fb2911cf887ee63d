package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Heat into a half-space through a resistance. */
class CarslawJaeger1959GroundContactTest {

    static Stream<Row> fluxes() {
        return EnvironmentOracles.of("contact_flux_resistance_semi_infinite");
    }

    @ParameterizedTest
    @MethodSource("fluxes")
    void fluxes_as_given(Row row) {
        row.check(GroundContact.flux(row.in("dT"), row.in("R"), row.in("effusivity"), row.in("t_s")));
    }

    /** Commons Math's erfc is good to about 1e-13 relative; times exp(x^2) it serves until 5. */
    @Test
    void scaled_error_function() {
        for (double x = 0; x < 5; x += 0.0371) {
            assertThat(GroundContact.erfcx(x) / (Math.exp(x * x) * Erf.erfc(x))).isCloseTo(1, within(1e-10));
        }
        double x = 40;
        double series = 1 / (x * Math.sqrt(Math.PI)) * (1 - 1 / (2 * x * x) + 3 / (4 * x * x * x * x));
        assertThat(GroundContact.erfcx(x) / series).isCloseTo(1, within(1e-9));
    }

    /** Disc of 0.2 m radius on snow, soil, rock and litter: printed to two digits, computed elsewhere. */
    @Test
    void edge_term_of_a_disc() {
        double[][] rows = {{0.3, 1.9, 0.05}, {1.4, 8.9, 0.05}, {2.9, 18, 0.5}, {0.1, 0.6, 0.05}};
        for (double[] row : rows) {
            assertThat(GroundContact.edgeConductance(row[0], 0.2)).isCloseTo(row[1], within(row[2]));
        }
    }

    @Test
    void touching_bodies_meet_between() {
        assertThat(GroundContact.interfaceTemperature(1200, 30, 2430, -10)).isBetween(-10.0, 30.0);
        assertThat(GroundContact.interfaceTemperature(1000, 30, 1000, -10)).isEqualTo(10);
    }
}
