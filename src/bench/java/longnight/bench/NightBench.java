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
    private NightEngine rain;

    @Setup
    public void read() {
        engine = compile("scenarios/first-night.yaml");
        rain = compile("scenarios/wet-ridge-rain.yaml");
    }

    private static NightEngine compile(String file) {
        return NightEngine.compile(ScenarioReader.read(Path.of(file)).scenario(), ModelChoice.nominal());
    }

    /** A compiled night without water. */
    @Benchmark
    public NightResult dry() {
        return engine.run(NumericalSettings.dry());
    }

    /** The same with the body's neutral state and the clothing compiled anew each time. */
    @Benchmark
    public NightResult dryCompiledAnew() {
        return NightEngine.compile(engine.scenario(), ModelChoice.nominal()).run(NumericalSettings.dry());
    }

    /** With water: bound water, vapour, a little frost. */
    @Benchmark
    public NightResult frost() {
        return engine.run(NumericalSettings.standard());
    }

    /** With steady rain on a ridge. */
    @Benchmark
    public NightResult rain() {
        return rain.run(NumericalSettings.standard());
    }
}
