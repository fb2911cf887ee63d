package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import longnight.night.Caution;
import longnight.study.LeastAnswer;
import longnight.study.LeastAnswer.Found;
import org.apache.commons.csv.CSVPrinter;

/** The adequate kits found, lightest first, one row each; what was shown and the cautions follow as comment lines. */
final class LeastCsv {
    static final String FILE = "least.csv";

    private LeastCsv() {}

    static String text(LeastAnswer answer, Units units) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, HourCsv.FORMAT)) {
            List<String> header = new ArrayList<>(
                    List.of("mass" + HourCsv.unit(units, Measure.LOAD), "largest demand [1]", "pieces"));
            answer.nights().forEach(night -> header.add(Wording.clean(night) + ": demand [1]"));
            printer.printRecord(header);
            for (Found found : answer.proof().found()) {
                List<String> cells = new ArrayList<>(List.of(
                        Figures.exact(units.value(Measure.LOAD, found.mass())),
                        Figures.exact(found.demand()),
                        String.join(" ", LeastWords.ids(found.kit()))));
                found.nights().forEach(night -> cells.add(Figures.exact(night.demand())));
                printer.printRecord(cells);
            }
            printer.printComment(LeastWords.headline(answer, units));
            printer.printComment(LeastWords.about(answer, units));
            for (LeastAnswer.Point point : answer.front()) {
                printer.printComment(Prose.text(
                        "least.front.row",
                        units.text(Measure.TEMPERATURE, point.air()),
                        Double.isNaN(point.mass()) ? "-" : LeastWords.kilograms(point.mass(), units)));
            }
            for (String line : LeastWords.certificate(answer)) {
                printer.printComment(line);
            }
            for (Caution caution : LeastWords.cautions(answer)) {
                printer.printComment(Wording.fullText(caution, units));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }
}
