package longnight.report;

import java.util.List;
import longnight.night.Caution;
import longnight.study.HeatOffset;
import longnight.study.Replay;

/** The files of a replayed night: a chart, the half hours as a table, JSON and notes. */
public final class ReplayFiles {
    private static final String TABLE = "replay.csv";
    private static final String JSON = "replay.json";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES =
            List.of(ReplayChart.NAME + ".png", ReplayChart.NAME + ".svg", TABLE, JSON, Notes.FILE, AnswerPage.FILE);

    private ReplayFiles() {}

    /** What belongs into the folder. */
    public static Bundle of(Replay replay, Units units) {
        Bundle bundle = new Bundle(NAMES);
        if (!replay.seen().isEmpty()) {
            bundle.picture(ReplayChart.NAME, () -> ReplayChart.of(replay, units));
        }
        return bundle.file(TABLE, table(replay, units))
                .file(JSON, json(replay))
                .notes(Notes.FILE, notes(replay, units))
                .report(page(replay, units));
    }

    private static AnswerPage page(Replay replay, Units units) {
        return new AnswerPage(
                Prose.text("html.replay.title"),
                ReplayPage.headline(replay),
                "",
                Wording.who(replay.asIs()),
                ReplayPage.sentences(replay, units),
                "",
                replay.cautions(),
                replay.asIs().guessed(),
                units);
    }

    private static String notes(Replay replay, Units units) {
        StringBuilder text = new StringBuilder();
        ReplayPage.paragraphs(replay, units).forEach(line -> text.append(line).append('\n'));
        text.append('\n').append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : replay.cautions()) {
            text.append(Wording.fullText(caution, units).replace("\n", "\n\n")).append("\n\n");
        }
        text.append(Prose.text("notes.guessed")).append("\n\n");
        replay.asIs()
                .guessed()
                .forEach(guess -> text.append(StudyTexts.guess(guess, units)).append('\n'));
        return Wording.clean(text.toString());
    }

    private static String table(Replay replay, Units units) {
        String degrees = HourCsv.unit(units, Measure.TEMPERATURE);
        return StudyTexts.table(
                List.of(Wording.who(replay.asIs()), ReplayPage.headline(replay), ReplayPage.line(replay)),
                replay.cautions(),
                units,
                printer -> {
                    printer.printRecord(
                            "sensor",
                            "time since dusk [h]",
                            "clock [HH:MM]",
                            "logged" + degrees,
                            "model, person as in the file" + degrees,
                            "model, fitted" + degrees);
                    for (Replay.Channel channel : replay.seen()) {
                        for (int i = 0; i < channel.time().length; i++) {
                            printer.printRecord(
                                    StudyTexts.word(channel.sensor()),
                                    Figures.exact(channel.time()[i] / 3600),
                                    Wording.clock(replay.asIs(), channel.time()[i]),
                                    celsius(units, channel.logged()[i]),
                                    celsius(units, channel.asIs()[i]),
                                    replay.offset().isUsable() ? celsius(units, channel.fitted()[i]) : "");
                        }
                    }
                });
    }

    private static String celsius(Units units, double degrees) {
        return Figures.exact(units.value(Measure.TEMPERATURE, degrees));
    }

    /** The whole answer as JSON, format longnight-replay/1; units as in {@link ResultJson}. */
    public static String json(Replay replay) {
        HeatOffset offset = replay.offset();
        return StudyTexts.json("longnight-replay/1", replay.cautions(), json -> {
            json.writeStringField("headline", ReplayPage.headline(replay));
            json.writeStringField("told", StudyTexts.word(offset.told()));
            StudyTexts.number(
                    json, "heatFactorOfFile", replay.asIs().scenario().person().heatOffset());
            StudyTexts.number(json, "heatFactorBest", offset.best());
            StudyTexts.number(json, "heatFactorLow", offset.low());
            StudyTexts.number(json, "heatFactorHigh", offset.high());
            json.writeBooleanField("usable", offset.isUsable());
            json.writeNumberField("halfHours", offset.halfHours());
            json.writeNumberField("notes", offset.notes());
            json.writeArrayFieldStart("likelihood");
            for (int i = 0; i < offset.tried().length; i++) {
                json.writeStartObject();
                StudyTexts.number(json, "heatFactor", offset.tried()[i]);
                StudyTexts.number(json, "minusTwiceLog", offset.misfit()[i]);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("halfHourMeans");
            for (Replay.Channel channel : replay.seen()) {
                for (int i = 0; i < channel.time().length; i++) {
                    json.writeStartObject();
                    json.writeStringField("sensor", StudyTexts.word(channel.sensor()));
                    StudyTexts.number(json, "time_s", channel.time()[i]);
                    StudyTexts.number(json, "logged_degC", channel.logged()[i]);
                    StudyTexts.number(json, "model_degC", channel.asIs()[i]);
                    StudyTexts.number(json, "fitted_degC", offset.isUsable() ? channel.fitted()[i] : Double.NaN);
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
        });
    }
}
