package longnight.quantity;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.text.ParsePosition;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import systems.uom.ucum.format.UCUMFormat;

/** Every factor of our table against the Unified Code for Units of Measure, by a library of its own. */
class UcumFactorsTest {
    /** Units that UCUM does not have; their definitions are checked below. */
    private static final Set<Unit> UNKNOWN_TO_UCUM = EnumSet.of(Unit.CLO, Unit.TOG, Unit.OKTA, Unit.TENTH_OF_SKY);

    private static final Map<Dimension, String> ENGINE = Map.ofEntries(
            entry(Dimension.TEMPERATURE, "Cel"),
            entry(Dimension.TEMPERATURE_DIFFERENCE, "K"),
            entry(Dimension.LENGTH, "m"),
            entry(Dimension.AREA, "m2"),
            entry(Dimension.VOLUME, "m3"),
            entry(Dimension.MASS, "kg"),
            entry(Dimension.AREAL_MASS, "kg/m2"),
            entry(Dimension.FILL_POWER, "m3/kg"),
            entry(Dimension.SPEED, "m/s"),
            entry(Dimension.PRESSURE, "Pa"),
            entry(Dimension.TIME, "s"),
            entry(Dimension.ENERGY, "J"),
            entry(Dimension.HEAT_PER_AREA, "J/m2"),
            entry(Dimension.AGE, "a"),
            entry(Dimension.FRACTION, "1"),
            entry(Dimension.CLOUD, "1"),
            entry(Dimension.THERMAL_RESISTANCE, "m2.K/W"),
            entry(Dimension.EVAPORATIVE_RESISTANCE, "m2.Pa/W"),
            entry(Dimension.AIR_PERMEABILITY, "L/m2/s"),
            entry(Dimension.HEAT_FLUX, "W/m2"),
            entry(Dimension.PRECIPITATION, "mm/h"),
            entry(Dimension.CONDUCTIVITY, "W/m/K"),
            entry(Dimension.VOLUMETRIC_HEAT_CAPACITY, "J/m3/K"),
            entry(Dimension.AREAL_HEAT_CAPACITY, "J/m2/K"),
            entry(Dimension.ANGLE, "rad"),
            entry(Dimension.OXYGEN_UPTAKE, "mL/kg/min"));

    private static final Map<Unit, String> UCUM = Map.ofEntries(
            entry(Unit.CELSIUS, "Cel"),
            entry(Unit.FAHRENHEIT, "[degF]"),
            entry(Unit.KELVIN, "K"),
            entry(Unit.KELVIN_DIFFERENCE, "K"),
            entry(Unit.CELSIUS_DIFFERENCE, "Cel"),
            entry(Unit.FAHRENHEIT_DIFFERENCE, "[degF]"),
            entry(Unit.METRE, "m"),
            entry(Unit.CENTIMETRE, "cm"),
            entry(Unit.MILLIMETRE, "mm"),
            entry(Unit.KILOMETRE, "km"),
            entry(Unit.INCH, "[in_i]"),
            entry(Unit.FOOT, "[ft_i]"),
            entry(Unit.SQUARE_METRE, "m2"),
            entry(Unit.SQUARE_CENTIMETRE, "cm2"),
            entry(Unit.SQUARE_INCH, "[in_i]2"),
            entry(Unit.SQUARE_FOOT, "[ft_i]2"),
            entry(Unit.LITRE, "L"),
            entry(Unit.CUBIC_METRE, "m3"),
            entry(Unit.CUBIC_INCH, "[in_i]3"),
            entry(Unit.GRAM, "g"),
            entry(Unit.KILOGRAM, "kg"),
            entry(Unit.OUNCE, "[oz_av]"),
            entry(Unit.POUND, "[lb_av]"),
            entry(Unit.GRAM_PER_SQUARE_METRE, "g/m2"),
            entry(Unit.KILOGRAM_PER_SQUARE_METRE, "kg/m2"),
            entry(Unit.OUNCE_PER_SQUARE_YARD, "[oz_av]/[yd_i]2"),
            entry(Unit.CUBIC_INCH_PER_OUNCE, "[in_i]3/[oz_av]"),
            entry(Unit.CUBIC_CENTIMETRE_PER_GRAM, "cm3/g"),
            entry(Unit.CUBIC_METRE_PER_KILOGRAM, "m3/kg"),
            entry(Unit.METRE_PER_SECOND, "m/s"),
            entry(Unit.KILOMETRE_PER_HOUR, "km/h"),
            entry(Unit.MILE_PER_HOUR, "[mi_i]/h"),
            entry(Unit.KNOT, "[kn_i]"),
            entry(Unit.PASCAL, "Pa"),
            entry(Unit.HECTOPASCAL, "hPa"),
            entry(Unit.KILOPASCAL, "kPa"),
            entry(Unit.INCH_OF_MERCURY, "[in_i'Hg]"),
            entry(Unit.SECOND, "s"),
            entry(Unit.MINUTE, "min"),
            entry(Unit.HOUR, "h"),
            entry(Unit.JOULE, "J"),
            entry(Unit.KILOJOULE, "kJ"),
            entry(Unit.MEGAJOULE, "MJ"),
            entry(Unit.KILOCALORIE, "kcal"),
            entry(Unit.JOULE_PER_SQUARE_METRE, "J/m2"),
            entry(Unit.KILOJOULE_PER_SQUARE_METRE, "kJ/m2"),
            entry(Unit.MEGAJOULE_PER_SQUARE_METRE, "MJ/m2"),
            entry(Unit.YEAR, "a"),
            entry(Unit.PERCENT, "%"),
            entry(Unit.PERCENT_OF_SKY, "%"),
            entry(Unit.SQUARE_METRE_KELVIN_PER_WATT, "m2.K/W"),
            entry(Unit.R_US, "[ft_i]2.h.K/[Btu_IT]"),
            entry(Unit.SQUARE_METRE_PASCAL_PER_WATT, "m2.Pa/W"),
            entry(Unit.LITRE_PER_SQUARE_METRE_SECOND, "L/m2/s"),
            entry(Unit.MILLIMETRE_PER_SECOND, "mm/s"),
            entry(Unit.CUBIC_FOOT_PER_MINUTE_SQUARE_FOOT, "[ft_i]3/min/[ft_i]2"),
            entry(Unit.WATT_PER_SQUARE_METRE, "W/m2"),
            entry(Unit.MILLIMETRE_PER_HOUR, "mm/h"),
            entry(Unit.INCH_PER_HOUR, "[in_i]/h"),
            entry(Unit.WATT_PER_METRE_KELVIN, "W/m/K"),
            entry(Unit.KILOJOULE_PER_CUBIC_METRE_KELVIN, "kJ/m3/K"),
            entry(Unit.MEGAJOULE_PER_CUBIC_METRE_KELVIN, "MJ/m3/K"),
            entry(Unit.JOULE_PER_SQUARE_METRE_KELVIN, "J/m2/K"),
            entry(Unit.DEGREE, "deg"),
            entry(Unit.RADIAN, "rad"),
            entry(Unit.MILLILITRE_PER_KILOGRAM_MINUTE, "mL/kg/min"));

    /** Of the resistance: a special unit like [degF] does not enter products, so K stands in UCUM's text, times 5/9. */
    private static final double FAHRENHEIT_STEP = 5.0 / 9;

    @Test
    void noUnitGoesUnchecked() {
        Set<Unit> checked = EnumSet.copyOf(UCUM.keySet());
        checked.addAll(UNKNOWN_TO_UCUM);
        assertThat(checked).containsExactlyInAnyOrder(Unit.values());
        assertThat(ENGINE.keySet()).containsExactlyInAnyOrder(Dimension.values());
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void agreesWithUcum(Unit unit) {
        if (UNKNOWN_TO_UCUM.contains(unit)) {
            return;
        }
        UnitConverter converter = converter(UCUM.get(unit), ENGINE.get(unit.dimension()));
        boolean difference = unit.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
        for (double value : new double[] {-12.5, 0, 1, 98.6, 700}) {
            double theirs = converter.convert(value) - (difference ? converter.convert(0.0) : 0);
            if (unit == Unit.R_US) {
                theirs *= FAHRENHEIT_STEP;
            }
            // UCUM rounds the metre of mercury to 133.3220 kPa, 3e-6 below the conventional one. All others: rounding
            // of
            // doubles; temperatures pass through 273.15, hence the absolute part.
            double tolerance = unit == Unit.INCH_OF_MERCURY ? 4e-6 : 1e-12;
            assertThat(unit.toEngine(value))
                    .as("%s %s", value, unit)
                    .isCloseTo(theirs, within(tolerance * Math.abs(theirs) + (isTemperature(unit) ? 1e-10 : 0)));
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void comesBack(Unit unit) {
        for (double value : new double[] {-12.5, 0, 1, 98.6, 700}) {
            assertThat(unit.fromEngine(unit.toEngine(value))).isCloseTo(value, within(1e-12 * (300 + Math.abs(value))));
        }
    }

    /** ISO 9920:2007 for clo and tog, WMO No. 8 for the okta. */
    @Test
    void definitionsThatUcumLacks() {
        assertThat(Unit.CLO.toEngine(0.7)).isCloseTo(0.1085, within(1e-15));
        assertThat(Unit.TOG.toEngine(10)).isCloseTo(1, within(1e-15));
        assertThat(Unit.OKTA.toEngine(3)).isEqualTo(0.375);
        assertThat(Unit.TENTH_OF_SKY.toEngine(7)).isEqualTo(0.7);
    }

    private static boolean isTemperature(Unit unit) {
        return unit.dimension() == Dimension.TEMPERATURE || unit.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
    }

    private static UnitConverter converter(String from, String to) {
        try {
            return parse(from).getConverterToAny(parse(to));
        } catch (javax.measure.IncommensurableException fault) {
            throw new AssertionError(from + " is not commensurable with " + to, fault);
        }
    }

    private static javax.measure.Unit<?> parse(String text) {
        return UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE).parse(text, new ParsePosition(0));
    }
}
