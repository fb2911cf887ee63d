package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files we ship. */
class ShippedScenariosTest {
    private static final Path SCENARIOS = Path.of("scenarios");

    static List<Path> nights() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> !file.endsWith("wardrobe.yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("nights")
    void readAndCoverTheirNight(Path night) {
        Loaded loaded = ScenarioReader.read(night);
        Scenario scenario = loaded.scenario();
        assertThat(scenario.limits()).isEmpty();
        assertThat(scenario.surroundings().firstTime()).isLessThanOrEqualTo(0);
        assertThat(scenario.surroundings().lastTime())
                .isGreaterThanOrEqualTo(scenario.plan().duration());
        System.out.println(night + " " + scenario.nightName() + " | " + scenario.kitName() + " | " + loaded.cautions());
        scenario.guesses().forEach(System.out::println);
    }
}
