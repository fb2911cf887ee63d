package longnight.report;

import java.nio.file.Path;
import longnight.night.Caution;

/** What the terminal says when a table of a grid is there. */
public final class GridPage {
    private GridPage() {}

    /**
     * After a run.
     *
     * @param resumed rows that an earlier, broken run had left
     */
    public static String done(Path table, int rows, int resumed) {
        String text = resumed == 0
                ? Prose.text("grid.done", table.toString(), String.valueOf(rows))
                : Prose.text("grid.done.resumed", table.toString(), String.valueOf(rows), String.valueOf(resumed));
        return page(text);
    }

    /** After parts were joined. */
    public static String merged(Path table, int rows, int parts) {
        return page(Prose.text("grid.merged", table.toString(), String.valueOf(rows), String.valueOf(parts)));
    }

    private static String page(String text) {
        String caution = Prose.text("caution.heading") + ": " + Wording.shortText(Caution.PLANNING_AID);
        return Console.plain(String.join("\n", Console.wrapped(text, 2)) + "\n"
                + String.join("\n", Console.wrapped(caution, 2)) + "\n");
    }
}
