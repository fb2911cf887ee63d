package longnight.report;

import java.util.Arrays;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Outline;
import longnight.study.Band;
import longnight.study.Spread;

/** A band as wide as one likes around a made-up night. */
public final class BandFixture {
    private BandFixture() {}

    /** A tenth to either side of what the night says, the deficit at least by 10 kJ. */
    public static Band of(NightResult night, int draws, long seed) {
        double[] times = Band.times(night.scenario().plan());
        Outline outline = Outline.of(night, times);
        return new Band(
                seed,
                draws,
                NumericalSettings.coarse(),
                draws / 4,
                0,
                around(outline.demand()),
                around(outline.shortfallHeat()),
                around(outline.deficitDawn()),
                around(outline.deficitWorst()),
                around(outline.coreDawn()),
                around(outline.lowestHand()),
                around(outline.lowestFoot()),
                around(outline.waterDawn()),
                times,
                Arrays.stream(outline.deficit())
                        .mapToObj(q -> new Spread(q, q - 10e3, q, q + 0.3 * Math.abs(q) + 10e3))
                        .toList());
    }

    private static Spread around(double value) {
        double by = 0.1 * Math.abs(value);
        return new Spread(value, value - by, value, value + by);
    }
}
