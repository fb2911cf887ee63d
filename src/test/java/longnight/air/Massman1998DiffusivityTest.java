package longnight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Density, diffusivity and the ratio of evaporation to convection. */
class Massman1998DiffusivityTest {

    static Stream<Row> densities() {
        return EnvironmentOracles.of("density_dry_101325");
    }

    @ParameterizedTest
    @MethodSource("densities")
    void densities_as_given(Row row) {
        row.check(AirProperties.density(row.kelvin(), 101325, 0));
    }

    static Stream<Row> diffusivities() {
        return EnvironmentOracles.of("diffusivity_101325");
    }

    @ParameterizedTest
    @MethodSource("diffusivities")
    void diffusivities_as_given(Row row) {
        row.check(AirProperties.diffusivity(row.kelvin(), 101325));
    }

    /** Comfort literature prints 16.5 (ISO 7933: 16.7) K/kPa; ice and thin air as computed, 1 % for rounding. */
    @Test
    void lewis_ratio_follows_surface_state_and_pressure() {
        double warm = AirProperties.lewisRatio(303.15, 101325, LatentHeat.vaporisation(303.15));
        double water = AirProperties.lewisRatio(273.15, 101325, LatentHeat.vaporisation(273.15));
        double ice = AirProperties.lewisRatio(273.15, 101325, LatentHeat.sublimation(273.15));
        double high =
                AirProperties.lewisRatio(273.15, StandardAtmosphere.pressure(3000), LatentHeat.sublimation(273.15));
        assertThat(warm * 1000).isCloseTo(16.5, within(0.2));
        assertThat(water * 1000).isCloseTo(17.0, within(0.17));
        assertThat(ice * 1000).isCloseTo(19.3, within(0.19));
        assertThat(high * 1000).isCloseTo(27.9, within(0.28));
    }
}
