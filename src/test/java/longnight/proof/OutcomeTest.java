package longnight.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import longnight.proof.Check.How;
import longnight.proof.Check.Pool;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class OutcomeTest {
    private static Check check(double measured, Band gate, Band goal, Pool pool) {
        return new Check(
                "a figure",
                Reading.MEAN_SKIN,
                How.MEAN,
                List.of("run"),
                List.of(),
                List.of(),
                How.MEAN,
                60,
                0,
                false,
                null,
                Double.NaN,
                measured,
                Double.NaN,
                gate,
                goal,
                pool,
                "",
                Double.NaN,
                Band.NONE,
                "");
    }

    private static Experiment experiment(String id, Check... checks) {
        return new Experiment(
                id,
                "source",
                "title",
                "",
                "",
                new Experiment.Assumed(0, 0, List.of(), List.of(), ""),
                Map.of(),
                List.of(checks));
    }

    private static Outcome outcome(String id, double[][] answers, Check... checks) {
        return Outcome.of(experiment(id, checks), List.of(answers));
    }

    @Test
    @DisplayName("gates count one by one, goals once an experiment, errors over what was measured")
    void score() {
        Band narrow = new Band(29, 31);
        List<Outcome> outcomes = List.of(
                outcome(
                        "one",
                        new double[][] {{32, 30}, {30.5, 30}},
                        check(30, narrow, narrow, Pool.SKIN),
                        check(29, Band.NONE, narrow, Pool.SKIN)),
                outcome("two", new double[][] {{40}, {41}}, check(Double.NaN, narrow, narrow, Pool.CORE)));
        Outcome.Score score = Outcome.score(outcomes);
        assertThat(score.gates()).isEqualTo(2);
        assertThat(score.gatesMet()).isZero();
        assertThat(score.gatesAny()).isEqualTo(1);
        assertThat(score.goals()).isCloseTo(0.25, within(1e-12));
        assertThat(score.goalsAny()).isCloseTo(0.5, within(1e-12));
        assertThat(score.pools()).containsOnlyKeys(Pool.SKIN);
        assertThat(score.pools().get(Pool.SKIN).bias()).isCloseTo(1.5, within(1e-12));
        assertThat(score.pools().get(Pool.SKIN).rmsd()).isCloseTo(Math.sqrt(2.5), within(1e-12));
    }

    @Test
    @DisplayName("a threshold that is never met is outside every band")
    void never() {
        assertThat(new Band(Double.NaN, 5).holds(Double.NaN)).isFalse();
        assertThat(new Band(Double.NaN, 5).holds(5)).isTrue();
        assertThat(new Band(1, Double.NaN).holds(0.9)).isFalse();
        assertThatThrownBy(() -> new Band(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
