package longnight.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import longnight.body.law.Drill;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.Intake;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.study.Change.Kind;
import org.jspecify.annotations.Nullable;

/** Everything that a night lets one do otherwise. */
final class Changes {
    private static final List<Posture> POSTURES = List.of(
            Posture.SITTING_KNEES_UP,
            Posture.SITTING_LEGS_OUT,
            Posture.SITTING_CROSS_LEGGED,
            Posture.LYING_CURLED,
            Posture.LYING_SUPINE);

    /** How late a late parka is [s]. */
    static final double LATE = 20 * 60;

    private static final double DRILL_SHARE = 1.0 / 6;
    private static final double MEAL_TIME = 1800;
    /** Share of a mixed meal's energy that is carbohydrate; common practice, no source. */
    private static final double CARBOHYDRATE = 0.55;

    private static final double WIND_LEFT = 0.5;
    private static final double LEAST_WIND = 0.03;
    private static final double SKY_LEFT = 0.1;

    private final Scenario night;
    private final Outfit.Kit kit;
    private final Map<String, Garment> own = new LinkedHashMap<>();
    private final List<Change> changes = new ArrayList<>();

    private Changes(Scenario night) {
        this.night = night;
        kit = (Outfit.Kit) night.outfit();
        kit.pieces().forEach(piece -> own.put(piece.spec().id(), piece));
        for (Phase phase : night.plan().phases()) {
            if (phase.outfit() instanceof Outfit.Kit worn) {
                worn.pieces().forEach(piece -> own.putIfAbsent(piece.spec().id(), piece));
            }
        }
    }

    /**
     * All of them.
     *
     * @param pieces of the wardrobe
     * @param pads   of the wardrobe
     */
    static List<Change> of(Scenario night, List<Garment> pieces, List<Pad> pads) {
        Changes all = new Changes(night);
        all.without();
        all.with(pieces);
        all.order();
        all.pads(pads);
        all.halt();
        all.water();
        all.warmth();
        all.shelter();
        return List.copyOf(all.changes);
    }

    private void add(Kind kind, List<String> names, Set<String> slots, UnaryOperator<Scenario> make) {
        changes.add(new Change(kind, names, slots, 0, 0, make));
    }

    private void add(Kind kind, String slot, UnaryOperator<Scenario> make) {
        add(kind, List.of(), Set.of(slot), make);
    }

    // --- Pieces ---

    private void without() {
        for (Garment piece : own.values()) {
            String id = piece.spec().id();
            UnaryOperator<Scenario> make = scenario -> Rewear.without(scenario, id);
            if (canBe(make)) {
                changes.add(new Change(
                        Kind.WITHOUT, List.of(id), Set.of(id), -piece.spec().mass(), -price(piece), make));
            }
        }
    }

    private void with(List<Garment> wardrobe) {
        for (Garment piece : wardrobe) {
            String id = piece.spec().id();
            if (own.containsKey(id)) {
                continue;
            }
            UnaryOperator<Scenario> make = scenario -> Rewear.with(scenario, piece);
            if (canBe(make)) {
                changes.add(new Change(
                        Kind.WITH, named(piece), Set.of(id), piece.spec().mass(), price(piece), make));
            }
            for (Garment worn : kit.pieces()) {
                if (worn.spec().kind() == piece.spec().kind() || areBothFootwear(worn, piece)) {
                    exchange(worn, piece);
                }
            }
        }
    }

    /** The piece, and the one that it is worn over where there is one. */
    private List<String> named(Garment piece) {
        Outfit.Kit worn = (Outfit.Kit) Rewear.with(night, piece).outfit();
        @Nullable String below = null;
        for (Garment each : worn.pieces()) {
            if (each == piece) {
                break;
            }
            Set<Zone> both = zones(each);
            both.retainAll(zones(piece));
            below = both.isEmpty() ? below : each.spec().id();
        }
        return below == null ? List.of(piece.spec().id()) : List.of(piece.spec().id(), below);
    }

    private void exchange(Garment worn, Garment piece) {
        String from = worn.spec().id();
        String to = piece.spec().id();
        UnaryOperator<Scenario> make = scenario -> Rewear.exchanged(scenario, from, piece);
        if (canBe(make)) {
            changes.add(new Change(
                    Kind.EXCHANGED,
                    List.of(from, to),
                    Set.of(from, to),
                    piece.spec().mass() - worn.spec().mass(),
                    price(piece) - price(worn),
                    make));
        }
    }

    private static boolean areBothFootwear(Garment one, Garment other) {
        return Dressing.isFootwear(one.spec().kind())
                && Dressing.isFootwear(other.spec().kind());
    }

    private static double price(Garment piece) {
        @Nullable Double price = piece.spec().price();
        return price == null ? Double.NaN : price;
    }

    private void order() {
        for (int i = 0; i + 1 < kit.pieces().size(); i++) {
            Garment lower = kit.pieces().get(i);
            Garment upper = kit.pieces().get(i + 1);
            UnaryOperator<Scenario> make = scenario ->
                    Rewear.swapped(scenario, lower.spec().id(), upper.spec().id());
            if (areLayers(lower, upper) && canBe(make)) {
                List<String> both = List.of(lower.spec().id(), upper.spec().id());
                add(Kind.SWAPPED, both, Set.copyOf(both), make);
            }
        }
        for (Garment piece : own.values()) {
            String id = piece.spec().id();
            if (piece.hasHood()) {
                add(Kind.HOOD_DOWN, List.of(id), Set.of(id), scenario -> Rewear.hoodDown(scenario, id));
            }
        }
    }

    /** Both on the chest, or both on the legs. */
    private static boolean areLayers(Garment one, Garment other) {
        return one.canOpen() ? other.canOpen() : !other.canOpen() && onLegs(one) && onLegs(other);
    }

    private static boolean onLegs(Garment piece) {
        return zones(piece).contains(Zone.THIGH);
    }

    private static Set<Zone> zones(Garment piece) {
        Set<Zone> zones = new HashSet<>();
        piece.pieces().forEach(layer -> zones.add(layer.zone()));
        return zones;
    }

    /** Whether it can be done to this night, and nobody would be dressed as nobody dresses. */
    private boolean canBe(UnaryOperator<Scenario> make) {
        Scenario other;
        try {
            other = make.apply(night);
        } catch (IllegalStateException cannot) {
            return false;
        }
        boolean layered = Dressing.firstClash(kinds(kit), false) != null;
        if (clashes(other.outfit(), layered)) {
            return false;
        }
        return other.plan().phases().stream()
                .noneMatch(phase -> phase.outfit() != null && clashes(phase.outfit(), layered));
    }

    private static boolean clashes(Outfit outfit, boolean layered) {
        return outfit instanceof Outfit.Kit worn && Dressing.firstClash(kinds(worn), layered) != null;
    }

    private static List<GarmentKind> kinds(Outfit.Kit worn) {
        return worn.pieces().stream().map(piece -> piece.spec().kind()).toList();
    }

    // --- Pads and postures ---

    private void pads(List<Pad> wardrobe) {
        for (Pad pad : kit.pads()) {
            List<Pad> rest = kit.pads().stream()
                    .filter(each -> !each.id().equals(pad.id()))
                    .toList();
            changes.add(new Change(
                    Kind.WITHOUT_PAD,
                    List.of(pad.id()),
                    Set.of("pads"),
                    -pad.mass(),
                    Double.NaN,
                    scenario -> Rewear.on(scenario, rest)));
        }
        for (Pad pad : wardrobe) {
            if (kit.pads().stream().noneMatch(each -> each.id().equals(pad.id()))) {
                List<Pad> more = new ArrayList<>(kit.pads());
                more.add(pad);
                changes.add(new Change(
                        Kind.WITH_PAD,
                        List.of(pad.id()),
                        Set.of("pads"),
                        pad.mass(),
                        Double.NaN,
                        scenario -> Rewear.on(scenario, more)));
            }
        }
        Posture now = restingPosture();
        for (Posture posture : POSTURES) {
            if (posture != now) {
                add(
                        Kind.POSTURE,
                        List.of(posture.name()),
                        Set.of("posture"),
                        scenario -> resting(scenario, phase -> phase.in(posture)));
            }
        }
    }

    /** Held in the longest rest of the night. */
    private Posture restingPosture() {
        Phase longest = night.plan().firstOfNight();
        for (Phase phase : night.plan().phases()) {
            boolean longer = phase.to() - phase.from() > longest.to() - longest.from();
            if (isRest(phase) && (longer || !isRest(longest))) {
                longest = phase;
            }
        }
        return longest.posture();
    }

    private static boolean isRest(Phase phase) {
        return phase.from() >= 0 && phase.march() == null && phase.posture() != Posture.STANDING;
    }

    private static Scenario resting(Scenario scenario, UnaryOperator<Phase> change) {
        return phases(scenario, phase -> isRest(phase) ? change.apply(phase) : phase);
    }

    private static Scenario phases(Scenario scenario, UnaryOperator<Phase> change) {
        return scenario.withPlan(scenario.plan()
                .withPhases(scenario.plan().phases().stream().map(change).toList()));
    }

    // --- The halt ---

    private void halt() {
        Set<String> whole = Rewear.ids(kit);
        boolean later = night.plan().phases().stream()
                .anyMatch(phase -> isStill(phase)
                        && phase.outfit() instanceof Outfit.Kit worn
                        && !Rewear.ids(worn).equals(whole));
        if (later) {
            add(
                    Kind.AT_ONCE,
                    "halt",
                    scenario -> phases(scenario, phase -> isStill(phase) ? phase.wearing(null) : phase));
        }
        @Nullable String parka = parka();
        Phase first = night.plan().firstOfNight();
        boolean on = first.outfit() == null
                || first.outfit() instanceof Outfit.Kit worn && Rewear.ids(worn).contains(parka);
        if (parka != null && on && first.march() == null && first.to() - first.from() > LATE) {
            add(Kind.PARKA_LATE, List.of(parka), Set.of("halt", parka), scenario -> late(scenario, parka));
        }
    }

    private static boolean isStill(Phase phase) {
        return phase.from() >= 0 && phase.march() == null;
    }

    /** The outermost parka or insulated jacket. */
    private @Nullable String parka() {
        @Nullable String found = null;
        for (Garment piece : kit.pieces()) {
            GarmentKind kind = piece.spec().kind();
            if (kind == GarmentKind.PARKA || kind == GarmentKind.INSULATED_JACKET) {
                found = piece.spec().id();
            }
        }
        return found;
    }

    private static Scenario late(Scenario scenario, String parka) {
        List<Phase> phases = new ArrayList<>();
        Phase first = scenario.plan().firstOfNight();
        for (Phase phase : scenario.plan().phases()) {
            if (phase != first) {
                phases.add(phase);
                continue;
            }
            Outfit.Kit worn = (Outfit.Kit) (phase.outfit() == null ? scenario.outfit() : phase.outfit());
            List<Garment> others = worn.pieces().stream()
                    .filter(piece -> !piece.spec().id().equals(parka))
                    .toList();
            phases.add(phase.during(phase.from(), phase.from() + LATE).wearing(new Outfit.Kit(others, worn.pads())));
            phases.add(phase.during(phase.from() + LATE, phase.to()));
        }
        return scenario.withPlan(scenario.plan().withPhases(phases));
    }

    // --- Water, food, work, shelter ---

    private void water() {
        if (!night.plan().damp().isEmpty()) {
            add(Kind.BEGUN_DRY, "water", ArrivedDamp::dry);
        }
        if (!ArrivedDamp.damp(night).plan().damp().equals(night.plan().damp())) {
            add(Kind.BEGUN_DAMP, "water", ArrivedDamp::damp);
        }
    }

    private void warmth() {
        if (night.plan().phases().stream().anyMatch(phase -> phase.drillShare() > 0)) {
            add(Kind.NO_DRILL, "drill", scenario -> phases(scenario, phase -> phase.drilling(0, phase.drillHeat())));
        } else {
            double heat = Drill.GENERAL.rate(1);
            add(Kind.DRILL, "drill", scenario -> resting(scenario, phase -> phase.drilling(DRILL_SHARE, heat)));
        }
        if (night.plan().intakes().stream().anyMatch(intake -> intake.energy() > 0)) {
            add(
                    Kind.NO_MEALS,
                    "meals",
                    scenario -> scenario.withPlan(scenario.plan()
                            .withIntakes(scenario.plan().intakes().stream()
                                    .map(intake -> new Intake(intake.time(), 0, 0, intake.drink(), intake.celsius()))
                                    .toList())));
        }
        add(Kind.MEAL, "meals", scenario -> {
            List<Intake> more = new ArrayList<>(scenario.plan().intakes());
            int at = 0;
            while (at < more.size() && more.get(at).time() <= MEAL_TIME) {
                at++;
            }
            more.add(at, new Intake(MEAL_TIME, Change.MEAL, CARBOHYDRATE * Change.MEAL, 0, 0));
            return scenario.withPlan(scenario.plan().withIntakes(more));
        });
    }

    private void shelter() {
        add(
                Kind.LESS_WIND,
                "wind",
                scenario -> phases(
                        scenario,
                        phase -> phase.from() < 0 || phase.march() != null
                                ? phase
                                : phase.sheltered(
                                        Math.max(LEAST_WIND, WIND_LEFT * phase.windShare()), phase.underRoof())));
        add(
                Kind.OVERHEAD,
                "overhead",
                scenario -> phases(scenario, phase -> isStill(phase) ? phase.sheltered(phase.windShare(), true) : phase)
                        .withSurroundings(
                                scenario.surroundings().elsewhere(site -> site.withSky(SKY_LEFT * site.skyGap()))));
    }
}
