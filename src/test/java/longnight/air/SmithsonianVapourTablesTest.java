package longnight.air;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Goff-Gratch values of the Smithsonian Meteorological Tables: another scale of an older time, hence 1 % and 0.5 %. */
class SmithsonianVapourTablesTest {

    static Stream<Row> water() {
        return EnvironmentOracles.of("es_water_smithsonian");
    }

    @ParameterizedTest
    @MethodSource("water")
    void water_as_given(Row row) {
        row.check(SaturationVapour.overWater(row.kelvin()));
    }

    static Stream<Row> ice() {
        return EnvironmentOracles.of("es_ice_smithsonian");
    }

    @ParameterizedTest
    @MethodSource("ice")
    void ice_as_given(Row row) {
        row.check(SaturationVapour.overIce(row.kelvin()));
    }
}
