package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longnight.night.GroupNight.Places;
import longnight.night.Phase;
import longnight.night.Scenario;

/**
 * Who is at an outer place when. Everybody has a share of the outer places to come to; at each change those go out who are
 * furthest behind theirs. Nobody's turn depends on the order in a file: people count by how exposed they are.
 */
final class Turns {
    private static final double SAME = 1e-9;

    private final Places places;

    /** By slot and place in the order of exposure: whether outside. */
    private final boolean[][] outside;

    private Turns(Places places, boolean[][] outside) {
        this.places = places;
        this.outside = outside;
    }

    /**
     * Turns for a night.
     *
     * @param people   in the group, more than there are outer places
     * @param duration of the night [s]
     * @param weakest  share of the time that the most exposed spends outside [1]; the others share the rest evenly
     */
    static Turns of(Places places, int people, double duration, double weakest) {
        int slots = (int) Math.ceil(duration / places.swap() - SAME);
        double[] owed = new double[people];
        boolean[][] outside = new boolean[slots][people];
        double others = (places.outerPlaces() - weakest) / (people - 1);
        for (boolean[] slot : outside) {
            for (int i = 0; i < people; i++) {
                owed[i] += i == 0 ? weakest : others;
            }
            for (int i : furthestBehind(owed, weakest > 0 ? 0 : 1, places.outerPlaces())) {
                slot[i] = true;
                owed[i]--;
            }
        }
        return new Turns(places, outside);
    }

    /** Of those who are equally behind, the least exposed goes first. */
    private static List<Integer> furthestBehind(double[] owed, int from, int count) {
        return IntStream.range(from, owed.length)
                .boxed()
                .sorted(Comparator.comparingLong((Integer i) -> -Math.round(owed[i] / SAME))
                        .thenComparing(Comparator.reverseOrder()))
                .limit(count)
                .toList();
    }

    /** As told to people. */
    Rota rota(Rota.Kind kind, List<String> ids, double duration, List<Standing> standings) {
        List<List<String>> when = new ArrayList<>();
        Map<String, Double> time = new LinkedHashMap<>();
        ids.forEach(id -> time.put(id, 0.0));
        for (int slot = 0; slot < slots(); slot++) {
            double length = Math.min(duration, (slot + 1) * places.swap()) - slot * places.swap();
            List<String> out = new ArrayList<>();
            for (int rank = 0; rank < ids.size(); rank++) {
                if (outside[slot][rank]) {
                    out.add(ids.get(rank));
                    time.merge(ids.get(rank), length, Double::sum);
                }
            }
            when.add(List.copyOf(out));
        }
        return new Rota(kind, places.swap(), when, time, standings);
    }

    int slots() {
        return outside.length;
    }

    boolean isOutside(int slot, int rank) {
        return outside[slot][rank];
    }

    /** The night of one of them with the places taken in turn; on the march nobody huddles. */
    Scenario night(Scenario alone, int rank) {
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : alone.plan().phases()) {
            if (phase.from() < -SAME || phase.march() != null) {
                phases.add(phase);
            } else {
                cut(phase, rank, phases);
            }
        }
        return alone.withPlan(alone.plan().withPhases(phases));
    }

    /** Neighbouring slots at the same kind of place are one phase. */
    private void cut(Phase phase, int rank, List<Phase> phases) {
        double at = phase.from();
        int slot = slotAt(at);
        while (at < phase.to() - SAME) {
            boolean out = outside[slot][rank];
            int next = slot + 1;
            while (next < slots() && outside[next][rank] == out) {
                next++;
            }
            double end = next < slots() ? Math.min(phase.to(), next * places.swap()) : phase.to();
            phases.add(phase.during(at, end).touching(out ? places.outer() : places.inner()));
            at = end;
            slot = Math.min(next, slots() - 1);
        }
    }

    private int slotAt(double time) {
        return Math.min(slots() - 1, (int) Math.floor(time / places.swap() + SAME));
    }
}
