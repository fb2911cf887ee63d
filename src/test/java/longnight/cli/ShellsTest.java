package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What shells and man readers are given. */
class ShellsTest {
    @TempDir
    Path folder;

    static Stream<CommandLine> commands() {
        return Main.commandLine().getSubcommands().values().stream();
    }

    /** Only where the shell is there; elsewhere the report says that it was skipped. */
    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh", "fish"})
    void the_script_is_one_that_the_shell_can_read(String shell) throws Exception {
        Session session = Session.of("completion", shell);
        assertThat(session.code()).isZero();
        assumeTrue(isThere(shell), shell + " is not on this machine, its script was not read");
        Path script = Files.writeString(folder.resolve("script"), session.out());
        assertThat(run(shell, "-n", script.toString())).isEmpty();
    }

    @Test
    void bash_completes_commands_words_and_options() throws Exception {
        assumeTrue(isThere("bash"), "bash is not on this machine");
        Path script = Files.writeString(
                folder.resolve("script"), Session.of("completion", "bash").out());
        assertThat(completed(script, "longnight", "che")).isEqualTo("check");
        assertThat(completed(script, "longnight", "schema", "ward")).isEqualTo("wardrobe");
        assertThat(completed(script, "longnight", "night", "--uni")).isEqualTo("--units");
        assertThat(completed(script, "longnight", "night", "--units", "im")).isEqualTo("imperial");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh", "fish"})
    void every_command_and_every_option_is_in(String shell) {
        String script = Session.of("completion", shell).out();
        commands().forEach(command -> {
            assertThat(script).contains(command.getCommandName());
            command.getCommandSpec().options().stream()
                    .flatMap(option -> Stream.of(option.names()))
                    .filter(name -> name.startsWith("--"))
                    .forEach(name ->
                            assertThat(script).contains(shell.equals("fish") ? "-l " + name.substring(2) : name));
        });
        assertThat(script).contains("imperial").doesNotContain("${COMPLETION");
    }

    @Test
    void another_shell_is_refused_with_the_nearest() {
        Session session = Session.of("completion", "fisch");
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err()).contains("\"fisch\" is not one of: bash, zsh, fish. did you mean \"fish\"?");
    }

    @Test
    void the_manual_has_every_command_with_its_options_and_the_caution() {
        String manual = Session.of("manual").out();
        assertThat(manual)
                .startsWith(".TH \"LONGNIGHT\" \"1\"\n")
                .contains(".SH \"EXIT CODES\"", ".SH \"CAUTION\"", "call for help")
                .doesNotContain("${");
        commands().forEach(command -> {
            assertThat(manual).contains(".SS \"longnight " + command.getCommandName());
            command.getCommandSpec()
                    .options()
                    .forEach(option ->
                            assertThat(manual).contains(option.longestName().replace("-", "\\-")));
        });
        assertThat(manual.lines())
                .allMatch(line -> !line.startsWith(".") || line.matches("\\.(TH|SH|SS|TP|B|PP)( \".*\")?"));
    }

    @Test
    void groff_reads_the_manual() throws Exception {
        assumeTrue(isThere("groff"), "groff is not on this machine, the manual was not typeset");
        Path page = Files.writeString(
                folder.resolve("longnight.1"), Session.of("manual").out());
        assertThat(run("groff", "-man", "-Tutf8", "-ww", "-z", page.toString())).isEmpty();
    }

    /** Every command says what it is for, and what its words and options are. */
    @Test
    void every_command_word_and_option_has_its_help() {
        commands().forEach(command -> {
            assertThat(command.getCommandSpec().usageMessage().description())
                    .as(command.getCommandName())
                    .isNotEmpty();
            command.getCommandSpec()
                    .args()
                    .forEach(argument -> assertThat(argument.description())
                            .as(command.getCommandName() + " " + argument.paramLabel())
                            .isNotEmpty());
        });
    }

    private String completed(Path script, String... words) throws Exception {
        String line = String.join(" ", words);
        String ask = "compopt() { :; }; source '" + script + "'; COMP_WORDS=(" + line + "); COMP_CWORD="
                + (words.length - 1) + "; COMP_LINE='" + line + "'; _complete_longnight; echo \"${COMPREPLY[*]}\"";
        return run("bash", "-c", ask).strip();
    }

    private static boolean isThere(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
    }

    private static String run(String... command) throws Exception {
        Process process =
                new ProcessBuilder(List.of(command)).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        process.waitFor();
        return said;
    }
}
