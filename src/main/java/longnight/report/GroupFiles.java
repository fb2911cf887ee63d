package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longnight.assumption.Guess;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.study.Group;
import longnight.study.Handed;
import longnight.study.Rota;
import longnight.study.Standing;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** The folder of an answer about a group: pictures, tables, JSON and notes. */
public final class GroupFiles {
    static final String SPARES = "spares.csv";
    private static final String PEOPLE = "people.csv";
    private static final String HOURS = "people-hours.csv";
    private static final String ROTA = "rota.csv";
    static final String TURNS = "rota-turns.csv";
    private static final String WITH_SPARES = "even-with-spares-handed-out";
    private static final String NOTES = "notes.txt";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = List.of(
            GroupCharts.PEOPLE + ".png",
            GroupCharts.PEOPLE + ".svg",
            GroupCharts.SPARES + ".png",
            GroupCharts.SPARES + ".svg",
            GroupCharts.ROTA + ".png",
            GroupCharts.ROTA + ".svg",
            PEOPLE,
            HOURS,
            SPARES,
            ROTA,
            TURNS,
            GroupJson.FILE,
            AnswerPage.FILE,
            NOTES);

    private final Group group;
    private final Units units;
    private final GroupWords words;

    private GroupFiles(Group group, Units units) {
        this.group = group;
        this.units = units;
        words = new GroupWords(group, units);
    }

    /** All that apply: those on spares and on the huddle only where there are any. */
    public static Bundle of(Group group, Units units) {
        return new GroupFiles(group, units).bundle();
    }

    private Bundle bundle() {
        GroupCharts charts = new GroupCharts(group, units);
        Bundle bundle = new Bundle(NAMES)
                .picture(GroupCharts.PEOPLE, charts::people)
                .file(PEOPLE, csv(this::people))
                .file(HOURS, csv(this::hours));
        if (!group.question().spares().isEmpty()) {
            bundle.picture(GroupCharts.SPARES, charts::spares).file(SPARES, csv(this::spares));
        }
        if (!group.rotas().isEmpty()) {
            bundle.picture(GroupCharts.ROTA, charts::rota)
                    .file(ROTA, csv(this::rotas))
                    .file(TURNS, csv(this::turns));
        }
        return bundle.file(GroupJson.FILE, GroupJson.text(group))
                .notes(NOTES, notes())
                .report(page());
    }

    private AnswerPage page() {
        List<String> told = new ArrayList<>(words.spares());
        told.addAll(words.rotas());
        told.addAll(words.notes());
        return new AnswerPage(
                Prose.text("html.group.title"),
                words.headline(),
                words.atRisk(),
                words.about(),
                told,
                GroupWords.caution(),
                group.cautions(),
                guesses(),
                units);
    }

    private String csv(StudyTexts.Rows rows) {
        List<String> remarks = new ArrayList<>(List.of(words.about(), words.headline()));
        remarks.addAll(words.spares());
        remarks.addAll(words.rotas());
        remarks.addAll(words.notes());
        remarks.add(GroupWords.caution());
        return StudyTexts.table(remarks, group.cautions(), units, rows);
    }

    private String unit(Measure measure) {
        return " [" + units.unit(measure) + "]";
    }

    private String cell(Measure measure, double value) {
        return Figures.exact(units.value(measure, value));
    }

    /** A heat at the end of the night; empty for a reckoning that stopped before, lest it look cheap. */
    private String atEnd(NightResult result, double joules) {
        return Double.isNaN(result.stopped()) ? cell(Measure.HEAT, joules) : "";
    }

    private void people(CSVPrinter printer) throws IOException {
        printer.printRecord(
                "place from the most exposed on",
                "id",
                "person",
                "kit",
                "kit mass" + unit(Measure.LOAD),
                "reserve [1]",
                "reserve [W]",
                "demand [1]",
                "shortfall heat" + unit(Measure.HEAT),
                "core-heat deficit at the end" + unit(Measure.HEAT),
                "lowest hand" + unit(Measure.TEMPERATURE),
                "lowest foot" + unit(Measure.TEMPERATURE),
                "outcome");
        int place = 0;
        for (Standing one : group.standings()) {
            NightResult result = one.result();
            printer.printRecord(
                    String.valueOf(++place),
                    Wording.clean(one.id()),
                    Wording.clean(result.scenario().person().name()),
                    Wording.clean(result.scenario().kitName()),
                    cell(Measure.LOAD, result.kitMass()),
                    Figures.exact(one.reserve()),
                    Figures.exact(one.reserveHeat()),
                    Figures.exact(result.demand()),
                    atEnd(result, result.shortfallHeat()),
                    atEnd(result, result.coreHeatDeficitDawn()),
                    cell(Measure.TEMPERATURE, Summary.hand(result)),
                    cell(Measure.TEMPERATURE, Summary.foot(result)),
                    JsonText.word(result.verdict().outcome()));
        }
    }

    private void hours(CSVPrinter printer) throws IOException {
        printer.printRecord(
                "id",
                "time since dusk [h]",
                "clock [HH:MM]",
                "reserve of the last four hours [1]",
                "shortfall heat" + unit(Measure.HEAT),
                "core-heat deficit" + unit(Measure.HEAT));
        for (Standing one : group.standings()) {
            for (HourRow row : one.result().hours()) {
                printer.printRecord(
                        Wording.clean(one.id()),
                        Figures.exact(row.time() / 3600),
                        Figures.clock(row.clock()),
                        Figures.exact(Standing.LINE - row.demand()),
                        cell(Measure.HEAT, row.shortfall()),
                        cell(Measure.HEAT, row.coreHeatDeficit()));
            }
        }
    }

    private void spares(CSVPrinter printer) throws IOException {
        printer.printRecord(
                "spare",
                "how many",
                "for",
                "for the most exposed",
                "mass" + unit(Measure.PIECE),
                "shortfall heat saved" + unit(Measure.HEAT),
                "shortfall heat saved per mass" + unit(Measure.HEAT_PER_MASS),
                "reserve then [1]",
                "outcome then",
                "most exposed then",
                "reserve of the most exposed then [1]");
        for (Handed each : group.spares()) {
            printer.printRecord(
                    Wording.clean(each.spare().id()),
                    String.valueOf(each.spare().count()),
                    Wording.clean(each.before().id()),
                    each.toWeakest() ? "yes" : "no",
                    cell(Measure.PIECE, each.spare().mass()),
                    cell(Measure.HEAT, each.saved()),
                    cell(Measure.HEAT_PER_MASS, each.perMass()),
                    Figures.exact(each.after().reserve()),
                    JsonText.word(each.after().result().verdict().outcome()),
                    Wording.clean(each.weakest().id()),
                    Figures.exact(each.weakest().reserve()));
        }
    }

    private void rotas(CSVPrinter printer) throws IOException {
        printer.printRecord(
                "turns",
                "id",
                "outside [h]",
                "reserve [1]",
                "shortfall heat" + unit(Measure.HEAT),
                "core-heat deficit at the end" + unit(Measure.HEAT),
                "outcome");
        for (Rota rota : group.rotas()) {
            rota(printer, JsonText.word(rota.kind()), rota);
        }
        @Nullable Rota together = group.together();
        if (together != null) {
            rota(printer, WITH_SPARES, together);
        }
    }

    private void rota(CSVPrinter printer, String turns, Rota rota) throws IOException {
        for (Standing one : rota.standings()) {
            printer.printRecord(
                    turns,
                    Wording.clean(one.id()),
                    Figures.exact(rota.outsideFor().getOrDefault(one.id(), Double.NaN) / 3600),
                    Figures.exact(one.reserve()),
                    atEnd(one.result(), one.result().shortfallHeat()),
                    atEnd(one.result(), one.result().coreHeatDeficitDawn()),
                    JsonText.word(one.result().verdict().outcome()));
        }
    }

    private void turns(CSVPrinter printer) throws IOException {
        printer.printRecord("turns", "from [HH:MM]", "outside");
        for (Rota rota : group.rotas()) {
            turns(printer, JsonText.word(rota.kind()), rota);
        }
        @Nullable Rota together = group.together();
        if (together != null) {
            turns(printer, WITH_SPARES, together);
        }
    }

    private void turns(CSVPrinter printer, String turns, Rota rota) throws IOException {
        double dusk = group.weakest().result().scenario().plan().startOfDay();
        for (int i = 0; i < rota.outside().size(); i++) {
            printer.printRecord(
                    turns,
                    Figures.clock(dusk + i * rota.swap()),
                    Wording.clean(String.join(" + ", rota.outside().get(i))));
        }
    }

    private String notes() {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", Wording.name(group.question().name())))
                .append('\n');
        GroupPage.body(group, units).forEach(line -> text.append(line).append('\n'));
        text.append('\n');
        for (Standing one : group.standings()) {
            text.append(words.line(one)).append('\n');
            text.append((Wording.verdict(one.result(), units) + " " + Wording.atRisk(one.result(), units)).strip())
                    .append("\n\n");
        }
        text.append(GroupWords.caution()).append("\n\n");
        text.append(Notes.end(group.cautions(), guesses(), units));
        return Wording.clean(text.toString());
    }

    private List<Guess> guesses() {
        Set<Guess> guesses = new LinkedHashSet<>();
        group.standings().forEach(one -> guesses.addAll(one.result().guessed()));
        group.question().spares().forEach(spare -> guesses.addAll(spare.guesses()));
        return List.copyOf(guesses);
    }
}
