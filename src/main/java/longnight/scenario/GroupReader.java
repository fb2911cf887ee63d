package longnight.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.body.BodyParameter;
import longnight.body.law.Huddle;
import longnight.clothing.Garments;
import longnight.clothing.Outfit;
import longnight.night.GroupNight;
import longnight.night.GroupNight.Member;
import longnight.night.GroupNight.Places;
import longnight.night.GroupNight.Spare;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.quantity.Spelling;
import longnight.scenario.WardrobeReader.Piece;
import longnight.scenario.WardrobeReader.Underlay;
import longnight.scenario.WardrobeReader.Wardrobe;
import org.jspecify.annotations.Nullable;

/** A file of people with kits and spares on one night. */
public final class GroupReader {
    private static final int FEWEST = 2;
    private static final int MOST = 12;
    private static final int MOST_OF_ONE = 9;
    private static final Pattern COUNT = Pattern.compile("[1-9][0-9]?");

    private final Shelf shelf = new Shelf();
    private final Section section;

    private GroupReader(Path file) {
        Value root = shelf.yaml(file, Place.of(file));
        FileKind kind = FileKind.of(root);
        if (kind != FileKind.GROUP && !hasPeople(root)) {
            throw root.place()
                    .fault(
                            "this is a " + kind.word() + " file, no group",
                            "name a group file; \"longnight check\" reads any of them");
        }
        section = new Section(root, Tables.GROUP);
    }

    private static boolean hasPeople(Value root) {
        return root instanceof Value.Entries written
                && written.entries().stream()
                        .anyMatch(entry -> entry.key().text().equals("people"));
    }

    /**
     * Reads a group and everything it names.
     *
     * @throws InputFault when anything in it is at fault; what lies outside the model's range is no fault
     */
    public static GroupNight read(Path file) {
        return new GroupReader(file).group();
    }

    private GroupNight group() {
        Value.Text night = section.written("night");
        shelf.yaml(night); // a missing file is told where the group names it
        List<Member> members = members(TextFile.path(night));
        List<Spare> spares = section.has("spares") ? spares() : List.of();
        @Nullable Places places = section.has("huddle") ? places(members) : null;
        return new GroupNight(section.text("name"), members, spares, places);
    }

    // --- people ---

    private List<Member> members(Path night) {
        List<Section> people = section.sections("people");
        if (people.size() < FEWEST || people.size() > MOST) {
            throw section.at("people")
                    .fault("a group of " + people.size(), "allowed is from " + FEWEST + " to " + MOST + " people");
        }
        List<Member> members = new ArrayList<>();
        Map<String, Place> seen = new HashMap<>();
        for (Section person : people) {
            String id = person.text("id");
            requireNew(person, seen);
            members.add(new Member(id, alone(night, person, id)));
        }
        return members;
    }

    private Scenario alone(Path night, Section person, String id) {
        Scenario alone;
        try {
            alone = ScenarioReader.read(night, person, shelf).scenario();
        } catch (InputFault fault) {
            throw new InputFault(
                    Path.of(fault.file()),
                    fault.line(),
                    fault.column(),
                    fault.found(),
                    fault.allowed(),
                    Stream.of(fault.hint(), "read for \"" + id + "\"")
                            .filter(text -> !text.isEmpty())
                            .reduce((a, b) -> a + "; " + b)
                            .orElseThrow());
        }
        if (!(alone.outfit() instanceof Outfit.Kit)) {
            throw section.at("night").fault("a night in laboratory clothing", "name a night with kits");
        }
        return alone;
    }

    private static void requireNew(Section each, Map<String, Place> seen) {
        Place place = each.at("id");
        @Nullable Place first = seen.putIfAbsent(each.text("id"), place);
        if (first != null) {
            throw place.fault(
                    "id \"" + each.text("id") + "\" for the second time", "line " + first.line() + " has this one");
        }
    }

    // --- spares ---

    private List<Spare> spares() {
        if (!section.has("wardrobe")) {
            throw section.keyAt("spares").fault("\"spares\" without \"wardrobe\"", "write the file that has them");
        }
        Wardrobe wardrobe = shelf.wardrobe(section.written("wardrobe"));
        List<Spare> spares = new ArrayList<>();
        Map<String, Place> seen = new HashMap<>();
        for (Section each : section.sections("spares")) {
            requireNew(each, seen);
            spares.add(spare(each, wardrobe));
        }
        return spares;
    }

    private static Spare spare(Section section, Wardrobe wardrobe) {
        String id = section.text("id");
        int count = section.has("count") ? count(section, "count", MOST_OF_ONE) : 1;
        @Nullable Piece piece = wardrobe.pieces().get(id);
        @Nullable Underlay pad = wardrobe.pads().get(id);
        if (piece != null) {
            Garments.Derived derived = KitReader.derived(
                    new Piece(piece.spec().called("spare " + id), piece.guesses(), piece.place(), piece.finishTold()));
            List<Guess> guesses = new ArrayList<>();
            KitReader.addGuesses(piece, derived, guesses);
            return new Spare(id, derived.garment(), null, count, guesses);
        }
        if (pad != null) {
            return new Spare(id, null, pad.pad(), count, pad.guesses());
        }
        List<String> known = Stream.concat(wardrobe.pieces().keySet().stream(), wardrobe.pads().keySet().stream())
                .toList();
        throw section.at("id")
                .fault(
                        "unknown piece or pad \"" + id + "\"",
                        "the wardrobe has: " + String.join(", ", known),
                        Spelling.suggestion(id, known));
    }

    private static int count(Section section, String key, int most) {
        String text = section.text(key);
        if (!COUNT.matcher(text).matches() || Integer.parseInt(text) > most) {
            throw section.at(key)
                    .fault("\"" + key + "\" is \"" + text + "\"", "write a whole number from 1 to " + most);
        }
        return Integer.parseInt(text);
    }

    // --- huddle ---

    private Places places(List<Member> members) {
        Section places = section.section("huddle");
        for (Phase phase : members.get(0).alone().plan().phases()) {
            if (phase.huddle() > 0) {
                throw section.keyAt("huddle")
                        .fault(
                                "\"huddle\" beside a plan that has one, in \"" + phase.name() + "\"",
                                "write one of them");
            }
        }
        int outer = places.has("outer-places") ? count(places, "outer-places", MOST - 1) : 2;
        if (outer >= members.size()) {
            throw places.at("outer-places")
                    .fault(
                            outer + " outer places for " + members.size() + " people",
                            "there is at least one inner place: write \"outer-places\" from 1 to "
                                    + (members.size() - 1));
        }
        double night = members.get(0).alone().plan().duration();
        double swap = places.quantity("swap");
        if (swap > night / 2) {
            throw places.at("swap")
                    .fault(
                            "\"swap\" is \"" + places.text("swap") + "\" in a night of " + Math.round(night / 60)
                                    + " min",
                            "allowed is up to half of the night");
        }
        double inner = share(places, "inner");
        if (inner < share(places, "outer")) {
            throw places.at("inner")
                    .fault(
                            "\"" + places.word("inner") + "\" inside and \"" + places.word("outer") + "\" outside",
                            "the inner place touches at least as much as the outer one");
        }
        return new Places(inner, share(places, "outer"), outer, swap);
    }

    /** As for a phase of a plan. */
    private static double share(Section places, String key) {
        return places.word(key, Huddle.class).contactShare() * BodyParameter.HUDDLE_CONTACT.nominal();
    }
}
