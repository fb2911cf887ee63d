package longnight.scenario;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.night.NightLog;
import longnight.night.NightPlan;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * A night's log: a CSV file whose rows come at any steps. Times are clock times (18:04, or 18:04:30) that run on past midnight, or
 * dates with clock times (2031-10-25 18:04). The head of the column may name a zone or an offset, as in {@code time [+01:00]}; then
 * times need dates, and where that zone changes its clocks, the hours are counted as they pass.
 */
public final class NightLogs {
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})(?::([0-9]{2}))?");
    private static final Pattern DATED =
            Pattern.compile("([0-9]{4}-[0-9]{2}-[0-9]{2})[T ]([0-9]{2}:[0-9]{2}(?::[0-9]{2})?)");

    /** Longest time without an air temperature that is bridged or held at the ends [s]; as between rows of a weather. */
    private static final double LONGEST_GAP = WeatherSeries.LONGEST_STEP;

    private final NightPlan plan;
    private final NightHours hours;
    private final List<Double> times = new ArrayList<>();
    private @Nullable ZoneId zone;
    private @Nullable ZoneOffset last;
    /** Of the first row: seconds since 1970, and from dusk. */
    private double firstInstant;

    private NightLogs(NightPlan plan) {
        this.plan = plan;
        hours = new NightHours(plan.startOfDay(), plan.duration(), -plan.start());
    }

    /**
     * Reads a log.
     *
     * @param file  the log
     * @param night the night that it belongs to, for its dusk
     * @throws InputFault when anything in it is at fault, or it leaves more than three hours of the night without an air temperature
     */
    public static NightLog read(Path file, Scenario night) {
        return new NightLogs(night.plan()).read(CsvFile.read(TextFile.read(file, Place.of(file))));
    }

    private NightLog read(CsvFile csv) {
        List<Section> rows =
                csv.rows().stream().map(row -> new Section(row, Tables.LOG_ROW)).toList();
        if (rows.size() < 2) {
            throw csv.header().fault("a log with fewer than two rows", "write at least two");
        }
        List<NightLog.Note> notes = new ArrayList<>();
        double[][] values = new double[5][rows.size()];
        String[] keys = {"air", "humidity", "wind", "core", "skin"};
        for (int i = 0; i < rows.size(); i++) {
            Section row = rows.get(i);
            double time = time(row);
            times.add(time);
            for (int k = 0; k < keys.length; k++) {
                values[k][i] = row.quantityOr(keys[k], Double.NaN);
            }
            if (row.has("note")) {
                notes.add(new NightLog.Note(time, row.word("note", NightLog.Feeling.class)));
            }
        }
        requireAir(rows, values[0]);
        return new NightLog(
                times.stream().mapToDouble(Double::doubleValue).toArray(),
                values[0],
                values[1],
                values[2],
                values[3],
                values[4],
                List.copyOf(notes),
                zone == null ? "" : zone.getId());
    }

    // --- Times ---

    private double time(Section row) {
        Value.Text cell = row.written("time");
        Matcher dated = DATED.matcher(cell.text());
        double time = dated.matches() ? dated(cell, dated) : clock(cell);
        if (!times.isEmpty() && time <= times.get(times.size() - 1)) {
            throw cell.place()
                    .fault("the time " + cell.text() + " is not after the row before", "each row has a later time");
        }
        return time;
    }

    private double clock(Value.Text cell) {
        Matcher parts = CLOCK.matcher(cell.text());
        boolean valid = parts.matches()
                && Integer.parseInt(parts.group(1)) < 24
                && Integer.parseInt(parts.group(2)) < 60
                && (parts.group(3) == null || Integer.parseInt(parts.group(3)) < 60);
        if (!valid || !cell.unit().isEmpty() || last != null) {
            throw cell.place()
                    .fault(
                            "\"time\" is \"" + cell.text() + "\"",
                            cell.unit().isEmpty() && last == null
                                    ? "write a clock time as in 18:04, or a date with it as in 2031-01-12 18:04"
                                    : "write a date with the clock time, as in 2031-01-12 18:04");
        }
        double seconds = Integer.parseInt(parts.group(1)) * 3600.0
                + Integer.parseInt(parts.group(2)) * 60.0
                + (parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3)));
        if (times.isEmpty()) {
            return hours.near(seconds);
        }
        double before = times.get(times.size() - 1);
        double step = ((seconds - (plan.startOfDay() + before)) % NightHours.DAY + 2 * NightHours.DAY) % NightHours.DAY;
        return before + step;
    }

    private double dated(Value.Text cell, Matcher parts) {
        LocalDateTime local;
        try {
            local = LocalDateTime.parse(parts.group(1) + "T" + parts.group(2), DateTimeFormatter.ISO_LOCAL_DATE_TIME);
            if (zone == null) {
                zone = cell.unit().isEmpty() ? ZoneOffset.UTC : ZoneId.of(cell.unit());
            }
        } catch (DateTimeException fault) {
            throw cell.place()
                    .fault(
                            "\"time\" is \"" + cell.text() + "\""
                                    + (cell.unit().isEmpty() ? "" : " in zone \"" + cell.unit() + "\""),
                            "write a date and time that exist, as in 2031-01-12 18:04, and a zone as in +01:00 or Area/City");
        }
        double instant = instant(cell, local);
        if (times.isEmpty()) {
            firstInstant = instant - hours.near(local.toLocalTime().toSecondOfDay());
        }
        return instant - firstInstant;
    }

    /** Where a clock shows an hour twice, the first reading that comes after the row before. */
    private double instant(Value.Text cell, LocalDateTime local) {
        List<ZoneOffset> offsets =
                java.util.Objects.requireNonNull(zone).getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            throw cell.place()
                    .fault(
                            "the time " + cell.text() + " never was: clocks in " + zone + " jumped over it",
                            "write the time that the clock showed");
        }
        double before = times.isEmpty() ? Double.NEGATIVE_INFINITY : firstInstant + times.get(times.size() - 1);
        for (ZoneOffset offset : offsets) {
            last = offset;
            if (local.toEpochSecond(offset) > before) {
                break;
            }
        }
        return local.toEpochSecond(java.util.Objects.requireNonNull(last));
    }

    // --- Air ---

    /** The night is replayed in the log's own air, so that must be there all night. */
    private void requireAir(List<Section> rows, double[] air) {
        double before = Double.NaN;
        for (int i = 0; i < air.length; i++) {
            if (Double.isNaN(air[i])) {
                continue;
            }
            double time = times.get(i);
            boolean first = Double.isNaN(before);
            double gap = first ? time : Math.min(time, plan.duration()) - Math.max(before, 0);
            if (gap > LONGEST_GAP) {
                throw rows.get(i)
                        .at("time")
                        .fault(
                                "a gap in the log: " + tenths(gap)
                                        + " h of the night without an air temperature before this row",
                                "at most 3 h are bridged");
            }
            before = time;
        }
        if (Double.isNaN(before)) {
            throw rows.get(0).place().fault("a log without any air temperature", "write a column \"air\"");
        }
        if (plan.duration() - before > LONGEST_GAP) {
            throw rows.get(rows.size() - 1)
                    .at("time")
                    .fault(
                            "the air of the log ends at " + hours.clockAt(before),
                            "it has to reach to within 3 h of the end, " + hours.clockAt(plan.duration()));
        }
    }

    private static double tenths(double seconds) {
        return Math.round(seconds / 360) / 10.0;
    }
}
