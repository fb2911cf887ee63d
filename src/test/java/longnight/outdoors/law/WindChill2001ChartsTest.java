package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longnight.proof.StandardTable.Kind;
import longnight.proof.StandardTable.Row;
import longnight.scenario.StandardReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The two published charts, cell by cell, after rounding halves up. */
class WindChill2001ChartsTest {

    static Stream<Row> canadian() {
        return StandardReader.read(Kind.WIND_CHILL_METRIC).rows().stream();
    }

    @ParameterizedTest
    @MethodSource("canadian")
    void canadian_as_given(Row row) {
        assertThat((double) WindChill.rounded(WindChill.metric(row.in("air_degC"), row.in("wind_km_h"))))
                .isEqualTo(row.expected());
        assertThat(WindChill.index(row.in("air_degC"), row.in("wind_km_h") / 3.6))
                .isCloseTo(row.expected(), within(0.5));
    }

    static Stream<Row> american() {
        return StandardReader.read(Kind.WIND_CHILL_UNITED_STATES).rows().stream();
    }

    @ParameterizedTest
    @MethodSource("american")
    void american_as_given(Row row) {
        assertThat((double) WindChill.rounded(WindChill.unitedStates(row.in("air_degF"), row.in("wind_mph"))))
                .isEqualTo(row.expected());
    }

    @Test
    void no_cell_is_missing() {
        assertThat(canadian()).hasSize(128);
        assertThat(american()).hasSize(131);
    }

    @Test
    void below_walking_pace_or_in_the_warm_it_is_the_air() {
        assertThat(WindChill.index(-20, 1)).isEqualTo(-20);
        assertThat(WindChill.index(12, 10)).isEqualTo(12);
        assertThat(WindChill.rounded(-27.5)).isEqualTo(-27);
    }

    /** The two forms agree within 0.053 K after conversion over the chart. */
    @Test
    void both_forms_are_one_index() {
        for (double c = -45; c <= 0; c += 5) {
            for (double kmh = 10; kmh <= 80; kmh += 10) {
                double us = (WindChill.unitedStates(c * 1.8 + 32, kmh / 1.609344) - 32) / 1.8;
                assertThat(us).isCloseTo(WindChill.metric(c, kmh), within(0.06));
            }
        }
    }

    /** The face behind the index, rebuilt: largest difference 2.1 K, root mean square 1.2 K over the chart; sea level. */
    @Test
    void osczevski_bluestein_2005_face_gives_the_index_back() {
        double squares = 0;
        int n = 0;
        for (double c = -50; c <= 0; c += 10) {
            for (double kmh = 10; kmh <= 80; kmh += 10) {
                double difference = FaceModel.equivalent(c, kmh / 3.6, 101325) - WindChill.metric(c, kmh);
                assertThat(Math.abs(difference)).isLessThan(2.2);
                squares += difference * difference;
                n++;
            }
        }
        assertThat(Math.sqrt(squares / n)).isCloseTo(1.2, within(0.15));
    }
}
