package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import longnight.study.Assumption;
import longnight.study.Effect;
import longnight.study.Spread;
import longnight.study.Worth;
import org.apache.commons.csv.CSVPrinter;

/** The folder of an answer about what changes are worth: two pictures, two tables, JSON and notes. */
public final class WorthFiles {
    static final String CHANGES = "worth.csv";
    private static final String ASSUMPTIONS = "assumptions.csv";
    private static final String NOTES = "notes.txt";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = List.of(
            WorthCharts.CHANGES + ".png",
            WorthCharts.CHANGES + ".svg",
            WorthCharts.ASSUMPTIONS + ".png",
            WorthCharts.ASSUMPTIONS + ".svg",
            CHANGES,
            ASSUMPTIONS,
            WorthJson.FILE,
            NOTES,
            AnswerPage.FILE);

    private WorthFiles() {}

    /** All of them. */
    public static Bundle of(Worth worth, Units units) {
        return new Bundle(NAMES)
                .picture(WorthCharts.CHANGES, () -> WorthCharts.changes(worth, units))
                .picture(WorthCharts.ASSUMPTIONS, () -> WorthCharts.assumptions(worth, units))
                .file(CHANGES, csv(worth, units, printer -> changes(worth, units, printer)))
                .file(ASSUMPTIONS, csv(worth, units, printer -> assumptions(worth, units, printer)))
                .file(WorthJson.FILE, WorthJson.text(worth))
                .notes(NOTES, notes(worth, units))
                .report(page(worth, units));
    }

    private static AnswerPage page(Worth worth, Units units) {
        List<String> told = new ArrayList<>(List.of(WorthWording.planned(worth, units)));
        told.addAll(WorthWording.notes(worth, units));
        return new AnswerPage(
                Prose.text("html.worth.title"),
                WorthWording.answer(worth, units),
                Wording.atRisk(worth.asPlanned()),
                Wording.who(worth.asPlanned()),
                told,
                WorthWording.caution(),
                worth.cautions(),
                worth.asPlanned().guessed(),
                units);
    }

    private static String csv(Worth worth, Units units, StudyTexts.Rows rows) {
        List<String> remarks =
                new ArrayList<>(List.of(Wording.who(worth.asPlanned()), WorthWording.planned(worth, units)));
        remarks.addAll(WorthWording.notes(worth, units));
        if (worth.draws() != null) {
            remarks.add(WorthWording.bands(worth.draws(), units));
        }
        remarks.add(WorthWording.caution());
        return StudyTexts.table(remarks, worth.cautions(), units, rows);
    }

    private static void changes(Worth worth, Units units, CSVPrinter printer) throws IOException {
        String heat = HourCsv.unit(units, Measure.HEAT);
        printer.printRecord(
                "change",
                "extra heat saved [W]",
                "shortfall heat saved" + heat,
                "core-heat deficit at the end saved" + heat,
                "colder night carried" + HourCsv.unit(units, Measure.DIFFERENCE),
                "carried more" + HourCsv.unit(units, Measure.PIECE),
                "shortfall heat saved per mass [" + units.unit(Measure.HEAT) + "/" + units.unit(Measure.PIECE) + "]",
                "paid more [money]",
                "shortfall heat saved per money" + heat,
                "demand then [1]",
                "outcome then",
                "run stopped",
                "shortfall heat saved, 10 % of the model's draws below" + heat,
                "shortfall heat saved, 50 % of the model's draws below" + heat,
                "shortfall heat saved, 90 % of the model's draws below" + heat,
                "told apart from nothing");
        for (Effect effect : worth.effects()) {
            Spread drawn = effect.drawn();
            printer.printRecord(
                    WorthWording.name(effect.change(), units),
                    Figures.exact(effect.extraHeat()),
                    exact(units, Measure.HEAT, effect.shortfall()),
                    exact(units, Measure.HEAT, effect.deficit()),
                    Double.isInfinite(effect.kelvin())
                            ? effect.kelvin() > 0 ? "beyond the range" : "below the range"
                            : exact(units, Measure.DIFFERENCE, effect.kelvin()),
                    exact(units, Measure.PIECE, effect.change().mass()),
                    Figures.exact(units.value(Measure.HEAT, effect.perMass()) / units.value(Measure.PIECE, 1)),
                    Figures.exact(effect.change().price()),
                    exact(units, Measure.HEAT, effect.perPrice()),
                    Figures.exact(effect.demand()),
                    JsonText.word(effect.outcome()),
                    effect.stopped() ? "yes" : "no",
                    drawn == null ? "" : exact(units, Measure.HEAT, drawn.low()),
                    drawn == null ? "" : exact(units, Measure.HEAT, drawn.middle()),
                    drawn == null ? "" : exact(units, Measure.HEAT, drawn.high()),
                    drawn == null ? "" : effect.isLost() ? "no" : "yes");
        }
    }

    private static String exact(Units units, Measure measure, double value) {
        return Figures.exact(units.value(measure, value));
    }

    private static void assumptions(Worth worth, Units units, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "assumption",
                "of",
                "lowest tried",
                "highest tried",
                "shortfall heat more at the lowest" + HourCsv.unit(units, Measure.HEAT),
                "shortfall heat more at the highest" + HourCsv.unit(units, Measure.HEAT));
        for (Assumption assumption : worth.assumptions()) {
            printer.printRecord(
                    assumption.kind() == Assumption.Kind.INPUT
                            ? WorthWording.name(assumption, units)
                            : assumption.name().replace("+", " + "),
                    JsonText.word(assumption.kind()),
                    assumption.from(),
                    assumption.to(),
                    exact(units, Measure.HEAT, assumption.low()),
                    exact(units, Measure.HEAT, assumption.high()));
        }
    }

    private static String notes(Worth worth, Units units) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", worth.asPlanned().scenario().title()))
                .append('\n');
        text.append(Wording.who(worth.asPlanned())).append('\n');
        text.append(WorthWording.planned(worth, units)).append("\n\n");
        text.append(WorthWording.answer(worth, units)).append("\n\n");
        for (String note : WorthWording.notes(worth, units)) {
            text.append(note).append("\n\n");
        }
        text.append(WorthWording.caution()).append("\n\n");
        text.append(Notes.end(worth.cautions(), worth.asPlanned().guessed(), units));
        return Wording.clean(text.toString());
    }
}
