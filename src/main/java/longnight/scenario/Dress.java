package longnight.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.quantity.Spelling;
import longnight.scenario.KitReader.Worn;
import longnight.scenario.WardrobeReader.Piece;
import org.jspecify.annotations.Nullable;

/**
 * The pieces of a kit, and which of them a phase of the plan wears. A plan names a piece by its id, or by its kind where it
 * is to serve several kits; an id wins over a kind, and a kind of which there is nothing is passed over.
 */
final class Dress {
    private static final List<String> KINDS = Key.wordsOf(GarmentKind.class);

    private final Map<String, Piece> pieces;
    private final Map<String, Garment> garments;
    private final List<String> order;
    private final List<Worn<Piece>> whole;
    private final List<Pad> pads;
    private final boolean layered;

    /**
     * A kit.
     *
     * @param pieces   worn and carried, by name
     * @param garments the same, derived
     * @param whole    what is worn at night when nothing else is said
     * @param pads     what lies under the body
     * @param layered  whether two parkas or pairs of boots may be worn over each other
     */
    Dress(
            Map<String, Piece> pieces,
            Map<String, Garment> garments,
            List<Worn<Piece>> whole,
            List<Pad> pads,
            boolean layered) {
        this.pieces = pieces;
        this.garments = garments;
        this.order = List.copyOf(pieces.keySet());
        this.whole = List.copyOf(whole);
        this.pads = List.copyOf(pads);
        this.layered = layered;
    }

    /** What is worn at night when nothing else is said. */
    List<Worn<Piece>> whole() {
        return whole;
    }

    /** The pieces on the body, with the pads under it or not. */
    Outfit.Kit outfit(List<Worn<Piece>> worn, boolean padded) {
        return outfit(worn, padded, Set.of());
    }

    /** The same with the fronts of some pieces open. */
    Outfit.Kit outfit(List<Worn<Piece>> worn, boolean padded, Set<String> open) {
        return new Outfit.Kit(
                worn.stream()
                        .map(each -> open.contains(each.name().text())
                                ? garment(each).opened()
                                : garment(each))
                        .toList(),
                padded ? pads : List.of());
    }

    /** Ids of the pieces that a phase wears open; each must be on and have a front to open. */
    Set<String> open(Section phase, List<Worn<Piece>> worn) {
        Set<String> open = new HashSet<>();
        if (phase.has("open")) {
            for (Value.Text name : phase.names("open")) {
                if (isKind(name)) {
                    ofKind(worn, name).stream()
                            .filter(each -> garment(each).canOpen())
                            .forEach(each -> open.add(each.name().text()));
                    continue;
                }
                Garment garment = garment(worn.get(place(worn, name, "opened")));
                if (!garment.canOpen()) {
                    throw name.place()
                            .fault(
                                    "\"" + name.text() + "\" is opened",
                                    "only pieces that cover the chest have a front to open");
                }
                open.add(name.text());
            }
        }
        return open;
    }

    /** Mass of the pieces on the body [kg]. */
    static double mass(List<Worn<Piece>> worn) {
        return worn.stream().mapToDouble(each -> each.what().spec().mass()).sum();
    }

    /** Whether a phase says what it wears. */
    static boolean isTold(Section phase) {
        return List.of("wear", "off", "on", "swap").stream().anyMatch(phase::has);
    }

    /** What a phase wears, with what the one before it wore. */
    List<Worn<Piece>> worn(Section phase, List<Worn<Piece>> before) {
        List<Worn<Piece>> now;
        if (phase.has("wear")) {
            for (String key : List.of("off", "on", "swap")) {
                if (phase.has(key)) {
                    throw phase.keyAt(key).fault("\"" + key + "\" beside \"wear\"", "write one of them");
                }
            }
            now = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Value.Text name : phase.names("wear")) {
                if (isKind(name)) {
                    ofKind(whole, name).stream()
                            .filter(each -> seen.add(each.name().text()))
                            .forEach(now::add);
                    continue;
                }
                if (!seen.add(name.text())) {
                    throw name.place()
                            .fault("\"" + name.text() + "\" for the second time", "there is one of it; name it once");
                }
                now.add(piece(name));
            }
        } else {
            now = changed(phase, before);
        }
        if (now.isEmpty()) {
            throw phase.at("wear").fault("a phase in which nothing is worn", "name at least one piece");
        }
        KitReader.check(now, layered);
        return now;
    }

    private List<Worn<Piece>> changed(Section phase, List<Worn<Piece>> before) {
        List<Worn<Piece>> now = new ArrayList<>(before);
        if (phase.has("off")) {
            for (Value.Text name : phase.names("off")) {
                if (isKind(name)) {
                    String kind = name.text();
                    now.removeIf(each -> Key.wordOf(each.what().spec().kind()).equals(kind));
                } else {
                    now.remove(place(now, name, "taken off"));
                }
            }
        }
        if (phase.has("swap")) {
            for (Section.Each swap : phase.each("swap")) {
                int at = place(now, swap.name(), "swapped");
                requireFree(now, swap.value());
                now.set(at, piece(swap.value()));
            }
        }
        if (phase.has("on")) {
            for (Value.Text name : phase.names("on")) {
                if (isKind(name)) {
                    ofKind(whole, name).stream()
                            .filter(each -> !isOn(now, each.name()))
                            .forEach(each -> putOn(now, each));
                } else {
                    requireFree(now, name);
                    putOn(now, piece(name));
                }
            }
        }
        return now;
    }

    private void putOn(List<Worn<Piece>> now, Worn<Piece> piece) {
        int rank = order.indexOf(piece.name().text());
        // over the outermost of those that the kit lists before it
        int at = now.size();
        while (at > 0 && order.indexOf(now.get(at - 1).name().text()) > rank) {
            at--;
        }
        now.add(at, piece);
    }

    /** Whether a name of the plan stands for a kind of piece, not for one piece. */
    boolean isKind(Value.Text name) {
        return !pieces.containsKey(name.text()) && KINDS.contains(name.text());
    }

    /** Those of a kind among some pieces, each under its own id at the place where the kind was written. */
    static List<Worn<Piece>> ofKind(List<Worn<Piece>> among, Value.Text kind) {
        return among.stream()
                .filter(each -> Key.wordOf(each.what().spec().kind()).equals(kind.text()))
                .map(each -> new Worn<>(new Value.Text(kind.place(), each.name().text(), ""), each.what()))
                .toList();
    }

    private static boolean isOn(List<Worn<Piece>> now, Value.Text name) {
        return now.stream().anyMatch(each -> each.name().text().equals(name.text()));
    }

    private int place(List<Worn<Piece>> now, Value.Text name, String what) {
        piece(name);
        for (int i = 0; i < now.size(); i++) {
            if (now.get(i).name().text().equals(name.text())) {
                return i;
            }
        }
        throw name.place()
                .fault("\"" + name.text() + "\" is " + what + " but not on", "on at that time: " + names(now));
    }

    private static void requireFree(List<Worn<Piece>> now, Value.Text name) {
        if (isOn(now, name)) {
            throw name.place()
                    .fault("\"" + name.text() + "\" is put on but on already", "on at that time: " + names(now));
        }
    }

    private static String names(List<Worn<Piece>> now) {
        return String.join(", ", now.stream().map(each -> each.name().text()).toList());
    }

    /** A piece by the name written. */
    Worn<Piece> piece(Value.Text name) {
        @Nullable Piece found = pieces.get(name.text());
        if (isKind(name)) {
            throw name.place()
                    .fault(
                            "\"" + name.text() + "\" is a kind, and one piece is wanted here",
                            "the kit has the pieces: " + String.join(", ", order));
        }
        if (found == null) {
            throw name.place()
                    .fault(
                            "\"" + name.text() + "\" is no piece of the kit",
                            "the kit has the pieces: " + String.join(", ", order) + "; or write a kind of piece",
                            Spelling.suggestion(
                                    name.text(),
                                    Stream.concat(order.stream(), KINDS.stream())
                                            .toList()));
        }
        return new Worn<>(name, found);
    }

    private Garment garment(Worn<Piece> worn) {
        return java.util.Objects.requireNonNull(garments.get(worn.name().text()));
    }
}
