package longnight.study;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Independent pieces of work on several threads; answers in the order of the questions. */
final class Workers {
    private Workers() {}

    static <T> List<T> all(List<Callable<T>> tasks, int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            return pool.invokeAll(tasks).stream().map(Workers::done).toList();
        } catch (InterruptedException stop) {
            throw stopped(stop);
        } finally {
            pool.shutdownNow();
        }
    }

    private static <T> T done(Future<T> future) {
        try {
            return future.get();
        } catch (ExecutionException fault) {
            if (fault.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(fault.getCause());
        } catch (InterruptedException stop) {
            throw stopped(stop);
        }
    }

    private static IllegalStateException stopped(InterruptedException stop) {
        Thread.currentThread().interrupt();
        return new IllegalStateException("stopped from outside", stop);
    }
}
