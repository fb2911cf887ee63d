package longnight.night;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import longnight.figure.BodySegment;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What {@link longnight.body.law.Huddle} promises: surface in touch loses nothing, so a tenth of it saves a tenth of the loss and
 * no more, however thick the clothes. A little less is saved, since the body then keeps its other skin warmer.
 */
class PartnersInTouchTest {
    private static final BodySegment[] FREE = {BodySegment.HEAD, BodySegment.HAND, BodySegment.FOOT};

    @ParameterizedTest
    @CsvSource({"row-alone,0.1", "row-alone,0.2", "soaked-cotton,0.2", "shell-without,0.25"})
    void what_touches_loses_nothing_through_thick_clothes_either(String lesson, double share) {
        Scenario night = ScenarioReader.read(Path.of("scenarios/lessons", lesson + ".yaml"))
                .scenario();
        NightResult alone = run(night);
        NightResult together = run(night.withPlan(night.plan()
                .withPhases(night.plan().phases().stream()
                        .map(phase -> phase.from() < 0 ? phase : phase.touching(share))
                        .toList())));
        double covered = 1 - free(alone.scenario());
        double kept = share / covered;
        double ratio = lostThroughCovered(together) / lostThroughCovered(alone);
        assertThat(ratio).isGreaterThan(1 - kept).isLessThan(1 - 0.6 * kept);
    }

    private static NightResult run(Scenario night) {
        return NightEngine.compile(night, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    /** Mean of the hours, through the parts that partners may cover [W]. */
    private static double lostThroughCovered(NightResult result) {
        double lost = 0;
        for (HourRow row : result.hours().subList(1, result.hours().size())) {
            double[] parts = row.lostByPart();
            for (BodySegment part : BodySegment.values()) {
                lost += isFree(part) ? 0 : parts[part.ordinal()];
            }
        }
        return lost / (result.hours().size() - 1);
    }

    private static double free(Scenario night) {
        double[] areas = longnight.body.Body.of(
                        night.person(),
                        ModelChoice.nominal().body(),
                        ModelChoice.nominal().options())
                .segmentAreas();
        double free = 0;
        double all = 0;
        for (BodySegment part : BodySegment.values()) {
            free += isFree(part) ? areas[part.ordinal()] : 0;
            all += areas[part.ordinal()];
        }
        return free / all;
    }

    private static boolean isFree(BodySegment part) {
        for (BodySegment each : FREE) {
            if (each == part) {
                return true;
            }
        }
        return false;
    }
}
