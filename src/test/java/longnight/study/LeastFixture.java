package longnight.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.scenario.Gear;
import longnight.scenario.Instead;
import longnight.scenario.ScenarioReader;

/** The shipped wardrobe, parts of it, and nights to wear them in. */
final class LeastFixture {

    private static final Path SCENARIOS = Path.of("scenarios");
    static final Gear SIXTY = ScenarioReader.wardrobe(SCENARIOS.resolve("wardrobes/sixty.yaml"));

    private LeastFixture() {}

    /** Some pieces and pads of the wardrobe. */
    record Some(List<Garment> pieces, List<Pad> pads) {}

    static Scenario night(String file, String person) {
        return ScenarioReader.read(
                        SCENARIOS.resolve(file + ".yaml"),
                        new Instead(SCENARIOS.resolve("people/" + person + ".yaml"), null))
                .scenario();
    }

    /** Its first hours, warmer or colder. */
    static Scenario first(double hours, double warmer, Scenario night) {
        NightPlan plan = night.plan();
        return night.withSurroundings(night.surroundings().under(weather -> weather.warmer(warmer)))
                .withPlan(NightPlan.still(
                        plan.startOfDay(),
                        3600 * hours,
                        plan.firstOfNight().posture(),
                        plan.firstOfNight().sleepAllowed(),
                        true,
                        Double.NaN));
    }

    /** So many pieces and pads, a top, something for the legs, the hands and the feet among them. */
    static Some draw(Random random, int count) {
        List<Garment> pieces = new ArrayList<>(SIXTY.pieces());
        Collections.shuffle(pieces, random);
        List<Garment> drawn = new ArrayList<>();
        for (GarmentKind must : List.of(GarmentKind.BASE_TOP, GarmentKind.TROUSERS, GarmentKind.INSULATED_BOOTS)) {
            drawn.add(pieces.stream()
                    .filter(piece -> piece.spec().kind() == must)
                    .findFirst()
                    .orElseThrow());
        }
        drawn.add(pieces.stream()
                .filter(piece -> Region.HANDS.holds(piece.spec().kind()))
                .findFirst()
                .orElseThrow());
        drawn.add(pieces.stream()
                .filter(piece -> piece.spec().kind() == GarmentKind.PARKA)
                .findFirst()
                .orElseThrow());
        List<Pad> pads = List.of(SIXTY.pads().get(random.nextInt(SIXTY.pads().size())));
        for (Garment piece : pieces) {
            if (drawn.size() < count - 1 && !drawn.contains(piece)) {
                drawn.add(piece);
            }
        }
        return new Some(drawn, pads);
    }

    /** Every kit that the rules allow, with its demand in the hardest of some nights; infinite when one does not hold. */
    static List<Tried> everyKit(Some some, List<Scenario> nights, NumericalSettings settings) {
        List<Trial> trials = nights.stream().map(Trial::new).toList();
        boolean freezing = DressRules.isFreezing(trials);
        int pieces = some.pieces().size();
        int all = pieces + some.pads().size();
        return IntStream.range(0, 1 << all)
                .mapToObj(bits -> new Outfit.Kit(
                        Dressing.inOrder(taken(some.pieces(), bits)), taken(some.pads(), bits >> pieces)))
                .filter(kit -> DressRules.allows(kit, freezing))
                .map(kit -> new Tried(kit, mass(kit), hardest(kit, trials, settings)))
                .sorted(Comparator.comparingDouble(Tried::mass))
                .toList();
    }

    private static double hardest(Outfit.Kit kit, List<Trial> trials, NumericalSettings settings) {
        double most = 0;
        for (Trial trial : trials) {
            NightResult night = trial.run(kit, settings);
            most = Math.max(most, Pass.passes(night, 2) ? night.demand() : Double.POSITIVE_INFINITY);
        }
        return most;
    }

    private static <T> List<T> taken(List<T> from, int bits) {
        return IntStream.range(0, from.size())
                .filter(i -> (bits >> i & 1) == 1)
                .mapToObj(from::get)
                .toList();
    }

    static double mass(Outfit.Kit kit) {
        return kit.pieces().stream().mapToDouble(piece -> piece.spec().mass()).sum()
                + kit.pads().stream().mapToDouble(Pad::mass).sum();
    }

    /** A kit, its mass [kg], and its demand. */
    record Tried(Outfit.Kit kit, double mass, double demand) {}

    static LeastAnswer search(Some some, List<Scenario> nights, double demand, int others, NumericalSettings settings) {
        return Least.of(new LeastQuestion(
                nights, some.pieces(), some.pads(), demand, 0, others, settings, 2, Integer.MAX_VALUE, List.of()));
    }
}
