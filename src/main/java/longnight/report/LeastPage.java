package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import longnight.study.LeastAnswer;
import longnight.study.LeastAnswer.Found;
import longnight.study.LeastAnswer.Nothing;
import longnight.study.LeastAnswer.Without;
import org.jspecify.annotations.Nullable;

/** The lightest kit on the terminal: what it is, what it holds, what was shown. */
public final class LeastPage {
    private static final int NAME = 48;

    private LeastPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String page(LeastAnswer answer, Units units) {
        List<String> lines = new ArrayList<>(body(answer, units));
        String texts = LeastWords.cautions(answer).stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        Console.wrap(Prose.text("caution.heading") + ": " + texts, 2, lines);
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** Everything but the cautions. */
    static List<String> body(LeastAnswer answer, Units units) {
        List<String> lines = new ArrayList<>();
        Console.wrap(LeastWords.headline(answer, units), 0, lines);
        Console.wrap(LeastWords.about(answer, units), 0, lines);
        lines.add("");
        if (!answer.proof().found().isEmpty()) {
            found(answer, units, lines);
        }
        @Nullable Nothing nothing = answer.nothing();
        if (nothing != null) {
            LeastWords.nothing(answer, nothing, units).forEach(line -> Console.wrap(line, 2, lines));
        }
        if (!answer.front().isEmpty()) {
            lines.add(Prose.text("least.front.head", units.unit(Measure.TEMPERATURE)));
            answer.front().forEach(point -> lines.add(point(point, units)));
            lines.add("");
        }
        LeastWords.certificate(answer).forEach(line -> Console.wrap(line, 2, lines));
        return lines;
    }

    /** The same for browsers. */
    static AnswerPage html(LeastAnswer answer, Units units) {
        List<String> told = new ArrayList<>();
        List<Found> found = answer.proof().found();
        if (!found.isEmpty()) {
            told.add(LeastWords.margin(answer, found.get(0), units));
            told.addAll(LeastWords.nights(answer, found.get(0), units));
            answer.without()
                    .forEach(each -> told.add(
                            Wording.name(each.id() + ": " + each.name()) + ": " + LeastWords.without(answer, each)));
        }
        @Nullable Nothing nothing = answer.nothing();
        if (nothing != null) {
            told.addAll(LeastWords.nothing(answer, nothing, units));
        }
        told.addAll(LeastWords.certificate(answer));
        return new AnswerPage(
                Prose.text("html.least.title"),
                LeastWords.headline(answer, units),
                found.isEmpty() ? "" : LeastWords.atRisk(found.get(0)),
                LeastWords.about(answer, units),
                told,
                "",
                LeastWords.cautions(answer),
                answer.question().nights().stream()
                        .flatMap(night -> night.guesses().stream())
                        .toList(),
                units);
    }

    private static void found(LeastAnswer answer, Units units, List<String> lines) {
        Found least = answer.proof().found().get(0);
        lines.add(row(
                Prose.text("least.table.piece"),
                Prose.text("least.table.mass", units.unit(Measure.PIECE)),
                Prose.text("least.table.without")));
        for (Without each : answer.without()) {
            String name = Wording.clean(each.id() + ": " + each.name());
            lines.add(row(name, units.number(Measure.PIECE, each.mass()), LeastWords.without(answer, each)));
        }
        lines.add("");
        Console.wrap(LeastWords.margin(answer, least, units), 2, lines);
        if (!LeastWords.atRisk(least).isEmpty()) {
            Console.wrap(LeastWords.atRisk(least), 2, lines);
        }
        LeastWords.nights(answer, least, units).forEach(night -> Console.wrap(night, 2, lines));
        for (Found other :
                answer.proof().found().subList(1, answer.proof().found().size())) {
            Console.wrap(LeastWords.other(least, other, units), 2, lines);
        }
        lines.add("");
    }

    private static String row(String name, String mass, String without) {
        String cut = name.length() <= NAME ? name : name.substring(0, NAME - 3) + "...";
        return String.format(Locale.ROOT, "  %-" + NAME + "s %6s  %s", cut, mass, without);
    }

    private static String point(LeastAnswer.Point point, Units units) {
        return String.format(
                Locale.ROOT,
                "  %8s  %s",
                units.number(Measure.TEMPERATURE, point.air()),
                Double.isNaN(point.mass())
                        ? Double.isInfinite(point.lower())
                                ? Prose.text("least.front.none")
                                : Prose.text("least.front.open", LeastWords.kilograms(point.lower(), units))
                        : LeastWords.kilograms(point.mass(), units));
    }
}
