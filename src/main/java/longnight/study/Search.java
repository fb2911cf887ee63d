package longnight.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
import longnight.night.Outline;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound for the lightest kit. A node holds sets of choices, one set for each region of the body; its bound is a dry
 * night in patches as warm as the best of each set ({@link Relaxed}). The node whose lightest kit is lightest goes first: a
 * bound above the line refutes all its kits at once, else it is split, down to single kits, which are run. The first kit
 * that passes with nothing lighter left is the lightest.
 */
final class Search {

    /**
     * A bound, or a dry run, refutes only when its demand lies above the line by this share: surface coefficients that move with
     * the surface's temperature, and water that may help a little. Tests look how much of it is used.
     */
    static final double ALLOWANCE = 0.005;

    /** The verdict's line for the core-heat deficit at dawn, and the same for it [J]. */
    private static final double DEAD_BAND = 15e3;

    static final double DEFICIT_ALLOWANCE = 1e3;

    /** From this share of the line for demand on, the deficit is worth a whole night. */
    private static final double NEAR = 0.96;

    /** Long steps move a night's demand by less than this share, and its deficit by less; a test looks. */
    static final double LONG_STEPS = 0.002;

    static final double LONG_STEPS_DEFICIT = 200;

    /** Nodes looked at together; fixed, so that the answer does not hang on the number of threads. */
    private static final int AHEAD = 8;

    private final LeastQuestion question;
    private final List<Trial> trials;
    private final Field field;
    private final Hardness hardness = new Hardness();
    private final Hunch refutations = new Hunch();
    private final Hunch deficits = new Hunch();
    private final Deque<Pending> pending = new ArrayDeque<>();
    private final PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(Node::mass));
    private final List<LeastAnswer.Found> found = new ArrayList<>();
    private long boundRuns;
    private long dryRuns;
    private long runs;
    private double byBound;
    private long byDryRun;
    private long byRun;

    Search(LeastQuestion question, List<Trial> trials) {
        this.question = question;
        this.trials = trials;
        field = new Field(trials, question.pieces(), question.pads(), DressRules.isFreezing(trials));
    }

    /** Searches until it is done, or has run as many nights as it may. */
    Proof run() {
        Map<Region, Part> all = new EnumMap<>(Region.class);
        for (Region region : Region.values()) {
            List<Choice> choices = field.choices.getOrDefault(region, List.of());
            if (choices.isEmpty()) {
                return proof(0, true);
            }
            all.put(
                    region,
                    new Part(region, choices, IntStream.range(0, choices.size()).toArray()));
        }
        Node root = Node.of(all);
        hardness.learn(trials.stream().map(trial -> trial.scout(heaviest(all))).toList());
        queue.add(root);
        ExecutorService workers = Executors.newFixedThreadPool(question.threads(), Together::worker);
        try {
            return proof(root.kits(field.freezing), empty(workers));
        } finally {
            workers.shutdownNow();
        }
    }

    /** The heaviest choice of every region: a kit to tell hard nights from easy ones. */
    private Outfit.Kit heaviest(Map<Region, Part> all) {
        Map<Region, Part> one = new EnumMap<>(Region.class);
        all.forEach((region, part) -> one.put(region, part.last()));
        return Node.of(one).kit();
    }

    private Proof proof(double kits, boolean complete) {
        Node next = queue.peek();
        double lower = complete || next == null
                ? found.isEmpty() ? Double.POSITIVE_INFINITY : found.get(0).mass()
                : next.mass();
        return new Proof(List.copyOf(found), complete, lower, kits, byBound, byDryRun, byRun, boundRuns, dryRuns, runs);
    }

    /** Works until enough kits are found and nothing lighter is left; false when it gave up. */
    private boolean empty(ExecutorService workers) {
        while (true) {
            boolean settled = isSettled(question.others() + 1);
            boolean over = boundRuns + dryRuns + runs > question.mostRuns();
            if (!settled && !over && !queue.isEmpty() && pending.size() < AHEAD) {
                send(queue.remove(), workers);
            } else if (!pending.isEmpty()) {
                Pending first = pending.remove();
                take(first.node(), await(first.finding()));
            } else {
                return settled || queue.isEmpty() || isSettled(1);
            }
        }
    }

    /** A node on which work is under way. */
    private record Pending(Node node, Future<Finding> finding) {}

    /** What is known by now goes along, so that nothing hangs on which thread comes first. */
    private void send(Node node, ExecutorService workers) {
        int[] order = hardness.order();
        Set<Integer> unlikely = deficits.unlikely();
        if (node.isOneKit()) {
            pending.add(new Pending(node, workers.submit(() -> look(node.kit(), node.mass(), order))));
        } else if (node.open() || !refutations.isWorthAsking(conductance(node), size(node))) {
            split(node);
        } else {
            pending.add(new Pending(node, workers.submit(() -> look(node, order, unlikely))));
        }
    }

    private double conductance(Node node) {
        Cells cells = field.reference(trials.get(hardness.hardest()));
        return node.parts().values().stream()
                .mapToDouble(part -> part.conductance(cells))
                .sum();
    }

    private static int size(Node node) {
        return Math.getExponent(node.kits(false));
    }

    private boolean isSettled(int count) {
        if (found.size() < count) {
            return false;
        }
        Node next = queue.peek();
        double mass = found.get(count - 1).mass();
        return (next == null || next.mass() >= mass)
                && pending.stream().allMatch(each -> each.node().mass() >= mass);
    }

    private static Finding await(Future<Finding> finding) {
        try {
            return finding.get();
        } catch (InterruptedException | ExecutionException fault) {
            throw new IllegalStateException("a night could not be run", fault);
        }
    }

    private enum How {
        BOUND,
        DRY_RUN,
        RUN,
        PASSES,
        OPEN
    }

    /**
     * What a look at a node told.
     *
     * @param by    the trial that refuted it; -1 for none
     * @param asked what was asked about deficits on the way
     * @param nights run for it: without water, and with
     */
    private record Finding(How how, int by, LeastAnswer.@Nullable Found found, List<Asked> asked, Nights nights) {}

    /** Nights run for one look; they are added up where looks are taken, so that the sum hangs on no thread. */
    private static final class Nights {
        private long dry;
        private long full;
    }

    /** Whether a night with such a demand was refuted by its deficit. */
    private record Asked(double demand, boolean refuted) {}

    private void take(Node node, Finding finding) {
        int size = size(node);
        finding.asked().forEach(each -> deficits.learn(each.demand(), size, each.refuted()));
        if (!node.isOneKit()) {
            refutations.learn(conductance(node), size, finding.how() == How.BOUND);
        }
        if (node.isOneKit()) {
            dryRuns += finding.nights().dry;
        } else {
            boundRuns += finding.nights().dry;
        }
        runs += finding.nights().full;
        if (finding.by() >= 0) {
            hardness.refuted(finding.by());
        }
        switch (finding.how()) {
            case BOUND -> byBound += node.kits(field.freezing);
            case DRY_RUN -> byDryRun++;
            case RUN -> byRun++;
            case PASSES -> {
                found.add(Objects.requireNonNull(finding.found()));
                found.sort(Comparator.comparingDouble(LeastAnswer.Found::mass));
            }
            case OPEN -> split(node);
        }
    }

    private void split(Node node) {
        for (Node half : node.split(field.reference(trials.get(hardness.hardest())))) {
            if (half.kits(field.freezing) > 0) {
                queue.add(half);
            }
        }
    }

    private Finding look(Node node, int[] order, Set<Integer> unlikely) {
        List<Asked> asked = new ArrayList<>();
        Nights nights = new Nights();
        int size = size(node);
        for (int t : order) {
            if (hardness.isFarBelow(t, order[0])) {
                continue;
            }
            Scenario night = field.night(trials.get(t), node.parts());
            if (fails(trials.get(t), night, nights, demand -> !unlikely.contains(Hunch.bin(demand, size)), asked)) {
                return new Finding(How.BOUND, t, null, asked, nights);
            }
        }
        return new Finding(How.OPEN, -1, null, asked, nights);
    }

    /** Whether a dry night is beyond the lines by more than what is allowed for; near them it is run to its end. */
    private boolean fails(
            Trial trial, Scenario night, Nights nights, DoublePredicate isWorthAWholeNight, List<Asked> asked) {
        nights.dry++;
        double demand = trial.demandDry(night);
        if (demand > question.demand() * (1 + ALLOWANCE)) {
            return true;
        }
        if (demand < question.demand() * NEAR || trial.beginsBefore() || !isWorthAWholeNight.test(demand)) {
            return false;
        }
        nights.dry++;
        boolean refuted = trial.deficitDry(night) > DEAD_BAND + DEFICIT_ALLOWANCE;
        asked.add(new Asked(demand, refuted));
        return refuted;
    }

    private Finding look(Outfit.Kit kit, double mass, int[] order) {
        NightResult[] results = new NightResult[trials.size()];
        Nights nights = new Nights();
        for (int t : order) {
            Trial trial = trials.get(t);
            if (fails(trial, trial.in(kit), nights, demand -> true, new ArrayList<>())) {
                return new Finding(How.DRY_RUN, t, null, List.of(), nights);
            }
            nights.full++;
            if (trial.isCalm()
                    && isFarFromPassing(
                            trial.inLongSteps(kit, question.settings().water()))) {
                return new Finding(How.RUN, t, null, List.of(), nights);
            }
            results[t] = trial.run(kit, question.settings());
            if (!Pass.passes(results[t], question.demand())) {
                return new Finding(How.RUN, t, null, List.of(), nights);
            }
        }
        return new Finding(How.PASSES, -1, new LeastAnswer.Found(kit, mass, List.of(results)), List.of(), nights);
    }

    /** Whether a night in long steps is beyond a line by more than long steps can be wrong. */
    private boolean isFarFromPassing(Outline night) {
        return night.demand() > question.demand() * (1 + LONG_STEPS)
                || Double.isNaN(night.stopped()) && night.deficitDawn() > DEAD_BAND + LONG_STEPS_DEFICIT;
    }
}
