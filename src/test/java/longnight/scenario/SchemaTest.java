package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas against the key tables they are made of, against the draft's own rules, and against every file we ship. */
class SchemaTest {
    /** What a schema object may hold, of the draft's vocabulary (JSON Schema 2020-12, Core and Validation). */
    private static final Set<String> VOCABULARY = Set.of(
            "$schema",
            "$id",
            "$ref",
            "$defs",
            "title",
            "description",
            "examples",
            "type",
            "enum",
            "pattern",
            "properties",
            "additionalProperties",
            "required",
            "items",
            "anyOf");

    private static final Set<String> TYPES =
            Set.of("object", "array", "string", "number", "boolean", "integer", "null");

    static Stream<Path> nights() throws Exception {
        return ShippedScenariosTest.nights().stream();
    }

    static Stream<Path> kits() throws Exception {
        return ShippedScenariosTest.kits().stream();
    }

    static Stream<Path> people() throws Exception {
        return ShippedScenariosTest.people().stream();
    }

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void is_a_schema_of_the_draft(FileKind kind) {
        Map<String, Object> schema = Schema.of(kind);
        assertThat(schema.get("$schema")).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.get("$id")).asString().matches("[a-z]+:[A-Za-z0-9:._-]+");
        checkSchema(schema, schema);
    }

    /** The tables that a kind of file reaches are in its schema, key by key, and no key more. */
    @ParameterizedTest
    @EnumSource(FileKind.class)
    void has_every_key_of_every_table(FileKind kind) {
        Map<String, Object> schema = Schema.of(kind);
        assertThat(keysOf(schema)).containsExactlyElementsOf(kind.table().names());
        for (Table table : reached(kind.table(), new LinkedHashSet<>())) {
            if (table != kind.table()) {
                assertThat(keysOf(object(object(schema, "$defs"), Schema.nameOf(table))))
                        .as(table.name())
                        .containsExactlyElementsOf(table.names());
            }
        }
    }

    @Test
    void every_table_is_reached() {
        Set<Table> all = new LinkedHashSet<>();
        for (FileKind kind : FileKind.values()) {
            reached(kind.table(), all);
        }
        reached(Tables.EXPERIMENT, all); // experiments are for those who write the program, and have no schema
        reached(Tables.GRID, all); // nor have grids, nor what loggers write
        reached(Tables.LOG_ROW, all);
        assertThat(all).containsAll(Tables.ALL);
    }

    @ParameterizedTest
    @MethodSource("nights")
    void shipped_nights_conform(Path file) {
        assertThat(misfits(FileKind.NIGHT, file)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void shipped_kits_conform(Path file) {
        assertThat(misfits(FileKind.KIT, file)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("people")
    void shipped_people_conform(Path file) {
        assertThat(misfits(FileKind.PERSON, file)).isEmpty();
    }

    static Stream<Path> groups() throws Exception {
        return ShippedScenariosTest.groups().stream();
    }

    @ParameterizedTest
    @MethodSource("groups")
    void shipped_groups_conform(Path file) {
        assertThat(misfits(FileKind.GROUP, file)).isEmpty();
    }

    @Test
    void the_shipped_wardrobe_conforms() {
        assertThat(misfits(FileKind.WARDROBE, Path.of("scenarios/wardrobe.yaml")))
                .isEmpty();
    }

    /** What the newcomer gets wrong first is found by the editor. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{name: me, sex: female, age: 30 years, height: 170 cm, mass: 60}",
                "{name: me, sex: femal, age: 30 years, height: 170 cm, mass: 60 kg}",
                "{name: me, sex: female, age: 30 years, hight: 170 cm, mass: 60 kg}",
                "{name: me, sex: female, age: 30 years, mass: 60 kg}",
                "{name: me, sex: female, age: 30 years, height: [170 cm], mass: 60 kg}",
                "[1, 2]"
            })
    void first_mistakes_do_not_conform(String person) {
        assertThat(misfits(FileKind.PERSON, YamlFile.read(new TextFile(Path.of("p.yaml"), person))))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"-12 °C", "−12°C", "+3 °C", ".5 m", "1e3 Pa", "0.1 m² K/W", "20°", "- 4 K"})
    void quantities_match(String text) {
        String pattern = (String)
                object(object(Schema.of(FileKind.PERSON), "properties"), "mass").get("pattern");
        assertThat(Pattern.compile(pattern).matcher(text).find()).isTrue();
        assertThat(Pattern.compile(pattern).matcher("12").find()).isFalse();
        assertThat(Pattern.compile(pattern).matcher("12,5 kg").find()).isFalse();
    }

    // --- A small validator: the words of the draft that our schemas use, and no others ---

    private static List<String> misfits(FileKind kind, Path file) {
        return misfits(kind, YamlFile.read(TextFile.read(file, Place.of(file))));
    }

    private static List<String> misfits(FileKind kind, Value value) {
        Map<String, Object> schema = Schema.of(kind);
        List<String> misfits = new ArrayList<>();
        validate(plain(value), schema, schema, "", misfits);
        return misfits;
    }

    /** As an editor's YAML sees it: a plain number is a number. */
    private static Object plain(Value value) {
        if (value instanceof Value.Text text) {
            return text.text().matches("[+-]?[0-9]+([.][0-9]*)?") ? (Object) Double.valueOf(text.text()) : text.text();
        }
        if (value instanceof Value.Items items) {
            return items.values().stream().map(SchemaTest::plain).toList();
        }
        Map<String, Object> map = new LinkedHashMap<>();
        ((Value.Entries) value).entries().forEach(entry -> map.put(entry.key().text(), plain(entry.value())));
        return map;
    }

    private static void validate(
            Object value, Map<String, Object> schema, Map<String, Object> root, String at, List<String> misfits) {
        if (schema.get("$ref") instanceof String reference) {
            validate(value, resolved(reference, root), root, at, misfits);
        }
        if (schema.get("anyOf") instanceof List<?> choices
                && choices.stream().allMatch(choice -> {
                    List<String> inner = new ArrayList<>();
                    validate(value, map(choice), root, at, inner);
                    return !inner.isEmpty();
                })) {
            misfits.add(at + ": none of the choices");
        }
        if (schema.get("enum") instanceof List<?> words && !words.contains(value)) {
            misfits.add(at + ": " + value + " is none of " + words);
        }
        if (schema.containsKey("type")) {
            List<?> types = schema.get("type") instanceof List<?> some ? some : List.of(schema.get("type"));
            if (!types.contains(typeOf(value))) {
                misfits.add(at + ": a " + typeOf(value) + " for " + types);
                return;
            }
        }
        if (schema.get("pattern") instanceof String pattern
                && value instanceof String text
                && !Pattern.compile(pattern).matcher(text).find()) {
            misfits.add(at + ": " + text + " does not match");
        }
        if (value instanceof List<?> items && schema.containsKey("items")) {
            for (Object item : items) {
                validate(item, object(schema, "items"), root, at + "/-", misfits);
            }
        }
        if (value instanceof Map<?, ?> entries) {
            Map<String, Object> known = schema.containsKey("properties") ? object(schema, "properties") : Map.of();
            entries.forEach((key, inner) -> {
                if (known.containsKey(key)) {
                    validate(inner, object(known, (String) key), root, at + "/" + key, misfits);
                } else if (Boolean.FALSE.equals(schema.get("additionalProperties"))) {
                    misfits.add(at + ": unknown key " + key);
                } else if (schema.get("additionalProperties") instanceof Map<?, ?>) {
                    validate(inner, object(schema, "additionalProperties"), root, at + "/" + key, misfits);
                }
            });
            if (schema.get("required") instanceof List<?> required) {
                required.stream()
                        .filter(key -> !entries.containsKey(key))
                        .forEach(key -> misfits.add(at + ": lacks " + key));
            }
        }
    }

    private static void checkSchema(Map<String, Object> schema, Map<String, Object> root) {
        assertThat(VOCABULARY).containsAll(schema.keySet());
        if (schema.get("$ref") instanceof String reference) {
            assertThat(resolved(reference, root)).as(reference).isNotEmpty();
        }
        if (schema.containsKey("type")) {
            List<?> types = schema.get("type") instanceof List<?> some ? some : List.of(schema.get("type"));
            assertThat(TYPES).containsAll(types.stream().map(String.class::cast).toList());
            assertThat(types).doesNotHaveDuplicates().isNotEmpty();
        }
        if (schema.get("pattern") instanceof String pattern) {
            Pattern.compile(pattern);
        }
        for (String unique : List.of("enum", "required", "anyOf", "examples")) {
            if (schema.containsKey(unique)) {
                assertThat((List<?>) schema.get(unique)).as(unique).isNotEmpty().doesNotHaveDuplicates();
            }
        }
        if (schema.get("required") instanceof List<?> required) {
            assertThat(keysOf(schema))
                    .containsAll(required.stream().map(String.class::cast).toList());
        }
        for (String several : List.of("properties", "$defs")) {
            if (schema.containsKey(several)) {
                object(schema, several).values().forEach(inner -> checkSchema(map(inner), root));
            }
        }
        if (schema.containsKey("items")) {
            checkSchema(object(schema, "items"), root);
        }
        if (schema.get("additionalProperties") instanceof Map<?, ?>) {
            checkSchema(object(schema, "additionalProperties"), root);
        }
        if (schema.get("anyOf") instanceof List<?> choices) {
            choices.forEach(choice -> checkSchema(map(choice), root));
        }
    }

    private static Set<Table> reached(Table table, Set<Table> seen) {
        if (seen.add(table)) {
            table.keys().stream().filter(key -> key.inner() != null).forEach(key -> reached(key.innerOf(), seen));
        }
        return seen;
    }

    private static Map<String, Object> resolved(String reference, Map<String, Object> root) {
        assertThat(reference).startsWith("#/$defs/");
        return object(object(root, "$defs"), reference.substring("#/$defs/".length()));
    }

    private static List<String> keysOf(Map<String, Object> schema) {
        return List.copyOf(object(schema, "properties").keySet());
    }

    private static Map<String, Object> object(Map<String, Object> schema, String key) {
        return map(schema.get(key));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private static String typeOf(Object value) {
        return value instanceof String
                ? "string"
                : value instanceof Double ? "number" : value instanceof List<?> ? "array" : "object";
    }
}
