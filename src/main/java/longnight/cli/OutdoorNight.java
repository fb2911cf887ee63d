package longnight.cli;

import java.nio.file.Path;
import longnight.night.Scenario;
import longnight.report.Prose;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;
import longnight.study.Line;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Reads nights for verbs that change their weather or clothes. */
final class OutdoorNight {
    private OutdoorNight() {}

    /** @throws ParameterException when the night is a laboratory's or lies outside the model's range */
    static Scenario read(Path file, Instead instead, CommandLine commandLine) {
        Scenario night = ScenarioReader.read(file, instead).scenario();
        if (!night.limits().isEmpty()) {
            throw new ParameterException(
                    commandLine, Prose.text("fault.outside", file.toString(), String.join("; ", night.limits())));
        }
        if (!night.isOutdoors()) {
            throw new ParameterException(commandLine, Prose.text("fault.needs-weather", file.toString()));
        }
        return night;
    }

    /** Beside where the caller stands, not beside the file: the file's folder may be shared or read-only. */
    static Path folder(Path file, String verb) {
        Path last = file.getFileName();
        String name = last == null ? "night" : last.toString();
        int dot = name.lastIndexOf('.');
        return Path.of((dot > 0 ? name.substring(0, dot) : name) + "-" + verb);
    }

    /** @throws ParameterException when a demand is the line and the night shorter than its window */
    static void requireWindow(Scenario night, Line line, Path file, CommandLine commandLine) {
        if (line.measure() == Line.Measure.DEMAND && night.plan().duration() < Line.DEMAND_WINDOW) {
            throw new ParameterException(commandLine, Prose.text("fault.no-demand", file.toString()));
        }
    }
}
