package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.DocTable;
import longnight.report.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every command in the pages is run, every change they ask for is made, and the first lines of what is said stand in the page.
 * The folder {@code my-night} of the pages is one of the test's own.
 */
class DocsTest {
    private static final Pattern COMMAND =
            Pattern.compile("```sh\n(longnight [^\n]*)\n```\n\n```text\n(.*?)```\n", Pattern.DOTALL);

    private static final Pattern CHANGE =
            Pattern.compile("In `(my-night/[^`]+)` put `([^`]+)` in place of `([^`]+)`\\.");

    private static final int FIRST_LINES = 6;

    /** Named from the project's root, so that lines break where they do on every machine. */
    private final Path folder = Path.of("target", "pages");

    @BeforeEach
    void empty() throws Exception {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"docs/tutorial.md", "docs/how-to.md", "docs/instructors.md"})
    void what_the_page_shows_is_what_is_said(String page) throws Exception {
        String text = Files.readString(Path.of(page));
        Matcher step = Pattern.compile(COMMAND.pattern() + "|" + CHANGE.pattern(), Pattern.DOTALL)
                .matcher(text);
        StringBuilder should = new StringBuilder();
        int commands = 0;
        while (step.find()) {
            if (step.group(1) == null) {
                change(step.group(3), step.group(4), step.group(5));
                step.appendReplacement(should, Matcher.quoteReplacement(step.group()));
            } else {
                commands++;
                String block = "```sh\n" + step.group(1) + "\n```\n\n```text\n" + said(step.group(1)) + "```\n";
                step.appendReplacement(should, Matcher.quoteReplacement(block));
            }
        }
        assertThat(commands).isGreaterThan(3);
        DocTable.check(page, step.appendTail(should).toString());
        // nothing that looks like a command to run stands outside of what is run
        assertThat(text.split("```sh\n", -1)).hasSize(commands + 1);
    }

    @Test
    void the_page_on_limits_has_the_caution_in_full() throws Exception {
        assertThat(Session.flat(Files.readString(Path.of("docs/limits.md"))))
                .contains(Session.flat(Console.cautionInFull().substring("Caution".length())));
    }

    /** Whoever writes a page on a new verb finds it missing here. */
    @Test
    void every_command_of_the_way_in_is_shown_somewhere() throws Exception {
        String pages = Files.readString(Path.of("docs/tutorial.md")) + Files.readString(Path.of("docs/how-to.md"));
        for (String command : List.of("start", "check", "night", "schema", "completion", "manual")) {
            assertThat(pages).contains("```sh\nlongnight " + command);
        }
    }

    private void change(String file, String text, String old) throws Exception {
        Path path = folder.resolve(file);
        String before = Files.readString(path);
        assertThat(before).as(file).contains(old);
        Files.writeString(path, before.replace(old, text));
    }

    private String said(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.remove(0);
        words.replaceAll(
                word -> word.startsWith("my-night") ? folder.resolve(word).toString() : word);
        Session session = Session.of(words.toArray(String[]::new));
        assertThat(session.code()).as(command + ": " + session.err()).isZero();
        String all = session.out().replace(folder.resolve("my-night").toString(), "my-night");
        return all.lines().limit(FIRST_LINES).collect(Collectors.joining("\n", "", "\n"));
    }
}
