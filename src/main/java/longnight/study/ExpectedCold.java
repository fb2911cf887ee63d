package longnight.study;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import org.jspecify.annotations.Nullable;

/**
 * The coldest night to expect once in so many years.
 *
 * @param winters     whose minima were used, in order
 * @param gumbel      Gumbel's distribution of them
 * @param gev         with a shape more; null with fewer than {@value #FEWEST_FOR_GEV} winters
 * @param lines       one for each return period asked for, and a few more
 * @param trend       of the minima over the winters [K per 10 years]
 * @param trendError  its standard error
 * @param seed        of the chance behind the bands
 * @param draws       behind the bands
 */
public record ExpectedCold(
        List<Winter> winters,
        GumbelMinima gumbel,
        @Nullable GevMinima gev,
        List<Line> lines,
        double trend,
        double trendError,
        long seed,
        int draws) {

    /** Fewer winters than these give no answer at all; fewer than the second are called few. Common practice, no source. */
    public static final int FEWEST = 10;

    public static final int ENOUGH = 20;
    public static final int FEWEST_FOR_GEV = 30;

    /** Share of the band. */
    public static final double BAND = 0.9;

    static final int DRAWS = 2000;

    /**
     * One return period.
     *
     * @param years  once in so many
     * @param gumbel [degC]
     * @param low    lower end of the band [degC]
     * @param high   upper end
     * @param gev    [degC]; NaN without it
     */
    public record Line(double years, double gumbel, double low, double high, double gev) {}

    /**
     * Fits complete winters.
     *
     * @param winters at least {@value #FEWEST}, not all with the same minimum
     * @param years   return periods, each above 1
     */
    static ExpectedCold of(List<Winter> winters, double[] years, long seed) {
        double[] minima = winters.stream().mapToDouble(Winter::minimum).toArray();
        GumbelMinima gumbel = GumbelMinima.fit(minima);
        @Nullable GevMinima gev = minima.length >= FEWEST_FOR_GEV ? GevMinima.fit(minima) : null;
        double[][] bands = gumbel.bands(minima.length, years, BAND, DRAWS, seed);
        SimpleRegression line = new SimpleRegression();
        winters.forEach(winter -> line.addData(winter.year(), winter.minimum()));
        return new ExpectedCold(
                List.copyOf(winters),
                gumbel,
                gev,
                IntStream.range(0, years.length)
                        .mapToObj(i -> new Line(
                                years[i],
                                gumbel.coldest(years[i]),
                                bands[i][0],
                                bands[i][1],
                                gev == null ? Double.NaN : gev.coldest(years[i])))
                        .toList(),
                10 * line.getSlope(),
                10 * line.getSlopeStdErr(),
                seed,
                DRAWS);
    }

    /** Whether the winters warm or cool by more than twice what chance alone would make likely. */
    public boolean isTrending() {
        return Math.abs(trend) > 2 * trendError;
    }
}
