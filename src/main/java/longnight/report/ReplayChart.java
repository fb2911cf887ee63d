package longnight.report;

import java.awt.geom.Ellipse2D;
import java.util.Arrays;
import longnight.night.NightResult;
import longnight.study.Replay;
import longnight.study.Sensor;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** The picture of a replayed night: half-hour means of the log as dots, the model as lines. */
final class ReplayChart {
    static final String NAME = "log-and-model";

    private ReplayChart() {}

    /** Only where a sensor of the body was logged. */
    static Picture of(Replay replay, Units units) {
        return Picture.framed(
                new Picture.Frame(
                        Prose.text("replay.chart.title"),
                        ReplayPage.headline(replay).replace(" %", "\u00a0%"), // not at the end of a line
                        "",
                        Wording.who(replay.asIs()),
                        replay.cautions().stream()
                                .map(caution -> Wording.shortText(caution, units))
                                .toList()),
                sheet -> {
                    for (Replay.Channel channel : replay.seen()) {
                        sheet.text(
                                Prose.text("replay.chart." + channel.sensor(), units.unit(Measure.TEMPERATURE)),
                                Fonts.bold(Sheet.HEADING));
                        sheet.space(12);
                        Plots.plot(sheet, 480, plot(replay, channel, units));
                    }
                    sheet.text(Prose.text("replay.chart.dots"), Fonts.plain(Sheet.TEXT));
                    String file =
                            ReplayPage.percent(replay.asIs().scenario().person().heatOffset());
                    sheet.text(Prose.text("replay.chart.file", file), Fonts.plain(Sheet.TEXT));
                    if (replay.offset().isUsable()) {
                        String best = ReplayPage.percent(replay.offset().best());
                        sheet.text(Prose.text("replay.chart.fitted", best), Fonts.plain(Sheet.TEXT));
                    }
                    sheet.space(20);
                });
    }

    private static XYPlot plot(Replay replay, Replay.Channel channel, Units units) {
        double dusk = replay.asIs().scenario().plan().startOfDay();
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries(
                "log",
                new double[][] {clock(channel.time(), dusk), units.values(Measure.TEMPERATURE, channel.logged())});
        data.addSeries("file", curve(replay.asIs(), channel.sensor(), dusk, units));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShapesVisible(0, true);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-9, -9, 18, 18));
        renderer.setSeriesPaint(0, Sheet.INK);
        Plots.look(renderer, 1, Sheet.INK, Plots.DASHED);
        if (replay.offset().isUsable()) {
            data.addSeries("fitted", curve(replay.fitted(), channel.sensor(), dusk, units));
            Plots.look(renderer, 2, Plots.NIGHT, Plots.SOLID);
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < data.getSeriesCount(); s++) {
            for (int i = 0; i < data.getItemCount(s); i++) {
                low = Math.min(low, data.getYValue(s, i));
                high = Math.max(high, data.getYValue(s, i));
            }
        }
        NumberAxis time = new NumberAxis();
        double duration = replay.asIs().scenario().plan().duration();
        time.setRange(dusk, dusk + duration);
        time.setTickUnit(new NumberTickUnit(Plots.tick(duration)));
        time.setNumberFormatOverride(new Plots.ClockFormat());
        Plots.style(time);
        NumberAxis degrees = new NumberAxis();
        double room = Math.max(0.2, 0.08 * (high - low));
        degrees.setRange(low - room, high + room);
        degrees.setTickUnit(new NumberTickUnit(Plots.step(high - low + 2 * room)));
        degrees.setNumberFormatOverride(new Plots.WholeFormat());
        Plots.style(degrees);
        XYPlot plot = new XYPlot(data, time, degrees, renderer);
        plot.setDomainGridlinePaint(Plots.GRID);
        plot.setRangeGridlinePaint(Plots.GRID);
        plot.setDomainGridlineStroke(Plots.THIN);
        plot.setRangeGridlineStroke(Plots.THIN);
        AxisSpace space = new AxisSpace();
        space.setLeft(Plots.AXIS_SPACE);
        plot.setFixedRangeAxisSpace(space);
        Plots.style(plot);
        return plot;
    }

    private static double[][] curve(NightResult result, Sensor sensor, double dusk, Units units) {
        return new double[][] {
            Plots.thinned(clock(result.trace().time(), dusk)),
            Plots.thinned(units.values(
                    Measure.TEMPERATURE,
                    sensor == Sensor.CORE
                            ? result.trace().core()
                            : result.trace().meanSkin()))
        };
    }

    private static double[] clock(double[] time, double dusk) {
        return Arrays.stream(time).map(t -> dusk + t).toArray();
    }
}
