package longnight.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.DayReport;
import longnight.night.FuelReport;
import longnight.night.NightResult;
import longnight.night.Phase;
import longnight.study.Effect;
import longnight.study.Pocket;

/** The sentences of a pocket sheet, as short as paper of that size asks. */
final class PocketWords {
    private static final int LONGEST = 24;
    /** What one piece of food is reckoned as [J]; a round figure, engineering estimate, no source. */
    private static final double PIECE = 1e6;

    private static final double HOUR = 3600;
    private static final int TWO = 2;
    private static final int FEW = 3;

    private final Pocket pocket;
    private final NightResult night;
    private final List<Phase> phases;
    private final Units units;

    PocketWords(Pocket pocket, Units units) {
        this.pocket = pocket;
        this.units = units;
        night = pocket.asPlanned();
        phases = night.scenario().plan().phases();
    }

    static String name(String name) {
        String clean = Wording.name(name);
        return clean.codePointCount(0, clean.length()) <= LONGEST
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST - 3)) + "...";
    }

    String who() {
        return Prose.text(
                "page.who",
                Wording.name(night.scenario().nightName()),
                Wording.name(night.scenario().kitName()),
                Wording.person(night.scenario().person()));
    }

    // --- The table ---

    String wind(double speed) {
        return units.line(Measure.WIND, speed);
    }

    String air(Pocket.Row row) {
        return Figures.whole(units.value(Measure.TEMPERATURE, row.air().mean()));
    }

    String airUnit() {
        return units.unit(Measure.TEMPERATURE);
    }

    /** "2.04 no 03:40". */
    String cell(Pocket.Cell cell) {
        double from = cell.verdict().from();
        String key = "pocket.cell." + cell.verdict().outcome().name();
        String word = Double.isNaN(from) && !holds(cell)
                ? Prose.text("pocket.cell.unknown")
                : Prose.text(key, Wording.clock(night, from));
        return Figures.decimals(cell.demand(), 2) + " " + word;
    }

    static boolean holds(Pocket.Cell cell) {
        return switch (cell.verdict().outcome()) {
            case HOLDS_EASILY, HOLDS_BY_SHIVERING -> true;
            case DOES_NOT_HOLD, OUTSIDE_THE_MODEL -> false;
        };
    }

    String legend() {
        return Prose.text(
                "pocket.legend",
                Wording.clock(night, 0),
                Wording.clock(night, night.scenario().plan().duration()),
                name(pocket.people().get(0).name()),
                name(pocket.people().get(1).name()));
    }

    // --- Kit ---

    /** Every piece in the order of dressing with its mass and when it is worn. */
    String kit() {
        List<String> told = new ArrayList<>();
        pieces().forEach((piece, mass) ->
                told.add(Prose.text("pocket.piece", name(piece), units.text(Measure.PIECE, mass), when(piece))));
        return String.join("; ", told) + ". " + Prose.text("pocket.kit.all", units.text(Measure.LOAD, night.kitMass()));
    }

    /** Masses [kg] by id: from the skin outwards, what is worn on the way in its place, then what is sat on. */
    private Map<String, Double> pieces() {
        Map<String, Double> masses = new LinkedHashMap<>();
        List<String> order = new ArrayList<>();
        List<Outfit.Kit> kits = kits();
        for (Outfit.Kit kit : kits) {
            int at = 0;
            for (Garment piece : kit.pieces()) {
                String id = piece.spec().id();
                if (masses.putIfAbsent(id, piece.spec().mass()) == null) {
                    order.add(at, id);
                }
                at = order.indexOf(id) + 1;
            }
        }
        Map<String, Double> pieces = new LinkedHashMap<>();
        order.forEach(id -> pieces.put(id, masses.get(id)));
        kits.forEach(kit -> kit.pads().forEach(pad -> pieces.putIfAbsent(pad.id(), pad.mass())));
        return pieces;
    }

    private List<Outfit.Kit> kits() {
        List<Outfit.Kit> kits = new ArrayList<>();
        if (night.scenario().outfit() instanceof Outfit.Kit kit) {
            kits.add(kit);
        }
        phases.forEach(phase -> {
            if (phase.outfit() instanceof Outfit.Kit kit) {
                kits.add(kit);
            }
        });
        return kits;
    }

    private String when(String piece) {
        Set<String> when = new LinkedHashSet<>();
        for (Phase phase : phases) {
            if (worn(phase).contains(piece)) {
                when.add(Prose.text(
                        phase.march() != null ? "pocket.moving" : phase.from() < 0 ? "pocket.halt" : "pocket.night"));
            }
        }
        return when.isEmpty() ? Prose.text("pocket.pack") : String.join("", when);
    }

    private Set<String> worn(Phase phase) {
        Outfit outfit = phase.outfit() == null ? night.scenario().outfit() : phase.outfit();
        if (!(outfit instanceof Outfit.Kit kit)) {
            return Set.of();
        }
        Set<String> worn = kit.pieces().stream()
                .map(Garment::spec)
                .map(spec -> spec.id())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (phase.march() == null) {
            kit.pads().stream().map(Pad::id).forEach(worn::add);
        }
        return worn;
    }

    // --- On and off ---

    /** When to put on and take off, by the clock and in minutes, as planned and as the model would. */
    String onAndOff() {
        List<String> told = new ArrayList<>();
        Set<String> before = Set.of();
        double stop = Double.NaN;
        for (Phase phase : phases) {
            Set<String> now = worn(phase);
            String change = told.isEmpty() ? begun(now) : changed(before, now);
            if (!change.isEmpty()) {
                String clock = Wording.clock(night, phase.from());
                told.add(
                        Double.isNaN(stop)
                                ? Prose.text("pocket.at", clock, name(phase.name()), change)
                                : Prose.text(
                                        "pocket.at.stopped",
                                        clock,
                                        name(phase.name()),
                                        Figures.whole((phase.from() - stop) / 60),
                                        change));
            }
            before = now;
            stop = phase.march() != null ? phase.to() : stop;
        }
        return String.join("; ", told) + ". " + asTheModelWould();
    }

    private String begun(Set<String> now) {
        Set<String> left = new LinkedHashSet<>(pieces().keySet());
        left.removeAll(now);
        return left.isEmpty() ? Prose.text("pocket.all") : Prose.text("pocket.all.but", names(left));
    }

    private String changed(Set<String> before, Set<String> now) {
        Set<String> on = new LinkedHashSet<>(now);
        on.removeAll(before);
        Set<String> off = new LinkedHashSet<>(before);
        off.removeAll(now);
        List<String> parts = new ArrayList<>();
        if (!on.isEmpty()) {
            parts.add(Prose.text("pocket.on", names(on)));
        }
        if (!off.isEmpty()) {
            parts.add(Prose.text("pocket.off", names(off)));
        }
        return String.join(", ", parts);
    }

    private static String names(Set<String> pieces) {
        return pieces.stream().map(PocketWords::name).collect(Collectors.joining(", "));
    }

    private String asTheModelWould() {
        DayReport day = night.day();
        boolean walks = phases.stream().anyMatch(phase -> phase.march() != null);
        if (day == null || !walks) {
            return Prose.text("pocket.still");
        }
        String sweat = Double.isNaN(day.sweatingAfter())
                ? Prose.text("pocket.sweat.none")
                : Prose.text("pocket.sweat", Figures.whole(day.sweatingAfter() / 60));
        return sweat + " "
                + (Double.isNaN(day.coolingAfter())
                        ? Prose.text("pocket.cool.none")
                        : Prose.text("pocket.cool", Figures.whole(day.coolingAfter() / 60)));
    }

    // --- Changes ---

    String helps() {
        return stops() ? Prose.text("pocket.helps.stopped") : told(pocket.helps(), "pocket.helps.none");
    }

    String omissions() {
        return stops() ? Prose.text("pocket.omissions.stopped") : told(pocket.omissions(), "pocket.omissions.none");
    }

    private boolean stops() {
        return !Double.isNaN(pocket.asPlanned().stopped());
    }

    private String told(List<Effect> effects, String none) {
        return effects.isEmpty()
                ? Prose.text(none, units.deadBand())
                : effects.stream().limit(TWO).map(this::told).collect(Collectors.joining("; ")) + ".";
    }

    private String told(Effect effect) {
        String change = WorthWording.name(effect.change(), units);
        double mass = units.value(Measure.PIECE, effect.change().mass());
        String grams = WorthWording.signed(mass, units.isMetric() ? 0 : 1) + " " + units.unit(Measure.PIECE);
        return Prose.text("pocket.change", Wording.name(change), watts(effect), grams);
    }

    /** Shortfall heat as a mean over the night: in order even where nobody can shiver more. */
    private String watts(Effect effect) {
        return Double.isNaN(effect.shortfall())
                ? Prose.text("pocket.stops", units.line(Measure.TEMPERATURE, 32))
                : Prose.text(
                        "pocket.watts",
                        WorthWording.signed(
                                -effect.shortfall() / night.scenario().plan().duration(), 0));
    }

    // --- Food and drill ---

    String food() {
        FuelReport fuel = night.fuel();
        if (fuel == null) {
            return Prose.text("pocket.unknown");
        }
        double hours = Wording.end(night) / HOUR;
        return Prose.text(
                "pocket.food",
                units.text(Measure.HEAT, fuel.aboveRest() / hours),
                Figures.decimals(fuel.aboveRest() / PIECE / hours, 1),
                units.line(Measure.TURNOVER, PIECE));
    }

    String drill() {
        double share = phases.stream()
                .filter(phase -> phase.from() >= 0)
                .mapToDouble(Phase::drillShare)
                .max()
                .orElse(0);
        if (share > 0) {
            return Prose.text("pocket.drill", Figures.whole(60 * share));
        }
        return pocket.drill()
                .filter(each -> !Double.isNaN(each.deficit()))
                .map(each -> Prose.text(
                        "pocket.drill.none.worth",
                        WorthWording.signed(-units.value(Measure.HEAT, each.deficit()), 0),
                        units.unit(Measure.HEAT)))
                .orElse(Prose.text("pocket.drill.none"));
    }

    // --- Guesses ---

    /** Which inputs were guessed, for each they are about; when brief, more than a few of one only as a number. */
    String guessed(boolean isBrief) {
        Set<String> pieces = pieces().keySet();
        Map<String, Set<String>> quantities = new LinkedHashMap<>();
        for (Guess guess : night.guessed()) {
            String about = pieces.contains(guess.subject()) ? Prose.text("pocket.pieces") : name(guess.subject());
            quantities.computeIfAbsent(about, key -> new LinkedHashSet<>()).add(guess.quantity());
        }
        List<String> told = new ArrayList<>();
        quantities.forEach((about, each) -> told.add(
                isBrief && each.size() > FEW
                        ? Prose.text("pocket.guessed.many", about, String.valueOf(each.size()))
                        : Prose.text("pocket.guessed.each", about, String.join(", ", each))));
        return told.isEmpty() ? Prose.text("pocket.guessed.none") : String.join("; ", told) + ".";
    }
}
