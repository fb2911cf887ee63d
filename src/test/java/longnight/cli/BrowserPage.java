package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What every page for browsers must have, whichever verb wrote it. */
final class BrowserPage {
    private BrowserPage() {}

    /** Reads the page of a folder and holds it against the data beside it; returns its words. */
    static String check(Path folder) throws IOException {
        String page = Files.readString(folder.resolve("report.html"));
        assertThat(page)
                .contains("<html lang=\"en\">", "<th scope=\"row\">", "<th scope=\"col\">", "Fingerprint ")
                .doesNotContain("<script", "http:", "https:", "NaN")
                .doesNotContainPattern("(src|href)=\"(?!data:|#)")
                .doesNotContainPattern("<img(?![^>]* alt=\"[^\"]{20})");
        String words = Session.flat(page.replaceAll("(?s)<style>.*?</style>|<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&gt;", ">")
                .replace("&lt;", "<")
                .replace("&amp;", "&"));
        int cautions = 0;
        for (JsonNode caution : data(folder).at("/cautions")) {
            for (String paragraph : caution.at("/text").asText().split("\n")) {
                assertThat(words).contains(Session.flat(paragraph));
            }
            cautions++;
        }
        assertThat(cautions).isPositive();
        return words;
    }

    private static JsonNode data(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> data =
                    files.filter(file -> file.toString().endsWith(".json")).toList();
            assertThat(data).hasSize(1);
            return new ObjectMapper().readTree(data.get(0).toFile());
        }
    }
}
