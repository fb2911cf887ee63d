package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import longnight.night.NightResult;
import org.jspecify.annotations.Nullable;

/**
 * The folder of results. Everything is made in memory first, written into a folder beside the last ones under a name of
 * its own, and only then moved into place; if a move fails the earlier files come back. Files that are not ours stay as
 * they are.
 */
public final class Outputs {
    /** Every file this room may put into a folder of results. */
    static final List<String> FILES = List.of(
            Charts.DEFICIT + ".png",
            Charts.DEFICIT + ".svg",
            Charts.HEAT + ".png",
            Charts.HEAT + ".svg",
            Charts.WATER + ".png",
            Charts.WATER + ".svg",
            HourCsv.FILE,
            ResultJson.FILE,
            Notes.FILE);

    private static final List<Chart> CHARTS = List.of(
            new Chart(Charts.DEFICIT, Charts::coreHeatDeficit), new Chart(Charts.HEAT, Charts::whereTheHeatGoes));

    private static final List<Chart> WET =
            List.of(CHARTS.get(0), CHARTS.get(1), new Chart(Charts.WATER, Charts::waterByLayer));

    private static final String EARLIER = "earlier-";

    private Outputs() {}

    /** A picture to be: file name without ending, and how it is drawn. */
    record Chart(String name, Function<NightResult, Charts.Picture> drawing) {}

    /**
     * What was written.
     *
     * @param files names in the folder
     * @param note  why pictures are missing; null when they are there
     */
    public record Written(List<String> files, @Nullable String note) {}

    /**
     * Refuses a folder that cannot take results, before any work is done.
     *
     * @throws UnwritableException when it, or the nearest folder above it that exists, is no folder or not writable
     */
    public static void requireFolder(Path folder) throws UnwritableException {
        Path there = folder.toAbsolutePath().normalize();
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            throw new UnwritableException(Prose.text("fault.not-a-folder", there.toString()));
        }
        if (!Files.isWritable(there)) {
            throw new UnwritableException(Prose.text("fault.not-writable", there.toString()));
        }
        for (String name : FILES) {
            if (Files.isDirectory(folder.resolve(name))) {
                throw new UnwritableException(
                        Prose.text("fault.is-a-folder", folder.resolve(name).toString()));
            }
        }
    }

    /**
     * Refuses a place where no file can be written, before any work is done.
     *
     * @throws UnwritableException when it is a folder, or its folder is missing or not writable
     */
    public static void requireFile(Path file) throws UnwritableException {
        Path there = file.toAbsolutePath().normalize();
        Path folder = there.getParent();
        if (Files.isDirectory(there)) {
            throw new UnwritableException(Prose.text("fault.is-a-folder", file.toString()));
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UnwritableException(Prose.text("fault.no-folder", file.toString()));
        }
        if (!Files.isWritable(Files.exists(there) ? there : folder)) {
            throw new UnwritableException(Prose.text("fault.not-writable", file.toString()));
        }
    }

    /**
     * Writes all files of a result into a folder, which is made when it is not there.
     *
     * @throws UnwritableException when the folder cannot take them
     * @throws IOException when writing fails on the way; the folder is then as it was before
     */
    public static Written write(NightResult result, Path folder) throws IOException {
        return write(result, folder, Account.isWet(result) ? WET : CHARTS);
    }

    static Written write(NightResult result, Path folder, List<Chart> charts) throws IOException {
        requireFolder(folder);
        Map<String, byte[]> files = new LinkedHashMap<>();
        String note = draw(result, charts, files);
        files.put(HourCsv.FILE, HourCsv.text(result).getBytes(StandardCharsets.UTF_8));
        files.put(ResultJson.FILE, ResultJson.text(result).getBytes(StandardCharsets.UTF_8));
        String notes = Notes.text(result) + (note == null ? "" : "\n" + note + "\n");
        files.put(Notes.FILE, notes.getBytes(StandardCharsets.UTF_8));
        place(files, folder.toAbsolutePath().normalize());
        return new Written(List.copyOf(files.keySet()), note);
    }

    /** Writes one file, whole or not at all. */
    public static void write(String text, Path file) throws IOException {
        requireFile(file);
        Path there = file.toAbsolutePath().normalize();
        Path draft = draftIn(parentOf(there));
        try {
            Files.writeString(draft, text);
            Files.move(draft, there, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    /**
     * Adds the pictures. A toolkit that lacks a library or a font fails with errors, not exceptions; the night's figures
     * must reach the reader all the same.
     */
    private static @Nullable String draw(NightResult result, List<Chart> charts, Map<String, byte[]> files) {
        Map<String, byte[]> drawn = new LinkedHashMap<>();
        try {
            for (Chart chart : charts) {
                Charts.Picture picture = chart.drawing().apply(result);
                drawn.put(chart.name() + ".png", picture.png());
                drawn.put(chart.name() + ".svg", picture.svg());
            }
        } catch (Error | UncheckedIOException fault) {
            return Prose.text("chart.missing", fault.toString());
        }
        files.putAll(drawn);
        return null;
    }

    private static void place(Map<String, byte[]> files, Path folder) throws IOException {
        boolean exists = Files.isDirectory(folder);
        Path parent = exists ? folder : parentOf(folder);
        Files.createDirectories(parent);
        Path drafts = Files.createDirectory(draftIn(parent));
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(drafts.resolve(file.getKey()), file.getValue());
            }
            if (exists) {
                swap(files.keySet(), drafts, folder);
            } else {
                Files.move(drafts, folder, StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            remove(drafts);
        }
    }

    /** Takes away what an earlier run left, a picture that this run could not draw included, and puts the new in its place. */
    static void swap(Set<String> names, Path drafts, Path folder) throws IOException {
        List<String> touched = new ArrayList<>();
        try {
            for (String name : FILES) {
                touched.add(name);
                Path there = folder.resolve(name);
                if (Files.exists(there)) {
                    Files.move(there, drafts.resolve(EARLIER + name), StandardCopyOption.ATOMIC_MOVE);
                }
                if (names.contains(name)) {
                    Files.move(drafts.resolve(name), there, StandardCopyOption.ATOMIC_MOVE);
                }
            }
        } catch (IOException fault) {
            for (String name : touched) {
                Path earlier = drafts.resolve(EARLIER + name);
                if (Files.exists(earlier)) {
                    Files.move(earlier, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
                } else if (!Files.exists(drafts.resolve(name))) {
                    Files.deleteIfExists(folder.resolve(name)); // new, and nothing was there before
                }
            }
            throw fault;
        }
    }

    private static Path parentOf(Path path) {
        Path parent = path.getParent();
        return parent == null ? path : parent; // only a root has none, and a root exists
    }

    /** A name not yet taken. The system's own temporary files would shut out every other reader. */
    private static Path draftIn(Path folder) {
        int i = 0;
        while (Files.exists(folder.resolve(".longnight-draft-" + i))) {
            i++;
        }
        return folder.resolve(".longnight-draft-" + i);
    }

    private static void remove(Path drafts) throws IOException {
        if (Files.isDirectory(drafts)) {
            try (Stream<Path> left = Files.list(drafts)) {
                for (Path file : left.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(drafts);
        }
    }
}
