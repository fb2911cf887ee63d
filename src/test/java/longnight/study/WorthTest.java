package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.night.NumericalSettings;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.scenario.Gear;
import longnight.scenario.ScenarioReader;
import longnight.study.Change.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorthTest {
    private static final Path SCENARIOS = Path.of("scenarios");
    private static final Line DEMAND = new Line(Line.Measure.DEMAND, 2);
    private static final Gear GEAR = ScenarioReader.wardrobe(SCENARIOS.resolve("wardrobe.yaml"));

    private static Worth worth(Scenario night, double finer, int threads, List<Garment> wardrobe) {
        return Worth.of(
                night,
                wardrobe,
                GEAR.pads(),
                DEMAND,
                NumericalSettings.standard().divided(finer),
                null,
                threads);
    }

    private static Garment piece(String id) {
        return GEAR.pieces().stream()
                .filter(piece -> piece.spec().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> worn(Scenario night, Phase phase) {
        Outfit outfit = phase.outfit() == null ? night.outfit() : phase.outfit();
        return List.copyOf(Rewear.ids((Outfit.Kit) outfit));
    }

    private static Effect find(Worth worth, Kind kind, String name) {
        return worth.effects().stream()
                .filter(effect -> effect.change().kind() == kind
                        && effect.change().names().get(0).equals(name))
                .findFirst()
                .orElseThrow();
    }

    // --- What is worn ---

    @ParameterizedTest
    @ValueSource(strings = {"light", "typical", "heavy", "rain"})
    void a_piece_taken_off_goes_back_to_its_place(String kit) {
        Scenario night = ColdSearchTest.night("first-night", kit);
        Outfit.Kit whole = (Outfit.Kit) night.outfit();
        for (Garment piece : whole.pieces()) {
            Scenario without = Rewear.without(night, piece.spec().id());
            assertThat(Rewear.ids((Outfit.Kit) without.outfit()))
                    .hasSize(whole.pieces().size() - 1)
                    .doesNotContain(piece.spec().id());
            assertThat(Rewear.with(without, piece)).isEqualTo(night);
        }
    }

    /** Both are told against the night that they start from, so what one costs the other saves. */
    @ParameterizedTest
    @ValueSource(strings = {"fleece", "batt-parka", "knit-cap"})
    void taking_away_and_bringing_are_each_others_reverse(String id) {
        Scenario with = ColdSearchTest.night("overcast-forest");
        Scenario without = Rewear.without(with, id);
        Effect cost = find(worth(with, 1, 2, List.of()), Kind.WITHOUT, id);
        Effect saving = find(worth(without, 1, 2, List.of(piece(id))), Kind.WITH, id);
        assertThat(saving.shortfall()).isCloseTo(-cost.shortfall(), within(1e-9 * Math.abs(cost.shortfall())));
        assertThat(saving.extraHeat()).isCloseTo(-cost.extraHeat(), within(1e-9));
        assertThat(saving.deficit()).isCloseTo(-cost.deficit(), within(1e-6));
        assertThat(saving.change().mass()).isEqualTo(-cost.change().mass());
        // the search knows a crossing to a hundredth of a kelvin; it starts from other places here
        assertThat(saving.kelvin()).isCloseTo(-cost.kelvin(), within(0.1));
        assertThat(cost.shortfall()).isNegative();
    }

    /** Climb and first minute without the parka, then everything on. */
    @Test
    void phases_follow() {
        Scenario night = ColdSearchTest.night("parka-minute-20");
        assertThat(night.plan().phases()).hasSize(3);
        Scenario without = Rewear.without(night, "fleece");
        for (Phase phase : without.plan().phases()) {
            assertThat(worn(without, phase)).doesNotContain("fleece").isNotEmpty();
        }
        Scenario with = Rewear.with(night, piece("down-jacket"));
        List<Phase> phases = with.plan().phases();
        assertThat(worn(with, phases.get(0))).doesNotContain("down-jacket");
        assertThat(worn(with, phases.get(1))).doesNotContain("down-jacket");
        assertThat(worn(with, phases.get(2))).contains("down-jacket", "batt-parka");
        Scenario exchanged = Rewear.exchanged(night, "fleece", piece("cotton-hoody"));
        for (Phase phase : exchanged.plan().phases()) {
            assertThat(worn(exchanged, phase)).doesNotContain("fleece").contains("cotton-hoody");
        }
        assertThat(Rewear.without(night, "batt-parka").plan().phases().get(0))
                .isEqualTo(night.plan().phases().get(0));
    }

    @Test
    void water_goes_with_its_piece() {
        Scenario damp = ColdSearchTest.night("second-night");
        assertThat(Rewear.without(damp, "fleece").plan().damp()).doesNotContainKey("fleece");
        assertThat(Rewear.exchanged(damp, "fleece", piece("cotton-hoody"))
                        .plan()
                        .damp())
                .doesNotContainKey("fleece")
                .containsEntry("cotton-hoody", damp.plan().damp().get("fleece"));
        assertThat(Rewear.with(damp, piece("down-jacket")).plan().damp())
                .isEqualTo(damp.plan().damp());
    }

    @Test
    void what_nobody_wears_is_not_offered() {
        List<Change> changes = Changes.of(ColdSearchTest.night("first-night"), GEAR.pieces(), GEAR.pads());
        List<String> added = names(changes, Kind.WITH);
        assertThat(added).contains("down-jacket", "rain-jacket").doesNotContain("down-parka", "felt-boots", "fleece");
        assertThat(names(changes, Kind.EXCHANGED)).contains("batt-parka", "leather-boots");
        assertThat(names(changes, Kind.WITHOUT)).hasSize(13);
        assertThat(names(changes, Kind.HOOD_DOWN)).containsExactly("wind-jacket", "batt-parka");
        assertThat(names(changes, Kind.PARKA_LATE)).containsExactly("batt-parka");
        assertThat(names(Changes.of(ColdSearchTest.night("parka-minute-20"), List.of(), List.of()), Kind.AT_ONCE))
                .hasSize(1);
    }

    private static List<String> names(List<Change> changes, Kind kind) {
        return changes.stream()
                .filter(change -> change.kind() == kind)
                .map(change -> change.names().isEmpty() ? "" : change.names().get(0))
                .toList();
    }

    // --- The answer ---

    /** Steps halved: the same order among effects above the floor, figures within 1 % and 3 kJ. */
    @ParameterizedTest
    @ValueSource(strings = {"overcast-forest", "parka-minute-20"})
    void the_order_does_not_hang_on_the_steps(String name) {
        Worth usual = worth(ColdSearchTest.night(name), 1, 2, GEAR.pieces());
        Worth halved = worth(ColdSearchTest.night(name), 2, 2, GEAR.pieces());
        Map<List<Object>, Effect> fine =
                halved.effects().stream().collect(Collectors.toMap(WorthTest::key, Function.identity()));
        double last = Double.POSITIVE_INFINITY;
        for (Effect effect : usual.effects()) {
            Effect other = fine.get(key(effect));
            double size = Math.abs(effect.shortfall());
            assertThat(Math.abs(other.shortfall())).isCloseTo(size, within(0.01 * size + 3e3));
            if (size > Worth.FLOOR) {
                // neighbours that differ by less than the steps move them may change places
                assertThat(Math.abs(other.shortfall())).isLessThan(last + 3e3);
                last = Math.abs(other.shortfall());
            }
        }
    }

    private static List<Object> key(Effect effect) {
        return List.of(effect.change().kind(), effect.change().names());
    }

    @Test
    void threads_change_nothing_and_dependent_pairs_are_told() {
        Scenario night = ColdSearchTest.night("first-night");
        Worth one = worth(night, 0.5, 1, List.of(piece("down-jacket")));
        Worth three = worth(night, 0.5, 3, List.of(piece("down-jacket")));
        assertThat(figures(three)).isEqualTo(figures(one));
        assertThat(three.assumptions()).isEqualTo(one.assumptions());
        assertThat(one.effects().get(0).change().names()).containsExactly("batt-parka");
        assertThat(one.pairs()).hasSize(15);
        Pair parkaAndJacket = one.pairs().stream()
                .filter(pair -> Stream.of(pair.one(), pair.other())
                        .map(each -> each.change().names().isEmpty()
                                ? ""
                                : each.change().names().get(0))
                        .toList()
                        .containsAll(List.of("batt-parka", "down-jacket")))
                .findFirst()
                .orElseThrow();
        assertThat(parkaAndJacket.depends()).isTrue();
        assertThat(parkaAndJacket.joint()).isGreaterThan(parkaAndJacket.sum());
        assertThat(one.pairs()).anyMatch(pair -> !pair.depends());
    }

    private static List<List<Double>> figures(Worth worth) {
        return worth.effects().stream()
                .map(e -> List.of(e.extraHeat(), e.shortfall(), e.deficit(), e.kelvin(), e.demand()))
                .toList();
    }

    /** The draws are the same with and without the change, on any number of threads, and the order stays the usual model's. */
    @Test
    void draws_tell_which_effects_are_known() {
        Scenario night = ColdSearchTest.night("first-night");
        Worth one = drawn(night, 1);
        Worth two = drawn(night, 2);
        assertThat(two.effects().stream().map(Effect::drawn))
                .isEqualTo(one.effects().stream().map(Effect::drawn).toList());
        Worth plain = worth(night, 0.5, 2, List.of(piece("down-jacket")));
        assertThat(figures(one)).isEqualTo(figures(plain));
        assertThat(one.nights() - plain.nights())
                .isEqualTo(21 * (1 + Math.min(Worth.DRAWN, one.effects().size())));
        Spread parka = one.effects().get(0).drawn();
        assertThat(parka.nominal()).isEqualTo(one.effects().get(0).shortfall());
        assertThat(parka.holdsNominal()).isTrue();
        assertThat(one.effects().get(0).isLost()).isFalse();
        Effect supine = find(one, Kind.POSTURE, "LYING_SUPINE");
        assertThat(supine.drawn().low()).isNegative();
        assertThat(supine.drawn().high()).isPositive();
        assertThat(supine.isLost()).isTrue();
        assertThat(plain.effects()).allMatch(effect -> effect.drawn() == null && !effect.isLost());
    }

    private static Worth drawn(Scenario night, int threads) {
        return Worth.of(
                night,
                List.of(piece("down-jacket")),
                GEAR.pads(),
                DEMAND,
                NumericalSettings.standard().divided(0.5),
                Draws.of(20, 5),
                threads);
    }

    /** A colder night costs more, a stronger resting heat saves: signs of what is assumed. */
    @Test
    void assumptions_are_ranked_and_have_the_right_sign() {
        Worth worth = worth(ColdSearchTest.night("first-night"), 1, 2, List.of());
        double last = Double.POSITIVE_INFINITY;
        for (Assumption each : worth.assumptions()) {
            assertThat(each.moves()).isLessThanOrEqualTo(last);
            last = each.moves();
        }
        Assumption air = worth.assumptions().stream()
                .filter(each -> each.name().equals("AIR"))
                .findFirst()
                .orElseThrow();
        assertThat(air.low()).isPositive();
        assertThat(air.high()).isNegative();
        assertThat(worth.assumptions()).hasSize(Draws.factors().size() + 9);
    }

    /** Note R-30: nothing in the kit is for nothing; what each piece of it carries in kelvin is told. */
    @Test
    void taking_a_warm_piece_away_takes_from_the_margin() {
        Worth worth = worth(ColdSearchTest.night("first-night"), 1, 2, List.of());
        for (String id :
                List.of("batt-parka", "batt-overtrousers", "fleece", "stretch-trousers", "mittens", "knit-cap")) {
            assertThat(find(worth, Kind.WITHOUT, id).kelvin()).as(id).isNegative();
        }
    }
}
