package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program, killed without warning and started again. */
class GridIT {
    private static final Path JAR = Path.of(System.getProperty("longnight.jar")).toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void a_run_that_is_killed_goes_on_where_it_was() throws Exception {
        killAndResume(InventedGrid.write(folder, 3, 1), 2);
    }

    /** Fifty kits, eight nights, six people; ten kills; a heap that would not hold the nights. */
    @Test
    @Tag("long")
    void a_long_run_that_is_killed_ten_times_goes_on_where_it_was() throws Exception {
        killAndResume(InventedGrid.write(folder, 50, 6), 10);
    }

    /** Kills at moments of chance, each some time after its run has written a row of its own. */
    private void killAndResume(Path grid, int kills) throws Exception {
        Path whole = folder.resolve("whole.csv");
        long began = System.nanoTime();
        assertThat(run("grid", grid.toString(), "--out", whole.toString()).waitFor())
                .isZero();
        double undisturbed = (System.nanoTime() - began) / 1e9;
        System.out.printf("GridIT: undisturbed in %.1f s%n", undisturbed);

        Path table = folder.resolve("killed.csv");
        Path journal = folder.resolve("killed.csv.journal");
        long seed = System.nanoTime();
        Random chance = new Random(seed);
        List<Integer> rows = new ArrayList<>();
        for (int kill = 0; kill < kills; kill++) {
            Process process = run("grid", grid.toString(), "--out", table.toString());
            while (process.isAlive() && rows(journal).size() <= rows.size()) {
                Thread.sleep(20);
            }
            process.waitFor((long) (chance.nextDouble() * undisturbed / (2 * kills) * 1000), TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            if (Files.exists(table)) {
                break; // it was done before the blow
            }
            List<Integer> now = rows(journal);
            assertThat(now).as("seed " + seed).doesNotHaveDuplicates().containsAll(rows);
            assertThat(now).hasSizeGreaterThan(rows.size());
            rows = now;
        }
        assertThat(rows).as("rows left by runs that were killed").isNotEmpty();
        System.out.printf("GridIT: seed %d, rows after %d kills: %d%n", seed, kills, rows.size());
        assertThat(run("grid", grid.toString(), "--out", table.toString()).waitFor())
                .isZero();
        assertThat(table).hasSameBinaryContentAs(whole);
        assertThat(journal).doesNotExist();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .noneMatch(name -> name.startsWith(".longnight-draft"));
        }
    }

    /** The rows a journal holds whole. */
    private static List<Integer> rows(Path journal) throws IOException {
        String text;
        try {
            text = new String(Files.readAllBytes(journal), StandardCharsets.UTF_8);
        } catch (NoSuchFileException gone) {
            return List.of(); // not begun, or done and taken away
        }
        String whole = text.substring(0, text.lastIndexOf('\n') + 1);
        return whole.lines()
                .skip(1)
                .map(line -> Integer.parseInt(line.substring(0, line.indexOf('\t'))))
                .toList();
    }

    private Process run(String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx64m", "-jar", JAR.toString()));
        command.addAll(Arrays.asList(args));
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
    }
}
