package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read stands in the one file of prose, not in the code of the rooms that speak to them. */
class ProseGuardTest {
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$|\\s//[^\"\\n]*$");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    /** Three words in a row are a sentence's beginning. */
    private static final Pattern SENTENCE = Pattern.compile("(?:^|[ :(])[A-Za-z]?[a-z']+,? [a-z']{2,},? [a-z']{2,}");

    /** Faults of ours, which nobody is meant to read. */
    private static final Pattern OURS =
            Pattern.compile("(?:new (?:IllegalArgument|IllegalState|UncheckedIO)Exception\\(|assert )[^;]*$");

    /** Heads of tables name quantity and unit, and programs look for them. */
    private static final Pattern HEAD = Pattern.compile(".* \\[[^]]+]$");

    private static final List<String> TABLES = List.of("Csv.java", "Files.java", "Summary.java");

    @Test
    void no_sentence_stands_outside_the_file_of_prose() throws Exception {
        List<String> found = new ArrayList<>();
        int files = 0;
        for (String room : List.of("report", "cli")) {
            try (Stream<Path> sources = Files.walk(Path.of("src/main/java/longnight", room))) {
                for (Path source : sources.filter(file -> file.toString().endsWith(".java"))
                        .toList()) {
                    files++;
                    sentences(Files.readString(source), isTable(source))
                            .forEach(text -> found.add(source.getFileName() + ": " + text));
                }
            }
        }
        assertThat(files).isGreaterThan(100);
        assertThat(found).isEmpty();
    }

    private static boolean isTable(Path source) {
        return TABLES.stream().anyMatch(source.toString()::endsWith);
    }

    private static List<String> sentences(String source, boolean table) throws IOException {
        String code = COMMENT.matcher(source).replaceAll("");
        List<String> sentences = new ArrayList<>();
        Matcher literal = LITERAL.matcher(code);
        while (literal.find()) {
            String text = literal.group(1);
            boolean ours = OURS.matcher(code.substring(Math.max(0, literal.start() - 400), literal.start()))
                    .find();
            boolean cell =
                    table && (HEAD.matcher(text).matches() || code.startsWith(" + ", literal.end()) || isCell(text));
            if (SENTENCE.matcher(text).find() && !ours && !cell) {
                sentences.add(text);
            }
        }
        return sentences;
    }

    /** A word in a cell that programs look for: short, and no sentence's end. */
    private static boolean isCell(String text) {
        return text.length() < 32 && !text.endsWith(".");
    }

    /** The guard is guarded: a sentence in code is found, and what only looks like one is not. */
    @Test
    void a_sentence_in_code_is_found() throws Exception {
        assertThat(sentences("page.add(\"The night is too cold for you.\");", false))
                .hasSize(1);
        assertThat(sentences("page.add(\"The night is too cold for you.\");", true))
                .hasSize(1);
        assertThat(sentences("// says \"the night is cold\"\n/* \"the night is cold\" */ int i;", false))
                .isEmpty();
        assertThat(sentences("throw new IllegalStateException(\"the night is gone\");", false))
                .isEmpty();
        assertThat(sentences("throw new ParameterException(line, \"the night is gone\");", false))
                .hasSize(1);
        assertThat(sentences("header(\"lowest air of all [degC]\");", true)).isEmpty();
        assertThat(sentences("header(\"lowest air of all [degC]\");", false)).hasSize(1);
        assertThat(sentences("Prose.text(\"page.who\", \"two words\")", false)).isEmpty();
    }
}
