package longnight.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longnight.night.Caution;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.study.SpreadAnswer.Quantity;

/** Draws people, weathers and models until the answer no longer moves, and tells what moves it. */
public final class SpreadStudy {
    private final SpreadQuestion question;
    private final DrawMemory memory;
    private final int threads;
    private final Rows rows;
    private final Scenario given;
    private int nights;

    private SpreadStudy(SpreadQuestion question, DrawMemory memory, int threads) {
        this.question = question;
        this.memory = memory;
        this.threads = threads;
        given = question.given();
        rows = new Rows(DoubtfulNight.dimensions(given), question.seed());
    }

    /**
     * Works it all out.
     *
     * @param threads how many nights are run at once, 1 and up; the answer does not depend on it
     */
    public static SpreadAnswer of(SpreadQuestion question, int threads) {
        return of(question, DrawMemory.NONE, threads);
    }

    /** The same, going on where another run was broken off. */
    public static SpreadAnswer of(SpreadQuestion question, DrawMemory memory, int threads) {
        return new SpreadStudy(question, memory, threads).answer();
    }

    private SpreadAnswer answer() {
        NightResult asGiven = run(given);
        NightResult atWorst = run(question.worst());
        DoubtfulNight night = new DoubtfulNight(question, asGiven);
        DoubtfulNight worstNight = new DoubtfulNight(question, atWorst);
        List<Draw> together = new ArrayList<>();
        List<Cloud> clouds = clouds(night, together);
        List<Cloud> worst = clouds(worstNight, new ArrayList<>());
        Drivers drivers = new Drivers(night, together);
        drivers.settle();
        Set<Caution> cautions = new LinkedHashSet<>(asGiven.cautions());
        cautions.addAll(atWorst.cautions());
        return new SpreadAnswer(
                question,
                new SpreadAnswer.Side(asGiven, clouds),
                new SpreadAnswer.Side(atWorst, worst),
                drivers.indices(),
                drivers.sums(),
                drivers.size(),
                drivers.isSettled(),
                drivers.stopped(),
                List.copyOf(cautions),
                nights);
    }

    private NightResult run(Scenario scenario) {
        nights += 2; // once more in long steps
        return NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    private List<Draw> ask(DoubtfulNight night, List<double[]> points, Set<Doubt> over) {
        nights += points.size();
        List<Draw> draws = new ArrayList<>(memory.known(points.size()));
        draws.addAll(Together.ask(
                points.subList(draws.size(), points.size()), point -> night.at(point, over), memory::keep, threads));
        return draws;
    }

    // --- Bands ---

    private List<Cloud> clouds(DoubtfulNight night, List<Draw> together) {
        List<Cloud> clouds = new ArrayList<>();
        Set<Doubt> all = EnumSet.copyOf(question.over());
        for (Doubt doubt : all) {
            if (all.size() > 1) {
                clouds.add(cloud(night, EnumSet.of(doubt), new ArrayList<>()));
            }
        }
        clouds.add(cloud(night, all, together));
        return List.copyOf(clouds);
    }

    private Cloud cloud(DoubtfulNight night, Set<Doubt> over, List<Draw> draws) {
        extend(night, over, draws, SpreadAnswer.FIRST);
        double[] moved = {Double.NaN, Double.NaN};
        boolean settled = false;
        while (!settled && 2 * draws.size() <= question.most()) {
            Spread before = bills(draws);
            extend(night, over, draws, 2 * draws.size());
            moved = new double[] {moved[1], moved(before, bills(draws))};
            settled = moved[0] < SpreadAnswer.TOLERANCE && moved[1] < SpreadAnswer.TOLERANCE;
        }
        return Cloud.of(
                over,
                night.nominal(),
                draws,
                settled,
                Double.isNaN(moved[0]) ? moved[1] : Math.max(moved[0], moved[1]));
    }

    private void extend(DoubtfulNight night, Set<Doubt> over, List<Draw> draws, int to) {
        draws.addAll(ask(night, rows.first(draws.size(), to), over));
    }

    private static Spread bills(List<Draw> draws) {
        return Spread.of(
                Double.NaN,
                draws.stream()
                        .mapToDouble(draw -> draw.hasStopped() ? Double.POSITIVE_INFINITY : draw.shortfallHeat())
                        .toArray());
    }

    private static double moved(Spread from, Spread to) {
        return Math.max(moved(from.low(), to.low()), moved(from.high(), to.high()));
    }

    private static double moved(double from, double to) {
        if (from == to || Math.abs(to - from) < SpreadAnswer.FLOOR) {
            return 0;
        }
        return Double.isInfinite(from) || Double.isInfinite(to)
                ? Double.POSITIVE_INFINITY
                : Math.abs(to - from) / Math.max(SpreadAnswer.FLOOR, Math.abs(to));
    }

    // --- What drives it ---

    /** Rows of draws with one group at a time from another draw. */
    private final class Drivers {
        private final DoubtfulNight night;
        private final List<Draw> a;
        private final List<Draw> b = new ArrayList<>();
        private final Map<Driver, List<Draw>> crossed = new LinkedHashMap<>();
        private final Map<Quantity, Indices> found = new LinkedHashMap<>();

        /** @param together draws that are there already; more are added to them */
        Drivers(DoubtfulNight night, List<Draw> together) {
            this.night = night;
            a = together;
            for (Driver driver : Driver.values()) {
                if (question.over().contains(driver.doubt())) {
                    crossed.put(driver, new ArrayList<>());
                }
            }
        }

        void settle() {
            int n = SpreadAnswer.FIRST;
            reckon(n);
            while (!isSettled() && 2 * n <= question.most()) {
                n = 2 * n;
                reckon(n);
            }
        }

        private void reckon(int n) {
            Set<Doubt> over = question.over();
            int from = b.size();
            if (a.size() < n) {
                extend(night, over, a, n);
            }
            b.addAll(ask(night, rows.second(from, n), over));
            crossed.forEach((driver, draws) -> draws.addAll(ask(
                    night, rows.crossed(from, n, place -> DoubtfulNight.driver(given, place) == driver), over)));
            found.put(Quantity.SHORTFALL_HEAT, indices(n, draw -> extended(draw, draw.shortfallHeat())));
        }

        private Indices indices(int n, ToDoubleFunction<Draw> quantity) {
            double[][] swapped = crossed.values().stream()
                    .map(each -> values(each, n, quantity))
                    .toArray(double[][]::new);
            return Indices.of(values(a, n, quantity), values(b, n, quantity), swapped, question.seed());
        }

        private double[] values(List<Draw> draws, int n, ToDoubleFunction<Draw> quantity) {
            return draws.subList(0, n).stream().mapToDouble(quantity).toArray();
        }

        boolean isSettled() {
            return shortfall().of().stream().allMatch(index -> !(index.total().width() > SpreadAnswer.WIDEST));
        }

        private Indices shortfall() {
            return java.util.Objects.requireNonNull(found.get(Quantity.SHORTFALL_HEAT));
        }

        int size() {
            return b.size();
        }

        int stopped() {
            return (int) Stream.concat(
                            Stream.concat(a.subList(0, size()).stream(), b.stream()),
                            crossed.values().stream().flatMap(List::stream))
                    .filter(Draw::hasStopped)
                    .count();
        }

        Map<Quantity, Map<Driver, Indices.Index>> indices() {
            found.put(Quantity.DEMAND, indices(size(), Draw::demand));
            found.put(Quantity.CORE_HEAT_DEFICIT, indices(size(), draw -> extended(draw, draw.deficitDawn())));
            Map<Quantity, Map<Driver, Indices.Index>> all = new LinkedHashMap<>();
            found.forEach((quantity, of) -> {
                Map<Driver, Indices.Index> each = new LinkedHashMap<>();
                int i = 0;
                for (Driver driver : crossed.keySet()) {
                    each.put(driver, of.of().get(i++));
                }
                all.put(quantity, each);
            });
            return all;
        }

        Map<Quantity, Indices.Estimate> sums() {
            return found.entrySet().stream()
                    .collect(Collectors.toMap(
                            Map.Entry::getKey, each -> each.getValue().sum(), (x, y) -> x, LinkedHashMap::new));
        }
    }

    /** A heat at dawn; that of a run that stopped extended to dawn in proportion. */
    private double extended(Draw draw, double heat) {
        return draw.hasStopped() ? heat * given.plan().duration() / Math.max(1, draw.stopped()) : heat;
    }
}
