package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import longnight.study.Assumption;
import longnight.study.Change;
import longnight.study.Draws;
import longnight.study.Effect;
import longnight.study.Pair;
import longnight.study.Spread;
import longnight.study.Worth;

/** The sentences that the outputs about what changes are worth share. */
final class WorthWording {
    /** Core at which a run stops [degC]. */
    private static final double STOPS = 32;

    private WorthWording() {}

    /** The largest loss and the largest gain, in a sentence. */
    static String answer(Worth worth, Units units) {
        String most = worth.effects().stream()
                .filter(effect -> effect.stopped() || effect.shortfall() < 0)
                .findFirst()
                .map(effect -> Prose.text("worth.answer.loss", name(effect.change(), units), amount(effect, units)))
                .orElse("");
        String best = worth.effects().stream()
                .filter(effect -> effect.shortfall() > Worth.FLOOR)
                .findFirst()
                .map(effect -> Prose.text("worth.answer.gain", name(effect.change(), units), amount(effect, units)))
                .orElse(
                        Double.isNaN(worth.asPlanned().stopped())
                                ? Prose.text("worth.answer.none", units.text(Measure.HEAT, Worth.FLOOR))
                                : Prose.text("worth.answer.stopped"));
        return (most + " " + best).strip();
    }

    /** "1834 kJ" and where the draws' middle lies, or that it cannot be compared. */
    static String amount(Effect effect, Units units) {
        if (Double.isNaN(effect.shortfall())) {
            return Prose.text("worth.stops", units.line(Measure.TEMPERATURE, STOPS));
        }
        String amount = units.text(Measure.HEAT, Math.abs(effect.shortfall()));
        return effect.drawn() == null
                ? amount
                : Prose.text(effect.isLost() ? "worth.amount.lost" : "worth.amount.band", amount, ends(effect, units));
    }

    /** The same as briefly as a bar has room for. */
    static String briefly(Effect effect, Units units) {
        if (Double.isNaN(effect.shortfall()) || effect.drawn() == null) {
            return amount(effect, units);
        }
        return Prose.text(
                effect.isLost() ? "worth.chart.lost" : "worth.chart.band",
                units.text(Measure.HEAT, Math.abs(effect.shortfall())),
                ends(effect, units));
    }

    /** "1037 to 1407": from one end to the other of the draws' middle, counted as the usual model's effect is. */
    private static String ends(Effect effect, Units units) {
        Spread drawn = Objects.requireNonNull(effect.drawn());
        boolean loss = effect.shortfall() < 0;
        return Prose.text(
                "worth.ends",
                heat(loss ? -drawn.high() : drawn.low(), units),
                heat(loss ? -drawn.low() : drawn.high(), units));
    }

    private static String heat(double joules, Units units) {
        return Double.isInfinite(joules) ? signed(joules, 0) : units.number(Measure.HEAT, joules);
    }

    /** "-1082 to -406" of what a change saves; a dash where nothing was drawn. */
    static String drawn(Effect effect, Units units) {
        Spread drawn = effect.drawn();
        return drawn == null
                ? Figures.NONE
                : Compared.ends(drawn, units.value(Measure.HEAT, 1), units.decimals(Measure.HEAT));
    }

    /** What the bands are; only where something was drawn. */
    static String bands(Draws draws, Units units) {
        return Prose.text(
                "worth.bands",
                String.valueOf(draws.size()),
                String.valueOf(draws.seed()),
                String.valueOf(Worth.DRAWN),
                units.unit(Measure.HEAT));
    }

    static String name(Change change, Units units) {
        List<String> slots = new ArrayList<>();
        for (String name : change.names()) {
            slots.add(change.kind() == Change.Kind.POSTURE ? Prose.text("worth.posture." + name) : Wording.clean(name));
        }
        if (change.kind() == Change.Kind.MEAL) {
            slots.add(units.text(Measure.TURNOVER, Change.MEAL));
        }
        String over = change.kind() == Change.Kind.WITH && slots.size() == 2 ? ".over" : "";
        return Prose.text("worth.change." + change.kind().name() + over, slots.toArray(String[]::new));
    }

    /** The night that all is held against. */
    static String planned(Worth worth, Units units) {
        return Prose.text(
                "worth.planned",
                units.text(Measure.HEAT, worth.asPlanned().shortfallHeat()),
                Wording.verdict(worth.asPlanned(), units));
    }

    static String name(Assumption assumption, Units units) {
        if (assumption.kind() == Assumption.Kind.INPUT) {
            return Prose.text("worth.input." + assumption.name(), units.line(Measure.DIFFERENCE, 2));
        }
        String[] members = assumption.name().split("\\+");
        String first = members[0].toLowerCase(Locale.ROOT).replace('_', ' ');
        return members.length == 1
                ? Prose.text("worth.model", first, assumption.from(), assumption.to())
                : Prose.text(
                        "worth.model.more",
                        first,
                        String.valueOf(members.length - 1),
                        assumption.from(),
                        assumption.to());
    }

    /** "+312 / -305 kJ" at the lowest and highest value. */
    static String moves(Assumption assumption, Units units) {
        return Prose.text(
                "worth.moves",
                heats(assumption.low(), units),
                heats(assumption.high(), units),
                units.unit(Measure.HEAT));
    }

    /** Pairs that depend on each other, one sentence each. */
    static List<String> pairs(Worth worth, Units units) {
        List<String> told = new ArrayList<>();
        for (Pair pair : worth.pairs()) {
            if (Double.isNaN(pair.joint())) {
                told.add(Prose.text(
                        "worth.pair.stops",
                        name(pair.one().change(), units),
                        name(pair.other().change(), units),
                        units.line(Measure.TEMPERATURE, STOPS)));
            } else if (pair.depends()) {
                told.add(Prose.text(
                        "worth.pair",
                        name(pair.one().change(), units),
                        name(pair.other().change(), units),
                        heats(pair.joint(), units),
                        heats(pair.sum(), units),
                        units.unit(Measure.HEAT)));
            }
        }
        return told;
    }

    /** How to read it. */
    static List<String> notes(Worth worth, Units units) {
        List<String> notes = new ArrayList<>();
        notes.add(Prose.text(
                "worth.note.sign",
                ColdestWording.line(worth.line(), units),
                units.unit(Measure.HEAT),
                units.unit(Measure.DIFFERENCE),
                units.unit(Measure.PIECE)));
        notes.add(Prose.text("worth.note.rule"));
        notes.add(Prose.text("worth.note.drill"));
        notes.add(Prose.text(
                "worth.note.pairs",
                String.valueOf(worth.pairs().size()),
                Figures.whole(100 * Pair.SHARE),
                units.text(Measure.HEAT, Pair.FLOOR)));
        notes.addAll(pairs(worth, units));
        if (worth.draws() != null) {
            notes.add(Prose.text("worth.note.band"));
        }
        notes.add(
                Prose.text("worth.note.nights", String.valueOf(worth.nights()), units.text(Measure.HEAT, Worth.FLOOR)));
        return notes;
    }

    /** An amount of heat with its sign. */
    static String heats(double joules, Units units) {
        return signed(units.value(Measure.HEAT, joules), units.decimals(Measure.HEAT));
    }

    /** With its sign; infinities are signs alone, with a mark. */
    static String signed(double value, int decimals) {
        if (Double.isNaN(value)) {
            return "-";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? ">" : "<";
        }
        String text = Figures.decimals(value, decimals);
        return value > 0 && !text.matches("[0.]*") ? "+" + text : text.matches("-[0.]*") ? text.substring(1) : text;
    }

    static String caution() {
        return Prose.text("worth.caution");
    }
}
