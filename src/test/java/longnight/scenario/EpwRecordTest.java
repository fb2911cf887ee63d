package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longnight.assumption.Guess;
import longnight.outdoors.Weather;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The record of station 725300 as it is, and spoilt in one place. Line 9 is the first hour of the year; the row of the
 * hour that ends at h on day d of January stands in line 8 + 24 (d - 1) + h.
 */
class EpwRecordTest {
    private static final Path RECORD = Path.of("scenarios/weather/725300-tmy3.epw");
    private static final NightHours EVENING_TO_MORNING = new NightHours(18 * 3600, 12.5 * 3600, 0);

    private List<String> lines = new ArrayList<>();

    @BeforeEach
    void readLines() throws IOException {
        lines = new ArrayList<>(Files.readAllLines(RECORD));
    }

    /** Found with a second program (Python, a midpoint sum over 1500 steps): 7 January 1986, -20.124 °C. */
    @Test
    void coldestNight() {
        EpwRecord.Night night = record().night("coldest", EVENING_TO_MORNING, Place.of(RECORD));
        assertThat(night.name()).isEqualTo("station 725300, night of 01-07 (recorded in 1986)");
        Guess choice = night.guesses().get(0);
        assertThat(choice.word()).isEqualTo("01-07 (recorded in 1986)");
        assertThat(choice.reason())
                .isEqualTo("the lowest mean air temperature from 18:00 to 06:30, -20.1 degC, of 364 complete nights");
    }

    /** Hour 18 ends at 18:00: line 8 + 24 x 6 + 18 = 170 of the file holds at the start of the night of 7 January. */
    @Test
    void hoursEndAtTheirNumber() {
        Weather weather =
                record().night("01-07", EVENING_TO_MORNING, Place.of(RECORD)).weather();
        assertThat(weather.time()).hasSize(14).startsWith(0, 3600).endsWith(12 * 3600, 13 * 3600);
        for (int i = 0; i < 14; i++) {
            String[] cells = lines.get(170 + i - 1).split(",");
            assertThat(weather.airCelsius()[i]).isEqualTo(Double.parseDouble(cells[6]));
            assertThat(weather.relativeHumidity()[i]).isEqualTo(Double.parseDouble(cells[8]) / 100);
            assertThat(weather.pressure()[i]).isEqualTo(Double.parseDouble(cells[9]));
            assertThat(weather.skyLongwave()[i]).isEqualTo(Double.parseDouble(cells[12]));
            assertThat(weather.wind10()[i]).isEqualTo(Double.parseDouble(cells[21]));
            assertThat(weather.cloud()[i]).isEqualTo(Double.parseDouble(cells[22]) / 10);
        }
        assertThat(lines.get(169)).startsWith("1986,1,7,18,");
    }

    /** A night that begins between two hours starts with the hour before; rain counts from the hour before its row. */
    @Test
    void startsBetweenHours() {
        set(171, 33, "1.5");
        Weather weather = record().night("1986-01-07", new NightHours(18.5 * 3600, 4 * 3600, 0), Place.of(RECORD))
                .weather();
        assertThat(weather.time()).startsWith(-1800, 1800).endsWith(12600, 16200);
        assertThat(weather.precipitation()).startsWith(1.5, 0);
    }

    @Test
    void stationAndKind() {
        EpwRecord record = record();
        assertThat(record.altitude()).isEqualTo(201);
        assertThat(record.typicalYear()).isTrue();
    }

    /** January is of 1986, February of 1977: joined as the record orders them, and said. */
    @Test
    void seamBetweenSourceYearsIsSaid() {
        List<Guess> guesses =
                record().night("01-31", EVENING_TO_MORNING, Place.of(RECORD)).guesses();
        assertThat(guesses.get(0).quantity()).isEqualTo("seam");
        assertThat(guesses.get(0).word()).isEqualTo("1986 and 1977");
    }

    @Test
    void theYearIsNotJoinedToItself() {
        assertThat(message("12-31"))
                .isEqualTo("night.yaml:3:4: \"night\" is \"12-31\", 18:00 to 06:30; the record ends before;"
                        + " it runs from 01-01 01:00 to 12-31 24:00 and is not joined to itself");
    }

    @Test
    void nightsThatAreNone() {
        assertThat(message("02-29"))
                .isEqualTo("night.yaml:3:4: \"night\" is \"02-29\", which the record does not have;"
                        + " write month and day as in 01-21");
        assertThat(message("coldst"))
                .isEqualTo("night.yaml:3:4: \"night\" is \"coldst\"; write coldest, or month and day as in 01-21");
        assertThat(message("2001-01-07"))
                .isEqualTo("night.yaml:3:4: \"night\" is \"2001-01-07\";"
                        + " the record has that day of the year 1986; write month and day alone");
    }

    @Test
    void brokenNumber() {
        set(171, 6, "-2o.0");
        assertThat(message("coldest"))
                .isEqualTo("record.epw:171:66: the dry bulb temperature is \"-2o.0\"; a number from -90 to 60");
        assertThat(lines.get(170).indexOf("-2o.0")).isEqualTo(65);
    }

    @Test
    void impossibleValues() {
        set(171, 8, "140");
        assertThat(message("coldest")).endsWith(": the relative humidity is \"140\"; a number from 0 to 110");
        readAgain();
        set(171, 21, "-3");
        assertThat(message("coldest")).endsWith(": the wind speed is \"-3\"; a number from 0 to 75");
        readAgain();
        set(171, 6, "NaN");
        assertThat(message("coldest")).endsWith(": the dry bulb temperature is \"NaN\"; a number from -90 to 60");
    }

    @Test
    void rowCutShort() {
        lines.set(170, "1986,1,7,19,0,?9,-18.9");
        assertThat(message("coldest"))
                .isEqualTo(
                        "record.epw:171:1: a row of 7 fields; a row of an EPW record has 35, the first 24 are needed");
    }

    @Test
    void hourLeftOut() {
        lines.remove(170);
        assertThat(message("coldest"))
                .isEqualTo("record.epw:171:6: a gap in the record: month 1, day 7, hour 20;"
                        + " here belongs month 1, day 7, hour 19");
    }

    @Test
    void hourWrittenTwice() {
        lines.add(171, lines.get(170));
        assertThat(message("coldest"))
                .isEqualTo("record.epw:172:6: a gap in the record: month 1, day 7, hour 19;"
                        + " here belongs month 1, day 7, hour 20");
    }

    @Test
    void endsTooEarlyOrTooLate() {
        lines.remove(lines.size() - 1);
        assertThat(message("coldest"))
                .isEqualTo("record.epw:8767:1: the record ends after 8759 hours; a year has 8760, a leap year 8784");
        readAgain();
        lines.add(lines.get(8));
        assertThat(message("coldest"))
                .isEqualTo("record.epw:8769:6: a gap in the record: month 1, day 1, hour 1;"
                        + " the year ended with the row before");
    }

    @Test
    void leapDayIsWelcome() {
        int march = 8 + 24 * 59;
        assertThat(lines.get(march)).startsWith("1985,3,1,1,");
        List<String> leap = new ArrayList<>();
        for (int hour = 1; hour <= 24; hour++) {
            leap.add(lines.get(march - 24 + hour - 1).replaceFirst("^1977,2,28,", "1977,2,29,"));
        }
        lines.addAll(march, leap);
        assertThat(record().night("02-29", EVENING_TO_MORNING, Place.of(RECORD)).name())
                .isEqualTo("station 725300, night of 02-29 (recorded in 1977)");
    }

    @Test
    void missingValueInTheChosenNight() {
        set(171, 6, "99.9");
        assertThat(message("01-07"))
                .isEqualTo("record.epw:171:66: a gap in the record: no value of the dry bulb temperature in this row;"
                        + " choose a night without gaps");
    }

    /** The coldest of the complete nights; then it is 5 February, -19.168 °C by the second program. */
    @Test
    void coldestPassesOverGaps() {
        set(171, 21, "999");
        EpwRecord.Night night = record().night("coldest", EVENING_TO_MORNING, Place.of(RECORD));
        assertThat(night.name()).contains("02-05 (recorded in 1977)");
        assertThat(night.guesses().get(0).reason()).contains("-19.2 degC, of 363 complete nights");
    }

    @Test
    void whatMayBeMissing() {
        set(171, 8, "999"); // humidity: from the dew point
        set(171, 9, "999999");
        set(171, 12, "9999");
        set(171, 22, "99");
        EpwRecord.Night night = record().night("01-07", EVENING_TO_MORNING, Place.of(RECORD));
        Weather weather = night.weather();
        String[] cells = lines.get(170).split(",");
        double humidity = Double.parseDouble(readFresh().get(170).split(",")[8]) / 100;
        assertThat(weather.airCelsius()[1]).isEqualTo(Double.parseDouble(cells[6]));
        // The record gives the dew point to 0.1 K and the humidity to 1 %.
        assertThat(weather.relativeHumidity()[1]).isCloseTo(humidity, within(0.012));
        assertThat(weather.pressure()[1]).isNaN();
        assertThat(weather.skyLongwave()[1]).isNaN();
        assertThat(weather.cloud()[1]).isZero();
        assertThat(night.guesses().stream().map(Guess::quantity)).contains("cloud cover", "precipitation");
    }

    @Test
    void noRecordAtAll() {
        lines = List.of("a;b", "1;2");
        assertThat(message("coldest")).isEqualTo("record.epw:1:1: the first line is no LOCATION; name an EPW file");
        lines = List.of();
        assertThat(message("coldest")).isEqualTo("record.epw:1:1: the file is empty; name an EPW file");
    }

    private void set(int line, int field, String value) {
        String[] cells = lines.get(line - 1).split(",", -1);
        cells[field] = value;
        lines.set(line - 1, String.join(",", cells));
    }

    private List<String> readFresh() {
        try {
            return Files.readAllLines(RECORD);
        } catch (IOException fault) {
            throw new java.io.UncheckedIOException(fault);
        }
    }

    private void readAgain() {
        lines = new ArrayList<>(readFresh());
    }

    private EpwRecord record() {
        return EpwRecord.read(new TextFile(Path.of("record.epw"), String.join("\n", lines) + "\n"));
    }

    private String message(String night) {
        InputFault fault = catchThrowableOfType(
                InputFault.class,
                () -> record().night(night, EVENING_TO_MORNING, new Place(Path.of("night.yaml"), 3, 4)));
        assertThat(fault).as("nothing was refused").isNotNull();
        return String.valueOf(fault.getMessage());
    }
}
