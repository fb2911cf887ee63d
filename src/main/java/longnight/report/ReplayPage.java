package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import longnight.study.HeatOffset;
import longnight.study.Replay;
import longnight.study.Sensor;

/** The page of a replayed night. */
public final class ReplayPage {
    private ReplayPage() {}

    /** The whole page, lines ended by a line feed. */
    public static String text(Replay replay, Units units) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : paragraphs(replay, units)) {
            if (paragraph.startsWith(" ") || paragraph.isEmpty()) {
                lines.add(paragraph); // a row of a table
            } else {
                lines.addAll(Console.wrapped(paragraph, 2));
            }
        }
        String cautions = replay.cautions().stream()
                .map(caution -> Wording.shortText(caution, units))
                .collect(Collectors.joining(" "));
        lines.addAll(Console.wrapped(Prose.text("caution.heading") + ": " + cautions, 2));
        return Console.plain(String.join("\n", lines) + "\n");
    }

    /** Everything but the cautions. */
    static List<String> paragraphs(Replay replay, Units units) {
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
            table(replay, channel, units, lines);
        }
        lines.add(Prose.text(
                "replay.verdict",
                percent(replay.asIs().scenario().person().heatOffset()),
                Wording.verdict(replay.asIs(), units)));
        if (replay.offset().isUsable()) {
            lines.add(Prose.text(
                    "replay.verdict", percent(replay.offset().best()), Wording.verdict(replay.fitted(), units)));
        }
        lines.add(Prose.text(
                "replay.method",
                units.line(Measure.DIFFERENCE, Sensor.CORE.constant()),
                units.line(Measure.DIFFERENCE, Sensor.SKIN.constant())));
        return lines;
    }

    /** What is told below the answer, without tables. */
    static List<String> sentences(Replay replay, Units units) {
        List<String> all = paragraphs(replay, units);
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

    private static void table(Replay replay, Replay.Channel channel, Units units, List<String> lines) {
        lines.add(Prose.text("replay.sensor." + channel.sensor(), units.unit(Measure.TEMPERATURE)));
        lines.add(Prose.text("replay.table.head"));
        for (int i = 0; i < channel.time().length; i++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%6s %9s %10s %10s",
                    Wording.clock(replay.asIs(), channel.time()[i]),
                    units.number(Measure.TEMPERATURE, channel.logged()[i]),
                    units.number(Measure.TEMPERATURE, channel.asIs()[i]),
                    replay.offset().isUsable() ? units.number(Measure.TEMPERATURE, channel.fitted()[i]) : "-"));
        }
        lines.add(Prose.text(
                replay.offset().isUsable() ? "replay.misfit" : "replay.misfit.only",
                units.rough(Measure.DIFFERENCE, channel.misfit(false)),
                units.rough(Measure.DIFFERENCE, channel.misfit(true))));
    }

    static String percent(double factor) {
        return Figures.whole(100 * factor) + " %";
    }
}
