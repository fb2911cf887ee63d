package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longnight.night.GroupNight;
import longnight.night.NightResult;
import longnight.night.Verdict;
import longnight.study.Group;
import longnight.study.Handed;
import longnight.study.Rota;
import longnight.study.Standing;
import longnight.study.Worth;
import org.jspecify.annotations.Nullable;

/** The sentences that all outputs about a group share. */
final class GroupWords {
    /** Core at which the model stops [degC]; {@link NightResult#stopped}. */
    private static final double COLDEST_CORE = 32;

    /** So many are told one by one. */
    private static final int FEW = 4;

    private final Group group;
    private final Units units;

    GroupWords(Group group, Units units) {
        this.group = group;
        this.units = units;
    }

    /** What is asked: group, night, how many. */
    String about() {
        return Wording.clean(Prose.text(
                "page.who",
                Wording.name(group.question().name()),
                Wording.name(group.weakest().result().scenario().nightName()),
                Prose.text("group.people", String.valueOf(group.standings().size()))));
    }

    /** Who is most exposed, and what becomes of them: the group's outcome. */
    String headline() {
        return Prose.text(
                "group.headline",
                name(group.weakest()),
                Wording.verdict(group.weakest().result(), units));
    }

    /** Who besides may be the most exposed, as far as the model can tell; empty for nobody. */
    String nearly() {
        String names = group.nearlyAsExposed().stream().map(GroupWords::name).collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : Prose.text("group.nearly", name(group.weakest()), names);
    }

    /** Hands, feet and faces at risk, and whose from when; empty for nobody's. */
    String atRisk() {
        return Stream.of(Verdict.Part.values())
                .map(this::atRisk)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private String atRisk(Verdict.Part part) {
        record Risk(Standing who, double time) {}
        List<Risk> risks = group.standings().stream()
                .flatMap(one -> one.result().verdict().atRisk().stream()
                        .filter(risk -> risk.part() == part)
                        .map(risk -> new Risk(one, risk.time())))
                .toList();
        if (risks.isEmpty()) {
            return "";
        }
        boolean everybody = risks.size() == group.standings().size() && risks.size() > FEW;
        double first = risks.stream().mapToDouble(Risk::time).min().orElseThrow();
        String whose = everybody
                ? Prose.text(
                        "group.risk.everybody", Wording.clock(group.weakest().result(), first))
                : risks.stream()
                        .map(risk -> Prose.text(
                                "group.risk",
                                name(risk.who()),
                                Wording.clock(risk.who().result(), risk.time())))
                        .collect(Collectors.joining(", "));
        return Prose.text("compare.risk." + part, whose);
    }

    /** Persons and kits behind the ids. */
    String who() {
        return group.standings().stream()
                .map(one -> Prose.text(
                        "group.who",
                        name(one),
                        Wording.person(one.result().scenario().person()),
                        Wording.name(one.result().scenario().kitName())))
                .collect(Collectors.joining("; "));
    }

    static String name(Standing one) {
        return Wording.name(one.id());
    }

    static String reserve(Standing one) {
        return Figures.decimals(one.reserve(), 2);
    }

    /** One line: who, in what, how it goes. */
    String line(Standing one) {
        NightResult result = one.result();
        return Prose.text(
                "group.line",
                name(one),
                Wording.person(result.scenario().person()),
                Wording.name(result.scenario().kitName()),
                Compared.verdict(result),
                reserve(one));
    }

    // --- spares ---

    /** Which spare helps most per mass and whom, or that none does; empty where there are no spares. */
    List<String> spares() {
        List<String> told = new ArrayList<>();
        if (group.question().spares().isEmpty()) {
            return told;
        }
        @Nullable Handed best = group.best().orElse(null);
        told.add(
                best == null
                        ? Prose.text("group.spare.none", name(group.weakest()), units.deadBand())
                        : Prose.text(
                                "group.spare.best",
                                name(group.weakest()),
                                Wording.name(best.spare().id()),
                                saved(best),
                                then(best)));
        @Nullable Handed other = group.bestForAnybody().orElse(null);
        if (other != null && !other.equals(best)) {
            told.add(Prose.text(
                    "group.spare.other", Wording.name(other.spare().id()), name(other.before()), saved(other)));
        }
        if (!group.handout().isEmpty()) {
            told.add(Prose.text(
                    "group.handout", group.handout().stream().map(this::step).collect(Collectors.joining("; "))));
        }
        if (!group.unworn().isEmpty()) {
            told.add(Prose.text(
                    "group.spare.unworn",
                    group.unworn().stream().map(Wording::name).collect(Collectors.joining(", "))));
        }
        return told;
    }

    private String step(Handed handed) {
        return Prose.text("group.handout.step", Wording.name(handed.spare().id()), name(handed.before()), then(handed));
    }

    private String saved(Handed handed) {
        if (handed.longer() > 0) {
            return Prose.text("group.spare.longer", coldest(units), Figures.whole(handed.longer() / 60));
        }
        return handed.rescues()
                ? Prose.text("group.spare.rescues", coldest(units))
                : Prose.text(
                        "group.spare.saved",
                        units.text(Measure.HEAT, handed.saved()),
                        units.text(Measure.HEAT_PER_MASS, handed.perMass()));
    }

    /** Where the reckoning stops. */
    static String coldest(Units units) {
        return units.line(Measure.TEMPERATURE, COLDEST_CORE);
    }

    /** Who is most exposed with it. */
    private static String then(Handed handed) {
        Standing weakest = handed.weakest();
        return weakest.id().equals(handed.before().id())
                ? Prose.text("group.then.same", reserve(weakest))
                : Prose.text("group.then.other", name(weakest), reserve(weakest));
    }

    // --- huddle ---

    static String kind(Rota rota) {
        return Prose.text("group.rota." + rota.kind());
    }

    /** What each way of taking turns gives the most exposed; empty without a huddle. */
    List<String> rotas() {
        List<String> told = new ArrayList<>();
        group.rota(Rota.Kind.EVEN).ifPresent(even -> {
            told.add(gives(even, ""));
            for (Rota.Kind kind : List.of(Rota.Kind.HALF, Rota.Kind.KEPT_INSIDE)) {
                group.rota(kind).ifPresent(uneven -> told.add(gives(uneven, against(uneven, even))));
            }
        });
        Rota.@Nullable Bounds bounds = group.bounds();
        if (bounds != null && !Double.isNaN(bounds.low() + bounds.high())) {
            told.add(Prose.text(
                    "group.rota.bounds",
                    name(group.weakest()),
                    units.text(Measure.HEAT, bounds.low()),
                    units.text(Measure.HEAT, bounds.high())));
        }
        @Nullable Rota together = group.together();
        if (together != null) {
            Standing most = together.standings().get(0);
            told.add(Prose.text("group.together", name(most), reserve(most), Compared.verdict(most.result())));
        }
        group.bestRota().ifPresent(best -> told.add(Prose.text("group.rota.best", kind(best))));
        return told;
    }

    private String gives(Rota rota, String more) {
        double saved = saved(rota);
        Standing then = rota.standings().get(0);
        return Prose.text(
                "group.rota.gives",
                kind(rota),
                Double.isNaN(saved)
                        ? Prose.text("group.rota.stopped", name(group.weakest()), coldest(units))
                        : Prose.text("group.rota.saved", name(group.weakest()), units.text(Measure.HEAT, saved)),
                more,
                reserve(rota.of(group.weakest().id())),
                name(then),
                reserve(then));
    }

    /** What it gives and takes against even turns. */
    private String against(Rota uneven, Rota even) {
        double more = saved(uneven) - saved(even);
        double paid = mostPaid(uneven, even);
        return (Double.isNaN(more) ? "" : Prose.text("group.rota.more", units.text(Measure.HEAT, more)))
                + (Double.isNaN(paid)
                        ? Prose.text("group.rota.pays.unknown")
                        : Prose.text("group.rota.pays", units.text(Measure.HEAT, paid)));
    }

    /** Shortfall heat that the most exposed is saved against sitting apart [J]; NaN where a run stopped. */
    double saved(Rota rota) {
        return less(group.weakest(), rota.of(group.weakest().id()));
    }

    /** The most that any other has more of it than at even turns [J]; NaN where a run stopped. */
    double mostPaid(Rota rota, Rota even) {
        return rota.standings().stream()
                .filter(one -> !one.id().equals(group.weakest().id()))
                .mapToDouble(one -> less(one, even.of(one.id())))
                .reduce(Double.NEGATIVE_INFINITY, Math::max);
    }

    /** Bills over different times cannot be compared. */
    private static double less(Standing before, Standing after) {
        boolean whole = Double.isNaN(before.result().stopped())
                && Double.isNaN(after.result().stopped());
        return whole ? before.result().shortfallHeat() - after.result().shortfallHeat() : Double.NaN;
    }

    /** Who is outside when, up to where it begins anew. */
    String turns(Rota rota) {
        List<List<String>> all = rota.outside();
        double dusk = group.weakest().result().scenario().plan().startOfDay();
        int period = period(all);
        List<String> told = new ArrayList<>();
        for (int i = 0; i < period; i++) {
            told.add(Prose.text(
                    "group.rota.turn",
                    Figures.clock(dusk + i * rota.swap()),
                    all.get(i).stream().map(Wording::name).collect(Collectors.joining(", "))));
        }
        return String.join("; ", told) + (period < all.size() ? Prose.text("group.rota.again") : "");
    }

    private static int period(List<List<String>> all) {
        for (int period = 1; period < all.size(); period++) {
            if (all.subList(period, all.size()).equals(all.subList(0, all.size() - period))) {
                return period;
            }
        }
        return all.size();
    }

    // --- notes ---

    /** How the figures were made. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(Prose.text("group.note.reserve", Figures.decimals(Standing.LINE, 1)));
        if (!group.question().spares().isEmpty()) {
            notes.add(Prose.text("group.note.spares", units.text(Measure.HEAT, Worth.FLOOR)));
        }
        GroupNight.@Nullable Places places = group.question().places();
        if (places != null) {
            notes.add(Prose.text(
                    "group.note.huddle",
                    Figures.whole(100 * places.inner()),
                    Figures.whole(100 * places.outer()),
                    String.valueOf(places.outerPlaces()),
                    Figures.whole(places.swap() / 60)));
        }
        notes.add(Prose.text("group.note.nights", String.valueOf(group.nights())));
        return notes;
    }

    static String caution() {
        return Prose.text("group.caution");
    }

    /** Its own first. */
    List<String> shortCautions() {
        return IntStream.rangeClosed(0, group.cautions().size())
                .mapToObj(i ->
                        i == 0 ? caution() : Wording.shortText(group.cautions().get(i - 1), units))
                .toList();
    }
}
