package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** That the bound is one: no kit of a node asks less than the node's relaxed night, dry or with its water. */
class RelaxedNightTest {

    private final Random random = new Random(11);

    @Test
    void no_kit_asks_less_than_the_bound_of_a_node_that_holds_it() {
        check(12);
    }

    @Test
    @Tag("long")
    void nor_do_many_kits() {
        check(400);
    }

    private static List<String> ids(Outfit.Kit kit) {
        return kit.pieces().stream().map(piece -> piece.spec().id()).toList();
    }

    private double most = Double.NEGATIVE_INFINITY;
    private double longSteps = Double.NEGATIVE_INFINITY;
    private double longStepsDeficit = Double.NEGATIVE_INFINITY;

    private void check(int kits) {
        for (String night : List.of(
                "first-night", "clear-valley", "windy-ridge", "overcast-forest", "arrival-dry", "wet-ridge-rain")) {
            Trial trial = new Trial(LeastFixture.night(night, random.nextBoolean() ? "student" : "veteran"));
            Field field = new Field(List.of(trial), LeastFixture.SIXTY.pieces(), LeastFixture.SIXTY.pads(), true);
            for (int i = 0; i < kits; i++) {
                Map<Region, Part> one = new EnumMap<>(Region.class);
                Map<Region, Part> some = new EnumMap<>(Region.class);
                field.choices.forEach((region, choices) -> {
                    int taken = random.nextInt(choices.size());
                    TreeSet<Integer> more = new TreeSet<>(List.of(taken));
                    for (int k = random.nextInt(5); k > 0; k--) {
                        more.add(random.nextInt(choices.size()));
                    }
                    one.put(region, new Part(region, choices, new int[] {taken}));
                    some.put(
                            region,
                            new Part(
                                    region,
                                    choices,
                                    more.stream().mapToInt(Integer::intValue).toArray()));
                });
                Outfit.Kit kit = Node.of(one).kit();
                double own = trial.run(kit, NumericalSettings.dry()).demand();
                double tight = field.relaxed(trial, one);
                double loose = field.relaxed(trial, some);
                assertThat(tight).as("%s: %s", night, ids(kit)).isLessThanOrEqualTo(own * (1 + Search.ALLOWANCE));
                assertThat(loose).as("%s: %s", night, ids(kit)).isLessThanOrEqualTo(own * (1 + Search.ALLOWANCE));
                assertThat(loose).isLessThanOrEqualTo(tight * (1 + 1e-3));
                if (trial.isCalm() && own < 2.2) {
                    NightResult full = trial.run(kit, NumericalSettings.standard());
                    Outline quick = trial.inLongSteps(kit, true);
                    assertThat(quick.demand())
                            .as("long steps, %s: %s", night, ids(kit))
                            .isLessThanOrEqualTo(full.demand() * (1 + Search.LONG_STEPS));
                    longSteps = Math.max(longSteps, quick.demand() / full.demand() - 1);
                    if (Double.isNaN(quick.stopped())) {
                        assertThat(quick.deficitDawn())
                                .isLessThanOrEqualTo(full.coreHeatDeficitDawn() + Search.LONG_STEPS_DEFICIT);
                        longStepsDeficit = Math.max(longStepsDeficit, quick.deficitDawn() - full.coreHeatDeficitDawn());
                    }
                }
                most = Math.max(most, Math.max(tight, loose) / own - 1);
                if (!trial.beginsBefore() && own < 2.2) {
                    double deficit =
                            trial.run(kit, NumericalSettings.standard()).coreHeatDeficitDawn();
                    double bound = trial.deficitDry(field.night(trial, some));
                    assertThat(bound > 15e3 + Search.DEFICIT_ALLOWANCE && deficit <= 15e3)
                            .as("%s: %s", night, ids(kit))
                            .isFalse();
                }
            }
        }
        System.out.printf(
                "bound over own demand at most %+.5f of %.3f; long steps %+.5f of %.3f and %+.0f J of %.0f%n",
                most, Search.ALLOWANCE, longSteps, Search.LONG_STEPS, longStepsDeficit, Search.LONG_STEPS_DEFICIT);
    }
}
