package longnight.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import longnight.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** A section of a file, read by its table of keys. Knows no physics; every refusal names the place. */
final class Section {
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})");

    private final Table table;
    private final Place place;
    private final Map<String, Value.Entry> entries = new LinkedHashMap<>();

    /**
     * Checks a value against a table.
     *
     * @throws InputFault when it is no section, or has a key twice, or a key the table does not know, or lacks one
     */
    Section(Value value, Table table) {
        this(value, table, fault -> {
            throw fault;
        });
    }

    /**
     * The same, for a reader who wants to hear of every fault.
     *
     * @param faults told of each; keys at fault are left out
     */
    Section(Value value, Table table, Consumer<InputFault> faults) {
        this.table = table;
        this.place = value.place();
        if (!(value instanceof Value.Entries written)) {
            faults.accept(
                    place.fault(value.shape() + " stands where " + table.name() + " is described", keysAllowed()));
            return;
        }
        for (Value.Entry entry : written.entries()) {
            Value.Text key = entry.key();
            if (table.find(key.text()).isEmpty()) {
                faults.accept(key.place()
                        .fault(
                                "unknown key \"" + key.text() + "\"",
                                keysAllowed(),
                                Advice.key(key.text(), table.names())));
                continue;
            }
            Value.@Nullable Entry first = entries.putIfAbsent(key.text(), entry);
            if (first != null) {
                faults.accept(key.place()
                        .fault(
                                "key \"" + key.text() + "\" for the second time",
                                "write it once; it stands in line "
                                        + first.key().place().line() + " already"));
            }
        }
        for (Key key : table.keys()) {
            if (key.required() && !has(key.name())) {
                faults.accept(place.fault(table.name() + " without \"" + key.name() + "\"", advice(key)));
            }
        }
    }

    Place place() {
        return place;
    }

    boolean has(String name) {
        table.key(name);
        return entries.containsKey(name);
    }

    /** Where the value of a key begins; where the section begins when the key is missing. */
    Place at(String name) {
        table.key(name);
        Value.@Nullable Entry entry = entries.get(name);
        return entry == null ? place : entry.value().place();
    }

    /** Where the key itself stands. */
    Place keyAt(String name) {
        table.key(name);
        Value.@Nullable Entry entry = entries.get(name);
        return entry == null ? place : entry.key().place();
    }

    /** The value as written. */
    Value value(String name) {
        table.key(name);
        Value.@Nullable Entry entry = entries.get(name);
        if (entry == null) {
            throw place.fault(table.name() + " without \"" + name + "\"", advice(table.key(name)));
        }
        return entry.value();
    }

    String text(String name) {
        return written(name).text();
    }

    String textOr(String name, String otherwise) {
        return has(name) ? text(name) : otherwise;
    }

    /** Value of a quantity in its engine unit, inside the range of its key. */
    double quantity(String name) {
        return quantity(written(name), table.key(name));
    }

    double quantityOr(String name, double otherwise) {
        return has(name) ? quantity(name) : otherwise;
    }

    @Nullable
    Double quantityOrNull(String name) {
        return has(name) ? (Double) quantity(name) : null;
    }

    /** A quantity of another dimension than the table says; for keys that take two. */
    double quantity(String name, Dimension dimension) {
        return parse(written(name), name, dimension);
    }

    /** A word that stands for an enum's constant. */
    <E extends Enum<E>> E word(String name, Class<E> type) {
        String word = word(name);
        for (E constant : type.getEnumConstants()) {
            if (Key.wordOf(constant).equals(word)) {
                return constant;
            }
        }
        throw new IllegalStateException(word + " is no word of " + type);
    }

    String word(String name) {
        return word(written(name), table.key(name), "\"" + name + "\"");
    }

    boolean yes(String name) {
        return word(name).equals("yes");
    }

    boolean yesOr(String name, boolean otherwise) {
        return has(name) ? yes(name) : otherwise;
    }

    /** Clock time in seconds after midnight. */
    double clock(String name) {
        return clock(written(name), table.key(name));
    }

    private static double clock(Value.Text text, Key key) {
        Matcher parts = CLOCK.matcher(text.text());
        if (parts.matches()) {
            int hours = Integer.parseInt(parts.group(1));
            int minutes = Integer.parseInt(parts.group(2));
            if (hours <= 24 && minutes < 60 && hours * 60 + minutes <= 24 * 60) {
                return (hours * 3600.0 + minutes * 60.0) % 86400;
            }
        }
        throw text.place()
                .fault(
                        "\"" + key.name() + "\" is \"" + text.text() + "\"",
                        "write a clock time from 00:00 to 24:00, for example 18:30",
                        Advice.clock(text.text()));
    }

    /** Names of a list, each with its place. */
    List<Value.Text> names(String name) {
        List<Value.Text> names = new ArrayList<>();
        for (Value item : items(name)) {
            if (!(item instanceof Value.Text text) || text.text().isEmpty()) {
                throw item.place().fault(item.shape() + " in the list \"" + name + "\"", "write a name");
            }
            names.add(oneLine(text));
        }
        return names;
    }

    /** A name with what is written for it. */
    record Each(Value.Text name, Value.Text value) {}

    /** What is written for each of some names, in the order written, no name twice. */
    List<Each> each(String name) {
        Value value = value(name);
        if (!(value instanceof Value.Entries written)) {
            throw value.place().fault(value.shape() + " for \"" + name + "\"", advice(table.key(name)));
        }
        List<Each> all = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Value.Entry entry : written.entries()) {
            if (!seen.add(entry.key().text())) {
                throw entry.key()
                        .place()
                        .fault("key \"" + entry.key().text() + "\" for the second time", "write it once");
            }
            if (!(entry.value() instanceof Value.Text text) || text.text().isEmpty()) {
                throw entry.value()
                        .place()
                        .fault(entry.value().shape() + " for \"" + entry.key().text() + "\"", advice(table.key(name)));
            }
            all.add(new Each(oneLine(entry.key()), oneLine(text)));
        }
        return all;
    }

    Section section(String name) {
        return new Section(value(name), table.key(name).innerOf());
    }

    /** A section that stands here, or in a file of its own that is named in its place. */
    Section sectionOrFile(String name, Shelf shelf) {
        Value value = value(name);
        return value instanceof Value.Text file && !file.text().isEmpty()
                ? new Section(shelf.yaml(file), table.key(name).innerOf())
                : section(name);
    }

    /** Sections of a list. */
    List<Section> sections(String name) {
        Table inner = table.key(name).innerOf();
        return items(name).stream().map(item -> new Section(item, inner)).toList();
    }

    /** A quantity for each part, by the part's word, in the order written. */
    Map<String, Double> parts(String name) {
        Key key = table.key(name);
        Map<String, Double> parts = new LinkedHashMap<>();
        for (Map.Entry<String, Value.Text> part : partTexts(name).entrySet()) {
            parts.put(part.getKey(), quantity(part.getValue(), key));
        }
        return parts;
    }

    /** The text written for each part, by the part's word, in the order written. */
    Map<String, Value.Text> partTexts(String name) {
        Key key = table.key(name);
        Value value = value(name);
        if (!(value instanceof Value.Entries written)) {
            throw value.place()
                    .fault(
                            value.shape() + " for \"" + name + "\"",
                            "write \"part: value\" for parts of " + key.words());
        }
        Map<String, Value.Text> parts = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (Value.Entry entry : written.entries()) {
            String part = word(entry.key(), key, "a part of \"" + name + "\"");
            if (!seen.add(part)) {
                throw entry.key().place().fault("key \"" + part + "\" for the second time", "write it once");
            }
            if (!(entry.value() instanceof Value.Text text)) {
                throw entry.value().place().fault(entry.value().shape() + " for \"" + part + "\"", "write one value");
            }
            parts.put(part, text);
        }
        return parts;
    }

    /** The items of a list. */
    List<Value> items(String name) {
        Value value = value(name);
        if (value instanceof Value.Items items) {
            return items.values();
        }
        throw value.place().fault(value.shape() + " for \"" + name + "\"", "write a list, each item after \"- \"");
    }

    /** The one text written for a key. */
    Value.Text written(String name) {
        Value value = value(name);
        if (!(value instanceof Value.Text text)) {
            throw value.place().fault(value.shape() + " for \"" + name + "\"", advice(table.key(name)));
        }
        if (text.text().isEmpty()) {
            throw keyAt(name).fault("\"" + name + "\" has no value", advice(table.key(name)));
        }
        return oneLine(text);
    }

    /** A text that goes into results: it must not break their lines nor steer a terminal. */
    private static Value.Text oneLine(Value.Text text) {
        if (text.text().codePoints().anyMatch(Character::isISOControl)) {
            throw text.place()
                    .fault("a text with a control character or over several lines", "write plain text in one line");
        }
        return text;
    }

    private static double quantity(Value.Text text, Key key) {
        double value;
        try {
            value = parse(text, key.name(), key.dimensionOf());
        } catch (InputFault fault) {
            String likely = likely(text, key);
            throw likely.isEmpty() ? fault : text.place().fault(fault.found(), fault.allowed(), likely);
        }
        if (!key.allows(value)) {
            throw text.place().fault("\"" + key.name() + "\" is \"" + shown(text) + "\"", "allowed is " + key.range());
        }
        return value;
    }

    /** What a number without a unit can mean, if it is to lie in the key's range; empty for other faults. */
    private static String likely(Value.Text text, Key key) {
        if (key.dimensionOf() == Dimension.LENGTH && text.unit().isEmpty()) {
            String length = Advice.feetAndInches(text.text());
            if (!length.isEmpty()) {
                return length;
            }
        }
        if (!text.unit().isEmpty() || !Quantities.isBare(text.number())) {
            return "";
        }
        double number = Quantities.number(text.number());
        return Unit.of(key.dimensionOf()).stream()
                .filter(unit -> key.allows(unit.toEngine(number)))
                .map(unit -> "\"" + text.number() + " " + unit.label() + "\"")
                .reduce((a, b) -> a + " or " + b)
                .map(readings -> "did you mean " + readings + "?")
                .orElse("");
    }

    private static double parse(Value.Text text, String name, Dimension dimension) {
        try {
            return text.unit().isEmpty()
                    ? Quantities.parse(text.number(), dimension)
                    : Quantities.unit(text.unit(), dimension).toEngine(Quantities.number(text.number()));
        } catch (QuantityFault fault) {
            throw text.place().fault("\"" + name + "\": " + fault.found(), fault.allowed(), fault.hint());
        }
    }

    /**
     * Reads one text by its key, as it would be read in a section.
     *
     * @return the text
     * @throws InputFault when the key does not allow it
     */
    static String read(Value.Text text, Key key) {
        if (text.text().isEmpty()) {
            throw text.place().fault("\"" + key.name() + "\" has no value", advice(key));
        }
        oneLine(text);
        switch (key.form()) {
            case QUANTITY -> quantity(text, key);
            case WORD, YES_NO -> word(text, key, "\"" + key.name() + "\"");
            case CLOCK -> clock(text, key);
            default -> {}
        }
        return text.text();
    }

    /** A text as written, with the unit that its column's header gives. */
    String shown(String name) {
        return shown(written(name));
    }

    private static String shown(Value.Text text) {
        return text.unit().isEmpty() ? text.number() : text.number() + " " + text.unit();
    }

    private static String word(Value.Text text, Key key, String what) {
        if (key.words().contains(text.text())) {
            return text.text();
        }
        throw text.place()
                .fault(
                        what + " is \"" + text.text() + "\"",
                        "allowed is " + String.join(", ", key.words()),
                        Advice.word(text.text(), key.words()));
    }

    private String keysAllowed() {
        return table.name() + " has the keys " + String.join(", ", table.names());
    }

    /** What to write for a key: "write \"mass\" from 10 kg to 300 kg". */
    private static String advice(Key key) {
        String name = "write \"" + key.name() + "\"";
        return switch (key.form()) {
            case QUANTITY -> name + " " + key.range();
            case WORD, YES_NO, WORD_OR_SECTION -> name + ", one of " + String.join(", ", key.words());
            case CLOCK -> "write \"" + key.name() + ": 18:00\" or another clock time";
            case NAMES -> "write \"" + key.name() + ": [first-name, second-name]\"";
            case TEXT, SECTION, SECTIONS, PARTS, EACH -> name + ": " + key.about();
        };
    }
}
