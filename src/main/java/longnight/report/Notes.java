package longnight.report;

import java.util.List;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.study.Band;
import longnight.study.Draws;
import longnight.study.Factor;
import org.jspecify.annotations.Nullable;

/** The file beside the charts with what the page has no room for: every guess with its reason, every caution in full. */
final class Notes {
    static final String FILE = "notes.txt";

    private Notes() {}

    static String text(NightResult result) {
        return text(result, null);
    }

    static String text(NightResult result, @Nullable Band band) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", result.scenario().title())).append('\n');
        text.append(Wording.who(result)).append('\n');
        text.append(Wording.verdict(result)).append(' ').append(Wording.atRisk(result));
        text.append("\n\n");
        if (band != null) {
            text.append(Wording.band(result, band)).append("\n\n");
        }
        for (String paragraph : Account.of(result)) {
            text.append(paragraph).append("\n\n");
        }
        text.append(end(result.cautions(), result.guessed()));
        if (band != null) {
            text.append('\n').append(Prose.text("notes.band")).append("\n\n");
            drawn(band, text);
        }
        return Wording.clean(text.toString());
    }

    /** Every caution in full, and every guess with its reason. */
    static String end(List<Caution> cautions, List<Guess> guessed) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : cautions) {
            text.append(Wording.fullText(caution).replace("\n", "\n\n")).append("\n\n");
        }
        text.append(Prose.text("notes.guessed")).append("\n\n");
        if (guessed.isEmpty()) {
            text.append(Prose.text("notes.guessed.none")).append('\n');
        }
        for (Guess guess : guessed) {
            text.append(Prose.text(
                            "notes.guessed.line",
                            guess.subject(),
                            Figures.guessedQuantity(guess),
                            Figures.guessedValue(guess, 3),
                            guess.reason()))
                    .append('\n');
        }
        return text.toString();
    }

    private static void drawn(Band band, StringBuilder text) {
        text.append(Prose.text(
                        "notes.band.how",
                        String.valueOf(band.draws()),
                        String.valueOf(band.seed()),
                        Figures.significant(Draws.PEAK, 2),
                        Figures.whole(100 * Draws.GATED_SHARE),
                        Figures.whole(band.settings().boundary() / 60),
                        Figures.significant(Draws.SKIN_MISFIT, 2)))
                .append("\n\n");
        for (Factor factor : Draws.factors()) {
            String together = factor.members().stream().map(Notes::drawn).collect(Collectors.joining("; "));
            if (!together.isEmpty()) {
                text.append(together).append('\n');
            }
        }
    }

    private static String drawn(Factor.Member member) {
        return Prose.text(
                "notes.band.constant",
                member.parameter().name(),
                Figures.significant(member.parameter().nominal(), 3),
                Figures.significant(member.low(), 3),
                Figures.significant(member.high(), 3),
                member.parameter().unit(),
                member.parameter().source());
    }
}
