package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.GroupNight;
import longnight.night.GroupNight.Member;
import longnight.night.GroupNight.Places;
import longnight.night.GroupNight.Spare;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.scenario.Gear;
import longnight.scenario.GroupReader;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroupTest {
    private static final Path SCENARIOS = Path.of("scenarios");
    private static final GroupNight FOUR = GroupReader.read(SCENARIOS.resolve("groups/four-in-the-forest.yaml"));
    private static final NumericalSettings SETTINGS = NumericalSettings.coarse();
    private static final Gear GEAR = ScenarioReader.wardrobe(SCENARIOS.resolve("wardrobe.yaml"));
    private static final Group ANSWER = Group.of(FOUR, SETTINGS, 2);

    private static NightResult run(Scenario night) {
        return NightEngine.compile(night, ModelChoice.nominal()).run(SETTINGS);
    }

    private static Spare spare(String id) {
        return FOUR.spares().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Member member(String id) {
        return FOUR.members().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Every figure of an answer, with names put through a map. */
    private static String figures(Group group, Map<String, String> names) {
        StringBuilder text = new StringBuilder();
        group.standings().forEach(one -> tell(one, names, text));
        for (List<Handed> handed : List.of(group.spares(), group.handout())) {
            for (Handed each : handed) {
                text.append(each.spare().id()).append(' ').append(each.toWeakest());
                tell(each.before(), names, text);
                tell(each.after(), names, text);
                tell(each.weakest(), names, text);
            }
        }
        text.append(group.unworn()).append(group.cautions()).append(group.nights());
        text.append(group.bounds());
        List<Rota> rotas = new ArrayList<>(group.rotas());
        if (group.together() != null) {
            rotas.add(group.together());
        }
        for (Rota rota : rotas) {
            text.append('\n').append(rota.kind());
            rota.outside()
                    .forEach(turn -> text.append(
                            turn.stream().map(id -> names.getOrDefault(id, id)).toList()));
            Map<String, Double> hours = new TreeMap<>();
            rota.outsideFor().forEach((id, time) -> hours.put(names.getOrDefault(id, id), time));
            text.append(hours);
            rota.standings().forEach(one -> tell(one, names, text));
        }
        return text.toString();
    }

    private static void tell(Standing one, Map<String, String> names, StringBuilder text) {
        NightResult result = one.result();
        text.append('\n')
                .append(List.of(
                        names.getOrDefault(one.id(), one.id()),
                        one.reserve(),
                        one.reserveHeat(),
                        result.shortfallHeat(),
                        result.coreHeatDeficitDawn(),
                        result.verdict().outcome(),
                        result.scenario().person().name()));
    }

    // --- order ---

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void the_order_of_the_file_changes_no_digit(int turned) {
        List<Member> members = new ArrayList<>(FOUR.members());
        List<Spare> spares = new ArrayList<>(FOUR.spares());
        Collections.rotate(members, turned);
        Collections.rotate(spares, 2 * turned);
        if (turned == 3) {
            Collections.reverse(spares);
        }
        Group other = Group.of(new GroupNight(FOUR.name(), members, spares, FOUR.places()), SETTINGS, 2);
        assertThat(figures(other, Map.of())).isEqualTo(figures(ANSWER, Map.of()));
    }

    /** Whoever is called what: figures and places go with the person. */
    @Test
    void ids_change_no_digit() {
        Map<String, String> names =
                Map.of("leader", "tall", "student", "leader", "veteran", "student", "tall", "veteran");
        List<Member> members = FOUR.members().stream()
                .map(member -> new Member(names.getOrDefault(member.id(), ""), member.alone()))
                .toList();
        Group other = Group.of(new GroupNight(FOUR.name(), members, FOUR.spares(), FOUR.places()), SETTINGS, 2);
        assertThat(figures(other, Map.of())).isEqualTo(figures(ANSWER, names));
    }

    @Test
    void one_thread_and_two_give_the_same_digits() {
        assertThat(figures(Group.of(FOUR, SETTINGS, 1), Map.of())).isEqualTo(figures(ANSWER, Map.of()));
    }

    /** Equal in every figure: only then the id decides, in whatever order they come. */
    @Test
    void twins_stand_by_their_ids() {
        Scenario same = member("leader").alone();
        List<Member> twins = new ArrayList<>(
                List.of(new Member("b", same), new Member("a", same), new Member("c", same), member("tall")));
        Group one = Group.of(new GroupNight("twins", twins, List.of(), FOUR.places()), SETTINGS, 2);
        Collections.reverse(twins);
        Group other = Group.of(new GroupNight("twins", twins, List.of(), FOUR.places()), SETTINGS, 2);
        assertThat(one.standings()).extracting(Standing::id).containsExactly("tall", "a", "b", "c");
        assertThat(figures(other, Map.of())).isEqualTo(figures(one, Map.of()));
    }

    @Test
    void people_stand_by_outcome_and_then_by_reserve_and_the_first_is_the_groups() {
        List<Standing> all = ANSWER.standings();
        assertThat(all).hasSize(4);
        for (int i = 1; i < all.size(); i++) {
            int worse = all.get(i - 1).result().verdict().outcome().ordinal();
            int better = all.get(i).result().verdict().outcome().ordinal();
            assertThat(worse).isGreaterThanOrEqualTo(better);
            if (worse == better) {
                assertThat(all.get(i - 1).reserve()).isLessThan(all.get(i).reserve());
            }
        }
        assertThat(ANSWER.weakest()).isEqualTo(all.get(0));
        for (Standing one : all) {
            NightResult own = run(member(one.id()).alone());
            assertThat(one.reserve()).isEqualTo(2 - own.demand());
            assertThat(one.reserveHeat()).isEqualTo((2 - own.demand()) * own.restHeat());
            assertThat(one.result().shortfallHeat()).isEqualTo(own.shortfallHeat());
        }
    }

    // --- spares ---

    /** A night read with the piece written into the kit is the judge; the spare's own id must not matter either. */
    @ParameterizedTest
    @CsvSource({"batt-overtrousers,tall,down-jacket", "batt-parka,tall,down-jacket", "fleece-balaclava,student,knit-cap"
    })
    void a_spare_is_worth_what_it_is_worth_in_the_kit(String id, String who, String under, @TempDir Path folder)
            throws Exception {
        List<String> worn = new ArrayList<>();
        Outfit.Kit own = (Outfit.Kit) member(who).alone().outfit();
        for (Garment piece : own.pieces()) {
            worn.add(piece.spec().id());
            if (piece.spec().id().equals(under)) {
                worn.add(id);
            }
        }
        Path kit = Files.writeString(
                folder.resolve("kit.yaml"),
                "name: with it\nwardrobe: " + SCENARIOS.resolve("wardrobe.yaml").toAbsolutePath() + "\nworn: " + worn
                        + "\npads: [sit-pad]\n");
        Scenario night = ScenarioReader.read(SCENARIOS.resolve("overcast-forest.yaml"), new Instead(null, kit))
                .scenario()
                .withPerson(member(who).alone().person());
        Handed handed = ANSWER.spares().stream()
                .filter(each ->
                        each.spare().id().equals(id) && each.before().id().equals(who))
                .findFirst()
                .orElseThrow();
        assertThat(handed.after().result().shortfallHeat())
                .isCloseTo(
                        run(night).shortfallHeat(),
                        within(1e-6 * handed.before().result().shortfallHeat()));
        assertThat(handed.saved())
                .isEqualTo(handed.before().result().shortfallHeat()
                        - handed.after().result().shortfallHeat());
        assertThat(handed.perMass() * spare(id).mass()).isCloseTo(handed.saved(), within(1e-3));
    }

    @Test
    void what_nobody_puts_on_is_never_told_as_a_help() {
        assertThat(ANSWER.unworn()).containsExactly("felt-boots");
        assertThat(ANSWER.spares()).noneMatch(each -> each.spare().id().equals("felt-boots"));
        assertThat(ANSWER.handout()).noneMatch(each -> each.spare().id().equals("felt-boots"));
        Group only = Group.of(new GroupNight("boots", FOUR.members(), List.of(spare("felt-boots")), null), SETTINGS, 2);
        assertThat(only.best()).isEmpty();
        assertThat(only.bestForAnybody()).isEmpty();
        assertThat(only.handout()).isEmpty();
        assertThat(only.unworn()).containsExactly("felt-boots");
        assertThat(only.nights()).isEqualTo(4);
    }

    /** The rule by one piece against the rule by whole kits, which shares no line with it. */
    @ParameterizedTest
    @ValueSource(strings = {"light", "typical", "typical-down", "heavy", "rain", "cotton"})
    void what_is_put_on_leaves_a_kit_that_may_be_worn(String name) {
        Outfit.Kit kit = (Outfit.Kit) ColdSearchTest.night("first-night", name).outfit();
        Outfit.Kit ordered = new Outfit.Kit(Dressing.inOrder(kit.pieces()), kit.pads());
        assertThat(DressRules.allows(ordered, false)).isTrue();
        for (Garment piece : GEAR.pieces()) {
            List<Garment> more = new ArrayList<>(kit.pieces());
            more.add(piece);
            Outfit.Kit with = new Outfit.Kit(Dressing.inOrder(more), kit.pads());
            assertThat(DressRules.takes(kit, piece)).as(piece.spec().id()).isEqualTo(DressRules.allows(with, false));
        }
        for (Pad pad : GEAR.pads()) {
            assertThat(DressRules.takesPad(kit, pad))
                    .isEqualTo(kit.pads().stream().noneMatch(own -> own.id().equals(pad.id())));
        }
        assertThat(DressRules.takesPad(new Outfit.Kit(kit.pieces(), GEAR.pads()), pad("third")))
                .isFalse();
        assertThat(GEAR.pads()).hasSize(2);
    }

    private static Pad pad(String id) {
        Pad like = GEAR.pads().get(0);
        return new Pad(id, id, like.resistance(), like.area(), like.mass(), like.arealHeatCapacity());
    }

    @Test
    void those_for_the_most_exposed_come_first_the_best_per_mass_first() {
        List<Handed> own = ANSWER.spares().stream().filter(Handed::toWeakest).toList();
        assertThat(ANSWER.spares().subList(0, own.size())).isEqualTo(own);
        assertThat(own)
                .extracting(each -> each.before().id())
                .containsOnly(ANSWER.weakest().id());
        for (int i = 1; i < own.size(); i++) {
            assertThat(own.get(i).perMass()).isLessThanOrEqualTo(own.get(i - 1).perMass());
        }
        assertThat(ANSWER.best()).contains(own.get(0));
        for (Handed each : ANSWER.spares()) {
            if (!each.toWeakest()) { // what others put on cannot lift the group
                assertThat(each.weakest().id()).isEqualTo(ANSWER.weakest().id());
                assertThat(each.weakest().reserve()).isEqualTo(ANSWER.weakest().reserve());
            }
        }
    }

    /** The chain of hand-outs: always to the most exposed, never one more than there is, until nothing helps them. */
    @Test
    void spares_are_handed_to_whoever_is_most_exposed_until_nothing_helps() {
        Map<String, Standing> now = ANSWER.standings().stream().collect(Collectors.toMap(Standing::id, one -> one));
        Map<String, Integer> used = new TreeMap<>();
        Map<String, Scenario> nights = FOUR.members().stream().collect(Collectors.toMap(Member::id, Member::alone));
        assertThat(ANSWER.handout()).isNotEmpty();
        for (Handed each : ANSWER.handout()) {
            Standing weakest =
                    now.values().stream().min(Standing.MOST_EXPOSED_FIRST).orElseThrow();
            assertThat(each.before()).isEqualTo(weakest);
            assertThat(each.helps()).isTrue();
            used.merge(each.spare().id(), 1, Integer::sum);
            assertThat(used.get(each.spare().id()))
                    .isLessThanOrEqualTo(each.spare().count());
            now.put(each.after().id(), each.after());
            nights.put(each.after().id(), each.after().result().scenario());
        }
        Standing last = now.values().stream().min(Standing.MOST_EXPOSED_FIRST).orElseThrow();
        for (Spare spare : FOUR.spares()) {
            Scenario more = HandingOut.with(nights.get(last.id()), spare);
            if (more != null && used.getOrDefault(spare.id(), 0) < spare.count()) {
                assertThat(last.result().shortfallHeat() - run(more).shortfallHeat())
                        .isLessThanOrEqualTo(Worth.FLOOR);
            }
        }
    }

    /** Three in a gale that two light kits do not carry to the end. */
    @Test
    void a_reckoning_that_stops_is_the_worst_and_what_keeps_it_going_helps_most(@TempDir Path folder) throws Exception {
        StringBuilder text = new StringBuilder("name: gale\nnight: S/windy-ridge.yaml\npeople:\n");
        text.append("  - {id: heavy, person: S/people/student.yaml, kit: S/kits/heavy.yaml}\n");
        text.append("  - {id: rain, person: S/people/veteran.yaml, kit: S/kits/rain.yaml}\n");
        text.append("  - {id: light, person: S/people/veteran.yaml, kit: S/kits/light.yaml}\n");
        text.append("wardrobe: S/wardrobe.yaml\nspares: [{id: mat}, {id: deep-cold-parka}, {id: deep-cold-mittens}]\n");
        Path file = Files.writeString(
                folder.resolve("gale.yaml"), text.toString().replace("S/", SCENARIOS.toAbsolutePath() + "/"));
        Group gale = Group.of(GroupReader.read(file), SETTINGS, 2);
        List<Standing> all = gale.standings();
        assertThat(all.get(2).id()).isEqualTo("heavy");
        assertThat(all.get(2).result().stopped()).isNaN();
        assertThat(all.get(0).result().stopped()).isLessThan(all.get(1).result().stopped());
        List<Handed> own = gale.spares().stream().filter(Handed::toWeakest).toList();
        assertThat(own.get(0).rescues()).isTrue();
        assertThat(own.get(0).saved()).isNaN();
        assertThat(gale.best()).contains(own.get(0));
        for (Handed each : own.subList(1, own.size())) {
            assertThat(each.rescues()).isFalse();
            assertThat(each.longer()).isGreaterThan(0);
        }
        assertThat(gale.handout().get(0).before()).isEqualTo(all.get(0));
    }

    // --- huddle ---

    @Test
    void an_inner_place_all_night_is_the_plans_own_word_for_it() {
        Rota inside = ANSWER.rota(Rota.Kind.KEPT_INSIDE).orElseThrow();
        Rota outside = ANSWER.rota(Rota.Kind.KEPT_OUTSIDE).orElseThrow();
        String weakest = ANSWER.weakest().id();
        assertThat(inside.of(weakest).result().shortfallHeat())
                .isEqualTo(run(touching(weakest, 0.20)).shortfallHeat());
        assertThat(outside.of(weakest).result().shortfallHeat())
                .isEqualTo(run(touching(weakest, 0.10)).shortfallHeat());
    }

    private static Scenario touching(String id, double share) {
        Scenario alone = member(id).alone();
        return alone.withPlan(alone.plan()
                .withPhases(alone.plan().phases().stream()
                        .map(phase -> phase.touching(share))
                        .toList()));
    }

    /** Less time outside is never dearer, and any place is better than none. */
    @Test
    void the_less_the_most_exposed_is_outside_the_less_it_costs_them() {
        String weakest = ANSWER.weakest().id();
        double last = ANSWER.weakest().result().shortfallHeat();
        for (Rota.Kind kind : Rota.Kind.values()) {
            double now = ANSWER.rota(kind).orElseThrow().of(weakest).result().shortfallHeat();
            assertThat(now).as(kind.name()).isLessThan(last);
            last = now;
        }
        assertThat(ANSWER.bestRota().orElseThrow().kind()).isEqualTo(Rota.Kind.KEPT_INSIDE);
    }

    /** Of three in equal kits: who is always inside leaves the others to be the most exposed, and the group is no better off. */
    @Test
    void sparing_one_may_expose_another(@TempDir Path folder) throws Exception {
        StringBuilder text = new StringBuilder("name: equal\nnight: S/first-night.yaml\npeople:\n");
        for (String who : List.of("student", "instructor", "veteran")) {
            text.append("  - {id: " + who + ", person: S/people/" + who + ".yaml}\n");
        }
        text.append("huddle: {inner: middle-of-row, outer: side-by-side, swap: 20 min}\n");
        Path file = Files.writeString(
                folder.resolve("equal.yaml"), text.toString().replace("S/", SCENARIOS.toAbsolutePath() + "/"));
        Group equal = Group.of(GroupReader.read(file), SETTINGS, 2);
        Rota inside = equal.rota(Rota.Kind.KEPT_INSIDE).orElseThrow();
        assertThat(inside.standings().get(0).id()).isNotEqualTo(equal.weakest().id());
        Rota best = equal.bestRota().orElseThrow();
        assertThat(best.kind()).isNotEqualTo(Rota.Kind.KEPT_INSIDE);
        for (Rota rota : equal.rotas()) {
            assertThat(best.standings().get(0).reserve())
                    .isGreaterThanOrEqualTo(rota.standings().get(0).reserve());
        }
        assertThat(equal.nearlyAsExposed()).hasSize(2);
    }

    /** The cuts alone: places that are all alike cost what one uncut night costs, whoever changes with whom. */
    @Test
    void changing_between_equal_places_changes_next_to_nothing() {
        Places alike = new Places(0.1, 0.1, 2, 1800);
        Scenario alone = member("veteran").alone();
        NightResult cut = run(Turns.of(alike, 4, alone.plan().duration(), 0.5).night(alone, 1));
        NightResult whole = run(touching("veteran", 0.1));
        assertThat(cut.scenario().plan().phases()).hasSizeGreaterThan(10);
        assertThat(cut.shortfallHeat()).isCloseTo(whole.shortfallHeat(), within(2e-3 * whole.shortfallHeat()));
        assertThat(cut.demand()).isCloseTo(whole.demand(), within(2e-3));
    }

    /** The spares of the hand-out on, the turns of those who are then most exposed: as if both stood in the plan. */
    @Test
    void spares_and_turns_together_are_the_night_with_both() {
        Rota together = java.util.Objects.requireNonNull(ANSWER.together());
        assertThat(together.kind()).isEqualTo(Rota.Kind.EVEN);
        Map<String, Standing> apart = ANSWER.standings().stream().collect(Collectors.toMap(Standing::id, one -> one));
        ANSWER.handout().forEach(each -> apart.put(each.after().id(), each.after()));
        for (Standing one : together.standings()) {
            assertThat(one.reserve()).isGreaterThan(apart.get(one.id()).reserve());
        }
        for (Handed each : ANSWER.handout()) {
            Outfit.Kit worn = (Outfit.Kit)
                    together.of(each.before().id()).result().scenario().outfit();
            assertThat(worn.pieces()).contains(each.spare().piece());
        }
        assertThat(together.outside()).hasSize(22).allMatch(turn -> turn.size() == 2);
        Group without = Group.of(new GroupNight("x", FOUR.members(), FOUR.spares(), null), SETTINGS, 2);
        assertThat(without.together()).isNull();
        assertThat(without.rotas()).isEmpty();
    }

    /** Steps halved: the same order, and what is saved within 1 % and 3 kJ. */
    @Test
    void nothing_told_hangs_on_the_steps() {
        GroupNight few = new GroupNight(
                FOUR.name(),
                FOUR.members(),
                List.of(spare("batt-overtrousers"), spare("fleece-balaclava")),
                FOUR.places());
        Group usual = Group.of(few, NumericalSettings.standard(), 2);
        Group halved = Group.of(few, NumericalSettings.standard().divided(2), 2);
        assertThat(halved.standings())
                .extracting(Standing::id)
                .isEqualTo(usual.standings().stream().map(Standing::id).toList());
        assertThat(halved.spares()).hasSameSizeAs(usual.spares());
        for (int i = 0; i < usual.spares().size(); i++) {
            Handed one = usual.spares().get(i);
            Handed other = halved.spares().get(i);
            assertThat(other.spare()).isEqualTo(one.spare());
            assertThat(other.before().id()).isEqualTo(one.before().id());
            assertThat(other.saved()).isCloseTo(one.saved(), within(0.01 * Math.abs(one.saved()) + 3e3));
        }
        for (Rota.Kind kind : Rota.Kind.values()) {
            double saved = savedBy(usual, kind);
            assertThat(savedBy(halved, kind)).as(kind.name()).isCloseTo(saved, within(0.01 * saved + 3e3));
        }
    }

    /** About half and one and a half times what the usual share saves; the same as a huddle of such shares. */
    @Test
    void bounds_are_those_of_the_share_in_touch() {
        Rota.Bounds bounds = java.util.Objects.requireNonNull(ANSWER.bounds());
        double usual = savedBy(ANSWER, Rota.Kind.EVEN);
        assertThat(bounds.low()).isBetween(0.4 * usual, 0.6 * usual);
        assertThat(bounds.high()).isBetween(1.35 * usual, 1.65 * usual);
        Places more = java.util.Objects.requireNonNull(FOUR.places()).touching(1.5);
        assertThat(more.inner()).isCloseTo(0.3, within(1e-12));
        Group closer = Group.of(new GroupNight("x", FOUR.members(), List.of(), more), SETTINGS, 2);
        assertThat(savedBy(closer, Rota.Kind.EVEN)).isEqualTo(bounds.high());
    }

    private static double savedBy(Group group, Rota.Kind kind) {
        return group.weakest().result().shortfallHeat()
                - group.rota(kind)
                        .orElseThrow()
                        .of(group.weakest().id())
                        .result()
                        .shortfallHeat();
    }

    @ParameterizedTest
    @CsvSource({"2,1", "3,1", "3,2", "4,2", "5,2", "5,4", "7,3", "12,2", "12,11"})
    void every_turn_fills_the_outer_places_and_even_turns_are_even(int people, int outer) {
        for (double night : new double[] {3600, 11 * 3600, 11 * 3600 + 700, 13.5 * 3600}) {
            Places places = new Places(0.2, 0.1, outer, 1800);
            int slots = (int) Math.ceil(night / 1800);
            for (Rota.Kind kind : List.of(Rota.Kind.EVEN, Rota.Kind.HALF, Rota.Kind.KEPT_INSIDE)) {
                Turns turns = Turns.of(places, people, night, kind.share(people, outer));
                int[] out = new int[people];
                for (int slot = 0; slot < slots; slot++) {
                    int together = 0;
                    for (int rank = 0; rank < people; rank++) {
                        if (turns.isOutside(slot, rank)) {
                            together++;
                            out[rank]++;
                        }
                    }
                    assertThat(together).isEqualTo(outer);
                }
                assertThat(turns.slots()).isEqualTo(slots);
                double share = kind.share(people, outer);
                double others = (outer - share) / (people - 1);
                assertThat((double) out[0]).isCloseTo(share * slots, within(1.0001));
                for (int rank = 1; rank < people; rank++) {
                    assertThat((double) out[rank]).isCloseTo(others * slots, within(1.0001));
                }
                if (kind == Rota.Kind.KEPT_INSIDE) {
                    assertThat(out[0]).isZero();
                }
            }
        }
    }

    /** Cut where places change, whole in time, and only where people sit still at night. */
    @Test
    void a_march_before_dusk_is_no_huddle() {
        Scenario night = ColdSearchTest.night("parka-minute-20");
        Turns turns = Turns.of(new Places(0.2, 0.1, 2, 3000), 5, night.plan().duration(), 0.4);
        for (int rank = 0; rank < 5; rank++) {
            List<Phase> phases = turns.night(night, rank).plan().phases();
            double time = 0;
            for (Phase phase : phases) {
                if (phase.from() < -1e-6 || phase.march() != null) {
                    assertThat(phase.huddle()).isZero();
                } else {
                    assertThat(phase.huddle()).isIn(0.2, 0.1);
                    assertThat(phase.huddle())
                            .isEqualTo(turns.isOutside((int) ((phase.from() + 1e-3) / 3000), rank) ? 0.1 : 0.2);
                    time += phase.to() - phase.from();
                }
            }
            assertThat(time).isCloseTo(night.plan().duration(), within(1e-6));
        }
    }
}
