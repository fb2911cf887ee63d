package longnight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longnight.study.Assumption;
import longnight.study.Change;
import longnight.study.Effect;
import longnight.study.Pair;
import longnight.study.Worth;

/** The sentences that the outputs about what changes are worth share. */
final class WorthWording {
    private WorthWording() {}

    /** The largest loss and the largest gain, in a sentence. */
    static String answer(Worth worth) {
        String most = worth.effects().stream()
                .filter(effect -> effect.stopped() || effect.shortfall() < 0)
                .findFirst()
                .map(effect -> Prose.text("worth.answer.loss", name(effect.change()), amount(effect)))
                .orElse("");
        String best = worth.effects().stream()
                .filter(effect -> effect.shortfall() > Worth.FLOOR)
                .findFirst()
                .map(effect -> Prose.text("worth.answer.gain", name(effect.change()), amount(effect)))
                .orElse(Prose.text("worth.answer.none"));
        return (most + " " + best).strip();
    }

    /** "1834 kJ", or that it cannot be compared. */
    static String amount(Effect effect) {
        return Double.isNaN(effect.shortfall())
                ? Prose.text("worth.stops")
                : Prose.text("worth.amount", Figures.kilojoules(Math.abs(effect.shortfall())));
    }

    static String name(Change change) {
        List<String> slots = new ArrayList<>();
        for (String name : change.names()) {
            slots.add(change.kind() == Change.Kind.POSTURE ? Prose.text("worth.posture." + name) : Wording.clean(name));
        }
        String over = change.kind() == Change.Kind.WITH && slots.size() == 2 ? ".over" : "";
        return Prose.text("worth.change." + change.kind().name() + over, slots.toArray(String[]::new));
    }

    /** The night that all is held against. */
    static String planned(Worth worth) {
        return Prose.text(
                "worth.planned",
                Figures.kilojoules(worth.asPlanned().shortfallHeat()),
                Wording.verdict(worth.asPlanned()));
    }

    static String name(Assumption assumption) {
        if (assumption.kind() == Assumption.Kind.INPUT) {
            return Prose.text("worth.input." + assumption.name());
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
    static String moves(Assumption assumption) {
        return Prose.text("worth.moves", signed(assumption.low() / 1e3, 0), signed(assumption.high() / 1e3, 0));
    }

    /** Pairs that depend on each other, one sentence each. */
    static List<String> pairs(Worth worth) {
        List<String> told = new ArrayList<>();
        for (Pair pair : worth.pairs()) {
            if (Double.isNaN(pair.joint())) {
                told.add(Prose.text(
                        "worth.pair.stops",
                        name(pair.one().change()),
                        name(pair.other().change())));
            } else if (pair.depends()) {
                told.add(Prose.text(
                        "worth.pair",
                        name(pair.one().change()),
                        name(pair.other().change()),
                        signed(pair.joint() / 1e3, 0),
                        signed(pair.sum() / 1e3, 0)));
            }
        }
        return told;
    }

    /** How to read it. */
    static List<String> notes(Worth worth) {
        List<String> notes = new ArrayList<>();
        notes.add(Prose.text("worth.note.sign", ColdestWording.line(worth.line(), Units.METRIC)));
        notes.add(Prose.text("worth.note.rule"));
        notes.add(Prose.text("worth.note.drill"));
        notes.add(Prose.text(
                "worth.note.pairs",
                String.valueOf(worth.pairs().size()),
                Figures.whole(100 * Pair.SHARE),
                Figures.kilojoules(Pair.FLOOR)));
        notes.addAll(pairs(worth));
        notes.add(Prose.text("worth.note.nights", String.valueOf(worth.nights()), Figures.kilojoules(Worth.FLOOR)));
        return notes;
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
