package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import longnight.study.Assumption;
import longnight.study.Effect;
import longnight.study.Spread;
import longnight.study.Worth;

/** The pictures of what changes are worth: what would be missed and what would help, and which assumption moves the night. */
final class WorthCharts {
    static final String CHANGES = "worth";
    static final String ASSUMPTIONS = "assumptions";

    private static final int LOSSES = 10;
    private static final int GAINS = 10;
    private static final int MOVERS = 14;

    private WorthCharts() {}

    static Picture changes(Worth worth, Units units) {
        return framed(worth, units, "worth.chart.title", WorthWording.answer(worth, units), sheet -> {
            bars(
                    sheet,
                    "worth.chart.losses",
                    worth,
                    units,
                    effect -> effect.stopped() || effect.shortfall() < 0,
                    LOSSES);
            sheet.space(20);
            bars(sheet, "worth.chart.gains", worth, units, effect -> effect.shortfall() > 0, GAINS);
            sheet.space(10);
            if (worth.draws() != null) {
                sheet.text(
                        Prose.text(
                                "worth.chart.bands",
                                String.valueOf(worth.draws().size()),
                                String.valueOf(worth.draws().seed()),
                                String.valueOf(Worth.DRAWN)),
                        Fonts.bold(Sheet.SMALL));
                sheet.space(10);
            }
            WorthWording.notes(worth, units).forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static void bars(Sheet sheet, String heading, Worth worth, Units units, Predicate<Effect> which, int most) {
        double longest = worth.effects().stream()
                .flatMapToDouble(WorthCharts::reach)
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        List<Plots.Bar> bars = new ArrayList<>();
        for (Effect effect : worth.effects()) {
            if (bars.size() < most && which.test(effect)) {
                double size = Double.isNaN(effect.shortfall()) ? longest : Math.abs(effect.shortfall());
                bars.add(bar(effect, size, units));
            }
        }
        if (bars.isEmpty()) {
            sheet.text(Prose.text(heading), Fonts.bold(Sheet.HEADING));
            sheet.text(Prose.text("worth.chart.none"), Fonts.plain(Sheet.TEXT));
        } else {
            Plots.namedBars(sheet, Prose.text(heading), bars, units.value(Measure.HEAT, longest));
        }
    }

    /** How far a bar and what the draws say of it reach, whatever their sign. */
    private static DoubleStream reach(Effect effect) {
        Spread drawn = effect.drawn();
        return drawn == null
                ? DoubleStream.of(Math.abs(effect.shortfall()))
                : DoubleStream.of(Math.abs(effect.shortfall()), Math.abs(drawn.low()), Math.abs(drawn.high()));
    }

    private static Plots.Bar bar(Effect effect, double size, Units units) {
        double heat = units.value(Measure.HEAT, 1);
        String label = WorthWording.briefly(effect, units);
        Spread drawn = effect.drawn();
        if (drawn == null || Double.isNaN(effect.shortfall())) {
            return new Plots.Bar(name(effect, units), heat * size, label);
        }
        double sign = heat * (effect.shortfall() < 0 ? -1 : 1);
        double one = sign * drawn.low();
        double other = sign * drawn.high();
        return new Plots.Bar(name(effect, units), heat * size, label, Math.min(one, other), Math.max(one, other));
    }

    /** The change, and by how much it changes the load. */
    private static String name(Effect effect, Units units) {
        String name = WorthWording.name(effect.change(), units);
        double mass = units.value(Measure.PIECE, effect.change().mass());
        return mass == 0
                ? name
                : Prose.text(
                        "worth.chart.label",
                        name,
                        WorthWording.signed(mass, units.decimals(Measure.PIECE)),
                        units.unit(Measure.PIECE));
    }

    static Picture assumptions(Worth worth, Units units) {
        String first = WorthWording.name(worth.assumptions().get(0), units);
        return framed(worth, units, "worth.chart.assumptions", Prose.text("worth.chart.first", first), sheet -> {
            List<Plots.Bar> bars = new ArrayList<>();
            double longest = worth.assumptions().stream()
                    .mapToDouble(Assumption::moves)
                    .filter(Double::isFinite)
                    .max()
                    .orElse(1);
            for (Assumption each : worth.assumptions()
                    .subList(0, Math.min(MOVERS, worth.assumptions().size()))) {
                bars.add(new Plots.Bar(
                        WorthWording.name(each, units),
                        units.value(Measure.HEAT, Math.min(longest, each.moves())),
                        WorthWording.moves(each, units)));
            }
            Plots.namedBars(
                    sheet,
                    Prose.text("worth.chart.moves", units.unit(Measure.HEAT)),
                    bars,
                    units.value(Measure.HEAT, longest));
            sheet.text(Prose.text("worth.assumptions", units.unit(Measure.HEAT)), Fonts.plain(Sheet.SMALL));
        });
    }

    private static Picture framed(Worth worth, Units units, String title, String headline, Consumer<Sheet> content) {
        List<String> cautions = new ArrayList<>();
        cautions.add(WorthWording.caution());
        worth.cautions().forEach(caution -> cautions.add(Wording.shortText(caution, units)));
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        headline,
                        WorthWording.planned(worth, units),
                        Wording.who(worth.asPlanned()),
                        cautions),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }
}
