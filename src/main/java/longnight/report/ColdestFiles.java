package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.study.Coldest;
import longnight.study.Limit;
import longnight.study.Spread;
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
    public static Bundle of(Coldest coldest, Units units) {
        return new Bundle(NAMES)
                .picture(ColdestCharts.CURVES, () -> ColdestCharts.curves(coldest, units))
                .picture(ColdestCharts.TABLE, () -> ColdestCharts.table(coldest, units))
                .file(CURVES, csv(coldest, units, printer -> curves(coldest, units, printer)))
                .file(TABLE, csv(coldest, units, printer -> table(coldest, units, printer)))
                .file(ColdestJson.FILE, ColdestJson.text(coldest))
                .notes(NOTES, notes(coldest, units))
                .report(page(coldest, units));
    }

    private static AnswerPage page(Coldest coldest, Units units) {
        List<String> told = new ArrayList<>(List.of(ColdestWording.given(coldest, units)));
        told.addAll(ColdestWording.notes(coldest, units));
        return new AnswerPage(
                Prose.text("html.coldest.title"),
                ColdestWording.answer(coldest, units),
                ColdestWording.beside(coldest, units),
                Wording.who(coldest.asGiven()),
                told,
                ColdestWording.caution(),
                coldest.cautions(),
                coldest.asGiven().guessed(),
                units);
    }

    private static String csv(Coldest coldest, Units units, StudyTexts.Rows rows) {
        List<String> remarks =
                new ArrayList<>(List.of(Wording.who(coldest.asGiven()), ColdestWording.answer(coldest, units)));
        remarks.addAll(ColdestWording.notes(coldest, units));
        remarks.add(ColdestWording.caution());
        return StudyTexts.table(remarks, coldest.cautions(), units, rows);
    }

    private static void curves(Coldest coldest, Units units, CSVPrinter printer) throws IOException {
        String air = HourCsv.unit(units, Measure.TEMPERATURE);
        printer.printRecord(
                "person",
                "begun",
                "steady wind at 10 m" + HourCsv.unit(units, Measure.WIND),
                "found",
                "mean air" + air,
                "lowest air" + air,
                "warmer than the night given" + HourCsv.unit(units, Measure.DIFFERENCE),
                "carried again, mean air from to" + air,
                "mean air, 10 % of the model's draws colder" + air,
                "mean air, 50 % of the model's draws colder" + air,
                "mean air, 90 % of the model's draws colder" + air);
        for (Coldest.Curve curve : coldest.curves()) {
            row(printer, units, curve, Double.NaN, curve.ownWind());
            for (int i = 0; i < curve.limits().size(); i++) {
                row(printer, units, curve, Coldest.WINDS.get(i), curve.limits().get(i));
            }
        }
    }

    private static void row(CSVPrinter printer, Units units, Coldest.Curve curve, double wind, Limit limit)
            throws IOException {
        Spread drawn = Double.isNaN(wind) ? curve.drawn() : null;
        boolean found = limit.reach() == Limit.Reach.FOUND;
        printer.printRecord(
                Wording.clean(curve.person().name()),
                curve.damp() ? "damp" : "dry",
                Double.isNaN(wind) ? "as given" : exact(units, Measure.WIND, wind),
                JsonText.word(limit.reach()),
                found ? exact(units, Measure.TEMPERATURE, limit.air().mean()) : "",
                found ? exact(units, Measure.TEMPERATURE, limit.air().lowest()) : "",
                exact(units, Measure.DIFFERENCE, limit.shift()),
                limit.again().stream()
                        .map(each -> exact(units, Measure.TEMPERATURE, each.warmest()) + " "
                                + exact(units, Measure.TEMPERATURE, each.coldest()))
                        .collect(Collectors.joining("; ")),
                drawn == null ? "" : end(units, drawn.low()),
                drawn == null ? "" : end(units, drawn.middle()),
                drawn == null ? "" : end(units, drawn.high()));
    }

    /** A number, or as under "found" where it lies outside the model's air. */
    private static String end(Units units, double celsius) {
        return Double.isFinite(celsius)
                ? exact(units, Measure.TEMPERATURE, celsius)
                : JsonText.word(celsius < 0 ? Limit.Reach.COLDER_THAN_MODEL : Limit.Reach.NOT_EVEN_WARM);
    }

    private static String exact(Units units, Measure measure, double value) {
        return Figures.exact(units.value(measure, value));
    }

    private static void table(Coldest coldest, Units units, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "mean air" + HourCsv.unit(units, Measure.TEMPERATURE),
                "lowest air" + HourCsv.unit(units, Measure.TEMPERATURE),
                "steady wind at 10 m" + HourCsv.unit(units, Measure.WIND),
                "demand [1]",
                "outcome",
                "does not hold from [HH:MM]");
        for (Coldest.Cell cell : coldest.table()) {
            double from = cell.verdict().from();
            printer.printRecord(
                    exact(units, Measure.TEMPERATURE, cell.air().mean()),
                    exact(units, Measure.TEMPERATURE, cell.air().lowest()),
                    exact(units, Measure.WIND, cell.wind()),
                    Figures.exact(cell.demand()),
                    JsonText.word(cell.verdict().outcome()),
                    Double.isNaN(from) ? "" : Wording.clock(coldest.asGiven(), from));
        }
    }

    private static String notes(Coldest coldest, Units units) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", coldest.night().title())).append('\n');
        text.append(Wording.who(coldest.asGiven())).append('\n');
        text.append(ColdestWording.answer(coldest, units)).append("\n\n");
        text.append(ColdestWording.given(coldest, units)).append("\n\n");
        for (String note : ColdestWording.notes(coldest, units)) {
            text.append(note).append("\n\n");
        }
        text.append(ColdestWording.caution()).append("\n\n");
        text.append(Notes.end(coldest.cautions(), coldest.asGiven().guessed(), units));
        return Wording.clean(text.toString());
    }
}
