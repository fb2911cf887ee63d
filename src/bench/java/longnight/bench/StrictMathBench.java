package longnight.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What one exponential costs: the price of laws that give the same digits on every machine. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class StrictMathBench {
    private double x = -0.7;

    @Benchmark
    public double exp() {
        return Math.exp(x);
    }

    @Benchmark
    public double strictExp() {
        return StrictMath.exp(x);
    }
}
