package longnight.study;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/** Many questions, one after the other and several at a time; nothing of a question is kept once its answer was taken. */
public final class Sweep {
    private Sweep() {}

    /** Takes answers, from several threads, in the order in which they come. */
    public interface Taker {
        void take(int index, NightResult result);
    }

    /**
     * Answers questions.
     *
     * @param count    of all questions
     * @param wanted   which of them to answer
     * @param question made when its turn comes
     * @param taker    of the answers
     * @param threads  how many work at once, 1 and up; no answer depends on it
     */
    public static void over(int count, IntPredicate wanted, IntFunction<Scenario> question, Taker taker, int threads) {
        AtomicInteger next = new AtomicInteger();
        AtomicBoolean stop = new AtomicBoolean();
        Together.ask(
                IntStream.range(0, threads).boxed().toList(),
                worker -> {
                    try {
                        for (int i = next.getAndIncrement(); i < count && !stop.get(); i = next.getAndIncrement()) {
                            if (wanted.test(i)) {
                                taker.take(i, answer(question.apply(i)));
                            }
                        }
                        return worker;
                    } catch (RuntimeException | Error fault) {
                        stop.set(true);
                        throw fault;
                    }
                },
                threads);
    }

    private static NightResult answer(Scenario scenario) {
        return NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
    }
}
