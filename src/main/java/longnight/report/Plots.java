package longnight.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** The look that all charts share: strokes and fills, axes, notes, areas and bars. */
final class Plots {
    static final Color NIGHT = new Color(0x16324F);
    static final Color DUSK = new Color(0x7FA3BD);
    static final Color EMBER = new Color(0xF4D58D);
    static final Color BAND = new Color(0xC9C5B8);
    static final Color SPREAD = new Color(0x9DB89D);
    static final Color STRETCHED = new Color(0xEBE8DF);
    static final Color GRID = new Color(0xD8D5CA);

    static final Stroke SOLID = new BasicStroke(6, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    static final Stroke DASHED =
            new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {22, 12}, 0);
    static final Stroke DOTTED =
            new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 8}, 0);
    static final Stroke THIN = new BasicStroke(2);

    /** Room for the figures beside a time plot, for the names beside bars [px]; share of a bar plot kept for its labels. */
    static final double AXIS_SPACE = 110;

    static final double NAME_SPACE = 380;
    static final double LABEL_SHARE = 0.46;

    /** Height of a bar below its name [px]. */
    private static final double NAMED_BAR = 38;

    /** No more points than this along a curve; the trace is much finer than a pixel. */
    static final int POINTS = 180;

    private Plots() {}

    /**
     * One bar.
     *
     * @param name  beside it on the left, no wider than {@link #NAME_SPACE}
     * @param value its length
     * @param label at its end
     * @param low   one end of a line along it that tells how well its length is known; NaN for none
     * @param high  the other end of that line
     */
    record Bar(String name, double value, String label, double low, double high) {
        Bar(String name, double value, String label) {
            this(name, value, label, Double.NaN, Double.NaN);
        }
    }

    /** Lays one payer on the stack: its payments above zero upward, what it was given downward. */
    static void area(
            XYLineAndShapeRenderer renderer, double[] time, double[] stack, double[] payer, int sign, Color fill) {
        int n = time.length;
        double[] outline = new double[4 * n];
        boolean empty = true;
        for (int i = 0; i < n; i++) {
            outline[2 * i] = time[i];
            outline[2 * i + 1] = stack[i];
        }
        for (int i = 0; i < n; i++) {
            double share = sign * Math.max(0, sign * payer[i]);
            empty &= share == 0;
            stack[i] += share;
            outline[2 * (2 * n - 1 - i)] = time[i];
            outline[2 * (2 * n - 1 - i) + 1] = stack[i];
        }
        if (!empty) {
            renderer.addAnnotation(new XYPolygonAnnotation(outline, THIN, Sheet.INK, fill), Layer.BACKGROUND);
        }
    }

    static void note(XYPlot plot, String text, double x, double y, TextAnchor anchor) {
        XYTextAnnotation note = new XYTextAnnotation(text, x, y);
        note.setFont(Fonts.bold(Sheet.SMALL));
        note.setPaint(Sheet.INK);
        note.setBackgroundPaint(Sheet.PAPER);
        note.setTextAnchor(anchor);
        plot.addAnnotation(note);
    }

    static void look(XYLineAndShapeRenderer renderer, int series, Paint paint, Stroke stroke) {
        renderer.setSeriesPaint(series, paint);
        renderer.setSeriesStroke(series, stroke);
    }

    /** Every so manieth value, and always the last. */
    static double[] thinned(double[] values) {
        int last = values.length - 1;
        int stride = Math.max(1, (int) Math.ceil(last / (double) POINTS));
        return IntStream.rangeClosed(0, (last + stride - 1) / stride)
                .mapToDouble(i -> values[Math.min(last, i * stride)])
                .toArray();
    }

    static double tick(double duration) {
        for (double tick : new double[] {600, 1800, 3600, 7200}) {
            if (duration / tick <= 7) {
                return tick;
            }
        }
        return 10800;
    }

    /** A round step that gives three to six ticks. */
    static double step(double span) {
        double unit = StrictMath.pow(10, Math.floor(StrictMath.log10(span / 3)));
        double step = unit;
        for (double factor : new double[] {2, 5}) {
            if (span / (factor * unit) >= 3) {
                step = factor * unit;
            }
        }
        return step;
    }

    // --- Bars ---

    /** Horizontal bars, one below the other, in the order given. */
    static void bars(Sheet sheet, String heading, List<Bar> bars) {
        sheet.text(heading, Fonts.bold(Sheet.HEADING));
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        bars.forEach(bar -> data.addValue(bar.value(), heading, bar.name()));
        NumberAxis watts = new NumberAxis();
        double high = Math.max(1, bars.stream().mapToDouble(Bar::value).max().orElse(0));
        double low = Math.min(0, bars.stream().mapToDouble(Bar::value).min().orElse(0));
        watts.setRange(low, (high - LABEL_SHARE * low) / (1 - LABEL_SHARE));
        watts.setVisible(false);
        CategoryAxis names = new CategoryAxis();
        names.setTickLabelFont(Fonts.plain(Sheet.TEXT));
        names.setTickLabelPaint(Sheet.INK);
        names.setTickMarksVisible(false);
        names.setAxisLineVisible(false);
        names.setMaximumCategoryLabelWidthRatio(1);
        names.setLowerMargin(0.01);
        names.setUpperMargin(0.01);
        names.setCategoryMargin(0.28);
        BarRenderer renderer = new BarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setSeriesPaint(0, NIGHT);
        renderer.setDefaultItemLabelGenerator(new Labels(bars));
        renderer.setDefaultItemLabelFont(Fonts.bold(Sheet.TEXT));
        renderer.setDefaultItemLabelPaint(Sheet.INK);
        renderer.setDefaultItemLabelsVisible(true);
        ItemLabelPosition rightOfBar = new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT);
        renderer.setDefaultPositiveItemLabelPosition(rightOfBar);
        renderer.setDefaultNegativeItemLabelPosition(rightOfBar);
        renderer.setItemLabelAnchorOffset(10);
        CategoryPlot plot = new CategoryPlot(data, names, watts, renderer);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setRangeGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(Sheet.INK);
        plot.setRangeZeroBaselineStroke(THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(NAME_SPACE);
        plot.setFixedDomainAxisSpace(space);
        style(plot);
        plot(sheet, 58.0 * bars.size(), plot);
    }

    /**
     * Bars of which the names are long: each name stands above its bar. Values from 0.
     *
     * @param longest value of a bar of full length, the same for all lists that are compared
     */
    static void namedBars(Sheet sheet, String heading, List<Bar> bars, double longest) {
        sheet.text(heading, Fonts.bold(Sheet.HEADING));
        double room = (Sheet.WIDTH - 2.0 * Sheet.MARGIN) * (1 - LABEL_SHARE);
        for (Bar bar : bars) {
            double end =
                    place(Double.isNaN(bar.high()) ? bar.value() : Math.max(bar.value(), bar.high()), longest, room);
            boolean fits =
                    end + 12 + Sheet.width(bar.label(), Fonts.bold(Sheet.SMALL)) <= Sheet.WIDTH - 2.0 * Sheet.MARGIN;
            sheet.space(8);
            sheet.text(fits ? bar.name() : Prose.text("chart.bar", bar.name(), bar.label()), Fonts.plain(Sheet.SMALL));
            sheet.block(NAMED_BAR, (pen, top) -> {
                pen.setPaint(NIGHT);
                pen.fill(new Rectangle2D.Double(
                        Sheet.MARGIN, top + 4, place(bar.value(), longest, room), NAMED_BAR - 8));
                if (!Double.isNaN(bar.low())) {
                    known(pen, bar, longest, room, top + NAMED_BAR / 2);
                }
                if (fits) {
                    pen.setPaint(Sheet.INK);
                    pen.setFont(Fonts.bold(Sheet.SMALL));
                    pen.drawString(bar.label(), (float) (Sheet.MARGIN + end + 12), (float) (top + 0.74 * NAMED_BAR));
                }
            });
        }
    }

    /** The line along a bar that tells how well its length is known. */
    private static void known(Graphics2D pen, Bar bar, double longest, double room, double middle) {
        double from = place(bar.low(), longest, room);
        double to = place(bar.high(), longest, room);
        Rectangle2D line = new Rectangle2D.Double(Sheet.MARGIN + from, middle - 5, Math.max(3, to - from), 10);
        pen.setPaint(EMBER);
        pen.fill(line);
        pen.setPaint(Sheet.INK);
        pen.setStroke(THIN);
        pen.draw(line);
    }

    private static double place(double value, double longest, double room) {
        return place(value, 0, Math.max(longest, 1e-9), room);
    }

    /**
     * Where a figure lies.
     *
     * @param text  above it: what it is, and its figures
     * @param low   one end; minus infinity where there is none
     * @param usual what the usual model gives; NaN for none
     * @param high  the other end; infinite where there is none
     */
    record Interval(String text, double low, double usual, double high) {}

    /** Intervals below each other with their names above them, figures first and differences below, all of them on one scale with a line at zero. */
    static void intervals(Sheet sheet, List<Interval> figures, List<Interval> differences) {
        double[] ends = Stream.concat(figures.stream(), differences.stream())
                .flatMapToDouble(each -> DoubleStream.of(each.low(), each.usual(), each.high(), 0))
                .filter(Double::isFinite)
                .toArray();
        double low = Arrays.stream(ends).min().orElse(0);
        double high = Math.max(Arrays.stream(ends).max().orElse(1), low + 1e-9);
        figures.forEach(each -> interval(sheet, each, low, high, SPREAD));
        sheet.space(10);
        differences.forEach(each -> interval(sheet, each, low, high, EMBER));
        sheet.space(10);
    }

    private static void interval(Sheet sheet, Interval interval, double low, double high, Color fill) {
        sheet.space(6);
        sheet.text(interval.text(), Fonts.plain(Sheet.SMALL));
        double width = Sheet.WIDTH - 2.0 * Sheet.MARGIN;
        sheet.block(NAMED_BAR, (pen, top) -> {
            double from = place(interval.low(), low, high, width);
            double to = place(interval.high(), low, high, width);
            pen.setPaint(STRETCHED);
            pen.fill(new Rectangle2D.Double(Sheet.MARGIN, top + 4, width, NAMED_BAR - 8));
            pen.setPaint(fill);
            pen.fill(new Rectangle2D.Double(Sheet.MARGIN + from, top + 4, Math.max(2, to - from), NAMED_BAR - 8));
            pen.setPaint(Sheet.INK);
            double zero = Sheet.MARGIN + place(0, low, high, width);
            pen.fill(new Rectangle2D.Double(zero - 1, top, 2, NAMED_BAR));
            if (Double.isFinite(interval.usual())) {
                double usual = Sheet.MARGIN + place(interval.usual(), low, high, width);
                pen.fill(new Rectangle2D.Double(usual - 3, top + 2, 6, NAMED_BAR - 4));
            }
        });
    }

    private static double place(double value, double low, double high, double width) {
        return width * (Math.min(high, Math.max(low, value)) - low) / (high - low);
    }

    /** At the end of each bar. */
    record Labels(List<Bar> bars) implements CategoryItemLabelGenerator {
        @Override
        public String generateLabel(CategoryDataset data, int row, int column) {
            return bars.get(column).label();
        }

        @Override
        public String generateRowLabel(CategoryDataset data, int row) {
            return "";
        }

        @Override
        public String generateColumnLabel(CategoryDataset data, int column) {
            return "";
        }
    }

    // --- Style ---

    static void plot(Sheet sheet, double height, Plot plot) {
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        sheet.block(
                height,
                (pen, top) -> chart.draw(
                        pen, new Rectangle2D.Double(Sheet.MARGIN, top, Sheet.WIDTH - 2.0 * Sheet.MARGIN, height)));
    }

    static void style(Plot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(new RectangleInsets(6, 0, 6, 50));
    }

    static void style(ValueAxis axis) {
        axis.setTickLabelFont(Fonts.plain(Sheet.SMALL));
        axis.setTickLabelPaint(Sheet.INK);
        axis.setAxisLinePaint(Sheet.INK);
        axis.setAxisLineStroke(THIN);
        axis.setTickMarkPaint(Sheet.INK);
        axis.setTickMarkStroke(THIN);
        axis.setTickMarkOutsideLength(8);
        axis.setTickLabelInsets(new RectangleInsets(4, 4, 4, 8));
    }

    static double[] scaled(double[] joules) {
        return Arrays.stream(joules).map(q -> q / 1e3).toArray();
    }

    static double[] negated(double[] values) {
        return Arrays.stream(values).map(v -> -v).toArray();
    }

    static double max(double[] values) {
        return Arrays.stream(values).max().orElse(0);
    }

    static double min(double[] values) {
        return Arrays.stream(values).min().orElse(0);
    }

    /** Seconds as the local clock. */
    static final class ClockFormat extends NumberFormat {
        static final long serialVersionUID = 1L;

        @Override
        public StringBuffer format(double number, StringBuffer text, FieldPosition position) {
            return text.append(Figures.clock(number));
        }

        @Override
        public StringBuffer format(long number, StringBuffer text, FieldPosition position) {
            return format((double) number, text, position);
        }

        @Override
        public Number parse(String source, ParsePosition position) {
            throw new UnsupportedOperationException();
        }
    }

    /** Whole numbers without a locale. */
    static class WholeFormat extends NumberFormat {
        static final long serialVersionUID = 1L;

        @Override
        public StringBuffer format(double number, StringBuffer text, FieldPosition position) {
            return text.append(Figures.significant(number, 3));
        }

        @Override
        public StringBuffer format(long number, StringBuffer text, FieldPosition position) {
            return format((double) number, text, position);
        }

        @Override
        public Number parse(String source, ParsePosition position) {
            throw new UnsupportedOperationException();
        }
    }
}
