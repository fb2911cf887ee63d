package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Conductivity of snow by density. */
class SturmCalonneSnowConductivityTest {

    static Stream<Row> sturm() {
        return EnvironmentOracles.of("k_snow_sturm");
    }

    @ParameterizedTest
    @MethodSource("sturm")
    void sturm_as_given(Row row) {
        row.check(SnowConductivity.sturm(row.in("rho")));
    }

    static Stream<Row> calonne() {
        return EnvironmentOracles.of("k_snow_calonne");
    }

    @ParameterizedTest
    @MethodSource("calonne")
    void calonne_as_given(Row row) {
        row.check(SnowConductivity.calonne(row.in("rho")));
    }

    /** At 300 kg/m3: Jordan 1991 0.30, Yen 1981 0.23, printed to 0.01. */
    @Test
    void rivals_bracket_the_default() {
        assertThat(SnowConductivity.jordan(300)).isCloseTo(0.30, within(0.005));
        assertThat(SnowConductivity.yen(300)).isCloseTo(0.23, within(0.005));
        assertThat(SnowConductivity.calonne(300)).isBetween(SnowConductivity.sturm(300), SnowConductivity.jordan(300));
    }

    @Test
    void denser_snow_conducts_better() {
        for (double rho = 100; rho < 550; rho += 10) {
            assertThat(SnowConductivity.calonne(rho + 10)).isGreaterThan(SnowConductivity.calonne(rho));
            assertThat(SnowConductivity.sturm(rho + 10)).isGreaterThan(SnowConductivity.sturm(rho));
        }
    }
}
