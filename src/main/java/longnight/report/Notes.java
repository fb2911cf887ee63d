package longnight.report;

import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.night.NightResult;

/** The file beside the charts with what the page has no room for: every guess with its reason, every caution in full. */
final class Notes {
    static final String FILE = "notes.txt";

    private Notes() {}

    /** {@link #text(NightResult, Units)} in metric units. */
    static String text(NightResult result) {
        return text(result, Units.METRIC);
    }

    static String text(NightResult result, Units units) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", Wording.name(result.scenario().title())))
                .append('\n');
        text.append(Wording.who(result)).append('\n');
        text.append(Wording.verdict(result, units)).append(' ').append(Wording.atRisk(result, units));
        text.append("\n\n");
        for (String paragraph : Account.of(result, units)) {
            text.append(paragraph).append("\n\n");
        }
        text.append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : result.cautions()) {
            text.append(Wording.fullText(caution, units).replace("\n", "\n\n")).append("\n\n");
        }
        text.append(Prose.text("notes.guessed")).append("\n\n");
        if (result.guessed().isEmpty()) {
            text.append(Prose.text("notes.guessed.none")).append('\n');
        }
        for (Guess guess : result.guessed()) {
            text.append(Prose.text(
                            "notes.guessed.line",
                            guess.subject(),
                            units.guessedQuantity(guess),
                            units.guessedValue(guess, 3),
                            guess.reason()))
                    .append('\n');
        }
        return Wording.clean(text.toString());
    }
}
