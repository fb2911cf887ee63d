package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HunchTest {

    private final Hunch hunch = new Hunch();

    @Test
    void asks_until_it_knows_and_seldom_where_asking_settles_nothing() {
        for (int i = 0; i < 8; i++) {
            assertThat(hunch.isWorthAsking(1.5, 10)).isTrue();
            hunch.learn(1.5, 10, false);
        }
        long asked = IntStream.range(0, 240)
                .filter(i -> hunch.isWorthAsking(1.5, 10))
                .count();
        assertThat(asked).isEqualTo(10);
        assertThat(hunch.isWorthAsking(1.6, 10)).isTrue();
        assertThat(hunch.isWorthAsking(1.5, 30)).isTrue();
    }

    @Test
    void asks_again_where_answers_settle_something_after_all() {
        IntStream.range(0, 8).forEach(i -> hunch.learn(2, 0, false));
        assertThat(hunch.unlikely()).containsExactly(Hunch.bin(2, 0));
        IntStream.range(0, 6).forEach(i -> hunch.learn(2, 0, true));
        assertThat(hunch.unlikely()).isEmpty();
    }
}
