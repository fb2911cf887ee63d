package longnight.report;

import java.util.function.DoubleUnaryOperator;
import longnight.quantity.Unit;

/**
 * What is shown to people, with unit and decimals in each unit system: as many decimals as the figure is worth. Power is in
 * watts, insulation in clo, and what is told per body surface per square metre, in both.
 *
 * <p>Sources: {@link Unit}; the US quart is 57.75 cubic inches (NIST SP 811, 2008, appendix B.8).
 */
enum Measure {
    /** Engine: degrees Celsius. */
    TEMPERATURE(of(Unit.CELSIUS, 1), of(Unit.FAHRENHEIT, 1)),
    /** Engine: kelvin. */
    DIFFERENCE(of(Unit.KELVIN_DIFFERENCE, 1), of(Unit.FAHRENHEIT_DIFFERENCE, 1)),
    /** Engine: m/s. */
    WIND(of(Unit.METRE_PER_SECOND, 1), of(Unit.MILE_PER_HOUR, 1)),
    /** Depth of rain, or of snow melted; engine: mm. */
    RAIN(of("mm", 1, 1), of("in", 25.4, 2)),
    /** Engine: J. */
    HEAT(of(Unit.KILOJOULE, 0), of(Unit.KILOCALORIE, 0)),
    /** What is turned over in a whole night; engine: J. */
    TURNOVER(of(Unit.MEGAJOULE, 1), of(Unit.KILOCALORIE, 0)),
    /** Per body surface; engine: J/m2. */
    HEAT_PER_AREA(of("kJ/m²", 1e3, 0), of("kcal/m²", Unit.KILOCALORIE.toEngine(1), 0)),
    /** Of a piece that is carried; engine: J/kg. */
    HEAT_PER_MASS(of("kJ/kg", 1e3, 0), of("kcal/lb", Unit.KILOCALORIE.toEngine(1) / Unit.POUND.toEngine(1), 0)),
    /** The same by the gram; engine: J/kg. */
    HEAT_PER_GRAM(of("kJ/g", 1e6, 2), of("kcal/oz", Unit.KILOCALORIE.toEngine(1) / Unit.OUNCE.toEngine(1), 1)),
    /** Engine: W. */
    POWER(of("W", 1, 0), of("W", 1, 0)),
    /** Engine: W/m2. */
    HEAT_FLUX(of("W/m²", 1, 0), of("W/m²", 1, 0)),
    /** Engine: m2 K/W. */
    INSULATION(of(Unit.CLO, 1), of(Unit.CLO, 1)),
    /** What is carried, and water in all the clothes; engine: kg. */
    LOAD(of(Unit.KILOGRAM, 2), of(Unit.POUND, 2)),
    /** One piece, or the water in it; engine: kg. */
    PIECE(of(Unit.GRAM, 0), of(Unit.OUNCE, 1)),
    /** Engine: kg/s. */
    SWEAT_RATE(of("g/h", 1 / 3.6e6, 0), of("oz/h", Unit.OUNCE.toEngine(1) / 3600, 1)),
    /** Engine: L. */
    DRINK(of("L", 1, 1), of("US qt", 57.75e3 * Unit.CUBIC_INCH.toEngine(1), 1));

    final Form metric;
    final Form imperial;

    Measure(Form metric, Form imperial) {
        this.metric = metric;
        this.imperial = imperial;
    }

    /**
     * One way of showing it.
     *
     * @param label      the unit as people write it
     * @param fromEngine a value of the engine's in this unit
     * @param decimals   shown
     */
    record Form(String label, DoubleUnaryOperator fromEngine, int decimals) {}

    private static Form of(Unit unit, int decimals) {
        return new Form(unit.label(), unit::fromEngine, decimals);
    }

    /** A unit that is of no use in files: so much of the engine's is one of it. */
    private static Form of(String label, double size, int decimals) {
        return new Form(label, value -> value / size, decimals);
    }
}
