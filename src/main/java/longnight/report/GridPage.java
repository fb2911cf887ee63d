package longnight.report;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import longnight.night.Caution;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

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

    /**
     * A page for browsers that shows what lies in a table of a grid.
     *
     * @param table as {@link GridJournal} writes it
     */
    public static String index(Path table) throws IOException {
        String csv = Files.readString(table);
        GridCsv.Stamp stamp = csv.lines()
                .filter(GridCsv.Stamp::isOne)
                .reduce((first, last) -> last)
                .map(GridCsv.Stamp::parse)
                .orElseThrow();
        Set<Caution> cautions = EnumSet.of(Caution.PLANNING_AID);
        cautions.addAll(stamp.cautions());
        String file = String.valueOf(table.getFileName());
        return Html.text(new AnswerPage(
                        Prose.text("html.grid.title"),
                        headline(csv),
                        "",
                        Prose.text("html.grid.about", file, stamp.part().toString()),
                        List.of(Prose.text("html.grid.rest", file)),
                        "",
                        cautions,
                        null, // the table does not hold it, the page says who tells
                        Units.METRIC)
                .made(Map.of(), Map.of("grid.csv", csv, "stamp.json", stamp.line())));
    }

    private static String headline(String csv) {
        Map<String, Integer> counts = new TreeMap<>();
        int rows = 0;
        try (CSVParser parser = HourCsv.FORMAT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(csv))) {
            for (CSVRecord row : parser) {
                rows++;
                counts.merge(row.get("outcome").replace('-', ' '), 1, Integer::sum);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a text does not fail
        }
        String told = counts.entrySet().stream()
                .map(each -> Prose.text(
                        "html.grid.count", each.getKey(), each.getValue().toString()))
                .collect(Collectors.joining(", "));
        return Prose.text("html.grid.headline", String.valueOf(rows), told);
    }

    private static String page(String text) {
        String caution = Prose.text("caution.heading") + ": " + Wording.shortText(Caution.PLANNING_AID);
        return Console.plain(String.join("\n", Console.wrapped(text, 2)) + "\n"
                + String.join("\n", Console.wrapped(caution, 2)) + "\n");
    }
}
