package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartTest {
    private static final double MASS = 0.3;

    /** No number lies between neighbours, and their mean is one of them: whichever it is, no half may stay empty. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void masses_that_differ_by_their_last_digit_are_parted(boolean odd) {
        double lighter = odd ? Math.nextUp(MASS) : MASS;
        List<Choice> choices = List.of(pads(lighter), pads(Math.nextUp(lighter)));
        List<Trial> trials = List.of(new Trial(LeastFixture.night("clear-valley", "student")));
        Cells cells = new Field(
                        trials, LeastFixture.SIXTY.pieces(), LeastFixture.SIXTY.pads(), DressRules.isFreezing(trials))
                .reference();
        assertThat(new Part(Region.PADS, choices, new int[] {0, 1})
                        .halves(cells)
                        .parts())
                .extracting(half -> half.set.length)
                .containsExactly(1, 1);
    }

    private static Choice pads(double mass) {
        return new Choice(List.of(), List.of(), mass, false);
    }
}
