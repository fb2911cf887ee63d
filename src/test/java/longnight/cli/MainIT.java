package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program, run as its user runs it. */
class MainIT {
    private static final Path JAR = Path.of(System.getProperty("longnight.jar"));
    private static final Path LAUNCHER = Path.of(System.getProperty("longnight.launcher"));

    private static final Path NIGHT = Path.of("scenarios", "first-night.yaml").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void the_jar_runs_by_itself() throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Run run = run(java, "-jar", JAR.toString(), "--version");
        assertThat(run.out()).matches("longnight \\d+\\.\\d+\\.\\d+\\S*\\R");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void the_launcher_finds_its_jar_through_links_and_from_anywhere() throws Exception {
        Path inner = Files.createDirectories(folder.resolve("a place with spaces"));
        Path first = Files.createSymbolicLink(inner.resolve("one"), LAUNCHER.toAbsolutePath());
        Path second = Files.createSymbolicLink(folder.resolve("two"), folder.relativize(first));
        Run run = run(second.toString(), "--help");
        Files.delete(second);
        Files.delete(first);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Usage: longnight");
        assertThat(run.code()).isZero();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void the_exit_code_reaches_the_shell() throws Exception {
        Run run = run(LAUNCHER.toString(), "--moonlight");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("--moonlight");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_shipped_night_runs_from_file_to_charts() throws Exception {
        Run run = run(LAUNCHER.toString(), "night", NIGHT.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("On paper this kit", "Caution:", "Guessed", "In first-night-out:");
        for (String name : new String[] {
            "core-heat-deficit.png",
            "core-heat-deficit.svg",
            "where-the-heat-goes.png",
            "where-the-heat-goes.svg",
            "hours.csv",
            "night.json",
            "notes.txt"
        }) {
            assertThat(folder.resolve("first-night-out").resolve(name)).isNotEmptyFile();
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_fault_of_input_begins_with_its_place_and_leaves_nothing_behind() throws Exception {
        Path night = folder.resolve("bad.yaml");
        Files.writeString(night, "title: bad\nmoon: full\n");
        Run run = run(LAUNCHER.toString(), "night", "bad.yaml");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("bad.yaml:2:1: ").hasLineCount(1);
        assertThat(folder.resolve("bad-out")).doesNotExist();
    }

    private Run run(String... command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        int code = process.waitFor();
        return new Run(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private record Run(int code, String out, String err) {}
}
