package longnight.air;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pressure against altitude, viscosity and conductivity. */
class UsStandardAtmosphere1976Test {

    static Stream<Row> pressures() {
        return EnvironmentOracles.of("pressure_isa");
    }

    @ParameterizedTest
    @MethodSource("pressures")
    void pressures_as_given(Row row) {
        row.check(StandardAtmosphere.pressure(row.in("h_m")));
    }

    static Stream<Row> viscosities() {
        return EnvironmentOracles.of("viscosity");
    }

    @ParameterizedTest
    @MethodSource("viscosities")
    void viscosities_as_given(Row row) {
        row.check(AirProperties.viscosity(row.kelvin()));
    }

    static Stream<Row> conductivities() {
        return EnvironmentOracles.of("conductivity");
    }

    @ParameterizedTest
    @MethodSource("conductivities")
    void conductivities_as_given(Row row) {
        row.check(AirProperties.conductivity(row.kelvin()));
    }
}
