package longnight.study;

import java.util.ArrayList;
import java.util.List;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.SiteClimate;
import org.jspecify.annotations.Nullable;

/** The lightest kit that holds, and what a person who packs it wants to know besides. */
public final class Least {

    private static final double LOOK = 900;

    private Least() {}

    /** Answers. */
    public static LeastAnswer of(LeastQuestion question) {
        List<Trial> trials = trials(question);
        Proof proof = found(question, trials, new Search(question, trials).run());
        boolean freezing = DressRules.isFreezing(trials);
        LeastAnswer.@Nullable Nothing nothing =
                proof.found().isEmpty() && proof.complete() ? new Warmest(question, trials).look() : null;
        return new LeastAnswer(
                question,
                question.nights().stream().map(Least::name).toList(),
                coldestMean(trials),
                freezing,
                proof,
                proof.found().isEmpty()
                        ? List.of()
                        : without(question, trials, proof.found().get(0), freezing),
                nothing,
                front(question));
    }

    /** Where the search gave up without a kit, a light one found by going down. */
    private static Proof found(LeastQuestion question, List<Trial> trials, Proof proof) {
        if (proof.complete() || !proof.found().isEmpty()) {
            return proof;
        }
        LeastAnswer.@Nullable Found light = new Descent(question, trials).run();
        return light == null ? proof : proof.with(light);
    }

    /** Whether a night has a kit and weather, so that another kit and other weather can take their place. */
    public static boolean isChoosable(Scenario night) {
        return night.outfit() instanceof Outfit.Kit && night.surroundings() instanceof SiteClimate;
    }

    /** Coldest air of a night, of the time before it as well [degC]. */
    public static double coldest(Scenario night) {
        OutdoorState state = new OutdoorState();
        double coldest = Double.POSITIVE_INFINITY;
        for (double t = night.plan().start(); t <= night.plan().duration(); t += 60) {
            night.surroundings().at(t, state);
            coldest = Math.min(coldest, state.airCelsius);
        }
        return coldest;
    }

    /** The nights as asked for. */
    static List<Trial> trials(LeastQuestion question) {
        return question.nights().stream()
                .map(night -> new Trial(colder(night, question.colder())))
                .toList();
    }

    private static Scenario colder(Scenario night, double kelvin) {
        return kelvin == 0
                ? night
                : night.withSurroundings(night.surroundings().under(weather -> weather.warmer(-kelvin)));
    }

    private static String name(Scenario night) {
        return night.nightName() + " | " + night.person().name();
    }

    private static double coldestMean(List<Trial> trials) {
        OutdoorState state = new OutdoorState();
        double coldest = Double.POSITIVE_INFINITY;
        for (Trial trial : trials) {
            double sum = 0;
            int n = 0;
            for (double t = 0.5 * LOOK; t < trial.scenario().plan().duration(); t += LOOK, n++) {
                trial.scenario().surroundings().at(t, state);
                sum += state.airCelsius;
            }
            coldest = Math.min(coldest, sum / n);
        }
        return coldest;
    }

    private static List<LeastAnswer.Without> without(
            LeastQuestion question, List<Trial> trials, LeastAnswer.Found least, boolean freezing) {
        List<LeastAnswer.Without> all = new ArrayList<>();
        for (Garment piece : least.kit().pieces()) {
            List<Garment> rest = new ArrayList<>(least.kit().pieces());
            rest.remove(piece);
            all.add(without(
                    piece.spec().id(),
                    piece.spec().name(),
                    piece.spec().mass(),
                    new Outfit.Kit(rest, least.kit().pads()),
                    question,
                    trials,
                    freezing));
        }
        for (Pad pad : least.kit().pads()) {
            List<Pad> rest = new ArrayList<>(least.kit().pads());
            rest.remove(pad);
            all.add(without(
                    pad.id(),
                    pad.name(),
                    pad.mass(),
                    new Outfit.Kit(least.kit().pieces(), rest),
                    question,
                    trials,
                    freezing));
        }
        return all;
    }

    private static LeastAnswer.Without without(
            String id,
            String name,
            double mass,
            Outfit.Kit rest,
            LeastQuestion question,
            List<Trial> trials,
            boolean freezing) {
        double demand =
                Together.ask(
                                trials,
                                trial -> trial.run(rest, question.settings()).demand(),
                                question.threads())
                        .stream()
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElseThrow();
        return new LeastAnswer.Without(id, name, mass, DressRules.allows(rest, freezing), demand);
    }

    private static List<LeastAnswer.Point> front(LeastQuestion question) {
        List<LeastAnswer.Point> points = new ArrayList<>();
        for (double shift : question.front()) {
            LeastQuestion shifted = question.at(question.colder() + shift);
            List<Trial> trials = trials(shifted);
            Proof proof = new Search(shifted, trials).run();
            double mass =
                    proof.found().isEmpty() ? Double.NaN : proof.found().get(0).mass();
            points.add(new LeastAnswer.Point(coldestMean(trials), mass, proof.lower()));
        }
        return points;
    }
}
