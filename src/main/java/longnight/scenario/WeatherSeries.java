package longnight.scenario;

import java.util.ArrayList;
import java.util.List;
import longnight.outdoors.Weather;

/** A weather series in the making: row by row, each with its place. */
final class WeatherSeries {
    /** Longest step between two rows [s]; what happens in a longer one nobody knows. */
    static final double LONGEST_STEP = 3 * 3600;

    /**
     * One row.
     *
     * @param place    where its time was written
     * @param time     seconds from the start of the night
     * @param air      [degC]
     * @param humidity [1]
     * @param wind     [m/s]
     * @param cloud    [1]
     * @param rain     [mm/h]
     * @param pressure [Pa] or NaN
     * @param sky      [W/m2] or NaN
     */
    record Row(
            Place place,
            double time,
            double air,
            double humidity,
            double wind,
            double cloud,
            double rain,
            double pressure,
            double sky) {}

    private final List<Row> rows = new ArrayList<>();

    void add(Row row) {
        rows.add(row);
    }

    /** Time of the first row [s]. */
    double start() {
        return rows.get(0).time();
    }

    /** The series, once it is known to cover the night without a gap. */
    Weather over(NightHours night) {
        Row first = rows.get(0);
        Row last = rows.get(rows.size() - 1);
        if (first.time() > 0 || last.time() < night.duration()) {
            boolean late = first.time() > 0;
            throw (late ? first : last)
                    .place()
                    .fault(
                            "the weather " + (late ? "begins at " : "ends at ")
                                    + night.clockAt((late ? first : last).time()),
                            "it has to cover the night, " + night.shown());
        }
        for (int i = 1; i < rows.size(); i++) {
            double step = rows.get(i).time() - rows.get(i - 1).time();
            if (step > LONGEST_STEP) {
                throw rows.get(i)
                        .place()
                        .fault(
                                "a gap in the weather: " + Math.round(step / 360) / 10.0
                                        + " h without a row before this one",
                                "rows follow each other within 3 h");
            }
        }
        return new Weather(
                rows.stream().mapToDouble(Row::time).toArray(),
                rows.stream().mapToDouble(Row::air).toArray(),
                rows.stream().mapToDouble(Row::humidity).toArray(),
                rows.stream().mapToDouble(Row::wind).toArray(),
                rows.stream().mapToDouble(Row::cloud).toArray(),
                rows.stream().mapToDouble(Row::rain).toArray(),
                rows.stream().mapToDouble(Row::pressure).toArray(),
                rows.stream().mapToDouble(Row::sky).toArray());
    }
}
