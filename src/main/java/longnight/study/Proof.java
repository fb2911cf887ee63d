package longnight.study;

import java.util.List;

/**
 * What a search found, and what it showed of the rest.
 *
 * @param found     adequate kits, lightest first; empty when there is none
 * @param complete  true when every kit lighter than the first was refuted; false when it gave up
 * @param lower     no adequate kit is lighter than this [kg]; infinite when there is none
 * @param kits      how many kits the rules allow
 * @param byBound   kits refuted many at a time by a bound, some of them heavier than what was found
 * @param byDryRun  kits refuted by their own night without water
 * @param byRun     kits refuted by their own night
 * @param boundRuns nights run for bounds
 * @param dryRuns   nights run without water
 * @param runs      nights run in full
 */
public record Proof(
        List<LeastAnswer.Found> found,
        boolean complete,
        double lower,
        double kits,
        double byBound,
        long byDryRun,
        long byRun,
        long boundRuns,
        long dryRuns,
        long runs) {

    /** The same with a kit found in another way. */
    Proof with(LeastAnswer.Found kit) {
        return new Proof(List.of(kit), complete, lower, kits, byBound, byDryRun, byRun, boundRuns, dryRuns, runs);
    }
}
