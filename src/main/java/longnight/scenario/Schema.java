package longnight.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longnight.quantity.Dimension;
import longnight.quantity.Unit;

/**
 * What editors need to know of our files: JSON Schema, draft 2020-12, made from the key tables, as maps and lists that anything
 * can write down. A schema finds misspelt keys and words and numbers without a unit; ranges and what goes with what is told by
 * the reader.
 */
public final class Schema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    /** A number, then a unit. The reader is the judge of the unit; there are too many spellings for a pattern. */
    private static final String QUANTITY =
            "^\\s*[+\\-\u2212\u2013]?\\s*([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][+-]?[0-9]+)?\\s*[^0-9\\s.,].*$";

    private static final String CLOCK = "^[0-9]{1,2}:[0-9]{2}$";

    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private Schema() {}

    /** The schema of a kind of file, in the order in which it is best written. */
    public static Map<String, Object> of(FileKind kind) {
        Schema schema = new Schema();
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("$schema", DRAFT);
        root.put("$id", "urn:longnight:schema:" + kind.word());
        root.put("title", kind.table().name());
        root.putAll(schema.section(kind.table()));
        if (!schema.definitions.isEmpty()) {
            root.put("$defs", schema.definitions);
        }
        return root;
    }

    private Map<String, Object> section(Table table) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Key key : table.keys()) {
            Map<String, Object> property = new LinkedHashMap<>();
            property.put("description", description(key));
            property.putAll(value(key, Tables.namesFiles(table)));
            properties.put(key.name(), property);
        }
        Map<String, Object> section = new LinkedHashMap<>();
        section.put("type", "object");
        section.put("additionalProperties", false);
        List<String> required =
                table.keys().stream().filter(Key::required).map(Key::name).toList();
        if (!required.isEmpty()) {
            section.put("required", required);
        }
        section.put("properties", properties);
        return section;
    }

    /** @param named whether a file may be named in place of the section */
    private Map<String, Object> value(Key key, boolean named) {
        return switch (key.form()) {
            case TEXT -> Map.of("type", List.of("string", "number"));
            case QUANTITY -> quantity(key.dimensionOf());
            case WORD, YES_NO -> Map.of("enum", key.words());
            case CLOCK -> ordered("type", "string", "pattern", CLOCK);
            case NAMES -> list(Map.of("type", List.of("string", "number")));
            case SECTION -> named ? Map.of("anyOf", List.of(Map.of("type", "string"), reference(key))) : reference(key);
            case WORD_OR_SECTION -> Map.of("anyOf", List.of(Map.of("enum", key.words()), reference(key)));
            case SECTIONS -> list(reference(key));
            case PARTS -> parts(key);
            case EACH -> ordered("type", "object", "additionalProperties", Map.of("type", "string"));
        };
    }

    private static Map<String, Object> quantity(Dimension dimension) {
        Map<String, Object> quantity = new LinkedHashMap<>();
        quantity.put("type", "string");
        quantity.put("pattern", QUANTITY);
        quantity.put("examples", List.of(dimension.example()));
        return quantity;
    }

    private static Map<String, Object> parts(Key key) {
        Map<String, Object> parts = new LinkedHashMap<>();
        for (String word : key.words()) {
            parts.put(word, quantity(key.dimensionOf()));
        }
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("type", "object");
        value.put("additionalProperties", false);
        value.put("properties", parts);
        return value;
    }

    private static Map<String, Object> list(Map<String, Object> item) {
        return ordered("type", "array", "items", item);
    }

    /** Of one order in every run, unlike {@link Map#of}. */
    private static Map<String, Object> ordered(String first, Object one, String second, Object two) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, two);
        return map;
    }

    private Map<String, Object> reference(Key key) {
        Table inner = key.innerOf();
        String name = nameOf(inner);
        if (!definitions.containsKey(name)) {
            definitions.put(name, Map.of()); // holds the place, and ends the recursion of a table inside itself
            definitions.put(name, section(inner));
        }
        return Map.of("$ref", "#/$defs/" + name);
    }

    /** "a row of the weather" is row-of-the-weather. */
    static String nameOf(Table table) {
        return table.name().replaceFirst("^an? ", "").replace(' ', '-');
    }

    /** What the key says, in which units, and within what. */
    static String description(Key key) {
        List<String> parts = new ArrayList<>(List.of(key.about()));
        if (key.dimension() != null) {
            parts.add(key.range());
            parts.add(Unit.of(key.dimension()).stream().map(Unit::label).collect(Collectors.joining(", ", "in ", "")));
        }
        return String.join("; ", parts);
    }
}
