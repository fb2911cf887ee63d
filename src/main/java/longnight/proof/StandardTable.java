package longnight.proof;

import java.util.List;
import java.util.Map;
import longnight.clothing.law.WholeBody;
import longnight.night.Iso11079;
import longnight.outdoors.law.WindChill;

/**
 * A table printed in a standard or by a weather service, and what our functions make of its rows.
 *
 * @param kind which table
 * @param rows its rows
 */
public record StandardTable(Kind kind, List<Row> rows) {

    /** The tables we hold, each with how its rows are worked out. */
    public enum Kind {
        /** EN 342 and EN 14058: air temperature [degC] for a class of clothing, by ISO 11079. */
        CLOTHING_CLASSES(2.5) {
            @Override
            double answer(Row row) {
                return Iso11079.air(
                        Iso11079.Criterion.NEUTRAL,
                        row.in("heat_W_m2"),
                        row.in("air_speed_m_s"),
                        row.in("walk_m_s"),
                        row.in("humidity_1"),
                        row.in("resistance_m2K_W"),
                        row.in("stored_W_m2"));
            }
        },
        /** Wind chill index in whole degrees Celsius. */
        WIND_CHILL_METRIC(0) {
            @Override
            double answer(Row row) {
                return WindChill.rounded(WindChill.metric(row.in("air_degC"), row.in("wind_km_h")));
            }
        },
        /** Wind chill index in whole degrees Fahrenheit. */
        WIND_CHILL_UNITED_STATES(0) {
            @Override
            double answer(Row row) {
                return WindChill.rounded(WindChill.unitedStates(row.in("air_degF"), row.in("wind_mph")));
            }
        },
        /** The list of garments of ISO 7730 and ISO 9920: that both of its columns say the same, no more [m2 K/W]. */
        GARMENT_LIST(0.0012) {
            @Override
            double answer(Row row) {
                return row.in("resistance_clo") * WholeBody.CLO;
            }
        };

        private final double tolerance;

        Kind(double tolerance) {
            this.tolerance = tolerance;
        }

        abstract double answer(Row row);

        /** Largest error of a single row that rounding and the table's own spread explain, in the unit of the table. */
        public double tolerance() {
            return tolerance;
        }
    }

    /**
     * One row.
     *
     * @param id       its name
     * @param inputs   by name, units at the end of each
     * @param expected the printed value
     * @param source   where it is printed
     */
    public record Row(String id, Map<String, Double> inputs, double expected, String source) {

        /**
         * An input.
         *
         * @throws IllegalArgumentException when the row has none of that name
         */
        public double in(String name) {
            Double value = inputs.get(name);
            if (value == null) {
                throw new IllegalArgumentException(id + " has no " + name);
            }
            return value;
        }
    }

    public StandardTable {
        rows = List.copyOf(rows);
    }

    /** What we make of a row. */
    public double answer(Row row) {
        return kind.answer(row);
    }

    /** Mean error. */
    public double bias() {
        return rows.stream().mapToDouble(this::error).average().orElse(Double.NaN);
    }

    /** Root mean square error. */
    public double deviation() {
        return Math.sqrt(rows.stream()
                .mapToDouble(row -> error(row) * error(row))
                .average()
                .orElse(Double.NaN));
    }

    /** Largest error, whatever its sign. */
    public double worst() {
        return rows.stream().mapToDouble(row -> Math.abs(error(row))).max().orElse(Double.NaN);
    }

    /** Rows within the tolerance of the table. */
    public long met() {
        return rows.stream()
                .filter(row -> Math.abs(error(row)) <= kind.tolerance())
                .count();
    }

    private double error(Row row) {
        return answer(row) - row.expected();
    }
}
