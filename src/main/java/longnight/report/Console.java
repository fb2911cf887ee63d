package longnight.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longnight.assumption.Guess;
import longnight.clothing.Outfit;
import longnight.night.Caution;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.night.Way;
import longnight.study.Band;
import org.jspecify.annotations.Nullable;

/**
 * The page on the terminal: plain ASCII of ours, at most {@value #WIDTH} columns, a dry twelve-hour night on one screen. Rain, a
 * march and a drill have ten lines more to tell.
 */
public final class Console {
    static final int WIDTH = 114;

    /** Rows of a tall window. */
    private static final int HEIGHT = 50;

    /** Lines of guesses, so that the table stays on the screen; the rest is in the notes. */
    private static final int FEWEST_GUESS_LINES = 3;

    private static final int MOST_GUESS_LINES = 8;

    /** A way whose power rounds to nothing in every hour gets no room in the hour table [W]. */
    private static final double SHOWN = 0.5;

    private Console() {}

    /** {@link #page(NightResult, Band, Units)} of a night without a band in metric units. */
    public static String page(NightResult result) {
        return page(result, null, Units.METRIC);
    }

    /** The same in other units. */
    public static String page(NightResult result, Units units) {
        return page(result, null, units);
    }

    /** The whole page, lines ended by a line feed. */
    public static String page(NightResult result, @Nullable Band band, Units units) {
        List<String> lines = new ArrayList<>();
        wrap(Wording.who(result), 0, lines);
        wrap((Wording.verdict(result, units) + " " + Wording.atRisk(result, units)).strip(), 0, lines);
        lines.add("");
        if (Wording.hasRun(result)) {
            table(result, band, units, lines);
            lines.add("");
            headlines(result, band, units, lines);
        }
        Account.of(result, units).forEach(paragraph -> wrap(paragraph, 2, lines));
        opinion(result, units, lines);
        String texts = result.cautions().stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        List<String> cautions = wrapped(Prose.text("caution.heading") + ": " + texts, 2);
        int left = HEIGHT - lines.size() - cautions.size();
        guessed(result, Math.max(FEWEST_GUESS_LINES, Math.min(MOST_GUESS_LINES, left)), units, lines);
        lines.addAll(cautions);
        return plain(String.join("\n", lines) + "\n");
    }

    /**
     * How far the working integration lies from the reference.
     *
     * @param page      what the page tells
     * @param working   the same without water; the page's own where that was without
     * @param reference without water
     * @param units     to tell it in
     */
    public static String comparison(NightResult page, NightResult working, NightResult reference, Units units) {
        if (!Wording.hasRun(working) || !Wording.hasRun(reference)) {
            return plain(Prose.text("page.reference.none")) + "\n";
        }
        double core = 0;
        int rows = Math.min(working.hours().size(), reference.hours().size());
        for (int i = 0; i < rows; i++) {
            core = Math.max(
                    core,
                    Math.abs(working.hours().get(i).coreCelsius()
                            - reference.hours().get(i).coreCelsius()));
        }
        double shortfall = Math.abs(working.shortfallHeat() - reference.shortfallHeat());
        List<String> lines = wrapped(
                Prose.text(
                        page.water() == null ? "page.reference" : "page.reference.dry",
                        units.rough(Measure.DIFFERENCE, core),
                        units.rough(Measure.HEAT, shortfall),
                        Figures.significant(100 * shortfall / Math.abs(reference.shortfallHeat()), 2)),
                2);
        return plain(String.join("\n", lines)) + "\n";
    }

    /** What lies where. */
    public static String files(Path folder, Outputs.Written written) {
        List<String> lines = wrapped(
                Prose.text(
                        "page.files",
                        folder.toString(),
                        String.join(", ", written.files())
                                .replaceAll(
                                        "\\.png, [a-z-]+-slide\\.png, [a-z-]+-print\\.png, [a-z-]+\\.svg",
                                        ".png/-slide.png/-print.png/.svg")),
                2);
        return String.join("\n", lines) + "\n";
    }

    /** Paragraphs on their own, broken to the width of the page. */
    public static String paragraphs(List<String> paragraphs) {
        List<String> lines = new ArrayList<>();
        paragraphs.forEach(paragraph -> wrap(paragraph, 2, lines));
        return plain(String.join("\n", lines) + "\n");
    }

    /** The caution that goes with everything, in its short form, with its heading. */
    public static String caution() {
        return Prose.text("caution.heading") + ": " + Wording.shortText(Caution.PLANNING_AID);
    }

    /** The same in full, broken to lines, for a page to read. */
    public static String cautionInFull() {
        List<String> lines = new ArrayList<>(List.of(Prose.text("caution.heading")));
        for (String paragraph : Wording.fullText(Caution.PLANNING_AID).split("\n")) {
            lines.add("");
            wrap(paragraph, 0, lines);
        }
        return String.join("\n", lines);
    }

    /**
     * The table. Rain and snow, where any fall, are told in one column with the vapour, and heat brought along has a column
     * only in nights that have some; so the page stays narrow and the ways still add up to all that is lost.
     */
    private static void table(NightResult result, @Nullable Band band, Units units, List<String> lines) {
        boolean wet = matters(result, Way.PRECIPITATION);
        boolean brought = matters(result, Way.BROUGHT);
        String vapour = Prose.text(wet ? "table.wet" : "table.vapour");
        String more = brought ? Prose.text("table.brought") : "";
        for (int i = 1; i <= 3; i++) {
            lines.add(Prose.text(
                            (band == null ? "table.head." : "table.band.head.") + i,
                            vapour,
                            " ".repeat(more.length()),
                            more,
                            "[" + units.unit(Measure.TEMPERATURE) + "]",
                            units.unit(Measure.WIND),
                            "[" + units.unit(Measure.HEAT) + "]" + (units.isMetric() ? "  " : ""),
                            units.isMetric() ? " " : "",
                            units.isMetric() ? "" : " ",
                            " ".repeat(units.isMetric() ? 14 : 10),
                            units.unit(Measure.HEAT))
                    .stripTrailing());
        }
        boolean extrapolated = false;
        for (HourRow row : result.hours()) {
            boolean below = row.coreCelsius() < Wording.STRETCHED_BELOW;
            extrapolated |= below;
            lines.add(line(row, band, brought, units) + (below ? "*" : ""));
        }
        if (wet || brought) {
            String note =
                    (wet ? Prose.text("table.wet.note") + " " : "") + (brought ? Prose.text("table.brought.note") : "");
            wrap(note, 2, lines);
        }
        if (extrapolated) {
            lines.add(Prose.text("table.extrapolated", Wording.stretched(units)));
        }
    }

    private static boolean matters(NightResult result, Way way) {
        return result.hours().stream().anyMatch(row -> Math.abs(row.lostByWay()[way.ordinal()]) >= SHOWN);
    }

    private static String line(HourRow row, @Nullable Band band, boolean brought, Units units) {
        int wider = units.isMetric() ? 0 : 1; // a core of 100 °F; the payers in kcal are the shorter for it
        double[] way = row.lostByWay();
        StringBuilder line = new StringBuilder();
        cell(line, 5, Figures.clock(row.clock()));
        cell(line, 6, units.number(Measure.TEMPERATURE, row.airCelsius()));
        cell(line, 5, units.number(Measure.WIND, row.windAtBody()));
        cell(line, 5, Figures.whole(row.heatMade()));
        cell(line, 5, Figures.whole(way[Way.AIR.ordinal()]));
        cell(line, 5, Figures.whole(way[Way.RADIATION.ordinal()]));
        cell(line, 5, Figures.whole(way[Way.GROUND.ordinal()]));
        cell(line, 5, Figures.whole(way[Way.EVAPORATION.ordinal()] + way[Way.PRECIPITATION.ordinal()]));
        cell(line, 5, Figures.whole(way[Way.BREATH.ordinal()]));
        cell(line, 5, Figures.whole(way[Way.CLOTHING_STORE.ordinal()]));
        if (brought) {
            cell(line, 5, Figures.whole(way[Way.BROUGHT.ordinal()]));
        }
        cell(line, 6, units.number(Measure.HEAT, row.shortfall()));
        cell(line, 6, units.number(Measure.HEAT, row.paidByHeatMade()));
        cell(line, 6, units.number(Measure.HEAT, row.paidByShell()));
        cell(line, 6 - wider, units.number(Measure.HEAT, row.paidByCore()));
        cell(line, band == null ? 8 : 5, units.deficitNumber(row.coreHeatDeficit()));
        if (band != null) {
            cell(line, 8, Wording.deficits(band.deficitAt(row.time()), units));
        }
        cell(line, 5 + wider, units.number(Measure.TEMPERATURE, row.coreCelsius()));
        cell(line, 5, units.number(Measure.TEMPERATURE, row.meanSkin()));
        cell(line, 5, units.number(Measure.TEMPERATURE, row.hand()));
        cell(line, 6, units.number(Measure.TEMPERATURE, row.foot()));
        return line.toString();
    }

    static void cell(StringBuilder line, int width, String figure) {
        line.append(" ".repeat(Math.max(0, width - figure.length()))).append(figure);
    }

    private static void headlines(NightResult result, @Nullable Band band, Units units, List<String> lines) {
        Account.headlines(result, band, units).forEach(line -> wrap(line, 2, lines));
        wrap(Account.kit(result, units) + " " + Account.books(result, units), 2, lines);
    }

    private static void opinion(NightResult result, Units units, List<String> lines) {
        wrap(Account.opinion(result.secondOpinion(), units), 2, lines);
    }

    /**
     * Grouped by what was guessed, since most guesses are the same property of many garments. What is not about a garment
     * comes first, then the shortest; what finds no room is at least named.
     */
    private static void guessed(NightResult result, int room, Units units, List<String> lines) {
        List<Guess> guesses = result.guessed();
        if (guesses.isEmpty()) {
            lines.add(Prose.text("page.guessed.none"));
            return;
        }
        Map<String, List<Guess>> byQuantity = new LinkedHashMap<>();
        for (Guess guess : guesses) {
            byQuantity
                    .computeIfAbsent(units.guessedQuantity(guess), key -> new ArrayList<>())
                    .add(guess);
        }
        Set<String> garments = garments(result.scenario().outfit());
        List<List<Guess>> groups = new ArrayList<>(byQuantity.values());
        groups.sort(Comparator.comparing(
                        (List<Guess> group) -> garments.contains(group.get(0).subject()))
                .thenComparing(group -> (double) told(group, units).length() / group.size()));
        List<String> shown = List.of();
        for (int n = groups.size(); n >= 0 && (shown.isEmpty() || shown.size() > room); n--) {
            List<String> texts = new ArrayList<>();
            groups.subList(0, n).forEach(group -> texts.add(told(group, units)));
            if (n < groups.size()) {
                List<List<Guess>> left = groups.subList(n, groups.size());
                String named = left.stream()
                        .map(group -> group.get(0).quantity())
                        .distinct()
                        .collect(Collectors.joining(", "));
                int count = left.stream().mapToInt(List::size).sum();
                String key = n == 0 ? "page.guessed.elsewhere" : "page.guessed.more";
                texts.add(Prose.text(key, String.valueOf(count), Notes.FILE, named));
            }
            String total = String.valueOf(guesses.size());
            shown = wrapped(Prose.text("page.guessed", total, String.join("; ", texts)) + ".", 2);
        }
        lines.addAll(shown);
    }

    /** "thickness [mm]: base top/tights 1.3, parka 41": quantity and unit once, each value once. */
    private static String told(List<Guess> group, Units units) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (Guess guess : group) {
            values.computeIfAbsent(units.guessedValue(guess, 2), key -> new ArrayList<>())
                    .add(Wording.name(guess.subject()));
        }
        List<String> parts = new ArrayList<>();
        values.forEach((value, subjects) -> parts.add(String.join("/", subjects) + " " + value));
        return units.guessedQuantity(group.get(0)) + ": " + String.join(", ", parts);
    }

    private static Set<String> garments(Outfit outfit) {
        return outfit instanceof Outfit.Kit kit
                ? kit.pieces().stream().map(garment -> garment.spec().id()).collect(Collectors.toSet())
                : Set.of();
    }

    static void wrap(String text, int indent, List<String> lines) {
        lines.addAll(wrapped(text, indent));
    }

    /** Broken at spaces to the width of the page; continuation lines are set in. */
    static List<String> wrapped(String text, int indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(" ".repeat(indent)).append(word);
            } else {
                line.append(line.length() == 0 ? "" : " ").append(word);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** Our own signs as every terminal has them. Names people gave are left as they are. */
    static String plain(String text) {
        return Wording.clean(text)
                .replaceAll("°(?=[CF])", "")
                .replace("²", "2")
                .replace("±", "+-")
                .replace("−", "-");
    }
}
