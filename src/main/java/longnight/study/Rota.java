package longnight.study;

import java.util.List;
import java.util.Map;

/**
 * One way of taking the places of a huddle in turn, and how everybody's night goes with it.
 *
 * @param kind      how the turns are shared
 * @param swap      time from one change to the next [s]
 * @param outside   who is at the outer places from one change to the next, by ids in order of the group's own exposure
 * @param outsideFor time at an outer place, by id [s]
 * @param standings the most exposed first
 */
public record Rota(
        Kind kind, double swap, List<List<String>> outside, Map<String, Double> outsideFor, List<Standing> standings) {

    /** How long the most exposed of the group is outside, against an even share. */
    public enum Kind {
        /** Nobody changes places, and the most exposed has drawn an outer one. */
        KEPT_OUTSIDE(Double.NaN),
        /** Everybody equally long. */
        EVEN(1),
        /** The most exposed half as long as an even share. */
        HALF(0.5),
        /** The most exposed never. */
        KEPT_INSIDE(0);

        private final double ofEven;

        Kind(double ofEven) {
            this.ofEven = ofEven;
        }

        /** Share of the time that the most exposed spends outside [1]. */
        double share(int people, int outerPlaces) {
            return Double.isNaN(ofEven) ? 1 : ofEven * outerPlaces / people;
        }
    }

    /**
     * Shortfall heat that even turns save the group's most exposed, with as little and as much skin in touch as it may be.
     *
     * @param low  at the lowest {@link longnight.body.BodyParameter#HUDDLE_CONTACT} [J]; NaN where a run stopped
     * @param high at its highest [J]
     */
    public record Bounds(double low, double high) {}

    public Rota {
        outside = List.copyOf(outside);
        standings = List.copyOf(standings);
    }

    /** How the night of one of them goes. */
    public Standing of(String id) {
        return standings.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }
}
