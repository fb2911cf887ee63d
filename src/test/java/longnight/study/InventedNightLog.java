package longnight.study;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.scenario.ScenarioReader;

/** A log that nobody kept: the model's own night with a person who makes 90 % of the usual heat, with noise, odd steps and a gap. */
final class InventedNightLog {
    private static final double PLANTED = 0.9;
    private static final long SEED = 1;

    private InventedNightLog() {}

    public static void main(String[] args) throws Exception {
        Scenario night =
                ScenarioReader.read(Path.of("scenarios/clear-valley.yaml")).scenario();
        NightResult truth = NightEngine.compile(
                        night.withPerson(night.person().withHeatOffset(PLANTED)), ModelChoice.nominal())
                .run(NumericalSettings.standard());
        SplittableRandom chance = new SplittableRandom(SEED);
        StringBuilder text =
                new StringBuilder("# An invented night: the model itself with a heat production of 90 %, noise (seed "
                        + SEED
                        + "), a sensor that is off and a gap.\n# Nobody sat there. Times carry the offset of their clock.\n"
                        + "time [+01:00],air [°C],humidity [%],core [°C],skin [°C],note\n");
        OutdoorState state = new OutdoorState();
        int row = 0;
        for (double t = 120; t < 13.4 * 3600; t += 240 + 900 * chance.nextDouble(), row++) {
            if (t > 5.5 * 3600 && t < 7 * 3600) {
                continue;
            }
            night.surroundings().at(t, state);
            double core = LoggedWeather.at(truth.trace().time(), truth.trace().core(), t)
                    - 0.12
                    + 0.06 * chance.nextGaussian();
            double skin = LoggedWeather.at(truth.trace().time(), truth.trace().meanSkin(), t)
                    + 0.8
                    + 0.3 * chance.nextGaussian();
            long s = Math.round(17.5 * 3600 + t);
            text.append(String.format(
                    Locale.ROOT,
                    "2031-01-%02d %02d:%02d,%.1f,%s,%s,%.1f,%s%n",
                    12 + s / 86400,
                    s % 86400 / 3600,
                    s % 3600 / 60,
                    state.airCelsius + 0.2 * chance.nextGaussian(),
                    row % 3 == 0 ? String.format(Locale.ROOT, "%.0f", 80 + 2 * chance.nextGaussian()) : "",
                    row % 2 == 0 ? String.format(Locale.ROOT, "%.2f", core) : "",
                    skin,
                    row == 20 || row == 33 ? "shivering" : row == 5 ? "cold" : ""));
        }
        Files.writeString(Path.of(args[0]), text.toString());
    }
}
