package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import longnight.study.HeatOffset;
import longnight.study.Replay;

/** The page of a replayed night. */
public final class ReplayPage {
    private ReplayPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String text(Replay replay) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : paragraphs(replay)) {
            if (paragraph.startsWith(" ") || paragraph.isEmpty()) {
                lines.add(paragraph); // a row of a table
            } else {
                lines.addAll(Console.wrapped(paragraph, 2));
            }
        }
        String cautions = replay.cautions().stream().map(Wording::shortText).collect(Collectors.joining(" "));
        lines.addAll(Console.wrapped(Prose.text("caution.heading") + ": " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** Everything but the cautions. */
    static List<String> paragraphs(Replay replay) {
        List<String> lines = new ArrayList<>();
        lines.add(Wording.who(replay.asIs()));
        lines.add(headline(replay));
        lines.add(line(replay));
        lines.add(Prose.text(
                "replay.data",
                String.valueOf(replay.offset().halfHours()),
                String.valueOf(replay.offset().notes()),
                replay.log().clock().isEmpty()
                        ? Prose.text("replay.clock.plain")
                        : Prose.text("replay.clock.zone", replay.log().clock())));
        lines.add("");
        for (Replay.Channel channel : replay.seen()) {
            table(replay, channel, lines);
        }
        lines.add(Prose.text(
                "replay.verdict",
                percent(replay.asIs().scenario().person().heatOffset()),
                Wording.verdict(replay.asIs())));
        if (replay.offset().isUsable()) {
            lines.add(Prose.text("replay.verdict", percent(replay.offset().best()), Wording.verdict(replay.fitted())));
        }
        lines.add(Prose.text("replay.method"));
        return lines;
    }

    /** What is told below the answer, without tables. */
    static List<String> sentences(Replay replay) {
        List<String> all = paragraphs(replay);
        return all.subList(2, all.size()).stream()
                .filter(line -> !line.startsWith(" "))
                .toList();
    }

    /** The answer in one sentence. */
    static String headline(Replay replay) {
        HeatOffset offset = replay.offset();
        return Prose.text(
                "replay.told." + offset.told(), percent(offset.best()), percent(offset.low()), percent(offset.high()));
    }

    /** What to write into the person's file, or why to write nothing. */
    static String line(Replay replay) {
        return replay.offset().isUsable()
                ? Prose.text(
                        "replay.line",
                        percent(replay.offset().best()),
                        percent(replay.asIs().scenario().person().heatOffset()))
                : Prose.text("replay.line.none");
    }

    private static void table(Replay replay, Replay.Channel channel, List<String> lines) {
        lines.add(Prose.text("replay.sensor." + channel.sensor()));
        lines.add(Prose.text("replay.table.head"));
        for (int i = 0; i < channel.time().length; i++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%6s %9s %10s %10s",
                    Wording.clock(replay.asIs(), channel.time()[i]),
                    Figures.decimals(channel.logged()[i], 1),
                    Figures.decimals(channel.asIs()[i], 1),
                    replay.offset().isUsable() ? Figures.decimals(channel.fitted()[i], 1) : "-"));
        }
        lines.add(Prose.text(
                replay.offset().isUsable() ? "replay.misfit" : "replay.misfit.only",
                Figures.decimals(channel.misfit(false), 2),
                Figures.decimals(channel.misfit(true), 2)));
    }

    static String percent(double factor) {
        return Figures.whole(100 * factor) + " %";
    }
}
