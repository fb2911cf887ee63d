package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longnight.night.Caution;
import longnight.night.NightResult;

/**
 * The rows of a grid as they are worked out, kept beside the table to come, so that a run that is killed goes on where it was. Each row
 * is one line with a checksum, only ever appended; a last line that is torn or fails its checksum is cut off, and its row worked out anew.
 * In memory is no more than where in the file each row stands.
 */
public final class GridJournal implements AutoCloseable {
    private static final String FORMAT = "longnight-grid-journal/1";

    private final String digest;
    private final String program;
    private final int rows;
    private final Part part;
    private final JournalFile file;
    private final Set<Caution> cautions = EnumSet.of(Caution.PLANNING_AID);
    /** Where the row stands [byte]; -1 where it is still to be worked out. */
    private final long[] place;

    private int done;

    private GridJournal(Path path, String digest, String program, int rows, Part part) throws IOException {
        this.digest = digest;
        this.program = program;
        this.rows = rows;
        this.part = part;
        place = new long[rows];
        Arrays.fill(place, -1);
        file = new JournalFile(path, FORMAT, head(), this::take);
    }

    /**
     * Opens the journal of a table, or begins one.
     *
     * @param table   the table to come; the journal lies beside it
     * @param digest  of all that is asked
     * @param program that answers
     * @param rows    of the whole grid
     * @param part    of it that is wanted
     * @throws DataFault when a journal lies there that belongs to other questions, or another run is at it
     */
    public static GridJournal open(Path table, String digest, String program, int rows, Part part) throws IOException {
        return new GridJournal(beside(table), digest, program, rows, part);
    }

    /** Where the journal of a table lies. */
    public static Path beside(Path table) {
        return table.resolveSibling(table.getFileName() + ".journal");
    }

    /** Whether a row is still to be worked out. */
    public synchronized boolean lacks(int row) {
        return part.has(row) && place[row] < 0;
    }

    /** How many rows are there. */
    public synchronized int done() {
        return done;
    }

    /** How many rows there will be. */
    public int wanted() {
        return part.share(rows);
    }

    /**
     * Writes a row down.
     *
     * @param files of kit, night and person as the grid names them
     */
    public synchronized void add(int row, List<String> files, NightResult result) {
        String codes = result.cautions().stream().map(Summary::word).collect(Collectors.joining(","));
        String line = row + "\t" + codes + "\t" + GridCsv.row(files, result);
        try {
            place[row] = file.append(line);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        done++;
        cautions.addAll(result.cautions());
    }

    /** Writes the table, whole or not at all, and takes the journal away. Every row must be there. */
    public void finish(Path table) throws IOException {
        Outputs.write(table, out -> {
            out.append(GridCsv.header()).append('\n');
            GridCsv.Check check = new GridCsv.Check();
            for (int row = 0; row < rows; row++) {
                if (part.has(row)) {
                    String line = row(row);
                    check.add(line);
                    out.append(line).append('\n');
                }
            }
            GridCsv.writeEnd(out, new GridCsv.Stamp(digest, program, part, rows, check.toString(), cautions));
        });
        file.delete();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private String head() {
        return "inputs=" + digest + " program=" + program + " part=" + part + " rows=" + rows + " columns="
                + JournalFile.check(GridCsv.header());
    }

    /** Takes a line for a row; false when it is none. */
    private boolean take(String line, long at) {
        String[] fields = line.split("\t", -1);
        if (fields.length < 3) {
            return false;
        }
        int row = Integer.parseInt(fields[0]);
        if (place[row] < 0) {
            done++;
        }
        place[row] = at;
        cautions.addAll(GridCsv.decoded(fields[1]));
        return true;
    }

    private synchronized String row(int row) throws IOException {
        String line = file.line(place[row]);
        return line.substring(line.indexOf('\t', line.indexOf('\t') + 1) + 1);
    }
}
