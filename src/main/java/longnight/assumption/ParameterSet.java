package longnight.assumption;

import java.util.Arrays;

/**
 * Values for all constants of one {@link ModelParameter} enum. Immutable.
 *
 * @param <P> the enum of parameters
 */
public final class ParameterSet<P extends Enum<P> & ModelParameter> {

    private final Class<P> type;
    private final double[] values;

    private ParameterSet(Class<P> type, double[] values) {
        this.type = type;
        this.values = values;
    }

    /** All constants of {@code type} at their nominal values. */
    public static <P extends Enum<P> & ModelParameter> ParameterSet<P> nominal(Class<P> type) {
        P[] all = type.getEnumConstants();
        double[] values = new double[all.length];
        for (P parameter : all) {
            values[parameter.ordinal()] = parameter.nominal();
        }
        return new ParameterSet<>(type, values);
    }

    /** Value of one constant, in its own unit. */
    public double get(P parameter) {
        return values[parameter.ordinal()];
    }

    /**
     * A copy with one value changed.
     *
     * @throws IllegalArgumentException when the value lies outside the parameter's published range, or is NaN
     */
    public ParameterSet<P> with(P parameter, double value) {
        if (!(value >= parameter.low() && value <= parameter.high())) {
            throw new IllegalArgumentException(parameter.name() + " is " + value + ", allowed " + parameter.low()
                    + " to " + parameter.high() + " " + parameter.unit());
        }
        double[] copy = values.clone();
        copy[parameter.ordinal()] = value;
        return new ParameterSet<>(type, copy);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ParameterSet<?> set && type.equals(set.type) && Arrays.equals(values, set.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(type.getSimpleName());
        for (P parameter : type.getEnumConstants()) {
            if (values[parameter.ordinal()] != parameter.nominal()) {
                text.append(' ').append(parameter.name()).append('=').append(values[parameter.ordinal()]);
            }
        }
        return text.toString();
    }
}
