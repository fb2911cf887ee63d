package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** A table of ours, written for programs, as people read it: in their units, with the digits it is worth. Columns without a figure are left out. */
final class DataTable {
    /** A page is read by people; the rest stands in the file. */
    static final int MOST_ROWS = 60;

    private static final Pattern UNIT = Pattern.compile(" \\[([^]]*)]$");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?(E[-+]?[0-9]+)?");
    private static final String OUTCOME = "outcome";
    private static final int DIGITS = 3;

    private DataTable() {}

    /** One column: its head and how its numbers are shown. */
    private record Column(
            String head, boolean hasUnit, @Nullable Measure measure, double size, Units units) {
        static Column of(String head, Units units) {
            Matcher unit = UNIT.matcher(head);
            if (!unit.find()) {
                return new Column(head, false, null, 1, units);
            }
            String name = head.substring(0, unit.start());
            return switch (unit.group(1)) {
                case "1" -> new Column(name, true, null, 1, units);
                case "degC" -> of(name, Measure.TEMPERATURE, 1, units);
                case "K" -> of(name, Measure.DIFFERENCE, 1, units);
                case "m/s" -> of(name, Measure.WIND, 1, units);
                case "W" -> of(name, Measure.POWER, 1, units);
                case "kJ" -> of(name, Measure.HEAT, 1e3, units);
                case "kJ/m2" -> of(name, Measure.HEAT_PER_AREA, 1e3, units);
                case "kJ/g" -> of(name, Measure.HEAT_PER_GRAM, 1e6, units);
                case "g" -> of(name, Measure.PIECE, 1e-3, units);
                case "kg" -> of(name, Measure.LOAD, 1, units);
                case "degF" -> new Column(name + " [°F]", true, null, 1, units);
                default -> new Column(head, true, null, 1, units);
            };
        }

        private static Column of(String name, Measure measure, double size, Units units) {
            return new Column(name + " [" + units.unit(measure) + "]", true, measure, size, units);
        }

        String shown(String cell) {
            if (!hasUnit || !NUMBER.matcher(cell).matches()) {
                return cell.isEmpty()
                        ? Figures.NONE
                        : Wording.name(head.startsWith(OUTCOME) ? cell.replace('-', ' ') : cell);
            }
            double value = Double.parseDouble(cell);
            return measure == null ? Figures.significant(value, DIGITS) : units.number(measure, size * value);
        }
    }

    /**
     * The table.
     *
     * @param caption what it shows
     * @param file    its name
     * @param csv     its text, as {@link HourCsv} has it: a head with units in square brackets, rows, remarks
     */
    static Page.Grid of(String caption, String file, String csv, Units units) {
        try (CSVParser parser = CSVParser.parse(csv, HourCsv.FORMAT)) {
            List<CSVRecord> records = parser.getRecords();
            List<Column> columns = new ArrayList<>();
            records.get(0).forEach(head -> columns.add(Column.of(head, units)));
            List<CSVRecord> data = records.subList(1, Math.min(records.size(), 1 + MOST_ROWS));
            List<Integer> told = IntStream.range(0, columns.size())
                    .filter(i -> data.stream().anyMatch(row -> !row.get(i).isEmpty()))
                    .boxed()
                    .toList();
            List<List<String>> rows = data.stream()
                    .map(row -> told.stream()
                            .map(i -> columns.get(i).shown(row.get(i)))
                            .toList())
                    .toList();
            int left = records.size() - 1 - rows.size();
            return new Page.Grid(
                    left == 0 ? caption : Prose.text("html.table.more", caption, String.valueOf(left), file),
                    told.stream().map(i -> columns.get(i).head()).toList(),
                    rows);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a text does not fail
        }
    }
}
