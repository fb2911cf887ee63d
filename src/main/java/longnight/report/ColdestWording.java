package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longnight.clothing.Fabric;
import longnight.night.ModelRange;
import longnight.night.Verdict;
import longnight.study.ArrivedDamp;
import longnight.study.Coldest;
import longnight.study.Draws;
import longnight.study.Limit;
import longnight.study.Line;
import longnight.study.Spread;

/** The sentences that the outputs of one answer about the coldest night share. */
final class ColdestWording {
    private ColdestWording() {}

    /** The answer in a sentence or two. */
    static String answer(Coldest coldest, Units units) {
        Limit damp = coldest.curves().get(1).ownWind();
        String answer = answer(coldest.main().ownWind(), coldest.line(), units)
                + " "
                + Prose.text(
                        "coldest.answer.damp." + damp.reach().name(),
                        units.text(Measure.TEMPERATURE, damp.air().mean()));
        Draws draws = coldest.draws();
        Spread dry = coldest.main().drawn();
        Spread wet = coldest.curves().get(1).drawn();
        return draws == null || dry == null || wet == null
                ? answer
                : answer + " "
                        + Prose.text(
                                "coldest.answer.band",
                                String.valueOf(draws.size()),
                                ends(dry, units),
                                ends(wet, units),
                                String.valueOf(draws.seed()));
    }

    private static String answer(Limit own, Line line, Units units) {
        return switch (own.reach()) {
            case FOUND ->
                Prose.text(
                        "coldest.found",
                        units.text(Measure.TEMPERATURE, own.air().mean()),
                        units.text(Measure.TEMPERATURE, own.air().lowest()),
                        line(line, units));
            case COLDER_THAN_MODEL -> Prose.text("coldest.beyond", line(line, units), edge(units));
            case NOT_EVEN_WARM -> Prose.text("coldest.never", line(line, units), warmEdge(units));
        };
    }

    /** What the table of bands shows. */
    static String bands(Draws draws, Units units) {
        return Prose.text(
                "coldest.bands",
                String.valueOf(draws.size()),
                String.valueOf(draws.seed()),
                units.unit(Measure.TEMPERATURE));
    }

    /** From the cold to the warm end of a band, in words where an end lies outside the model's air. */
    private static String ends(Spread drawn, Units units) {
        return Prose.text("coldest.band.ends", end(drawn.low(), units), end(drawn.high(), units));
    }

    private static String end(double celsius, Units units) {
        return Double.isFinite(celsius)
                ? units.text(Measure.TEMPERATURE, celsius)
                : Prose.text(celsius < 0 ? "coldest.band.beyond" : "coldest.band.never");
    }

    /** A temperature without its unit, or a word for what lies outside the model's air. */
    static String cell(double celsius, Units units) {
        return Double.isFinite(celsius)
                ? degrees(celsius, units)
                : Prose.text(celsius < 0 ? "coldest.cell.beyond" : "coldest.cell.never");
    }

    /** By how much an end of a band differs from the usual model's answer, with its sign; a dash where either has no number. */
    static String apart(double celsius, double usual, Units units) {
        double apart = celsius - usual;
        return Double.isFinite(apart)
                ? WorthWording.signed(units.value(Measure.DIFFERENCE, apart), units.decimals(Measure.DIFFERENCE))
                : Figures.NONE;
    }

    /** What is at risk in that night, and what the night given asks. */
    static String beside(Coldest coldest, Units units) {
        Limit own = coldest.main().ownWind();
        Verdict there = own.verdict();
        String risk = there == null
                ? ""
                : there.atRisk().stream()
                        .map(each -> Wording.atRisk(coldest.asGiven(), each, units))
                        .collect(Collectors.joining(" "));
        return risk.isEmpty() ? "" : Prose.text("coldest.risk", risk);
    }

    /** How the night that was given compares. */
    static String given(Coldest coldest, Units units) {
        return Prose.text(
                "coldest.given",
                units.text(Measure.TEMPERATURE, coldest.air().mean()),
                units.text(Measure.TEMPERATURE, coldest.air().lowest()),
                asked(coldest.line(), coldest.line().asked(coldest.asGiven()), units),
                Wording.verdict(coldest.asGiven(), units));
    }

    /** Whose curve it is: person, dry or damp. */
    static String name(Coldest.Curve curve) {
        return Prose.text(
                curve.damp() ? "coldest.damp" : "coldest.dry", curve.person().name());
    }

    /** The line in words. */
    static String line(Line line, Units units) {
        return Prose.text("coldest.line." + line.measure().name(), asked(line, line.limit(), units));
    }

    /** An amount with its unit. */
    private static String asked(Line line, double amount, Units units) {
        return switch (line.measure()) {
            case DEMAND -> Figures.decimals(amount, 2);
            case SHORTFALL_HEAT -> units.text(Measure.HEAT_PER_AREA, amount);
            case CORE_HEAT_DEFICIT -> units.text(Measure.HEAT, amount);
        };
    }

    /** A temperature, or a word where there is none. */
    static String cell(Limit limit, Units units) {
        return switch (limit.reach()) {
            case FOUND -> degrees(limit.air().mean(), units);
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
    static List<String> notes(Coldest coldest, Units units) {
        List<String> notes = new ArrayList<>();
        List<Limit> all = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            all.add(curve.ownWind());
            all.addAll(curve.limits());
        }
        if (all.stream().anyMatch(limit -> limit.reach() == Limit.Reach.COLDER_THAN_MODEL)
                || anyEnd(coldest, Double.NEGATIVE_INFINITY)) {
            notes.add(Prose.text("coldest.note.beyond", edge(units)));
        }
        if (all.stream().anyMatch(limit -> limit.reach() == Limit.Reach.NOT_EVEN_WARM)
                || anyEnd(coldest, Double.POSITIVE_INFINITY)) {
            notes.add(Prose.text("coldest.note.never", warmEdge(units)));
        }
        notes.add(again(coldest, units));
        notes.removeIf(String::isEmpty);
        notes.add(Prose.text("coldest.note.moved"));
        notes.add(damp());
        notes.add(
                Prose.text("coldest.note.weak", coldest.curves().get(2).person().name()));
        Draws draws = coldest.draws();
        if (draws != null) {
            notes.add(Prose.text("coldest.note.band", String.valueOf(draws.size()), String.valueOf(draws.seed())));
        }
        notes.add(Prose.text("coldest.note.nights", String.valueOf(coldest.nights())));
        return notes;
    }

    private static boolean anyEnd(Coldest coldest, double end) {
        return coldest.curves().stream()
                .map(Coldest.Curve::drawn)
                .anyMatch(drawn -> drawn != null && (drawn.low() == end || drawn.high() == end));
    }

    private static String again(Coldest coldest, Units units) {
        List<String> cases = new ArrayList<>();
        for (Coldest.Curve curve : coldest.curves()) {
            addAgain(name(curve), Prose.text("coldest.wind.own"), curve.ownWind(), units, cases);
            for (int i = 0; i < curve.limits().size(); i++) {
                addAgain(
                        name(curve),
                        wind(Coldest.WINDS.get(i), units),
                        curve.limits().get(i),
                        units,
                        cases);
            }
        }
        return cases.isEmpty() ? "" : Prose.text("coldest.note.again", String.join("; ", cases));
    }

    private static void addAgain(String who, String wind, Limit limit, Units units, List<String> cases) {
        for (Limit.Stretch stretch : limit.again()) {
            cases.add(Prose.text(
                    "coldest.note.again.case",
                    who,
                    wind,
                    units.text(Measure.TEMPERATURE, stretch.warmest()),
                    stretch.open()
                            ? Prose.text("coldest.note.again.open")
                            : units.text(Measure.TEMPERATURE, stretch.coldest())));
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

    static String wind(double speed, Units units) {
        return Figures.significant(units.value(Measure.WIND, speed), 3);
    }

    static String degrees(double celsius, Units units) {
        return units.number(Measure.TEMPERATURE, celsius);
    }

    private static String edge(Units units) {
        return units.line(Measure.TEMPERATURE, ModelRange.COLDEST_AIR);
    }

    private static String warmEdge(Units units) {
        return units.line(Measure.TEMPERATURE, ModelRange.WARMEST_AIR);
    }

    /** Beside the cautions of the nights themselves. */
    static String caution() {
        return Prose.text("coldest.caution");
    }
}
