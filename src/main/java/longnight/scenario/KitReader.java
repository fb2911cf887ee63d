package longnight.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Garments;
import longnight.clothing.Pad;
import longnight.quantity.Spelling;
import longnight.scenario.WardrobeReader.Piece;
import longnight.scenario.WardrobeReader.Underlay;
import longnight.scenario.WardrobeReader.Wardrobe;
import org.jspecify.annotations.Nullable;

/** What is worn and what lies under the body, out of a wardrobe. */
final class KitReader {
    private static final Set<GarmentKind> PARKAS = EnumSet.of(GarmentKind.PARKA);
    private static final Set<GarmentKind> FOOTWEAR =
            EnumSet.of(GarmentKind.SHOES, GarmentKind.BOOTS, GarmentKind.INSULATED_BOOTS);

    /** Kinds that lie next to the skin, and what nobody wears below them. */
    private static final Map<GarmentKind, Set<GarmentKind>> NEVER_BELOW = new EnumMap<>(Map.of(
            GarmentKind.BASE_TOP,
            EnumSet.of(
                    GarmentKind.MID_TOP,
                    GarmentKind.VEST,
                    GarmentKind.WIND_TOP,
                    GarmentKind.RAIN_TOP,
                    GarmentKind.INSULATED_JACKET,
                    GarmentKind.PARKA,
                    GarmentKind.CAPE),
            GarmentKind.BASE_BOTTOM,
            EnumSet.of(
                    GarmentKind.TROUSERS,
                    GarmentKind.WIND_TROUSERS,
                    GarmentKind.RAIN_TROUSERS,
                    GarmentKind.INSULATED_TROUSERS),
            GarmentKind.LINER_GLOVES,
            EnumSet.of(GarmentKind.GLOVES, GarmentKind.MITTENS),
            GarmentKind.SOCKS,
            FOOTWEAR));

    private KitReader() {}

    static Dress read(Section section, Findings findings) {
        Wardrobe wardrobe = WardrobeReader.read(TextFile.read(section.written("wardrobe")));
        List<Value.Text> names = section.names("worn");
        if (names.isEmpty()) {
            throw section.at("worn").fault("a kit without pieces", "name at least one piece");
        }
        List<Worn<Piece>> worn =
                chosen(names, "piece", wardrobe.pieces(), wardrobe.pads().keySet());
        List<Worn<Piece>> carried = section.has("carried")
                ? chosen(
                        section.names("carried"),
                        "piece",
                        wardrobe.pieces(),
                        wardrobe.pads().keySet())
                : List.of();
        for (Worn<Piece> each : carried) {
            if (worn.stream().anyMatch(other -> other.what() == each.what())) {
                throw each.name()
                        .place()
                        .fault("\"" + each.name().text() + "\" worn and carried", "there is one of it; name it once");
            }
        }
        List<Worn<Underlay>> pads = chosen(
                section.names("pads"), "pad", wardrobe.pads(), wardrobe.pieces().keySet());
        boolean layered = section.yesOr("layered", false);
        check(worn, layered);

        Map<String, Garment> garments = new LinkedHashMap<>();
        for (Worn<Piece> each : Stream.concat(worn.stream(), carried.stream()).toList()) {
            Piece piece = each.what();
            Garments.Derived derived = derived(piece);
            garments.put(each.name().text(), derived.garment());
            findings.guesses.addAll(piece.guesses());
            findings.guesses.addAll(derived.guesses());
            if (!piece.finishTold() && Garments.takesFinish(derived.garment())) {
                findings.guesses.add(Guess.word(
                        piece.spec().id(),
                        "state of the water-repellent finish",
                        Key.wordOf(piece.spec().condition()),
                        "not given; common practice, no source"));
            }
        }
        List<Pad> under = new ArrayList<>();
        for (Worn<Underlay> each : pads) {
            under.add(each.what().pad());
            findings.guesses.addAll(each.what().guesses());
        }
        Map<String, Piece> pieces = new LinkedHashMap<>();
        Stream.concat(worn.stream(), carried.stream())
                .forEach(each -> pieces.put(each.name().text(), each.what()));
        return new Dress(pieces, garments, worn, under, layered);
    }

    /** Refuses what nobody wears over each other. */
    static void check(List<Worn<Piece>> worn, boolean layered) {
        if (!layered) {
            onlyOne(worn, PARKAS, "outer parka");
            onlyOne(worn, FOOTWEAR, "pair of boots or shoes");
        }
        checkOrder(worn);
    }

    /** What a name of the kit stands for in the wardrobe. */
    record Worn<T>(Value.Text name, T what) {}

    private static <T> List<Worn<T>> chosen(
            List<Value.Text> names, String what, Map<String, T> known, Set<String> others) {
        List<Worn<T>> chosen = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String offer = known.isEmpty() ? "none" : String.join(", ", known.keySet());
        for (Value.Text name : names) {
            @Nullable T found = known.get(name.text());
            if (found == null) {
                throw name.place()
                        .fault(
                                others.contains(name.text())
                                        ? "\"" + name.text() + "\" is no " + what
                                        : "unknown " + what + " \"" + name.text() + "\"",
                                "the wardrobe has the " + what + "s: " + offer,
                                Spelling.suggestion(name.text(), known.keySet()));
            }
            if (!seen.add(name.text())) {
                throw name.place()
                        .fault("\"" + name.text() + "\" for the second time", "there is one of it; name it once");
            }
            chosen.add(new Worn<>(name, found));
        }
        return chosen;
    }

    private static Garments.Derived derived(Piece piece) {
        try {
            return Garments.derive(piece.spec());
        } catch (IllegalArgumentException fault) {
            throw piece.place()
                    .fault(String.valueOf(fault.getMessage()), "write what is missing, or correct what is written");
        }
    }

    private static void onlyOne(List<Worn<Piece>> worn, Set<GarmentKind> kinds, String what) {
        String first = "";
        for (Worn<Piece> each : worn) {
            if (!kinds.contains(each.what().spec().kind())) {
                continue;
            }
            if (!first.isEmpty()) {
                throw each.name()
                        .place()
                        .fault(
                                "\"" + each.name().text() + "\", a second " + what + " beside \"" + first + "\"",
                                "one is worn, or write \"layered: yes\" to wear both over each other");
            }
            first = each.name().text();
        }
    }

    private static void checkOrder(List<Worn<Piece>> worn) {
        for (int i = 0; i < worn.size(); i++) {
            Worn<Piece> upper = worn.get(i);
            GarmentKind kind = upper.what().spec().kind();
            Set<GarmentKind> never = NEVER_BELOW.getOrDefault(kind, EnumSet.noneOf(GarmentKind.class));
            for (Worn<Piece> lower : worn.subList(0, i)) {
                if (never.contains(lower.what().spec().kind())) {
                    throw upper.name()
                            .place()
                            .fault(
                                    "\"" + upper.name().text() + "\" (" + Key.wordOf(kind) + ") over \""
                                            + lower.name().text() + "\"",
                                    "pieces are listed from the skin outwards");
                }
            }
        }
    }
}
