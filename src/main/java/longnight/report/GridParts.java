package longnight.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import longnight.night.Caution;
import org.jspecify.annotations.Nullable;

/** Joins the parts of a grid to the table that one run of the whole would have written, to the last byte. */
public final class GridParts {
    /** A part that was looked through. */
    private record Found(Path file, GridCsv.Stamp stamp) {}

    private GridParts() {}

    /**
     * Joins parts.
     *
     * @param files in any order
     * @return how many rows the table has
     * @throws DataFault when they do not belong together, one is missing or there twice, or one is not as it was written
     */
    public static int join(List<Path> files, Path table) throws IOException {
        List<Found> parts = ordered(files);
        GridCsv.Stamp first = parts.get(0).stamp();
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        parts.forEach(part -> cautions.addAll(part.stamp().cautions()));
        List<BufferedReader> readers = new ArrayList<>();
        try {
            for (Found part : parts) {
                BufferedReader reader = Files.newBufferedReader(part.file());
                readers.add(reader);
                reader.readLine();
            }
            Outputs.write(table, out -> {
                out.append(GridCsv.header()).append('\n');
                GridCsv.Check check = new GridCsv.Check();
                for (int row = 0; row < first.rows(); row++) {
                    String line = String.valueOf(readers.get(row % parts.size()).readLine());
                    check.add(line);
                    out.append(line).append('\n');
                }
                GridCsv.writeEnd(
                        out,
                        new GridCsv.Stamp(
                                first.digest(), first.program(), Part.WHOLE, first.rows(), check.toString(), cautions));
            });
        } finally {
            for (BufferedReader reader : readers) {
                reader.close();
            }
        }
        return first.rows();
    }

    /** Part 1 first; all there, none twice, all of one grid. */
    private static List<Found> ordered(List<Path> files) throws IOException {
        @Nullable Found[] parts = new Found[0];
        @Nullable Found first = null;
        for (Path file : files) {
            Found found = new Found(file, stamp(file));
            if (first == null) {
                first = found;
                parts = new Found[found.stamp().part().of()];
            }
            GridCsv.Stamp stamp = found.stamp();
            if (!stamp.digest().equals(first.stamp().digest())
                    || stamp.rows() != first.stamp().rows()) {
                throw fault("fault.merge.other", file, first.file().toString());
            }
            if (!stamp.program().equals(first.stamp().program())) {
                throw fault("fault.merge.program", file, first.file().toString());
            }
            if (stamp.part().of() != parts.length) {
                throw fault(
                        "fault.merge.division",
                        file,
                        stamp.part().toString(),
                        first.stamp().part().toString());
            }
            int place = stamp.part().number() - 1;
            @Nullable Found same = parts[place];
            if (same != null) {
                throw fault(
                        "fault.merge.twice",
                        file,
                        stamp.part().toString(),
                        same.file().toString());
            }
            parts[place] = found;
        }
        List<Found> all = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            @Nullable Found part = parts[i];
            if (part == null) {
                throw new DataFault(Prose.text("fault.merge.missing", new Part(i + 1, parts.length).toString()));
            }
            all.add(part);
        }
        return all;
    }

    /** Looks a part through: is it whole and as it was written? */
    private static GridCsv.Stamp stamp(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw fault("fault.merge.no-file", file);
        }
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            @Nullable String line = lines.readLine();
            if (!GridCsv.header().equals(line)) {
                throw fault("fault.merge.no-part", file);
            }
            GridCsv.Check check = new GridCsv.Check();
            int rows = 0;
            for (line = lines.readLine(); line != null && !line.startsWith("#"); line = lines.readLine()) {
                check.add(line);
                rows++;
            }
            if (line == null || !GridCsv.Stamp.isOne(line)) {
                throw fault("fault.merge.cut", file, String.valueOf(rows + 2));
            }
            GridCsv.Stamp stamp = GridCsv.Stamp.parse(line);
            if (rows != stamp.part().share(stamp.rows()) || !check.toString().equals(stamp.check())) {
                throw fault("fault.merge.changed", file);
            }
            return stamp;
        } catch (IllegalArgumentException | MalformedInputException broken) {
            throw fault("fault.merge.changed", file);
        }
    }

    private static DataFault fault(String key, Path file, String... more) {
        String[] slots = new String[more.length + 1];
        slots[0] = file.toString();
        System.arraycopy(more, 0, slots, 1, more.length);
        return new DataFault(Prose.text(key, slots));
    }
}
