package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.UsageMessageSpec;

class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void help_goes_to_the_output_and_names_the_exit_codes() {
        assertThat(run("--help")).isEqualTo(0);
        assertThat(out.toString()).contains("longnight").contains("70").contains("itself is at fault");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void version_names_the_program() {
        assertThat(run("--version")).isEqualTo(0);
        assertThat(out.toString()).startsWith("longnight ");
    }

    /** Help texts are format strings: a single percent sign, or an apostrophe doubled as in a message, shows on the page. */
    @Test
    void help_of_every_verb_is_well_formed() {
        assertThat(Main.commandLine().getSubcommands()).hasSizeGreaterThan(10);
        Main.commandLine().getSubcommands().forEach((verb, line) -> {
            UsageMessageSpec usage = line.getCommandSpec().usageMessage();
            Stream<String> texts = Stream.of(
                            Stream.of(usage.header()),
                            Stream.of(usage.description()),
                            Stream.of(usage.footer()),
                            line.getCommandSpec().args().stream().flatMap(arg -> Stream.of(arg.description())))
                    .flatMap(each -> each);
            texts.forEach(text -> assertThatCode(() -> String.format(text))
                    .as("%s: %s", verb, text)
                    .doesNotThrowAnyException());
            assertThat(line.getUsageMessage()).as(verb).doesNotContain("''");
        });
    }

    @Test
    void nothing_asked_is_bad_input() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("a command is missing");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void an_unknown_word_is_bad_input() {
        assertThat(run("--moonlight")).isEqualTo(2);
        assertThat(err.toString()).contains("--moonlight");
    }

    @Test
    void a_bug_is_our_fault_and_asks_for_a_report() {
        assertThat(failing(new IllegalStateException("negative mass"))).isEqualTo(70);
        assertThat(err.toString())
                .contains("negative mass")
                .contains("our fault")
                .contains("report");
    }

    @Test
    void a_full_disk_is_nobodys_fault() {
        assertThat(failing(new IOException("no room on the disk"))).isEqualTo(1);
        assertThat(err.toString()).isEqualToIgnoringNewLines("longnight: no room on the disk");
    }

    @Test
    void an_error_of_the_machine_leaves_by_the_same_door() {
        assertThat(failing(new StackOverflowError("too deep"))).isEqualTo(70);
        assertThat(err.toString()).contains("too deep").contains("report");
    }

    private int failing(Throwable fault) {
        CommandLine line = Main.commandLine().addSubcommand(new Failing(fault));
        return run(line, "fail");
    }

    private int run(String... args) {
        return run(Main.commandLine(), args);
    }

    private int run(CommandLine line, String... args) {
        return Main.run(line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    @Command(name = "fail")
    static final class Failing implements Callable<Integer> {
        private final Throwable fault;

        Failing(Throwable fault) {
            this.fault = fault;
        }

        @Override
        public Integer call() throws Exception {
            if (fault instanceof Error error) {
                throw error;
            }
            throw (Exception) fault;
        }
    }
}
