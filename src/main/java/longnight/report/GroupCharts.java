package longnight.report;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.report.Curves.Curve;
import longnight.report.Curves.Span;
import longnight.study.Group;
import longnight.study.Handed;
import longnight.study.Rota;
import longnight.study.Standing;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;

/** The pictures of a group: everybody's reserve hour by hour, what each spare saves, who is outside when. */
final class GroupCharts {
    static final String PEOPLE = "group";
    static final String SPARES = "spares";
    static final String ROTA = "rota";

    /** More curves than this cannot be told apart. */
    private static final int CURVES = 6;

    private static final int BARS = 12;

    /** A bar of full length leaves no room for a long label. */
    private static final double ROOM = 1.25;

    private static final double HEIGHT = 600;

    /** Height of somebody's row of turns [px]; room for their name. */
    private static final double ROW = 52;

    private static final double NAMES = 260;

    /** Room for half of the last hour's label [px]. */
    private static final double RIGHT = 44;

    private final Group group;
    private final Units units;
    private final GroupWords words;

    GroupCharts(Group group, Units units) {
        this.group = group;
        this.units = units;
        words = new GroupWords(group, units);
    }

    private Picture framed(String title, String headline, String warning, Consumer<Sheet> content) {
        return Picture.framed(
                new Picture.Frame(Prose.text(title), headline, warning, words.about(), words.shortCautions()),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }

    // --- people ---

    Picture people() {
        return framed("group.chart.people", words.headline(), words.atRisk(), sheet -> {
            List<Standing> drawn = group.standings()
                    .subList(0, Math.min(CURVES, group.standings().size()));
            List<Curve> reserve = curves(
                    drawn,
                    result -> Arrays.stream(result.trace().demand())
                            .map(demand -> Standing.LINE - demand)
                            .toArray());
            if (reserve.stream().anyMatch(curve -> curve.lastKnown() >= 0)) {
                sheet.text(Prose.text("group.chart.reserve"), Fonts.bold(Sheet.HEADING));
                Plots.plot(sheet, HEIGHT, reservePlot(reserve));
                sheet.space(20);
            }
            List<Curve> bill = curves(
                    drawn, result -> units.values(Measure.HEAT, result.trace().shortfall()));
            if (bill.stream().anyMatch(curve -> curve.lastKnown() >= 0)) {
                sheet.text(Prose.text("group.chart.shortfall", units.unit(Measure.HEAT)), Fonts.bold(Sheet.HEADING));
                Plots.plot(sheet, HEIGHT, billPlot(bill));
                sheet.space(20);
            }
            for (int i = 0; i < drawn.size(); i++) {
                String line = words.line(drawn.get(i));
                sheet.key(
                        i == 0 ? Prose.text("group.chart.weakest.line", line) : line,
                        Fonts.plain(Sheet.TEXT),
                        Curves.paint(i),
                        Curves.stroke(i));
            }
            if (drawn.size() < group.standings().size()) {
                sheet.text(
                        Prose.text(
                                "group.chart.others",
                                String.valueOf(group.standings().size() - drawn.size())),
                        Fonts.plain(Sheet.TEXT));
            }
            sheet.space(12);
            sheet.text(words.notes().get(0), Fonts.plain(Sheet.SMALL));
        });
    }

    private List<Curve> curves(List<Standing> drawn, Function<NightResult, double[]> what) {
        double dusk = plan().startOfDay();
        return IntStream.range(0, drawn.size())
                .mapToObj(i -> {
                    Standing one = drawn.get(i);
                    String name = GroupWords.name(one);
                    return new Curve(
                            i == 0 ? Prose.text("group.chart.weakest", name) : name,
                            Arrays.stream(Plots.thinned(one.result().trace().time()))
                                    .map(t -> dusk + t)
                                    .toArray(),
                            Plots.thinned(what.apply(one.result())));
                })
                .toList();
    }

    private NightPlan plan() {
        return group.weakest().result().scenario().plan();
    }

    private Span span() {
        return new Span(plan().startOfDay(), plan().startOfDay() + plan().duration(), true);
    }

    private XYPlot reservePlot(List<Curve> curves) {
        double high = Math.max(0.6, highest(curves) + 0.1);
        double low = Math.min(-0.3, lowest(curves) - 0.2 * (high - lowest(curves)));
        XYPlot plot = Curves.plot(curves, span(), low, high, HEIGHT);
        IntervalMarker none = new IntervalMarker(low, 0, Plots.STRETCHED);
        none.setAlpha(1);
        plot.addRangeMarker(none, Layer.BACKGROUND);
        ValueMarker line = new ValueMarker(0, Sheet.INK, Plots.THIN);
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.BACKGROUND);
        double left = span().from() + 0.01 * (span().to() - span().from());
        double foot = low + 0.02 * (high - low);
        Plots.note(plot, Prose.text("group.chart.none-left"), left, foot, TextAnchor.BOTTOM_LEFT);
        return plot;
    }

    private XYPlot billPlot(List<Curve> curves) {
        double high = Math.max(units.value(Measure.HEAT, 100e3), 1.08 * highest(curves));
        return Curves.plot(curves, span(), Math.min(0, 1.08 * lowest(curves)), high, HEIGHT);
    }

    private static double highest(List<Curve> curves) {
        return known(curves).max().orElse(0);
    }

    private static double lowest(List<Curve> curves) {
        return known(curves).min().orElse(0);
    }

    private static java.util.stream.DoubleStream known(List<Curve> curves) {
        return curves.stream()
                .flatMapToDouble(curve -> Arrays.stream(curve.value()))
                .filter(Double::isFinite);
    }

    // --- spares ---

    Picture spares() {
        return framed("group.chart.spares", words.spares().get(0), "", sheet -> {
            double longest = group.spares().stream()
                    .mapToDouble(Handed::perMass)
                    .filter(Double::isFinite)
                    .max()
                    .orElse(1 / ROOM);
            bars(sheet, Prose.text("group.chart.for", GroupWords.name(group.weakest())), true, ROOM * longest);
            sheet.space(24);
            bars(sheet, Prose.text("group.chart.for-others"), false, ROOM * longest);
            sheet.space(12);
            words.spares().stream().skip(1).forEach(text -> sheet.text(text, Fonts.plain(Sheet.TEXT)));
            sheet.text(words.notes().get(1), Fonts.plain(Sheet.SMALL));
        });
    }

    private void bars(Sheet sheet, String heading, boolean weakest, double longest) {
        List<Plots.Bar> bars = new ArrayList<>();
        for (Handed each : group.spares()) {
            if (each.toWeakest() == weakest && bars.size() < BARS) {
                String name = weakest
                        ? Wording.name(each.spare().id())
                        : Prose.text(
                                "group.chart.pair", Wording.name(each.spare().id()), GroupWords.name(each.before()));
                double length =
                        each.rescues() ? longest : Double.isNaN(each.perMass()) ? 0 : Math.max(0, each.perMass());
                bars.add(new Plots.Bar(name, length, label(each)));
            }
        }
        if (bars.isEmpty()) {
            sheet.text(heading, Fonts.bold(Sheet.HEADING));
            sheet.text(Prose.text("group.chart.nothing"), Fonts.plain(Sheet.TEXT));
        } else {
            Plots.namedBars(sheet, heading, bars, longest);
        }
    }

    private String label(Handed each) {
        if (!Double.isNaN(each.longer())) {
            return Prose.text(
                    "group.chart.longer",
                    Figures.whole(each.longer() / 60),
                    units.text(Measure.PIECE, each.spare().mass()));
        }
        if (Double.isNaN(each.saved()) && !each.rescues()) {
            return Prose.text("group.chart.stops", GroupWords.coldest(units));
        }
        return each.rescues()
                ? Prose.text(
                        "group.chart.rescues",
                        GroupWords.coldest(units),
                        units.text(Measure.PIECE, each.spare().mass()))
                : Prose.text(
                        "group.chart.label",
                        units.text(Measure.HEAT_PER_MASS, each.perMass()),
                        units.text(Measure.HEAT, each.saved()),
                        units.text(Measure.PIECE, each.spare().mass()));
    }

    // --- huddle ---

    Picture rota() {
        return framed("group.chart.rota", words.rotas().get(words.rotas().size() - 1), "", sheet -> {
            for (Rota rota : group.rotas()) {
                if (rota.kind() != Rota.Kind.KEPT_OUTSIDE) {
                    turns(sheet, rota);
                    sheet.space(24);
                }
            }
            sheet.key(Prose.text("group.chart.outside"), Fonts.plain(Sheet.TEXT), Plots.NIGHT);
            sheet.key(Prose.text("group.chart.inside"), Fonts.plain(Sheet.TEXT), Plots.STRETCHED);
            sheet.space(12);
            words.rotas().forEach(text -> sheet.text(text, Fonts.plain(Sheet.SMALL)));
            sheet.text(words.notes().get(words.notes().size() - 2), Fonts.plain(Sheet.SMALL));
        });
    }

    /** A row for everybody, the most exposed on top, over the hours of the night. */
    private void turns(Sheet sheet, Rota rota) {
        sheet.text(GroupWords.kind(rota), Fonts.bold(Sheet.HEADING));
        double duration = plan().duration();
        double width = Sheet.WIDTH - 2.0 * Sheet.MARGIN - NAMES - RIGHT;
        for (Standing one : group.standings()) {
            String id = one.id();
            String name = Curves.clipped(GroupWords.name(one), NAMES - 12);
            sheet.block(ROW, (pen, top) -> {
                pen.setPaint(Sheet.INK);
                pen.setFont(Fonts.bold(Sheet.SMALL));
                pen.drawString(name, Sheet.MARGIN, (float) (top + 0.68 * ROW));
                for (int i = 0; i < rota.outside().size(); i++) {
                    double from = i * rota.swap() / duration * width;
                    double to = Math.min(duration, (i + 1) * rota.swap()) / duration * width;
                    Rectangle2D slot =
                            new Rectangle2D.Double(Sheet.MARGIN + NAMES + from, top + 5, to - from, ROW - 10);
                    pen.setPaint(rota.outside().get(i).contains(id) ? Plots.NIGHT : Plots.STRETCHED);
                    pen.fill(slot);
                    pen.setPaint(Sheet.INK);
                    pen.setStroke(Plots.THIN);
                    pen.draw(slot);
                }
            });
        }
        hours(sheet, duration, width);
    }

    private void hours(Sheet sheet, double duration, double width) {
        double dusk = plan().startOfDay();
        double tick = Plots.tick(duration);
        sheet.block(ROW, (pen, top) -> {
            pen.setPaint(Sheet.INK);
            pen.setFont(Fonts.plain(Sheet.SMALL));
            for (double at = Math.ceil(dusk / tick) * tick; at <= dusk + duration; at += tick) {
                double x = Sheet.MARGIN + NAMES + (at - dusk) / duration * width;
                String clock = Figures.clock(at);
                double half = 0.5 * Sheet.width(clock, Fonts.plain(Sheet.SMALL));
                pen.drawString(clock, (float) (x - half), (float) (top + 0.7 * ROW));
            }
        });
    }
}
