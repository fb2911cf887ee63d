package longnight.outdoors;

import java.util.function.UnaryOperator;
import longnight.assumption.ParameterSet;
import longnight.figure.Posture;

/** The environment over time: a night outdoors or a laboratory chamber. Stateless after construction: threads may share it. */
public interface Surroundings {

    /**
     * Fills {@code out} with the state at a time.
     *
     * @param time seconds from the start of the night
     */
    void at(double time, OutdoorState out);

    /** As {@link #at(double, OutdoorState)} for a person in another posture than the surroundings were made for. */
    default void at(double time, Posture posture, OutdoorState out) {
        at(time, out);
    }

    /**
     * The same place in another course of weather.
     *
     * @param change made to the weather of the place
     * @throws UnsupportedOperationException indoors: a chamber has no weather
     */
    default Surroundings under(UnaryOperator<Weather> change) {
        throw new UnsupportedOperationException("a chamber has no weather");
    }

    /**
     * The same weather at a place that differs.
     *
     * @param change made to the place
     * @throws UnsupportedOperationException indoors: a chamber is no such place
     */
    default Surroundings elsewhere(UnaryOperator<Site> change) {
        throw new UnsupportedOperationException("a chamber is no place outdoors");
    }

    /** The constants that these surroundings were made with; nominal where none act. */
    default ParameterSet<OutdoorParameter> parameters() {
        return ParameterSet.nominal(OutdoorParameter.class);
    }

    /** The same place and weather made with other constants; the surroundings themselves where none act, as in a laboratory. */
    default Surroundings with(ParameterSet<OutdoorParameter> parameters) {
        return this;
    }

    /** Whether {@link #under} and {@link #elsewhere} have something to change. */
    default boolean hasWeather() {
        return false;
    }

    /** First time covered [s]. */
    double firstTime();

    /** Last time covered [s]. */
    double lastTime();

    /** Factor on forced convection for the turbulence of the place [1]: 1 in a laboratory, about 1.3 outdoors (E-26). */
    double turbulence();

    /** What the person sits or lies on; null in a chamber with a mesh couch (no contact). */
    @org.jspecify.annotations.Nullable
    Ground ground();

    /** Times at which the course has a corner [s]; steps land on them. */
    default double[] knots() {
        return new double[0];
    }

    /** Times at which something changes abruptly [s]; steps land on them and are short for a while after. */
    default double[] jumps() {
        return new double[0];
    }
}
