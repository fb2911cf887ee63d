package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Coldest;
import longnight.study.Limit;
import org.apache.commons.csv.CSVPrinter;

/** The folder of an answer about the coldest night: two pictures, two tables, JSON and notes. */
public final class ColdestFiles {
    private static final String CURVES = "coldest.csv";
    private static final String TABLE = "temperature-by-wind.csv";
    private static final String NOTES = "notes.txt";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = List.of(
            ColdestCharts.CURVES + ".png",
            ColdestCharts.CURVES + ".svg",
            ColdestCharts.TABLE + ".png",
            ColdestCharts.TABLE + ".svg",
            CURVES,
            TABLE,
            ColdestJson.FILE,
            NOTES,
            AnswerPage.FILE);

    private ColdestFiles() {}

    /** All of them. */
    public static Bundle of(Coldest coldest) {
        return new Bundle(NAMES)
                .picture(ColdestCharts.CURVES, () -> ColdestCharts.curves(coldest))
                .picture(ColdestCharts.TABLE, () -> ColdestCharts.table(coldest))
                .file(CURVES, csv(coldest, printer -> curves(coldest, printer)))
                .file(TABLE, csv(coldest, printer -> table(coldest, printer)))
                .file(ColdestJson.FILE, ColdestJson.text(coldest))
                .notes(NOTES, notes(coldest))
                .report(page(coldest));
    }

    private static AnswerPage page(Coldest coldest) {
        List<String> told = new ArrayList<>(List.of(ColdestWording.given(coldest)));
        told.addAll(ColdestWording.notes(coldest));
        return new AnswerPage(
                Prose.text("html.coldest.title"),
                ColdestWording.answer(coldest),
                ColdestWording.beside(coldest),
                Wording.who(coldest.asGiven()),
                told,
                ColdestWording.caution(),
                coldest.cautions(),
                coldest.asGiven().guessed(),
                Units.METRIC);
    }

    private static String csv(Coldest coldest, StudyTexts.Rows rows) {
        List<String> remarks = new ArrayList<>(List.of(Wording.who(coldest.asGiven()), ColdestWording.answer(coldest)));
        remarks.addAll(ColdestWording.notes(coldest));
        remarks.add(ColdestWording.caution());
        return StudyTexts.table(remarks, coldest.cautions(), rows);
    }

    private static void curves(Coldest coldest, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "person",
                "begun",
                "steady wind at 10 m [m/s]",
                "found",
                "mean air [degC]",
                "lowest air [degC]",
                "warmer than the night given [K]",
                "carried again, mean air from to [degC]");
        for (Coldest.Curve curve : coldest.curves()) {
            row(printer, curve, Double.NaN, curve.ownWind());
            for (int i = 0; i < curve.limits().size(); i++) {
                row(printer, curve, Coldest.WINDS.get(i), curve.limits().get(i));
            }
        }
    }

    private static void row(CSVPrinter printer, Coldest.Curve curve, double wind, Limit limit) throws IOException {
        boolean found = limit.reach() == Limit.Reach.FOUND;
        printer.printRecord(
                Wording.clean(curve.person().name()),
                curve.damp() ? "damp" : "dry",
                Double.isNaN(wind) ? "as given" : Figures.exact(wind),
                JsonText.word(limit.reach()),
                found ? Figures.exact(limit.air().mean()) : "",
                found ? Figures.exact(limit.air().lowest()) : "",
                Figures.exact(limit.shift()),
                limit.again().stream()
                        .map(each -> Figures.exact(each.warmest()) + " " + Figures.exact(each.coldest()))
                        .collect(Collectors.joining("; ")));
    }

    private static void table(Coldest coldest, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "mean air [degC]",
                "lowest air [degC]",
                "steady wind at 10 m [m/s]",
                "demand [1]",
                "outcome",
                "does not hold from [HH:MM]");
        for (Coldest.Cell cell : coldest.table()) {
            double from = cell.verdict().from();
            printer.printRecord(
                    Figures.exact(cell.air().mean()),
                    Figures.exact(cell.air().lowest()),
                    Figures.exact(cell.wind()),
                    Figures.exact(cell.demand()),
                    JsonText.word(cell.verdict().outcome()),
                    Double.isNaN(from) ? "" : Wording.clock(coldest.asGiven(), from));
        }
    }

    private static String notes(Coldest coldest) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", coldest.night().title())).append('\n');
        text.append(Wording.who(coldest.asGiven())).append('\n');
        text.append(ColdestWording.answer(coldest)).append("\n\n");
        text.append(ColdestWording.given(coldest)).append("\n\n");
        for (String note : ColdestWording.notes(coldest)) {
            text.append(note).append("\n\n");
        }
        text.append(ColdestWording.caution()).append("\n\n");
        text.append(Notes.end(coldest.cautions(), coldest.asGiven().guessed()));
        return Wording.clean(text.toString());
    }
}
