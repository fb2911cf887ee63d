package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Coldest;
import longnight.study.Draws;
import longnight.study.Spread;

/** The page about the coldest night on the terminal. */
public final class ColdestPage {
    /** Columns for names. */
    private static final int NAME = 34;

    private static final int FIGURE = 8;
    private static final int CELL = 24;
    private static final int BAND = 14;

    private ColdestPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(Coldest coldest, Units units) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Console.wrapped(Wording.who(coldest.asGiven()), 0));
        for (String sentence : List.of(
                ColdestWording.answer(coldest, units),
                ColdestWording.beside(coldest, units),
                ColdestWording.given(coldest, units))) {
            if (!sentence.isEmpty()) {
                lines.addAll(Console.wrapped(sentence, 0));
            }
        }
        lines.add("");
        curves(coldest, units, lines);
        bands(coldest, units, lines);
        lines.add("");
        table(coldest, units, lines);
        lines.add("");
        ColdestWording.notes(coldest, units).forEach(note -> lines.addAll(Console.wrapped(note, 2)));
        String cautions = coldest.cautions().stream().map(Wording::shortText).collect(Collectors.joining(" "));
        lines.addAll(
                Console.wrapped(Prose.text("caution.heading") + ": " + ColdestWording.caution() + " " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    private static void curves(Coldest coldest, Units units, List<String> lines) {
        lines.addAll(Console.wrapped(
                Prose.text(
                        "coldest.curves",
                        ColdestWording.line(coldest.line(), units),
                        units.unit(Measure.TEMPERATURE),
                        units.unit(Measure.WIND)),
                2));
        StringBuilder head = new StringBuilder(left(Prose.text("coldest.curves.head", units.unit(Measure.WIND)), NAME));
        head.append(right(Prose.text("coldest.wind.own"), FIGURE));
        Coldest.WINDS.forEach(wind -> head.append(right(ColdestWording.wind(wind, units), FIGURE)));
        lines.add(head.toString());
        for (Coldest.Curve curve : coldest.curves()) {
            StringBuilder line = new StringBuilder(left(ColdestWording.name(curve), NAME));
            line.append(right(ColdestWording.cell(curve.ownWind(), units), FIGURE));
            curve.limits().forEach(limit -> line.append(right(ColdestWording.cell(limit, units), FIGURE)));
            lines.add(line.toString());
        }
    }

    /** What the draws say of each answer in the night's own wind. */
    private static void bands(Coldest coldest, Units units, List<String> lines) {
        Draws draws = coldest.draws();
        if (draws == null) {
            return;
        }
        lines.add("");
        lines.addAll(Console.wrapped(ColdestWording.bands(draws, units), 2));
        StringBuilder head = new StringBuilder(" ".repeat(NAME));
        for (String word :
                Prose.text("coldest.bands.head", units.unit(Measure.DIFFERENCE)).split("\\|", -1)) {
            head.append(right(word, BAND));
        }
        lines.add(head.toString());
        for (Coldest.Curve curve : coldest.curves()) {
            Spread drawn = curve.drawn();
            if (drawn != null) {
                lines.add(left(ColdestWording.name(curve), NAME)
                        + right(ColdestWording.cell(curve.ownWind(), units), BAND)
                        + right(ColdestWording.cell(drawn.low(), units), BAND)
                        + right(ColdestWording.cell(drawn.high(), units), BAND)
                        + right(ColdestWording.apart(drawn.low(), drawn.nominal(), units), BAND)
                        + right(ColdestWording.apart(drawn.high(), drawn.nominal(), units), BAND));
            }
        }
    }

    private static void table(Coldest coldest, Units units, List<String> lines) {
        lines.addAll(Console.wrapped(Prose.text("coldest.table", ColdestWording.name(coldest.main())), 2));
        int width = Coldest.TABLE_WINDS.size();
        StringBuilder head =
                new StringBuilder(left(Prose.text("coldest.table.head", units.unit(Measure.TEMPERATURE)), CELL));
        Coldest.TABLE_WINDS.forEach(wind -> head.append(left(
                Prose.text("coldest.table.wind", ColdestWording.wind(wind, units), units.unit(Measure.WIND)), CELL)));
        lines.add(head.toString().stripTrailing());
        for (int i = 0; i < coldest.table().size(); i += width) {
            List<Coldest.Cell> row = coldest.table().subList(i, i + width);
            StringBuilder line = new StringBuilder(left(air(row.get(0), units), CELL));
            row.forEach(cell -> line.append(left(ColdestWording.cell(coldest, cell), CELL)));
            lines.add(line.toString().stripTrailing());
        }
    }

    private static String air(Coldest.Cell cell, Units units) {
        return right(Figures.whole(units.value(Measure.TEMPERATURE, cell.air().mean())), 5) + " ("
                + ColdestWording.degrees(cell.air().lowest(), units) + ")";
    }

    private static String left(String text, int width) {
        return text.length() < width ? text + " ".repeat(width - text.length()) : text.substring(0, width - 1) + " ";
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }
}
