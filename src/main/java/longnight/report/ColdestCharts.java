package longnight.report;

import static longnight.report.Plots.AXIS_SPACE;
import static longnight.report.Plots.GRID;
import static longnight.report.Plots.THIN;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import longnight.night.Verdict;
import longnight.study.Coldest;
import longnight.study.Limit;
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

    private static final double PLOT_HEIGHT = 760;
    private static final double ROW_HEIGHT = 92;

    private ColdestCharts() {}

    static Picture curves(Coldest coldest) {
        return framed(coldest, "coldest.chart.title", sheet -> {
            sheet.text(Prose.text("coldest.chart.axes", ColdestWording.line(coldest.line())), Fonts.bold(Sheet.TEXT));
            Plots.plot(sheet, PLOT_HEIGHT, plot(coldest));
            sheet.text(Prose.text("coldest.chart.wind"), Fonts.plain(Sheet.TEXT));
            sheet.text(
                    Prose.text(
                            "coldest.chart.key",
                            Wording.clean(coldest.curves().get(0).person().name()),
                            Wording.clean(coldest.curves().get(2).person().name())),
                    Fonts.bold(Sheet.TEXT));
            sheet.space(14);
            ColdestWording.notes(coldest).forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static Picture framed(Coldest coldest, String title, java.util.function.Consumer<Sheet> content) {
        List<String> cautions = new ArrayList<>();
        cautions.add(ColdestWording.caution());
        coldest.cautions().forEach(caution -> cautions.add(Wording.shortText(caution)));
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        ColdestWording.answer(coldest),
                        ColdestWording.beside(coldest),
                        Wording.who(coldest.asGiven()),
                        cautions),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }

    private static XYPlot plot(Coldest coldest) {
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        double low = coldest.air().mean();
        double high = low;
        List<double[][]> drawn = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            double[][] points = points(curve);
            drawn.add(points);
            for (double mean : points[1]) {
                low = Math.min(low, mean);
                high = Math.max(high, mean);
            }
        }
        for (int i = 0; i < drawn.size(); i++) {
            data.addSeries(i, drawn.get(i));
            Color ink = i < 2 ? Plots.NIGHT : new Color(0x8A5A00);
            Plots.look(renderer, i, ink, coldest.curves().get(i).damp() ? LONG : Plots.SOLID);
        }
        double margin = Math.max(1.5, 0.06 * (high - low));
        NumberAxis wind = new NumberAxis();
        wind.setRange(0, Coldest.WINDS.get(Coldest.WINDS.size() - 1));
        wind.setTickUnit(new NumberTickUnit(3, new Plots.WholeFormat()));
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
        ValueMarker given = new ValueMarker(coldest.air().mean(), Sheet.INK, Plots.DOTTED);
        given.setAlpha(1);
        plot.addRangeMarker(given, Layer.FOREGROUND);
        Plots.note(
                plot,
                Prose.text(
                        "coldest.chart.given",
                        ColdestWording.degrees(coldest.air().mean())),
                0.2,
                coldest.air().mean(),
                TextAnchor.CENTER_LEFT);
        for (int i = 0; i < drawn.size(); i++) {
            String arrival = coldest.curves().get(i).damp() ? "coldest.chart.damp" : "coldest.chart.dry";
            name(plot, Prose.text(arrival, String.valueOf(1 + i / 2)), drawn.get(i), NAMED_AT[i]);
        }
        return plot;
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

    private static double[][] points(Coldest.Curve curve) {
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < curve.limits().size(); i++) {
            Limit limit = curve.limits().get(i);
            if (limit.reach() == Limit.Reach.FOUND) {
                found.add(new double[] {Coldest.WINDS.get(i), limit.air().mean()});
            }
        }
        return new double[][] {
            found.stream().mapToDouble(point -> point[0]).toArray(),
            found.stream().mapToDouble(point -> point[1]).toArray()
        };
    }

    // --- Temperature by wind ---

    static Picture table(Coldest coldest) {
        return framed(coldest, "coldest.table.title", sheet -> {
            sheet.text(Prose.text("coldest.table", ColdestWording.name(coldest.main())), Fonts.bold(Sheet.TEXT));
            sheet.space(10);
            List<String> head = new ArrayList<>();
            head.add(Prose.text("coldest.table.mean") + "\n" + Prose.text("coldest.table.lowest"));
            Coldest.TABLE_WINDS.forEach(wind -> head.add(Prose.text("coldest.table.wind", ColdestWording.wind(wind))));
            row(sheet, head, List.of());
            int width = Coldest.TABLE_WINDS.size();
            for (int i = 0; i < coldest.table().size(); i += width) {
                List<Coldest.Cell> cells = coldest.table().subList(i, i + width);
                List<String> texts = new ArrayList<>();
                texts.add(Figures.whole(cells.get(0).air().mean()) + "\n("
                        + ColdestWording.degrees(cells.get(0).air().lowest()) + ")");
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
