package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import longnight.assumption.ModelParameter;
import longnight.body.BodyOptions;
import longnight.body.BodyParameter;
import longnight.clothing.ClothingParameter;
import longnight.night.ModelChoice;
import longnight.outdoors.OutdoorParameter;
import org.junit.jupiter.api.Test;

class DrawsTest {

    @Test
    void the_same_seed_draws_the_same_models_and_another_others() {
        assertThat(Draws.of(30, 7).models()).isEqualTo(Draws.of(30, 7).models());
        assertThat(Draws.of(30, 7).models().get(0))
                .isNotEqualTo(Draws.of(30, 8).models().get(0));
    }

    @Test
    void more_draws_begin_with_the_fewer() {
        assertThat(Draws.of(60, 7).models().subList(0, 30))
                .isEqualTo(Draws.of(30, 7).models());
    }

    @Test
    void every_constant_is_drawn_at_most_once_within_its_range() {
        Set<ModelParameter> seen = new HashSet<>();
        for (Factor factor : Draws.factors()) {
            for (Factor.Member member : factor.members()) {
                assertThat(seen.add(member.parameter()))
                        .as(member.parameter().name())
                        .isTrue();
                assertThat(member.at(0, 1))
                        .isCloseTo(member.low(), within(1e-12 * Math.abs(member.low())))
                        .isGreaterThanOrEqualTo(member.low());
                assertThat(member.at(1, 1))
                        .isCloseTo(member.high(), within(1e-12 * Math.abs(member.high())))
                        .isLessThanOrEqualTo(member.high());
                assertThat(member.at(0.5, Draws.PEAK))
                        .isEqualTo(member.parameter().nominal());
            }
        }
        assertThatThrownBy(() -> Factor.within(BodyParameter.LEG_FLOW, 0, 1.1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A triangle on each side: three quarters of a side lie in its nearer half. */
    @Test
    void half_of_the_draws_lie_below_nominal_and_few_at_the_ends() {
        List<ModelChoice> models = Draws.of(1000, 1).models();
        assertThat(share(models, OutdoorParameter.TURBULENCE, 0, 1.3)).isCloseTo(0.5, within(0.02));
        assertThat(share(models, OutdoorParameter.TURBULENCE, 1.15, 1.45)).isCloseTo(0.75, within(0.02));
        assertThat(models.stream()
                        .filter(model -> model.body().get(BodyParameter.LEG_FLOW) == 0)
                        .count())
                .isBetween(480L, 520L);
    }

    private static double share(List<ModelChoice> models, OutdoorParameter parameter, double low, double high) {
        return models.stream()
                        .mapToDouble(model -> model.outdoors().get(parameter))
                        .filter(value -> value >= low && value < high)
                        .count()
                / (double) models.size();
    }

    /** Points of low discrepancy spread two constants evenly over all four quarters. */
    @Test
    void constants_of_different_factors_are_independent_and_those_of_one_move_together() {
        List<ModelChoice> models = Draws.of(400, 3).models();
        long both = models.stream()
                .filter(model -> model.body().get(BodyParameter.SHIVER_SKIN_SLOPE) > 5
                        && model.clothing().get(ClothingParameter.GAP_MIDDLE) > 0.003)
                .count();
        assertThat(both).isBetween(80L, 120L);
        assertThat(models)
                .allMatch(model -> model.clothing().get(ClothingParameter.GAP_MIDDLE) > 0.003
                        == model.clothing().get(ClothingParameter.GAP_SHELL) > 0.004);
    }

    @Test
    void a_third_of_the_draws_shiver_by_the_second_law() {
        assertThat(Draws.of(300, 1).models().stream()
                        .filter(model -> model.options().law() == BodyOptions.Law.GATED)
                        .count())
                .isBetween(95L, 105L);
    }

    @Test
    void what_the_skin_is_off_by_is_normal() {
        Draws draws = Draws.of(1000, 1);
        double[] off = IntStream.range(0, 1000).mapToDouble(draws::skinMisfit).toArray();
        double mean =
                IntStream.range(0, 1000).mapToDouble(i -> off[i]).average().orElseThrow();
        double square = IntStream.range(0, 1000)
                .mapToDouble(i -> off[i] * off[i])
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(0, within(0.02));
        assertThat(Math.sqrt(square)).isCloseTo(Draws.SKIN_MISFIT, within(0.03));
    }

    @Test
    void answers_come_in_the_order_of_the_draws_whoever_gives_them() {
        Draws draws = Draws.of(50, 1);
        List<Double> one = draws.ask(model -> model.body().get(BodyParameter.VESSEL_GAIN), 1);
        assertThat(draws.ask(model -> model.body().get(BodyParameter.VESSEL_GAIN), 4))
                .isEqualTo(one);
        assertThat(one).hasSize(50);
    }

    @Test
    void a_fault_in_one_draw_reaches_the_caller() {
        assertThatThrownBy(() -> Draws.of(20, 1)
                        .ask(
                                model -> {
                                    throw new IllegalStateException("broken");
                                },
                                2))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("broken");
    }

    @Test
    void quantiles_are_those_of_hyndman_and_fan_and_infinity_stays_outside_the_mean() {
        double[] ten = IntStream.rangeClosed(1, 11).mapToDouble(i -> i).toArray();
        Spread spread = Spread.of(6, ten);
        assertThat(spread).isEqualTo(new Spread(6, 2, 6, 10));
        assertThat(spread.holdsNominal()).isTrue();
        assertThat(new Spread(11, 2, 6, 10).holdsNominal()).isFalse();
        ten[3] = Double.NaN;
        ten[4] = Double.POSITIVE_INFINITY;
        assertThat(Spread.of(6, ten).high()).isInfinite();
        assertThat(Spread.of(6, ten).low()).isEqualTo(2);
    }
}
