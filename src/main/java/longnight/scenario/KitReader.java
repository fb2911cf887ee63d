package longnight.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Garments;
import longnight.clothing.Pad;
import longnight.quantity.Spelling;
import longnight.scenario.WardrobeReader.Piece;
import longnight.scenario.WardrobeReader.Underlay;
import longnight.scenario.WardrobeReader.Wardrobe;
import org.jspecify.annotations.Nullable;

/** What is worn and what lies under the body, out of a wardrobe. */
final class KitReader {
    private KitReader() {}

    /** Everything in a wardrobe. */
    static Gear gear(Wardrobe wardrobe) {
        List<Garment> pieces = new ArrayList<>();
        List<Guess> guesses = new ArrayList<>();
        for (Piece piece : wardrobe.pieces().values()) {
            Garments.Derived derived = derived(piece);
            pieces.add(derived.garment());
            addGuesses(piece, derived, guesses);
        }
        List<Pad> pads = new ArrayList<>();
        for (Underlay pad : wardrobe.pads().values()) {
            pads.add(pad.pad());
            guesses.addAll(pad.guesses());
        }
        return new Gear(pieces, pads, guesses);
    }

    static void addGuesses(Piece piece, Garments.Derived derived, List<Guess> guesses) {
        guesses.addAll(piece.guesses());
        guesses.addAll(derived.guesses());
        if (!piece.finishTold() && Garments.takesFinish(derived.garment())) {
            guesses.add(Guess.word(
                    piece.spec().id(),
                    "state of the water-repellent finish",
                    Key.wordOf(piece.spec().condition()),
                    "not given; common practice, no source"));
        }
    }

    static Dress read(Section section, Findings findings) {
        Wardrobe wardrobe = findings.shelf.wardrobe(section.written("wardrobe"));
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
            addGuesses(piece, derived, findings.guesses);
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
        Dressing.@Nullable Clash clash = Dressing.firstClash(
                worn.stream().map(each -> each.what().spec().kind()).toList(), layered);
        if (clash == null) {
            return;
        }
        Worn<Piece> upper = worn.get(clash.upper());
        String name = "\"" + upper.name().text() + "\"";
        String lower = "\"" + worn.get(clash.lower()).name().text() + "\"";
        if (clash.reason() == Dressing.Reason.WRONG_ORDER) {
            throw upper.name()
                    .place()
                    .fault(
                            name + " (" + Key.wordOf(upper.what().spec().kind()) + ") over " + lower,
                            "pieces are listed from the skin outwards");
        }
        String what = clash.reason() == Dressing.Reason.SECOND_PARKA ? "outer parka" : "pair of boots or shoes";
        throw upper.name()
                .place()
                .fault(
                        name + ", a second " + what + " beside " + lower,
                        "one is worn, or write \"layered: yes\" to wear both over each other");
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

    /** All that follows from a label. */
    static Garments.Derived derived(Piece piece) {
        try {
            return Garments.derive(piece.spec());
        } catch (IllegalArgumentException fault) {
            throw piece.place()
                    .fault(String.valueOf(fault.getMessage()), "write what is missing, or correct what is written");
        }
    }
}
