package longnight.study;

import longnight.outdoors.Weather;

/**
 * By how much a forecast for the coming night may be wrong. Each quantity is off by a part that holds all night and a part that begins at
 * nothing at dusk and wanders: an autoregressive course of the first order with {@link #MEMORY}, so that its standard deviation grows
 * toward the one given and neighbouring hours err alike. Both are normal and cut at {@link #CUT} standard deviations. All sizes are
 * engineering estimates, no source; somebody who knows how a forecast does at the place should say so instead.
 *
 * <p>A forecast without rain stays without: whether it will rain at all is a question for a night of its own.
 *
 * @param air           [K]
 * @param wind          share of the wind, but of no less than {@link #LEAST_WIND} [1]
 * @param humidity      relative humidity [1]
 * @param cloud         cover [1]
 * @param precipitation logarithm of the rate [1]
 */
public record ForecastError(Part air, Part wind, Part humidity, Part cloud, Part precipitation) {
    /** After this time a wandering error has forgotten all but a share 1/e of itself [s]; engineering estimate, no source. */
    public static final double MEMORY = 6 * 3600;

    /** Errors beyond so many standard deviations are not drawn. */
    public static final double CUT = 2.5;

    /** In less wind than this the error is that of this wind [m/s]; engineering estimate, no source. */
    public static final double LEAST_WIND = 4;

    /** Between the moments at which the wandering part is drawn, at least [s]. */
    private static final double STRIDE = 2 * 3600;

    private static final int MOST_MOMENTS = 12;
    private static final double LEAST_HUMIDITY = 0.05;
    private static final double MOST_WIND = 75;
    private static final double MOST_RAIN = 200;

    /** The wandering part is this share of the one that holds when only the latter is said. */
    private static final double WANDERING = 2.0 / 3;

    /**
     * How far one quantity is off, standard deviations in its unit.
     *
     * @param holding   all night, 0 and up
     * @param wandering in the end, 0 and up
     */
    public record Part(double holding, double wandering) {

        /** A part of which the holding size is known. */
        public static Part of(double holding) {
            return new Part(holding, WANDERING * holding);
        }

        /** The farthest that it is ever off. */
        public double most() {
            return CUT * (holding + wandering);
        }
    }

    /** For a forecast of the evening before: engineering estimates, no source. */
    public static ForecastError usual() {
        return new ForecastError(
                new Part(1.5, 1), new Part(0.25, 0.15), new Part(0.08, 0.05), new Part(0.2, 0.2), new Part(0.5, 0.3));
    }

    /** The same with another error of the air [K]. */
    public ForecastError withAir(Part other) {
        return new ForecastError(other, wind, humidity, cloud, precipitation);
    }

    /** The same with another error of the wind, as a share of it [1]. */
    public ForecastError withWind(Part other) {
        return new ForecastError(air, other, humidity, cloud, precipitation);
    }

    /** Moments at which wandering parts are drawn [s from dusk], without dusk itself. */
    static double[] moments(double duration) {
        int n = (int) Math.max(1, Math.min(MOST_MOMENTS, Math.ceil(duration / STRIDE - 1e-9)));
        double[] moments = new double[n];
        for (int i = 0; i < n; i++) {
            moments[i] = (i + 1) * duration / n;
        }
        return moments;
    }

    /**
     * The weather that comes.
     *
     * @param forecast with corners at all moments
     * @param moments  see {@link #moments}
     * @param place    0 to 1 each; for each quantity first the part that holds, then its moments
     */
    Weather at(Weather forecast, double[] moments, double[] place) {
        Course course = new Course(forecast.time(), moments, place);
        double[] offAir = course.next(air);
        double[] offWind = course.next(wind);
        double[] offHumidity = course.next(humidity);
        double[] offCloud = course.next(cloud);
        double[] offRain = course.next(precipitation);
        int n = forecast.time().length;
        double[][] out = new double[5][n];
        for (int i = 0; i < n; i++) {
            double blows = forecast.wind10()[i];
            out[0][i] = forecast.airCelsius()[i] + offAir[i];
            out[1][i] = between(LEAST_HUMIDITY, 1, forecast.relativeHumidity()[i] + offHumidity[i]);
            out[2][i] = between(0, MOST_WIND, blows + offWind[i] * Math.max(LEAST_WIND, blows));
            out[3][i] = between(0, 1, forecast.cloud()[i] + offCloud[i]);
            out[4][i] = Math.min(MOST_RAIN, forecast.precipitation()[i] * StrictMath.exp(offRain[i]));
        }
        return new Weather(
                forecast.time(), out[0], out[1], out[2], out[3], out[4], forecast.pressure(), forecast.skyLongwave());
    }

    private static double between(double low, double high, double value) {
        return Math.min(high, Math.max(low, value));
    }

    /** What a place of the forecast belongs to. */
    static Driver driver(int place, int moments) {
        return Driver.values()[Driver.AIR.ordinal() + place / (1 + moments)];
    }

    /** Places that a forecast takes. */
    static int places(int moments) {
        return 5 * (1 + moments);
    }

    /** Reads places one quantity after the other. */
    private static final class Course {
        private final double[] time;
        private final double[] moments;
        private final double[] place;
        private int used;

        Course(double[] time, double[] moments, double[] place) {
            this.time = time;
            this.moments = moments;
            this.place = place;
        }

        double[] next(Part part) {
            double holding = part.holding() * CutNormal.at(place[used++], CUT);
            double kept = StrictMath.exp(-moments[0] / MEMORY);
            double fresh = StrictMath.sqrt(1 - kept * kept);
            double[] wander = new double[moments.length + 1];
            for (int i = 1; i < wander.length; i++) {
                double next = kept * wander[i - 1] + fresh * CutNormal.at(place[used++], CUT);
                wander[i] = between(-CUT, CUT, next);
            }
            double[] off = new double[time.length];
            for (int i = 0; i < off.length; i++) {
                double at = between(0, moments.length, time[i] / moments[0]);
                int below = Math.min(moments.length - 1, (int) at);
                double wandered = wander[below] + (at - below) * (wander[below + 1] - wander[below]);
                off[i] = holding + part.wandering() * wandered;
            }
            return off;
        }
    }
}
