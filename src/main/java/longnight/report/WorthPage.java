package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Assumption;
import longnight.study.Change;
import longnight.study.Effect;
import longnight.study.Worth;

/** The page about what changes are worth, on the terminal. */
public final class WorthPage {
    /** Changes and assumptions shown; the rest is in the data files. */
    private static final int CHANGES = 24;

    private static final int ASSUMPTIONS = 12;
    private static final int NAME = 52;

    /** The same beside a column of prices. */
    private static final int SHORT_NAME = 44;

    private WorthPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(Worth worth) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Console.wrapped(Wording.who(worth.asPlanned()), 0));
        lines.addAll(Console.wrapped(WorthWording.planned(worth), 0));
        lines.addAll(Console.wrapped(WorthWording.answer(worth), 0));
        lines.add("");
        changes(worth, lines);
        lines.add("");
        assumptions(worth, lines);
        lines.add("");
        WorthWording.notes(worth).forEach(note -> lines.addAll(Console.wrapped(note, 2)));
        String cautions = worth.cautions().stream().map(Wording::shortText).collect(Collectors.joining(" "));
        lines.addAll(
                Console.wrapped(Prose.text("caution.heading") + ": " + WorthWording.caution() + " " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    private static void changes(Worth worth, List<String> lines) {
        boolean priced = worth.effects().stream().anyMatch(effect -> !Double.isNaN(effect.perPrice()));
        for (int i = 1; i <= 2; i++) {
            String more = priced ? Prose.text("worth.table.priced." + i) : "";
            lines.add(left(Prose.text("worth.table.name." + i), priced)
                    + Prose.text("worth.table.head." + i, more).stripTrailing());
        }
        List<Effect> effects = worth.effects();
        for (Effect effect : effects.subList(0, Math.min(CHANGES, effects.size()))) {
            lines.add(line(effect, priced));
        }
        if (effects.size() > CHANGES) {
            lines.add(Prose.text("worth.more", String.valueOf(effects.size() - CHANGES), WorthFiles.CHANGES));
        }
    }

    private static String line(Effect effect, boolean priced) {
        String name = WorthWording.name(effect.change());
        StringBuilder line = new StringBuilder(left(name, priced));
        cell(line, 6, WorthWording.signed(effect.extraHeat(), 0));
        cell(line, 7, WorthWording.signed(effect.shortfall() / 1e3, 0));
        cell(line, 6, WorthWording.signed(effect.deficit() / 1e3, 0));
        cell(line, 7, WorthWording.signed(effect.kelvin(), 1));
        cell(
                line,
                7,
                weighs(effect.change())
                        ? WorthWording.signed(1e3 * effect.change().mass(), 0)
                        : "");
        cell(line, 7, Double.isNaN(effect.perMass()) ? "" : WorthWording.signed(effect.perMass() / 1e6, 2));
        if (priced) {
            cell(line, 8, Double.isNaN(effect.perPrice()) ? "" : WorthWording.signed(effect.perPrice() / 1e3, 1));
        }
        cell(line, 7, Figures.decimals(effect.demand(), 2));
        return line.append("  ")
                .append(Prose.text("worth.outcome." + effect.outcome().name()))
                .toString();
    }

    private static String left(String text, boolean priced) {
        int width = priced ? SHORT_NAME : NAME;
        return text.length() < width ? text + " ".repeat(width - text.length()) : text.substring(0, width - 1) + " ";
    }

    /** Whether grams belong to it. */
    private static boolean weighs(Change change) {
        return change.mass() != 0 || change.kind() == Change.Kind.EXCHANGED;
    }

    private static void cell(StringBuilder line, int width, String text) {
        line.append(" ".repeat(Math.max(1, width - text.length()))).append(text);
    }

    private static void assumptions(Worth worth, List<String> lines) {
        lines.addAll(Console.wrapped(Prose.text("worth.assumptions"), 2));
        List<Assumption> all = worth.assumptions();
        for (Assumption assumption : all.subList(0, Math.min(ASSUMPTIONS, all.size()))) {
            StringBuilder line = new StringBuilder();
            cell(line, 8, WorthWording.signed(assumption.low() / 1e3, 0));
            cell(line, 8, WorthWording.signed(assumption.high() / 1e3, 0));
            lines.add(line.append("  ").append(WorthWording.name(assumption)).toString());
        }
    }
}
