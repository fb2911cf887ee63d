package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Assumption;
import longnight.study.Change;
import longnight.study.Draws;
import longnight.study.Effect;
import longnight.study.Worth;

/** The page about what changes are worth, on the terminal. */
public final class WorthPage {
    /** Changes and assumptions shown; the rest is in the data files. */
    private static final int CHANGES = Worth.DRAWN;

    private static final int ASSUMPTIONS = 12;
    private static final int NAME = 52;

    /** The same beside a column of prices. */
    private static final int SHORT_NAME = 44;

    private WorthPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(Worth worth, Units units) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Console.wrapped(Wording.who(worth.asPlanned()), 0));
        lines.addAll(Console.wrapped(WorthWording.planned(worth, units), 0));
        lines.addAll(Console.wrapped(WorthWording.answer(worth, units), 0));
        lines.add("");
        changes(worth, units, lines);
        bands(worth, units, lines);
        lines.add("");
        assumptions(worth, units, lines);
        lines.add("");
        WorthWording.notes(worth, units).forEach(note -> lines.addAll(Console.wrapped(note, 2)));
        String cautions = worth.cautions().stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        lines.addAll(
                Console.wrapped(Prose.text("caution.heading") + ": " + WorthWording.caution() + " " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    private static void changes(Worth worth, Units units, List<String> lines) {
        boolean priced = worth.effects().stream().anyMatch(effect -> !Double.isNaN(effect.perPrice()));
        for (int i = 1; i <= 2; i++) {
            StringBuilder head = new StringBuilder(left(Prose.text("worth.table.name." + i), priced));
            String[] words = Prose.text(
                            "worth.table.head." + i,
                            units.unit(Measure.HEAT),
                            units.unit(Measure.DIFFERENCE),
                            units.unit(Measure.PIECE))
                    .split("\\|", -1);
            int[] widths = {6, 7, 7, 7, 7, 7, 7};
            for (int k = 0; k < widths.length; k++) {
                if (priced && k == widths.length - 1) {
                    cell(head, 8, Prose.text("worth.table.priced." + i, units.unit(Measure.HEAT)));
                }
                cell(head, widths[k], words[k]);
            }
            lines.add(head.toString().stripTrailing());
        }
        List<Effect> effects = worth.effects();
        for (Effect effect : effects.subList(0, Math.min(CHANGES, effects.size()))) {
            lines.add(line(effect, units, priced));
        }
        if (effects.size() > CHANGES) {
            lines.add(Prose.text("worth.more", String.valueOf(effects.size() - CHANGES), WorthFiles.CHANGES));
        }
    }

    private static String line(Effect effect, Units units, boolean priced) {
        String name = WorthWording.name(effect.change(), units);
        StringBuilder line = new StringBuilder(left(name, priced));
        cell(line, 6, WorthWording.signed(effect.extraHeat(), 0));
        cell(line, 7, WorthWording.heats(effect.shortfall(), units));
        cell(line, 7, WorthWording.heats(effect.deficit(), units));
        cell(line, 7, WorthWording.signed(units.value(Measure.DIFFERENCE, effect.kelvin()), 1));
        cell(
                line,
                7,
                weighs(effect.change())
                        ? WorthWording.signed(
                                units.value(Measure.PIECE, effect.change().mass()), units.decimals(Measure.PIECE))
                        : "");
        cell(line, 7, Double.isNaN(effect.perMass()) ? "" : WorthWording.signed(perPiece(effect.perMass(), units), 2));
        if (priced) {
            cell(
                    line,
                    8,
                    Double.isNaN(effect.perPrice())
                            ? ""
                            : WorthWording.signed(units.value(Measure.HEAT, effect.perPrice()), 1));
        }
        cell(line, 7, Figures.decimals(effect.demand(), 2));
        return line.append("  ")
                .append(Prose.text("worth.outcome." + effect.outcome().name()))
                .toString();
    }

    /** Heat per mass, as it stands at the head of its column. */
    private static double perPiece(double perMass, Units units) {
        return units.value(Measure.HEAT, perMass) / units.value(Measure.PIECE, 1);
    }

    /** What the same draws say with and without each of the largest changes. */
    private static void bands(Worth worth, Units units, List<String> lines) {
        Draws draws = worth.draws();
        if (draws == null) {
            return;
        }
        lines.add("");
        lines.addAll(Console.wrapped(WorthWording.bands(draws, units), 2));
        for (Effect effect : worth.effects()) {
            if (effect.drawn() != null) {
                StringBuilder line = new StringBuilder(left(WorthWording.name(effect.change(), units), false));
                cell(line, 9, WorthWording.heats(effect.shortfall(), units));
                cell(line, 20, WorthWording.drawn(effect, units));
                lines.add(line.append(effect.isLost() ? "  " + Prose.text("worth.lost") : "")
                        .toString());
            }
        }
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

    private static void assumptions(Worth worth, Units units, List<String> lines) {
        lines.addAll(Console.wrapped(Prose.text("worth.assumptions", units.unit(Measure.HEAT)), 2));
        List<Assumption> all = worth.assumptions();
        for (Assumption assumption : all.subList(0, Math.min(ASSUMPTIONS, all.size()))) {
            StringBuilder line = new StringBuilder();
            cell(line, 8, WorthWording.heats(assumption.low(), units));
            cell(line, 8, WorthWording.heats(assumption.high(), units));
            lines.add(line.append("  ")
                    .append(WorthWording.name(assumption, units))
                    .toString());
        }
    }
}
