package longnight.scenario;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Files that many readings share: each is read and parsed once. Threads may share it; what it hands out is not to be changed. */
final class Shelf {
    private final Map<Path, Object> parsed = new HashMap<>();
    private final Map<Path, String> digests = new TreeMap<>();

    Value yaml(Value.Text name) {
        return yaml(TextFile.path(name), name.place());
    }

    Value yaml(Path path, Place named) {
        return get(Value.class, path, named, YamlFile::read);
    }

    WardrobeReader.Wardrobe wardrobe(Value.Text name) {
        return get(WardrobeReader.Wardrobe.class, TextFile.path(name), name.place(), WardrobeReader::read);
    }

    CsvFile csv(Value.Text name) {
        return get(CsvFile.class, TextFile.path(name), name.place(), CsvFile::read);
    }

    EpwRecord record(Value.Text name) {
        return get(EpwRecord.class, TextFile.path(name), name.place(), EpwRecord::read);
    }

    private synchronized <T> T get(Class<T> type, Path path, Place named, Function<TextFile, T> parser) {
        Path key = path.toAbsolutePath().normalize();
        Object known = parsed.get(key);
        if (type.isInstance(known)) {
            return type.cast(known);
        }
        TextFile file = TextFile.read(path, named);
        T fresh = parser.apply(file);
        parsed.put(key, fresh);
        digests.put(key, digest(file.text()));
        return fresh;
    }

    /**
     * One digest of everything that was read: of each file its text, and where it lies as seen from a folder.
     *
     * @param folder from which the files are told apart, so that a copy of all of them elsewhere has the same digest
     */
    synchronized String digest(Path folder) {
        Path from = folder.toAbsolutePath().normalize();
        Map<String, String> files = new TreeMap<>();
        digests.forEach((path, digest) -> files.put(relative(from, path), digest));
        StringBuilder all = new StringBuilder();
        files.forEach(
                (name, digest) -> all.append(name).append('\n').append(digest).append('\n'));
        return digest(all.toString());
    }

    private static String relative(Path from, Path path) {
        Path root = from.getRoot();
        Path seen = root != null && root.equals(path.getRoot()) ? from.relativize(path) : path;
        return seen.toString().replace('\\', '/');
    }

    static String digest(String text) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes);
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException(fault); // every Java has it
        }
    }
}
