package longnight.cli;

import java.io.IOException;
import java.io.PrintWriter;
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
    private static final String STANDARD_OUTPUT = "-";

    /** Steps that the working integrator allows [s]; see {@link NumericalSettings}. */
    private static final double SHORTEST_STEP = 5;

    private static final double LONGEST_STEP = 300;

    private final Reader reader;
    private final BiFunction<Scenario, NumericalSettings, NightResult> engine;

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "out")
    private @Nullable Path out;

    @Option(names = "--json", paramLabel = "FILE", descriptionKey = "json")
    private @Nullable String json;

    @Option(names = "--reference", descriptionKey = "reference")
    private boolean reference;

    @Option(names = "--step", paramLabel = "SECONDS", descriptionKey = "step")
    private @Nullable Double step;

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    /**
     * @param reader turns a file into a question
     * @param engine answers it
     */
    NightCommand(Reader reader, BiFunction<Scenario, NumericalSettings, NightResult> engine) {
        this.reader = reader;
        this.engine = engine;
    }

    /** Turns a file into a question. */
    interface Reader {
        Scenario read(Path file) throws IOException;
    }

    @Override
    public Integer call() throws IOException {
        NumericalSettings settings = settings(NumericalSettings.standard());
        boolean jsonAlone = STANDARD_OUTPUT.equals(json);
        Path folder = out == null && !jsonAlone ? defaultFolder() : out;
        if (folder != null) {
            Outputs.requireFolder(folder, Outputs.NIGHT);
        }
        Path jsonFile = json == null || jsonAlone ? null : Path.of(json);
        if (jsonFile != null) {
            Outputs.requireFile(jsonFile);
        }

        Scenario scenario = reader.read(file);
        NightResult result = engine.apply(scenario, settings);

        PrintWriter page = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Outputs.@Nullable Written written = folder == null ? null : Outputs.write(result, folder, shown.units());
        if (jsonFile != null) {
            Outputs.write(ResultJson.text(result), jsonFile);
        }
        page.print(jsonAlone ? ResultJson.text(result) : Console.page(result, shown.units()));
        if (reference) {
            NightResult dry = settings.water() ? engine.apply(scenario, settings(NumericalSettings.dry())) : result;
            NightResult second = engine.apply(scenario, NumericalSettings.referenceIntegrator());
            (jsonAlone ? err : page).print(Console.comparison(result, dry, second, shown.units()));
        }
        if (written != null && folder != null) {
            if (!jsonAlone) {
                page.print(Console.files(folder, written));
            }
            if (written.note() != null) {
                err.println("longnight: " + written.note());
            }
        }
        page.flush();
        err.flush();
        return ExitCode.FINE;
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
