package longnight.study;

import java.util.Arrays;
import longnight.night.NightResult;
import org.jspecify.annotations.Nullable;

/**
 * Means of readings over half hours. Sensors read every minute do not tell more than the body changes; half an hour is about how long
 * it takes to (engineering estimate, no source).
 *
 * @param time    mean time of the readings [s from dusk]
 * @param mean    of the readings
 * @param members indices of each block's readings in the known ones
 * @param known   times of the readings
 */
record HalfHours(double[] time, double[] mean, int[][] members, double[] known) {
    static final double LENGTH = 1800;

    /** Of readings between dusk and dawn. */
    static HalfHours of(double[] time, double[] values, double duration) {
        double @Nullable [][] known = LoggedWeather.known(time, values);
        if (known == null) {
            return new HalfHours(new double[0], new double[0], new int[0][], new double[0]);
        }
        int blocks = (int) Math.ceil(duration / LENGTH);
        int[][] members = new int[blocks][];
        int n = 0;
        for (int b = 0; b < blocks; b++) {
            double from = b * LENGTH;
            int[] in = java.util.stream.IntStream.range(0, known[0].length)
                    .filter(i -> known[0][i] >= from && known[0][i] < from + LENGTH && known[0][i] <= duration)
                    .toArray();
            if (in.length > 0) {
                members[n++] = in;
            }
        }
        members = Arrays.copyOf(members, n);
        return new HalfHours(means(members, known[0]), means(members, known[1]), members, known[0]);
    }

    private static double[] means(int[][] members, double[] values) {
        return Arrays.stream(members)
                .mapToDouble(in ->
                        Arrays.stream(in).mapToDouble(i -> values[i]).average().orElseThrow())
                .toArray();
    }

    int size() {
        return time.length;
    }

    /** The model's means over the very times of the readings; where a run stopped early, its last value is held. */
    double[] of(NightResult run, Sensor sensor) {
        double[] trace = run.trace().time();
        double[] values = sensor.of(run.trace());
        double[] model = Arrays.stream(known)
                .map(t -> trace.length == 0 ? Double.NaN : LoggedWeather.at(trace, values, t))
                .toArray();
        return means(members, model);
    }
}
