package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import longnight.body.Person;
import longnight.night.Scenario;
import longnight.scenario.ScenarioReader;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PeopleRangeTest {
    private static final Scenario NIGHT =
            ScenarioReader.read(Path.of("scenarios/first-night.yaml")).scenario();

    @ParameterizedTest
    @EnumSource(PeopleRange.Group.class)
    void everybody_of_a_group_is_within_its_ranges(PeopleRange.Group group) {
        PeopleRange people = PeopleRange.of(group, NIGHT);
        for (double[] place : new Rows(PeopleRange.PLACES, 1).first(0, 256)) {
            Person person = people.at(place);
            assertThat(person.mass())
                    .isBetween(people.mass().low(), people.mass().high());
            assertThat(person.height())
                    .isBetween(people.height().low(), people.height().high());
            assertThat(person.bodyFat())
                    .isBetween(people.fat().low(), people.fat().high());
            assertThat(person.age()).isBetween(people.age().low(), people.age().high());
            assertThat(person.peakOxygen())
                    .isBetween(people.fitness().low(), people.fitness().high());
            assertThat(person.sex()).isEqualTo(NIGHT.person().sex());
            double index = person.mass() / (person.height() * person.height());
            assertThat(index).isBetween(13.0, 40.0); // nobody is drawn whom nobody could meet
        }
    }

    @Test
    void people_like_the_one_named_lie_about_that_one() {
        PeopleRange people = PeopleRange.of(PeopleRange.Group.LIKE, NIGHT);
        Person middle = people.at(new double[] {0.5, 0.5, 0.5, 0.5, 0.5});
        assertThat(middle.mass()).isCloseTo(NIGHT.person().mass(), within(1e-9));
        assertThat(middle.height()).isCloseTo(NIGHT.person().height(), within(1e-9));
        assertThat(middle.peakOxygen()).isCloseTo(NIGHT.person().peakOxygen(), within(1e-9));
    }

    /** A tenth of the draws in every tenth of the range of masses, the lightest and the heaviest too. */
    @Test
    void every_mass_is_alike_likely() {
        PeopleRange people = PeopleRange.of(PeopleRange.Group.ADULTS, NIGHT);
        Extent range = people.mass();
        int[] tenths = new int[10];
        for (double[] place : new Rows(PeopleRange.PLACES, 2).first(0, 4096)) {
            double share = (people.at(place).mass() - range.low()) / (range.high() - range.low());
            tenths[(int) Math.min(9, 10 * share)]++;
        }
        for (int count : tenths) {
            assertThat(count).isBetween(333, 487); // 410 looked for; four standard errors of independent draws
        }
    }

    /** 0.533 by 400,000 independent draws of the same two even places. */
    @Test
    void tall_people_are_mostly_the_heavier_ones() {
        PeopleRange people = PeopleRange.of(PeopleRange.Group.ADULTS, NIGHT);
        List<Person> drawn = new Rows(PeopleRange.PLACES, 2)
                .first(0, 4096).stream().map(people::at).toList();
        double[] height = drawn.stream().mapToDouble(Person::height).toArray();
        double[] mass = drawn.stream().mapToDouble(Person::mass).toArray();
        assertThat(new PearsonsCorrelation().correlation(height, mass)).isCloseTo(0.533, within(0.02));
    }

    @Test
    void ranges_that_the_model_has_no_answer_for_are_refused() {
        PeopleRange people = PeopleRange.of(PeopleRange.Group.LIKE, NIGHT);
        assertThatThrownBy(() -> people.withMass(new Extent(20, 80)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("allowed 30");
        assertThatThrownBy(() -> new Extent(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Extent(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
