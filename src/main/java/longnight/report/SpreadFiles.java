package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.study.Cloud;
import longnight.study.Driver;
import longnight.study.Indices;
import longnight.study.Spread;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadAnswer.Quantity;
import org.apache.commons.csv.CSVPrinter;

/** The folder of an answer about how far a night is open: two pictures, two tables, JSON and notes. */
public final class SpreadFiles {
    private static final String BANDS = "bands.csv";
    private static final String DRIVERS = "drivers.csv";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = List.of(
            SpreadCharts.BANDS + ".png",
            SpreadCharts.BANDS + ".svg",
            SpreadCharts.DRIVERS + ".png",
            SpreadCharts.DRIVERS + ".svg",
            BANDS,
            DRIVERS,
            SpreadJson.FILE,
            AnswerPage.FILE,
            Notes.FILE);

    private final SpreadWording words;
    private final SpreadAnswer answer;
    private final Units units;

    private SpreadFiles(SpreadAnswer answer, Units units) {
        this.answer = answer;
        this.units = units;
        words = new SpreadWording(answer, units);
    }

    /** All of them; JSON is always SI. */
    public static Bundle of(SpreadAnswer answer, Units units) {
        SpreadFiles files = new SpreadFiles(answer, units);
        return new Bundle(NAMES)
                .picture(SpreadCharts.BANDS, () -> SpreadCharts.bands(files.words))
                .picture(SpreadCharts.DRIVERS, () -> SpreadCharts.drivers(files.words))
                .file(BANDS, files.table(files::bands))
                .file(DRIVERS, files.table(files::drivers))
                .file(SpreadJson.FILE, SpreadJson.text(answer))
                .notes(Notes.FILE, files.notes())
                .report(files.page());
    }

    private AnswerPage page() {
        List<String> told = new ArrayList<>(List.of(words.given(), words.worst()));
        told.addAll(words.notes());
        return new AnswerPage(
                Prose.text("html.spread.title"),
                words.headline(),
                words.atRisk(),
                words.who(),
                told,
                SpreadWording.caution(),
                answer.cautions(),
                answer.given().asWritten().guessed(),
                units);
    }

    private String table(StudyTexts.Rows rows) {
        List<String> remarks =
                new ArrayList<>(List.of(words.who(), words.headline(), words.atRisk(), words.given(), words.worst()));
        remarks.addAll(words.notes());
        remarks.add(SpreadWording.caution());
        return StudyTexts.table(remarks, answer.cautions(), units, rows);
    }

    private void bands(CSVPrinter printer) throws IOException {
        List<Object> head = new ArrayList<>(List.of("night", "drawn", "draws", "settled"));
        ends(head, "shortfall heat", units.unit(Measure.HEAT));
        ends(head, "demand", "1");
        ends(head, "core-heat deficit at dawn", units.unit(Measure.HEAT));
        ends(head, "core at dawn", units.unit(Measure.TEMPERATURE));
        for (Cloud.Crossed line : Cloud.Crossed.values()) {
            head.add("draws that cross: " + StudyTexts.word(line));
        }
        printer.printRecord(head);
        rows(printer, "as given", answer.given());
        rows(printer, "worst plausible", answer.worst());
    }

    private static void ends(List<Object> head, String name, String unit) {
        for (String end : List.of("as written", "low", "middle", "high")) {
            head.add(name + ", " + end + " [" + unit + "]");
        }
    }

    private void rows(CSVPrinter printer, String night, SpreadAnswer.Side side) throws IOException {
        for (Cloud cloud : side.clouds()) {
            List<Object> row = new ArrayList<>();
            row.add(night);
            row.add(SpreadJson.over(cloud));
            row.add(cloud.draws());
            row.add(cloud.settled() ? "yes" : "no");
            cells(row, cloud.shortfallHeat(), Measure.HEAT);
            for (double value : values(cloud.demand())) {
                row.add(Figures.exact(value));
            }
            cells(row, cloud.deficitDawn(), Measure.HEAT);
            cells(row, cloud.coreDawn(), Measure.TEMPERATURE);
            for (Cloud.Crossed line : Cloud.Crossed.values()) {
                row.add(cloud.crossing().get(line));
            }
            printer.printRecord(row);
        }
    }

    private void cells(List<Object> row, Spread spread, Measure measure) {
        for (double value : values(spread)) {
            row.add(Figures.exact(units.value(measure, value)));
        }
    }

    private static double[] values(Spread spread) {
        return new double[] {spread.nominal(), spread.low(), spread.middle(), spread.high()};
    }

    private void drivers(CSVPrinter printer) throws IOException {
        printer.printRecord(
                "quantity",
                "group",
                "part of",
                "first order [1]",
                "first order low [1]",
                "first order high [1]",
                "total [1]",
                "total low [1]",
                "total high [1]");
        for (Map.Entry<Quantity, Map<Driver, Indices.Index>> of :
                answer.indices().entrySet()) {
            for (Map.Entry<Driver, Indices.Index> each : of.getValue().entrySet()) {
                Indices.Estimate first = each.getValue().first();
                Indices.Estimate total = each.getValue().total();
                printer.printRecord(
                        StudyTexts.word(of.getKey()),
                        StudyTexts.word(each.getKey()),
                        StudyTexts.word(each.getKey().doubt()),
                        Figures.exact(first.value()),
                        Figures.exact(first.low()),
                        Figures.exact(first.high()),
                        Figures.exact(total.value()),
                        Figures.exact(total.low()),
                        Figures.exact(total.high()));
            }
        }
    }

    private String notes() {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text(
                        "notes.title", Wording.name(answer.question().night().title())))
                .append('\n');
        for (String line :
                List.of(words.who(), words.headline(), words.atRisk(), words.given(), words.worst(), words.most())) {
            text.append(line).append('\n');
        }
        text.append('\n');
        words.notes().forEach(note -> text.append(note).append("\n\n"));
        text.append(SpreadWording.caution()).append("\n\n");
        text.append(Notes.end(answer.cautions(), answer.given().asWritten().guessed(), units));
        return Wording.clean(text.toString());
    }
}
