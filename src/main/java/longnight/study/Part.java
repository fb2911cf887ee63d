package longnight.study;

import static longnight.study.Cells.FACTS;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import longnight.study.Cells.Fact;
import org.jspecify.annotations.Nullable;

/** Some of the choices of one region, lightest first. */
final class Part {

    /** Resistance between blood and air beside the cloth, to weigh cells against each other [m2 K/W]; orders work, no more. */
    private static final double BESIDE = 0.05;

    /** The same for what is pressed. */
    static final double UNDER = 0.2;

    /** Mass that a kit pays for letting less heat through, roughly [kg K/W]; orders work, no more. */
    private static final double PRICE = 1.0;

    private static final double LEAST_GAIN = 0.004;

    private static final int MOST_PAIRS = 12;

    private static final double SAME = 1e-9;

    final Region region;
    final int[] set;
    final double lightest;
    final int hooded;
    private final List<Choice> choices;
    private @Nullable Halves halves;
    private double conductance = Double.NaN;
    private final Map<Cells, Envelope> envelopes = new ConcurrentHashMap<>();
    private final Map<Pair, Envelope> paired = new ConcurrentHashMap<>();

    Part(Region region, List<Choice> choices, int[] set) {
        this.region = region;
        this.choices = choices;
        this.set = set;
        lightest = choices.get(set[0]).mass();
        hooded = (int) Arrays.stream(set).filter(i -> choices.get(i).hooded()).count();
    }

    Envelope envelope(Cells cells) {
        return envelopes.computeIfAbsent(
                cells,
                key -> Envelope.of(
                        Arrays.stream(set).mapToObj(i -> key.measure(region, i)).toList()));
    }

    /** Few enough to look at every pair. */
    boolean pairsWith(Part other) {
        return set.length * other.set.length <= MOST_PAIRS;
    }

    /** Over all pairs of choices, worn together. */
    Envelope envelope(Cells cells, Part other) {
        return paired.computeIfAbsent(new Pair(cells, other), key -> {
            List<Cells.Measure> measures = new ArrayList<>();
            for (int i : set) {
                for (int j : other.set) {
                    measures.add(cells.measure(region, i, other.region, j));
                }
            }
            return Envelope.of(measures);
        });
    }

    private record Pair(Cells cells, Part other) {}

    List<Choice> taken() {
        return Arrays.stream(set).mapToObj(choices::get).toList();
    }

    /** Its warmest choices, each alone, the warmest first. */
    List<Part> warmest(Cells cells, int count) {
        return Arrays.stream(set)
                .mapToObj(i -> new Part(region, choices, new int[] {i}))
                .sorted(Comparator.comparingDouble(part -> part.conductance(cells)))
                .limit(count)
                .toList();
    }

    /** Its heaviest choice alone. */
    Part last() {
        return new Part(region, choices, new int[] {set[set.length - 1]});
    }

    Choice only() {
        return choices.get(set[0]);
    }

    private static double spread(Cells cells, Envelope e, int c) {
        return cells.exposed.get(c).area()
                * (1 / (e.least(c, Fact.TOTAL) + BESIDE) - 1 / (e.most(c, Fact.TOTAL) + BESIDE));
    }

    /** Two parts with its choices between them, the same two whenever asked. */
    Halves halves(Cells cells) {
        Halves known = halves;
        if (known == null) {
            known = Stream.of(byMass(), byWarmth(cells), byCell(cells))
                    .filter(parts -> parts.size() == 2)
                    .map(parts -> new Halves(parts, gain(cells, parts)))
                    .max(Comparator.comparingDouble(Halves::gain))
                    .orElseThrow();
            halves = known;
        }
        return known;
    }

    /**
     * Two parts of one.
     *
     * @param parts both
     * @param gain  what parting is worth; orders work, no more
     */
    record Halves(List<Part> parts, double gain) {}

    /** What either half is heavier or lets more heat through than the whole, one times the other. */
    private double gain(Cells cells, List<Part> parts) {
        double gain = 1;
        for (Part half : parts) {
            gain *= half.lightest
                    - lightest
                    + PRICE * Math.max(0, half.conductance(cells) - conductance(cells))
                    + LEAST_GAIN;
        }
        return gain;
    }

    /** Heat through the warmest that its choices could be together [W/K]. */
    double conductance(Cells cells) {
        if (Double.isNaN(conductance)) {
            conductance = sumOfConductances(cells);
        }
        return conductance;
    }

    private double sumOfConductances(Cells cells) {
        if (region == Region.PADS) {
            return taken().stream()
                    .mapToDouble(choice -> cells.through(choice.pads()))
                    .min()
                    .orElseThrow();
        }
        Envelope e = envelope(cells);
        double sum = 0;
        for (int c = 0; c < cells.exposed.size(); c++) {
            sum += cells.exposed.get(c).area() / (e.most(c, Fact.TOTAL) + BESIDE);
        }
        for (int c = 0; c < cells.pressed.size(); c++) {
            sum += cells.pressed.get(c).area() / (e.pressedMost()[c] + UNDER);
        }
        return sum;
    }

    private List<Part> byMass() {
        double heaviest = choices.get(set[set.length - 1]).mass();
        double middle = 0.5 * (lightest + heaviest);
        // Masses that differ by their last digit alone have no number between them.
        return lightest < middle && middle < heaviest
                ? split(i -> -choices.get(i).mass(), -middle)
                : inHalf();
    }

    private List<Part> byWarmth(Cells cells) {
        double[] whole = Arrays.stream(set).mapToDouble(i -> loss(cells, i)).toArray();
        double high = Arrays.stream(whole).max().orElseThrow();
        double low = Arrays.stream(whole).min().orElseThrow();
        return high - low > SAME ? split(i -> loss(cells, i), 0.5 * (high + low)) : List.of();
    }

    private List<Part> byCell(Cells cells) {
        Envelope e = envelope(cells);
        int widest = 0;
        for (int c = 0; c < cells.exposed.size(); c++) {
            widest = spread(cells, e, c) > spread(cells, e, widest) ? c : widest;
        }
        int cell = widest;
        return spread(cells, e, cell) > SAME
                ? split(i -> -total(cells, i, cell), -0.5 * (e.least(cell, Fact.TOTAL) + e.most(cell, Fact.TOTAL)))
                : List.of();
    }

    private List<Part> inHalf() {
        int half = set.length / 2;
        return List.of(
                new Part(region, choices, Arrays.copyOf(set, half)),
                new Part(region, choices, Arrays.copyOfRange(set, half, set.length)));
    }

    private List<Part> split(IntToDoubleFunction value, double at) {
        int[] cold = Arrays.stream(set).filter(i -> value.applyAsDouble(i) > at).toArray();
        int[] warm =
                Arrays.stream(set).filter(i -> value.applyAsDouble(i) <= at).toArray();
        return List.of(new Part(region, choices, cold), new Part(region, choices, warm));
    }

    private double total(Cells cells, int choice, int cell) {
        return cells.measure(region, choice).air()[cell * FACTS + Fact.TOTAL.ordinal()];
    }

    private double loss(Cells cells, int choice) {
        return new Part(region, choices, new int[] {choice}).conductance(cells);
    }
}
