package longnight.proof;

import static org.assertj.core.api.Assertions.assertThat;

import longnight.night.ModelChoice;
import longnight.scenario.StandardReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SelfCheckTest {
    @Test
    @DisplayName("books close, steps are short enough, and the second integrator agrees")
    void arithmetic() {
        for (SelfCheck check : SelfCheck.of(StandardReader.night(), ModelChoice.nominal())) {
            assertThat(check.met()).as(check.toString()).isTrue();
            assertThat(check.value()).as(check.toString()).isNotNegative();
        }
    }
}
