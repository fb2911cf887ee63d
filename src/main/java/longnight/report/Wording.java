package longnight.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longnight.night.Caution;
import longnight.night.HourRow;
import longnight.night.NightResult;
import longnight.night.Verdict;
import longnight.night.Verdict.AtRisk;
import longnight.night.Verdict.Crossing;
import longnight.study.Band;
import longnight.study.Spread;
import org.jspecify.annotations.Nullable;

/** The sentences that several outputs share: verdict, parts at risk, cautions. */
final class Wording {
    private Wording() {}

    /** One sentence of verdict, without the parts at risk. */
    static String verdict(NightResult result) {
        Verdict verdict = result.verdict();
        String key = "verdict." + verdict.outcome().name();
        return switch (verdict.outcome()) {
            case HOLDS_EASILY, HOLDS_BY_SHIVERING -> {
                String holds = Prose.text(key, clock(result, end(result)));
                yield Double.isNaN(result.demand())
                        ? Prose.text("verdict.no-demand", holds)
                        : Prose.text("verdict.demand", holds, Figures.decimals(result.demand(), 2));
            }
            case DOES_NOT_HOLD -> Prose.text(key, clock(result, verdict.from()), reasons(result));
            case OUTSIDE_THE_MODEL -> {
                String limits = verdict.limits().isEmpty()
                        ? Prose.text("verdict.outside-unsaid")
                        : verdict.limits().stream()
                                .map(limit -> limit(result, limit))
                                .collect(Collectors.joining("; "));
                yield verdict.reasons().isEmpty()
                        ? Prose.text(key, limits)
                        : Prose.text("verdict.outside-after", limits, reasons(result));
            }
        };
    }

    /** Limits found on the way are codes with words of their own; those of the input are told in words already. */
    private static String limit(NightResult result, String limit) {
        String key = "limit." + limit;
        return Prose.find(key) == null ? limit : Prose.text(key, clock(result, result.stopped()));
    }

    private static String reasons(NightResult result) {
        return result.verdict().reasons().stream()
                .map(crossing -> reason(result, crossing))
                .collect(Collectors.joining("; "));
    }

    private static String reason(NightResult result, Crossing crossing) {
        return Prose.text(
                "reason." + crossing.line().name(),
                clock(result, crossing.time()),
                Figures.deficit(result.coreHeatDeficitDawn()));
    }

    /** Hands, feet, face: one sentence each, or an empty text. */
    static String atRisk(NightResult result) {
        return result.verdict().atRisk().stream()
                .map(risk -> atRisk(result, risk))
                .collect(Collectors.joining(" "));
    }

    static String atRisk(NightResult result, AtRisk risk) {
        boolean minutes = risk.part() == Verdict.Part.FACE && Double.isFinite(risk.warningMinutes());
        return Prose.text(
                "risk." + risk.part().name() + (minutes ? ".minutes" : ""),
                clock(result, risk.time()),
                minutes ? Figures.whole(risk.warningMinutes()) : Figures.decimals(risk.lowest(), 1));
    }

    /** How well the model is known: what the middle 80 % of its draws say, and how many hold. */
    static String band(NightResult result, Band band) {
        String text = Prose.text(
                Double.isNaN(result.demand()) ? "band.short" : "band",
                String.valueOf(band.draws()),
                range(band.demand(), 1, 2),
                range(band.shortfallHeat(), 1e-3, 0),
                deficits(band.deficitWorst()),
                range(band.coreDawn(), 1, 1),
                range(band.lowestHand(), 1, 1),
                range(band.lowestFoot(), 1, 1),
                String.valueOf(band.seed()));
        List<String> outside = new ArrayList<>();
        each(band).forEach((word, spread) -> {
            if (Double.isFinite(spread.nominal()) && !spread.holdsNominal()) {
                outside.add(Prose.text("band.word." + word));
            }
        });
        return holding(band) + " " + text
                + (outside.isEmpty() ? "" : " " + Prose.text("band.outside", String.join(", ", outside)))
                + (band.stopped() == 0 ? "" : " " + Prose.text("band.stopped", String.valueOf(band.stopped())));
    }

    /** "12 of 200 draws of the model hold." */
    static String holding(Band band) {
        return Prose.text("band.holding", String.valueOf(band.holding()), String.valueOf(band.draws()));
    }

    /** The numbers of a band by the words that name them. */
    private static Map<String, Spread> each(Band band) {
        Map<String, Spread> each = new LinkedHashMap<>();
        each.put("demand", band.demand());
        each.put("shortfall", band.shortfallHeat());
        each.put("deficit", floored(band.deficitWorst()));
        each.put("core", band.coreDawn());
        each.put("hand", band.lowestHand());
        each.put("foot", band.lowestFoot());
        return each;
    }

    /** No deficit below none, as shown. */
    private static Spread floored(Spread spread) {
        return new Spread(
                Math.max(0, spread.nominal()),
                Math.max(0, spread.low()),
                Math.max(0, spread.middle()),
                Math.max(0, spread.high()));
    }

    /** Where the middle of the draws' deficits lies [kJ]. */
    static String deficits(Spread deficit) {
        return range(floored(deficit), 1e-3, 0);
    }

    private static String range(Spread spread, double factor, int decimals) {
        return Figures.range(factor * spread.low(), factor * spread.high(), decimals);
    }

    /** Who, where, in what. */
    static String who(NightResult result) {
        return clean(Prose.text(
                "page.who",
                result.scenario().nightName(),
                result.scenario().kitName(),
                result.scenario().person().name()));
    }

    /** Names come from files and may hold anything; nothing in a text for people steers a terminal or breaks a picture. */
    static String clean(String text) {
        return text.replaceAll("[\\p{Cntrl}\\x{80}-\\x{9f}\\x{2028}\\x{2029}&&[^\\n]]", " ");
    }

    /** A caution in its short form. */
    static String shortText(Caution caution) {
        return Prose.text("caution." + caution.name() + ".short");
    }

    /** A caution in full; where there is no longer form, the short one. */
    static String fullText(Caution caution) {
        String key = "caution." + caution.name() + ".full";
        @Nullable String text = Prose.find(key);
        return text == null ? shortText(caution) : Prose.text(key);
    }

    /** The local clock at a time since dusk. */
    static String clock(NightResult result, double time) {
        return Figures.clock(result.scenario().plan().startOfDay() + time);
    }

    /** Whether anything was reckoned; outside the model's range nothing is. */
    static boolean hasRun(NightResult result) {
        return !result.hours().isEmpty();
    }

    /** The last moment reckoned [s from dusk]. */
    static double end(NightResult result) {
        return Double.isNaN(result.stopped()) ? result.scenario().plan().duration() : result.stopped();
    }

    /** The last row; only where {@link #hasRun}. */
    static HourRow lastHour(NightResult result) {
        return result.hours().get(result.hours().size() - 1);
    }
}
