package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.study.LeastFixture.Some;
import longnight.study.LeastFixture.Tried;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against every kit there is, on random parts of the wardrobe. */
class LeastAgainstEveryKitTest {

    private static final int OTHERS = 3;

    @Test
    void parts_of_eight_pieces() {
        assertThat(IntStream.range(0, 20)
                        .filter(seed -> sameAsEveryKit(seed, 8))
                        .count())
                .as("parts in which some kits hold and some do not")
                .isGreaterThanOrEqualTo(10);
    }

    @Test
    @Tag("long")
    void parts_of_twelve_pieces() {
        assertThat(IntStream.range(100, 120)
                        .filter(seed -> sameAsEveryKit(seed, 12))
                        .count())
                .isGreaterThanOrEqualTo(10);
    }

    /** True when the answer lay between nothing and everything. */
    private static boolean sameAsEveryKit(int seed, int pieces) {
        Random random = new Random(seed);
        Some some = LeastFixture.draw(random, pieces);
        List<Scenario> nights = List.of(
                LeastFixture.first(4.5, 20 + random.nextInt(14), LeastFixture.night("clear-valley", "student")),
                LeastFixture.first(4.5, 20 + random.nextInt(14), LeastFixture.night("windy-ridge", "instructor")));
        NumericalSettings settings = NumericalSettings.dry();
        List<Tried> all = LeastFixture.everyKit(some, nights, settings);
        double[] demands = all.stream()
                .mapToDouble(Tried::demand)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        double line = demands.length == 0 ? 2 : Math.min(2, demands[random.nextInt(demands.length)] + 1e-9);
        LeastAnswer answer = LeastFixture.search(some, nights, line, OTHERS, settings);
        List<Tried> adequate =
                all.stream().filter(tried -> tried.demand() <= line).toList();
        int least = Math.min(1 + OTHERS, adequate.size());
        assertThat(answer.proof().complete()).isTrue();
        assertThat(answer.proof().kits()).isEqualTo(all.size());
        assertThat(answer.proof().found()).as("seed %s", seed).hasSizeGreaterThanOrEqualTo(least);
        for (int i = 0; i < least; i++) {
            assertThat(answer.proof().found().get(i).mass())
                    .as("seed %s, kit %s", seed, i)
                    .isCloseTo(adequate.get(i).mass(), within(1e-9));
        }
        if (adequate.isEmpty()) {
            assertThat(answer.proof().found()).isEmpty();
        }
        return !adequate.isEmpty() && adequate.size() < all.size();
    }
}
