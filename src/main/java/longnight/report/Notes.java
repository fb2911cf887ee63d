package longnight.report;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.night.Scenario;
import longnight.study.Band;
import longnight.study.Comparison;
import longnight.study.Draws;
import longnight.study.Factor;
import longnight.study.LeastAnswer;
import org.jspecify.annotations.Nullable;

/** The file beside the charts with what the page has no room for: every guess with its reason, every caution in full. */
final class Notes {
    static final String FILE = "notes.txt";

    private Notes() {}

    /** {@link #text(NightResult, Units)} in metric units. */
    static String text(NightResult result) {
        return text(result, null, Units.METRIC);
    }

    static String text(NightResult result, @Nullable Band band, Units units) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", Wording.name(result.scenario().title())))
                .append('\n');
        text.append(Wording.who(result)).append('\n');
        text.append(Wording.verdict(result, units)).append(' ').append(Wording.atRisk(result, units));
        text.append("\n\n");
        if (band != null) {
            text.append(Wording.band(result, band, units)).append("\n\n");
        }
        for (String paragraph : Account.of(result, units)) {
            text.append(paragraph).append("\n\n");
        }
        cautions(text, result.cautions(), units);
        guessed(text, result.guessed(), units);
        if (band != null) {
            text.append('\n').append(Prose.text("notes.band")).append("\n\n");
            drawn(band, text);
        }
        return Wording.clean(text.toString());
    }

    /** The notes to a comparison: how it was made, each verdict with its guesses. */
    static String text(Comparison.Answer answer, Units units) {
        StringBuilder text = new StringBuilder();
        text.append(Compared.headline(answer)).append('\n');
        for (String note : Compared.notes(answer, units)) {
            text.append(note).append('\n');
        }
        Compared.differences(answer, units).forEach(each -> text.append(each).append('\n'));
        text.append('\n');
        cautions(text, Compared.cautions(answer), units);
        for (Comparison.One one : answer.all()) {
            NightResult result = one.result();
            text.append(one.name()).append('\n');
            text.append(Wording.who(result)).append('\n');
            text.append(Wording.verdict(result, units)).append(' ').append(Wording.atRisk(result, units));
            text.append("\n\n");
            guessed(text, result.guessed(), units);
            text.append('\n');
        }
        return Wording.clean(text.toString());
    }

    /** The notes to a lightest kit: the page, the cautions in full, and the guesses of its nights. */
    static String text(LeastAnswer answer, Units units) {
        StringBuilder text = new StringBuilder();
        LeastPage.body(answer, units).forEach(line -> text.append(line).append('\n'));
        text.append('\n');
        cautions(text, LeastWords.cautions(answer), units);
        for (Scenario night : answer.question().nights()) {
            text.append(night.nightName())
                    .append(" | ")
                    .append(night.person().name())
                    .append('\n');
            guessed(text, night.guesses(), units);
            text.append('\n');
        }
        return Wording.clean(text.toString());
    }

    /** {@link #end(List, List, Units)} in metric units. */
    static String end(List<Caution> cautions, List<Guess> guessed) {
        return end(cautions, guessed, Units.METRIC);
    }

    /** Every caution in full, and every guess with its reason. */
    static String end(List<Caution> cautions, List<Guess> guessed, Units units) {
        StringBuilder text = new StringBuilder();
        cautions(text, cautions, units);
        guessed(text, guessed, units);
        return text.toString();
    }

    private static void cautions(StringBuilder text, Collection<Caution> cautions) {
        cautions(text, cautions, Units.METRIC);
    }

    private static void cautions(StringBuilder text, Collection<Caution> cautions, Units units) {
        text.append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : cautions) {
            text.append(Wording.fullText(caution, units).replace("\n", "\n\n")).append("\n\n");
        }
    }

    private static void guessed(StringBuilder text, List<Guess> guessed) {
        guessed(text, guessed, Units.METRIC);
    }

    private static void guessed(StringBuilder text, List<Guess> guessed, Units units) {
        text.append(Prose.text("notes.guessed")).append("\n\n");
        if (guessed.isEmpty()) {
            text.append(Prose.text("notes.guessed.none")).append('\n');
        }
        for (Guess guess : guessed) {
            text.append(Prose.text(
                            "notes.guessed.line",
                            guess.subject(),
                            units.guessedQuantity(guess),
                            units.guessedValue(guess, 3),
                            guess.reason()))
                    .append('\n');
        }
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
