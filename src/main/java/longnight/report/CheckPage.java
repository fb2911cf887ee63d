package longnight.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.quantity.Dimension;
import longnight.quantity.Unit;
import longnight.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/** A file read back in words: what stands in it, in both unit systems, then every guess with its reason. */
public final class CheckPage {
    private final List<String> paragraphs = new ArrayList<>();
    private final Set<String> explained = new HashSet<>();
    private final List<String> line = new ArrayList<>();
    private String section = "";

    /**
     * A page on a file.
     *
     * @param file as the caller named it
     * @param kind what it is, as a word
     */
    public CheckPage(String file, String kind) {
        paragraphs.add(Prose.text("check.title", file, kind));
    }

    /** The facts that follow belong to a new section, "a garment". */
    public void section(String name) {
        end();
        section = name;
    }

    /**
     * One key with its value. What the key means is told when it comes for the first time in a section of its kind.
     *
     * @param key       its name
     * @param written   what the file says
     * @param dimension of a quantity; null for anything else
     * @param value     of a quantity, in the dimension's engine unit
     * @param about     what the key means
     */
    public void fact(String key, String written, @Nullable Dimension dimension, double value, String about) {
        String told = dimension == null ? written : inBoth(written, dimension, value);
        boolean known = about.isEmpty() || !explained.add(section + "/" + key);
        line.add(known ? Prose.text("check.fact", key, told) : Prose.text("check.fact.about", key, told, about));
    }

    /** Ends the page. */
    public String text(List<Guess> guesses, List<String> limits, Collection<Caution> cautions) {
        end();
        limits.forEach(limit -> paragraphs.add(Prose.text("check.limit", limit)));
        paragraphs.add(
                guesses.isEmpty()
                        ? Prose.text("check.guessed.none")
                        : Prose.text("check.guessed", String.valueOf(guesses.size())));
        for (Guess guess : guesses) {
            paragraphs.add("- "
                    + Prose.text(
                            "check.guess",
                            Wording.name(guess.subject()),
                            guess.quantity(),
                            inBoth(guess),
                            guess.reason()));
        }
        List<String> texts = new ArrayList<>(List.of(Wording.shortText(Caution.PLANNING_AID)));
        cautions.stream()
                .filter(caution -> caution != Caution.PLANNING_AID)
                .map(Wording::shortText)
                .forEach(texts::add);
        paragraphs.add(Prose.text("caution.heading") + ": " + String.join(" ", texts));
        return Console.paragraphs(paragraphs);
    }

    private void end() {
        if (!line.isEmpty()) {
            paragraphs.add(Prose.text("check.section", section, String.join("; ", line)));
            line.clear();
        }
    }

    private static String inBoth(Guess guess) {
        String metric = Units.METRIC.guessed(guess);
        String imperial = Units.IMPERIAL.guessed(guess);
        return metric.equals(imperial) ? metric : metric + " = " + imperial;
    }

    /** "68 kg = 150 lb": what is written, then what it is in the systems that it is not written in. */
    static String inBoth(String written, Dimension dimension, double value) {
        Map<String, String> told = new LinkedHashMap<>();
        told.put(plain(written), written);
        for (UnitSystem system : UnitSystem.values()) {
            Unit unit = unit(dimension, value, system);
            String text = Figures.significant(unit.fromEngine(value), 3) + " " + unit.label();
            told.putIfAbsent(plain(text), text);
        }
        return String.join(" = ", told.values());
    }

    /** Equal when only blanks and zeros at the end differ. */
    private static String plain(String text) {
        return text.replaceAll("\\s", "")
                .replaceAll("(\\.\\d*?)0+(?=\\D|$)", "$1")
                .replaceAll("\\.(?=\\D|$)", "");
    }

    /** The unit of a size that people take for it: grams for a cap, kilograms for a person. */
    private static Unit unit(Dimension dimension, double value, UnitSystem system) {
        boolean metric = system == UnitSystem.METRIC;
        double size = Math.abs(value);
        return switch (dimension) {
            case MASS -> size < 2 ? metric ? Unit.GRAM : Unit.OUNCE : system.unitOf(dimension);
            case LENGTH ->
                size < 0.1
                        ? metric ? Unit.MILLIMETRE : Unit.INCH
                        : size < 2.6 ? metric ? Unit.CENTIMETRE : Unit.INCH : system.unitOf(dimension);
            case TIME -> size < 3600 ? Unit.MINUTE : Unit.HOUR;
            default -> system.unitOf(dimension);
        };
    }
}
