package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import longnight.assumption.Guess;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    @ParameterizedTest
    @CsvSource({"0, 00:00", "66600, 18:30", "86399, 00:00", "86369, 23:59", "86400, 00:00", "90061, 01:01", "NaN, -"})
    void the_clock_goes_round(double seconds, String clock) {
        assertThat(Figures.clock(seconds)).isEqualTo(clock);
    }

    @ParameterizedTest
    @CsvSource({"-40000, 0", "0, 0", "499, 0", "500, <15", "14999, <15", "15000, 15", "15499, 15", "15501, 16", "NaN, -"
    })
    void the_deficit_has_a_floor_and_a_dead_band(double joules, String shown) {
        assertThat(Figures.deficit(joules)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"-0.04, 1, 0.0", "-0.05, 1, -0.1", "2.005, 2, 2.01", "-12.34, 1, -12.3", "Infinity, 1, -"})
    void decimals_are_rounded_as_people_round(double value, int decimals, String shown) {
        assertThat(Figures.decimals(value, decimals)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"0.0123456, 3, 0.0123", "1234.5, 3, 1235", "40, 2, 40", "0, 2, 0", "99.96, 3, 100"})
    void significant_digits_never_eat_whole_ones(double value, int digits, String shown) {
        assertThat(Figures.significant(value, digits)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"3.1e-13, 1e-12", "1e-9, 1e-9", "0, 1e-16", "2e-19, 1e-16", "NaN, -"})
    void a_closure_is_told_by_the_power_above_it(double ratio, String shown) {
        assertThat(Figures.order(ratio)).isEqualTo(shown);
    }

    @Test
    void guesses_speak_the_language_of_labels() {
        Guess clo = Guess.number("parka", "resistance", 0.31, "m2K/W", "from memory");
        assertThat(Figures.guessedQuantity(clo)).isEqualTo("resistance [clo]");
        assertThat(Figures.guessedValue(clo, 2)).isEqualTo("2");
        Guess batt = Guess.number("parka", "batt", 0.1, "kg/m2", "from memory");
        assertThat(Figures.guessedQuantity(batt) + Figures.guessedValue(batt, 3))
                .isEqualTo("batt [g/m²]100");
        Guess word = Guess.word("parka", "face", "medium", "from memory");
        assertThat(Figures.guessedQuantity(word) + Figures.guessedValue(word, 3))
                .isEqualTo("facemedium");
    }
}
