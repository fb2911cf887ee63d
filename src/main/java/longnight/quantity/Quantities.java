package longnight.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Quantities as people write them, "100 g/m2" or "−12 °C", to the engine's numbers. A number without a unit is refused,
 * and so is whatever can be read in two ways.
 */
public final class Quantities {
    private static final String NUMBER = "[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final Pattern SPELT_NUMBER =
            Pattern.compile("[+-]?\\.?(?:nan|inf|infinity)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern GROUPED = Pattern.compile("[+-]?[0-9]{1,3}(?:[,'’_ ][0-9]{3})+(?![0-9]).*");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?[0-9]*,[0-9]+.*");

    private Quantities() {}

    /**
     * Reads a quantity.
     *
     * @param text      number and unit, for example "35 km/h"; the decimal sign is a point; a typographic minus is fine
     * @param dimension what it must measure
     * @return value in the dimension's {@linkplain Dimension#engineUnit() engine unit}, finite
     * @throws QuantityFault when the text is no such quantity
     */
    public static double parse(String text, Dimension dimension) {
        String plain = plainNumber(text);
        Matcher parts = split(
                text, plain, "write " + dimension.meaning() + " with its unit, for example " + dimension.example());
        double value = finite(text, parts.group(1));
        String unitText = parts.group(2);
        if (unitText.isEmpty()) {
            throw new QuantityFault("\"" + text + "\" has no unit", unitsOf(dimension), readings(value, dimension));
        }
        @Nullable Unit unit = Unit.find(plainUnit(unitText), dimension);
        if (unit == null) {
            throw new QuantityFault(
                    "\"" + text + "\" is not " + dimension.meaning(),
                    unitsOf(dimension),
                    hint(value, unitText, dimension));
        }
        return finite(text, unit.toEngine(value));
    }

    /**
     * Reads the unit of a table's column, for example "km/h" of the header "wind [km/h]".
     *
     * @throws QuantityFault when there is no such unit of the dimension
     */
    public static Unit unit(String text, Dimension dimension) {
        @Nullable Unit unit = Unit.find(plainUnit(text.strip()), dimension);
        if (unit == null) {
            throw new QuantityFault(
                    "\"" + text + "\" is no unit of " + dimension.meaning(),
                    unitsOf(dimension),
                    unitSuggestion(text, dimension));
        }
        return unit;
    }

    /**
     * Reads a number whose unit is known already, from a column's header or a format's definition.
     *
     * @throws QuantityFault when the text is no finite number
     */
    public static double number(String text) {
        String plain = plainNumber(text);
        Matcher parts = split(text, plain, "write a number with a decimal point");
        if (!parts.group(2).isEmpty()) {
            throw new QuantityFault(
                    "\"" + text + "\" is not a plain number", "the unit stands elsewhere, write the number alone", "");
        }
        return finite(text, parts.group(1));
    }

    /** Whether the text is a number and nothing else, its unit left out. */
    public static boolean isBare(String text) {
        try {
            number(text);
            return true;
        } catch (QuantityFault fault) {
            return false;
        }
    }

    /** Whether the text is a quantity of the dimension. */
    public static boolean isA(String text, Dimension dimension) {
        try {
            parse(text, dimension);
            return true;
        } catch (QuantityFault fault) {
            return false;
        }
    }

    /**
     * Writes a quantity for people.
     *
     * @param value     in the dimension's engine unit
     * @param dimension what it measures
     * @param system    metric or imperial
     * @return for example "-12.0 °C"; not-a-number becomes "unknown"
     */
    public static String format(double value, Dimension dimension, UnitSystem system) {
        if (Double.isNaN(value)) {
            return "unknown";
        }
        Unit unit = system.unitOf(dimension);
        String number = String.format(Locale.ROOT, "%." + system.decimals(dimension) + "f", unit.fromEngine(value));
        if (Double.parseDouble(number) == 0) {
            number = number.replace("-", "");
        }
        String label = unit.label();
        return label.equals("°") ? number + label : number + " " + label;
    }

    private static Matcher split(String text, String plain, String allowed) {
        if (SPELT_NUMBER.matcher(plain).matches()) {
            throw new QuantityFault("\"" + text + "\" is not a finite number", allowed, "");
        }
        if (GROUPED.matcher(plain).matches()) {
            throw new QuantityFault(
                    "\"" + text + "\" has a thousands separator or a decimal comma",
                    "write digits without separators and a decimal point",
                    "");
        }
        if (DECIMAL_COMMA.matcher(plain).matches()) {
            throw new QuantityFault(
                    "\"" + text + "\" has a decimal comma",
                    "the decimal sign is a point",
                    "did you mean \"" + text.replace(',', '.') + "\"?");
        }
        Matcher parts = QUANTITY.matcher(plain);
        if (!parts.matches()) {
            throw new QuantityFault("\"" + text + "\" does not begin with a number", allowed, "");
        }
        return parts;
    }

    private static double finite(String text, String number) {
        return finite(text, Double.parseDouble(number));
    }

    private static double finite(String text, double value) {
        if (!Double.isFinite(value)) {
            throw new QuantityFault("\"" + text + "\" is not a finite number", "write a number of everyday size", "");
        }
        return value;
    }

    /** Minus signs and hard blanks of typographers become plain ones. */
    private static String plainNumber(String text) {
        return text.replace('\u2212', '-')
                .replace('\u2012', '-')
                .replace('\u2013', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .strip()
                .replaceFirst("^([+-])\\s+", "$1");
    }

    /** A unit's text without blanks, dots, carets and raised digits: "m²·K/W" and "m^2 K / W" are both "m2K/W". */
    static String plainUnit(String text) {
        return text.replace('\u00b2', '2')
                .replace('\u00b3', '3')
                .replace('\u00ba', '°')
                .replaceAll("[\\s\u00b7\u22c5.*^\u00a0\u202f\u2009]", "");
    }

    private static String unitsOf(Dimension dimension) {
        return Unit.of(dimension).stream()
                .map(Unit::label)
                .collect(Collectors.joining(", ", "write " + dimension.meaning() + " in ", ""));
    }

    private static String hint(double value, String unitText, Dimension dimension) {
        String plain = plainUnit(unitText);
        if (dimension == Dimension.AREAL_MASS && isA(value + " " + unitText, Dimension.MASS)) {
            return readings(value, dimension);
        }
        if (dimension == Dimension.THERMAL_RESISTANCE && plain.equals("R")) {
            return "an R value is either \"" + number(value) + " ft2hF/Btu\" or \"" + number(value) + " m2K/W\"";
        }
        for (Dimension other : Dimension.values()) {
            if (other != dimension && Unit.find(plain, other) != null) {
                return "\"" + unitText + "\" is a unit of " + other.meaning();
            }
        }
        String near = unitSuggestion(unitText, dimension);
        boolean few = dimension == Dimension.TEMPERATURE || dimension == Dimension.AGE;
        return near.isEmpty() && few ? readings(value, dimension) : near;
    }

    private static String unitSuggestion(String unitText, Dimension dimension) {
        List<String> spellings = new ArrayList<>();
        for (Unit unit : Unit.of(dimension)) {
            spellings.addAll(unit.spellings());
        }
        return Spelling.suggestion(plainUnit(unitText), spellings);
    }

    /** What a number could mean, where people often leave the unit out and two readings are usual. */
    private static String readings(double value, Dimension dimension) {
        List<Unit> usual = switch (dimension) {
            case TEMPERATURE -> List.of(Unit.CELSIUS, Unit.FAHRENHEIT);
            case SPEED -> List.of(Unit.METRE_PER_SECOND, Unit.KILOMETRE_PER_HOUR, Unit.MILE_PER_HOUR);
            case AREAL_MASS -> List.of(Unit.GRAM_PER_SQUARE_METRE, Unit.OUNCE_PER_SQUARE_YARD);
            case MASS -> List.of(Unit.GRAM, Unit.OUNCE, Unit.KILOGRAM);
            case FILL_POWER -> List.of(Unit.CUBIC_INCH_PER_OUNCE);
            default -> Unit.of(dimension);
        };
        return usual.stream()
                .map(unit -> "\"" + number(value) + " " + unit.label() + "\"")
                .collect(Collectors.joining(" or ", "did you mean ", "?"));
    }

    private static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
