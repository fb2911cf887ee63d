package longnight.report;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.util.List;
import longnight.study.LeastAnswer;
import longnight.study.LeastAnswer.Found;
import longnight.study.LeastAnswer.Point;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** The picture of the lightest kit: what each piece weighs, and the front of mass against cold where it was asked for. */
final class LeastChart {
    /** File name, without ending. */
    static final String FILE = "least";

    private static final double HEIGHT = 620;
    private static final double DOT = 22;

    private LeastChart() {}

    static Picture picture(LeastAnswer answer, Units units) {
        List<Found> found = answer.proof().found();
        return Picture.framed(
                new Picture.Frame(
                        Prose.text("least.chart.title"),
                        LeastWords.headline(answer, units),
                        found.isEmpty() ? "" : LeastWords.atRisk(found.get(0)),
                        LeastWords.about(answer, units),
                        LeastWords.cautions(answer).stream()
                                .map(caution -> Wording.shortText(caution, units))
                                .toList()),
                sheet -> content(answer, units, sheet));
    }

    private static void content(LeastAnswer answer, Units units, Sheet sheet) {
        if (!answer.proof().found().isEmpty()) {
            sheet.text(LeastWords.margin(answer, answer.proof().found().get(0), units), Fonts.plain(Sheet.TEXT));
            sheet.space(20);
            Plots.bars(
                    sheet,
                    Prose.text("least.chart.pieces"),
                    answer.without().stream()
                            .map(each -> new Plots.Bar(
                                    Wording.clean(each.id()),
                                    units.value(Measure.PIECE, each.mass()),
                                    units.text(Measure.PIECE, each.mass()) + "; " + LeastWords.briefly(answer, each)))
                            .toList());
            sheet.space(24);
        }
        List<Point> known =
                answer.front().stream().filter(point -> point.mass() > 0).toList();
        if (!known.isEmpty()) {
            sheet.text(
                    Prose.text("least.chart.front", units.unit(Measure.LOAD), units.unit(Measure.TEMPERATURE)),
                    Fonts.bold(Sheet.HEADING));
            Plots.plot(sheet, HEIGHT, front(known, units));
            sheet.text(Prose.text("least.chart.front.note"), Fonts.plain(Sheet.TEXT));
            sheet.space(24);
        }
    }

    private static XYPlot front(List<Point> points, Units units) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("front", new double[][] {
            points.stream()
                    .mapToDouble(point -> units.value(Measure.TEMPERATURE, point.air()))
                    .toArray(),
            points.stream()
                    .mapToDouble(point -> units.value(Measure.LOAD, point.mass()))
                    .toArray()
        });
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        renderer.setSeriesPaint(0, Plots.NIGHT);
        renderer.setSeriesStroke(0, new BasicStroke(5));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
        double warm = points.stream()
                .mapToDouble(point -> units.value(Measure.TEMPERATURE, point.air()))
                .max()
                .orElseThrow();
        double cold = points.stream()
                .mapToDouble(point -> units.value(Measure.TEMPERATURE, point.air()))
                .min()
                .orElseThrow();
        double most = points.stream()
                .mapToDouble(point -> units.value(Measure.LOAD, point.mass()))
                .max()
                .orElseThrow();
        NumberAxis air = axis(cold - 2, warm + 2);
        NumberAxis mass = axis(0, 1.15 * most);
        XYPlot plot = new XYPlot(data, air, mass, renderer);
        plot.setDomainGridlinePaint(Plots.GRID);
        plot.setRangeGridlinePaint(Plots.GRID);
        Plots.style(plot);
        for (Point point : points) {
            Plots.note(
                    plot,
                    units.number(Measure.LOAD, point.mass()),
                    units.value(Measure.TEMPERATURE, point.air()),
                    units.value(Measure.LOAD, point.mass()) - 0.07 * most,
                    TextAnchor.TOP_CENTER);
        }
        return plot;
    }

    private static NumberAxis axis(double low, double high) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(low, high);
        axis.setTickUnit(new org.jfree.chart.axis.NumberTickUnit(Plots.step(high - low)));
        axis.setNumberFormatOverride(new Plots.WholeFormat());
        Plots.style(axis);
        return axis;
    }
}
