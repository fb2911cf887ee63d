package longnight.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A page for people before it is set: what stands on it, in reading order. Everything on it is text as a person reads it; the
 * setter escapes what its format wants escaped.
 */
final class Page {
    final String title;
    final String headline;
    final String warning;
    final String about;
    final List<Part> parts = new ArrayList<>();
    final List<Paragraphs> cautions = new ArrayList<>();
    final List<String> footer = new ArrayList<>();

    /** Something on a page. */
    sealed interface Part {}

    /** A section's heading. */
    record Heading(String text) implements Part {}

    /** A paragraph. */
    record Text(String text) implements Part {}

    /** A picture; its words are read out where it cannot be seen. */
    record Figure(String caption, String words, Picture picture) implements Part {}

    /**
     * A table.
     *
     * @param caption what it shows
     * @param columns heads with units; the first column names the rows
     * @param rows    as many cells as columns each
     */
    record Grid(String caption, List<String> columns, List<List<String>> rows) implements Part {
        Grid {
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(row + " does not fit " + columns);
                }
            }
        }
    }

    /** A list. */
    record Items(List<String> items) implements Part {}

    /** One caution: paragraphs. */
    record Paragraphs(List<String> texts) {}

    /**
     * An empty page.
     *
     * @param title    what kind of page it is
     * @param headline the answer
     * @param warning  in bold below it; empty for none
     * @param about    whose night, kit and weather
     */
    Page(String title, String headline, String warning, String about) {
        this.title = title;
        this.headline = headline;
        this.warning = warning;
        this.about = about;
    }

    /** The heads of a table stand in one line of the prose file, parted by bars. */
    static List<String> columns(String key, String... slots) {
        return Arrays.stream(Prose.text(key, slots).split("\\|"))
                .map(String::strip)
                .toList();
    }

    Page add(Part part) {
        parts.add(part);
        return this;
    }

    Page heading(String text) {
        return add(new Heading(text));
    }

    /** Adds a paragraph; an empty one is left out. */
    Page text(String text) {
        return text.isBlank() ? this : add(new Text(text));
    }

    /** Adds a caution in full, paragraphs parted by line feeds. */
    Page caution(String full) {
        cautions.add(new Paragraphs(List.of(full.split("\n"))));
        return this;
    }
}
