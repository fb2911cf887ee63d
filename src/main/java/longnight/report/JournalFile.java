package longnight.report;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * Lines that are only ever appended, each with a checksum, below a head that says what they answer. A last line that is torn or fails its
 * checksum is cut off when the file is opened again.
 */
final class JournalFile implements AutoCloseable {
    private final Path path;
    private final String format;
    private final String head;
    private final RandomAccessFile file;

    /** Reads what is there. */
    interface Taker {
        /**
         * Takes a line.
         *
         * @param line without its checksum
         * @param at   where it begins [byte]
         * @return false when it cannot be one
         */
        boolean take(String line, long at);
    }

    /**
     * Opens a journal, or begins one.
     *
     * @param format with which its head begins
     * @param of     the rest of the head: everything on which the lines depend
     * @throws DataFault when a journal lies there that belongs to other questions, or another run is at it
     */
    JournalFile(Path path, String format, String of, Taker taker) throws IOException {
        this.path = path;
        this.format = format;
        head = format + " " + of;
        file = new RandomAccessFile(path.toFile(), "rw");
        try {
            lock();
            load(taker);
        } catch (IOException | RuntimeException fault) {
            file.close();
            throw fault;
        }
    }

    /** Writes a line down; returns where it begins [byte]. */
    long append(String line) throws IOException {
        long end = file.length();
        file.seek(end);
        file.write(checked(line).getBytes(StandardCharsets.UTF_8));
        file.getChannel().force(false);
        return end;
    }

    /** The line that begins at a place, without its checksum. */
    String line(long at) throws IOException {
        String line = new String(next(at), StandardCharsets.UTF_8);
        return line.substring(0, line.lastIndexOf('\t'));
    }

    /** Takes the journal away. */
    void delete() throws IOException {
        close();
        Files.deleteIfExists(path);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private static String checked(String line) {
        return line + "\t" + check(line) + "\n";
    }

    static String check(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", sum.getValue());
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

    /** Reads what is there and cuts off what is torn. */
    private void load(Taker taker) throws IOException {
        long end = 0;
        byte[] line = next(0);
        if (line.length > 0) {
            String found = new String(line, StandardCharsets.UTF_8);
            if (found.equals(checked(head))) {
                end = line.length;
            } else if (found.endsWith("\n") || !checked(head).startsWith(found)) { // not just torn
                throw new DataFault(Prose.text(
                        found.startsWith(format) ? "fault.journal.other" : "fault.journal.foreign", path.toString()));
            }
        }
        if (end == 0) {
            file.setLength(0);
            file.write(checked(head).getBytes(StandardCharsets.UTF_8));
            return;
        }
        int number = 1;
        for (line = next(end); line.length > 0; line = next(end)) {
            number++;
            if (!take(new String(line, StandardCharsets.UTF_8), end, taker)) {
                if (next(end + line.length).length > 0) {
                    throw new DataFault(Prose.text("fault.journal.damaged", path.toString(), String.valueOf(number)));
                }
                break;
            }
            end += line.length;
        }
        file.setLength(end);
    }

    private static boolean take(String line, long at, Taker taker) {
        int body = line.lastIndexOf('\t');
        return body >= 0 && line.equals(checked(line.substring(0, body))) && taker.take(line.substring(0, body), at);
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
}
