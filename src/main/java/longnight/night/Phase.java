package longnight.night;

import longnight.clothing.Outfit;
import longnight.figure.Posture;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of a plan: posture, clothing and activity do not change in it. The weather may.
 *
 * @param name         word shown to people
 * @param from         start [s from dusk, negative before it]
 * @param to           end [s from dusk], after {@code from}
 * @param posture      posture held; standing while marching
 * @param sleepAllowed whether the person may sleep
 * @param march        walking; null while still
 * @param drillShare   share of the time spent in a warming drill [1], 0 to 1
 * @param drillHeat    heat made in the drill per body mass [W/kg]
 * @param outfit       what is worn; null for the scenario's outfit
 * @param huddle       share of the body's area kept from losing heat by partners in touch [1], 0 to 0.4
 * @param windShare    share of the wind at the place that reaches the person [1], 0.03 to 1: shelter found
 * @param underRoof    no rain, snow or rime reaches the person
 */
public record Phase(
        String name,
        double from,
        double to,
        Posture posture,
        boolean sleepAllowed,
        @Nullable March march,
        double drillShare,
        double drillHeat,
        @Nullable Outfit outfit,
        double huddle,
        double windShare,
        boolean underRoof) {

    public Phase {
        if (!(to > from)) {
            throw new IllegalArgumentException("phase " + name + " from " + from + " to " + to + " s: it must last");
        }
    }

    /** A part of it with a drill all the time or not at all; nobody sleeps in a drill. */
    Phase part(double begin, double end, double drill) {
        return new Phase(
                name,
                begin,
                end,
                posture,
                sleepAllowed && drill <= 0,
                march,
                drill,
                drillHeat,
                outfit,
                huddle,
                windShare,
                underRoof);
    }

    /** The same in other clothes; null for the scenario's. */
    public Phase wearing(@Nullable Outfit other) {
        return new Phase(
                name,
                from,
                to,
                posture,
                sleepAllowed,
                march,
                drillShare,
                drillHeat,
                other,
                huddle,
                windShare,
                underRoof);
    }

    /** The same in another posture. */
    public Phase in(Posture other) {
        return new Phase(
                name,
                from,
                to,
                other,
                sleepAllowed,
                march,
                drillShare,
                drillHeat,
                outfit,
                huddle,
                windShare,
                underRoof);
    }

    /** The same at another time [s from dusk]. */
    public Phase during(double begin, double end) {
        return new Phase(
                name,
                begin,
                end,
                posture,
                sleepAllowed,
                march,
                drillShare,
                drillHeat,
                outfit,
                huddle,
                windShare,
                underRoof);
    }

    /** The same with another warming drill: share of the time [1] and heat made in it [W/kg]. */
    public Phase drilling(double share, double heat) {
        return new Phase(
                name, from, to, posture, sleepAllowed, march, share, heat, outfit, huddle, windShare, underRoof);
    }

    /** The same with another share of the wind [1], under a roof or not. */
    public Phase sheltered(double wind, boolean roof) {
        return new Phase(
                name, from, to, posture, sleepAllowed, march, drillShare, drillHeat, outfit, huddle, wind, roof);
    }

    /** The same with another share of the body's area in touch with partners [1]. */
    public Phase touching(double share) {
        return new Phase(
                name,
                from,
                to,
                posture,
                sleepAllowed,
                march,
                drillShare,
                drillHeat,
                outfit,
                share,
                windShare,
                underRoof);
    }

    /** The same without its warming drill. */
    Phase withoutDrill() {
        return drilling(0, drillHeat);
    }

    /** Sitting, standing or lying still in the scenario's outfit. */
    public static Phase still(String name, double from, double to, Posture posture, boolean sleepAllowed) {
        return new Phase(name, from, to, posture, sleepAllowed, null, 0, 0, null, 0, 1, false);
    }
}
