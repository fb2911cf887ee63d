package longnight.scenario;

import java.util.Arrays;
import java.util.List;

/** The kinds of files that people write. */
public enum FileKind {
    NIGHT(Tables.NIGHT),
    KIT(Tables.KIT),
    WARDROBE(Tables.WARDROBE),
    PERSON(Tables.PERSON),
    GROUP(Tables.GROUP);

    private final Table table;

    FileKind(Table table) {
        this.table = table;
    }

    Table table() {
        return table;
    }

    /** The kind as a word: "night". */
    public String word() {
        return Key.wordOf(this);
    }

    /** All kinds as words. */
    public static List<String> words() {
        return Arrays.stream(values()).map(FileKind::word).toList();
    }

    /** File name of the kind's schema, as modelines name it. */
    public String schemaFile() {
        return word() + ".schema.json";
    }

    /** A night when it has any key of a night; else the kind whose keys it has most of; a night when it has none of any. */
    static FileKind of(Value root) {
        FileKind best = NIGHT;
        long most = 0;
        if (root instanceof Value.Entries written) {
            for (FileKind kind : values()) {
                long known = written.entries().stream()
                        .filter(entry -> kind.table.find(entry.key().text()).isPresent())
                        .count();
                if (kind == NIGHT && known > 0) {
                    return NIGHT;
                }
                if (known > most) {
                    best = kind;
                    most = known;
                }
            }
        }
        return best;
    }
}
