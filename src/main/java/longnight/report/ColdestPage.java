package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Coldest;

/** The page about the coldest night on the terminal. */
public final class ColdestPage {
    /** Columns for names. */
    private static final int NAME = 34;

    private static final int FIGURE = 8;
    private static final int CELL = 24;

    private ColdestPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(Coldest coldest) {
        List<String> lines = new ArrayList<>();
        lines.addAll(Console.wrapped(Wording.who(coldest.asGiven()), 0));
        for (String sentence : List.of(
                ColdestWording.answer(coldest), ColdestWording.beside(coldest), ColdestWording.given(coldest))) {
            if (!sentence.isEmpty()) {
                lines.addAll(Console.wrapped(sentence, 0));
            }
        }
        lines.add("");
        curves(coldest, lines);
        lines.add("");
        table(coldest, lines);
        lines.add("");
        ColdestWording.notes(coldest).forEach(note -> lines.addAll(Console.wrapped(note, 2)));
        String cautions = coldest.cautions().stream().map(Wording::shortText).collect(Collectors.joining(" "));
        lines.addAll(
                Console.wrapped(Prose.text("caution.heading") + ": " + ColdestWording.caution() + " " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    private static void curves(Coldest coldest, List<String> lines) {
        lines.addAll(Console.wrapped(Prose.text("coldest.curves", ColdestWording.line(coldest.line())), 2));
        StringBuilder head = new StringBuilder(left(Prose.text("coldest.curves.head"), NAME));
        head.append(right(Prose.text("coldest.wind.own"), FIGURE));
        Coldest.WINDS.forEach(wind -> head.append(right(ColdestWording.wind(wind), FIGURE)));
        lines.add(head.toString());
        for (Coldest.Curve curve : coldest.curves()) {
            StringBuilder line = new StringBuilder(left(ColdestWording.name(curve), NAME));
            line.append(right(ColdestWording.cell(curve.ownWind()), FIGURE));
            curve.limits().forEach(limit -> line.append(right(ColdestWording.cell(limit), FIGURE)));
            lines.add(line.toString());
        }
    }

    private static void table(Coldest coldest, List<String> lines) {
        lines.addAll(Console.wrapped(Prose.text("coldest.table", ColdestWording.name(coldest.main())), 2));
        int width = Coldest.TABLE_WINDS.size();
        StringBuilder head = new StringBuilder(left(Prose.text("coldest.table.head"), CELL));
        Coldest.TABLE_WINDS.forEach(
                wind -> head.append(left(Prose.text("coldest.table.wind", ColdestWording.wind(wind)), CELL)));
        lines.add(head.toString().stripTrailing());
        for (int i = 0; i < coldest.table().size(); i += width) {
            List<Coldest.Cell> row = coldest.table().subList(i, i + width);
            StringBuilder line = new StringBuilder(left(air(row.get(0)), CELL));
            row.forEach(cell -> line.append(left(ColdestWording.cell(coldest, cell), CELL)));
            lines.add(line.toString().stripTrailing());
        }
    }

    private static String air(Coldest.Cell cell) {
        return right(Figures.whole(cell.air().mean()), 5) + " ("
                + ColdestWording.degrees(cell.air().lowest()) + ")";
    }

    private static String left(String text, int width) {
        return text.length() < width ? text + " ".repeat(width - text.length()) : text.substring(0, width - 1) + " ";
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }
}
