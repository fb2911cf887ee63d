package longnight.study;

import longnight.night.NightResult;
import longnight.night.Verdict;

/** What adequate means: the night holds, and asks no more than the line. */
final class Pass {
    private Pass() {}

    static boolean passes(NightResult night, double demand) {
        Verdict.Outcome outcome = night.verdict().outcome();
        return (outcome == Verdict.Outcome.HOLDS_EASILY || outcome == Verdict.Outcome.HOLDS_BY_SHIVERING)
                && night.demand() <= demand;
    }
}
