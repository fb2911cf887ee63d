package longnight.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What came of one experiment.
 *
 * @param experiment which
 * @param rows       one for each of its checks
 */
public record Outcome(Experiment experiment, List<Row> rows) {
    public Outcome {
        rows = List.copyOf(rows);
    }

    /**
     * One check.
     *
     * @param check    which
     * @param nominal  value with the set-up as the file says
     * @param low      least over all variants
     * @param high     largest over all variants
     * @param anyGate  whether some variant meets the gate
     * @param anyGoal  whether some variant meets the goal
     */
    public record Row(Check check, double nominal, double low, double high, boolean anyGate, boolean anyGoal) {
        /** Whether the nominal set-up meets the gate; true without one. */
        public boolean meetsGate() {
            return !check.gate().exists() || check.gate().holds(nominal);
        }

        /** Whether the nominal set-up meets the goal; true without one. */
        public boolean meetsGoal() {
            return !check.goal().exists() || check.goal().holds(nominal);
        }
    }

    /**
     * From the answers of all variants.
     *
     * @param answers values of the checks by variant, the nominal one first
     */
    public static Outcome of(Experiment experiment, List<double[]> answers) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < experiment.checks().size(); i++) {
            Check check = experiment.checks().get(i);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            boolean gate = false;
            boolean goal = false;
            for (double[] answer : answers) {
                double value = answer[i];
                low = value < low ? value : low;
                high = value > high ? value : high;
                gate |= check.gate().holds(value);
                goal |= check.goal().holds(value);
            }
            rows.add(new Row(check, answers.get(0)[i], low, high, gate, goal));
        }
        return new Outcome(experiment, rows);
    }

    /**
     * The score of a set: figures pooled over experiments.
     *
     * @param gates       number of gates
     * @param gatesMet    met by the nominal set-up
     * @param gatesAny    met by some variant
     * @param goals       share of goals met by the nominal set-up, each experiment counting once
     * @param goalsAny    the same by some variant
     * @param pools       errors by what is pooled; mean skin with held heat takes the other skins in where none was held
     */
    public record Score(
            int gates, int gatesMet, int gatesAny, double goals, double goalsAny, Map<Check.Pool, Pooled> pools) {}

    /**
     * Errors of one kind: heat relative to the measured value [1], the rest in K.
     *
     * @param count of values
     * @param bias  mean
     * @param rmsd  root mean square
     */
    public record Pooled(int count, double bias, double rmsd) {}

    /** The score of a set. */
    public static Score score(List<Outcome> outcomes) {
        int gates = 0;
        int met = 0;
        int any = 0;
        double goals = 0;
        double goalsAny = 0;
        int scored = 0;
        Map<Check.Pool, double[]> sums = new TreeMap<>();
        for (Outcome outcome : outcomes) {
            int of = 0;
            int here = 0;
            int some = 0;
            boolean held = outcome.rows.stream().anyMatch(row -> row.check.pool() == Check.Pool.SKIN_HELD);
            for (Row row : outcome.rows) {
                if (row.check.gate().exists()) {
                    gates++;
                    met += row.meetsGate() ? 1 : 0;
                    any += row.anyGate ? 1 : 0;
                }
                if (row.check.goal().exists()) {
                    of++;
                    here += row.meetsGoal() ? 1 : 0;
                    some += row.anyGoal ? 1 : 0;
                }
                pool(row, row.check.pool(), sums);
                if (row.check.pool() == Check.Pool.SKIN && !held) {
                    pool(row, Check.Pool.SKIN_HELD, sums);
                }
            }
            if (of > 0) {
                scored++;
                goals += (double) here / of;
                goalsAny += (double) some / of;
            }
        }
        if (outcomes.stream()
                .flatMap(outcome -> outcome.rows.stream())
                .noneMatch(row -> row.check.pool() == Check.Pool.SKIN_HELD)) {
            sums.remove(Check.Pool.SKIN_HELD); // no heat was held in any: it would be the same again
        }
        Map<Check.Pool, Pooled> pools = new TreeMap<>();
        sums.forEach((pool, sum) ->
                pools.put(pool, new Pooled((int) sum[0], sum[1] / sum[0], Math.sqrt(sum[2] / sum[0]))));
        return new Score(gates, met, any, goals / scored, goalsAny / scored, pools);
    }

    private static void pool(Row row, Check.Pool pool, Map<Check.Pool, double[]> sums) {
        Check check = row.check;
        if (pool == Check.Pool.NONE || Double.isNaN(check.measured())) {
            return;
        }
        double error = row.nominal - check.measured();
        error = pool == Check.Pool.HEAT ? error / check.measured() : error;
        double[] sum = sums.computeIfAbsent(pool, key -> new double[3]);
        sum[0]++;
        sum[1] += error;
        sum[2] += error * error;
    }
}
