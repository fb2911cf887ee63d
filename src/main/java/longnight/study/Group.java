package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longnight.body.BodyParameter;
import longnight.night.Caution;
import longnight.night.GroupNight;
import longnight.night.GroupNight.Member;
import longnight.night.GroupNight.Places;
import longnight.night.GroupNight.Spare;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * Who of a group is most exposed, which spare helps whom, and what a rota of places in the huddle gives. The group's outcome is
 * that of its most exposed member.
 *
 * @param question  the group
 * @param standings everybody in their own kit, the most exposed first
 * @param spares    each spare on each member who would put it on, those for the most exposed first, the best per mass first
 * @param unworn    spares that nobody of the group would put on, by id
 * @param handout   spares handed out one after the other, each to whoever is most exposed then
 * @param rotas     ways of sharing the places of the huddle; empty without one
 * @param bounds    of what even turns save the most exposed; null without a huddle
 * @param together  even turns with the spares handed out so; null without a huddle, or where none was handed out
 * @param cautions  that apply to any of the nights, the general one first
 * @param nights    how many nights were run
 */
public record Group(
        GroupNight question,
        List<Standing> standings,
        List<Handed> spares,
        List<String> unworn,
        List<Handed> handout,
        List<Rota> rotas,
        Rota.@Nullable Bounds bounds,
        @Nullable Rota together,
        List<Caution> cautions,
        int nights) {

    /** A demand is worth so much of itself [1]; as told beside every comparison. */
    private static final double TRUST = 0.1;

    /**
     * Works it all out.
     *
     * @param group    whose members' nights all lie within the model's range
     * @param settings for every night
     * @param threads  how many work at once, 1 and up; the answer does not depend on it
     */
    public static Group of(GroupNight group, NumericalSettings settings, int threads) {
        return new Work(group, settings, threads).answer();
    }

    /** The most exposed member: theirs is the group's outcome. */
    public Standing weakest() {
        return standings.get(0);
    }

    /** The spare that helps the most exposed most per mass; none where nothing helps. */
    public Optional<Handed> best() {
        return spares.stream().filter(Handed::toWeakest).filter(Handed::helps).findFirst();
    }

    /** The spare that saves most per mass, whoever wears it; none where nothing helps anybody. */
    public Optional<Handed> bestForAnybody() {
        return spares.stream().filter(Handed::helps).min(Handed.MOST_HELP_FIRST);
    }

    /** The rota that leaves the group's most exposed best off; none without a huddle. */
    public Optional<Rota> bestRota() {
        return rotas.stream()
                .max(Comparator.comparing((Rota rota) -> rota.standings().get(0), WITHOUT_NAMES)
                        .thenComparing(Rota::kind, Comparator.reverseOrder()));
    }

    /** Those besides the most exposed who ask so nearly as much that the model cannot tell who of them is most exposed. */
    public List<Standing> nearlyAsExposed() {
        return standings.subList(1, standings.size()).stream()
                .filter(one -> one.result().demand()
                        >= (1 - TRUST) * weakest().result().demand())
                .toList();
    }

    /** As {@link Standing#MOST_EXPOSED_FIRST}, which of two equally exposed is called what left out. */
    private static final Comparator<Standing> WITHOUT_NAMES =
            (one, other) -> Standing.MOST_EXPOSED_FIRST.compare(one, new Standing(one.id(), other.result()));

    /** A way of taking turns. */
    public Optional<Rota> rota(Rota.Kind kind) {
        return rotas.stream().filter(rota -> rota.kind() == kind).findFirst();
    }

    /** One answer in the making. */
    private static final class Work {
        private final GroupNight group;
        private final NumericalSettings settings;
        private final int threads;
        private final List<Standing> standings;
        /** In the order of exposure. */
        private final List<Member> members;

        private final Set<Caution> cautions = new LinkedHashSet<>();
        private int nights;

        Work(GroupNight group, NumericalSettings settings, int threads) {
            this.group = group;
            this.settings = settings;
            this.threads = threads;
            List<NightResult> alone =
                    run(group.members().stream().map(Member::alone).toList());
            standings = IntStream.range(0, alone.size())
                    .mapToObj(i -> new Standing(group.members().get(i).id(), alone.get(i)))
                    .sorted(Standing.MOST_EXPOSED_FIRST)
                    .toList();
            Map<String, Member> byId = new LinkedHashMap<>();
            group.members().forEach(member -> byId.put(member.id(), member));
            members = standings.stream()
                    .map(one -> java.util.Objects.requireNonNull(byId.get(one.id())))
                    .toList();
        }

        Group answer() {
            List<Handed> handed = handed();
            List<String> unworn = group.spares().stream()
                    .map(Spare::id)
                    .filter(id ->
                            handed.stream().noneMatch(each -> each.spare().id().equals(id)))
                    .sorted()
                    .toList();
            HandingOut handing = new HandingOut(members, standings, group.spares(), this::run);
            List<Handed> handout = handing.steps();
            List<Rota> rotas = rotas();
            @Nullable Places places = group.places();
            @Nullable
            Rota together = places == null || handout.isEmpty() ? null : rota(Rota.Kind.EVEN, places, handing.after());
            Rota.@Nullable Bounds bounds = places == null ? null : bounds(places);
            return new Group(
                    group, standings, handed, unworn, handout, rotas, bounds, together, sorted(cautions), nights);
        }

        private List<NightResult> run(List<Scenario> questions) {
            List<NightResult> results = Together.ask(
                    questions,
                    question ->
                            NightEngine.compile(question, ModelChoice.nominal()).run(settings),
                    threads);
            nights += results.size();
            results.forEach(result -> cautions.addAll(result.cautions()));
            return results;
        }

        // --- spares ---

        private record Try(Spare spare, int rank, Scenario night) {}

        private List<Handed> handed() {
            List<Try> tries = new ArrayList<>();
            for (Spare spare : group.spares()) {
                for (int rank = 0; rank < members.size(); rank++) {
                    @Nullable Scenario night = HandingOut.with(members.get(rank).alone(), spare);
                    if (night != null) {
                        tries.add(new Try(spare, rank, night));
                    }
                }
            }
            List<NightResult> results = run(tries.stream().map(Try::night).toList());
            return IntStream.range(0, tries.size())
                    .mapToObj(i -> handed(tries.get(i), results.get(i)))
                    .sorted(Handed.BEST_FIRST)
                    .toList();
        }

        private Handed handed(Try one, NightResult result) {
            Standing before = standings.get(one.rank());
            Standing after = new Standing(before.id(), result);
            Standing weakest = HandingOut.weakestWith(standings, one.rank(), after);
            return new Handed(one.spare(), before, after, one.rank() == 0, weakest);
        }

        // --- huddle ---

        private List<Rota> rotas() {
            @Nullable Places places = group.places();
            List<Rota> rotas = new ArrayList<>();
            if (places != null) {
                for (Rota.Kind kind : Rota.Kind.values()) {
                    rotas.add(rota(kind, places, members));
                }
            }
            return List.copyOf(rotas);
        }

        /** @param byRank in the order of exposure */
        private Rota rota(Rota.Kind kind, Places places, List<Member> byRank) {
            double duration = byRank.get(0).alone().plan().duration();
            int people = byRank.size();
            Turns turns = kind == Rota.Kind.KEPT_OUTSIDE
                    ? Turns.of(
                            new Places(places.inner(), places.outer(), places.outerPlaces(), duration),
                            people,
                            duration,
                            1)
                    : Turns.of(places, people, duration, kind.share(people, places.outerPlaces()));
            List<Scenario> questions = IntStream.range(0, people)
                    .mapToObj(rank -> turns.night(byRank.get(rank).alone(), rank))
                    .toList();
            List<NightResult> results = run(questions);
            List<Standing> then = IntStream.range(0, people)
                    .mapToObj(rank -> new Standing(byRank.get(rank).id(), results.get(rank)))
                    .sorted(Standing.MOST_EXPOSED_FIRST)
                    .toList();
            return turns.rota(kind, byRank.stream().map(Member::id).toList(), duration, then);
        }

        private Rota.Bounds bounds(Places places) {
            Scenario alone = members.get(0).alone();
            double share = Rota.Kind.EVEN.share(members.size(), places.outerPlaces());
            List<Scenario> questions = Stream.of(
                            BodyParameter.HUDDLE_CONTACT.low(), BodyParameter.HUDDLE_CONTACT.high())
                    .map(touch -> places.touching(touch / BodyParameter.HUDDLE_CONTACT.nominal()))
                    .map(other -> Turns.of(other, members.size(), alone.plan().duration(), share)
                            .night(alone, 0))
                    .toList();
            List<NightResult> results = run(questions);
            return new Rota.Bounds(saved(results.get(0)), saved(results.get(1)));
        }

        private double saved(NightResult other) {
            NightResult apart = standings.get(0).result();
            boolean comparable = Double.isNaN(apart.stopped()) && Double.isNaN(other.stopped());
            return comparable ? apart.shortfallHeat() - other.shortfallHeat() : Double.NaN;
        }

        /** The general one first, the others in an order that nobody's place moves. */
        private static List<Caution> sorted(Set<Caution> cautions) {
            return cautions.stream().sorted().toList();
        }
    }
}
