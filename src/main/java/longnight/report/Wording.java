package longnight.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longnight.body.Person;
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
    /** Below this core temperature the model is stretched [degC]; design decision of the verdict. */
    static final double STRETCHED_BELOW = 34;

    /** Characters of a name on the page and in pictures. */
    private static final int LONGEST_NAME = 60;

    private Wording() {}

    /** {@link #verdict(NightResult, Units)} in metric units. */
    static String verdict(NightResult result) {
        return verdict(result, Units.METRIC);
    }

    /** One sentence of verdict, without the parts at risk. */
    static String verdict(NightResult result, Units units) {
        Verdict verdict = result.verdict();
        String key = "verdict." + verdict.outcome().name();
        return switch (verdict.outcome()) {
            case HOLDS_EASILY, HOLDS_BY_SHIVERING -> {
                String holds = Prose.text(key, clock(result, end(result)));
                yield Double.isNaN(result.demand())
                        ? Prose.text("verdict.no-demand", holds)
                        : Prose.text("verdict.demand", holds, Figures.decimals(result.demand(), 2));
            }
            case DOES_NOT_HOLD -> Prose.text(key, clock(result, verdict.from()), reasons(result, units));
            case OUTSIDE_THE_MODEL -> {
                String limits = verdict.limits().isEmpty()
                        ? Prose.text("verdict.outside-unsaid")
                        : verdict.limits().stream()
                                .map(limit -> limit(result, limit, units))
                                .collect(Collectors.joining("; "));
                yield verdict.reasons().isEmpty()
                        ? Prose.text(key, limits)
                        : Prose.text("verdict.outside-after", limits, reasons(result, units));
            }
        };
    }

    /** Limits found on the way are codes with words of their own; those of the input are told in words already. */
    private static String limit(NightResult result, String limit, Units units) {
        String key = "limit." + limit;
        return Prose.find(key) == null
                ? limit
                : Prose.text(key, clock(result, result.stopped()), units.line(Measure.TEMPERATURE, 32));
    }

    private static String reasons(NightResult result, Units units) {
        return result.verdict().reasons().stream()
                .map(crossing -> reason(result, crossing, units))
                .collect(Collectors.joining("; "));
    }

    private static String reason(NightResult result, Crossing crossing, Units units) {
        return Prose.text(
                "reason." + crossing.line().name(),
                clock(result, crossing.time()),
                units.deficit(result.coreHeatDeficitDawn()),
                units.deadBand(),
                units.line(Measure.TEMPERATURE, 35));
    }

    /** {@link #atRisk(NightResult, Units)} in metric units. */
    static String atRisk(NightResult result) {
        return atRisk(result, Units.METRIC);
    }

    /** Hands, feet, face: one sentence each, or an empty text. */
    static String atRisk(NightResult result, Units units) {
        return result.verdict().atRisk().stream()
                .map(risk -> atRisk(result, risk, units))
                .collect(Collectors.joining(" "));
    }

    static String atRisk(NightResult result, AtRisk risk, Units units) {
        boolean minutes = risk.part() == Verdict.Part.FACE && Double.isFinite(risk.warningMinutes());
        return Prose.text(
                "risk." + risk.part().name() + (minutes ? ".minutes" : ""),
                clock(result, risk.time()),
                minutes ? Figures.whole(risk.warningMinutes()) : units.text(Measure.TEMPERATURE, risk.lowest()));
    }

    /** How well the model is known: what the middle 80 % of its draws say, and how many hold. */
    static String band(NightResult result, Band band, Units units) {
        String text = Prose.text(
                Double.isNaN(result.demand()) ? "band.short" : "band",
                String.valueOf(band.draws()),
                Figures.range(band.demand().low(), band.demand().high(), 2),
                range(band.shortfallHeat(), units, Measure.HEAT),
                range(floored(band.deficitWorst()), units, Measure.HEAT),
                range(band.coreDawn(), units, Measure.TEMPERATURE),
                range(band.lowestHand(), units, Measure.TEMPERATURE),
                range(band.lowestFoot(), units, Measure.TEMPERATURE),
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
    static String deficits(Spread deficit, Units units) {
        Spread shown = floored(deficit);
        return Figures.range(
                units.value(Measure.HEAT, shown.low()),
                units.value(Measure.HEAT, shown.high()),
                units.decimals(Measure.HEAT));
    }

    private static String range(Spread spread, Units units, Measure measure) {
        String numbers = Figures.range(
                units.value(measure, spread.low()), units.value(measure, spread.high()), units.decimals(measure));
        return numbers + " " + units.unit(measure);
    }

    /** Who, where, in what. */
    static String who(NightResult result) {
        return clean(Prose.text(
                "page.who",
                name(result.scenario().nightName()),
                name(result.scenario().kitName()),
                person(result.scenario().person())));
    }

    /** A person, with their heat production where it is not the usual: a result that uses an offset says so. */
    static String person(Person person) {
        double factor = person.heatOffset();
        String name = name(person.name());
        return factor == 1 ? name : Prose.text("page.offset", name, Figures.significant(100 * factor, 3));
    }

    /** A name from a file as people are shown it: on one line, not longer than a line has room for. JSON has it whole. */
    static String name(String name) {
        String clean = clean(name).replace('\n', ' ');
        return clean.codePointCount(0, clean.length()) <= LONGEST_NAME
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_NAME - 3)) + "...";
    }

    /**
     * Names come from files and may hold anything; nothing in a text for people steers a terminal, breaks a picture or turns the
     * order of what is written around it.
     */
    static String clean(String text) {
        return text.replaceAll(
                "[\\p{Cntrl}\\x{80}-\\x{9f}\\x{200e}\\x{200f}\\x{2028}-\\x{202e}\\x{2066}-\\x{2069}&&[^\\n]]", " ");
    }

    /** {@link #shortText(Caution, Units)} in metric units. */
    static String shortText(Caution caution) {
        return shortText(caution, Units.METRIC);
    }

    /** A caution in its short form. */
    static String shortText(Caution caution, Units units) {
        return Prose.text("caution." + caution.name() + ".short", stretched(units));
    }

    /** {@link #fullText(Caution, Units)} in metric units. */
    static String fullText(Caution caution) {
        return fullText(caution, Units.METRIC);
    }

    /** A caution in full; where there is no longer form, the short one. */
    static String fullText(Caution caution, Units units) {
        String key = "caution." + caution.name() + ".full";
        @Nullable String text = Prose.find(key);
        return text == null ? shortText(caution, units) : Prose.text(key, stretched(units));
    }

    /** Below this core temperature the model is stretched. */
    static String stretched(Units units) {
        return units.line(Measure.TEMPERATURE, STRETCHED_BELOW);
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
