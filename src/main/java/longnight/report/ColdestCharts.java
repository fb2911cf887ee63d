package longnight.report;

import static longnight.report.Plots.AXIS_SPACE;
import static longnight.report.Plots.GRID;
import static longnight.report.Plots.THIN;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.FieldPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import longnight.night.Verdict;
import longnight.study.Coldest;
import longnight.study.Draws;
import longnight.study.Limit;
import longnight.study.Spread;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** The pictures of an answer about the coldest night: the curves over wind, and the table of temperature by wind. */
final class ColdestCharts {
    static final String CURVES = "coldest-by-wind";
    static final String TABLE = "temperature-by-wind";

    private static final BasicStroke LONG =
            new BasicStroke(6, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {22, 10}, 0);

    /** Where along its curve each name stands [m/s], so that no two names meet. */
    private static final double[] NAMED_AT = {13.4, 12.0, 9.0, 7.0};

    /** Room for the bands, as a share of that of the curves. */
    private static final double OWN = 0.42;

    private static final BasicStroke BAR = new BasicStroke(10, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    private static final BasicStroke LONG_BAR =
            new BasicStroke(10, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {22, 10}, 0);

    private static final double PLOT_HEIGHT = 760;
    private static final double ROW_HEIGHT = 92;

    private ColdestCharts() {}

    static Picture curves(Coldest coldest, Units units) {
        return framed(coldest, units, "coldest.chart.title", sheet -> {
            sheet.text(
                    Prose.text(
                            "coldest.chart.axes",
                            ColdestWording.line(coldest.line(), units),
                            units.unit(Measure.TEMPERATURE)),
                    Fonts.bold(Sheet.TEXT));
            Plots.plot(sheet, PLOT_HEIGHT, plot(coldest, units));
            sheet.text(Prose.text("coldest.chart.wind", units.unit(Measure.WIND)), Fonts.plain(Sheet.TEXT));
            sheet.text(
                    Prose.text(
                            "coldest.chart.key",
                            Wording.clean(coldest.curves().get(0).person().name()),
                            Wording.clean(coldest.curves().get(2).person().name())),
                    Fonts.bold(Sheet.TEXT));
            Draws draws = coldest.draws();
            if (draws != null) {
                sheet.text(
                        Prose.text("coldest.chart.bands", String.valueOf(draws.size()), String.valueOf(draws.seed())),
                        Fonts.bold(Sheet.TEXT));
            }
            sheet.space(14);
            ColdestWording.notes(coldest, units).forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static Picture framed(
            Coldest coldest, Units units, String title, java.util.function.Consumer<Sheet> content) {
        List<String> cautions = new ArrayList<>();
        cautions.add(ColdestWording.caution());
        coldest.cautions().forEach(caution -> cautions.add(Wording.shortText(caution)));
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        ColdestWording.answer(coldest, units),
                        ColdestWording.beside(coldest, units),
                        Wording.who(coldest.asGiven()),
                        cautions),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }

    private static XYPlot plot(Coldest coldest, Units units) {
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        double given = units.value(Measure.TEMPERATURE, coldest.air().mean());
        double low = given;
        double high = low;
        List<double[][]> drawn = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            double[][] points = points(curve, units);
            drawn.add(points);
            for (double mean : points[1]) {
                low = Math.min(low, mean);
                high = Math.max(high, mean);
            }
        }
        boolean banded = coldest.draws() != null;
        double calm = units.value(Measure.WIND, 0);
        double gale = units.value(Measure.WIND, Coldest.WINDS.get(Coldest.WINDS.size() - 1));
        for (Coldest.Curve curve : coldest.curves()) {
            for (double end : ends(curve, units)) {
                low = Math.min(low, end);
                high = Math.max(high, end);
            }
        }
        for (int i = 0; i < drawn.size(); i++) {
            data.addSeries(i, drawn.get(i));
            Plots.look(renderer, i, ink(i), coldest.curves().get(i).damp() ? LONG : Plots.SOLID);
        }
        double margin = Math.max(1.5, 0.06 * (high - low));
        NumberAxis wind = new NumberAxis();
        wind.setRange(calm, banded ? gale * (1 + OWN) : gale);
        wind.setTickUnit(new NumberTickUnit(units.isMetric() ? 3 : 5, new UpTo(gale)));
        NumberAxis air = new NumberAxis();
        air.setRange(low - margin, high + margin);
        air.setTickUnit(new NumberTickUnit(Plots.step(high - low + 2 * margin), new Plots.WholeFormat()));
        XYPlot plot = new XYPlot(data, wind, air, renderer);
        Plots.style(wind);
        Plots.style(air);
        Plots.style(plot);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setDomainGridlineStroke(THIN);
        plot.setRangeGridlineStroke(THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(AXIS_SPACE);
        plot.setFixedRangeAxisSpace(space);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        ValueMarker line = new ValueMarker(given, Sheet.INK, Plots.DOTTED);
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.FOREGROUND);
        Plots.note(
                plot,
                Prose.text(
                        "coldest.chart.given",
                        units.text(Measure.TEMPERATURE, coldest.air().mean())),
                0.013 * gale,
                given,
                TextAnchor.CENTER_LEFT);
        for (int i = 0; i < drawn.size(); i++) {
            String arrival = coldest.curves().get(i).damp() ? "coldest.chart.damp" : "coldest.chart.dry";
            name(
                    plot,
                    Prose.text(arrival, String.valueOf(1 + i / 2)),
                    drawn.get(i),
                    units.value(Measure.WIND, NAMED_AT[i]));
        }
        if (banded) {
            bands(plot, coldest, units, gale);
        }
        return plot;
    }

    private static Color ink(int curve) {
        return curve < 2 ? Plots.NIGHT : new Color(0x8A5A00);
    }

    /** Finite ends of a band. */
    private static double[] ends(Coldest.Curve curve, Units units) {
        Spread drawn = curve.drawn();
        return drawn == null
                ? new double[0]
                : DoubleStream.of(drawn.low(), drawn.high())
                        .filter(Double::isFinite)
                        .map(end -> units.value(Measure.TEMPERATURE, end))
                        .toArray();
    }

    /** Right of the curves, one bar for each in the night's own wind, with the usual model's answer across it. */
    private static void bands(XYPlot plot, Coldest coldest, Units units, double gale) {
        ValueMarker edge = new ValueMarker(gale, Sheet.INK, Plots.THIN);
        edge.setAlpha(1);
        plot.addDomainMarker(edge, Layer.FOREGROUND);
        int n = coldest.curves().size();
        double step = gale * OWN / (n + 0.4);
        for (int i = 0; i < n; i++) {
            Spread drawn = coldest.curves().get(i).drawn();
            if (drawn != null && drawn.low() < drawn.high()) { // else all lie beyond the same end
                band(plot, i, drawn, units, gale + (i + 0.7) * step, 0.35 * step);
            }
        }
    }

    private static void band(XYPlot plot, int curve, Spread drawn, Units units, double at, double half) {
        boolean damp = curve % 2 == 1;
        double low = Math.max(plot.getRangeAxis().getLowerBound(), units.value(Measure.TEMPERATURE, drawn.low()));
        double high = Math.min(plot.getRangeAxis().getUpperBound(), units.value(Measure.TEMPERATURE, drawn.high()));
        plot.addAnnotation(new XYLineAnnotation(at, low, at, high, damp ? LONG_BAR : BAR, ink(curve)));
        if (Double.isFinite(drawn.nominal())) {
            double usual = units.value(Measure.TEMPERATURE, drawn.nominal());
            plot.addAnnotation(new XYLineAnnotation(at - half, usual, at + half, usual, Plots.SOLID, ink(curve)));
        }
        TextAnchor anchor = damp ? TextAnchor.BOTTOM_CENTER : TextAnchor.TOP_CENTER;
        Plots.note(plot, String.valueOf(1 + curve / 2), at, damp ? high : low, anchor);
    }

    /** Marks of the wind axis: none where the bands stand. */
    private static final class UpTo extends Plots.WholeFormat {
        private static final long serialVersionUID = 1L;

        private final double last;

        UpTo(double last) {
            this.last = last;
        }

        @Override
        public StringBuffer format(double number, StringBuffer text, FieldPosition position) {
            return number > last + 1e-9 ? text : super.format(number, text, position);
        }
    }

    /** The name on the curve itself, or where the curve ends; curves without a point have none. */
    private static void name(XYPlot plot, String name, double[][] points, double wanted) {
        int n = points[0].length;
        if (n == 0) {
            return;
        }
        double at = Math.min(points[0][n - 1], Math.max(points[0][0], wanted));
        int i = 0;
        while (i < n - 2 && points[0][i + 1] < at) {
            i++;
        }
        double value = points[1][i];
        if (n > 1) {
            double f = (at - points[0][i]) / (points[0][i + 1] - points[0][i]);
            value += f * (points[1][i + 1] - points[1][i]);
        }
        Plots.note(plot, name, at, value, TextAnchor.CENTER);
    }

    private static double[][] points(Coldest.Curve curve, Units units) {
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < curve.limits().size(); i++) {
            Limit limit = curve.limits().get(i);
            if (limit.reach() == Limit.Reach.FOUND) {
                found.add(new double[] {
                    units.value(Measure.WIND, Coldest.WINDS.get(i)),
                    units.value(Measure.TEMPERATURE, limit.air().mean())
                });
            }
        }
        return new double[][] {
            found.stream().mapToDouble(point -> point[0]).toArray(),
            found.stream().mapToDouble(point -> point[1]).toArray()
        };
    }

    // --- Temperature by wind ---

    static Picture table(Coldest coldest, Units units) {
        return framed(coldest, units, "coldest.table.title", sheet -> {
            sheet.text(Prose.text("coldest.table", ColdestWording.name(coldest.main())), Fonts.bold(Sheet.TEXT));
            sheet.space(10);
            List<String> head = new ArrayList<>();
            head.add(Prose.text("coldest.table.mean", units.unit(Measure.TEMPERATURE)) + "\n"
                    + Prose.text("coldest.table.lowest"));
            Coldest.TABLE_WINDS.forEach(wind -> head.add(
                    Prose.text("coldest.table.wind", ColdestWording.wind(wind, units), units.unit(Measure.WIND))));
            row(sheet, head, List.of());
            int width = Coldest.TABLE_WINDS.size();
            for (int i = 0; i < coldest.table().size(); i += width) {
                List<Coldest.Cell> cells = coldest.table().subList(i, i + width);
                List<String> texts = new ArrayList<>();
                texts.add(Figures.whole(units.value(
                                Measure.TEMPERATURE, cells.get(0).air().mean())) + "\n("
                        + ColdestWording.degrees(cells.get(0).air().lowest(), units) + ")");
                cells.forEach(cell ->
                        texts.add(Figures.decimals(cell.demand(), 2) + "\n" + ColdestWording.word(coldest, cell)));
                row(sheet, texts, cells.stream().map(Coldest.Cell::verdict).toList());
            }
            sheet.space(10);
            sheet.text(Prose.text("coldest.table.note"), Fonts.plain(Sheet.SMALL));
            sheet.text(Prose.text("coldest.note.moved"), Fonts.plain(Sheet.SMALL));
        });
    }

    private static void row(Sheet sheet, List<String> texts, List<Verdict> verdicts) {
        sheet.block(ROW_HEIGHT, (pen, top) -> {
            double width = (Sheet.WIDTH - 2.0 * Sheet.MARGIN) / texts.size();
            for (int i = 0; i < texts.size(); i++) {
                double left = Sheet.MARGIN + i * width;
                if (i > 0 && !verdicts.isEmpty()) {
                    fill(pen, verdicts.get(i - 1), left, top, width);
                }
                pen.setPaint(Sheet.INK);
                String[] lines = texts.get(i).split("\n", -1);
                for (int k = 0; k < lines.length; k++) {
                    pen.setFont(k == 0 ? Fonts.bold(Sheet.SMALL) : Fonts.plain(Sheet.SMALL));
                    pen.drawString(lines[k], (float) (left + 12), (float) (top + (0.40 + 0.42 * k) * ROW_HEIGHT));
                }
            }
        });
    }

    private static void fill(Graphics2D pen, Verdict verdict, double left, double top, double width) {
        Rectangle2D cell = new Rectangle2D.Double(left, top, width, ROW_HEIGHT);
        pen.setPaint(
                switch (verdict.outcome()) {
                    case HOLDS_EASILY -> Color.WHITE;
                    case HOLDS_BY_SHIVERING -> Plots.EMBER;
                    case DOES_NOT_HOLD, OUTSIDE_THE_MODEL -> Plots.DUSK;
                });
        pen.fill(cell);
        pen.setPaint(Sheet.INK);
        pen.draw(cell);
    }
}
