package longnight.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.Trace;
import longnight.report.Curves.Curve;
import longnight.report.Curves.Span;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Spread;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;

/** The picture of a comparison: core-heat deficit and demand of up to six nights on the same axes. */
final class CompareChart {
    /** File name, without ending. */
    static final String FILE = "compare";

    /** The axis of the deficit reaches at least so far, so that little looks like little [J]. */
    private static final double LEAST_DEFICIT = 64e3;

    private static final double UPPER = 600;
    private static final double LOWER = 560;

    private CompareChart() {}

    static Picture picture(Comparison.Answer answer, Units units) {
        return Picture.framed(
                new Picture.Frame(
                        Prose.text("compare.chart.title"),
                        Compared.headline(answer),
                        Compared.atRisk(answer),
                        Compared.about(answer),
                        Compared.cautions(answer).stream()
                                .map(caution -> Wording.shortText(caution, units))
                                .toList()),
                sheet -> content(answer, units, sheet));
    }

    private static void content(Comparison.Answer answer, Units units, Sheet sheet) {
        if (answer.all().stream().anyMatch(one -> Wording.hasRun(one.result()))) {
            Span span = span(answer);
            sheet.text(Prose.text("chart.deficit.upper", units.unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
            Plots.plot(sheet, UPPER, deficitPlot(answer, units, span));
            sheet.key(Prose.text("chart.deficit.band", units.deadBand()), Fonts.plain(Sheet.TEXT), Plots.BAND);
            sheet.space(20);
            List<Curve> demand = curves(answer, span, Trace::demand, 1);
            if (demand.stream().anyMatch(curve -> curve.lastKnown() >= 0)) {
                sheet.text(Prose.text("compare.chart.demand"), Fonts.bold(Sheet.HEADING));
                Plots.plot(sheet, LOWER, demandPlot(demand, span));
                sheet.space(20);
            }
        }
        for (int i = 0; i < answer.all().size(); i++) {
            sheet.key(
                    Compared.line(i, answer.all().get(i)), Fonts.plain(Sheet.TEXT), Curves.paint(i), Curves.stroke(i));
        }
        bands(answer, units, sheet);
        if (!span(answer).clock()) {
            sheet.text(Prose.text("compare.chart.dusk"), Fonts.plain(Sheet.TEXT));
        }
        sheet.space(24);
    }

    /** The shortfall heat of each and its difference to the first, on one scale. */
    private static void bands(Comparison.Answer answer, Units units, Sheet sheet) {
        ComparedBand band = answer.band();
        if (band == null) {
            return;
        }
        double heat = units.value(Measure.HEAT, 1);
        int decimals = units.decimals(Measure.HEAT);
        List<Plots.Interval> own = new ArrayList<>();
        List<Plots.Interval> more = new ArrayList<>();
        for (int i = 0; i < band.all().size(); i++) {
            ComparedBand.Amount bill = band.all().get(i).shortfallHeat();
            if (Double.isNaN(bill.own().low())) {
                continue;
            }
            String name = Prose.text(
                    "compare.chart.name",
                    Compared.letter(i),
                    Wording.clean(answer.all().get(i).name()));
            Spread each = bill.own();
            String ends = Figures.range(heat * each.low(), heat * each.high(), decimals);
            own.add(interval(name, ends, each, units));
            if (i > 0 && !Double.isNaN(bill.more().low())) {
                String less = Prose.text("compare.chart.less", Compared.letter(i), Compared.letter(0));
                more.add(interval(less, Compared.ends(bill.more(), heat, decimals), bill.more(), units));
            }
        }
        String draws = String.valueOf(band.draws());
        String seed = String.valueOf(band.seed());
        sheet.space(20);
        sheet.text(Prose.text("compare.chart.bands", units.unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
        Plots.intervals(sheet, own, more);
        sheet.text(Prose.text("compare.chart.bands.how", draws, seed, Compared.letter(0)), Fonts.plain(Sheet.SMALL));
    }

    private static Plots.Interval interval(String name, String ends, Spread spread, Units units) {
        double heat = units.value(Measure.HEAT, 1);
        String text = Prose.text("chart.interval", name, units.number(Measure.HEAT, spread.nominal()), ends);
        return new Plots.Interval(text, heat * spread.low(), heat * spread.nominal(), heat * spread.high());
    }

    /** By the clock when all nights have the same dusk and dawn. */
    private static Span span(Comparison.Answer answer) {
        List<NightPlan> plans =
                answer.all().stream().map(one -> one.result().scenario().plan()).toList();
        double longest = plans.stream().mapToDouble(NightPlan::duration).max().orElseThrow();
        double start = plans.get(0).startOfDay();
        boolean clock = plans.stream().allMatch(plan -> plan.startOfDay() == start && plan.duration() == longest);
        return clock ? new Span(start, start + longest, true) : new Span(0, longest, false);
    }

    private static XYPlot deficitPlot(Comparison.Answer answer, Units units, Span span) {
        List<Curve> curves = curves(answer, span, Trace::coreHeatDeficit, units.value(Measure.HEAT, 1)).stream()
                .map(curve -> new Curve(
                        curve.name(),
                        curve.time(),
                        Arrays.stream(curve.value()).map(q -> Math.max(0, q)).toArray()))
                .toList();
        double top = Math.max(units.value(Measure.HEAT, LEAST_DEFICIT), 1.08 * highest(curves));
        XYPlot plot = Curves.plot(curves, span, 0, top, UPPER);
        IntervalMarker band = new IntervalMarker(0, units.value(Measure.HEAT, Figures.DEAD_BAND), Plots.BAND);
        band.setAlpha(1);
        plot.addRangeMarker(band, Layer.BACKGROUND);
        return plot;
    }

    private static XYPlot demandPlot(List<Curve> curves, Span span) {
        double lowest = curves.stream()
                .flatMapToDouble(curve -> Arrays.stream(curve.value()))
                .filter(Double::isFinite)
                .min()
                .orElse(1);
        double low = Math.min(0.8, Math.floor(5 * lowest) / 5);
        double high = Math.max(2.4, 1.08 * highest(curves));
        XYPlot plot = Curves.plot(curves, span, low, high, LOWER);
        line(plot, span, Compared.EASY, "compare.chart.easy", TextAnchor.TOP_LEFT);
        line(plot, span, Compared.SHIVERING, "compare.chart.shivering", TextAnchor.BOTTOM_LEFT);
        return plot;
    }

    /** A line of the verdict, named at the left, where no demand is known yet. */
    private static void line(XYPlot plot, Span span, double at, String key, TextAnchor anchor) {
        ValueMarker line = new ValueMarker(at, Sheet.INK, Plots.THIN);
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.BACKGROUND);
        double left = span.from() + 0.01 * (span.to() - span.from());
        Plots.note(plot, Prose.text(key), left, at, anchor);
    }

    private static List<Curve> curves(
            Comparison.Answer answer, Span span, Function<Trace, double[]> what, double scale) {
        return IntStream.range(0, answer.all().size())
                .mapToObj(i -> {
                    Comparison.One one = answer.all().get(i);
                    NightResult result = one.result();
                    double shift = span.clock() ? result.scenario().plan().startOfDay() : 0;
                    return new Curve(
                            Prose.text("compare.chart.name", Compared.letter(i), Wording.clean(one.name())),
                            moved(Plots.thinned(result.trace().time()), 1, shift),
                            moved(Plots.thinned(what.apply(result.trace())), scale, 0));
                })
                .toList();
    }

    private static double[] moved(double[] values, double scale, double shift) {
        return Arrays.stream(values).map(v -> scale * v + shift).toArray();
    }

    private static double highest(List<Curve> curves) {
        return curves.stream()
                .flatMapToDouble(curve -> Arrays.stream(curve.value()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }
}
