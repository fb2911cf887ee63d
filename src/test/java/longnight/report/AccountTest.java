package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import longnight.night.NightResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccountTest {
    private final NightResult wet = NightFixture.wet();

    @Test
    void a_plan_of_several_phases_is_told_by_the_clock() {
        assertThat(Account.plan(wet))
                .isEqualTo(
                        "Plan: 15:30 march, 18:00 halt, 18:30 night, to 06:30; the bill is counted from dusk, 18:30.");
        assertThat(Account.plan(NightFixture.easy())).isEmpty();
    }

    @Test
    void pieces_are_told_in_grams_where_their_water_changed_or_is_loose() {
        assertThat(Account.pieces(wet, Units.METRIC))
                .contains(
                        "base-top 71 (61 liquid) -> 24 (8 liquid, 4 ice)",
                        "parka 12 (2 liquid) -> 232 (154 liquid, 66 ice)")
                .contains("hood 10 -> 62 (35 liquid, 15 ice)")
                .doesNotContain("mitts"); // 1 g of loose water and 3 g more in all
        assertThat(Account.pieces(NightFixture.easy(), Units.METRIC)).isEmpty();
    }

    @Test
    void water_is_told_from_where_it_came_to_what_it_cost() {
        assertThat(Account.water(wet, Units.METRIC))
                .isEqualTo("Before dusk 0.11 kg got in and stayed."
                        + " Since dusk 1.00 kg came aboard, 0.48 kg of it from outside; 0.55 kg left as vapour,"
                        + " 0.13 kg ran off; the clothes held 0.19 kg at dusk, 0.50 kg at the end."
                        + " Being wet cost 620 kJ of shortfall heat, against the same plan dry.");
        assertThat(Account.water(NightFixture.easy(), Units.METRIC)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, not worked out",
        "4900, (5 kJ of shortfall heat) is too little to tell",
        "-4900, (-5 kJ of shortfall heat) is too little to tell",
        "31000, cost 31 kJ",
        "-31000, 31 kJ smaller",
    })
    void a_cost_is_named_only_as_far_as_it_is_known(double joules, String told) {
        assertThat(Account.water(NightFixture.costing(joules), Units.METRIC)).contains(told);
    }

    /** Its bill ends hours before the dry night's does; their difference is no cost. */
    @Test
    void a_night_that_stopped_early_tells_no_cost() {
        NightResult stopped = NightFixture.stopped().with(wet.water(), null);
        assertThat(Account.water(stopped, Units.METRIC))
                .contains("cannot be told")
                .doesNotContain("620");
    }

    @Test
    void food_is_told_in_kilojoules_and_pieces() {
        assertThat(Account.fuel(wet, Units.METRIC))
                .isEqualTo(
                        "Food: 1240 kJ made above rest since dusk = 1.2 pieces of 1 MJ; not all of it need be eaten in"
                                + " the night. Eaten: 1200 kJ. Carbohydrate store 83 % full at dusk, 24 % at the end."
                                + " The peak of shivering falls to 87 %."
                                + " Drink: 0.8 L for breath, skin and sweat since dusk, 0.4 L for sweat before it.");
    }

    @Test
    void a_drill_may_not_be_worth_it() {
        assertThat(Account.day(wet, Units.METRIC))
                .isEqualTo(
                        "Sweat passes 50 g/h 22 min into the march. 41 min after it the body holds less heat than when"
                                + " neutral. Warming drill: 210 kJ made more, 198 kJ lost more, 12 kJ more in the body at the end."
                                + " For heat it is not worth the food.");
    }

    @Test
    void notes_tell_the_same() {
        assertThat(Account.of(wet)).hasSize(3);
        assertThat(Notes.text(wet)).contains(Account.of(wet));
    }
}
