package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.figure.BodySegment;
import longnight.night.Caution;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.night.Way;
import longnight.study.Band;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * The hour series as comma-separated values (RFC 4180, UTF-8, line ends LF): one header row with the unit of each column in
 * square brackets, then one row an hour from dusk to dawn; where there is no number (powers at dusk, demand in the first
 * four hours, water that was not followed) the cell is empty. Figures are not rounded further than six significant digits.
 *
 * <p>The verdict and the cautions, in full, follow the last row as comment lines that begin with {@code #}. They stand at
 * the end so that the first line is the header for every program, and a person who opens the file in a table sees both.
 */
final class HourCsv {
    static final String FILE = "hours.csv";

    /** How all our tables are written. */
    static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setCommentMarker('#')
            .get();

    private HourCsv() {}

    static String text(NightResult result) {
        return text(result, null);
    }

    static String text(NightResult result, @Nullable Band band) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(header());
            for (HourRow row : result.hours()) {
                printer.printRecord(cells(row, Account.wornAt(result, row.time()), band));
            }
            printer.printComment(Wording.who(result));
            printer.printComment((Wording.verdict(result) + " " + Wording.atRisk(result)).strip());
            if (band != null) {
                printer.printComment(Wording.band(result, band));
            }
            for (Caution caution : result.cautions()) {
                printer.printComment(Wording.fullText(caution));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }

    private static List<String> header() {
        List<String> names = new ArrayList<>(List.of(
                "time since dusk [h]", "clock [HH:MM]", "air [degC]", "wind at the body [m/s]", "heat made [W]"));
        for (Way way : Way.values()) {
            names.add("lost by " + name(way) + " [W]");
        }
        for (BodySegment part : BodySegment.values()) {
            names.add("lost through " + name(part) + " [W]");
        }
        names.addAll(List.of(
                "lost in all [W]",
                "shortfall heat [kJ]",
                "paid by heat made [kJ]",
                "paid by shell [kJ]",
                "paid by core [kJ]",
                "core-heat deficit, signed [kJ]",
                "let go to clock and sleep [kJ]",
                "demand [1]",
                "core [degC]",
                "rectal [degC]",
                "mean skin [degC]",
                "hand [degC]",
                "foot [degC]",
                "sleep [1]",
                "shivering [W]",
                "liquid and ice in what is worn [kg]",
                "core-heat deficit, signed, 10 % of the model's draws below [kJ]",
                "core-heat deficit, signed, 90 % of the model's draws below [kJ]"));
        return names;
    }

    private static List<String> cells(HourRow row, double water, @Nullable Band band) {
        List<String> cells = new ArrayList<>();
        cells.add(Figures.exact(row.time() / 3600));
        cells.add(Figures.clock(row.clock()));
        add(cells, row.airCelsius(), row.windAtBody(), row.heatMade());
        add(cells, row.lostByWay());
        add(cells, row.lostByPart());
        add(
                cells,
                row.losses(),
                row.shortfall() / 1e3,
                row.paidByHeatMade() / 1e3,
                row.paidByShell() / 1e3,
                row.paidByCore() / 1e3,
                row.coreHeatDeficit() / 1e3,
                row.letGo() / 1e3,
                row.demand(),
                row.coreCelsius(),
                row.rectalCelsius(),
                row.meanSkin(),
                row.hand(),
                row.foot(),
                row.sleep(),
                row.shivering(),
                water,
                band == null ? Double.NaN : band.deficitAt(row.time()).low() / 1e3,
                band == null ? Double.NaN : band.deficitAt(row.time()).high() / 1e3);
        return cells;
    }

    private static void add(List<String> cells, double... values) {
        for (double value : values) {
            cells.add(Figures.exact(value));
        }
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
