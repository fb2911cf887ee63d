package longnight.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import longnight.assumption.Guess;
import longnight.quantity.Unit;
import longnight.quantity.UnitSystem;

/**
 * Quantities as the readers of one unit system know them. Everything takes the engine's value (see {@link Measure}) and gives
 * finished text; where there is no number it gives a dash. Prose has slots for number and unit together, so that its sentences
 * serve both systems.
 */
public final class Units {
    public static final Units METRIC = new Units(UnitSystem.METRIC);
    public static final Units IMPERIAL = new Units(UnitSystem.IMPERIAL);

    private static final Pattern NAMED = Pattern.compile("\\b[A-Z]{3,}(_[A-Z]+)*\\b");

    private final UnitSystem system;

    private Units(UnitSystem system) {
        this.system = system;
    }

    /** The units of a system. */
    public static Units of(UnitSystem system) {
        return system == UnitSystem.METRIC ? METRIC : IMPERIAL;
    }

    /** Which of two it is, for a layout that must know. */
    boolean isMetric() {
        return system == UnitSystem.METRIC;
    }

    /** Number and unit: "-9.0 °C". */
    String text(Measure measure, double value) {
        return withUnit(measure, number(measure, value));
    }

    /** The number alone, where the unit stands beside or above it: "-9.0". */
    String number(Measure measure, double value) {
        return Figures.decimals(value(measure, value), form(measure).decimals());
    }

    /** The number itself, for axes and data files. */
    double value(Measure measure, double value) {
        return form(measure).fromEngine().applyAsDouble(value);
    }

    double[] values(Measure measure, double[] values) {
        return Arrays.stream(values).map(value -> value(measure, value)).toArray();
    }

    /** The unit alone: "°C". */
    String unit(Measure measure) {
        return form(measure).label();
    }

    /** A line that somebody drew, with no more digits than it was drawn with: "35 °C" and "95 °F", never "35.0 °C". */
    String line(Measure measure, double value) {
        return withUnit(measure, Figures.significant(value(measure, value), 3));
    }

    /** Two significant digits, for misfits: "0.012 K". */
    String rough(Measure measure, double value) {
        return withUnit(measure, Figures.significant(value(measure, value), 2));
    }

    /** Core-heat deficit without its unit: nothing below zero, and inside the dead band only that it is inside. */
    String deficitNumber(double joules) {
        double shown = value(Measure.HEAT, joules);
        if (!Double.isFinite(shown)) {
            return Figures.decimals(shown, 0);
        }
        if (shown < 0.5) { // would be rounded to none anyway
            return "0";
        }
        return joules < Figures.DEAD_BAND ? "<" + deadBandNumber() : number(Measure.HEAT, joules);
    }

    /** Core-heat deficit as {@link #deficitNumber}, with its unit. */
    String deficit(double joules) {
        return withUnit(Measure.HEAT, deficitNumber(joules));
    }

    /** "15 kJ". */
    String deadBand() {
        return withUnit(Measure.HEAT, deadBandNumber());
    }

    /** "15". */
    String deadBandNumber() {
        return Figures.significant(value(Measure.HEAT, Figures.DEAD_BAND), 2);
    }

    /** What was guessed, with the unit in which {@link #guessedValue} tells it. */
    String guessedQuantity(Guess guess) {
        String unit = readable(guess).unit();
        return unit.isEmpty() ? guess.quantity() : guess.quantity() + " [" + unit + "]";
    }

    /** A guessed word, or a guessed number in the unit a reader of labels thinks in. */
    String guessedValue(Guess guess, int digits) {
        return Double.isNaN(guess.value())
                ? words(guess.word())
                : Figures.significant(readable(guess).value(), digits);
    }

    /** Names of ours in capitals as people write them: "UPPER_ARM 0.0-1.0" is "upper arm 0.0-1.0". */
    private static String words(String word) {
        return NAMED.matcher(word)
                .replaceAll(name -> name.group().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** A guessed word, or number and unit: "3.78 mm". */
    String guessed(Guess guess) {
        String unit = readable(guess).unit();
        return Double.isNaN(guess.value()) || unit.isEmpty()
                ? guessedValue(guess, 3)
                : guessedValue(guess, 3) + " " + unit;
    }

    private record Readable(double value, String unit) {}

    /** Guesses name the engine's unit as text; what is not named here is told in it. */
    private Readable readable(Guess guess) {
        return switch (guess.unit()) {
            case "1", "" -> new Readable(guess.value(), "");
            case "percent" -> new Readable(guess.value(), "%");
            case "kg" -> readable(guess, Unit.GRAM, Unit.OUNCE);
            case "kg/m2" -> readable(guess, Unit.GRAM_PER_SQUARE_METRE, Unit.OUNCE_PER_SQUARE_YARD);
            case "m" -> readable(guess, Unit.MILLIMETRE, Unit.INCH);
            case "m2" -> readable(guess, Unit.SQUARE_METRE, Unit.SQUARE_FOOT);
            case "m2K/W", "m2 K/W" -> readable(guess, Unit.CLO, Unit.CLO);
            case "degC" -> readable(guess, Unit.CELSIUS, Unit.FAHRENHEIT);
            case "K" -> readable(guess, Unit.KELVIN_DIFFERENCE, Unit.FAHRENHEIT_DIFFERENCE);
            case "m/s" -> readable(guess, Unit.METRE_PER_SECOND, Unit.MILE_PER_HOUR);
            case "L/(m2 s)" ->
                isMetric()
                        ? new Readable(guess.value(), guess.unit())
                        : readable(guess, Unit.LITRE_PER_SQUARE_METRE_SECOND, Unit.CUBIC_FOOT_PER_MINUTE_SQUARE_FOOT);
            case "mm/h" -> readable(guess, Unit.MILLIMETRE_PER_HOUR, Unit.INCH_PER_HOUR);
            default -> new Readable(guess.value(), guess.unit());
        };
    }

    private Readable readable(Guess guess, Unit metric, Unit imperial) {
        Unit unit = isMetric() ? metric : imperial;
        String label = unit.label().replaceAll("(?<=/m|/yd)2", "²");
        return new Readable(unit.fromEngine(guess.value()), label);
    }

    private String withUnit(Measure measure, String number) {
        return number + " " + unit(measure);
    }

    /** Decimals shown. */
    int decimals(Measure measure) {
        return form(measure).decimals();
    }

    private Measure.Form form(Measure measure) {
        return isMetric() ? measure.metric : measure.imperial;
    }
}
