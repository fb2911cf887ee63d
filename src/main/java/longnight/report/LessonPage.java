package longnight.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.night.Way;
import longnight.study.Comparison;
import longnight.study.Lesson;
import longnight.study.Taught;

/** A lesson in words: the question alone, or with what came out, why, what is usually believed and how to try it. */
public final class LessonPage {
    private static final String CHART = "lesson";
    private static final String TEXT = "lesson.txt";

    /** Every file that a lesson's folder may hold. */
    public static final List<String> NAMES = List.of(CHART + ".png", CHART + ".svg", TEXT);

    /** Ways by which the difference is told. */
    private static final int TOLD = 2;

    /** A way that differs by less is not named [J]. */
    private static final double NAMED = 15e3;

    /** Water worth naming [kg]. */
    private static final double WET = 0.02;

    private LessonPage() {}

    /** Every lesson with its question. */
    public static String list() {
        List<String> lines = new ArrayList<>();
        for (Lesson lesson : Lesson.values()) {
            lines.add(lesson.word());
            lines.addAll(Console.wrapped(text(lesson, "question"), 4));
        }
        lines.add("");
        lines.addAll(Console.wrapped(Prose.text("lesson.how"), 0));
        return page(lines, Stream.of(Caution.PLANNING_AID).map(Wording::shortText));
    }

    /**
     * The question and what there is to choose from, and nothing that gives the answer away.
     *
     * @param titles of the nights
     */
    public static String question(Lesson lesson, List<String> titles) {
        List<String> lines = new ArrayList<>(asked(lesson, titles));
        lines.add("");
        lines.addAll(Console.wrapped(Prose.text("lesson.vote", lesson.word()), 0));
        return page(lines, Stream.of(Caution.PLANNING_AID).map(Wording::shortText));
    }

    /** The whole lesson on the terminal. */
    public static String page(Taught taught) {
        return page(told(taught), Compared.cautions(taught.all()).stream().map(Wording::shortText));
    }

    /** The whole lesson as files: the chart and the words with the cautions in full. */
    public static Bundle files(Taught taught) {
        Stream<String> cautions = Compared.cautions(taught.all()).stream()
                .flatMap(caution -> Wording.fullText(caution).lines());
        return new Bundle(NAMES)
                .picture(CHART, () -> CompareChart.picture(taught.all(), Units.METRIC))
                .notes(TEXT, page(told(taught), cautions));
    }

    private static String page(List<String> lines, Stream<String> cautions) {
        List<String> all = new ArrayList<>(lines);
        all.add("");
        all.add(Prose.text("caution.heading"));
        cautions.forEach(caution -> all.addAll(Console.wrapped(caution, 2)));
        return Console.plain(String.join("\n", all) + "\n");
    }

    private static List<String> asked(Lesson lesson, List<String> titles) {
        List<String> lines = new ArrayList<>(Console.wrapped(text(lesson, "question"), 0));
        titles.stream().sorted().forEach(title -> lines.addAll(Console.wrapped("- " + Wording.clean(title), 2)));
        return lines;
    }

    private static List<String> told(Taught taught) {
        List<Comparison.One> all = taught.all().all();
        List<String> lines = new ArrayList<>(
                asked(taught.lesson(), all.stream().map(Comparison.One::name).toList()));
        section(lines, "lesson.came-out", cameOut(all));
        section(lines, "lesson.why", why(taught));
        section(lines, "lesson.believed", List.of(text(taught.lesson(), "believed")));
        section(lines, "lesson.try", List.of(text(taught.lesson(), "try"), Prose.text("lesson.try.always")));
        return lines;
    }

    private static void section(List<String> lines, String key, List<String> paragraphs) {
        lines.add("");
        lines.add(Prose.text(key));
        paragraphs.forEach(paragraph -> lines.addAll(Console.wrapped(paragraph, 2)));
    }

    private static List<String> cameOut(List<Comparison.One> all) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            NightResult result = all.get(i).result();
            lines.add(Prose.text(
                    "lesson.line",
                    Compared.line(i, all.get(i)),
                    Figures.kilojoules(result.shortfallHeat()),
                    i == 0
                            ? Prose.text("lesson.line.least")
                            : Prose.text(
                                    "lesson.line.more",
                                    Figures.kilojoules(result.shortfallHeat()
                                            - all.get(0).result().shortfallHeat()))));
        }
        return lines;
    }

    /** The reason written for the lesson only where the runs bear it out; then where the runs differ, from their books. */
    private static List<String> why(Taught taught) {
        List<String> told = new ArrayList<>();
        told.add(
                switch (taught.order()) {
                    case AS_EXPECTED -> text(taught.lesson(), "reason");
                    case TOO_CLOSE -> Prose.text("lesson.too-close");
                    case TURNED -> Prose.text("lesson.turned");
                });
        List<Comparison.One> all = taught.all().all();
        NightResult least = all.get(0).result();
        NightResult most = all.get(all.size() - 1).result();
        told.add(ways(least, most, all.size() - 1));
        told.add(water(all));
        told.removeIf(String::isEmpty);
        return told;
    }

    private static String ways(NightResult least, NightResult most, int last) {
        List<String> ways = Stream.of(Way.values())
                .sorted(Comparator.comparingDouble((Way way) -> Math.abs(more(least, most, way)))
                        .reversed())
                .limit(TOLD)
                .filter(way -> Math.abs(more(least, most, way)) > NAMED)
                .map(way -> Prose.text(
                        "lesson.way", Prose.text("way." + way), WorthWording.signed(more(least, most, way) / 1e3, 0)))
                .toList();
        return ways.isEmpty()
                ? ""
                : Prose.text("lesson.ways", Compared.letter(last), Compared.letter(0), String.join(", ", ways));
    }

    private static double more(NightResult least, NightResult most, Way way) {
        return most.ledger().lostByWay()[way.ordinal()] - least.ledger().lostByWay()[way.ordinal()];
    }

    private static String water(List<Comparison.One> all) {
        List<Double> atDusk = all.stream()
                .map(one -> one.result().water())
                .filter(Objects::nonNull)
                .map(water -> water.layers().stream()
                        .mapToDouble(layer -> layer.liquidAtDusk() + layer.iceAtDusk())
                        .sum())
                .toList();
        if (atDusk.size() < all.size() || atDusk.stream().allMatch(mass -> mass < WET)) {
            return "";
        }
        return Prose.text(
                "lesson.water",
                IntStream.range(0, all.size())
                        .mapToObj(i ->
                                Prose.text("lesson.water.one", Compared.letter(i), Figures.whole(1e3 * atDusk.get(i))))
                        .collect(Collectors.joining(", ")));
    }

    private static String text(Lesson lesson, String what) {
        return Prose.text("lesson." + lesson.word() + "." + what);
    }
}
