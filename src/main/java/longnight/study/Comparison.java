package longnight.study;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/** A handful of questions side by side. */
public final class Comparison {
    /** No more than this, so that each curve can be told from the others. */
    public static final int MOST = 6;

    /** In what those compared differ. */
    public enum Varied {
        NIGHTS,
        KITS,
        PEOPLE;

        /** What tells a question from the others. */
        public String nameOf(Scenario question) {
            return switch (this) {
                case NIGHTS -> question.title();
                case KITS -> question.kitName();
                case PEOPLE -> question.person().name();
            };
        }
    }

    private Comparison() {}

    /**
     * All of them.
     *
     * @param varied in what they differ; nights may differ in everything
     * @param all    in the order in which they are told; nights from easy to hard
     * @param band   under drawn models, in the same order; null when nothing was drawn
     */
    public record Answer(
            Varied varied, List<One> all, @Nullable ComparedBand band) {
        public Answer {
            all = List.copyOf(all);
        }

        /** Without a band. */
        public Answer(Varied varied, List<One> all) {
            this(varied, all, null);
        }
    }

    /**
     * One of those compared.
     *
     * @param name     tells it from the others
     * @param result   its answer
     * @param pressure what presses on it; null when that was not asked
     */
    public record One(
            String name, NightResult result, @Nullable Pressure pressure) {}

    /**
     * Answers a few questions. Nights are ranked, and each is asked what presses on it.
     *
     * @param names   one for each question
     * @param draws   of the model, the same for all; null for none
     * @param threads how many work at once, 1 and up; the digits do not depend on it
     */
    public static Answer of(
            Varied varied, List<String> names, List<Scenario> questions, @Nullable Draws draws, int threads) {
        NumericalSettings settings = NumericalSettings.standard();
        boolean nights = varied == Varied.NIGHTS;
        List<One> all = Together.ask(
                IntStream.range(0, questions.size()).boxed().toList(),
                i -> {
                    NightResult result = NightEngine.compile(questions.get(i), ModelChoice.nominal())
                            .run(settings);
                    return new One(names.get(i), result, nights ? Pressure.on(result, settings) : null);
                },
                threads);
        List<One> told = nights ? ranked(all) : all;
        List<NightResult> results = told.stream().map(One::result).toList();
        return new Answer(varied, told, draws == null ? null : ComparedBand.of(results, draws, threads));
    }

    /**
     * From easy to hard: by outcome, within an outcome by shortfall heat. Where a run stopped early its bill is a part only, so
     * among those outside the model the later stop is the easier night, and what was not run at all comes last.
     */
    static List<One> ranked(List<One> all) {
        return all.stream()
                .sorted(Comparator.comparing((One one) -> one.result().verdict().outcome())
                        .thenComparingDouble(one -> {
                            NightResult result = one.result();
                            if (result.hours().isEmpty()) {
                                return Double.POSITIVE_INFINITY;
                            }
                            return Double.isNaN(result.stopped()) ? result.shortfallHeat() : -result.stopped();
                        }))
                .toList();
    }
}
