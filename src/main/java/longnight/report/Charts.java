package longnight.report;

import static longnight.report.Plots.AXIS_SPACE;
import static longnight.report.Plots.BAND;
import static longnight.report.Plots.DASHED;
import static longnight.report.Plots.DOTTED;
import static longnight.report.Plots.DUSK;
import static longnight.report.Plots.EMBER;
import static longnight.report.Plots.GRID;
import static longnight.report.Plots.NIGHT;
import static longnight.report.Plots.SOLID;
import static longnight.report.Plots.SPREAD;
import static longnight.report.Plots.STRETCHED;
import static longnight.report.Plots.THIN;
import static longnight.report.Plots.area;
import static longnight.report.Plots.bars;
import static longnight.report.Plots.look;
import static longnight.report.Plots.max;
import static longnight.report.Plots.min;
import static longnight.report.Plots.negated;
import static longnight.report.Plots.note;
import static longnight.report.Plots.plot;
import static longnight.report.Plots.step;
import static longnight.report.Plots.style;
import static longnight.report.Plots.thinned;
import static longnight.report.Plots.tick;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longnight.figure.BodySegment;
import longnight.night.HourRow;
import longnight.night.Ledger;
import longnight.night.NightResult;
import longnight.night.Trace;
import longnight.night.WaterReport;
import longnight.night.Way;
import longnight.report.Plots.Bar;
import longnight.report.Plots.ClockFormat;
import longnight.report.Plots.WholeFormat;
import longnight.study.Band;
import longnight.study.Spread;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;
import org.jspecify.annotations.Nullable;

/**
 * The pictures of a night: two of every night, a third of one in which clothes get wet. Each can be read without colour (lines differ in dash and weight, areas in lightness, and
 * everything carries its name), and each carries verdict and cautions inside it, because pictures travel alone.
 */
final class Charts {
    /** File name of the first chart, without ending. */
    static final String DEFICIT = "core-heat-deficit";

    /** File name of the second chart, without ending. */
    static final String HEAT = "where-the-heat-goes";

    /** File name of the chart of water, without ending. */
    static final String WATER = "water-by-layer";

    /** Fills of stacked areas, unlike their neighbours in lightness; the last is for all the rest. */
    private static final Color[] STACK = {NIGHT, EMBER, DUSK, Color.WHITE, BAND};

    /** Highest water that the axis at least has room for, so that a few grams look like a few [kg]. */
    private static final double LEAST_WATER = 0.05;

    /** A band thinner than this share of the axis has its name in the key only. */
    private static final double NAMED = 0.09;

    /** Half the height of a tick label, with some air, as a share of the plot's height. */
    private static final double HALF_LABEL = 0.035;

    private Charts() {}

    /** {@link #coreHeatDeficit(NightResult, Units)} in metric units. */
    static Picture coreHeatDeficit(NightResult result) {
        return coreHeatDeficit(result, null, Units.METRIC);
    }

    /** {@link #coreHeatDeficit(NightResult, Band, Units)} without a band. */
    static Picture coreHeatDeficit(NightResult result, Units units) {
        return coreHeatDeficit(result, null, units);
    }

    static Picture coreHeatDeficit(NightResult result, @Nullable Band band, Units units) {
        return picture(result, units, "chart.deficit.title", sheet -> coreHeatDeficit(result, band, units, sheet));
    }

    /** {@link #whereTheHeatGoes(NightResult, Units)} in metric units. */
    static Picture whereTheHeatGoes(NightResult result) {
        return whereTheHeatGoes(result, Units.METRIC);
    }

    static Picture whereTheHeatGoes(NightResult result, Units units) {
        return picture(result, units, "chart.heat.title", sheet -> whereTheHeatGoes(result, units, sheet));
    }

    /** {@link #waterByLayer(NightResult, Units)} in metric units. */
    static Picture waterByLayer(NightResult result) {
        return waterByLayer(result, Units.METRIC);
    }

    /** Only for a night in which {@link Account#isWet}. */
    static Picture waterByLayer(NightResult result, Units units) {
        return picture(result, units, "chart.water.title", sheet -> waterByLayer(result, units, sheet));
    }

    private static void coreHeatDeficit(NightResult result, @Nullable Band band, Units units, Sheet sheet) {
        sheet.text(Prose.text("chart.deficit.upper", units.unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
        plot(sheet, 560, deficitPlot(result, band, units));
        if (band != null) {
            sheet.text(
                    Prose.text(
                            "chart.deficit.black",
                            curveName(result, units),
                            String.valueOf(band.holding()),
                            String.valueOf(band.draws())),
                    Fonts.plain(Sheet.TEXT));
            Spread end = band.deficit().get(band.deficit().size() - 1);
            String range = Wording.deficits(end, units) + " " + units.unit(Measure.HEAT);
            sheet.key(Prose.text("chart.deficit.spread", range), Fonts.plain(Sheet.TEXT), SPREAD);
        }
        sheet.key(Prose.text("chart.deficit.band", units.deadBand()), Fonts.plain(Sheet.TEXT), BAND);
        if (!Double.isNaN(firstBelow(result.trace()))) {
            sheet.key(Prose.text("chart.extrapolated", Wording.stretched(units)), Fonts.plain(Sheet.TEXT), STRETCHED);
        }
        sheet.space(20);
        sheet.text(Prose.text("chart.deficit.lower", units.unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
        plot(sheet, 520, billPlot(result, units));
        HourRow last = Wording.lastHour(result);
        key(sheet, "chart.deficit.heat", units.text(Measure.HEAT, last.paidByHeatMade()), EMBER);
        key(sheet, "chart.deficit.shell", units.text(Measure.HEAT, last.paidByShell()), DUSK);
        key(sheet, "chart.deficit.core", units.text(Measure.HEAT, last.paidByCore()), NIGHT);
        sheet.text(
                Prose.text("chart.deficit.bill", units.text(Measure.HEAT, result.shortfallHeat())),
                Fonts.plain(Sheet.TEXT));
        if (anyNegativePayer(result.trace())) {
            sheet.text(Prose.text("chart.deficit.below"), Fonts.plain(Sheet.TEXT));
        }
    }

    private static void whereTheHeatGoes(NightResult result, Units units, Sheet sheet) {
        Ledger ledger = result.ledger();
        double duration = Wording.end(result);
        double lost = Arrays.stream(ledger.lostByWay()).sum();
        sheet.text(
                Prose.text(
                        "chart.heat.sum",
                        Figures.whole(lost / duration),
                        Figures.whole(ledger.made() / duration),
                        Figures.whole(ledger.rest() / duration)),
                Fonts.plain(Sheet.TEXT));
        sheet.space(20);

        List<Bar> ways = new ArrayList<>();
        for (Way way : Way.values()) {
            double watts = ledger.lostByWay()[way.ordinal()] / duration;
            boolean always = way != Way.PRECIPITATION && way != Way.BROUGHT;
            if (always || Math.abs(watts) >= 0.05) {
                ways.add(bar(Prose.text("way." + way.name()), watts, lost / duration));
            }
        }
        ways.sort(Comparator.comparingDouble(Bar::value).reversed());
        List<Bar> parts = new ArrayList<>();
        for (BodySegment part : BodySegment.values()) {
            parts.add(bar(
                    Prose.text("part." + part.name()),
                    ledger.lostByPart()[part.ordinal()] / duration,
                    lost / duration));
        }
        parts.add(bar(Prose.text("way.BREATH"), ledger.breath() / duration, lost / duration));

        bars(sheet, Prose.text("chart.heat.ways"), ways);
        sheet.space(20);
        bars(sheet, Prose.text("chart.heat.parts"), parts);
        if (ledger.lostByWay()[Way.CLOTHING_STORE.ordinal()] / duration < -0.5) {
            sheet.text(Prose.text("chart.heat.negative"), Fonts.plain(Sheet.TEXT));
        }
        if (ledger.lostByWay()[Way.BROUGHT.ordinal()] / duration <= -0.05) {
            sheet.text(Prose.text("chart.heat.brought"), Fonts.plain(Sheet.TEXT));
        }
    }

    /** "34 W, 28 %" at the end of a bar. */
    private static Bar bar(String name, double watts, double whole) {
        return new Bar(name, watts, Figures.whole(watts) + " W, " + Figures.whole(100 * watts / whole) + " %");
    }

    // --- Water ---

    /** Liquid and ice of one piece, or of all the smaller ones, along the trace [kg]. */
    private record Wet(String name, double[] mass, double ice) {
        double most() {
            return max(mass);
        }
    }

    private static void waterByLayer(NightResult result, Units units, Sheet sheet) {
        WaterReport water = Objects.requireNonNull(result.water());
        List<Wet> pieces = wetPieces(water);
        sheet.text(Prose.text("chart.water.upper", units.unit(Measure.PIECE)), Fonts.bold(Sheet.HEADING));
        plot(sheet, 620, waterPlot(result, units, water, pieces));
        for (int i = pieces.size() - 1; i >= 0; i--) { // as they lie on the stack
            Wet piece = pieces.get(i);
            double[] mass = piece.mass();
            int most = IntStream.range(0, mass.length)
                    .reduce((a, b) -> mass[b] > mass[a] ? b : a)
                    .orElseThrow();
            String text = Prose.text(
                    "chart.water.piece",
                    piece.name(),
                    units.number(Measure.PIECE, mass[0]),
                    units.number(Measure.PIECE, mass[most]),
                    Wording.clock(result, water.traceTime()[most]),
                    units.number(Measure.PIECE, mass[mass.length - 1]));
            sheet.key(
                    piece.ice() < 0.0005
                            ? text
                            : Prose.text("chart.water.ice", text, units.number(Measure.PIECE, piece.ice())),
                    Fonts.plain(Sheet.TEXT),
                    STACK[i]);
        }
        if (!Double.isNaN(firstBelow(result.trace()))) {
            sheet.key(Prose.text("chart.extrapolated", Wording.stretched(units)), Fonts.plain(Sheet.TEXT), STRETCHED);
        }
        sheet.text(Prose.text("chart.water.bound"), Fonts.plain(Sheet.TEXT));
        sheet.space(20);
        sheet.text(Account.water(result, units), Fonts.plain(Sheet.TEXT));
    }

    /** The wettest, and the rest in one. */
    private static List<Wet> wetPieces(WaterReport water) {
        List<Wet> all = new ArrayList<>();
        for (int i = 0; i < water.layers().size(); i++) {
            WaterReport.Layer layer = water.layers().get(i);
            all.add(new Wet(Wording.name(layer.id()), Account.traced(water, i), layer.iceAtDawn()));
        }
        all.sort(Comparator.comparingDouble(Wet::most).reversed());
        long drawn = all.stream().filter(wet -> wet.most() > Account.DRAWN).count();
        int own = (int) Math.min(STACK.length - 1, drawn);
        List<Wet> pieces = new ArrayList<>(all.subList(0, own));
        double[] rest = new double[water.traceTime().length];
        double ice = 0;
        for (Wet wet : all.subList(own, all.size())) {
            Arrays.setAll(rest, t -> rest[t] + wet.mass()[t]);
            ice += wet.ice();
        }
        if (max(rest) >= 0.0005) {
            pieces.add(new Wet(Prose.text("chart.water.others"), rest, ice));
        }
        return pieces;
    }

    private static XYPlot waterPlot(NightResult result, Units units, WaterReport water, List<Wet> pieces) {
        double start = result.scenario().plan().startOfDay();
        double[] time =
                Arrays.stream(thinned(water.traceTime())).map(t -> start + t).toArray();
        double[] stack = new double[time.length];
        double[][] bottom = new double[pieces.size()][];
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int i = 0; i < pieces.size(); i++) {
            bottom[i] = stack.clone();
            double[] mass = units.values(Measure.PIECE, thinned(pieces.get(i).mass()));
            area(renderer, time, stack, mass, 1, STACK[i]);
        }
        double top = (Double.isNaN(result.verdict().from()) ? 1.06 : 1.18)
                * Math.max(units.value(Measure.PIECE, LEAST_WATER), max(stack));
        XYPlot plot = timePlot(result, 0, top);
        plot.setDataset(new DefaultXYDataset());
        plot.setRenderer(renderer);
        for (int i = 0; i < pieces.size(); i++) {
            double[] above = i + 1 < pieces.size() ? bottom[i + 1] : stack;
            nameBand(plot, pieces.get(i).name(), time, bottom[i], above, NAMED * top);
        }
        noteFrom(plot, result, time[0], time[time.length - 1] - time[0], 0.99 * top);
        return plot;
    }

    /**
     * The name in a band that is thick enough for it: late, where the night is calm and the bands are level, but not far from
     * where the band is thickest.
     */
    private static void nameBand(
            XYPlot plot, String name, double[] time, double[] below, double[] above, double least) {
        int n = time.length;
        double[] thick =
                IntStream.range(0, n).mapToDouble(i -> above[i] - below[i]).toArray();
        double wanted = Math.max(least, 0.7 * max(Arrays.copyOfRange(thick, n / 4, n - n / 4)));
        IntStream.range(n / 4, n - n / 4)
                .filter(i -> thick[i] >= wanted)
                .reduce((a, b) -> b)
                .ifPresent(i -> note(plot, name, time[i], (above[i] + below[i]) / 2, TextAnchor.CENTER));
    }

    // --- The sheet around the plots ---

    /** Verdict above, cautions below, and what there is to draw between them. */
    private static Picture picture(NightResult result, Units units, String titleKey, Consumer<Sheet> content) {
        String atRisk = Wording.atRisk(result, units);
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(titleKey),
                        Wording.verdict(result, units),
                        atRisk,
                        Wording.who(result),
                        result.cautions().stream()
                                .map(caution -> Wording.shortText(caution, units))
                                .toList()),
                sheet -> {
                    if (Wording.hasRun(result)) {
                        content.accept(sheet);
                        sheet.space(24);
                    }
                });
    }

    private static void key(Sheet sheet, String key, String heat, Color fill) {
        sheet.key(Prose.text(key, heat), Fonts.plain(Sheet.TEXT), fill);
    }

    // --- Core-heat deficit ---

    private static XYPlot deficitPlot(NightResult result, @Nullable Band band, Units units) {
        Trace trace = thin(result.trace());
        double[] time = clockTime(result, trace);
        double[] deficit = Arrays.stream(units.values(Measure.HEAT, trace.coreHeatDeficit()))
                .map(heat -> Math.max(0, heat))
                .toArray();
        double[] at35 = units.values(Measure.HEAT, trace.lineAt35());
        double[] at32 = units.values(Measure.HEAT, trace.lineAt32());
        DefaultXYDataset lines = new DefaultXYDataset();
        lines.addSeries("deficit", new double[][] {time, deficit});
        lines.addSeries("35", new double[][] {time, at35});
        lines.addSeries("32", new double[][] {time, at32});

        double[] low = band == null ? new double[0] : shown(band, Spread::low, units);
        double[] high = band == null ? new double[0] : shown(band, Spread::high, units);
        double top = 1.22 * Math.max(max(at32), Math.max(max(deficit), Math.min(max(high), 2 * max(at32))));
        double none = units.value(Measure.HEAT, Figures.DEAD_BAND);
        XYPlot plot = timePlot(result, 0, top);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        look(renderer, 0, Sheet.INK, SOLID);
        look(renderer, 1, Sheet.INK, DASHED);
        look(renderer, 2, Sheet.INK, DOTTED);
        plot.setDataset(lines);
        plot.setRenderer(renderer);
        if (band != null) {
            double[] bounded = Arrays.stream(high).map(q -> Math.min(q, top)).toArray();
            double[] when = Arrays.stream(band.times())
                    .map(t -> result.scenario().plan().startOfDay() + t)
                    .toArray();
            double[] width = IntStream.range(0, low.length)
                    .mapToDouble(i -> bounded[i] - Math.min(low[i], top))
                    .toArray();
            area(renderer, when, low.clone(), width, 1, SPREAD);
        }

        IntervalMarker strip = new IntervalMarker(0, none, BAND);
        strip.setAlpha(1);
        plot.addRangeMarker(strip, Layer.BACKGROUND);
        double first = time[0];
        double span = time[time.length - 1] - first;
        double left = first + 0.015 * span;
        note(
                plot,
                Prose.text("chart.deficit.line", units.line(Measure.TEMPERATURE, 35)),
                left,
                at35[0] + 0.012 * top,
                TextAnchor.BOTTOM_LEFT);
        note(
                plot,
                Prose.text("chart.deficit.line", units.line(Measure.TEMPERATURE, 32)),
                left,
                at32[0] + 0.012 * top,
                TextAnchor.BOTTOM_LEFT);
        int last = time.length - 1;
        if (band == null) { // with one there is no room beside the curve
            double above = max(Arrays.copyOfRange(deficit, last * 3 / 5, last + 1));
            note(
                    plot,
                    curveName(result, units),
                    first + 0.985 * span,
                    Math.max(above, none) + 0.03 * top,
                    TextAnchor.BOTTOM_RIGHT);
        }

        noteFrom(plot, result, first, span, 0.99 * top);
        return plot;
    }

    /** One edge of the band [kJ], nothing below none; infinite where it is beyond telling. */
    private static double[] shown(Band band, ToDoubleFunction<Spread> edge, Units units) {
        return band.deficit().stream()
                .mapToDouble(spread -> Math.max(0, units.value(Measure.HEAT, edge.applyAsDouble(spread))))
                .toArray();
    }

    /** Names the line from which it does not hold, on the side with more room. */
    private static void noteFrom(XYPlot plot, NightResult result, double first, double span, double height) {
        double from = result.verdict().from();
        if (!Double.isNaN(from)) {
            boolean late = from > 0.5 * span;
            note(
                    plot,
                    Prose.text("chart.from", Wording.clock(result, from)),
                    first + from + (late ? -1 : 1) * 0.01 * span,
                    height,
                    late ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        }
    }

    private static String curveName(NightResult result, Units units) {
        String end = units.deficit(result.coreHeatDeficitDawn());
        if (!Double.isNaN(result.stopped())) {
            return Prose.text("chart.deficit.curve.stopped", end);
        }
        boolean recovers =
                result.coreHeatDeficitWorst() > Math.max(0, result.coreHeatDeficitDawn()) + Figures.DEAD_BAND;
        return recovers
                ? Prose.text(
                        "chart.deficit.curve.worst",
                        units.deficit(result.coreHeatDeficitWorst()),
                        Wording.clock(result, result.worstTime()),
                        end)
                : Prose.text("chart.deficit.curve", end);
    }

    // --- The heat bill ---

    private static XYPlot billPlot(NightResult result, Units units) {
        Trace trace = thin(result.trace());
        double[] time = clockTime(result, trace);
        double[][] payers = {
            units.values(Measure.HEAT, trace.paidByCore()),
            units.values(Measure.HEAT, trace.paidByShell()),
            units.values(Measure.HEAT, trace.paidByHeatMade())
        };
        Color[] fills = {NIGHT, DUSK, EMBER};
        double[] up = new double[time.length];
        double[] down = new double[time.length];
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < payers.length; i++) {
            area(renderer, time, up, payers[i], 1, fills[i]);
            area(renderer, time, down, payers[i], -1, fills[i]);
        }
        double[] bill = units.values(Measure.HEAT, trace.shortfall());
        double high = Math.max(max(up), max(bill));
        double low = -Math.max(max(negated(down)), max(negated(bill)));
        double room = Math.max(units.value(Measure.HEAT, 10e3), high - low);
        XYPlot plot = timePlot(result, low < -0.005 * room ? low - 0.06 * room : 0, high + 0.08 * room);
        DefaultXYDataset lines = new DefaultXYDataset();
        lines.addSeries("bill", new double[][] {time, bill});
        look(renderer, 0, Sheet.INK, SOLID);
        plot.setDataset(lines);
        plot.setRenderer(renderer);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(Sheet.INK);
        plot.setRangeZeroBaselineStroke(THIN);
        return plot;
    }

    private static boolean anyNegativePayer(Trace trace) {
        double least =
                Math.min(min(trace.paidByHeatMade()), Math.min(min(trace.paidByShell()), min(trace.paidByCore())));
        return least < -0.005 * Math.max(10e3, max(trace.shortfall()));
    }

    // --- What both time plots share ---

    private static XYPlot timePlot(NightResult result, double low, double high) {
        double[] time = clockTime(result, result.trace());
        NumberAxis clock = new NumberAxis();
        clock.setRange(time[0], time[time.length - 1]);
        clock.setTickUnit(new NumberTickUnit(tick(time[time.length - 1] - time[0]), new ClockFormat()));
        NumberAxis heat = new NumberAxis();
        double apart = step(high - low);
        heat.setRange(low, roomForLabel(low, high, apart));
        heat.setTickUnit(new NumberTickUnit(apart, new WholeFormat()));
        style(clock);
        style(heat);
        XYPlot plot = new XYPlot(null, clock, heat, null);
        style(plot);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setDomainGridlineStroke(THIN);
        plot.setRangeGridlineStroke(THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(AXIS_SPACE);
        plot.setFixedRangeAxisSpace(space);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);

        double from = result.verdict().from();
        if (!Double.isNaN(from)) {
            ValueMarker marker = new ValueMarker(time[0] + from, Sheet.INK, new BasicStroke(3));
            marker.setAlpha(1);
            plot.addDomainMarker(marker, Layer.FOREGROUND);
        }
        double stretched = firstBelow(result.trace());
        if (!Double.isNaN(stretched)) {
            IntervalMarker marker = new IntervalMarker(time[0] + stretched, time[time.length - 1], STRETCHED);
            marker.setAlpha(1);
            plot.addDomainMarker(marker, Layer.BACKGROUND);
        }
        return plot;
    }

    /** The upper end of an axis, raised where the label of its last tick would be cut in half by the picture's edge. */
    private static double roomForLabel(double low, double high, double apart) {
        double needed = HALF_LABEL * (high - low);
        double above = high - apart * Math.floor(high / apart);
        return above < needed ? high + needed - above : high;
    }

    /** From when the model is stretched [s from dusk]; NaN when it never is. */
    private static double firstBelow(Trace trace) {
        for (int i = 0; i < trace.core().length; i++) {
            if (trace.core()[i] < Wording.STRETCHED_BELOW) {
                return trace.time()[i];
            }
        }
        return Double.NaN;
    }

    /** Seconds after the midnight before dusk, so that full hours of the clock are full hours of the axis. */
    private static double[] clockTime(NightResult result, Trace trace) {
        double start = result.scenario().plan().startOfDay();
        return Arrays.stream(trace.time()).map(t -> start + t).toArray();
    }

    private static Trace thin(Trace trace) {
        return new Trace(
                thinned(trace.time()),
                thinned(trace.shortfall()),
                thinned(trace.paidByHeatMade()),
                thinned(trace.paidByShell()),
                thinned(trace.paidByCore()),
                thinned(trace.coreHeatDeficit()),
                thinned(trace.lineAt35()),
                thinned(trace.lineAt32()),
                thinned(trace.demand()),
                thinned(trace.core()),
                thinned(trace.meanSkin()),
                thinned(trace.hand()),
                thinned(trace.foot()));
    }
}
