package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import longnight.study.Assumption;
import longnight.study.Effect;
import longnight.study.Worth;

/** The pictures of what changes are worth: what would be missed and what would help, and which assumption moves the night. */
final class WorthCharts {
    static final String CHANGES = "worth";
    static final String ASSUMPTIONS = "assumptions";

    private static final int LOSSES = 10;
    private static final int GAINS = 10;
    private static final int MOVERS = 14;

    private WorthCharts() {}

    static Picture changes(Worth worth) {
        return framed(worth, "worth.chart.title", WorthWording.answer(worth), sheet -> {
            bars(sheet, "worth.chart.losses", worth, effect -> effect.stopped() || effect.shortfall() < 0, LOSSES);
            sheet.space(20);
            bars(sheet, "worth.chart.gains", worth, effect -> effect.shortfall() > 0, GAINS);
            sheet.space(10);
            WorthWording.notes(worth).forEach(note -> sheet.text(note, Fonts.plain(Sheet.SMALL)));
        });
    }

    private static void bars(Sheet sheet, String heading, Worth worth, Predicate<Effect> which, int most) {
        double longest = worth.effects().stream()
                .mapToDouble(effect -> Math.abs(effect.shortfall()))
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        List<Plots.Bar> bars = new ArrayList<>();
        for (Effect effect : worth.effects()) {
            if (bars.size() < most && which.test(effect)) {
                double size = Double.isNaN(effect.shortfall()) ? longest : Math.abs(effect.shortfall());
                bars.add(new Plots.Bar(WorthWording.name(effect.change()), size / 1e3, label(effect)));
            }
        }
        if (bars.isEmpty()) {
            sheet.text(Prose.text(heading), Fonts.bold(Sheet.HEADING));
            sheet.text(Prose.text("worth.chart.none"), Fonts.plain(Sheet.TEXT));
        } else {
            Plots.namedBars(sheet, Prose.text(heading), bars, longest / 1e3);
        }
    }

    private static String label(Effect effect) {
        double grams = 1e3 * effect.change().mass();
        String amount = WorthWording.amount(effect);
        return grams == 0 ? amount : Prose.text("worth.chart.label", amount, WorthWording.signed(grams, 0));
    }

    static Picture assumptions(Worth worth) {
        String first = WorthWording.name(worth.assumptions().get(0));
        return framed(worth, "worth.chart.assumptions", Prose.text("worth.chart.first", first), sheet -> {
            List<Plots.Bar> bars = new ArrayList<>();
            double longest = worth.assumptions().stream()
                    .mapToDouble(Assumption::moves)
                    .filter(Double::isFinite)
                    .max()
                    .orElse(1);
            for (Assumption each : worth.assumptions()
                    .subList(0, Math.min(MOVERS, worth.assumptions().size()))) {
                bars.add(new Plots.Bar(
                        WorthWording.name(each), Math.min(longest, each.moves()) / 1e3, WorthWording.moves(each)));
            }
            Plots.namedBars(sheet, Prose.text("worth.chart.moves"), bars, longest / 1e3);
            sheet.text(Prose.text("worth.assumptions"), Fonts.plain(Sheet.SMALL));
        });
    }

    private static Picture framed(Worth worth, String title, String headline, Consumer<Sheet> content) {
        List<String> cautions = new ArrayList<>();
        cautions.add(WorthWording.caution());
        worth.cautions().forEach(caution -> cautions.add(Wording.shortText(caution)));
        return Picture.framed(
                new Picture.Frame(
                        Prose.text(title),
                        headline,
                        WorthWording.planned(worth),
                        Wording.who(worth.asPlanned()),
                        cautions),
                sheet -> {
                    content.accept(sheet);
                    sheet.space(24);
                });
    }
}
