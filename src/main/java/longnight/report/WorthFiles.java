package longnight.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import longnight.study.Assumption;
import longnight.study.Effect;
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
    public static Bundle of(Worth worth) {
        return new Bundle(NAMES)
                .picture(WorthCharts.CHANGES, () -> WorthCharts.changes(worth))
                .picture(WorthCharts.ASSUMPTIONS, () -> WorthCharts.assumptions(worth))
                .file(CHANGES, csv(worth, printer -> changes(worth, printer)))
                .file(ASSUMPTIONS, csv(worth, printer -> assumptions(worth, printer)))
                .file(WorthJson.FILE, WorthJson.text(worth))
                .notes(NOTES, notes(worth))
                .report(page(worth));
    }

    private static AnswerPage page(Worth worth) {
        List<String> told = new ArrayList<>(List.of(WorthWording.planned(worth)));
        told.addAll(WorthWording.notes(worth));
        return new AnswerPage(
                Prose.text("html.worth.title"),
                WorthWording.answer(worth),
                Wording.atRisk(worth.asPlanned()),
                Wording.who(worth.asPlanned()),
                told,
                WorthWording.caution(),
                worth.cautions(),
                worth.asPlanned().guessed(),
                Units.METRIC);
    }

    private static String csv(Worth worth, StudyTexts.Rows rows) {
        List<String> remarks = new ArrayList<>(List.of(Wording.who(worth.asPlanned()), WorthWording.planned(worth)));
        remarks.addAll(WorthWording.notes(worth));
        remarks.add(WorthWording.caution());
        return StudyTexts.table(remarks, worth.cautions(), rows);
    }

    private static void changes(Worth worth, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "change",
                "extra heat saved [W]",
                "shortfall heat saved [kJ]",
                "core-heat deficit at the end saved [kJ]",
                "colder night carried [K]",
                "carried more [g]",
                "shortfall heat saved per mass [kJ/g]",
                "paid more [money]",
                "shortfall heat saved per money [kJ]",
                "demand then [1]",
                "outcome then",
                "run stopped");
        for (Effect effect : worth.effects()) {
            printer.printRecord(
                    WorthWording.name(effect.change()),
                    Figures.exact(effect.extraHeat()),
                    Figures.exact(effect.shortfall() / 1e3),
                    Figures.exact(effect.deficit() / 1e3),
                    Double.isInfinite(effect.kelvin())
                            ? effect.kelvin() > 0 ? "beyond the range" : "below the range"
                            : Figures.exact(effect.kelvin()),
                    Figures.exact(1e3 * effect.change().mass()),
                    Figures.exact(effect.perMass() / 1e6),
                    Figures.exact(effect.change().price()),
                    Figures.exact(effect.perPrice() / 1e3),
                    Figures.exact(effect.demand()),
                    JsonText.word(effect.outcome()),
                    effect.stopped() ? "yes" : "no");
        }
    }

    private static void assumptions(Worth worth, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "assumption",
                "of",
                "lowest tried",
                "highest tried",
                "shortfall heat more at the lowest [kJ]",
                "shortfall heat more at the highest [kJ]");
        for (Assumption assumption : worth.assumptions()) {
            printer.printRecord(
                    assumption.kind() == Assumption.Kind.INPUT
                            ? WorthWording.name(assumption)
                            : assumption.name().replace("+", " + "),
                    JsonText.word(assumption.kind()),
                    assumption.from(),
                    assumption.to(),
                    Figures.exact(assumption.low() / 1e3),
                    Figures.exact(assumption.high() / 1e3));
        }
    }

    private static String notes(Worth worth) {
        StringBuilder text = new StringBuilder();
        text.append(Prose.text("notes.title", worth.asPlanned().scenario().title()))
                .append('\n');
        text.append(Wording.who(worth.asPlanned())).append('\n');
        text.append(WorthWording.planned(worth)).append("\n\n");
        text.append(WorthWording.answer(worth)).append("\n\n");
        for (String note : WorthWording.notes(worth)) {
            text.append(note).append("\n\n");
        }
        text.append(WorthWording.caution()).append("\n\n");
        text.append(Notes.end(worth.cautions(), worth.asPlanned().guessed()));
        return Wording.clean(text.toString());
    }
}
