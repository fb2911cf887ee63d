package longnight.scenario;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file as a spreadsheet saves it, as sections with places: the first row names the keys, optionally with a unit
 * as in "mass [g]"; capitals and blanks in a key do not count ("Fill Power" is fill-power); an empty cell is a key left out, empty
 * rows and columns are nothing. Comma, semicolon or tab, told by the first row or by a first line {@code sep=;}; quotes; lines with #
 * are remarks.
 *
 * <p>Where semicolons or tabs part the cells, a comma may be the decimal sign. It is taken for one when some number of the file can
 * be read in no other way ("0,15") and none has a decimal point; else "1,250" stays as it is, and is refused as a quantity.
 *
 * @param header where the first row begins
 * @param rows   one section per row
 */
record CsvFile(Place header, List<Value.Entries> rows) {
    private static final Pattern SEPARATOR =
            Pattern.compile("\\s*\"?sep=([,;\\t])\"?[^\\n\\r]*(\\r\\n|\\r|\\n)?.*", Pattern.DOTALL);
    private static final Pattern DECIMAL_COMMA = Pattern.compile(
            "[+\\-\u2212]?(0|[0-9]+(?=,[0-9]{1,2}(?![0-9]))|[0-9]+(?=,[0-9]{4})|[0-9]{4,}),[0-9]+(?![0-9,]).*");
    private static final Pattern DECIMAL_POINT = Pattern.compile("[+\\-\u2212]?[0-9]*[.][0-9]+.*");
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*[\\[(](.*)[\\])]");

    static CsvFile read(TextFile file) {
        char delimiter = delimiter(file.text());
        List<List<Value.Text>> cells = cells(file, delimiter);
        boolean comma = delimiter != ',' && decimalComma(cells);
        if (cells.isEmpty()) {
            throw new Place(file.path(), 1, 1).fault("the file is empty", "write a first row that names the columns");
        }
        List<Value.Text> keys = new ArrayList<>();
        for (Value.Text cell : cells.get(0)) {
            Matcher parts = WITH_UNIT.matcher(cell.text());
            keys.add(
                    parts.matches()
                            ? new Value.Text(
                                    cell.place(),
                                    key(parts.group(1)),
                                    parts.group(2).strip())
                            : new Value.Text(cell.place(), key(cell.text()), ""));
        }
        List<Value.Entries> rows = new ArrayList<>();
        for (List<Value.Text> row : cells.subList(1, cells.size())) {
            List<Value.Entry> entries = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                Value.Text cell = row.get(i);
                if (cell.text().isEmpty()) {
                    continue;
                }
                if (i >= keys.size() || keys.get(i).text().isEmpty()) {
                    throw cell.place()
                            .fault(
                                    "\"" + cell.text() + "\" in a column without a name",
                                    "name the column in the first row");
                }
                Value.Text key = keys.get(i);
                entries.add(new Value.Entry(key, new Value.Text(cell.place(), cell.text(), key.unit(), comma)));
            }
            if (!entries.isEmpty()) {
                rows.add(new Value.Entries(row.get(0).place(), entries));
            }
        }
        return new CsvFile(keys.get(0).place(), rows);
    }

    /** A key as the tables write it. */
    private static String key(String header) {
        return header.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }

    private static boolean decimalComma(List<List<Value.Text>> cells) {
        List<String> all =
                cells.stream().flatMap(List::stream).map(Value.Text::text).toList();
        return all.stream().anyMatch(cell -> DECIMAL_COMMA.matcher(cell).matches())
                && all.stream().noneMatch(cell -> DECIMAL_POINT.matcher(cell).matches());
    }

    private static List<List<Value.Text>> cells(TextFile file, char delimiter) {
        String text = file.text();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .get();
        List<List<Value.Text>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            try {
                for (CSVRecord record : parser) {
                    if (record.getCharacterPosition() == 0
                            && SEPARATOR.matcher(text).matches()) {
                        continue;
                    }
                    List<Value.Text> row = new ArrayList<>();
                    int at = startOf(text, (int) record.getCharacterPosition());
                    for (String cell : record) {
                        row.add(new Value.Text(file.place(inside(text, at)), plain(cell), ""));
                        at = next(text, at, delimiter);
                    }
                    if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
                        rows.add(row);
                    }
                }
            } catch (UncheckedIOException | IllegalStateException fault) {
                throw new Place(file.path(), (int) Math.max(1, parser.getCurrentLineNumber()), 1)
                        .fault(
                                "a row that cannot be taken apart",
                                "close every quote; a quote inside quotes is written twice");
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return rows;
    }

    /** Without the blanks that nobody sees, at its ends. */
    private static String plain(String cell) {
        return cell.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    }

    /** The one of comma, semicolon and tab that the first row has most of, outside quotes. */
    private static char delimiter(String text) {
        Matcher said = SEPARATOR.matcher(text);
        if (said.matches()) {
            return said.group(1).charAt(0);
        }
        int[] count = new int[3];
        boolean quoted = false;
        for (int i = startOf(text, 0); i < text.length(); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (!quoted && (c == '\n' || c == '\r')) {
                break;
            }
            int kind = quoted ? -1 : ",;\t".indexOf(c);
            if (kind >= 0) {
                count[kind]++;
            }
        }
        return count[1] > count[0] && count[1] >= count[2] ? ';' : count[2] > count[0] ? '\t' : ',';
    }

    /** Skips blank lines and remarks. */
    private static int startOf(String text, int from) {
        int at = from;
        while (at < text.length()) {
            int lineEnd = at;
            while (lineEnd < text.length() && text.charAt(lineEnd) != '\n' && text.charAt(lineEnd) != '\r') {
                lineEnd++;
            }
            String line = text.substring(at, lineEnd);
            if (!line.isEmpty() && !line.startsWith("#")) {
                return at;
            }
            at = lineEnd + 1;
        }
        return Math.min(from, text.length());
    }

    /** From the start of a cell to its first character, past blanks. */
    private static int inside(String text, int at) {
        int i = at;
        while (i < text.length() && text.charAt(i) == ' ') {
            i++;
        }
        return i;
    }

    private static int next(String text, int at, char delimiter) {
        int i = inside(text, at);
        boolean quotes = i < text.length() && text.charAt(i) == '"'; // elsewhere a quote is a sign like any other
        boolean quoted = false;
        while (i < text.length()) {
            char c = text.charAt(i);
            quoted ^= quotes && c == '"';
            if (!quoted && c == delimiter) {
                return i + 1;
            }
            i++;
        }
        return i;
    }
}
