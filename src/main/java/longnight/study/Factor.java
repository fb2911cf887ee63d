package longnight.study;

import java.util.List;
import longnight.assumption.ModelParameter;

/**
 * One direction in which a model is drawn: constants that move together, as those of one person or of one table do.
 *
 * @param members what moves; empty for the choice between the two laws of shivering
 */
public record Factor(List<Member> members) {

    /**
     * A constant and the part of its published range that is drawn from.
     *
     * @param parameter the constant
     * @param low       smallest value drawn, at most nominal
     * @param high      largest value drawn, at least nominal
     */
    public record Member(ModelParameter parameter, double low, double high) {

        /** @throws IllegalArgumentException when the range leaves the published one or does not hold the nominal value */
        public Member {
            if (!(low >= parameter.low()
                    && low <= parameter.nominal()
                    && high >= parameter.nominal()
                    && high <= parameter.high())) {
                throw new IllegalArgumentException(parameter.name() + " drawn from " + low + " to " + high);
            }
        }

        /**
         * The value at a place of the distribution.
         *
         * @param u    0 to 1; one half is the nominal value
         * @param peak 1 for a uniform distribution on each side of the nominal value, 2 for a triangle, more for a narrower one
         */
        double at(double u, double peak) {
            double side = Math.abs(2 * u - 1);
            double out = 1 - StrictMath.pow(1 - side, 1 / peak);
            double nominal = parameter.nominal();
            return u < 0.5
                    ? Math.max(low, nominal - out * (nominal - low))
                    : Math.min(high, nominal + out * (high - nominal));
        }
    }

    static Factor of(ModelParameter... together) {
        return new Factor(List.of(together).stream()
                .map(each -> new Member(each, each.low(), each.high()))
                .toList());
    }

    static Factor within(ModelParameter parameter, double low, double high) {
        return new Factor(List.of(new Member(parameter, low, high)));
    }
}
