package longnight.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import longnight.night.Caution;
import longnight.proof.Check;
import longnight.proof.Outcome;
import longnight.proof.Proof;

/**
 * Model against measurement as pictures: for each kind of figure one line a check, with the model's range over what is assumed
 * and what was measured; and all of them in one, by how far the model lies from the measurement.
 */
final class ProofCharts {
    /** File names without ending. */
    static final String CORE = "proof-core";

    static final String SKIN = "proof-skin";
    static final String HEAT = "proof-heat";
    static final String PARITY = "proof-parity";

    private static final double LEFT = Sheet.MARGIN + 20;
    private static final double RIGHT = Sheet.WIDTH - Sheet.MARGIN - 40.0;
    private static final double LINE = 58;

    /** Of a square of model against measurement. */
    private static final double SIDE = 640;

    private ProofCharts() {}

    private record Shown(String name, Outcome.Row row) {
        Check check() {
            return row.check();
        }

        double scale() {
            return check().pool() == Check.Pool.HEAT ? 100 / check().measured() : 1;
        }
    }

    /** Whether there is anything of a kind to draw. */
    static boolean has(List<Outcome> outcomes, Check.Pool pool) {
        return !shown(outcomes, pool).isEmpty();
    }

    static Picture of(Proof proof, Check.Pool pool) {
        List<Outcome> outcomes = proof.outcomes();
        return framed(proof, "proof.chart." + pool, ProofTables.score(outcomes, pool), sheet -> {
            List<Shown> all = shown(outcomes, pool);
            key(sheet);
            double low = least(all);
            double high = most(all);
            double room = 0.04 * Math.max(high - low, 1e-9);
            Axis axis = new Axis(low - room, high + room);
            axis(sheet, axis);
            for (Shown each : all) {
                sheet.text(each.name, Fonts.plain(Sheet.SMALL));
                sheet.block(LINE, (pen, top) -> line(pen, top, axis, each));
            }
            axis(sheet, axis);
            sheet.space(20);
        });
    }

    /** Every measured figure that is pooled, model against measurement in units of its own kind. */
    static Picture parity(Proof proof) {
        List<Outcome> outcomes = proof.outcomes();
        return framed(proof, "proof.chart.parity", String.join(" ", ProofTables.score(outcomes)), sheet -> {
            for (Check.Pool pool : List.of(Check.Pool.CORE, Check.Pool.SKIN, Check.Pool.HEAT)) {
                List<Shown> all = shown(outcomes, pool);
                if (!all.isEmpty()) {
                    sheet.text(Prose.text("proof.parity." + pool), Fonts.bold(Sheet.HEADING));
                    square(sheet, all, pool);
                    sheet.space(20);
                }
            }
        });
    }

    private static Picture framed(Proof proof, String key, String about, java.util.function.Consumer<Sheet> content) {
        return Picture.framed(
                new Picture.Frame(
                        Prose.text("proof.chart.title"),
                        Prose.text(key),
                        proof.shipped() ? Prose.text("proof.chart.fitted") : "",
                        about,
                        List.of(Wording.shortText(Caution.PLANNING_AID))),
                content);
    }

    private static List<Shown> shown(List<Outcome> outcomes, Check.Pool pool) {
        List<Shown> all = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            for (Outcome.Row row : outcome.rows()) {
                if (row.check().pool() == pool && !Double.isNaN(row.check().measured())) {
                    String name = outcome.experiment().id() + ": " + row.check().name();
                    all.add(new Shown(Wording.clean(name), row));
                }
            }
        }
        return all;
    }

    // --- One line a check ---

    private record Axis(double low, double high) {
        double x(double value) {
            return LEFT + (value - low) / (high - low) * (RIGHT - LEFT);
        }
    }

    private static double least(List<Shown> all) {
        return all.stream()
                .mapToDouble(s -> s.scale() * Math.min(s.row.low(), s.check().measured() - spread(s)))
                .min()
                .orElse(0);
    }

    private static double most(List<Shown> all) {
        return all.stream()
                .mapToDouble(s -> s.scale() * Math.max(s.row.high(), s.check().measured() + spread(s)))
                .max()
                .orElse(1);
    }

    private static double spread(Shown shown) {
        return Double.isNaN(shown.check().spread()) ? 0 : shown.check().spread();
    }

    private static void key(Sheet sheet) {
        sheet.block(LINE, (pen, top) -> {
            bar(pen, top + 0.5 * LINE, LEFT, LEFT + 90);
            dot(pen, LEFT + 45, top + 0.5 * LINE);
            label(pen, Prose.text("proof.chart.model"), LEFT + 110, top + 0.5 * LINE);
        });
        sheet.block(LINE, (pen, top) -> {
            diamond(pen, LEFT + 45, top + 0.5 * LINE);
            label(pen, Prose.text("proof.chart.measured"), LEFT + 110, top + 0.5 * LINE);
        });
        sheet.space(10);
    }

    private static void line(Graphics2D pen, double top, Axis axis, Shown shown) {
        double y = top + 0.4 * LINE;
        double scale = shown.scale();
        pen.setPaint(Plots.GRID);
        pen.setStroke(Plots.THIN);
        pen.draw(new Line2D.Double(LEFT, y, RIGHT, y));
        bar(pen, y, axis.x(scale * shown.row.low()), axis.x(scale * shown.row.high()));
        dot(pen, axis.x(scale * shown.row.nominal()), y);
        double spread = spread(shown);
        double measured = shown.check().measured();
        if (spread > 0) {
            pen.setPaint(Sheet.INK);
            pen.setStroke(new BasicStroke(3));
            pen.draw(new Line2D.Double(axis.x(scale * (measured - spread)), y, axis.x(scale * (measured + spread)), y));
        }
        diamond(pen, axis.x(scale * measured), y);
    }

    private static void bar(Graphics2D pen, double y, double from, double to) {
        Rectangle2D bar = new Rectangle2D.Double(from, y - 11, Math.max(2, to - from), 22);
        pen.setPaint(Plots.DUSK);
        pen.fill(bar);
        pen.setPaint(Sheet.INK);
        pen.setStroke(Plots.THIN);
        pen.draw(bar);
    }

    private static void dot(Graphics2D pen, double x, double y) {
        pen.setPaint(Plots.NIGHT);
        pen.fill(new Ellipse2D.Double(x - 10, y - 10, 20, 20));
    }

    private static void diamond(Graphics2D pen, double x, double y) {
        Path2D shape = new Path2D.Double();
        shape.moveTo(x, y - 17);
        shape.lineTo(x + 13, y);
        shape.lineTo(x, y + 17);
        shape.lineTo(x - 13, y);
        shape.closePath();
        pen.setPaint(Color.WHITE);
        pen.fill(shape);
        pen.setPaint(Sheet.INK);
        pen.setStroke(new BasicStroke(4));
        pen.draw(shape);
    }

    private static void label(Graphics2D pen, String text, double x, double y) {
        pen.setFont(Fonts.plain(Sheet.SMALL));
        pen.setPaint(Sheet.INK);
        pen.drawString(text, (float) x, (float) (y + 10));
    }

    private static void axis(Sheet sheet, Axis axis) {
        double step = Plots.step(axis.high - axis.low);
        sheet.block(56, (pen, top) -> {
            pen.setPaint(Sheet.INK);
            pen.setStroke(Plots.THIN);
            pen.draw(new Line2D.Double(LEFT, top + 8, RIGHT, top + 8));
            for (double v = Math.ceil(axis.low / step) * step; v <= axis.high; v += step) {
                pen.draw(new Line2D.Double(axis.x(v), top + 2, axis.x(v), top + 14));
                String text = Figures.significant(v, 3);
                double width = Sheet.width(text, Fonts.plain(Sheet.SMALL));
                label(pen, text, axis.x(v) - 0.5 * width, top + 34);
            }
        });
    }

    // --- Model against measurement ---

    private static void square(Sheet sheet, List<Shown> all, Check.Pool pool) {
        ToDoubleFunction<Shown> measured = s -> s.check().measured();
        ToDoubleFunction<Shown> model = s -> s.row.nominal();
        boolean heat = pool == Check.Pool.HEAT;
        List<Shown> drawn =
                heat ? all.stream().filter(s -> s.check().unit().equals("W/m2")).toList() : all;
        if (drawn.isEmpty()) {
            return;
        }
        double low = drawn.stream()
                .mapToDouble(s -> Math.min(measured.applyAsDouble(s), model.applyAsDouble(s)))
                .min()
                .orElse(0);
        double high = drawn.stream()
                .mapToDouble(s -> Math.max(measured.applyAsDouble(s), model.applyAsDouble(s)))
                .max()
                .orElse(1);
        double room = 0.12 * (high - low);
        Axis axis = new Axis(low - room, high + room);
        double side = SIDE;
        sheet.block(side + 100, (pen, top) -> {
            double bottom = top + side;
            ToDoubleFunction<Double> x = v -> LEFT + 80 + (v - axis.low) / (axis.high - axis.low) * side;
            ToDoubleFunction<Double> y = v -> bottom - (v - axis.low) / (axis.high - axis.low) * side;
            pen.setPaint(Sheet.INK);
            pen.setStroke(Plots.THIN);
            pen.draw(new Rectangle2D.Double(LEFT + 80, top, side, side));
            pen.draw(new Line2D.Double(LEFT + 80, bottom, LEFT + 80 + side, top));
            double step = Plots.step(axis.high - axis.low);
            for (double v = Math.ceil(axis.low / step) * step; v <= axis.high; v += step) {
                String text = Figures.significant(Math.abs(v) < 1e-9 ? 0 : v, 3);
                double width = Sheet.width(text, Fonts.plain(Sheet.SMALL));
                label(pen, text, x.applyAsDouble(v) - 0.5 * width, bottom + 26);
                label(pen, text, LEFT + 70 - width, y.applyAsDouble(v));
            }
            label(pen, Prose.text("proof.parity.x"), LEFT + 80, bottom + 66);
            label(pen, Prose.text("proof.parity.y"), LEFT + 90, top + 24);
            for (Shown each : drawn) {
                dot(pen, x.applyAsDouble(measured.applyAsDouble(each)), y.applyAsDouble(model.applyAsDouble(each)));
            }
        });
    }
}
