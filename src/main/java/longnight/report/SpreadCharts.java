package longnight.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import longnight.study.Cloud;
import longnight.study.Driver;
import longnight.study.Indices;
import longnight.study.Spread;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadAnswer.Quantity;

/** The pictures of how far an answer is open: the bands of both nights on one axis, and what drives the answer. */
final class SpreadCharts {
    static final String BANDS = "spread";
    static final String DRIVERS = "drivers";

    private static final double ROW = 46;
    private static final double DOT = 20;
    private static final double AXIS = 66;
    private static final Color TOTAL = Plots.SPREAD;
    private static final Color ALONE = Plots.NIGHT;

    private SpreadCharts() {}

    /** Where a value lies on the sheet. */
    private record Scale(double low, double high) {
        double at(double value) {
            double left = Sheet.MARGIN + DOT;
            double room = Sheet.WIDTH - 2 * left;
            return left + room * Math.min(1, Math.max(0, (value - low) / (high - low)));
        }
    }

    // --- Bands ---

    static Picture bands(SpreadWording words) {
        return framed(words, "spread.chart.bands", words.headline(), sheet -> {
            SpreadAnswer answer = words.answer();
            Scale scale = scale(words);
            sheet.text(
                    Prose.text("spread.chart.shortfall", words.units().unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
            side(sheet, words, scale, Prose.text("spread.side.given"), answer.given());
            side(sheet, words, scale, Prose.text("spread.side.worst", words.worstIs()), answer.worst());
            axis(sheet, scale, 0);
            sheet.key(Prose.text("spread.chart.key.band"), Fonts.plain(Sheet.SMALL), Plots.SPREAD);
            sheet.text(Prose.text("spread.chart.key.marks"), Fonts.plain(Sheet.SMALL));
            sheet.space(14);
            words.drawing().forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static Scale scale(SpreadWording words) {
        SpreadAnswer answer = words.answer();
        List<Cloud> clouds = new ArrayList<>(answer.given().clouds());
        clouds.addAll(answer.worst().clouds());
        double[] ends = clouds.stream()
                .flatMapToDouble(cloud -> {
                    Spread spread = cloud.shortfallHeat();
                    return DoubleStream.of(spread.low(), spread.high(), spread.nominal());
                })
                .filter(Double::isFinite)
                .map(value -> words.units().value(Measure.HEAT, value))
                .toArray();
        double low = Plots.min(ends);
        double high = Plots.max(ends);
        double step = Plots.step(Math.max(1, high - low));
        return new Scale(step * Math.floor(low / step), step * Math.ceil(high / step + 1e-9));
    }

    private static void side(Sheet sheet, SpreadWording words, Scale scale, String heading, SpreadAnswer.Side side) {
        sheet.space(10);
        sheet.text(heading, Fonts.bold(Sheet.TEXT));
        for (Cloud cloud : side.clouds()) {
            Spread spread = cloud.shortfallHeat();
            sheet.text(
                    Prose.text(
                            "spread.chart.row",
                            words.cloud(cloud),
                            words.number(Measure.HEAT, spread),
                            String.valueOf(cloud.draws() - cloud.crossing().getOrDefault(Cloud.Crossed.ANY, 0)),
                            String.valueOf(cloud.draws())),
                    Fonts.plain(Sheet.SMALL));
            sheet.block(ROW, (pen, top) -> band(pen, top, scale, words.units(), spread));
        }
    }

    private static void band(Graphics2D pen, double top, Scale scale, Units units, Spread spread) {
        double low = scale.at(units.value(Measure.HEAT, spread.low()));
        double high = scale.at(units.value(Measure.HEAT, spread.high()));
        Rectangle2D box = new Rectangle2D.Double(low, top + 6, Math.max(2, high - low), ROW - 16);
        pen.setPaint(Plots.SPREAD);
        pen.fill(box);
        pen.setPaint(Sheet.INK);
        pen.setStroke(Plots.THIN);
        pen.draw(box);
        if (Double.isFinite(spread.middle())) {
            double middle = scale.at(units.value(Measure.HEAT, spread.middle()));
            pen.setStroke(new BasicStroke(6));
            pen.draw(new Line2D.Double(middle, top + 6, middle, top + ROW - 10));
        }
        double written = scale.at(units.value(Measure.HEAT, spread.nominal()));
        Ellipse2D dot = new Ellipse2D.Double(written - DOT / 2, top + ROW / 2 - 2 - DOT / 2, DOT, DOT);
        pen.setPaint(Sheet.PAPER);
        pen.fill(dot);
        pen.setPaint(Sheet.INK);
        pen.setStroke(new BasicStroke(3));
        pen.draw(dot);
    }

    private static void axis(Sheet sheet, Scale scale, int decimals) {
        double step = Plots.step(scale.high() - scale.low());
        sheet.block(AXIS, (pen, top) -> {
            pen.setPaint(Sheet.INK);
            pen.setStroke(Plots.THIN);
            pen.draw(new Line2D.Double(scale.at(scale.low()), top + 6, scale.at(scale.high()), top + 6));
            pen.setFont(Fonts.plain(Sheet.SMALL));
            int ticks = (int) Math.floor((scale.high() - scale.low()) / step + 1e-9);
            for (int i = 0; i <= ticks; i++) {
                double value = scale.low() + i * step;
                double x = scale.at(value);
                pen.draw(new Line2D.Double(x, top + 6, x, top + 16));
                String label = Figures.decimals(value, decimals);
                double width = Sheet.width(label, Fonts.plain(Sheet.SMALL));
                double left = Math.min(Sheet.WIDTH - 10 - width, Math.max(10, x - width / 2));
                pen.drawString(label, (float) left, (float) (top + 46));
            }
        });
    }

    // --- Drivers ---

    static Picture drivers(SpreadWording words) {
        return framed(words, "spread.chart.drivers", words.most(), sheet -> {
            List<Driver> ranked = words.ranked();
            sheet.text(Prose.text("spread.chart.share"), Fonts.bold(Sheet.HEADING));
            double most = ranked.stream()
                    .mapToDouble(driver -> Math.max(
                            words.index(Quantity.SHORTFALL_HEAT, driver).total().high(),
                            words.index(Quantity.SHORTFALL_HEAT, driver).first().high()))
                    .max()
                    .orElse(1);
            double step = Plots.step(most);
            Scale scale = new Scale(0, step * Math.ceil(most / step - 1e-9));
            for (Driver driver : ranked) {
                Indices.Index index = words.index(Quantity.SHORTFALL_HEAT, driver);
                sheet.space(8);
                sheet.text(
                        Prose.text(
                                "spread.chart.driver",
                                SpreadWording.driver(driver),
                                SpreadWording.estimate(index.total())),
                        Fonts.plain(Sheet.SMALL));
                sheet.block(ROW, (pen, top) -> driver(pen, top, scale, index));
            }
            axis(sheet, scale, 2);
            sheet.key(Prose.text("spread.chart.key.total"), Fonts.plain(Sheet.SMALL), TOTAL);
            sheet.key(Prose.text("spread.chart.key.alone"), Fonts.plain(Sheet.SMALL), ALONE);
            sheet.text(Prose.text("spread.chart.key.whisker"), Fonts.plain(Sheet.SMALL));
            if (!words.little().isEmpty()) {
                sheet.text(words.little(), Fonts.plain(Sheet.SMALL));
            }
            sheet.space(14);
            words.reading().forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
            words.drawing().forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static void driver(Graphics2D pen, double top, Scale scale, Indices.Index index) {
        double zero = scale.at(0);
        Rectangle2D total =
                new Rectangle2D.Double(zero, top + 4, scale.at(index.total().value()) - zero, ROW - 12);
        pen.setPaint(TOTAL);
        pen.fill(total);
        pen.setPaint(Sheet.INK);
        pen.setStroke(Plots.THIN);
        pen.draw(total);
        pen.setPaint(ALONE);
        pen.fill(new Rectangle2D.Double(zero, top + 22, scale.at(index.first().value()) - zero, ROW - 36));
        whisker(pen, scale, index.total(), top + 14);
        whisker(pen, scale, index.first(), top + 27);
    }

    private static void whisker(Graphics2D pen, Scale scale, Indices.Estimate estimate, double y) {
        pen.setPaint(Sheet.INK);
        pen.setStroke(new BasicStroke(3));
        double low = scale.at(estimate.low());
        double high = scale.at(estimate.high());
        pen.draw(new Line2D.Double(low, y, high, y));
        pen.draw(new Line2D.Double(low, y - 5, low, y + 5));
        pen.draw(new Line2D.Double(high, y - 5, high, y + 5));
    }

    private static Picture framed(SpreadWording words, String title, String headline, Consumer<Sheet> content) {
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        headline,
                        words.atRisk() + " " + words.given(),
                        words.who() + ". " + words.worst(),
                        words.cautions()),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }
}
