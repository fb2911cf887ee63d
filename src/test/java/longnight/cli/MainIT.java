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
