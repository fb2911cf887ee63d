package longnight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import longnight.study.Cloud;
import longnight.study.Draw;
import longnight.study.DrawMemory;
import longnight.study.SpreadQuestion;

/** Draws as they are worked out, beside the folder to come, so that a run that is killed goes on where it was. */
public final class SpreadJournal implements DrawMemory, AutoCloseable {
    private static final String FORMAT = "longnight-spread-journal/1";
    private static final int NUMBERS = 5;

    private final JournalFile file;
    private final Deque<Draw> known = new ArrayDeque<>();
    private int kept;
    private IntConsumer told = done -> {};

    private SpreadJournal(Path path, String of) throws IOException {
        java.nio.file.Files.createDirectories(java.util.Objects.requireNonNull(path.getParent()));
        file = new JournalFile(path, FORMAT, of, this::take);
    }

    /**
     * Opens the journal of an answer, or begins one.
     *
     * @param folder   to come; the journal lies beside it
     * @param digest   of all files that are read
     * @param program  that answers
     * @param question with everything that is asked of the files
     * @throws DataFault when a journal lies there that belongs to other questions, or another run is at it
     */
    public static SpreadJournal open(Path folder, String digest, String program, SpreadQuestion question)
            throws IOException {
        String options = question.over().stream().sorted().toList() + " " + question.people() + " "
                + question.forecast() + " " + question.colder() + " " + question.windier() + " " + question.seed();
        CRC32 sum = new CRC32();
        sum.update(options.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return new SpreadJournal(
                beside(folder),
                "inputs=" + digest + " program=" + program + " most=" + question.most() + " options="
                        + String.format(Locale.ROOT, "%08x", sum.getValue()));
    }

    /** Where the journal of a folder lies. */
    public static Path beside(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return folder.toAbsolutePath().normalize().resolveSibling((name == null ? "spread" : name) + ".journal");
    }

    /** The same, telling after each draw how many are kept. */
    public SpreadJournal telling(IntConsumer to) {
        told = to;
        return this;
    }

    /** How many draws are there that were not told yet. */
    public int size() {
        return known.size();
    }

    private boolean take(String line, long at) {
        String[] fields = line.split(" ", -1);
        if (fields.length != NUMBERS + 1) {
            return false;
        }
        try {
            double[] of = Arrays.stream(fields)
                    .limit(NUMBERS)
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            kept++;
            known.add(new Draw(of[0], of[1], of[2], of[3], of[4], lines(fields[NUMBERS])));
            return true;
        } catch (IllegalArgumentException fault) {
            return false;
        }
    }

    private static Set<Cloud.Crossed> lines(String names) {
        Set<Cloud.Crossed> lines = EnumSet.noneOf(Cloud.Crossed.class);
        for (String name : names.split(",")) {
            if (!name.isEmpty()) {
                lines.add(Cloud.Crossed.valueOf(name));
            }
        }
        return lines;
    }

    @Override
    public List<Draw> known(int most) {
        List<Draw> next = new ArrayList<>();
        while (next.size() < most && !known.isEmpty()) {
            next.add(known.remove());
        }
        return next;
    }

    @Override
    public void keep(Draw draw) {
        String names = draw.crossing().stream().sorted().map(Enum::name).collect(Collectors.joining(","));
        try {
            file.append(draw.shortfallHeat() + " " + draw.demand() + " " + draw.deficitDawn() + " " + draw.coreDawn()
                    + " " + draw.stopped() + " " + names);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        told.accept(++kept);
    }

    /** Takes the journal away: the answer is written. */
    public void finish() throws IOException {
        file.delete();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
