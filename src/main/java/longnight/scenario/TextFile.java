package longnight.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.quantity.Spelling;

/**
 * A file's text. Whatever stops us from having it is told where the file was named: in another file, or nowhere but on
 * the command line.
 *
 * @param path where it lies
 * @param text its characters, without a byte order mark
 */
record TextFile(Path path, String text) {
    private static final long LARGEST = 64L << 20; // bytes

    /** Stands before the names of files that come with the program. */
    static final Path SHIPPED = Path.of("(shipped)");

    /**
     * Reads a file.
     *
     * @param path  the file
     * @param named where it was named
     */
    static TextFile read(Path path, Place named) {
        if (path.startsWith(SHIPPED)) {
            return shipped(path, named);
        }
        if (Files.isDirectory(path)) {
            Path night = path.resolve("night.yaml");
            throw named.fault(
                    "\"" + path + "\" is a directory",
                    "name a file",
                    Files.isRegularFile(night) ? "did you mean \"" + night + "\"?" : "");
        }
        byte[] bytes;
        try {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                throw named.fault("\"" + path + "\" is no ordinary file", "name a file");
            }
            if (Files.exists(path) && Files.size(path) > LARGEST) {
                throw named.fault("\"" + path + "\" is larger than 64 MiB", "name a smaller file");
            }
            bytes = Files.readAllBytes(path);
        } catch (NoSuchFileException fault) {
            throw named.fault("there is no file \"" + path + "\"", "name a file that exists", nearby(path));
        } catch (AccessDeniedException fault) {
            throw named.fault("\"" + path + "\" may not be read", "name a file that you may read");
        } catch (FileSystemException fault) {
            throw named.fault("\"" + path + "\" cannot be read (" + fault.getReason() + ")", "name a readable file");
        } catch (IOException fault) {
            throw new UncheckedIOException("cannot read " + path, fault);
        }
        return new TextFile(path, decoded(path, bytes));
    }

    private static TextFile shipped(Path path, Place named) {
        String name = SHIPPED.relativize(path.normalize()).toString().replace('\\', '/');
        try (InputStream in = TextFile.class.getResourceAsStream("/longnight/proof/" + name)) {
            if (in == null) {
                throw named.fault("there is no file \"" + path + "\"", "name a file that exists");
            }
            return new TextFile(path, decoded(path, in.readAllBytes()));
        } catch (IOException fault) {
            throw new UncheckedIOException("cannot read " + path, fault);
        }
    }

    /** Reads the file whose name was written in another; the name counts from that one's folder. */
    static TextFile read(Value.Text name) {
        return read(path(name), name.place());
    }

    /** The file whose name was written in another; the name counts from that one's folder. */
    static Path path(Value.Text name) {
        try {
            return plain(name.place().file().resolveSibling(name.text()));
        } catch (InvalidPathException fault) {
            throw name.place().fault("\"" + name.text() + "\" is no file's name", "name a file");
        }
    }

    /** Without steps up and down again, where that is the same file: behind a link it may be another. */
    private static Path plain(Path file) {
        Path straight = file.normalize();
        try {
            boolean same = Files.exists(file) ? Files.isSameFile(file, straight) : !Files.exists(straight);
            return same ? straight : file;
        } catch (IOException fault) {
            return file; // reading it will tell
        }
    }

    private static String decoded(Path path, byte[] bytes) {
        if (bytes.length >= 2
                && (bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff
                        || bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe)) {
            return new String(
                    bytes, StandardCharsets.UTF_16); // as some spreadsheets save text; its mark says in which order
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int broken = bytes[in.position()] & 0xff;
            throw new TextFile(path, text)
                    .place(text.length())
                    .fault(
                            String.format("byte 0x%02x is not UTF-8 text", broken),
                            "save the file as UTF-8"
                                    + (WardrobeReader.isCsv(path) ? ", in a spreadsheet as \"CSV UTF-8\"" : ""));
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    /** The place of a character, given by its index in the text. */
    Place place(int index) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < index; i++) {
            char c = text.charAt(i);
            boolean lineEnds = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            if (lineEnds) {
                line++;
                start = i + 1;
            }
        }
        return new Place(path, line, 1 + text.codePointCount(start, index));
    }

    private static String nearby(Path path) {
        Path name = path.getFileName();
        Path folder = path.toAbsolutePath().getParent();
        if (name == null || folder == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> entries = Files.list(folder)) {
            List<String> names =
                    entries.map(Path::getFileName).map(String::valueOf).sorted().toList();
            return Spelling.suggestion(name.toString(), names);
        } catch (IOException fault) {
            return "";
        }
    }
}
