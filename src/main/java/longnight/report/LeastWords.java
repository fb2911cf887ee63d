package longnight.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.study.LeastAnswer;
import longnight.study.LeastAnswer.Found;
import longnight.study.LeastAnswer.Nothing;
import longnight.study.LeastAnswer.Without;
import longnight.study.Proof;
import org.jspecify.annotations.Nullable;

/** The sentences of a search for the lightest kit, shared by its page, picture and files. */
final class LeastWords {
    private LeastWords() {}

    /** The answer in one sentence. */
    static String headline(LeastAnswer answer, Units units) {
        Proof proof = answer.proof();
        String nights = String.valueOf(answer.nights().size());
        if (proof.found().isEmpty()) {
            return proof.complete()
                    ? Prose.text("least.headline.none", nights)
                    : Prose.text("least.headline.open", nights, kilograms(proof.lower(), units));
        }
        String mass = kilograms(proof.found().get(0).mass(), units);
        return proof.complete()
                ? Prose.text("least.headline", mass, nights)
                : Prose.text("least.headline.unproven", mass, nights, kilograms(proof.lower(), units));
    }

    /** Who, where, and what was asked. */
    static String about(LeastAnswer answer, Units units) {
        String asked = Prose.text(
                answer.question().colder() > 0 ? "least.about.colder" : "least.about",
                String.join("; ", answer.nights()),
                Figures.decimals(answer.question().demand(), 2),
                units.line(Measure.DIFFERENCE, answer.question().colder()));
        return Wording.clean(asked);
    }

    /** The margin that the kit states, with its hardest night; what is at risk all the same. */
    static String margin(LeastAnswer answer, Found found, Units units) {
        NightResult hardest = found.nights().get(found.hardest());
        return Prose.text(
                "least.margin",
                Figures.decimals(found.demand(), 2),
                Figures.decimals(answer.question().demand(), 2),
                Wording.clean(answer.nights().get(found.hardest())),
                units.deficit(hardest.coreHeatDeficitDawn()));
    }

    /** Parts of the body at risk in any of the nights; empty when none. */
    static String atRisk(Found found) {
        return found.nights().stream()
                .flatMap(night -> night.verdict().atRisk().stream())
                .map(risk -> Prose.text("least.risk." + risk.part().name()))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    /** One sentence a night. */
    static List<String> nights(LeastAnswer answer, Found found, Units units) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < found.nights().size(); i++) {
            NightResult night = found.nights().get(i);
            lines.add(Wording.clean(Prose.text(
                            "least.night",
                            answer.nights().get(i),
                            Wording.verdict(night, units),
                            Wording.atRisk(night, units))
                    .strip()));
        }
        return lines;
    }

    /** What was shown, and how. */
    static List<String> certificate(LeastAnswer answer) {
        Proof proof = answer.proof();
        List<String> lines = new ArrayList<>();
        lines.add(Prose.text(
                "least.proof",
                count(proof.kits()),
                count(proof.byBound()),
                String.valueOf(proof.boundRuns()),
                String.valueOf(proof.byDryRun()),
                String.valueOf(proof.dryRuns()),
                String.valueOf(proof.byRun()),
                String.valueOf(proof.runs())));
        lines.add(Prose.text("least.proof.why"));
        lines.add(Prose.text(answer.freezing() ? "least.rules.freezing" : "least.rules"));
        return lines;
    }

    /** Why there is nothing, and what would help. */
    static List<String> nothing(LeastAnswer answer, Nothing nothing, Units units) {
        Found best = nothing.best();
        NightResult hardest = best.nights().get(best.hardest());
        return List.of(
                Prose.text(
                        "least.none.best",
                        pieces(best.kit()),
                        kilograms(best.mass(), units),
                        Figures.decimals(best.demand(), 2),
                        Wording.clean(answer.nights().get(best.hardest())),
                        units.deficit(hardest.coreHeatDeficitDawn())),
                Double.isNaN(nothing.warmer())
                        ? Prose.text("least.none.kelvin.far", units.line(Measure.DIFFERENCE, LeastAnswer.MOST_WARMER))
                        : Prose.text("least.none.kelvin", units.text(Measure.DIFFERENCE, nothing.warmer())),
                Prose.text(
                        "least.none.helps",
                        Prose.text("least.region." + nothing.most()),
                        Figures.decimals(nothing.helps(), 2),
                        units.text(Measure.INSULATION, LeastAnswer.MORE)));
    }

    /** What becomes of the kit without a piece. */
    static String without(LeastAnswer answer, Without without) {
        if (!without.allowed()) {
            return Prose.text("least.without.rule");
        }
        return Prose.text(
                without.demand() > answer.question().demand() ? "least.without.demand" : "least.without.core",
                Figures.decimals(without.demand(), 2));
    }

    /** The same in few words, for a bar. */
    static String briefly(LeastAnswer answer, Without without) {
        return without.allowed()
                ? Prose.text("least.chart.without", Figures.decimals(without.demand(), 2))
                : Prose.text("least.chart.without.rule");
    }

    /** One of the next-lightest kits: what it takes more and less than the lightest. */
    static String other(Found least, Found other, Units units) {
        return Prose.text(
                "least.other",
                kilograms(other.mass(), units),
                Figures.decimals(other.demand(), 2),
                joined(minus(ids(other.kit()), ids(least.kit()))),
                joined(minus(ids(least.kit()), ids(other.kit()))));
    }

    /** Every caution of any of the nights, once. */
    static Set<Caution> cautions(LeastAnswer answer) {
        EnumSet<Caution> all = EnumSet.of(Caution.PLANNING_AID);
        answer.question().nights().forEach(night -> all.addAll(night.cautions()));
        answer.proof().found().forEach(found -> found.nights().forEach(night -> all.addAll(night.cautions())));
        @Nullable Nothing nothing = answer.nothing();
        if (nothing != null) {
            nothing.best().nights().forEach(night -> all.addAll(night.cautions()));
        }
        return all;
    }

    static String pieces(Outfit.Kit kit) {
        return joined(ids(kit));
    }

    static List<String> ids(Outfit.Kit kit) {
        return Stream.concat(
                        kit.pieces().stream().map(Garment::spec).map(spec -> spec.id()),
                        kit.pads().stream().map(Pad::id))
                .toList();
    }

    /** To the gram: kits that differ by less are parted too. */
    static String kilograms(double mass, Units units) {
        return Figures.decimals(units.value(Measure.LOAD, mass), 3) + " " + units.unit(Measure.LOAD);
    }

    private static List<String> minus(List<String> all, List<String> some) {
        return all.stream().filter(id -> !some.contains(id)).toList();
    }

    private static String joined(List<String> ids) {
        return ids.isEmpty() ? Prose.text("least.nothing") : Wording.clean(String.join(", ", ids));
    }

    /** A count that may be astronomic. */
    static String count(double kits) {
        return kits < 1e6 ? Figures.whole(kits) : String.format(java.util.Locale.ROOT, "%.2e", kits);
    }
}
