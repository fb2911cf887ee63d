package longnight.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import longnight.night.ModelChoice;
import longnight.proof.Experiment.Variant;
import longnight.scenario.ExperimentReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ShippedExperimentsTest {
    private static final List<Experiment> ALL = ExperimentReader.shipped();

    private static Experiment named(String id) {
        return ALL.stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    @DisplayName(
            "every experiment has a source and says what is assumed, the nominal set-up first among its variants, or why it cannot run")
    void complete() {
        assertThat(ALL).hasSize(23);
        for (Experiment experiment : ALL) {
            assertThat(experiment.source()).as(experiment.id()).hasSizeGreaterThan(20);
            assertThat(experiment.variants().get(0)).isEqualTo(Variant.NOMINAL);
            assertThat(experiment.variants()).doesNotHaveDuplicates();
            assertThat(experiment.runs()).isEqualTo(!experiment.checks().isEmpty());
            if (experiment.runs()) {
                assertThat(experiment.assumed().words()).as(experiment.id()).isNotBlank();
            }
        }
        assertThat(ALL.stream().map(Experiment::id).collect(Collectors.toSet())).hasSize(23);
    }

    @Test
    @DisplayName("a check's value is what its words say, taken from the run by hand")
    void byHand() {
        Experiment hardy = named("hardy-stolwijk-1966");
        Runs runs = new Runs(hardy, ModelChoice.nominal(), Variant.NOMINAL);
        double byHand = 0;
        for (String id : List.of("at13", "at18")) {
            Run run = runs.get(id);
            double lost = 0;
            double made = 0;
            for (int m = 1; m <= 120; m++) {
                lost += 60 * run.value(longnight.night.Exposure.Series.HEAT_LOST, m);
                made += 60 * run.value(longnight.night.Exposure.Series.HEAT_MADE, m);
            }
            byHand += 0.5 * (lost - made) / 1e3 / run.area();
        }
        assertThat(hardy.checks().get(0).evaluate(runs)).isCloseTo(byHand, within(1e-6 * byHand));
    }

    @Test
    @DisplayName("people who come in with a warm core let it fall")
    void warmStart() {
        Experiment young = named("young-1998");
        double atLevel = young.evaluate(ModelChoice.nominal(), Variant.NOMINAL)[0];
        double warm = young.evaluate(ModelChoice.nominal(), new Variant(0, 0, Double.NaN, 0.3))[0];
        assertThat(warm).isLessThan(atLevel);
    }

    @Test
    @DisplayName("the same model and set-up give the same figures to the last digit")
    void repeatable() {
        Experiment irving = named("irving-1960-cold-night");
        assertThat(irving.evaluate(ModelChoice.nominal(), Variant.NOMINAL))
                .containsExactly(irving.evaluate(ModelChoice.nominal(), Variant.NOMINAL));
    }
}
