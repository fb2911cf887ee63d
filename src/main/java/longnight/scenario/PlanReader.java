package longnight.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longnight.assumption.Guess;
import longnight.assumption.ParameterSet;
import longnight.body.Body;
import longnight.body.BodyParameter;
import longnight.body.Person;
import longnight.body.law.Drill;
import longnight.body.law.HeatPack;
import longnight.body.law.Huddle;
import longnight.body.law.WalkingHeat;
import longnight.body.law.WalkingSurface;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.PatchStack;
import longnight.clothing.Stacks;
import longnight.figure.Posture;
import longnight.night.HeatBrought;
import longnight.night.Intake;
import longnight.night.March;
import longnight.night.ModelChoice;
import longnight.night.NightPlan;
import longnight.night.Phase;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.UnitSystem;
import longnight.scenario.KitReader.Worn;
import longnight.scenario.WardrobeReader.Piece;
import org.jspecify.annotations.Nullable;

/**
 * What the person does, phase by phase. Phases before dusk stand in one list, those of the night in another; a phase that
 * says nothing of clothing wears what the one before wore, and the night begins in the whole kit.
 */
final class PlanReader {
    /** How much carbohydrate the day has left. */
    enum FuelState {
        FED,
        MISSED_MEALS,
        EXHAUSTED
    }

    /** What gives warmth. */
    enum Warm {
        BOTTLE,
        IRON_PACK,
        SETTING_PACK
    }

    /** Longest stretch before dusk [s]; what came earlier has worn off (engineering estimate, no source). */
    private static final double LONGEST_BEFORE = 12 * 3600;

    /** Share of carbohydrate in the energy of a mixed meal: common practice, no source. */
    private static final double USUAL_CARBOHYDRATE = 0.55;

    /** What a sweet drink gives is carbohydrate: common practice, no source. */
    private static final double DRINK_CARBOHYDRATE = 1.0;

    /** Most water per dry mass that a start may have; beyond it every cloth drips (numerical choice). */
    private static final double WETTEST = 5;

    private static final double SAME = 0.5; // s

    private final Section section;
    private final NightHours hours;
    private final @Nullable Section laboratory;
    private final @Nullable Dress dress;
    private final Person person;
    private final Findings findings;
    private final ParameterSet<BodyParameter> constants = ParameterSet.nominal(BodyParameter.class);
    private final List<Phase> phases = new ArrayList<>();
    private List<Worn<Piece>> worn = List.of();
    /** What each phase wears. */
    private final List<List<Worn<Piece>>> wornIn = new ArrayList<>();

    private PlanReader(
            Section section,
            NightHours hours,
            @Nullable Section laboratory,
            @Nullable Dress dress,
            Person person,
            Findings findings) {
        this.section = section;
        this.hours = hours;
        this.laboratory = laboratory;
        this.dress = dress;
        this.person = person;
        this.findings = findings;
    }

    /** From when to when the night lasts, and how long before it the plan begins. */
    static NightHours hours(Section plan) {
        double from = plan.clock("from");
        if (plan.has("to") == plan.has("duration")) {
            throw (plan.has("to") ? plan.keyAt("duration") : plan.place())
                    .fault(
                            plan.has("to") ? "\"duration\" beside \"to\"" : "a plan without an end",
                            "write one of \"to: 06:30\" and \"duration: 12 h\"");
        }
        double duration;
        if (plan.has("duration")) {
            duration = plan.quantity("duration");
        } else {
            duration = ((plan.clock("to") - from) % NightHours.DAY + NightHours.DAY) % NightHours.DAY;
            Key key = Tables.PLAN.key("duration");
            if (!key.allows(duration)) {
                throw plan.at("to")
                        .fault(
                                "a night of " + inHours(duration) + ", from " + plan.text("from") + " to "
                                        + plan.text("to"),
                                "allowed is " + key.range());
            }
        }
        double before = 0;
        if (plan.has("before")) {
            for (Section phase : plan.sections("before")) {
                for (String key : List.of("from", "to")) {
                    if (phase.has(key)) {
                        throw phase.keyAt(key)
                                .fault(
                                        "\"" + key + "\" in a phase before the night",
                                        "write its duration; the last one ends at " + plan.text("from"));
                    }
                }
                before += phase.quantity("duration");
                double most = Math.min(LONGEST_BEFORE, NightHours.DAY - duration);
                if (before > most) {
                    throw phase.at("duration")
                            .fault(
                                    "phases before the night that last " + inHours(before),
                                    "allowed is up to " + inHours(most) + " before a night of " + inHours(duration));
                }
            }
        }
        return new NightHours(from, duration, before);
    }

    static NightPlan read(
            Section section,
            NightHours hours,
            @Nullable Section laboratory,
            @Nullable Dress dress,
            Person person,
            Findings findings) {
        return new PlanReader(section, hours, laboratory, dress, person, findings).plan();
    }

    private NightPlan plan() {
        boolean rhythm = rhythm();
        if (dress != null) {
            worn = dress.whole();
        }
        readBefore();
        readNight();
        return new NightPlan(
                hours.from(),
                hours.duration(),
                rhythm,
                laboratory == null ? Double.NaN : laboratory.quantityOr("heat", Double.NaN),
                phases,
                intakes(),
                warm(),
                damp(),
                fuel());
    }

    private boolean rhythm() {
        boolean rhythm = laboratory == null;
        if (section.has("daily-rhythm")) {
            rhythm = section.yes("daily-rhythm");
            if (laboratory == null && !rhythm) {
                throw section.at("daily-rhythm")
                        .fault("\"daily-rhythm\" is \"no\"", "outdoors the body's clock always runs");
            }
        } else if (laboratory != null) {
            findings.guesses.add(Guess.word("plan", "daily rhythm of the body", "no", "usual for a laboratory's day"));
        }
        return rhythm;
    }

    // --- phases ---

    private void readBefore() {
        if (!section.has("before")) {
            return;
        }
        double at = -hours.before();
        List<Section> before = section.sections("before");
        for (int i = 0; i < before.size(); i++) {
            Section phase = before.get(i);
            double end = i + 1 == before.size() ? 0 : at + phase.quantity("duration");
            if (i == 0 && dress != null && !Dress.isTold(phase)) {
                findings.guesses.add(
                        Guess.word("plan", "worn before the night", "the whole kit", "not given; nothing taken off"));
            }
            add(phase, at, end, "halt", true);
            at = end;
        }
    }

    private void readNight() {
        List<Section> night = section.has("phases") ? section.sections("phases") : List.of();
        if (section.has("phases") && night.isEmpty()) {
            throw section.at("phases").fault("a night without phases", "write at least one, or leave \"phases\" out");
        }
        if (night.isEmpty()) {
            Posture posture = section.word("posture", Posture.class);
            phases.add(Phase.still("night", 0, hours.duration(), posture, section.yes("sleep")));
            wornIn.add(dress == null ? List.of() : dress.whole());
            return;
        }
        double at = 0;
        for (int i = 0; i < night.size(); i++) {
            Section phase = night.get(i);
            boolean last = i + 1 == night.size();
            requireNext(phase, i, at);
            double end = end(phase, at, last);
            if (last && end < hours.duration() - SAME) {
                throw phase.at(phase.has("to") ? "to" : "duration")
                        .fault(
                                "a hole in the plan: nothing from " + hours.clockAt(end) + " to "
                                        + hours.clockAt(hours.duration()),
                                "phases follow each other without holes up to the end of the night");
            }
            if (end > hours.duration() + SAME) {
                throw phase.at(phase.has("to") ? "to" : "duration")
                        .fault(
                                "a phase up to " + hours.clockAt(end),
                                "the night ends at " + hours.clockAt(hours.duration()));
            }
            if (!last && end > hours.duration() - SAME) {
                throw night.get(i + 1)
                        .place()
                        .fault(
                                "a phase after the end of the night",
                                "the one before ends at " + hours.clockAt(end) + ", and so does the night");
            }
            end = last ? hours.duration() : end;
            if (i == 0 && dress != null && !Dress.isTold(phase)) {
                worn = dress.whole();
            }
            add(phase, at, end, night.size() == 1 ? "night" : "part " + (i + 1) + " of the night", false);
            at = end;
        }
    }

    private void requireNext(Section phase, int index, double at) {
        if (!phase.has("from")) {
            return;
        }
        double from = onNight(phase.clock("from"));
        if (Math.abs(from - at) < SAME) {
            return;
        }
        Place place = phase.at("from");
        String written = phase.text("from");
        if (index == 0) {
            throw place.fault(
                    "the first phase of the night begins at " + written,
                    "it begins with the night, at " + hours.clockAt(0));
        }
        if (Math.abs(from) < SAME) {
            throw place.fault(
                    "a second phase that begins at dusk, " + written,
                    "the phase before ends at " + hours.clockAt(at) + "; begin there");
        }
        boolean hole = from > at;
        throw place.fault(
                hole
                        ? "a hole in the plan: nothing from " + hours.clockAt(at) + " to " + written
                        : "phases overlap: one begins at " + written + ", the one before ends at " + hours.clockAt(at),
                "each phase begins where the one before ends");
    }

    private double end(Section phase, double at, boolean last) {
        boolean both = phase.has("to") && phase.has("duration");
        boolean none = !phase.has("to") && !phase.has("duration");
        if (both || none && !last) {
            throw (both ? phase.keyAt("duration") : phase.place())
                    .fault(
                            both ? "\"duration\" beside \"to\"" : "a phase without an end",
                            "write one of \"to: 22:00\" and \"duration: 2 h\"");
        }
        if (none) {
            return hours.duration();
        }
        if (phase.has("duration")) {
            return at + phase.quantity("duration");
        }
        double to = onNight(phase.clock("to"));
        if (to < at + SAME) {
            throw phase.at("to")
                    .fault("a phase from " + hours.clockAt(at) + " to " + phase.text("to"), "it ends after it begins");
        }
        return to;
    }

    /** Seconds from dusk to a clock time after it. */
    private double onNight(double clock) {
        return ((clock - hours.from()) % NightHours.DAY + NightHours.DAY) % NightHours.DAY;
    }

    private void add(Section phase, double from, double to, String name, boolean before) {
        boolean told = Dress.isTold(phase);
        if (told && dress == null) {
            throw phase.place().fault("a phase that says what is worn, without a kit", "write a kit");
        }
        if (told && dress != null) {
            worn = dress.worn(phase, worn);
        }
        wornIn.add(worn);
        @Nullable March march = phase.has("walk") ? march(phase) : null;
        for (String key : march == null ? List.<String>of() : List.of("posture", "sleep", "drill", "huddle")) {
            if (phase.has(key)) {
                throw phase.keyAt(key).fault("\"" + key + "\" beside \"walk\"", "it goes with a halt only");
            }
        }
        if (before && march == null && !phase.has("posture")) {
            throw phase.place()
                    .fault(
                            "a halt without \"posture\"",
                            "write \"posture\", one of "
                                    + String.join(
                                            ", ", Tables.PHASE.key("posture").words()) + ", or \"walk\"");
        }
        Posture posture = march != null
                ? Posture.STANDING
                : phase.has("posture") ? phase.word("posture", Posture.class) : section.word("posture", Posture.class);
        boolean sleep = march == null && phase.yesOr("sleep", !before && section.yes("sleep"));
        @Nullable Section drill = phase.has("drill") ? phase.section("drill") : null;
        @Nullable Section shelter = phase.has("shelter") ? phase.section("shelter") : null;
        Set<String> open = dress == null ? Set.of() : dress.open(phase, worn);
        for (String id : open) {
            findings.guesses.add(Guess.number(
                    id,
                    "share of the chest left uncovered with the front open",
                    Garment.OPEN_FRONT,
                    "1",
                    "engineering estimate, no source"));
        }
        @Nullable
        Outfit outfit =
                dress == null || open.isEmpty() && sameAsWhole(march) ? null : dress.outfit(worn, march == null, open);
        phases.add(new Phase(
                phase.textOr("name", march != null ? "march" : name),
                from,
                to,
                posture,
                sleep,
                march,
                drill == null ? 0 : drill.quantity("each-hour") / 3600,
                drill == null ? 0 : drill.word("effort", Drill.class).rate(1),
                outfit,
                phase.has("huddle") ? huddle(phase.word("huddle", Huddle.class)) : 0,
                shelter == null ? 1 : shelter.quantity("wind"),
                shelter != null && shelter.yes("roof")));
    }

    private boolean sameAsWhole(@Nullable March march) {
        return march == null && dress != null && ids(worn).equals(ids(dress.whole()));
    }

    private static List<String> ids(List<Worn<Piece>> worn) {
        return worn.stream().map(each -> each.name().text()).toList();
    }

    private double huddle(Huddle huddle) {
        double share = huddle.contactShare() * constants.get(BodyParameter.HUDDLE_CONTACT);
        if (share > 0) {
            findings.guesses.add(Guess.number(
                    "plan",
                    "share of the skin in touch with partners, " + Key.wordOf(huddle),
                    share,
                    "1",
                    BodyParameter.HUDDLE_CONTACT.source()));
        }
        return share;
    }

    private March march(Section phase) {
        Section walk = phase.section("walk");
        double speed = walk.quantity("speed");
        double grade = 100 * walk.quantity("grade");
        double load = walk.quantity("load");
        if (walk.has("surface") == walk.has("footprint")) {
            throw (walk.has("surface") ? walk.keyAt("footprint") : walk.place())
                    .fault(
                            walk.has("surface") ? "\"footprint\" beside \"surface\"" : "a walk without \"surface\"",
                            "write one of \"surface\" ("
                                    + String.join(
                                            ", ", Tables.WALK.key("surface").words())
                                    + ") and \"footprint\", its depth in snow");
        }
        double surface = walk.has("surface")
                ? walk.word("surface", WalkingSurface.class).factor()
                : WalkingSurface.snow(walk.quantity("footprint"));
        if (load < Dress.mass(worn)) {
            throw walk.at("load")
                    .fault(
                            "\"load\" is \"" + walk.text("load") + "\", less than the " + kilograms(Dress.mass(worn))
                                    + " worn",
                            "write the mass of everything worn and carried");
        }
        double rate =
                constants.get(BodyParameter.WALK_HEAT) * WalkingHeat.of(person.mass(), load, speed, grade, surface);
        double ceiling = WalkingHeat.aerobicCeiling(person.mass(), person.peakOxygen());
        if (rate > ceiling) {
            throw walk.place()
                    .fault(
                            "a walk that takes " + Math.round(rate) + " W",
                            person.name() + " has at most " + Math.round(ceiling)
                                    + " W (from \"fitness\"); write less speed, grade or load");
        }
        if (WalkingHeat.isHeavy(person.mass(), load)) {
            findings.guesses.add(
                    Guess.word(
                            "plan",
                            "heat of walking with " + kilograms(load),
                            "as with a light load",
                            "a load over 0.4 of body mass likely costs 10 to 20 % more (Looney et al. 2018 and 2022, abstracts)"));
        }
        return new March(speed, grade, load, surface);
    }

    // --- food, drink, warmth ---

    private List<Intake> intakes() {
        List<Intake> all = new ArrayList<>();
        for (Section meal : section.has("meals") ? section.sections("meals") : List.<Section>of()) {
            double energy = meal.quantity("energy");
            all.add(new Intake(time(meal), energy, energy * carbohydrate(meal, "meal", USUAL_CARBOHYDRATE), 0, 37));
        }
        for (Section drink : section.has("drinks") ? section.sections("drinks") : List.<Section>of()) {
            if (drink.has("volume") == drink.has("mass")) {
                throw (drink.has("mass") ? drink.keyAt("mass") : drink.place())
                        .fault(
                                drink.has("mass") ? "\"mass\" beside \"volume\"" : "a drink without \"volume\"",
                                "write one of \"volume: 0.4 L\" and \"mass: 400 g\"");
            }
            if (drink.has("carbohydrate") && !drink.has("energy")) {
                throw drink.keyAt("carbohydrate").fault("\"carbohydrate\" without \"energy\"", "write the energy");
            }
            double energy = drink.quantityOr("energy", 0);
            double mass = drink.has("mass") ? drink.quantity("mass") : 1000 * drink.quantity("volume");
            double share = energy > 0 ? carbohydrate(drink, "drink", DRINK_CARBOHYDRATE) : 0;
            all.add(new Intake(time(drink), energy, energy * share, mass, drink.quantity("temperature")));
        }
        all.sort(Comparator.comparingDouble(Intake::time));
        return all;
    }

    private double carbohydrate(Section intake, String what, double usual) {
        if (intake.has("carbohydrate")) {
            return intake.quantity("carbohydrate");
        }
        findings.guesses.add(Guess.number(
                "plan",
                "share of carbohydrate in the energy of the " + what + " at " + intake.text("at"),
                usual,
                "1",
                "not given; common practice, no source"));
        return usual;
    }

    /** Seconds from dusk to the clock time of something that happens within the plan. */
    private double time(Section what) {
        double time = hours.first(what.clock("at"));
        if (time >= hours.duration()) {
            throw what.at("at")
                    .fault(
                            "\"at\" is \"" + what.text("at") + "\", outside the plan",
                            "the plan runs from " + hours.clockAt(-hours.before()) + " to "
                                    + hours.clockAt(hours.duration()));
        }
        return time;
    }

    private List<HeatBrought> warm() {
        List<HeatBrought> all = new ArrayList<>();
        boolean bottled = false;
        for (Section warm : section.has("warm") ? section.sections("warm") : List.<Section>of()) {
            Warm kind = warm.word("kind", Warm.class);
            boolean bottle = kind == Warm.BOTTLE;
            String wrong = bottle ? "duration" : "temperature";
            if (warm.has(wrong)) {
                throw warm.keyAt(wrong)
                        .fault(
                                "\"" + wrong + "\" of kind \"" + Key.wordOf(kind) + "\"",
                                "it is for a " + (bottle ? "pack" : "bottle"));
            }
            String name = warm.textOr("name", Key.wordOf(kind).replace('-', ' '));
            double mass = warm.quantity("mass");
            if (bottle) {
                if (bottled) {
                    throw warm.place().fault("a second bottle", "one is followed; write one with the mass of both");
                }
                bottled = true;
                all.add(new HeatBrought(name, time(warm), mass, warm.quantity("temperature"), 0, 0));
                continue;
            }
            double duration = warm.quantity("duration");
            HeatPack pack = kind == Warm.IRON_PACK
                    ? HeatPack.iron(mass, duration)
                    : HeatPack.setting(mass, constants.get(BodyParameter.SETTING_PACK), duration);
            double share = constants.get(BodyParameter.HEAT_PACK_TO_BODY);
            findings.guesses.add(Guess.number(
                    "plan",
                    "share of the heat of the " + name + " that reaches the body",
                    share,
                    "1",
                    BodyParameter.HEAT_PACK_TO_BODY.source()));
            all.add(new HeatBrought(name, time(warm), 0, Double.NaN, share * pack.heat(), duration));
        }
        all.sort(Comparator.comparingDouble(HeatBrought::time));
        return all;
    }

    private double fuel() {
        if (!section.has("fuel")) {
            if (laboratory == null) {
                findings.guesses.add(Guess.number(
                        "plan",
                        "share of a full carbohydrate store at the start",
                        1,
                        "1",
                        "not given; fed and rested"));
            }
            return 1;
        }
        @Nullable
        BodyParameter parameter = switch (section.word("fuel", FuelState.class)) {
            case FED -> null;
            case MISSED_MEALS -> BodyParameter.FUEL_MISSED_MEALS;
            case EXHAUSTED -> BodyParameter.FUEL_EXHAUSTED;
        };
        if (parameter == null) {
            return 1;
        }
        findings.guesses.add(Guess.number(
                "plan",
                "share of a full carbohydrate store at the start",
                constants.get(parameter),
                "1",
                parameter.source()));
        return constants.get(parameter);
    }

    // --- water at the start ---

    private Map<String, Double> damp() {
        Map<String, Double> damp = new LinkedHashMap<>();
        for (Section.Each each : section.has("damp") ? section.each("damp") : List.<Section.Each>of()) {
            Value.Text name = each.name();
            if (dress == null) {
                throw name.place().fault("a damp piece without a kit", "write a kit");
            }
            if (dress.isKind(name)) {
                for (String id : everWorn(name)) {
                    damp.putIfAbsent(id, share(id, each.value(), firstWorn(id)));
                }
                continue;
            }
            dress.piece(name);
            int phase = firstWorn(name.text());
            if (phase == wornIn.size()) {
                throw name.place()
                        .fault(
                                "\"" + name.text() + "\" is damp but never on",
                                "name pieces that are worn in some phase");
            }
            damp.put(name.text(), share(name.text(), each.value(), phase));
        }
        return damp;
    }

    /** Number of the first phase that wears a piece; the number of phases when none does. */
    private int firstWorn(String id) {
        int phase = 0;
        while (phase < wornIn.size() && !ids(wornIn.get(phase)).contains(id)) {
            phase++;
        }
        return phase;
    }

    /** Ids of the pieces of a kind that some phase wears. */
    private List<String> everWorn(Value.Text kind) {
        return wornIn.stream()
                .flatMap(worn -> Dress.ofKind(worn, kind).stream())
                .map(each -> each.name().text())
                .distinct()
                .toList();
    }

    private double share(String id, Value.Text written, int phase) {
        double share;
        if (Quantities.isA(written.text(), Dimension.FRACTION)) {
            share = Quantities.parse(written.text(), Dimension.FRACTION);
        } else if (Quantities.isA(written.text(), Dimension.MASS)) {
            share = Quantities.parse(written.text(), Dimension.MASS) / dryMass(id, phase);
        } else {
            throw written.place()
                    .fault(
                            "damp of \"" + id + "\" is \"" + written.text() + "\"",
                            "write a share of its dry cloth and fill, for example \"30 %\", or a mass, for example \"80 g\"");
        }
        if (!(share >= 0 && share <= WETTEST)) {
            throw written.place()
                    .fault(
                            "damp of \"" + id + "\" is \"" + written.text() + "\", " + Math.round(100 * share)
                                    + " % of its dry cloth and fill",
                            "allowed is from 0 % to " + Math.round(100 * WETTEST) + " %");
        }
        return share;
    }

    /** Dry cloth and fill of a piece over this person's body as a phase wears it [kg]. */
    private double dryMass(String id, int phase) {
        ModelChoice model = ModelChoice.nominal();
        Body body = Body.of(person, model.body(), model.options());
        Outfit outfit = java.util.Objects.requireNonNull(dress).outfit(wornIn.get(phase), true);
        double mass = 0;
        for (PatchStack stack : Stacks.compile(
                outfit, phases.get(phase).posture(), body.segmentAreas(), model.clothing(), laboratory == null)) {
            for (int k = 0; k < stack.layers(); k++) {
                mass += stack.layerIds()[k].equals(id) ? stack.area() * stack.dryMass()[k] : 0;
            }
        }
        return mass;
    }

    private static String kilograms(double mass) {
        return Quantities.format(mass, Dimension.MASS, UnitSystem.METRIC);
    }

    private static String inHours(double time) {
        return Math.round(time / 360) / 10.0 + " h";
    }
}
