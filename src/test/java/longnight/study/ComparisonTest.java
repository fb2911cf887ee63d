package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.NightResult;
import longnight.night.Scenario;
import longnight.report.NightFixture;
import longnight.scenario.ScenarioReader;
import longnight.study.Comparison.One;
import longnight.study.Comparison.Varied;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    @Test
    void nights_are_ranked_by_verdict_then_bill_then_how_far_they_came() {
        List<One> ranked = Comparison.ranked(Stream.of(
                        NightFixture.unrun(),
                        NightFixture.stopped(),
                        NightFixture.failing(),
                        NightFixture.shivering(),
                        NightFixture.easy())
                .map(result -> new One("n", result, null))
                .toList());
        assertThat(ranked.stream().map(one -> one.result().verdict().outcome())).isSorted();
        assertThat(ranked.get(4).result().hours()).isEmpty();
        assertThat(ranked.get(3).result().stopped()).isPositive();
    }

    @Test
    void threads_do_not_show() {
        List<Scenario> questions = Stream.of("wet-down", "clear-valley", "cool-clearing")
                .map(name -> ScenarioReader.read(Path.of("scenarios", name + ".yaml"))
                        .scenario())
                .toList();
        List<String> names = List.of("a", "b", "c");
        Comparison.Answer one = Comparison.of(Varied.NIGHTS, names, questions, Draws.of(20, 1), 1);
        Comparison.Answer three = Comparison.of(Varied.NIGHTS, names, questions, Draws.of(20, 1), 3);
        assertThat(one.all().get(0).name()).isEqualTo("c");
        assertThat(three.all().stream().map(One::name)).containsExactlyElementsOf(names(one));
        assertThat(bills(three)).containsExactlyElementsOf(bills(one));
        assertThat(three.all().stream().map(One::pressure))
                .containsExactlyElementsOf(one.all().stream().map(One::pressure).toList());
        assertThat(three.band()).isNotNull().isEqualTo(one.band());
        Comparison.Answer kits = Comparison.of(Varied.KITS, names, questions, null, 2);
        assertThat(names(kits)).isEqualTo(names); // as listed, and nobody asked what presses
        assertThat(kits.all()).allMatch(each -> each.pressure() == null);
    }

    private static List<String> names(Comparison.Answer answer) {
        return answer.all().stream().map(One::name).toList();
    }

    private static List<Double> bills(Comparison.Answer answer) {
        return answer.all().stream()
                .map(One::result)
                .map(NightResult::shortfallHeat)
                .toList();
    }
}
