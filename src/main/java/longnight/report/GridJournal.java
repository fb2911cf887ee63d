package longnight.report;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import longnight.night.Caution;
import longnight.night.NightResult;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a grid as they are worked out, kept beside the table to come, so that a run that is killed goes on where it was. Each row
 * is one line with a checksum, only ever appended; a last line that is torn or fails its checksum is cut off, and its row worked out anew.
 * In memory is no more than where in the file each row stands.
 */
public final class GridJournal implements AutoCloseable {
    private static final String FORMAT = "longnight-grid-journal/1";

    private final Path path;
    private final String digest;
    private final String program;
    private final int rows;
    private final Part part;
    private final RandomAccessFile file;
    private final Set<Caution> cautions = EnumSet.of(Caution.PLANNING_AID);
    /** Where the row stands [byte]; -1 where it is still to be worked out. */
    private final long[] place;

    private int done;

    private GridJournal(Path path, String digest, String program, int rows, Part part) throws IOException {
        this.path = path;
        this.digest = digest;
        this.program = program;
        this.rows = rows;
        this.part = part;
        place = new long[rows];
        Arrays.fill(place, -1);
        file = new RandomAccessFile(path.toFile(), "rw");
        try {
            lock();
            load();
        } catch (IOException | RuntimeException fault) {
            file.close();
            throw fault;
        }
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
            long end = file.length();
            file.seek(end);
            file.write((line + "\t" + check(line) + "\n").getBytes(StandardCharsets.UTF_8));
            file.getChannel().force(false);
            place[row] = end;
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
        close();
        Files.deleteIfExists(path);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private void lock() throws IOException {
        @Nullable FileLock lock;
        try {
            lock = file.getChannel().tryLock();
        } catch (OverlappingFileLockException fault) {
            lock = null;
        }
        if (lock == null) {
            throw new DataFault(Prose.text("fault.journal.busy", path.toString()));
        }
    }

    private String head() {
        String head = FORMAT + " inputs=" + digest + " program=" + program + " part=" + part + " rows=" + rows
                + " columns=" + check(GridCsv.header());
        return head + "\t" + check(head);
    }

    /** Reads what is there and cuts off what is torn. */
    private void load() throws IOException {
        long end = 0;
        byte[] line = next(0);
        if (line.length > 0) {
            String head = new String(line, StandardCharsets.UTF_8);
            if (!head.equals(head() + "\n")) {
                boolean torn = !head.endsWith("\n") && (head() + "\n").startsWith(head);
                if (!torn) {
                    throw new DataFault(Prose.text(
                            head.startsWith(FORMAT) ? "fault.journal.other" : "fault.journal.foreign",
                            path.toString()));
                }
            } else {
                end = line.length;
            }
        }
        if (end == 0) {
            file.setLength(0);
            file.write((head() + "\n").getBytes(StandardCharsets.UTF_8));
            return;
        }
        int number = 1;
        for (line = next(end); line.length > 0; line = next(end)) {
            number++;
            if (!take(new String(line, StandardCharsets.UTF_8), end)) {
                if (next(end + line.length).length > 0) {
                    throw new DataFault(Prose.text("fault.journal.damaged", path.toString(), String.valueOf(number)));
                }
                break;
            }
            end += line.length;
        }
        file.setLength(end);
    }

    /** Takes a line for a row; false when it is none. */
    private boolean take(String line, long at) {
        if (!line.endsWith("\n")) {
            return false;
        }
        String[] fields = line.substring(0, line.length() - 1).split("\t", -1);
        if (fields.length < 4) {
            return false;
        }
        int body = line.lastIndexOf('\t');
        if (!check(line.substring(0, body)).equals(fields[fields.length - 1])) {
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

    /** The line that begins at a place, with its end; short of one at the end of the file. */
    private byte[] next(long at) throws IOException {
        file.seek(at);
        byte[] buffer = new byte[4096];
        int length = 0;
        while (true) {
            int read = file.read(buffer, length, buffer.length - length);
            for (int i = length; i < length + read; i++) {
                if (buffer[i] == '\n') {
                    return Arrays.copyOf(buffer, i + 1);
                }
            }
            if (read < 0) {
                return Arrays.copyOf(buffer, length);
            }
            length += read;
            if (length == buffer.length) {
                buffer = Arrays.copyOf(buffer, 2 * length);
            }
        }
    }

    private synchronized String row(int row) throws IOException {
        String line = new String(next(place[row]), StandardCharsets.UTF_8);
        int first = line.indexOf('\t', line.indexOf('\t') + 1);
        return line.substring(first + 1, line.lastIndexOf('\t'));
    }

    private static String check(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", sum.getValue());
    }
}
