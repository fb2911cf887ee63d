package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.night.Caution;
import longnight.study.Comparison;
import longnight.study.Pressure;
import longnight.study.Stress;
import org.apache.commons.csv.CSVPrinter;

/**
 * A comparison as comma-separated values, one row for each of those compared: names, the columns of {@link Summary}, and for
 * nights what each stress costs. The cautions follow as comment lines, as in {@link HourCsv}.
 */
final class CompareCsv {
    static final String FILE = "compare.csv";

    private CompareCsv() {}

    static String text(Comparison.Answer answer) {
        boolean nights = answer.varied() == Comparison.Varied.NIGHTS;
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, HourCsv.FORMAT)) {
            List<String> header = new ArrayList<>(List.of("name", "night", "kit", "person"));
            Summary.COLUMNS.forEach(column -> header.add(column.header()));
            if (nights) {
                for (Stress stress : Stress.values()) {
                    header.add("saved without " + stress.name().toLowerCase(Locale.ROOT) + " [kJ]");
                }
                header.add("limited by");
            }
            printer.printRecord(header);
            for (Comparison.One one : answer.all()) {
                printer.printRecord(cells(one));
            }
            for (String note : Compared.notes(answer)) {
                printer.printComment(note);
            }
            for (Caution caution : Compared.cautions(answer)) {
                printer.printComment(Wording.fullText(caution));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }

    private static List<String> cells(Comparison.One one) {
        List<String> cells = new ArrayList<>();
        cells.add(Wording.clean(one.name()));
        cells.add(Wording.clean(one.result().scenario().nightName()));
        cells.add(Wording.clean(one.result().scenario().kitName()));
        cells.add(Wording.clean(one.result().scenario().person().name()));
        Summary.COLUMNS.forEach(column -> cells.add(column.cell(one.result())));
        Pressure pressure = one.pressure();
        if (pressure != null) {
            for (Stress stress : Stress.values()) {
                cells.add(Figures.exact(pressure.saved().getOrDefault(stress, Double.NaN) / 1e3));
            }
            cells.add(String.join(
                    " ", pressure.limiting().stream().map(Summary::word).toList()));
        }
        return cells;
    }
}
