package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longnight.night.ModelChoice;
import longnight.proof.Experiment;
import longnight.proof.Outcome;
import longnight.scenario.ExperimentReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ProofRunTest {
    @Test
    @DisplayName("no figure depends on the number of threads")
    void threads() {
        List<Experiment> few = ExperimentReader.shipped().stream()
                .filter(e -> e.id().matches("spurr.*|esmat.*"))
                .toList();
        assertThat(few).hasSize(2);
        List<Outcome> one = ProofRun.of(few, ModelChoice.nominal(), 1);
        assertThat(ProofRun.of(few, ModelChoice.nominal(), 3)).isEqualTo(one);
    }
}
