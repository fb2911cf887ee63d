package longnight.quantity;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The closed table of units. A value in a unit becomes the engine's value by {@code (value + shift) * times / by}; every
 * number in the table is exact unless its comment says otherwise.
 *
 * <p>Sources: inch, foot, yard, mile, pound and knot are exact by definition (NIST SP 811, 2008, appendix B.8); so is
 * the international-table Btu (1055.05585262 J). clo and tog by definition: 0.155 and 0.1 m2 K/W (ISO 9920:2007). One
 * okta is an eighth of the sky (WMO No. 8).
 */
public enum Unit {
    CELSIUS(Dimension.TEMPERATURE, 0, 1, 1, "°C", "C", "degC"),
    FAHRENHEIT(Dimension.TEMPERATURE, -32, 5, 9, "°F", "F", "degF"),
    KELVIN(Dimension.TEMPERATURE, -273.15, 1, 1, "K"),

    KELVIN_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, 1, 1, "K"),
    CELSIUS_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, 1, 1, "°C", "C", "degC"),
    FAHRENHEIT_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, 5, 9, "°F", "F", "degF"),

    METRE(Dimension.LENGTH, 1, 1, "m"),
    CENTIMETRE(Dimension.LENGTH, 1, 100, "cm"),
    MILLIMETRE(Dimension.LENGTH, 1, 1000, "mm"),
    KILOMETRE(Dimension.LENGTH, 1000, 1, "km"),
    INCH(Dimension.LENGTH, Exact.INCH, 1, "in", "inch", "inches"),
    FOOT(Dimension.LENGTH, Exact.FOOT, 1, "ft", "foot", "feet"),

    SQUARE_METRE(Dimension.AREA, 1, 1, "m2"),
    SQUARE_CENTIMETRE(Dimension.AREA, 1, 1e4, "cm2"),
    SQUARE_INCH(Dimension.AREA, Exact.INCH * Exact.INCH, 1, "in2"),
    SQUARE_FOOT(Dimension.AREA, Exact.FOOT * Exact.FOOT, 1, "ft2"),

    LITRE(Dimension.VOLUME, 1, 1000, "L", "l", "litre", "litres", "liter", "liters"),
    CUBIC_METRE(Dimension.VOLUME, 1, 1, "m3"),
    CUBIC_INCH(Dimension.VOLUME, Exact.CUBIC_INCH, 1, "in3", "cuin"),

    GRAM(Dimension.MASS, 1, 1000, "g"),
    KILOGRAM(Dimension.MASS, 1, 1, "kg"),
    OUNCE(Dimension.MASS, Exact.OUNCE, 1, "oz"),
    POUND(Dimension.MASS, Exact.POUND, 1, "lb", "lbs"),

    GRAM_PER_SQUARE_METRE(Dimension.AREAL_MASS, 1, 1000, "g/m2", "gsm"),
    KILOGRAM_PER_SQUARE_METRE(Dimension.AREAL_MASS, 1, 1, "kg/m2"),
    OUNCE_PER_SQUARE_YARD(Dimension.AREAL_MASS, Exact.OUNCE, Exact.YARD * Exact.YARD, "oz/yd2"),

    CUBIC_INCH_PER_OUNCE(Dimension.FILL_POWER, Exact.CUBIC_INCH, Exact.OUNCE, "in3/oz", "cuin/oz", "cuin"),
    CUBIC_CENTIMETRE_PER_GRAM(Dimension.FILL_POWER, 1, 1000, "cm3/g"),
    CUBIC_METRE_PER_KILOGRAM(Dimension.FILL_POWER, 1, 1, "m3/kg"),

    METRE_PER_SECOND(Dimension.SPEED, 1, 1, "m/s"),
    KILOMETRE_PER_HOUR(Dimension.SPEED, 1, 3.6, "km/h", "kph"),
    MILE_PER_HOUR(Dimension.SPEED, 0.44704, 1, "mph"),
    KNOT(Dimension.SPEED, 1852, 3600, "kt", "kn", "knot", "knots"),

    PASCAL(Dimension.PRESSURE, 1, 1, "Pa"),
    HECTOPASCAL(Dimension.PRESSURE, 100, 1, "hPa", "mbar", "mb"),
    KILOPASCAL(Dimension.PRESSURE, 1000, 1, "kPa"),
    /** Conventional inch of mercury at 0 °C; 3386.389 Pa (NIST SP 811), exact to its last digit only. */
    INCH_OF_MERCURY(Dimension.PRESSURE, 3386.389, 1, "inHg"),

    SECOND(Dimension.TIME, 1, 1, "s"),
    MINUTE(Dimension.TIME, 60, 1, "min"),
    HOUR(Dimension.TIME, 3600, 1, "h", "hour", "hours"),

    JOULE(Dimension.ENERGY, 1, 1, "J"),
    KILOJOULE(Dimension.ENERGY, 1000, 1, "kJ"),
    MEGAJOULE(Dimension.ENERGY, 1e6, 1, "MJ"),
    /** Thermochemical, as on food labels. */
    KILOCALORIE(Dimension.ENERGY, 4184, 1, "kcal", "Cal"),

    JOULE_PER_SQUARE_METRE(Dimension.HEAT_PER_AREA, 1, 1, "J/m2"),
    KILOJOULE_PER_SQUARE_METRE(Dimension.HEAT_PER_AREA, 1000, 1, "kJ/m2"),
    MEGAJOULE_PER_SQUARE_METRE(Dimension.HEAT_PER_AREA, 1e6, 1, "MJ/m2"),

    YEAR(Dimension.AGE, 1, 1, "years", "year", "y"),

    PERCENT(Dimension.FRACTION, 1, 100, "%", "percent"),

    PERCENT_OF_SKY(Dimension.CLOUD, 1, 100, "%", "percent"),
    OKTA(Dimension.CLOUD, 1, 8, "oktas", "okta"),
    TENTH_OF_SKY(Dimension.CLOUD, 1, 10, "tenths", "tenth"),

    SQUARE_METRE_KELVIN_PER_WATT(Dimension.THERMAL_RESISTANCE, 1, 1, "m2K/W"),
    CLO(Dimension.THERMAL_RESISTANCE, 0.155, 1, "clo"),
    TOG(Dimension.THERMAL_RESISTANCE, 0.1, 1, "tog"),
    R_US(
            Dimension.THERMAL_RESISTANCE,
            Exact.FOOT * Exact.FOOT * 3600 * 5,
            Exact.BTU * 9,
            "ft2hF/Btu",
            "R(US)",
            "ft2h°F/Btu",
            "hft2F/Btu",
            "hft2°F/Btu"),

    SQUARE_METRE_PASCAL_PER_WATT(Dimension.EVAPORATIVE_RESISTANCE, 1, 1, "m2Pa/W"),

    LITRE_PER_SQUARE_METRE_SECOND(Dimension.AIR_PERMEABILITY, 1, 1, "L/m2/s", "L/m2s", "L/(m2s)", "l/m2/s", "l/m2s"),
    MILLIMETRE_PER_SECOND(Dimension.AIR_PERMEABILITY, 1, 1, "mm/s"),
    CUBIC_FOOT_PER_MINUTE_SQUARE_FOOT(
            Dimension.AIR_PERMEABILITY, Exact.FOOT * 1000, 60, "cfm", "cfm/ft2", "CFM", "ft3/min/ft2", "ft3/ft2/min"),

    WATT_PER_SQUARE_METRE(Dimension.HEAT_FLUX, 1, 1, "W/m2"),

    MILLIMETRE_PER_HOUR(Dimension.PRECIPITATION, 1, 1, "mm/h"),
    INCH_PER_HOUR(Dimension.PRECIPITATION, 25.4, 1, "in/h"),

    WATT_PER_METRE_KELVIN(Dimension.CONDUCTIVITY, 1, 1, "W/mK", "W/m/K", "W/(mK)"),

    KILOJOULE_PER_CUBIC_METRE_KELVIN(Dimension.VOLUMETRIC_HEAT_CAPACITY, 1000, 1, "kJ/m3K", "kJ/m3/K", "kJ/(m3K)"),
    MEGAJOULE_PER_CUBIC_METRE_KELVIN(Dimension.VOLUMETRIC_HEAT_CAPACITY, 1e6, 1, "MJ/m3K", "MJ/m3/K", "MJ/(m3K)"),

    JOULE_PER_SQUARE_METRE_KELVIN(Dimension.AREAL_HEAT_CAPACITY, 1, 1, "J/m2K", "J/m2/K", "J/(m2K)"),

    DEGREE(Dimension.ANGLE, Math.PI, 180, "°", "deg"),
    RADIAN(Dimension.ANGLE, 1, 1, "rad"),

    MILLILITRE_PER_KILOGRAM_MINUTE(Dimension.OXYGEN_UPTAKE, 1, 1, "mL/kg/min", "ml/kg/min", "mL/(kgmin)", "ml/(kgmin)");

    private static final Map<Dimension, Map<String, Unit>> BY_SPELLING = new HashMap<>();

    static {
        for (Unit unit : values()) {
            Map<String, Unit> spellings = BY_SPELLING.computeIfAbsent(unit.dimension, key -> new HashMap<>());
            for (String spelling : unit.spellings) {
                @Nullable Unit twin = spellings.put(spelling, unit);
                if (twin != null) {
                    throw new IllegalStateException(spelling + " stands for " + twin + " and for " + unit);
                }
            }
        }
    }

    private final Dimension dimension;
    private final double shift;
    private final double times;
    private final double by;
    private final List<String> spellings;

    Unit(Dimension dimension, double times, double by, String... spellings) {
        this(dimension, 0, times, by, spellings);
    }

    Unit(Dimension dimension, double shift, double times, double by, String... spellings) {
        this.dimension = dimension;
        this.shift = shift;
        this.times = times;
        this.by = by;
        this.spellings = List.of(spellings);
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Accepted spellings, the one we write first. */
    public List<String> spellings() {
        return spellings;
    }

    /** The spelling we write. */
    public String label() {
        return spellings.get(0);
    }

    /** A value in this unit as the engine reckons it ({@link Dimension#engineUnit()}). */
    public double toEngine(double value) {
        return (value + shift) * times / by;
    }

    /** The engine's value in this unit. */
    public double fromEngine(double value) {
        return value * by / times - shift;
    }

    /** All units of a dimension, in the order of the table. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .toList();
    }

    /** The unit with this spelling, already stripped of blanks, dots and raised digits; null when there is none. */
    static @Nullable Unit find(String plain, Dimension dimension) {
        return BY_SPELLING.getOrDefault(dimension, Map.of()).get(plain);
    }

    private static final class Exact {
        static final double INCH = 0.0254; // m
        static final double FOOT = 0.3048; // m
        static final double YARD = 0.9144; // m
        static final double POUND = 0.45359237; // kg
        static final double OUNCE = 0.028349523125; // kg, a sixteenth of a pound
        static final double CUBIC_INCH = 1.6387064e-5; // m3
        static final double BTU = 1055.05585262; // J, international table
    }
}
