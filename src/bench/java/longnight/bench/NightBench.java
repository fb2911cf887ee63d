package longnight.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.scenario.ScenarioReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole nights per second on one core: the shipped first night, a full kit through 12.5 hours. Run from the top folder. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NightBench {

    private NightEngine engine;

    @Setup
    public void read() {
        engine = NightEngine.compile(
                ScenarioReader.read(Path.of("scenarios/first-night.yaml")).scenario(), ModelChoice.nominal());
    }

    /** A compiled night, run again. */
    @Benchmark
    public NightResult compiled() {
        return engine.run(NumericalSettings.standard());
    }

    /** The same with the body's neutral state and the clothing compiled anew each time. */
    @Benchmark
    public NightResult compiledAnew() {
        return NightEngine.run(engine.scenario(), NumericalSettings.standard());
    }
}
