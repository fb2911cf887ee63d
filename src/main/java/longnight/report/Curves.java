package longnight.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
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

/** Up to six curves over one time, each named where it ends. They differ in dash and weight first, in colour only besides. */
final class Curves {
    /** Share of the plot's width kept for names. */
    private static final double NAMES = 0.4;

    /** Share of it between the end of the curves and their names, for the lines that lead there. */
    private static final double LEAD = 0.05;

    /** From one name to the next [px]. */
    static final double NAME_STEP = 1.3 * Sheet.SMALL;

    /** What a plot's height has beside its plane: figures of the axis, margins [px]. */
    private static final double AROUND = 74;

    private static final Color[] PAINTS = {
        Sheet.INK,
        new Color(0x1F5F8B),
        new Color(0x9A3B1F),
        new Color(0x4B6B2F),
        new Color(0x6B3F7F),
        new Color(0x7A5C00)
    };

    private static final Stroke[] STROKES = {
        new BasicStroke(7, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND),
        dashed(6, 26, 12),
        dashed(6, 6, 8),
        new BasicStroke(3, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND),
        dashed(4, 26, 9, 5, 9),
        dashed(3, 12, 8)
    };

    private Curves() {}

    /**
     * One curve.
     *
     * @param name  at its end
     * @param time  on the axis [s], rising
     * @param value NaN where there is none
     */
    record Curve(String name, double[] time, double[] value) {
        int lastKnown() {
            return IntStream.range(0, value.length)
                    .filter(i -> !Double.isNaN(value[i]))
                    .reduce((a, b) -> b)
                    .orElse(-1);
        }
    }

    /** The time that curves share: seconds after midnight told by the clock, or seconds since dusk told in hours. */
    record Span(double from, double to, boolean clock) {}

    static Color paint(int index) {
        return PAINTS[index % PAINTS.length];
    }

    static Stroke stroke(int index) {
        return STROKES[index % STROKES.length];
    }

    /**
     * A plot with every curve and its name.
     *
     * @param low    of the value axis
     * @param high   of the value axis
     * @param height at which it will be drawn [px]
     */
    static XYPlot plot(List<Curve> curves, Span span, double low, double high, double height) {
        XYPlot plot = new XYPlot(null, timeAxis(span), valueAxis(low, high), null);
        Plots.style(plot);
        plot.setInsets(new RectangleInsets(20, 0, 6, 0));
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Plots.GRID);
        plot.setRangeGridlineStroke(Plots.THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(Plots.AXIS_SPACE);
        plot.setFixedRangeAxisSpace(space);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        double tick = tick(span);
        for (double at = Math.ceil(span.from() / tick) * tick; at <= span.to(); at += tick) {
            ValueMarker line = new ValueMarker(at, Plots.GRID, Plots.THIN);
            line.setAlpha(1);
            plot.addDomainMarker(line, Layer.BACKGROUND);
        }
        DefaultXYDataset lines = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < curves.size(); i++) {
            lines.addSeries(i, known(curves.get(i)));
            Plots.look(renderer, i, paint(i), stroke(i));
        }
        plot.setDataset(lines);
        plot.setRenderer(renderer);
        name(plot, curves, span, low, high, height);
        return plot;
    }

    private static void name(XYPlot plot, List<Curve> curves, Span span, double low, double high, double height) {
        int[] named = IntStream.range(0, curves.size())
                .filter(i -> curves.get(i).lastKnown() >= 0)
                .toArray();
        double[] ends = Arrays.stream(named)
                .mapToDouble(i -> curves.get(i).value()[curves.get(i).lastKnown()])
                .toArray();
        double pixel = (high - low) / (height - AROUND);
        double half = 0.5 * NAME_STEP * pixel;
        double[] places = spread(ends, 2 * half, low + half, high - half);
        double length = span.to() - span.from();
        double whole = length / (1 - NAMES);
        double left = span.to() + LEAD * whole;
        double width = (NAMES - LEAD) * (Sheet.WIDTH - 2.0 * Sheet.MARGIN - Plots.AXIS_SPACE) - 12;
        for (int k = 0; k < named.length; k++) {
            Curve curve = curves.get(named[k]);
            double end = curve.time()[curve.lastKnown()];
            plot.addAnnotation(
                    new XYLineAnnotation(end, ends[k], left, places[k], new BasicStroke(1.5f), paint(named[k])));
            Plots.note(plot, clipped(curve.name(), width), left + 0.004 * whole, places[k], TextAnchor.CENTER_LEFT);
        }
    }

    /**
     * Moves values apart as little as needed; their order stays, and of equals the first comes to lie highest.
     *
     * @param wanted where each would lie
     * @param gap    least distance
     * @param low    lowest place
     * @param high   highest place
     */
    static double[] spread(double[] wanted, double gap, double low, double high) {
        Integer[] order = IntStream.range(0, wanted.length).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.comparingDouble((Integer i) -> wanted[i])
                        .thenComparing(Comparator.<Integer>naturalOrder().reversed()));
        double[] places = new double[wanted.length];
        double least = low;
        for (int i : order) {
            places[i] = Math.max(least, wanted[i]);
            least = places[i] + gap;
        }
        double most = high;
        for (int k = order.length - 1; k >= 0; k--) {
            places[order[k]] = Math.min(most, places[order[k]]);
            most = places[order[k]] - gap;
        }
        return places;
    }

    /** As much of a name as there is room for. */
    static String clipped(String name, double width) {
        String text = name;
        while (text.length() > 1 && Sheet.width(text, Fonts.bold(Sheet.SMALL)) > width) {
            text = text.substring(0, text.length() - (text.endsWith("…") ? 2 : 1))
                            .strip() + "…";
        }
        return text;
    }

    private static double[][] known(Curve curve) {
        int[] places = IntStream.range(0, curve.value().length)
                .filter(i -> !Double.isNaN(curve.value()[i]))
                .toArray();
        return new double[][] {
            Arrays.stream(places).mapToDouble(i -> curve.time()[i]).toArray(),
            Arrays.stream(places).mapToDouble(i -> curve.value()[i]).toArray()
        };
    }

    private static NumberAxis timeAxis(Span span) {
        NumberAxis axis = new NumberAxis();
        double length = span.to() - span.from();
        axis.setRange(span.from(), span.from() + length / (1 - NAMES));
        axis.setTickUnit(new NumberTickUnit(tick(span), new TimeFormat(span)));
        Plots.style(axis);
        axis.setTickMarksVisible(false);
        return axis;
    }

    /** As for a plot of the whole width, so that the figures stand as far apart. */
    private static double tick(Span span) {
        return Plots.tick((span.to() - span.from()) / (1 - NAMES));
    }

    private static NumberAxis valueAxis(double low, double high) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(low, high);
        axis.setTickUnit(new NumberTickUnit(Plots.step(high - low), new Plots.WholeFormat()));
        Plots.style(axis);
        return axis;
    }

    private static Stroke dashed(float width, float... pattern) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }

    /** Figures of the time axis; none beyond the end, where the names stand. */
    private static final class TimeFormat extends NumberFormat {
        private static final long serialVersionUID = 1L;

        private final double end;
        private final boolean clock;

        TimeFormat(Span span) {
            end = span.to();
            clock = span.clock();
        }

        @Override
        public StringBuffer format(double number, StringBuffer text, FieldPosition position) {
            if (number > end) {
                return text;
            }
            return text.append(clock ? Figures.clock(number) : Figures.significant(number / 3600, 3) + " h");
        }

        @Override
        public StringBuffer format(long number, StringBuffer text, FieldPosition position) {
            return format((double) number, text, position);
        }

        @Override
        public Number parse(String source, java.text.ParsePosition position) {
            throw new UnsupportedOperationException();
        }
    }
}
