package longnight.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantitiesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-12 °C|TEMPERATURE|-12",
                "−12 °C|TEMPERATURE|-12",
                "- 12°C|TEMPERATURE|-12",
                "10 °F|TEMPERATURE|-12.222222222222221",
                "261.15 K|TEMPERATURE|-12",
                "-4 °C|TEMPERATURE_DIFFERENCE|-4",
                "9 F|TEMPERATURE_DIFFERENCE|5",
                "35 km/h|SPEED|9.722222222222221",
                "20mph|SPEED|8.9408",
                "85 g|MASS|0.085",
                "100 g/m²|AREAL_MASS|0.1",
                "100 g / m^2|AREAL_MASS|0.1",
                "3 oz/yd2|AREAL_MASS|0.10171724288",
                "700 in³/oz|FILL_POWER|0.4046255",
                "700 cuin/oz|FILL_POWER|0.4046255",
                "2 clo|THERMAL_RESISTANCE|0.31",
                "2 R (US)|THERMAL_RESISTANCE|0.352220",
                "0.3 m²·K/W|THERMAL_RESISTANCE|0.3",
                "1 cfm|AIR_PERMEABILITY|5.08",
                "8 L/(m2 s)|AIR_PERMEABILITY|8",
                "6 oktas|CLOUD|0.75",
                "+.5 h|TIME|1800",
                "1e3 Pa|PRESSURE|1000",
                "1.5\u00a0m|LENGTH|1.5",
            })
    void readsWhatPeopleWrite(String text, Dimension dimension, double expected) {
        // The expected values above carry six digits or more.
        assertThat(Quantities.parse(text, dimension)).isCloseTo(expected, within(2e-6 * Math.abs(expected)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100|AREAL_MASS|has no unit|did you mean \"100 g/m2\" or \"100 oz/yd2\"?",
                "3 oz|AREAL_MASS|is not a mass per area|did you mean \"3 g/m2\" or \"3 oz/yd2\"?",
                "100 g|AREAL_MASS|is not a mass per area|did you mean \"100 g/m2\" or \"100 oz/yd2\"?",
                "-12|TEMPERATURE|has no unit|did you mean \"-12 °C\" or \"-12 °F\"?",
                "35 kmh|SPEED|is not a speed|did you mean \"km/h\"?",
                "35 KM/H|SPEED|is not a speed|did you mean \"km/h\"?",
                "2 R|THERMAL_RESISTANCE|is not a thermal resistance|either \"2 ft2hF/Btu\" or \"2 m2K/W\"",
                "1,5 kg|MASS|decimal comma|did you mean \"1.5 kg\"?",
                "1,000 Pa|PRESSURE|thousands separator|''",
                "1'000 Pa|PRESSURE|thousands separator|''",
                "12 000 Pa|PRESSURE|thousands separator|''",
                "1_000 Pa|PRESSURE|thousands separator|''",
                "NaN|MASS|not a finite number|''",
                "nan kg|MASS|not a finite number|''",
                ".nan|MASS|not a finite number|''",
                "Infinity kg|MASS|not a finite number|''",
                "-inf °C|TEMPERATURE|not a finite number|''",
                "1e999 kg|MASS|not a finite number|''",
                "1e308 km|LENGTH|not a finite number|''",
                "heavy|MASS|does not begin with a number|''",
                "0x10 kg|MASS|is not a mass|''",
                "80 % g|MASS|is not a mass|''",
            })
    void refusesWithAReason(String text, Dimension dimension, String found, String hint) {
        QuantityFault fault = catchThrowableOfType(QuantityFault.class, () -> Quantities.parse(text, dimension));
        assertThat(fault).as(text).isNotNull();
        assertThat(fault.found()).contains(found).contains(text);
        assertThat(fault.allowed()).isNotBlank();
        assertThat(fault.hint()).contains(hint);
    }

    /** A number that carries its unit elsewhere must not carry another. */
    @Test
    void plainNumbers() {
        assertThat(Quantities.number("−3.5")).isEqualTo(-3.5);
        assertThat(catchThrowableOfType(QuantityFault.class, () -> Quantities.number("3 km/h")))
                .isNotNull();
        assertThat(Quantities.unit("km/h", Dimension.SPEED)).isEqualTo(Unit.KILOMETRE_PER_HOUR);
        QuantityFault fault = catchThrowableOfType(QuantityFault.class, () -> Quantities.unit("kmh", Dimension.SPEED));
        assertThat(fault.hint()).isEqualTo("did you mean \"km/h\"?");
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everySpellingIsRead(Unit unit) {
        for (String spelling : unit.spellings()) {
            assertThat(Quantities.unit(spelling, unit.dimension())).as(spelling).isEqualTo(unit);
            assertThat(Quantities.parse("7 " + spelling, unit.dimension())).isEqualTo(unit.toEngine(7));
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void examplesAreGood(Dimension dimension) {
        assertThat(Quantities.isA(dimension.example(), dimension)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-12|TEMPERATURE|METRIC|-12.0 °C",
                "-12|TEMPERATURE|IMPERIAL|10.4 °F",
                "-0.001|TEMPERATURE|METRIC|0.0 °C",
                "4|TEMPERATURE_DIFFERENCE|IMPERIAL|7.2 °F",
                "0.1|AREAL_MASS|METRIC|100 g/m2",
                "0.1|AREAL_MASS|IMPERIAL|2.9 oz/yd2",
                "0.755|MASS|METRIC|0.76 kg",
                "9.7222|SPEED|IMPERIAL|21.7 mph",
                "0.31|THERMAL_RESISTANCE|METRIC|2.00 clo",
                "0.5|FRACTION|METRIC|50 %",
                "0.349066|ANGLE|METRIC|20°",
                "NaN|PRESSURE|METRIC|unknown",
            })
    void writesForPeople(double value, Dimension dimension, UnitSystem system, String expected) {
        assertThat(Quantities.format(value, dimension, system)).isEqualTo(expected);
    }

    /** What is written is read again, to the last digit shown. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsWrittenCanBeRead(Dimension dimension) {
        for (UnitSystem system : UnitSystem.values()) {
            double value = system.unitOf(dimension).toEngine(12);
            String text = Quantities.format(value, dimension, system);
            assertThat(Quantities.parse(text, dimension)).isCloseTo(value, within(1e-9 * Math.abs(value)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "cloo, clo",
        "hieght, height",
        "Mass, mass",
        "posturre, posture",
        "wnid, wind",
        "weight, height",
        "xyz, ''",
        "q, ''"
    })
    void nearestSpelling(String word, String expected) {
        assertThat(Spelling.nearest(word, java.util.List.of("clo", "height", "mass", "posture", "wind")))
                .isEqualTo(expected);
    }
}
