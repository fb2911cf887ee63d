package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import longnight.night.Caution;
import longnight.night.NightResult;
import org.apache.commons.csv.CSVPrinter;

/**
 * A grid as comma-separated values: one row for each combination, kit by kit, then night by night, then person by person; the files,
 * the names in them, and the columns of {@link Summary}. Comment lines follow the last row: one that says which grid and which part of
 * it this is, and every caution that any row calls for, in full.
 */
public final class GridCsv {
    private GridCsv() {}

    /** What a table of a grid ends with, so that parts find each other. */
    record Stamp(String digest, String program, Part part, int rows, String check, Set<Caution> cautions) {
        private static final String FORMAT = "longnight-grid/1";

        /** As a line. */
        String line() {
            return "# " + FORMAT + " inputs=" + digest + " program=" + program + " part=" + part + " rows="
                    + part.share(rows) + "/" + rows + " check=" + check + " cautions="
                    + cautions.stream().map(Summary::word).collect(Collectors.joining(","));
        }

        static boolean isOne(String line) {
            return line.startsWith("# " + FORMAT + " ");
        }

        /**
         * From its line.
         *
         * @throws IllegalArgumentException when it is none of ours
         */
        static Stamp parse(String line) {
            List<String> values = new ArrayList<>();
            for (String word : line.split(" ")) {
                values.add(word.substring(word.indexOf('=') + 1));
            }
            if (values.size() != 8) {
                throw new IllegalArgumentException(line);
            }
            Part part = Part.parse(values.get(4));
            String[] rows = values.get(5).split("/");
            Stamp stamp = new Stamp(
                    values.get(2),
                    values.get(3),
                    part,
                    Integer.parseInt(rows[rows.length - 1]),
                    values.get(6),
                    decoded(values.get(7)));
            if (!stamp.line().equals(line)) {
                throw new IllegalArgumentException(line);
            }
            return stamp;
        }
    }

    /** Digest of the rows of a table as they come. */
    static final class Check {
        private final CRC32 sum = new CRC32();

        void add(String line) {
            sum.update((line + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }

        @Override
        public String toString() {
            return String.format(java.util.Locale.ROOT, "%08x", sum.getValue());
        }
    }

    static Set<Caution> decoded(String words) {
        EnumSet<Caution> all = EnumSet.noneOf(Caution.class);
        Stream.of(words.split(","))
                .filter(word -> !word.isEmpty())
                .map(word ->
                        Caution.valueOf(word.toUpperCase(java.util.Locale.ROOT).replace('-', '_')))
                .forEach(all::add);
        return all;
    }

    /** The first line, without its end. */
    static String header() {
        List<String> names =
                new ArrayList<>(List.of("kit file", "night file", "person file", "kit", "night", "person"));
        Summary.COLUMNS.forEach(column -> names.add(column.header()));
        return line(names);
    }

    /**
     * A row, without its end.
     *
     * @param files of kit, night and person as the grid names them
     */
    static String row(List<String> files, NightResult result) {
        List<String> cells = new ArrayList<>(files);
        cells.add(Wording.clean(result.scenario().kitName()));
        cells.add(Wording.clean(result.scenario().nightName()));
        cells.add(Wording.clean(result.scenario().person().name()));
        Summary.COLUMNS.forEach(column -> cells.add(column.cell(result)));
        return line(cells);
    }

    /** All that follows the last row. */
    static void writeEnd(Appendable to, Stamp stamp) throws IOException {
        to.append(stamp.line()).append('\n');
        for (Caution caution : stamp.cautions()) {
            for (String line : Wording.fullText(caution).split("\n")) {
                to.append("# ").append(line).append('\n');
            }
        }
    }

    private static String line(List<String> cells) {
        StringBuilder line = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(line, HourCsv.FORMAT)) {
            printer.printRecord(cells);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return line.substring(0, line.length() - 1);
    }
}
