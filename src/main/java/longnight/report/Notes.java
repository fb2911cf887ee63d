package longnight.report;

import java.util.Collection;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.study.Comparison;

/** The file beside the charts with what the page has no room for: every guess with its reason, every caution in full. */
final class Notes {
    static final String FILE = "notes.txt";

    private Notes() {}

    static String text(NightResult result) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", result.scenario().title())).append('\n');
        text.append(Wording.who(result)).append('\n');
        text.append(Wording.verdict(result)).append(' ').append(Wording.atRisk(result));
        text.append("\n\n");
        for (String paragraph : Account.of(result)) {
            text.append(paragraph).append("\n\n");
        }
        cautions(text, result.cautions());
        guessed(text, result);
        return Wording.clean(text.toString());
    }

    /** The notes to a comparison: how it was made, each verdict with its guesses. */
    static String text(Comparison.Answer answer) {
        StringBuilder text = new StringBuilder();
        text.append(Compared.headline(answer)).append('\n');
        for (String note : Compared.notes(answer)) {
            text.append(note).append('\n');
        }
        text.append('\n');
        cautions(text, Compared.cautions(answer));
        for (Comparison.One one : answer.all()) {
            NightResult result = one.result();
            text.append(one.name()).append('\n');
            text.append(Wording.who(result)).append('\n');
            text.append(Wording.verdict(result)).append(' ').append(Wording.atRisk(result));
            text.append("\n\n");
            guessed(text, result);
            text.append('\n');
        }
        return Wording.clean(text.toString());
    }

    private static void cautions(StringBuilder text, Collection<Caution> cautions) {
        text.append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : cautions) {
            text.append(Wording.fullText(caution).replace("\n", "\n\n")).append("\n\n");
        }
    }

    private static void guessed(StringBuilder text, NightResult result) {
        text.append(Prose.text("notes.guessed")).append("\n\n");
        if (result.guessed().isEmpty()) {
            text.append(Prose.text("notes.guessed.none")).append('\n');
        }
        for (Guess guess : result.guessed()) {
            text.append(Prose.text(
                            "notes.guessed.line",
                            guess.subject(),
                            Figures.guessedQuantity(guess),
                            Figures.guessedValue(guess, 3),
                            guess.reason()))
                    .append('\n');
        }
    }
}
