package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
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

    /** Nodes looked at together; fixed, so that the answer does not hang on the number of threads. */
    private static final int BATCH = 4;

    private final LeastQuestion question;
    private final List<Trial> trials;
    private final Field field;
    private final Hardness hardness = new Hardness();
    private final PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(Node::mass));
    private final List<LeastAnswer.Found> found = new ArrayList<>();
    private final AtomicLong boundRuns = new AtomicLong();
    private final AtomicLong dryRuns = new AtomicLong();
    private final AtomicLong runs = new AtomicLong();
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
        return new Proof(
                List.copyOf(found),
                complete,
                lower,
                kits,
                byBound,
                byDryRun,
                byRun,
                boundRuns.get(),
                dryRuns.get(),
                runs.get());
    }

    /** Works until enough kits are found and nothing lighter is left; false when it gave up. */
    private boolean empty(ExecutorService workers) {
        while (!queue.isEmpty() && !isSettled(question.others() + 1)) {
            if (boundRuns.get() + dryRuns.get() + runs.get() > question.mostRuns()) {
                return isSettled(1);
            }
            List<Node> batch = new ArrayList<>();
            List<Future<Finding>> findings = new ArrayList<>();
            while (batch.size() < BATCH && !queue.isEmpty()) {
                Node node = queue.remove();
                batch.add(node);
                findings.add(workers.submit(() -> look(node)));
            }
            for (int i = 0; i < batch.size(); i++) {
                take(batch.get(i), await(findings.get(i)));
            }
        }
        return true;
    }

    private boolean isSettled(int count) {
        Node next = queue.peek();
        return found.size() >= count
                && (next == null || next.mass() >= found.get(count - 1).mass());
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

    /** What a look at a node told. */
    private record Finding(How how, LeastAnswer.@Nullable Found found) {}

    private void take(Node node, Finding finding) {
        switch (finding.how()) {
            case BOUND -> byBound += node.kits(field.freezing);
            case DRY_RUN -> byDryRun++;
            case RUN -> byRun++;
            case PASSES -> {
                found.add(java.util.Objects.requireNonNull(finding.found()));
                found.sort(Comparator.comparingDouble(LeastAnswer.Found::mass));
            }
            case OPEN -> {
                for (Node half : node.split(field.reference(trials.get(hardness.order()[0])))) {
                    if (half.kits(field.freezing) > 0) {
                        queue.add(half);
                    }
                }
            }
        }
    }

    private Finding look(Node node) {
        if (node.isOneKit()) {
            return look(node.kit(), node.mass());
        }
        return new Finding(!node.open() && isRefuted(node) ? How.BOUND : How.OPEN, null);
    }

    private boolean isRefuted(Node node) {
        int[] order = hardness.order();
        for (int t : order) {
            if (hardness.isFarBelow(t, order[0])) {
                continue;
            }
            if (fails(trials.get(t), field.night(trials.get(t), node.parts()), boundRuns)) {
                hardness.refuted(t);
                return true;
            }
        }
        return false;
    }

    /** Whether a dry night is beyond the lines by more than what is allowed for; near them it is run to its end. */
    private boolean fails(Trial trial, Scenario night, AtomicLong count) {
        count.incrementAndGet();
        double demand = trial.demandDry(night);
        if (demand > question.demand() * (1 + ALLOWANCE)) {
            return true;
        }
        if (demand < question.demand() * NEAR || trial.beginsBefore()) {
            return false;
        }
        count.incrementAndGet();
        return trial.deficitDry(night) > DEAD_BAND + DEFICIT_ALLOWANCE;
    }

    private Finding look(Outfit.Kit kit, double mass) {
        int[] order = hardness.order();
        for (int t : order) {
            if (fails(trials.get(t), trials.get(t).in(kit), dryRuns)) {
                return new Finding(How.DRY_RUN, null);
            }
        }
        NightResult[] results = new NightResult[trials.size()];
        for (int t : order) {
            runs.incrementAndGet();
            results[t] = trials.get(t).run(kit, question.settings());
            if (!Pass.passes(results[t], question.demand())) {
                return new Finding(How.RUN, null);
            }
        }
        return new Finding(How.PASSES, new LeastAnswer.Found(kit, mass, List.of(results)));
    }
}
