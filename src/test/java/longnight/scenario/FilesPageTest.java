package longnight.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longnight.DocTable;
import org.junit.jupiter.api.Test;

/** The page on files is the key tables, written out. */
class FilesPageTest {
    private static final String HEAD = """
            # Files

            Every key of every file, made from the tables that the reader itself goes by. A key in **bold** must be there. Numbers carry
            their unit; the decimal sign is a point; a bare number is refused. Names of files count from the file in which they are
            written. In a night, and in a member of a group, each section may stand in a file of its own, named in its place. A wardrobe
            may also be a CSV file, one row a piece (`docs/how-to.md`).

            `longnight check FILE` reads a file back in words. `longnight schema KIND` prints the same tables for editors.
            """;

    @Test
    void the_page_has_every_key() {
        StringBuilder page = new StringBuilder(HEAD);
        Set<Table> told = new LinkedHashSet<>();
        for (FileKind kind : FileKind.values()) {
            page.append("\n## A ").append(kind.word()).append(" file\n");
            tell(kind.table(), 3, told, page);
        }
        DocTable.check("docs/files.md", page.toString());
    }

    private static void tell(Table table, int depth, Set<Table> told, StringBuilder page) {
        if (!told.add(table)) {
            page.append("\nThe keys of ").append(table.name()).append(" stand above.\n");
            return;
        }
        page.append('\n')
                .append("#".repeat(depth))
                .append(' ')
                .append(upper(table.name()))
                .append("\n\n");
        page.append("| key | what stands there | what it says |\n|---|---|---|\n");
        for (Key key : table.keys()) {
            String name = key.required() ? "**" + key.name() + "**" : key.name();
            page.append("| ")
                    .append(name)
                    .append(" | ")
                    .append(value(key))
                    .append(" | ")
                    .append(key.about())
                    .append(" |\n");
        }
        for (Key key : table.keys()) {
            if (key.inner() != null && !told.contains(key.inner())) {
                tell(key.innerOf(), 3, told, page);
            }
        }
    }

    private static String value(Key key) {
        List<String> parts = new ArrayList<>();
        switch (key.form()) {
            case TEXT -> parts.add("a text");
            case QUANTITY -> parts.add("`" + key.dimensionOf().example() + "`; " + key.range());
            case WORD, YES_NO -> parts.add(words(key));
            case CLOCK -> parts.add("a clock time, `18:30`");
            case NAMES -> parts.add("a list of names");
            case SECTION -> parts.add("the keys of " + key.innerOf().name());
            case WORD_OR_SECTION ->
                parts.add(words(key) + "; or the keys of " + key.innerOf().name());
            case SECTIONS ->
                parts.add("a list, each item with the keys of " + key.innerOf().name());
            case PARTS ->
                parts.add("`part: " + key.dimensionOf().example() + "`, " + key.range() + "; parts are " + words(key));
            case EACH -> parts.add("`name: value` for each");
        }
        return String.join("; ", parts);
    }

    private static String words(Key key) {
        return "`" + String.join("`, `", key.words()) + "`";
    }

    private static String upper(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
