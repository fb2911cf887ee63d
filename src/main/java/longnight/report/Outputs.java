package longnight.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.proof.Check;
import longnight.proof.Outcome;
import longnight.proof.Proof;
import longnight.study.Band;
import longnight.study.Comparison;
import longnight.study.LeastAnswer;
import org.jspecify.annotations.Nullable;

/**
 * The folder of results. Everything is made in memory first, written into a folder beside the last ones under a name of
 * its own, and only then moved into place; if a move fails the earlier files come back. Files that are not ours stay as
 * they are.
 */
public final class Outputs {
    /** Every file that a night's folder may hold. */
    public static final List<String> NIGHT = List.of(
            Charts.DEFICIT + ".png",
            Charts.DEFICIT + ".svg",
            Charts.HEAT + ".png",
            Charts.HEAT + ".svg",
            Charts.WATER + ".png",
            Charts.WATER + ".svg",
            HourCsv.FILE,
            ResultJson.FILE,
            Notes.FILE,
            NightPage.FILE);

    private static final String PROOF_PAGE = "proof.txt";

    /** Every file that a proof's folder may hold. */
    public static final List<String> PROOF = List.of(
            ProofCharts.CORE + ".png",
            ProofCharts.CORE + ".svg",
            ProofCharts.SKIN + ".png",
            ProofCharts.SKIN + ".svg",
            ProofCharts.HEAT + ".png",
            ProofCharts.HEAT + ".svg",
            ProofCharts.PARITY + ".png",
            ProofCharts.PARITY + ".svg",
            ProofJson.FILE,
            PROOF_PAGE);

    /** Every file that a comparison's folder may hold. */
    public static final List<String> COMPARE = List.of(
            CompareChart.FILE + ".png",
            CompareChart.FILE + ".svg",
            CompareCsv.FILE,
            CompareJson.FILE,
            Notes.FILE,
            AnswerPage.FILE);

    /** Every file that the folder of a lightest kit may hold. */
    public static final List<String> LEAST = List.of(
            LeastChart.FILE + ".png",
            LeastChart.FILE + ".svg",
            LeastCsv.FILE,
            LeastJson.FILE,
            Notes.FILE,
            AnswerPage.FILE);

    private static final String EARLIER = "earlier-";

    private Outputs() {}

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
     * @param names files to be written into it
     * @throws UnwritableException when it, or the nearest folder above it that exists, is no folder or not writable
     */
    public static void requireFolder(Path folder, List<String> names) throws UnwritableException {
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
        for (String name : Bundle.all(names)) {
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

    /** What belongs into the folder of a night without a band, in metric units. */
    static Bundle of(NightResult result) {
        return of(result, null, Units.METRIC);
    }

    /** What belongs into a night's folder, with its band where there is one. JSON is in the engine's units, the rest in those asked for. */
    public static Bundle of(NightResult result, @Nullable Band band, Units units) {
        Bundle bundle = new Bundle(NIGHT)
                .picture(Charts.DEFICIT, () -> Charts.coreHeatDeficit(result, band, units))
                .picture(Charts.HEAT, () -> Charts.whereTheHeatGoes(result, units));
        if (Account.isWet(result)) {
            bundle.picture(Charts.WATER, () -> Charts.waterByLayer(result, units));
        }
        return bundle.file(HourCsv.FILE, HourCsv.text(result, band, units))
                .file(ResultJson.FILE, ResultJson.text(result, band))
                .notes(Notes.FILE, Notes.text(result, band, units))
                .page(NightPage.FILE, () -> NightPage.of(result, band, units));
    }

    /** What belongs into a proof's folder. */
    public static Bundle of(Proof proof, String page) {
        List<Outcome> outcomes = proof.outcomes();
        Bundle bundle = new Bundle(PROOF);
        Map<Check.Pool, String> names = Map.of(
                Check.Pool.CORE,
                ProofCharts.CORE,
                Check.Pool.SKIN,
                ProofCharts.SKIN,
                Check.Pool.HEAT,
                ProofCharts.HEAT);
        for (Check.Pool pool : List.of(Check.Pool.CORE, Check.Pool.SKIN, Check.Pool.HEAT)) {
            if (ProofCharts.has(outcomes, pool)) {
                bundle.picture(Objects.requireNonNull(names.get(pool)), () -> ProofCharts.of(proof, pool));
            }
        }
        return bundle.picture(ProofCharts.PARITY, () -> ProofCharts.parity(proof))
                .file(ProofJson.FILE, ProofJson.text(proof))
                .notes(PROOF_PAGE, page + "\n" + Wording.fullText(Caution.PLANNING_AID) + "\n");
    }

    /** What belongs into a comparison's folder. */
    public static Bundle of(Comparison.Answer answer, Units units) {
        return new Bundle(COMPARE)
                .picture(CompareChart.FILE, () -> CompareChart.picture(answer, units))
                .file(CompareCsv.FILE, CompareCsv.text(answer, units))
                .file(CompareJson.FILE, CompareJson.text(answer))
                .notes(Notes.FILE, Notes.text(answer, units))
                .report(ComparePage.html(answer, units));
    }

    /** What belongs into the folder of a lightest kit. */
    public static Bundle of(LeastAnswer answer, Units units) {
        return new Bundle(LEAST)
                .picture(LeastChart.FILE, () -> LeastChart.picture(answer, units))
                .file(LeastCsv.FILE, LeastCsv.text(answer, units))
                .file(LeastJson.FILE, LeastJson.text(answer))
                .notes(Notes.FILE, Notes.text(answer, units))
                .report(LeastPage.html(answer, units));
    }

    /** {@link #write(NightResult, Path, Units)} in metric units. */
    public static Written write(NightResult result, Path folder) throws IOException {
        return write(result, folder, Units.METRIC);
    }

    /** Writes all files of a night into a folder, which is made when it is not there. */
    public static Written write(NightResult result, Path folder, Units units) throws IOException {
        return write(of(result, null, units), folder);
    }

    /**
     * Writes all files of an answer into a folder, which is made when it is not there. Files of that verb which this answer does
     * not have are taken away, so that no old picture stays beside new figures.
     *
     * @throws UnwritableException when the folder cannot take them
     * @throws IOException when writing fails on the way; the folder is then as it was before
     */
    public static Written write(Bundle bundle, Path folder) throws IOException {
        requireFolder(folder, bundle.names());
        Map<String, byte[]> files = new LinkedHashMap<>();
        @Nullable String note = bundle.make(files);
        place(files, bundle.names(), folder.toAbsolutePath().normalize());
        return new Written(List.copyOf(files.keySet()), note);
    }

    /** What is to be written, piece by piece. */
    interface Writing {
        void to(Appendable out) throws IOException;
    }

    /**
     * Writes new files into a folder, which is made when it is not there: all of them or none, and none that is there already.
     *
     * @param files path in the folder, to text
     * @throws UnwritableException when the folder cannot take them, or has one of them
     * @throws IOException when writing fails on the way; what was written is then taken away again
     */
    public static void writeNew(Map<String, String> files, Path folder) throws IOException {
        requireFolder(folder, List.of());
        List<String> there = files.keySet().stream()
                .filter(name -> Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS))
                .toList();
        if (!there.isEmpty()) {
            throw new UnwritableException(Prose.text("fault.there", folder.toString(), String.join(", ", there)));
        }
        List<Path> written = new ArrayList<>();
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(parentOf(path));
                Files.writeString(path, file.getValue(), StandardOpenOption.CREATE_NEW);
                written.add(path);
            }
        } catch (IOException fault) {
            for (Path path : written) {
                Files.deleteIfExists(path);
            }
            throw fault;
        }
    }

    /** Writes one file, whole or not at all. */
    public static void write(String text, Path file) throws IOException {
        write(file, out -> out.append(text));
    }

    /** The same for a text too long to be held. */
    static void write(Path file, Writing writing) throws IOException {
        requireFile(file);
        Path there = file.toAbsolutePath().normalize();
        Path draft = draftIn(parentOf(there));
        try {
            try (BufferedWriter out = Files.newBufferedWriter(draft)) {
                writing.to(out);
            }
            Files.move(draft, there, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void place(Map<String, byte[]> files, List<String> names, Path folder) throws IOException {
        boolean exists = Files.isDirectory(folder);
        Path parent = exists ? folder : parentOf(folder);
        Files.createDirectories(parent);
        Path drafts = Files.createDirectory(draftIn(parent));
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(drafts.resolve(file.getKey()), file.getValue());
            }
            if (exists) {
                swap(names, files.keySet(), drafts, folder);
            } else {
                Files.move(drafts, folder, StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            remove(drafts);
        }
    }

    /** Takes away what an earlier run left, a picture that this run could not draw included, and puts the new in its place. */
    static void swap(List<String> all, Set<String> names, Path drafts, Path folder) throws IOException {
        List<String> touched = new ArrayList<>();
        try {
            for (String name : all) {
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
