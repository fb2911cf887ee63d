package longnight.report;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import longnight.assumption.Guess;
import longnight.night.Caution;
import org.jspecify.annotations.Nullable;

/**
 * The page for browsers of any answer about many nights. Its pictures and tables are those of the answer's folder, so that a verb has
 * only the words to give.
 *
 * @param title    what kind of answer it is
 * @param headline the answer
 * @param warning  in bold below it; empty for none
 * @param about    whose night, kit and weather
 * @param told     sentences below the pictures
 * @param own      cautions of this kind of answer; may be empty
 * @param cautions that apply, the general one first
 * @param guessed  everything guessed; null where the answer does not know it
 * @param units    of the tables
 */
record AnswerPage(
        String title,
        String headline,
        String warning,
        String about,
        List<String> told,
        String own,
        Collection<Caution> cautions,
        @Nullable Collection<Guess> guessed,
        Units units) {
    static final String FILE = NightPage.FILE;

    private static final String TABLE = ".csv";
    private static final String DATA = ".json";

    /**
     * The page.
     *
     * @param pictures of the folder
     * @param texts    of the folder, by name: tables and one file of data
     */
    Page made(Map<String, Supplier<Picture>> pictures, Map<String, String> texts) {
        Page page = new Page(title, headline, warning, about);
        pictures.values().forEach(drawing -> {
            Picture picture = drawing.get();
            String caption = picture.frame().title();
            page.heading(caption)
                    .add(new Page.Figure(caption, Prose.text("html.alt", caption, headline, about), picture));
        });
        page.heading(Prose.text("html.told"));
        told.stream().distinct().forEach(page::text);
        texts.forEach((name, text) -> {
            if (name.endsWith(TABLE)) {
                String caption = Prose.text("html.table." + name.substring(0, name.length() - TABLE.length()));
                Page.Grid table = DataTable.of(caption, name, text, units);
                if (!table.rows().isEmpty()) {
                    page.heading(caption).add(table);
                }
            }
        });
        guesses(page);
        if (!own.isEmpty()) {
            page.caution(own);
        }
        cautions.forEach(caution -> page.caution(Wording.fullText(caution, units)));
        page.footer.add(MadeBy.line(texts.entrySet().stream()
                .filter(file -> file.getKey().endsWith(DATA))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow()));
        return page;
    }

    private void guesses(Page page) {
        if (guessed == null) {
            return;
        }
        page.heading(Prose.text("html.guesses"));
        if (guessed.isEmpty()) {
            page.text(Prose.text("page.guessed.none"));
        } else {
            page.add(guesses(new LinkedHashSet<>(guessed), units));
        }
    }

    /** Everything guessed, with its reason. */
    static Page.Grid guesses(Collection<Guess> guessed, Units units) {
        return new Page.Grid(
                Prose.text("html.guesses.caption", String.valueOf(guessed.size())),
                Page.columns("html.guesses.columns"),
                guessed.stream()
                        .map(guess -> List.of(
                                guess.subject(),
                                units.guessedQuantity(guess),
                                units.guessedValue(guess, 3),
                                guess.reason()))
                        .toList());
    }
}
