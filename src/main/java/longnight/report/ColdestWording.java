package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.clothing.Fabric;
import longnight.night.ModelRange;
import longnight.night.Verdict;
import longnight.study.ArrivedDamp;
import longnight.study.Coldest;
import longnight.study.Limit;
import longnight.study.Line;

/** The sentences that the outputs of one answer about the coldest night share. */
final class ColdestWording {
    private ColdestWording() {}

    /** The answer in a sentence or two. */
    static String answer(Coldest coldest) {
        Limit damp = coldest.curves().get(1).ownWind();
        return answer(coldest.main().ownWind(), coldest.line())
                + " "
                + Prose.text(
                        "coldest.answer.damp." + damp.reach().name(),
                        degrees(damp.air().mean()));
    }

    private static String answer(Limit own, Line line) {
        return switch (own.reach()) {
            case FOUND ->
                Prose.text(
                        "coldest.found",
                        degrees(own.air().mean()),
                        degrees(own.air().lowest()),
                        line(line));
            case COLDER_THAN_MODEL -> Prose.text("coldest.beyond", line(line), edge());
            case NOT_EVEN_WARM -> Prose.text("coldest.never", line(line), warmEdge());
        };
    }

    /** What is at risk in that night, and what the night given asks. */
    static String beside(Coldest coldest) {
        Limit own = coldest.main().ownWind();
        Verdict there = own.verdict();
        String risk = there == null
                ? ""
                : there.atRisk().stream()
                        .map(each -> Wording.atRisk(coldest.asGiven(), each))
                        .collect(Collectors.joining(" "));
        return risk.isEmpty() ? "" : Prose.text("coldest.risk", risk);
    }

    /** How the night that was given compares. */
    static String given(Coldest coldest) {
        return Prose.text(
                "coldest.given",
                degrees(coldest.air().mean()),
                degrees(coldest.air().lowest()),
                asked(coldest.line(), coldest.line().asked(coldest.asGiven())),
                Wording.verdict(coldest.asGiven()));
    }

    /** Whose curve it is: person, dry or damp. */
    static String name(Coldest.Curve curve) {
        return Prose.text(
                curve.damp() ? "coldest.damp" : "coldest.dry", curve.person().name());
    }

    /** The line in words. */
    static String line(Line line) {
        return Prose.text("coldest.line." + line.measure().name(), asked(line, line.limit()));
    }

    /** An amount in the measure's unit. */
    static String asked(Line line, double amount) {
        return switch (line.measure()) {
            case DEMAND -> Figures.decimals(amount, 2);
            case SHORTFALL_HEAT, CORE_HEAT_DEFICIT -> Figures.kilojoules(amount);
        };
    }

    /** A temperature, or a word where there is none. */
    static String cell(Limit limit) {
        return switch (limit.reach()) {
            case FOUND -> degrees(limit.air().mean());
            case COLDER_THAN_MODEL -> Prose.text("coldest.cell.beyond");
            case NOT_EVEN_WARM -> Prose.text("coldest.cell.never");
        };
    }

    /** "2.15 not from 23:10". */
    static String cell(Coldest coldest, Coldest.Cell cell) {
        return Figures.decimals(cell.demand(), 2) + " " + word(coldest, cell);
    }

    /** "not from 23:10". */
    static String word(Coldest coldest, Coldest.Cell cell) {
        Verdict verdict = cell.verdict();
        String key = "coldest.word." + verdict.outcome().name();
        return Double.isNaN(verdict.from())
                ? Prose.text(key)
                : Prose.text(key, Wording.clock(coldest.asGiven(), verdict.from()));
    }

    /** What the words in the table of temperatures mean, what is meant by damp, and where colder nights are carried again. */
    static List<String> notes(Coldest coldest) {
        List<String> notes = new ArrayList<>();
        List<Limit> all = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            all.add(curve.ownWind());
            all.addAll(curve.limits());
        }
        if (all.stream().anyMatch(limit -> limit.reach() == Limit.Reach.COLDER_THAN_MODEL)) {
            notes.add(Prose.text("coldest.note.beyond", edge()));
        }
        if (all.stream().anyMatch(limit -> limit.reach() == Limit.Reach.NOT_EVEN_WARM)) {
            notes.add(Prose.text("coldest.note.never", warmEdge()));
        }
        notes.add(again(coldest));
        notes.removeIf(String::isEmpty);
        notes.add(Prose.text("coldest.note.moved"));
        notes.add(damp());
        notes.add(
                Prose.text("coldest.note.weak", coldest.curves().get(2).person().name()));
        notes.add(Prose.text("coldest.note.nights", String.valueOf(coldest.nights())));
        return notes;
    }

    private static String again(Coldest coldest) {
        List<String> cases = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            addAgain(name(curve), Prose.text("coldest.wind.own"), curve.ownWind(), cases);
            for (int i = 0; i < curve.limits().size(); i++) {
                addAgain(name(curve), wind(Coldest.WINDS.get(i)), curve.limits().get(i), cases);
            }
        }
        return cases.isEmpty() ? "" : Prose.text("coldest.note.again", String.join("; ", cases));
    }

    private static void addAgain(String who, String wind, Limit limit, List<String> cases) {
        for (Limit.Stretch stretch : limit.again()) {
            cases.add(Prose.text(
                    "coldest.note.again.case",
                    who,
                    wind,
                    degrees(stretch.warmest()),
                    stretch.open() ? Prose.text("coldest.note.again.open") : degrees(stretch.coldest()) + " °C"));
        }
    }

    private static String damp() {
        return Prose.text(
                "coldest.note.damp",
                percent(ArrivedDamp.cloth(Fabric.POLYESTER_KNIT)),
                percent(ArrivedDamp.cloth(Fabric.COTTON_KNIT)),
                percent(ArrivedDamp.cloth(Fabric.FLEECE)),
                percent(ArrivedDamp.FILL),
                percent(ArrivedDamp.cloth(Fabric.LEATHER)));
    }

    private static String percent(double share) {
        return Figures.whole(100 * share);
    }

    static String wind(double speed) {
        return Figures.significant(speed, 3);
    }

    static String degrees(double celsius) {
        return Figures.decimals(celsius, 1);
    }

    private static String edge() {
        return Figures.whole(ModelRange.COLDEST_AIR);
    }

    private static String warmEdge() {
        return Figures.whole(ModelRange.WARMEST_AIR);
    }

    /** Beside the cautions of the nights themselves. */
    static String caution() {
        return Prose.text("coldest.caution");
    }
}
