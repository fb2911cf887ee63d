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

    /** {@link #text(NightResult, Units)} in metric units. */
    static String text(NightResult result) {
        return text(result, null, Units.METRIC);
    }

    static String text(NightResult result, @Nullable Band band, Units units) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(header(units));
            for (HourRow row : result.hours()) {
                printer.printRecord(cells(row, Account.wornAt(result, row.time()), band, units));
            }
            printer.printComment(Wording.who(result));
            printer.printComment((Wording.verdict(result, units) + " " + Wording.atRisk(result, units)).strip());
            if (band != null) {
                printer.printComment(Wording.band(result, band, units));
            }
            for (Caution caution : result.cautions()) {
                printer.printComment(Wording.fullText(caution, units));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }

    private static List<String> header(Units units) {
        String degrees = unit(units, Measure.TEMPERATURE);
        String heat = unit(units, Measure.HEAT);
        List<String> names = new ArrayList<>(List.of(
                "time since dusk [h]",
                "clock [HH:MM]",
                "air" + degrees,
                "wind at the body" + unit(units, Measure.WIND),
                "heat made [W]"));
        for (Way way : Way.values()) {
            names.add("lost by " + name(way) + " [W]");
        }
        for (BodySegment part : BodySegment.values()) {
            names.add("lost through " + name(part) + " [W]");
        }
        names.addAll(List.of(
                "lost in all [W]",
                "shortfall heat" + heat,
                "paid by heat made" + heat,
                "paid by shell" + heat,
                "paid by core" + heat,
                "core-heat deficit, signed" + heat,
                "let go to clock and sleep" + heat,
                "demand [1]",
                "core" + degrees,
                "rectal" + degrees,
                "mean skin" + degrees,
                "hand" + degrees,
                "foot" + degrees,
                "sleep [1]",
                "shivering [W]",
                "liquid and ice in what is worn" + unit(units, Measure.LOAD),
                "core-heat deficit, signed, 10 % of the model's draws below" + heat,
                "core-heat deficit, signed, 90 % of the model's draws below" + heat));
        return names;
    }

    private static List<String> cells(HourRow row, double water, @Nullable Band band, Units units) {
        List<String> cells = new ArrayList<>();
        cells.add(Figures.exact(row.time() / 3600));
        cells.add(Figures.clock(row.clock()));
        add(
                cells,
                units.value(Measure.TEMPERATURE, row.airCelsius()),
                units.value(Measure.WIND, row.windAtBody()),
                row.heatMade());
        add(cells, row.lostByWay());
        add(cells, row.lostByPart());
        add(
                cells,
                row.losses(),
                units.value(Measure.HEAT, row.shortfall()),
                units.value(Measure.HEAT, row.paidByHeatMade()),
                units.value(Measure.HEAT, row.paidByShell()),
                units.value(Measure.HEAT, row.paidByCore()),
                units.value(Measure.HEAT, row.coreHeatDeficit()),
                units.value(Measure.HEAT, row.letGo()),
                row.demand(),
                units.value(Measure.TEMPERATURE, row.coreCelsius()),
                units.value(Measure.TEMPERATURE, row.rectalCelsius()),
                units.value(Measure.TEMPERATURE, row.meanSkin()),
                units.value(Measure.TEMPERATURE, row.hand()),
                units.value(Measure.TEMPERATURE, row.foot()),
                row.sleep(),
                row.shivering(),
                units.value(Measure.LOAD, water),
                band == null
                        ? Double.NaN
                        : units.value(Measure.HEAT, band.deficitAt(row.time()).low()),
                band == null
                        ? Double.NaN
                        : units.value(Measure.HEAT, band.deficitAt(row.time()).high()));
        return cells;
    }

    private static void add(List<String> cells, double... values) {
        for (double value : values) {
            cells.add(Figures.exact(value));
        }
    }

    /** " [degC]", in plain letters. */
    static String unit(Units units, Measure measure) {
        return " [" + units.unit(measure).replace("°", "deg") + "]";
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
