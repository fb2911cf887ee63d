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
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.night.Way;
import longnight.study.Band;
import longnight.study.Spread;
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

    /** The whole page of a night without a band, lines ended by a line feed. */
    public static String page(NightResult result) {
        return page(result, null);
    }

    /** The whole page, lines ended by a line feed. */
    public static String page(NightResult result, @Nullable Band band) {
        List<String> lines = new ArrayList<>();
        wrap(Wording.who(result), 0, lines);
        wrap((Wording.verdict(result) + " " + Wording.atRisk(result)).strip(), 0, lines);
        lines.add("");
        if (Wording.hasRun(result)) {
            table(result, band, lines);
            lines.add("");
            headlines(result, band, lines);
        }
        Account.of(result).forEach(paragraph -> wrap(paragraph, 2, lines));
        opinion(result, lines);
        String texts = result.cautions().stream().map(Wording::shortText).collect(Collectors.joining(" "));
        List<String> cautions = wrapped(Prose.text("caution.heading") + ": " + texts, 2);
        int left = HEIGHT - lines.size() - cautions.size();
        guessed(result, Math.max(FEWEST_GUESS_LINES, Math.min(MOST_GUESS_LINES, left)), lines);
        lines.addAll(cautions);
        return plain(String.join("\n", lines) + "\n");
    }

    /**
     * How far the working integration lies from the reference.
     *
     * @param page      what the page tells
     * @param working   the same without water; the page's own where that was without
     * @param reference without water
     */
    public static String comparison(NightResult page, NightResult working, NightResult reference) {
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
                        Figures.significant(core, 2),
                        Figures.significant(shortfall / 1e3, 2),
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
                        String.join(", ", written.files()).replaceAll("\\.png, [a-z-]+(?=\\.svg)", ".png/")),
                2);
        return String.join("\n", lines) + "\n";
    }

    /**
     * The table. Rain and snow, where any fall, are told in one column with the vapour, and heat brought along has a column
     * only in nights that have some; so the page stays narrow and the ways still add up to all that is lost.
     */
    private static void table(NightResult result, @Nullable Band band, List<String> lines) {
        boolean wet = matters(result, Way.PRECIPITATION);
        boolean brought = matters(result, Way.BROUGHT);
        String vapour = Prose.text(wet ? "table.wet" : "table.vapour");
        String more = brought ? Prose.text("table.brought") : "";
        for (int i = 1; i <= 3; i++) {
            String key = (band == null ? "table.head." : "table.band.head.") + i;
            lines.add(Prose.text(key, vapour, " ".repeat(more.length()), more).stripTrailing());
        }
        boolean extrapolated = false;
        for (HourRow row : result.hours()) {
            boolean below = row.coreCelsius() < 34;
            extrapolated |= below;
            lines.add(line(row, band, brought) + (below ? "*" : ""));
        }
        if (wet || brought) {
            String note =
                    (wet ? Prose.text("table.wet.note") + " " : "") + (brought ? Prose.text("table.brought.note") : "");
            wrap(note, 2, lines);
        }
        if (extrapolated) {
            lines.add(Prose.text("table.extrapolated"));
        }
    }

    private static boolean matters(NightResult result, Way way) {
        return result.hours().stream().anyMatch(row -> Math.abs(row.lostByWay()[way.ordinal()]) >= SHOWN);
    }

    private static String line(HourRow row, @Nullable Band band, boolean brought) {
        double[] way = row.lostByWay();
        StringBuilder line = new StringBuilder();
        cell(line, 5, Figures.clock(row.clock()));
        cell(line, 6, Figures.decimals(row.airCelsius(), 1));
        cell(line, 5, Figures.decimals(row.windAtBody(), 1));
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
        cell(line, 6, Figures.kilojoules(row.shortfall()));
        cell(line, 6, Figures.kilojoules(row.paidByHeatMade()));
        cell(line, 6, Figures.kilojoules(row.paidByShell()));
        cell(line, 6, Figures.kilojoules(row.paidByCore()));
        cell(line, band == null ? 8 : 5, Figures.deficit(row.coreHeatDeficit()));
        if (band != null) {
            Spread spread = band.deficitAt(row.time());
            cell(line, 8, Wording.deficits(spread));
        }
        cell(line, 5, Figures.decimals(row.coreCelsius(), 1));
        cell(line, 5, Figures.decimals(row.meanSkin(), 1));
        cell(line, 5, Figures.decimals(row.hand(), 1));
        cell(line, 6, Figures.decimals(row.foot(), 1));
        return line.toString();
    }

    static void cell(StringBuilder line, int width, String figure) {
        line.append(" ".repeat(Math.max(0, width - figure.length()))).append(figure);
    }

    private static void headlines(NightResult result, @Nullable Band band, List<String> lines) {
        Account.headlines(result, band).forEach(line -> wrap(line, 2, lines));
        wrap(Account.kit(result) + " " + Account.books(result), 2, lines);
    }

    private static void opinion(NightResult result, List<String> lines) {
        wrap(Account.opinion(result.secondOpinion()), 2, lines);
    }

    /**
     * Grouped by what was guessed, since most guesses are the same property of many garments. What is not about a garment
     * comes first, then the shortest; what finds no room is at least named.
     */
    private static void guessed(NightResult result, int room, List<String> lines) {
        List<Guess> guesses = result.guessed();
        if (guesses.isEmpty()) {
            lines.add(Prose.text("page.guessed.none"));
            return;
        }
        Map<String, List<Guess>> byQuantity = new LinkedHashMap<>();
        for (Guess guess : guesses) {
            byQuantity
                    .computeIfAbsent(Figures.guessedQuantity(guess), key -> new ArrayList<>())
                    .add(guess);
        }
        Set<String> garments = garments(result.scenario().outfit());
        List<List<Guess>> groups = new ArrayList<>(byQuantity.values());
        groups.sort(Comparator.comparing(
                        (List<Guess> group) -> garments.contains(group.get(0).subject()))
                .thenComparing(group -> (double) told(group).length() / group.size()));
        List<String> shown = List.of();
        for (int n = groups.size(); n >= 0 && (shown.isEmpty() || shown.size() > room); n--) {
            List<String> texts = new ArrayList<>();
            groups.subList(0, n).forEach(group -> texts.add(told(group)));
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
    private static String told(List<Guess> group) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (Guess guess : group) {
            values.computeIfAbsent(Figures.guessedValue(guess, 2), key -> new ArrayList<>())
                    .add(guess.subject());
        }
        List<String> parts = new ArrayList<>();
        values.forEach((value, subjects) -> parts.add(String.join("/", subjects) + " " + value));
        return Figures.guessedQuantity(group.get(0)) + ": " + String.join(", ", parts);
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
                .replace("°C", "C")
                .replace("²", "2")
                .replace("±", "+-")
                .replace("−", "-");
    }
}
