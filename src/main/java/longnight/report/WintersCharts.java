package longnight.report;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import longnight.night.Verdict;
import longnight.study.ExpectedCold;
import longnight.study.GevMinima;
import longnight.study.KitNight;
import longnight.study.Winter;
import longnight.study.Winters;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** The pictures of a station's record; legible without colour, and with verdict and cautions inside. */
final class WintersCharts {
    static final String EXPECTED = "coldest-to-expect";
    static final String NIGHTS = "every-night";

    private WintersCharts() {}

    /** Only where {@link Winters#expected} is told. */
    static Picture expected(Winters answer, Units units) {
        return picture(answer, units, "winters.chart.title", new WintersPage(answer, units).headline(), "", sheet -> {
            ExpectedCold expected = java.util.Objects.requireNonNull(answer.expected());
            sheet.text(Prose.text("winters.chart.axis", units.unit(Measure.TEMPERATURE)), Fonts.bold(Sheet.HEADING));
            Plots.plot(sheet, 620, expectedPlot(expected, units));
            sheet.text(Prose.text("winters.chart.points"), Fonts.plain(Sheet.TEXT));
            sheet.text(Prose.text("winters.chart.line"), Fonts.plain(Sheet.TEXT));
            if (expected.gev() != null) {
                sheet.text(Prose.text("winters.chart.gev"), Fonts.plain(Sheet.TEXT));
            }
        });
    }

    /** Only where a night was run. */
    static Picture nights(Winters answer, Units units) {
        String counts = WintersPage.counts(answer);
        longnight.night.Scenario kit = java.util.Objects.requireNonNull(answer.kit());
        String who = Prose.text("winters.nights.who", kit.kitName(), Wording.person(kit.person())) + " ";
        return picture(answer, units, "winters.nights.title", counts, who, sheet -> {
            sheet.text(
                    Prose.text("winters.nights.axis", units.unit(Measure.HEAT), units.unit(Measure.TEMPERATURE)),
                    Fonts.bold(Sheet.HEADING));
            Plots.plot(sheet, 720, nightsPlot(answer, units));
            sheet.text(Prose.text("winters.nights.holds"), Fonts.plain(Sheet.TEXT));
            sheet.text(Prose.text("winters.nights.fails"), Fonts.plain(Sheet.TEXT));
        });
    }

    private static Picture picture(
            Winters answer,
            Units units,
            String title,
            String headline,
            String who,
            java.util.function.Consumer<Sheet> content) {
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        headline.replace(" °", "\u00a0°"), // not at the end of a line
                        "",
                        Wording.clean(who + new WintersPage(answer, units).about()),
                        answer.cautions().stream()
                                .map(each -> Wording.shortText(each, units))
                                .toList()),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(20);
                });
    }

    // --- The coldest to expect ---

    private static XYPlot expectedPlot(ExpectedCold expected, Units units) {
        List<ExpectedCold.Line> lines = expected.lines();
        DoubleUnaryOperator air = celsius -> units.value(Measure.TEMPERATURE, celsius);
        double[] minima = expected.winters().stream()
                .mapToDouble(Winter::minimum)
                .sorted()
                .map(air)
                .toArray();
        int n = minima.length;
        // plotting positions of Gringorten 1963, made for Gumbel's distribution (from memory)
        double[] at = IntStream.range(0, n)
                .mapToDouble(i -> seldom((n + 0.12) / (i + 1 - 0.44)))
                .toArray();
        double[] x = lines.stream().mapToDouble(line -> seldom(line.years())).toArray();
        double right = Math.max(x[x.length - 1], at[0]) + 0.15;
        double left = at[n - 1] - 0.15;
        double[] low =
                lines.stream().mapToDouble(ExpectedCold.Line::low).map(air).toArray();
        double[] high =
                lines.stream().mapToDouble(ExpectedCold.Line::high).map(air).toArray();

        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("winters", new double[][] {at, minima});
        data.addSeries("gumbel", new double[][] {
            {left, right},
            {
                air.applyAsDouble(expected.gumbel().mode() - expected.gumbel().scale() * left),
                air.applyAsDouble(expected.gumbel().mode() - expected.gumbel().scale() * right)
            }
        });
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShapesVisible(0, true);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-8, -8, 16, 16));
        renderer.setSeriesPaint(0, Sheet.INK);
        Plots.look(renderer, 1, Sheet.INK, Plots.SOLID);
        double lowest = Math.min(minima[0], Plots.min(low));
        GevMinima shaped = expected.gev();
        if (shaped != null) {
            double[] fine = IntStream.rangeClosed(0, 60)
                    .mapToDouble(i -> left + i * (right - left) / 60)
                    .toArray();
            double[] gev = Arrays.stream(fine)
                    .map(s -> air.applyAsDouble(shaped.coldest(years(s))))
                    .toArray();
            data.addSeries("gev", new double[][] {fine, gev});
            Plots.look(renderer, 2, Sheet.INK, Plots.DASHED);
            lowest = Math.min(lowest, Plots.min(gev));
        }
        double[] outline = new double[4 * x.length];
        for (int i = 0; i < x.length; i++) {
            outline[2 * i] = x[i];
            outline[2 * i + 1] = low[i];
            outline[4 * x.length - 2 - 2 * i] = x[i];
            outline[4 * x.length - 1 - 2 * i] = high[i];
        }
        renderer.addAnnotation(new XYPolygonAnnotation(outline, null, null, Plots.BAND), Layer.BACKGROUND);
        XYPlot plot = new XYPlot(data, new YearsAxis(left, right), degrees(lowest - 1, minima[n - 1] + 1), renderer);
        finish(plot);
        return plot;
    }

    /** Where once in so many years stands on Gumbel's scale. */
    private static double seldom(double years) {
        return -StrictMath.log(-StrictMath.log1p(-1 / years));
    }

    private static double years(double seldom) {
        return -1 / StrictMath.expm1(-StrictMath.exp(-seldom));
    }

    /** Round years on Gumbel's scale. */
    private static final class YearsAxis extends NumberAxis {
        private static final long serialVersionUID = 1L;
        private static final double[] ROUND = {1.1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

        YearsAxis(double left, double right) {
            setRange(left, right);
            Plots.style(this);
        }

        @Override
        @SuppressWarnings("rawtypes") // as in the library
        public List refreshTicks(
                java.awt.Graphics2D pen,
                org.jfree.chart.axis.AxisState state,
                java.awt.geom.Rectangle2D area,
                RectangleEdge edge) {
            return Arrays.stream(ROUND)
                    .filter(years -> getRange().contains(seldom(years)))
                    .mapToObj(years -> new NumberTick(
                            seldom(years), WintersPage.years(years), TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0))
                    .toList();
        }
    }

    // --- Every night ---

    private static XYPlot nightsPlot(Winters answer, Units units) {
        List<KitNight> run =
                answer.nights().stream().filter(night -> !night.isOutside()).toList();
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("holds", points(run.stream().filter(KitNight::holds).toList(), units));
        data.addSeries(
                "fails",
                points(
                        run.stream()
                                .filter(night -> night.outcome() == Verdict.Outcome.DOES_NOT_HOLD
                                        || night.outcome() == Verdict.Outcome.OUTSIDE_THE_MODEL)
                                .toList(),
                        units));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int i = 0; i < 2; i++) {
            renderer.setSeriesShape(i, new Ellipse2D.Double(-7, -7, 14, 14));
            renderer.setSeriesPaint(i, Sheet.INK);
            renderer.setSeriesOutlinePaint(i, Sheet.INK);
            renderer.setSeriesFillPaint(i, i == 0 ? Sheet.PAPER : Sheet.INK);
        }
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        renderer.setDefaultOutlineStroke(Plots.THIN);
        double[][] all = points(run, units);
        double coldest = Plots.min(all[0]);
        double warmest = Arrays.stream(all[0]).max().orElse(1);
        double most = Arrays.stream(all[1]).max().orElse(1);
        double least = Math.min(0, Plots.min(all[1]));
        NumberAxis air = degrees(coldest - 2, warmest + 2);
        NumberAxis heat = axis(least - 0.03 * (most - least), most + 0.12 * (most - least));
        XYPlot plot = new XYPlot(data, air, heat, renderer);
        KitNight worst = run.get(0);
        Plots.note(
                plot,
                Prose.text(
                        "winters.nights.worst",
                        WintersPage.day(answer, worst.night().date())),
                all[0][0] + 0.02 * (warmest - coldest),
                all[1][0],
                TextAnchor.CENTER_LEFT);
        finish(plot);
        return plot;
    }

    private static double[][] points(List<KitNight> nights, Units units) {
        double[] air =
                nights.stream().mapToDouble(night -> night.night().meanAir()).toArray();
        double[] heat = nights.stream().mapToDouble(KitNight::shortfall).toArray();
        return new double[][] {units.values(Measure.TEMPERATURE, air), units.values(Measure.HEAT, heat)};
    }

    private static NumberAxis degrees(double low, double high) {
        return axis(Math.floor(low), Math.ceil(high));
    }

    private static NumberAxis axis(double low, double high) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(low, Math.max(high, low + 1));
        axis.setTickUnit(new NumberTickUnit(Plots.step(Math.max(1, high - low))));
        axis.setNumberFormatOverride(new Plots.WholeFormat());
        Plots.style(axis);
        return axis;
    }

    private static void finish(XYPlot plot) {
        Color grid = Plots.GRID;
        plot.setDomainGridlinePaint(grid);
        plot.setRangeGridlinePaint(grid);
        plot.setDomainGridlineStroke(Plots.THIN);
        plot.setRangeGridlineStroke(Plots.THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(Plots.AXIS_SPACE);
        plot.setFixedRangeAxisSpace(space);
        Plots.style(plot);
    }
}
