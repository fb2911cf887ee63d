package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import longnight.assumption.Guess;
import longnight.night.Caution;
import longnight.study.DesignNight;
import longnight.study.KitNight;
import longnight.study.Winter;
import longnight.study.Winters;

/** The files of a station's record: charts, winters and nights as tables, JSON, notes, and the design nights to run. */
public final class WintersFiles {
    private static final String WINTERS = "winters.csv";
    private static final String NIGHTS = "nights.csv";
    private static final String JSON = "winters.json";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = Stream.concat(
                    Stream.of(
                            WintersCharts.EXPECTED + ".png",
                            WintersCharts.EXPECTED + ".svg",
                            WintersCharts.NIGHTS + ".png",
                            WintersCharts.NIGHTS + ".svg",
                            WINTERS,
                            NIGHTS,
                            JSON,
                            Notes.FILE,
                            AnswerPage.FILE),
                    Stream.of(DesignNight.Kind.values()).flatMap(kind -> Stream.of(weather(kind), night(kind))))
            .toList();

    private WintersFiles() {}

    /** Name of the weather file of a design night. */
    public static String weatherFile(DesignNight design) {
        return weather(design.kind());
    }

    /** Name of the night file of a design night. */
    public static String nightFile(DesignNight design) {
        return night(design.kind());
    }

    private static String weather(DesignNight.Kind kind) {
        return kind.word() + "-weather.yaml";
    }

    private static String night(DesignNight.Kind kind) {
        return kind.word() + ".yaml";
    }

    /**
     * What belongs into the folder.
     *
     * @param nights texts of the design nights' files, by name
     */
    public static Bundle of(Winters answer, Map<String, String> nights, Units units) {
        Bundle bundle = new Bundle(NAMES);
        if (answer.expected() != null) {
            bundle.picture(WintersCharts.EXPECTED, () -> WintersCharts.expected(answer, units));
        }
        if (answer.nights().stream().anyMatch(night -> !night.isOutside())) {
            bundle.picture(WintersCharts.NIGHTS, () -> WintersCharts.nights(answer, units));
        }
        bundle.file(WINTERS, winters(answer, units));
        if (!answer.nights().isEmpty()) {
            bundle.file(NIGHTS, nights(answer, units));
        }
        nights.forEach(bundle::file);
        return bundle.file(JSON, json(answer))
                .notes(Notes.FILE, notes(answer, units))
                .report(page(answer, units));
    }

    private static AnswerPage page(Winters answer, Units units) {
        WintersPage words = new WintersPage(answer, units);
        List<Guess> guessed = new ArrayList<>();
        answer.designs().forEach(design -> guessed.addAll(design.guesses()));
        if (answer.kit() != null) {
            guessed.addAll(answer.kit().guesses());
        }
        return new AnswerPage(
                Prose.text("html.winters.title"),
                words.headline(),
                "",
                words.about(),
                words.paragraphs().stream()
                        .skip(2)
                        .filter(line -> !line.startsWith(" "))
                        .toList(),
                "",
                answer.cautions(),
                guessed,
                units);
    }

    private static String notes(Winters answer, Units units) {
        StringBuilder text = new StringBuilder(Prose.text("winters.notes.title", answer.station())).append("\n\n");
        new WintersPage(answer, units)
                .paragraphs()
                .forEach(paragraph -> text.append(paragraph).append('\n'));
        text.append('\n').append(Prose.text("caution.heading")).append("\n\n");
        for (Caution caution : answer.cautions()) {
            text.append(Wording.fullText(caution, units).replace("\n", "\n\n")).append("\n\n");
        }
        text.append(Prose.text("notes.guessed")).append("\n\n");
        for (DesignNight design : answer.designs()) {
            for (Guess guess : design.guesses()) {
                text.append(Prose.text("winters.kind." + design.kind()))
                        .append(' ')
                        .append(StudyTexts.guess(guess, units))
                        .append('\n');
            }
        }
        if (answer.kit() != null) {
            answer.kit()
                    .guesses()
                    .forEach(
                            guess -> text.append(StudyTexts.guess(guess, units)).append('\n'));
        }
        return Wording.clean(text.toString());
    }

    // --- Tables ---

    private static String winters(Winters answer, Units units) {
        return table(answer, units, printer -> {
            printer.printRecord(
                    "winter",
                    "lowest air" + HourCsv.unit(units, Measure.TEMPERATURE),
                    "date",
                    "coverage of the coldest three months [1]",
                    "counted [1]");
            for (Winter winter : answer.winters()) {
                boolean counted =
                        answer.expected() != null && answer.expected().winters().contains(winter);
                printer.printRecord(
                        answer.typicalYear() ? "typical" : winter.label(answer.south()),
                        Figures.exact(units.value(Measure.TEMPERATURE, winter.minimum())),
                        WintersPage.day(answer, winter.date()),
                        Figures.exact(winter.coverage()),
                        counted ? 1 : 0);
            }
        });
    }

    private static String nights(Winters answer, Units units) {
        return table(answer, units, printer -> {
            printer.printRecord(
                    "rank",
                    "evening of",
                    "outcome",
                    "shortfall heat" + HourCsv.unit(units, Measure.HEAT),
                    "largest core-heat deficit, signed" + HourCsv.unit(units, Measure.HEAT),
                    "demand [1]",
                    "stopped after [h]",
                    "mean air" + HourCsv.unit(units, Measure.TEMPERATURE),
                    "lowest air" + HourCsv.unit(units, Measure.TEMPERATURE),
                    "mean wind at 10 m" + HourCsv.unit(units, Measure.WIND),
                    "mean cloud [1]",
                    "precipitation" + HourCsv.unit(units, Measure.RAIN),
                    "at risk",
                    "guessed");
            int rank = 0;
            for (KitNight night : answer.nights()) {
                List<Object> cells = new ArrayList<>();
                cells.add(++rank);
                cells.add(WintersPage.day(answer, night.night().date()));
                cells.add(night.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '));
                for (double value : figures(night, units)) {
                    cells.add(Figures.exact(value));
                }
                cells.add(String.join(
                        " ",
                        night.atRisk().stream()
                                .map(part -> part.name().toLowerCase(Locale.ROOT))
                                .toList()));
                cells.add((night.night().cloudUnknown() ? "cloud " : "")
                        + (night.night().rainUnknown() ? "precipitation" : ""));
                printer.printRecord(cells);
            }
        });
    }

    private static double[] figures(KitNight night, Units units) {
        return new double[] {
            units.value(Measure.HEAT, night.shortfall()),
            units.value(Measure.HEAT, night.deficit()),
            night.demand(),
            night.stopped() / 3600,
            units.value(Measure.TEMPERATURE, night.night().meanAir()),
            units.value(Measure.TEMPERATURE, night.night().lowestAir()),
            units.value(Measure.WIND, night.night().meanWind()),
            night.night().meanCloud(),
            units.value(Measure.RAIN, night.night().rain())
        };
    }

    private static String table(Winters answer, Units units, StudyTexts.Rows rows) {
        WintersPage words = new WintersPage(answer, units);
        return StudyTexts.table(List.of(words.about(), words.headline()), answer.cautions(), units, rows);
    }

    /** The whole answer as JSON. */
    public static String json(Winters answer) {
        return WintersJson.text(answer);
    }
}
