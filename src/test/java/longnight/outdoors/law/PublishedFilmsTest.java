package longnight.outdoors.law;

import java.util.stream.Stream;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole-body convection of de Dear et al. 1997, ISO 7730 and ISO 7933. */
class PublishedFilmsTest {

    static Stream<Row> deDear() {
        return EnvironmentOracles.of("hc_wholebody_dedear");
    }

    @ParameterizedTest
    @MethodSource("deDear")
    void deDear_as_given(Row row) {
        row.check(PublishedFilms.deDear1997(row.in("v_ms")));
    }

    static Stream<Row> iso7730() {
        return EnvironmentOracles.of("hc_iso7730_forced");
    }

    @ParameterizedTest
    @MethodSource("iso7730")
    void iso7730_as_given(Row row) {
        row.check(PublishedFilms.iso7730(row.in("v_ms"), 0));
    }

    static Stream<Row> iso7933() {
        return EnvironmentOracles.of("hc_iso7933");
    }

    @ParameterizedTest
    @MethodSource("iso7933")
    void iso7933_as_given(Row row) {
        row.check(PublishedFilms.iso7933(row.in("v_ms"), 0));
    }
}
