package longnight.study;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import longnight.night.Scenario;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;

class SpreadStudyTest {
    private static SpreadQuestion question(String file, Set<Doubt> over, int most, long seed) {
        Scenario night = ScenarioReader.read(Path.of("scenarios", file)).scenario();
        return new SpreadQuestion(
                night,
                over,
                PeopleRange.of(PeopleRange.Group.LIKE, night),
                ForecastError.usual(),
                SpreadQuestion.USUAL_COLDER,
                SpreadQuestion.USUAL_WINDIER,
                most,
                seed);
    }

    @Test
    void timing() {
        for (String file : new String[] {"first-night.yaml", "windy-ridge.yaml"}) {
            long from = System.nanoTime();
            SpreadAnswer answer = SpreadStudy.of(question(file, EnumSet.allOf(Doubt.class), 1024, 1), 2);
            System.out.println(file + " " + (System.nanoTime() - from) / 1e9 + " s nights " + answer.nights());
            answer.given().clouds().forEach(System.out::println);
            answer.worst().clouds().forEach(System.out::println);
            answer.indices().forEach((q, m) -> m.forEach((d, i) -> System.out.println(q + " " + d + " " + i)));
            System.out.println(
                    answer.sums() + " rows " + answer.rows() + " " + answer.settled() + " stopped " + answer.stopped());
        }
    }
}
