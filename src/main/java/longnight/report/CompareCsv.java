package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.night.Caution;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Pressure;
import longnight.study.Spread;
import longnight.study.Stress;
import org.apache.commons.csv.CSVPrinter;

/**
 * A comparison as comma-separated values, one row for each of those compared: names, the columns of {@link Summary}, and for
 * nights what each stress costs. The cautions follow as comment lines, as in {@link HourCsv}.
 */
final class CompareCsv {
    static final String FILE = "compare.csv";

    private CompareCsv() {}

    static String text(Comparison.Answer answer, Units units) {
        boolean nights = answer.varied() == Comparison.Varied.NIGHTS;
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, HourCsv.FORMAT)) {
            List<String> header = new ArrayList<>(List.of("name", "night", "kit", "person"));
            Summary.COLUMNS.forEach(column -> header.add(column.header(units)));
            if (nights) {
                for (Stress stress : Stress.values()) {
                    header.add("saved without " + stress.name().toLowerCase(Locale.ROOT)
                            + HourCsv.unit(units, Measure.HEAT));
                }
                header.add("limited by");
            }
            ComparedBand band = answer.band();
            if (band != null) {
                header.addAll(bandHeader(units));
            }
            printer.printRecord(header);
            for (int i = 0; i < answer.all().size(); i++) {
                List<String> cells = cells(answer.all().get(i), units);
                if (band != null) {
                    cells.addAll(bandCells(band.all().get(i), units));
                }
                printer.printRecord(cells);
            }
            for (String note : Compared.notes(answer, units)) {
                printer.printComment(note);
            }
            for (Caution caution : Compared.cautions(answer)) {
                printer.printComment(Wording.fullText(caution, units));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }

    private static List<String> cells(Comparison.One one, Units units) {
        List<String> cells = new ArrayList<>();
        cells.add(Wording.clean(one.name()));
        cells.add(Wording.clean(one.result().scenario().nightName()));
        cells.add(Wording.clean(one.result().scenario().kitName()));
        cells.add(Wording.clean(one.result().scenario().person().name()));
        Summary.COLUMNS.forEach(column -> cells.add(column.cell(one.result(), units)));
        Pressure pressure = one.pressure();
        if (pressure != null) {
            for (Stress stress : Stress.values()) {
                cells.add(
                        Figures.exact(units.value(Measure.HEAT, pressure.saved().getOrDefault(stress, Double.NaN))));
            }
            cells.add(String.join(
                    " ", pressure.limiting().stream().map(Summary::word).toList()));
        }
        return cells;
    }

    private static List<String> bandHeader(Units units) {
        List<String> header = new ArrayList<>(List.of("draws of the model that hold [1]"));
        String heat = HourCsv.unit(units, Measure.HEAT);
        for (String quantity :
                List.of("demand@ [1]", "shortfall heat@" + heat, "core-heat deficit at the end@, signed" + heat)) {
            for (String whose : List.of("", " less that of the first")) {
                for (String share : List.of("10", "50", "90")) {
                    header.add(quantity.replace("@", whose + ", " + share + " % of the model's draws below"));
                }
            }
        }
        return header;
    }

    private static List<String> bandCells(ComparedBand.Entry entry, Units units) {
        List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(entry.holding()));
        add(cells, entry.demand(), 1);
        add(cells, entry.shortfallHeat(), units.value(Measure.HEAT, 1));
        add(cells, entry.deficitDawn(), units.value(Measure.HEAT, 1));
        return cells;
    }

    /** Empty where so many draws stopped early that there is no such quantile. */
    private static void add(List<String> cells, ComparedBand.Amount amount, double scale) {
        for (Spread spread : List.of(amount.own(), amount.more())) {
            for (double value : new double[] {spread.low(), spread.middle(), spread.high()}) {
                cells.add(Figures.exact(scale * value));
            }
        }
    }
}
