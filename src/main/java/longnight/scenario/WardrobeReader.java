package longnight.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.assumption.Guess;
import longnight.clothing.Fabric;
import longnight.clothing.FaceTightness;
import longnight.clothing.Fill;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Pad;
import longnight.figure.Zone;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import org.jspecify.annotations.Nullable;

/** The pieces somebody owns, from YAML or from a spreadsheet's CSV. */
final class WardrobeReader {
    /** Fills as labels call them. */
    enum FillType {
        NONE,
        BATT,
        SHORT_STAPLE,
        CONTINUOUS_FILAMENT,
        ACTIVE,
        DOWN,
        TREATED_DOWN
    }

    /** A piece, what was guessed in reading it, where its id stands, and whether the state of its finish was told. */
    record Piece(GarmentSpec spec, List<Guess> guesses, Place place, boolean finishTold) {}

    /** The same for a pad. */
    record Underlay(Pad pad, List<Guess> guesses, Place place) {}

    /** A wardrobe by ids, in the order written. */
    record Wardrobe(Map<String, Piece> pieces, Map<String, Underlay> pads) {}

    private static final Set<GarmentKind> ALWAYS_FILLED =
            EnumSet.of(GarmentKind.PARKA, GarmentKind.INSULATED_JACKET, GarmentKind.INSULATED_TROUSERS);

    /** Closed-cell foam: 0.040 W/(m K) and nine tenths of its thickness under the body; engineering estimate, no source. */
    private static final double FOAM_CONDUCTIVITY = 0.040;

    private static final double FOAM_LEFT_UNDER_BODY = 0.9;

    /** Polyethylene, 2100 J/(kg K) within 10 %; from memory. */
    private static final double FOAM_SPECIFIC_HEAT = 2100;

    private static final Pattern INTERVAL = Pattern.compile("(.*?%)\\s+to\\s+(.*)");

    /** A number and the code of its currency, ISO 4217 alphabetic. */
    private static final Pattern PRICE = Pattern.compile("([0-9]{1,9}(?:[.,][0-9]{1,4})?)\\s*([A-Z]{3})");

    private final Map<String, Place> ids = new HashMap<>();
    private final Wardrobe wardrobe = new Wardrobe(new LinkedHashMap<>(), new LinkedHashMap<>());

    private final Consumer<InputFault> faults;

    /** In which the pieces read so far are paid; null before the first price. */
    private @Nullable String money;

    private WardrobeReader(Consumer<InputFault> faults) {
        this.faults = faults;
    }

    static Wardrobe read(TextFile file) {
        return read(file, fault -> {
            throw fault;
        });
    }

    /**
     * Reads on after a fault of a piece.
     *
     * @param faults told of each; the piece is left out
     */
    static Wardrobe read(TextFile file, Consumer<InputFault> faults) {
        WardrobeReader reader = new WardrobeReader(faults);
        if (isCsv(file.path())) {
            reader.readCsv(file);
        } else {
            reader.readYaml(file);
        }
        return reader.wardrobe;
    }

    /** Told by the name: a spreadsheet's file. */
    static boolean isCsv(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    private void readYaml(TextFile file) {
        Section section = new Section(YamlFile.read(file), Tables.WARDROBE);
        List<Value> pieces = section.items("pieces");
        if (pieces.isEmpty()) {
            throw emptyAt(section.at("pieces"));
        }
        pieces.forEach(piece -> goOn(() -> addPiece(new Section(piece, Tables.GARMENT))));
        if (section.has("pads")) {
            section.items("pads").forEach(pad -> goOn(() -> addPad(new Section(pad, Tables.PAD))));
        }
    }

    private void goOn(Runnable reading) {
        try {
            reading.run();
        } catch (InputFault fault) {
            faults.accept(fault);
        }
    }

    /** A row that begins with the word of its kind, without it: whether it is a pad, and its other entries. */
    record Row(boolean pad, Value.Entries entries) {
        Table table() {
            return pad ? Tables.PAD : Tables.GARMENT;
        }
    }

    static Row row(Value.Entries row) {
        List<Value.Entry> withoutKind = row.entries().stream()
                .filter(entry -> !(entry.key().text().equals("kind")
                        && entry.value() instanceof Value.Text kind
                        && kind.text().equals("pad")))
                .toList();
        return withoutKind.size() < row.entries().size()
                ? new Row(true, new Value.Entries(row.place(), withoutKind))
                : new Row(false, row);
    }

    private void readCsv(TextFile file) {
        CsvFile csv = CsvFile.read(file);
        for (Value.Entries each : csv.rows()) {
            Row row = row(each);
            goOn(() -> {
                Section section = new Section(row.entries(), row.table());
                if (row.pad()) {
                    addPad(section);
                } else {
                    addPiece(section);
                }
            });
        }
        if (csv.rows().stream().allMatch(each -> row(each).pad())) {
            throw emptyAt(csv.header());
        }
    }

    private static InputFault emptyAt(Place place) {
        return place.fault("the wardrobe is empty", "write at least one piece with id, kind and mass");
    }

    private String newId(Section section) {
        String id = section.text("id");
        Place place = section.at("id");
        @Nullable Place first = ids.putIfAbsent(id, place);
        if (first != null) {
            throw place.fault(
                    "id \"" + id + "\" for the second time",
                    "each piece has its own; line " + first.line() + " has this one");
        }
        return id;
    }

    private void addPiece(Section section) {
        String id = newId(section);
        List<Guess> guesses = new ArrayList<>();
        GarmentKind kind = section.word("kind", GarmentKind.class);
        double mass = section.quantity("mass");
        @Nullable Fill fill = fill(id, section, kind, mass, guesses);
        GarmentSpec spec = new GarmentSpec(
                id,
                section.textOr("name", id),
                kind,
                mass,
                section.has("fabric") ? section.word("fabric", Fabric.class) : null,
                fill,
                section.has("face") ? section.word("face", FaceTightness.class) : null,
                section.has("hood") ? (Boolean) section.yes("hood") : null,
                section.has("coverage") ? coverage(section) : null,
                section.quantityOrNull("room"),
                section.quantityOrNull("thickness"),
                section.quantityOrNull("resistance"),
                section.quantityOrNull("vapour-resistance"),
                section.quantityOrNull("air-permeability"),
                section.has("finish") ? section.word("finish", GarmentSpec.Finish.class) : GarmentSpec.Finish.WORN,
                section.quantityOrNull("packed-volume"),
                section.has("price") ? (Double) price(section) : null);
        wardrobe.pieces.put(id, new Piece(spec, guesses, section.at("id"), section.has("finish")));
    }

    private double price(Section section) {
        String shown = section.shown("price");
        Place place = section.at("price");
        Matcher parts = PRICE.matcher(shown);
        if (!parts.matches()) {
            throw place.fault(
                    "\"price\" is \"" + shown + "\"",
                    "write the number and the three letters of its money (ISO 4217), for example \"120 EUR\"");
        }
        if (money == null) {
            money = parts.group(2);
        } else if (!money.equals(parts.group(2))) {
            throw place.fault(
                    "\"price\" is \"" + shown + "\" where other pieces are paid in " + money,
                    "write all prices of a wardrobe in one money");
        }
        return Double.parseDouble(parts.group(1).replace(',', '.'));
    }

    private static @Nullable Fill fill(String id, Section section, GarmentKind kind, double mass, List<Guess> guesses) {
        boolean typed = section.has("fill-type");
        FillType type = typed ? section.word("fill-type", FillType.class) : FillType.NONE;
        if (!section.has("fill")) {
            if (typed && type != FillType.NONE) {
                throw section.at("fill-type")
                        .fault("\"fill-type\" without \"fill\"", "write how much: " + howMuch(isDown(type)));
            }
            for (String key : List.of("fill-power", "fill-by-zone", "construction")) {
                if (section.has(key)) {
                    throw section.keyAt(key).fault("\"" + key + "\" without \"fill\"", "write how much fill there is");
                }
            }
            if (!typed && ALWAYS_FILLED.contains(kind) && !section.has("resistance")) {
                throw section.place()
                        .fault(
                                "\"" + id + "\", a piece of kind " + Key.wordOf(kind) + ", without \"fill\"",
                                "write the fill with its unit: " + howMuch(false) + "; or " + howMuch(true)
                                        + "; or \"fill-type: none\"");
            }
            return null;
        }
        if (typed && type == FillType.NONE) {
            throw section.at("fill").fault("\"fill\" beside \"fill-type: none\"", "write one of them");
        }
        Value.Text text = section.written("fill");
        String shown = section.shown("fill");
        boolean areal = Quantities.isA(shown, Dimension.AREAL_MASS);
        boolean whole = Quantities.isA(shown, Dimension.MASS);
        boolean down = typed ? isDown(type) : whole && section.has("fill-power");
        if (!areal && !whole || !down && !areal) {
            throw unclear(text.place(), shown, typed ? type : null);
        }
        return down
                ? down(section, text.place(), shown, mass, type == FillType.TREATED_DOWN)
                : batt(id, section, text.place(), shown, type, guesses);
    }

    private static Fill down(Section section, Place place, String shown, double mass, boolean treated) {
        double fillMass;
        try {
            fillMass = Quantities.parse(shown, Dimension.MASS);
        } catch (QuantityFault fault) {
            throw place.fault(
                    "\"fill\" is \"" + shown + "\" of down",
                    "down takes the mass of all the down in the piece, for example \"140 g\"",
                    fault.hint());
        }
        within(place, shown, fillMass, "10 g", "1500 g", Dimension.MASS);
        if (fillMass >= mass) {
            throw place.fault(
                    "\"fill\" is \"" + shown + "\" in a piece of " + section.text("mass"),
                    "the fill weighs less than the piece");
        }
        if (!section.has("fill-power")) {
            throw place.fault(
                    "down without \"fill-power\"",
                    "write the number of its label, for example \"fill-power: 700 in3/oz\"");
        }
        if (section.has("fill-by-zone")) {
            throw section.keyAt("fill-by-zone").fault("\"fill-by-zone\" of down", "it is for batt only");
        }
        return new Fill.Down(
                fillMass, section.quantity("fill-power"), treated, section.quantityOr("construction", Double.NaN));
    }

    private static Fill batt(
            String id, Section section, Place place, String shown, FillType type, List<Guess> guesses) {
        double arealMass = Quantities.parse(shown, Dimension.AREAL_MASS);
        within(place, shown, arealMass, "20 g/m2", "600 g/m2", Dimension.AREAL_MASS);
        for (String key : List.of("fill-power", "construction")) {
            if (section.has(key)) {
                throw section.keyAt(key).fault("\"" + key + "\" of a batt", "it is for down only");
            }
        }
        Fill.BattType batt = switch (type) {
            case CONTINUOUS_FILAMENT -> Fill.BattType.CONTINUOUS_FILAMENT;
            case ACTIVE -> Fill.BattType.ACTIVE;
            case SHORT_STAPLE -> Fill.BattType.SHORT_STAPLE;
            case NONE, BATT, DOWN, TREATED_DOWN -> {
                guesses.add(Guess.word(
                        id, "class of batt", Key.wordOf(Fill.BattType.SHORT_STAPLE), "common practice, no source"));
                yield Fill.BattType.SHORT_STAPLE;
            }
        };
        Map<Zone, Double> byZone = new EnumMap<>(Zone.class);
        if (section.has("fill-by-zone")) {
            section.parts("fill-by-zone").forEach((word, value) -> byZone.put(zone(word), value));
        }
        return new Fill.Batt(batt, arealMass, byZone);
    }

    /** A fill number that can be read as mass per area and as mass of the whole; both readings are shown. */
    private static InputFault unclear(Place place, String shown, @Nullable FillType type) {
        String number = shown.replaceFirst("^([0-9.]+).*", "$1");
        boolean ounces = shown.endsWith("oz");
        boolean grams = shown.endsWith("g") && !shown.endsWith("kg");
        boolean bare = shown.equals(number);
        if (!ounces && !grams && !bare) {
            return place.fault(
                    "\"fill\" is \"" + shown + "\"",
                    "write it with its unit: " + howMuch(false) + "; or " + howMuch(true));
        }
        String areal = ounces ? number + " oz/yd2" : number + " g/m2";
        String whole = ounces ? number + " oz" : number + " g";
        double perArea;
        double total;
        try {
            perArea = 1000 * Quantities.parse(areal, Dimension.AREAL_MASS);
            total = 1000 * Quantities.parse(whole, Dimension.MASS);
        } catch (QuantityFault fault) {
            return place.fault(
                    "\"fill\" is \"" + shown + "\"", "write it with its unit: " + howMuch(false), fault.hint());
        }
        String found = String.format(
                Locale.ROOT,
                "\"fill\" is \"%s\", which can be read in two ways: %.1f g/m2 of batt, or %.1f g of down in the whole piece",
                shown,
                perArea,
                total);
        String battWay = "\"" + areal + "\" for batt";
        String downWay = "\"" + whole + "\" with \"fill-type: down\" and \"fill-power\" for down";
        return place.fault(
                found,
                "write " + battWay + ", or " + downWay,
                type == null || isDown(type) ? "" : "did you mean \"" + areal + "\"?");
    }

    private static String howMuch(boolean down) {
        return down ? "\"fill: 140 g\" with \"fill-power: 700 in3/oz\" for down" : "\"fill: 100 g/m2\" for batt";
    }

    private static boolean isDown(FillType type) {
        return type == FillType.DOWN || type == FillType.TREATED_DOWN;
    }

    private static void within(Place place, String shown, double value, String low, String high, Dimension dimension) {
        if (!(value >= Quantities.parse(low, dimension) && value <= Quantities.parse(high, dimension))) {
            throw place.fault("\"fill\" is \"" + shown + "\"", "allowed is from " + low + " to " + high);
        }
    }

    private static Map<Zone, GarmentSpec.Interval> coverage(Section section) {
        Map<Zone, GarmentSpec.Interval> coverage = new EnumMap<>(Zone.class);
        section.partTexts("coverage").forEach((word, text) -> {
            Matcher parts = INTERVAL.matcher(text.text());
            double from;
            double to;
            try {
                from = parts.matches() ? Quantities.parse(parts.group(1), Dimension.FRACTION) : 0;
                to = Quantities.parse(parts.matches() ? parts.group(2) : text.text(), Dimension.FRACTION);
            } catch (QuantityFault fault) {
                throw text.place()
                        .fault(
                                "coverage of " + word + ": " + fault.found(),
                                "write for example \"0 % to 60 %\"",
                                fault.hint());
            }
            if (!(from >= 0 && from < to && to <= 1)) {
                throw text.place()
                        .fault(
                                "coverage of " + word + " is \"" + text.text() + "\"",
                                "write a rising interval within 0 % to 100 %");
            }
            coverage.put(zone(word), new GarmentSpec.Interval(from, to));
        });
        return coverage;
    }

    private static Zone zone(String word) {
        return Zone.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private void addPad(Section section) {
        String id = newId(section);
        List<Guess> guesses = new ArrayList<>();
        double mass = section.quantity("mass");
        double area = area(section);
        double resistance;
        if (section.has("resistance")) {
            resistance = section.quantity("resistance");
        } else if (section.has("thickness")) {
            resistance = section.quantity("thickness") * FOAM_LEFT_UNDER_BODY / FOAM_CONDUCTIVITY;
            guesses.add(Guess.number(
                    id,
                    "thermal resistance under the body",
                    resistance,
                    "m2K/W",
                    "closed-cell foam, 0.040 W/(m K), nine tenths of its thickness; engineering estimate, no source"));
        } else {
            throw section.place()
                    .fault(
                            "pad \"" + id + "\" without \"resistance\"",
                            "write its resistance, or the thickness of its foam");
        }
        double heatCapacity;
        if (section.has("heat-capacity")) {
            heatCapacity = section.quantity("heat-capacity");
        } else {
            heatCapacity = mass / area * FOAM_SPECIFIC_HEAT;
            guesses.add(Guess.number(
                    id,
                    "heat capacity per area",
                    heatCapacity,
                    "J/(m2 K)",
                    "polyethylene foam, 2100 J/(kg K); from memory"));
        }
        Pad pad = new Pad(id, section.textOr("name", id), resistance, area, mass, heatCapacity);
        wardrobe.pads.put(id, new Underlay(pad, guesses, section.at("id")));
    }

    private static double area(Section section) {
        if (section.has("area")) {
            return section.quantity("area");
        }
        if (section.has("length") && section.has("width")) {
            return section.quantity("length") * section.quantity("width");
        }
        throw section.place().fault("a pad without \"area\"", "write its area, or its length and width");
    }
}
