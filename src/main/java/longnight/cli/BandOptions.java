package longnight.cli;

import longnight.report.Prose;
import longnight.study.Draws;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Whether and how models are drawn for a band. */
final class BandOptions {
    private static final int FEWEST_DRAWS = 20;
    private static final int MOST_DRAWS = 2000;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "draws")
    private @Nullable Integer draws;

    @Option(names = "--seed", paramLabel = "SEED", descriptionKey = "seed")
    private @Nullable Long seed;

    @Option(names = "--no-band", descriptionKey = "no-band")
    private boolean noBand;

    /** Refuses what cannot be, before any work is done. */
    void check(CommandLine command) {
        if (draws != null && (draws < FEWEST_DRAWS || draws > MOST_DRAWS)) {
            throw new ParameterException(
                    command,
                    Prose.text(
                            "fault.between",
                            "--draws",
                            String.valueOf(draws),
                            String.valueOf(FEWEST_DRAWS),
                            String.valueOf(MOST_DRAWS)));
        }
        if (noBand && (draws != null || seed != null)) {
            throw new ParameterException(command, Prose.text("fault.no-band", draws != null ? "--draws" : "--seed"));
        }
    }

    /** Whether a band is wanted. */
    boolean isWanted() {
        return !noBand;
    }

    /** How many models. */
    int count(int usual) {
        return draws == null ? usual : draws;
    }

    /** Seed of the draws. */
    long seed() {
        return seed == null ? Draws.SEED : seed;
    }

    /** The models drawn, or null when no band is wanted. */
    @Nullable
    Draws draws(int usual) {
        return noBand ? null : Draws.of(count(usual), seed());
    }
}
