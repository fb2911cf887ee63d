package longnight.proof;

import java.util.List;

/**
 * The whole answer: people, printed tables, arithmetic.
 *
 * @param outcomes of the experiments that the engine can express
 * @param cannot   experiments that it cannot
 * @param tables   printed in standards
 * @param checks   of the arithmetic
 * @param shipped  whether the experiments are those that come with the program, which its constants were fitted to
 */
public record Proof(
        List<Outcome> outcomes,
        List<Experiment> cannot,
        List<StandardTable> tables,
        List<SelfCheck> checks,
        boolean shipped) {
    public Proof {
        outcomes = List.copyOf(outcomes);
        cannot = List.copyOf(cannot);
        tables = List.copyOf(tables);
        checks = List.copyOf(checks);
    }

    /** Whether some gate is missed by every variant of what is assumed. */
    public boolean missesForGood() {
        return outcomes.stream()
                .flatMap(outcome -> outcome.rows().stream())
                .anyMatch(row -> row.check().gate().exists() && !row.anyGate());
    }
}
