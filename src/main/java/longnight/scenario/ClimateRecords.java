package longnight.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import longnight.outdoors.ClimateRecord;
import longnight.outdoors.ClimateRecord.Daily;
import longnight.outdoors.ClimateRecord.Hourly;
import org.jspecify.annotations.Nullable;

/** Station records in open formats: EPW and ISD-Lite hour by hour, GHCN-Daily day by day. The first line tells which. */
public final class ClimateRecords {

    private static final String FORMATS = "name an EPW, ISD-Lite or GHCN-Daily (.dly or CSV) file";

    private ClimateRecords() {}

    /**
     * What the caller says of the station; it goes before what the file says. NaN where nothing is said.
     *
     * @param latitude  degrees, north positive, -90 to 90
     * @param longitude degrees, east positive, -180 to 180
     * @param utcOffset of the station's standard time [h], -12 to 14
     * @param altitude  [m]
     */
    public record Told(double latitude, double longitude, double utcOffset, double altitude) {
        /** Nothing said. */
        public static final Told NOTHING = new Told(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        Told or(Told other) {
            return new Told(
                    or(latitude, other.latitude),
                    or(longitude, other.longitude),
                    or(utcOffset, other.utcOffset),
                    or(altitude, other.altitude));
        }

        private static double or(double value, double otherwise) {
            return Double.isNaN(value) ? otherwise : value;
        }
    }

    /** One file, read. */
    record Part(
            Path file,
            String station,
            Told told,
            boolean typicalYear,
            @Nullable Hourly hourly,
            @Nullable Daily daily) {
        int first() {
            return hourly != null ? hourly.hour()[0] : daily().day()[0] * 24;
        }

        int last() {
            return hourly != null
                    ? hourly.hour()[hourly.hour().length - 1]
                    : daily().day()[daily().day().length - 1] * 24 + 23;
        }

        @Override
        public Daily daily() {
            return daily != null
                    ? daily
                    : new Daily(new int[0], new double[0], new double[0], new double[0], new double[0]);
        }
    }

    /**
     * Reads the files of one station, in any order of time.
     *
     * @param files one or more of one kind
     * @param told  what the caller says of the station
     * @throws InputFault when a file is at fault, files overlap, or kinds are mixed
     */
    public static ClimateRecord read(List<Path> files, Told told) {
        List<Part> parts = new ArrayList<>();
        for (Path file : files) {
            parts.add(part(file, told));
        }
        parts.sort(Comparator.comparingInt(Part::first));
        for (int i = 1; i < parts.size(); i++) {
            Part part = parts.get(i);
            Part before = parts.get(i - 1);
            if ((part.hourly() == null) != (before.hourly() == null) || part.typicalYear() || before.typicalYear()) {
                throw Place.of(part.file())
                        .fault(
                                "this record is of another kind than \"" + before.file() + "\"",
                                "name files of one kind; a typical year stands alone");
            }
            if (part.first() <= before.last()) {
                throw Place.of(part.file())
                        .fault("this record overlaps with \"" + before.file() + "\"", "name each time once");
            }
        }
        Part one = parts.get(0);
        Told known = told.or(one.told());
        @Nullable Hourly hourly = one.hourly() == null ? null : joinedHours(parts);
        return new ClimateRecord(
                one.station(),
                known.latitude(),
                known.longitude(),
                known.utcOffset(),
                known.altitude(),
                one.typicalYear(),
                hourly == null ? joinedDays(parts) : hourly.daily(),
                hourly);
    }

    private static Part part(Path file, Told told) {
        TextFile text = TextFile.read(file, Place.of(file));
        String first = text.text().lines().findFirst().orElse("");
        if (first.startsWith("LOCATION,")) {
            return EpwRecord.read(text).part();
        }
        if (GhcnDaily.isFixed(first) || GhcnDaily.isCsv(first)) {
            return GhcnDaily.read(text, GhcnDaily.isCsv(first));
        }
        if (IsdLite.isOne(first)) {
            return IsdLite.read(text, told.utcOffset());
        }
        throw new Place(file, 1, 1)
                .fault(
                        first.isBlank() ? "the file begins with nothing" : "the first line is of no known record",
                        FORMATS);
    }

    private static Hourly joinedHours(List<Part> parts) {
        if (parts.size() == 1 && parts.get(0).hourly() != null) {
            return parts.get(0).hourly();
        }
        List<Hourly> all =
                parts.stream().map(Part::hourly).flatMap(Stream::ofNullable).toList();
        return new Hourly(
                ints(all, Hourly::hour),
                doubles(all, Hourly::air),
                doubles(all, Hourly::humidity),
                doubles(all, Hourly::wind),
                doubles(all, Hourly::cloud),
                doubles(all, Hourly::precipitation),
                doubles(all, Hourly::pressure),
                doubles(all, Hourly::sky));
    }

    private static Daily joinedDays(List<Part> parts) {
        List<Daily> all = parts.stream().map(Part::daily).toList();
        return new Daily(
                ints(all, Daily::day),
                doubles(all, Daily::minimum),
                doubles(all, Daily::maximum),
                doubles(all, Daily::precipitation),
                doubles(all, Daily::wind));
    }

    private static <T> double[] doubles(List<T> parts, Function<T, double[]> values) {
        return parts.stream().map(values).flatMapToDouble(Arrays::stream).toArray();
    }

    private static <T> int[] ints(List<T> parts, Function<T, int[]> values) {
        return parts.stream().map(values).flatMapToInt(Arrays::stream).toArray();
    }

    /** Refuses a time that does not come after the one before. */
    static void requireLater(int before, int now, Place place) {
        if (now <= before) {
            throw place.fault(
                    now == before ? "this time for the second time" : "an earlier time than in the row before",
                    "each row has a later time");
        }
    }

    /** A whole number that a fixed-width or separated cell holds. */
    static int whole(String cell, Place place, String what, int low, int high) {
        int value;
        try {
            value = Integer.parseInt(cell.strip());
        } catch (NumberFormatException fault) {
            value = Integer.MIN_VALUE;
        }
        if (value < low || value > high) {
            throw place.fault(
                    "the " + what + " is \"" + cell.strip() + "\"", "a whole number from " + low + " to " + high);
        }
        return value;
    }
}
