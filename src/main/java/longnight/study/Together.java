package longnight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/** The same question asked of many, several at a time. */
final class Together {
    private Together() {}

    /**
     * Answers in the order of the questions, whatever the number of threads.
     *
     * @param threads how many work at once, 1 and up
     */
    static <Q, A> List<A> ask(List<Q> questions, Function<? super Q, ? extends A> answer, int threads) {
        return ask(questions, answer, each -> {}, threads);
    }

    /**
     * The same, telling each answer as soon as it and all before it are there.
     *
     * @param told in the order of the questions, by the calling thread
     */
    static <Q, A> List<A> ask(
            List<Q> questions, Function<? super Q, ? extends A> answer, Consumer<? super A> told, int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, Together::worker);
        try {
            List<Future<A>> waiting = new ArrayList<>(questions.size());
            for (Q question : questions) {
                waiting.add(pool.submit(() -> answer.apply(question)));
            }
            List<A> answers = new ArrayList<>(questions.size());
            for (Future<A> each : waiting) {
                A found = each.get();
                answers.add(found);
                told.accept(found);
            }
            return answers;
        } catch (ExecutionException fault) {
            if (fault.getCause() instanceof Error error) {
                throw error;
            }
            if (fault.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(fault.getCause());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stop);
        } finally {
            pool.shutdownNow();
        }
    }

    static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "nights");
        thread.setDaemon(true);
        return thread;
    }
}
