package longnight.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longnight.clothing.Garment;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.figure.Zone;
import longnight.night.ModelRange;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.OutdoorState;
import org.jspecify.annotations.Nullable;

/**
 * Where no kit is adequate: the warmest kit that changing one region at a time finds, how much warmer the night would have to
 * be for it, and where more insulation would help most. The kit is a good one, not a proven best.
 */
final class Warmest {

    private static final int ROUNDS = 2;
    private static final double MOST_WARMER = LeastAnswer.MOST_WARMER;
    private static final double NEAR = 0.05;
    /** Insulation added to see where it helps [m2 K/W]. */
    private static final double MORE = LeastAnswer.MORE;

    private final LeastQuestion question;
    private final List<Trial> trials;
    private final Field field;

    Warmest(LeastQuestion question, List<Trial> trials) {
        this.question = question;
        this.trials = trials;
        field = new Field(trials, question.pieces(), question.pads(), DressRules.isFreezing(trials));
    }

    LeastAnswer.@Nullable Nothing look() {
        if (field.choices.values().stream().anyMatch(List::isEmpty)) {
            return null; // the wardrobe cannot dress anybody
        }
        Outfit.Kit kit = climb();
        double mass =
                kit.pieces().stream().mapToDouble(piece -> piece.spec().mass()).sum()
                        + kit.pads().stream().mapToDouble(pad -> pad.mass()).sum();
        List<NightResult> nights =
                Together.ask(trials, trial -> trial.run(kit, question.settings()), question.threads());
        LeastAnswer.Found best = new LeastAnswer.Found(kit, mass, nights);
        Trial hardest = trials.get(best.hardest());
        double dry = hardest.run(kit, NumericalSettings.dry()).demand();
        Region most = Region.TORSO;
        double helps = Double.NEGATIVE_INFINITY;
        for (Region region : Region.values()) {
            double less = dry
                    - hardest.run(padded(kit, region), NumericalSettings.dry()).demand();
            if (less > helps) {
                helps = less;
                most = region;
            }
        }
        return new LeastAnswer.Nothing(best, warmer(kit), most.name(), helps);
    }

    /** Region by region the choice with the least demand in the hardest night, the likeliest choices only. */
    private Outfit.Kit climb() {
        Trial hardest = trials.get(0);
        Cells cells = field.reference(hardest);
        Map<Region, Part> at = new EnumMap<>(Region.class);
        Map<Region, List<Part>> likely = new EnumMap<>(Region.class);
        field.choices.forEach((region, choices) -> {
            Part all =
                    new Part(region, choices, IntStream.range(0, choices.size()).toArray());
            List<Part> best = all.warmest(cells, 24);
            likely.put(region, best);
            at.put(region, best.get(0));
        });
        double least = demand(at);
        for (int round = 0; round < ROUNDS; round++) {
            for (Region region : Region.values()) {
                for (Part part : likely.getOrDefault(region, List.of())) {
                    Map<Region, Part> other = new EnumMap<>(at);
                    other.put(region, part);
                    double demand = demand(other);
                    if (demand < least) {
                        least = demand;
                        at.put(region, part);
                    }
                }
            }
        }
        return Node.of(at).kit();
    }

    private double demand(Map<Region, Part> parts) {
        Outfit.Kit kit = Node.of(parts).kit();
        return Together.ask(trials, trial -> trial.demandDry(kit), question.threads()).stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
    }

    private double warmer(Outfit.Kit kit) {
        double low = 0;
        double high = Math.min(MOST_WARMER, ModelRange.WARMEST_AIR - warmestAir());
        if (high <= 0 || !holds(kit, high)) {
            return Double.NaN;
        }
        while (high - low > NEAR) {
            double middle = 0.5 * (low + high);
            if (holds(kit, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private double warmestAir() {
        OutdoorState state = new OutdoorState();
        double warmest = Double.NEGATIVE_INFINITY;
        for (Trial trial : trials) {
            Scenario night = trial.scenario();
            for (double t = night.plan().start(); t <= night.plan().duration(); t += 300) {
                night.surroundings().at(t, state);
                warmest = Math.max(warmest, state.airCelsius);
            }
        }
        return warmest;
    }

    private boolean holds(Outfit.Kit kit, double warmer) {
        return Least.trials(question.at(question.colder() - warmer)).stream()
                .allMatch(trial -> Pass.passes(trial.run(kit, question.settings()), question.demand()));
    }

    /** The kit with a made-up layer of insulation over a region, or under the body. */
    private static Outfit.Kit padded(Outfit.Kit kit, Region region) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        List<ZoneLayer> layers = new ArrayList<>();
        for (Zone zone : region.zones()) {
            layers.add(new ZoneLayer(zone, 0, 1, 0.002, MORE, 10, 1, 0, 0, 0, 0, 1, 1));
        }
        if (layers.isEmpty()) {
            return new Outfit.Kit(
                    pieces,
                    java.util.stream.Stream.concat(
                                    kit.pads().stream(),
                                    java.util.stream.Stream.of(
                                            new longnight.clothing.Pad("more", "more", MORE, 2, 0.1, 500)))
                            .toList());
        }
        pieces.add(0, StandIn.of("more", GarmentKind.BASE_TOP, layers));
        return new Outfit.Kit(List.copyOf(pieces), kit.pads());
    }
}
