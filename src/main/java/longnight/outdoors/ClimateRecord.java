package longnight.outdoors;

import org.jspecify.annotations.Nullable;

/**
 * What a station wrote down over a year or many winters. Times are the station's own standard time, without daylight saving, counted
 * from the first of January 1970; values that are missing are NaN. Arrays must not be changed by those who read them.
 *
 * @param station     its name or number
 * @param latitude    degrees, north positive; NaN when unknown
 * @param longitude   degrees, east positive; NaN when unknown
 * @param utcOffset   of its standard time [h]; NaN when unknown
 * @param altitude    [m]; NaN when unknown
 * @param typicalYear whether it was put together of months of several years, and so holds no extremes
 * @param daily       day by day
 * @param hourly      hour by hour; null for a record of days only
 */
public record ClimateRecord(
        String station,
        double latitude,
        double longitude,
        double utcOffset,
        double altitude,
        boolean typicalYear,
        Daily daily,
        @Nullable Hourly hourly) {

    /**
     * Days in rising order; days that nobody recorded may be left out.
     *
     * @param day           days since 1970-01-01
     * @param minimum       lowest air temperature [degC]
     * @param maximum       highest air temperature [degC]
     * @param precipitation sum [mm]
     * @param wind          mean at 10 m [m/s]
     */
    public record Daily(int[] day, double[] minimum, double[] maximum, double[] precipitation, double[] wind) {}

    /**
     * Hours in rising order; hours that nobody recorded may be left out.
     *
     * @param hour          hours since 1970-01-01 00:00
     * @param air           [degC]
     * @param humidity      over liquid water [1]
     * @param wind          at 10 m [m/s]
     * @param cloud         [1]
     * @param precipitation of the hour that ends here [mm]
     * @param pressure      at the station [Pa]
     * @param sky           downward long-wave radiation [W/m2]
     */
    public record Hourly(
            int[] hour,
            double[] air,
            double[] humidity,
            double[] wind,
            double[] cloud,
            double[] precipitation,
            double[] pressure,
            double[] sky) {

        /** Fewest hours of a day with an air temperature for the day to count: engineering estimate, no source. */
        private static final int FULL_DAY = 20;

        /** The same day by day; a day with fewer than 20 hours has no extremes. Extremes between the hours are lost. */
        public Daily daily() {
            int first = hour.length == 0 ? 0 : Math.floorDiv(hour[0], 24);
            int days = hour.length == 0 ? 0 : Math.floorDiv(hour[hour.length - 1], 24) - first + 1;
            int[] day = new int[days];
            double[][] out = new double[4][days];
            int i = 0;
            for (int d = 0; d < days; d++) {
                day[d] = first + d;
                int from = i;
                while (i < hour.length && Math.floorDiv(hour[i], 24) == day[d]) {
                    i++;
                }
                summarise(from, i, d, out);
            }
            return new Daily(day, out[0], out[1], out[2], out[3]);
        }

        private void summarise(int from, int to, int d, double[][] out) {
            double low = Double.NaN;
            double high = Double.NaN;
            double rain = Double.NaN;
            double blown = 0;
            int n = 0;
            int winds = 0;
            for (int i = from; i < to; i++) {
                if (!Double.isNaN(air[i])) {
                    n++;
                    low = n == 1 ? air[i] : Math.min(low, air[i]);
                    high = n == 1 ? air[i] : Math.max(high, air[i]);
                }
                if (!Double.isNaN(precipitation[i])) {
                    rain = (Double.isNaN(rain) ? 0 : rain) + precipitation[i];
                }
                if (!Double.isNaN(wind[i])) {
                    blown += wind[i];
                    winds++;
                }
            }
            boolean full = n >= FULL_DAY;
            out[0][d] = full ? low : Double.NaN;
            out[1][d] = full ? high : Double.NaN;
            out[2][d] = rain;
            out[3][d] = winds >= FULL_DAY ? blown / winds : Double.NaN;
        }
    }
}
