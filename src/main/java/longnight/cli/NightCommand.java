package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.report.Console;
import longnight.report.Outputs;
import longnight.report.Prose;
import longnight.report.ResultJson;
import longnight.study.Band;
import longnight.study.Draws;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One night: a file in; a page, charts and data out. */
@Command(
        name = "night",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class NightCommand implements Callable<Integer> {
    /** Steps that the working integrator allows [s]; see {@link NumericalSettings}. */
    private static final double SHORTEST_STEP = 5;

    private static final double LONGEST_STEP = 300;

    private final Reader reader;
    private final BiFunction<Scenario, NumericalSettings, NightResult> engine;
    private final Bander bander;

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Mixin
    private final Destination to = new Destination();

    @Option(names = "--reference", descriptionKey = "reference")
    private boolean reference;

    @Option(names = "--step", paramLabel = "SECONDS", descriptionKey = "step")
    private @Nullable Double step;

    @Mixin
    private final BandOptions drawn = new BandOptions();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    /**
     * @param reader turns a file into a question
     * @param engine answers it
     * @param bander says how well the model is known that answered
     */
    NightCommand(Reader reader, BiFunction<Scenario, NumericalSettings, NightResult> engine, Bander bander) {
        this.reader = reader;
        this.engine = engine;
        this.bander = bander;
    }

    /** Makes the band of an answer. */
    interface Bander {
        Band band(NightResult nominal, int draws, long seed, int threads);
    }

    /** Turns a file into a question. */
    interface Reader {
        Scenario read(Path file) throws IOException;
    }

    @Override
    public Integer call() throws IOException {
        NumericalSettings settings = settings(NumericalSettings.standard());
        drawn.check(spec.commandLine());
        threads.count(spec.commandLine());
        to.require(defaultFolder(), Outputs.NIGHT);

        Scenario scenario = reader.read(file);
        NightResult result = engine.apply(scenario, settings);
        @Nullable Band band = band(result);

        to.write(
                spec.commandLine(),
                Outputs.of(result, band, shown.units()),
                Console.page(result, band, shown.units()),
                () -> ResultJson.text(result, band),
                () -> {
                    if (!reference) {
                        return "";
                    }
                    NightResult dry =
                            settings.water() ? engine.apply(scenario, settings(NumericalSettings.dry())) : result;
                    NightResult second = engine.apply(scenario, NumericalSettings.referenceIntegrator());
                    return Console.comparison(result, dry, second, shown.units());
                });
        return ExitCode.FINE;
    }

    /** The band, unless nobody wants it or nothing was run. */
    private @Nullable Band band(NightResult result) {
        return drawn.isWanted() && !result.hours().isEmpty()
                ? bander.band(result, drawn.count(Draws.USUAL), drawn.seed(), threads.count(spec.commandLine()))
                : null;
    }

    /** With every step and interval divided as the caller asks. */
    private NumericalSettings settings(NumericalSettings standard) {
        if (step == null) {
            return standard;
        }
        if (!(step >= SHORTEST_STEP && step <= LONGEST_STEP)) {
            throw new ParameterException(
                    spec.commandLine(),
                    Prose.text(
                            "fault.step",
                            String.valueOf(step),
                            String.valueOf((int) SHORTEST_STEP),
                            String.valueOf((int) LONGEST_STEP)));
        }
        return standard.divided(standard.step() / step);
    }

    /** Beside where the caller stands, not beside the file: the file's folder may be shared or read-only. */
    private Path defaultFolder() {
        Path last = file.getFileName();
        String name = last == null ? "night" : last.toString();
        int dot = name.lastIndexOf('.');
        return Path.of((dot > 0 ? name.substring(0, dot) : name) + "-out");
    }
}
