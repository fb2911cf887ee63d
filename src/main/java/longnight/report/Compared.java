package longnight.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.night.Verdict;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Pressure;
import longnight.study.Spread;
import longnight.study.Stress;

/** The sentences of a comparison, shared by its page, picture and files. */
final class Compared {
    /** Up to this demand a night holds easily, and up to the next by shivering; the lines of the verdict [1]. */
    static final double EASY = 1.25;

    static final double SHIVERING = 2.0;

    private Compared() {}

    /** What was compared, on what. */
    static String about(Comparison.Answer answer) {
        String night = common(answer, result -> result.scenario().nightName());
        String kit = common(answer, result -> result.scenario().kitName());
        String person = common(answer, result -> result.scenario().person().name());
        return Wording.clean(
                switch (answer.varied()) {
                    case KITS -> Prose.text("compare.about.KITS", night, person);
                    case PEOPLE -> Prose.text("compare.about.PEOPLE", night, kit);
                    case NIGHTS -> Prose.text("compare.about.NIGHTS", kit, person);
                });
    }

    /** What all have in common, or that they differ. */
    private static String common(Comparison.Answer answer, Function<NightResult, String> what) {
        List<String> all = answer.all().stream()
                .map(one -> what.apply(one.result()))
                .distinct()
                .toList();
        return all.size() == 1 ? all.get(0) : Prose.text("compare.differ");
    }

    /** How many hold and how. */
    static String headline(Comparison.Answer answer) {
        List<String> parts = new ArrayList<>();
        for (Verdict.Outcome outcome : Verdict.Outcome.values()) {
            long count = answer.all().stream()
                    .filter(one -> one.result().verdict().outcome() == outcome)
                    .count();
            if (count > 0) {
                parts.add(Prose.text("compare.count." + outcome.name(), String.valueOf(count)));
            }
        }
        return Prose.text("compare.headline", String.valueOf(answer.all().size()), String.join(", ", parts));
    }

    /** Who is at risk at hands, feet or face, by letter; empty when nobody. */
    static String atRisk(Comparison.Answer answer) {
        return Stream.of(Verdict.Part.values())
                .map(part -> {
                    String letters = letters(
                            answer,
                            one -> one.result().verdict().atRisk().stream().anyMatch(risk -> risk.part() == part));
                    return letters.isEmpty() ? "" : Prose.text("compare.risk." + part.name(), letters);
                })
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String letters(Comparison.Answer answer, Function<Comparison.One, Boolean> which) {
        List<String> letters = new ArrayList<>();
        for (int i = 0; i < answer.all().size(); i++) {
            if (which.apply(answer.all().get(i))) {
                letters.add(letter(i));
            }
        }
        return String.join(", ", letters);
    }

    /** A, B, C ... */
    static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }

    /** The verdict in a few words. */
    static String verdict(NightResult result) {
        return Prose.text(
                "compare.verdict." + result.verdict().outcome().name(),
                Wording.clock(result, result.verdict().from()));
    }

    /** One line on one of those compared: letter, name, verdict, demand. */
    static String line(int index, Comparison.One one) {
        NightResult result = one.result();
        String line = Prose.text("compare.line", letter(index), Wording.clean(one.name()), verdict(result));
        return Double.isNaN(result.demand())
                ? line
                : Prose.text("compare.line.demand", line, Figures.decimals(result.demand(), 2));
    }

    /** What limits a night, in words. */
    static String limiting(Pressure pressure) {
        List<Stress> limiting = pressure.limiting();
        return limiting.isEmpty()
                ? Prose.text("compare.stress.none")
                : limiting.stream()
                        .map(stress -> Prose.text("compare.stress." + stress.name()))
                        .collect(Collectors.joining(Prose.text("compare.stress.and")));
    }

    /** What a reader of the figures has to know of how they were made. */
    static List<String> notes(Comparison.Answer answer, Units units) {
        String precision = answer.band() == null ? "compare.precision" : "compare.precision.band";
        List<String> notes = new ArrayList<>(List.of(about(answer), Prose.text(precision, units.deadBand())));
        if (answer.varied() == Comparison.Varied.NIGHTS) {
            notes.add(Prose.text("compare.ranked"));
            notes.add(
                    Prose.text("compare.stress.how", units.line(Measure.DIFFERENCE, Stress.WARMER), units.deadBand()));
        }
        ComparedBand band = answer.band();
        if (band != null) {
            notes.add(Prose.text("compare.band.how", String.valueOf(band.draws()), String.valueOf(band.seed())));
        }
        return notes;
    }

    /** What the draws tell of each against the first, a sentence each; empty without a band. */
    static List<String> differences(Comparison.Answer answer, Units units) {
        ComparedBand band = answer.band();
        List<String> told = new ArrayList<>();
        for (int i = 1; band != null && i < answer.all().size(); i++) {
            ComparedBand.Entry entry = band.all().get(i);
            Spread more = entry.shortfallHeat().more();
            if (!Double.isNaN(more.nominal())) {
                told.add(Prose.text(
                        "compare.band.difference." + told(entry).name(),
                        letter(i),
                        letter(0),
                        ends(entry.demand().more(), 1, 2),
                        ends(more, units.value(Measure.HEAT, 1), units.decimals(Measure.HEAT)),
                        units.unit(Measure.HEAT)));
            }
        }
        return told;
    }

    /** Which figures tell one apart from the first, under nine draws in ten on the same side. */
    enum Told {
        BOTH,
        DEMAND,
        SHORTFALL,
        NEITHER
    }

    /** Whether a difference holds under so many draws that it is not chance of the model's constants. */
    static Told told(ComparedBand.Entry entry) {
        boolean demand = isTold(entry.demand().more());
        boolean shortfall = isTold(entry.shortfallHeat().more());
        return demand ? shortfall ? Told.BOTH : Told.DEMAND : shortfall ? Told.SHORTFALL : Told.NEITHER;
    }

    private static boolean isTold(Spread more) {
        return !Double.isNaN(more.low()) && !more.holdsZero();
    }

    /** "-1082 to -406", with signs; ends that a stopped run made infinite are signs alone. */
    static String ends(Spread more, double scale, int decimals) {
        return Double.isNaN(more.low())
                ? Figures.NONE
                : Prose.text(
                        "compare.band.ends",
                        WorthWording.signed(scale * more.low(), decimals),
                        WorthWording.signed(scale * more.high(), decimals));
    }

    /** Every caution of any of them, once. */
    static Set<Caution> cautions(Comparison.Answer answer) {
        EnumSet<Caution> all = EnumSet.of(Caution.PLANNING_AID);
        answer.all().forEach(one -> all.addAll(one.result().cautions()));
        return all;
    }
}
