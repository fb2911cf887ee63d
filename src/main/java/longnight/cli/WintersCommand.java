package longnight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.report.Prose;
import longnight.report.WintersFiles;
import longnight.report.WintersPage;
import longnight.scenario.ClimateRecords;
import longnight.scenario.Instead;
import longnight.scenario.NightFiles;
import longnight.scenario.ScenarioReader;
import longnight.study.DesignNight;
import longnight.study.Winters;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A station's record in; the coldest night to expect, three nights to plan for and a kit's worst nights out. */
@Command(
        name = "winters",
        resourceBundle = "longnight.report.prose",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
final class WintersCommand implements Callable<Integer> {
    private static final Path FOLDER = Path.of("winters-out");

    @Spec
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Parameters(paramLabel = "RECORD", descriptionKey = "RECORD", arity = "1..*")
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private List<Path> records;

    @Option(names = "--years", paramLabel = "N", descriptionKey = "years", defaultValue = "10")
    private double years;

    @Option(names = "--latest", paramLabel = "N", descriptionKey = "latest", defaultValue = "" + Winters.LATEST)
    private int latest;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "seed", defaultValue = "1")
    private long seed;

    @Option(names = "--night", paramLabel = "FILE", descriptionKey = "night")
    private @Nullable Path night;

    @Option(names = "--kit", paramLabel = "FILE", descriptionKey = "kit")
    private @Nullable Path kit;

    @Option(names = "--person", paramLabel = "FILE", descriptionKey = "person")
    private @Nullable Path person;

    @Option(names = "--latitude", paramLabel = "DEGREES", descriptionKey = "latitude")
    private @Nullable Double latitude;

    @Option(names = "--longitude", paramLabel = "DEGREES", descriptionKey = "longitude")
    private @Nullable Double longitude;

    @Option(names = "--utc-offset", paramLabel = "HOURS", descriptionKey = "utc-offset")
    private @Nullable Double utcOffset;

    @Mixin
    private final Destination to = new Destination();

    @Mixin
    private final Threads threads = new Threads();

    @Mixin
    private final UnitsOption shown = new UnitsOption();

    @Override
    public Integer call() throws IOException {
        check();
        int together = threads.count(spec.commandLine());
        to.require(FOLDER, WintersFiles.NAMES);
        Instead instead = new Instead(person, kit);
        @Nullable
        Scenario question =
                night == null ? null : ScenarioReader.read(night, instead).scenario();
        if (question != null && !Winters.canRun(question)) {
            throw fault("fault.winters.laboratory", String.valueOf(night));
        }
        Winters answer = Winters.of(
                ClimateRecords.read(records, told()),
                question,
                NumericalSettings.standard(),
                new Winters.Wish(years, latest, seed, together));

        to.write(
                spec.commandLine(),
                WintersFiles.of(answer, nights(answer, instead), shown.units()),
                WintersPage.text(answer, shown.units()),
                () -> WintersFiles.json(answer),
                () -> "");
        return ExitCode.FINE;
    }

    private void check() {
        require("--years", years, 1.1, 1000);
        require("--latest", latest, 10, 1000);
        require("--latitude", latitude == null ? 0 : latitude, -90, 90);
        require("--longitude", longitude == null ? 0 : longitude, -180, 180);
        require("--utc-offset", utcOffset == null ? 0 : utcOffset, -12, 14);
        if (night == null && (kit != null || person != null)) {
            throw fault("fault.winters.night");
        }
    }

    private void require(String option, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw fault("fault.range", option, plain(value), plain(low), plain(high));
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }

    private ClimateRecords.Told told() {
        return new ClimateRecords.Told(or(latitude), or(longitude), or(utcOffset), Double.NaN);
    }

    private static double or(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }

    /** The design nights as files to run: the weather of each, and with a night given, that night in it. */
    private Map<String, String> nights(Winters answer, Instead instead) {
        Map<String, String> files = new LinkedHashMap<>();
        for (DesignNight design : answer.designs()) {
            String name = WintersPage.name(answer, design);
            List<String> remarks = WintersPage.remarks(answer, design);
            String weather = WintersFiles.weatherFile(design);
            files.put(weather, NightFiles.weather(design.weather(), answer.startOfDay(), name, remarks));
            if (night != null) {
                files.put(
                        WintersFiles.nightFile(design),
                        NightFiles.night(night, instead, to.folder(FOLDER), name, weather, remarks));
            }
        }
        return files;
    }
}
