package longnight.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.night.GroupNight;
import longnight.night.Scenario;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import org.jspecify.annotations.Nullable;

/** Reads a file back: what stands in it, what was guessed, and every fault that can be found. */
public final class FileCheck {
    /**
     * What a check brought to light.
     *
     * @param kind     what the file is
     * @param facts    what stands in it and in the files it names, in the order written; a wardrobe that is only named is not told
     * @param guesses  everything guessed; empty when there are faults
     * @param cautions that reading gives rise to
     * @param limits   where the question leaves the model's range
     * @param faults   all of them, first the one that the night would tell; empty for a file that can be used
     */
    public record Checked(
            FileKind kind,
            List<Fact> facts,
            List<Guess> guesses,
            List<Caution> cautions,
            List<String> limits,
            List<InputFault> faults) {}

    /**
     * One thing that stands in a file.
     *
     * @param section   what it belongs to: "a garment"
     * @param first     whether it is the first of its section
     * @param key       its key
     * @param written   as it was written; of a list, its items
     * @param dimension of a quantity; null for anything else
     * @param value     of a quantity, in the dimension's engine unit; NaN for anything else
     * @param about     what the key says
     */
    public record Fact(
            String section,
            boolean first,
            String key,
            String written,
            @Nullable Dimension dimension,
            double value,
            String about) {}

    private final List<Fact> facts = new ArrayList<>();
    private final Map<String, InputFault> faults = new LinkedHashMap<>();

    private FileCheck() {}

    /**
     * Checks a file of any kind.
     *
     * @throws InputFault when it cannot be read at all, or cannot be taken apart
     */
    public static Checked check(Path path) {
        return new FileCheck().checked(path);
    }

    private Checked checked(Path path) {
        TextFile file = TextFile.read(path, Place.of(path));
        if (WardrobeReader.isCsv(path)) {
            rows(file);
            return found(FileKind.WARDROBE, file, null);
        }
        Value root = YamlFile.read(file);
        FileKind kind = FileKind.of(root);
        return found(kind, file, root);
    }

    private Checked found(FileKind kind, TextFile file, @Nullable Value root) {
        Findings findings = new Findings();
        List<Guess> guesses = List.of();
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        List<String> limits = List.of();
        try {
            switch (kind) {
                case NIGHT -> {
                    Scenario scenario = ScenarioReader.read(file.path()).scenario();
                    guesses = scenario.guesses();
                    cautions.addAll(scenario.cautions());
                    limits = scenario.limits();
                }
                case KIT -> KitReader.read(new Section(root(root), Tables.KIT), findings);
                case PERSON -> PersonReader.read(new Section(root(root), Tables.PERSON), findings);
                case GROUP -> group(GroupReader.read(file.path()), findings);
                case WARDROBE ->
                    findings.guesses.addAll(
                            KitReader.gear(WardrobeReader.read(file)).guesses());
            }
        } catch (InputFault fault) {
            add(fault);
        }
        if (root != null) {
            section(root, kind.table());
        }
        if (kind == FileKind.WARDROBE) {
            wardrobe(file);
        }
        if (kind != FileKind.NIGHT) {
            guesses = findings.guesses;
            limits = findings.limits;
            cautions.addAll(findings.cautions);
        }
        return new Checked(
                kind,
                List.copyOf(facts),
                faults.isEmpty() ? List.copyOf(guesses) : List.of(),
                List.copyOf(cautions),
                List.copyOf(limits),
                sorted());
    }

    /** What comes to light about several members is told once. */
    private static void group(GroupNight group, Findings findings) {
        Set<Guess> guesses = new LinkedHashSet<>();
        Set<String> limits = new LinkedHashSet<>();
        for (GroupNight.Member member : group.members()) {
            guesses.addAll(member.alone().guesses());
            limits.addAll(member.alone().limits());
            findings.cautions.addAll(member.alone().cautions());
        }
        group.spares().forEach(spare -> guesses.addAll(spare.guesses()));
        findings.guesses.addAll(guesses);
        findings.limits.addAll(limits);
    }

    private static Value root(@Nullable Value root) {
        if (root == null) {
            throw new IllegalStateException("only a wardrobe may come without a tree");
        }
        return root;
    }

    /** The one that stops a night first, then the others as they stand in the file. */
    private List<InputFault> sorted() {
        List<InputFault> all = new ArrayList<>(faults.values());
        if (all.size() > 1) {
            all.subList(1, all.size())
                    .sort(Comparator.comparing(InputFault::file)
                            .thenComparingInt(InputFault::line)
                            .thenComparingInt(InputFault::column));
        }
        return List.copyOf(all);
    }

    private void add(InputFault fault) {
        faults.putIfAbsent(String.valueOf(fault.getMessage()), fault);
    }

    /** Every piece of a wardrobe, also after one that is at fault. */
    private void wardrobe(TextFile file) {
        try {
            WardrobeReader.read(file, this::add).pieces().values().forEach(piece -> {
                try {
                    KitReader.derived(piece);
                } catch (InputFault fault) {
                    add(fault);
                }
            });
        } catch (InputFault fault) {
            add(fault);
        }
    }

    private void rows(TextFile file) {
        for (Value.Entries entries : CsvFile.read(file).rows()) {
            WardrobeReader.Row row = WardrobeReader.row(entries);
            section(row.entries(), row.table());
        }
    }

    private void section(Value value, Table table) {
        Section section = new Section(value, table, this::add);
        boolean first = true;
        List<Key> inner = new ArrayList<>();
        for (Key key : table.keys()) {
            if (!section.has(key.name())) {
                continue;
            }
            if (isSection(key, section.value(key.name()), Tables.namesFiles(table))) {
                inner.add(key);
                continue;
            }
            try {
                facts.add(fact(section, table, key, first));
                first = false;
            } catch (InputFault fault) {
                add(fault);
            }
        }
        if (table == Tables.KIT && section.has("wardrobe")) {
            try {
                wardrobe(TextFile.read(section.written("wardrobe")));
            } catch (InputFault fault) {
                add(fault);
            }
        }
        for (Key key : inner) {
            try {
                within(section, key);
            } catch (InputFault fault) {
                add(fault);
            }
        }
    }

    private static boolean isSection(Key key, Value value, boolean named) {
        return switch (key.form()) {
            case SECTION -> named || !(value instanceof Value.Text);
            case SECTIONS -> true;
            case WORD_OR_SECTION -> !(value instanceof Value.Text);
            default -> false;
        };
    }

    private void within(Section section, Key key) {
        Table table = key.innerOf();
        if (key.form() == Key.Form.SECTIONS) {
            section.items(key.name()).forEach(item -> section(item, table));
            return;
        }
        Value value = section.value(key.name());
        boolean named = value instanceof Value.Text name && !name.text().isEmpty();
        section(named ? YamlFile.read(TextFile.read(section.written(key.name()))) : value, table);
    }

    private static Fact fact(Section section, Table table, Key key, boolean first) {
        String name = key.name();
        @Nullable Dimension dimension = null;
        double value = Double.NaN;
        String written = switch (key.form()) {
            case QUANTITY -> {
                dimension = key.dimensionOf();
                value = section.quantity(name);
                yield section.shown(name);
            }
            case WORD, YES_NO, WORD_OR_SECTION -> section.word(name);
            case CLOCK -> {
                section.clock(name);
                yield section.text(name);
            }
            case NAMES ->
                String.join(
                        ", ", section.names(name).stream().map(Value.Text::text).toList());
            case PARTS ->
                String.join(
                        ", ",
                        section.partTexts(name).entrySet().stream()
                                .map(part ->
                                        part.getKey() + " " + part.getValue().text())
                                .toList());
            case EACH ->
                String.join(
                        ", ",
                        section.each(name).stream()
                                .map(each ->
                                        each.name().text() + " " + each.value().text())
                                .toList());
            case TEXT -> {
                String text = section.shown(name);
                dimension = name.equals("fill") ? dimensionOfFill(text) : null;
                value = dimension == null ? Double.NaN : Quantities.parse(text, dimension);
                yield text;
            }
            case SECTION, SECTIONS -> throw new IllegalStateException(name + " is told section by section");
        };
        return new Fact(table.name(), first, name, written, dimension, value, key.about());
    }

    /** Batt by area, down as a whole; null when it is neither. */
    private static @Nullable Dimension dimensionOfFill(String text) {
        for (Dimension dimension : List.of(Dimension.AREAL_MASS, Dimension.MASS)) {
            if (Quantities.isA(text, dimension)) {
                return dimension;
            }
        }
        return null;
    }
}
