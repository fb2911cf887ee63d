package longnight.night;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import longnight.proof.StandardTable;
import longnight.scenario.StandardReader;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The temperatures that EN 342:2004 and EN 14058:2004 state for classes of clothing (from memory): at "8 h" nothing is
 * stored, at "1 h" 40 W/m2 are lost, both by the neutral criterion, walking at 1 m/s, air 0.4 m/s, humidity 50 %.
 *
 * <p>Single rows within 2.5 K, which is what rounding and the standard's own spread allow; all rows together within 1.2 K rms.
 */
class En342En14058Test {
    private static final StandardTable TABLE = StandardReader.read(StandardTable.Kind.CLOTHING_CLASSES);

    @TestFactory
    Stream<DynamicTest> temperatureOfEachRow() {
        return TABLE.rows().stream()
                .map(row -> dynamicTest(
                        row.id() + ": " + row.source(),
                        () -> assertThat(TABLE.answer(row)).isCloseTo(row.expected(), within(2.5))));
    }

    @Test
    void allRowsTogether() {
        assertThat(TABLE.rows()).hasSize(30);
        assertThat(TABLE.deviation()).isLessThanOrEqualTo(1.2);
        assertThat(TABLE.kind().tolerance()).isEqualTo(2.5);
        assertThat(TABLE.met()).isEqualTo(30);
    }
}
