package longnight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.ClimateRecord;
import longnight.scenario.ClimateRecords;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Winters, gaps and nights of records, and that a shared compilation changes nothing. */
class WintersTest {
    private static final Path INVENTED = Path.of("scenarios/weather/invented-winters.dly");
    private static final Path TYPICAL = Path.of("scenarios/weather/725300-tmy3.epw");

    @TempDir
    Path folder;

    @Test
    void the_shipped_record_is_what_its_generator_writes() throws Exception {
        assertThat(Files.readString(INVENTED)).isEqualTo(InventedWinters.text());
    }

    /**
     * Twenty records written, read and fitted: the 90 % band holds the planted ten-year night 18 times on average; fewer than 14
     * comes by chance once in 400 trials (binomial).
     */
    @Test
    void planted_nights_come_back_from_whole_records() throws Exception {
        double truth = InventedWinters.PLANTED.coldest(10);
        int held = 0;
        for (int seed = 1; seed <= 20; seed++) {
            Path file = Files.writeString(folder.resolve("r" + seed), InventedWinters.text(seed));
            List<Winter> complete =
                    Winter.of(read(file)).stream().filter(Winter::complete).toList();
            ExpectedCold.Line line =
                    ExpectedCold.of(complete, new double[] {10}, 1).lines().get(0);
            held += line.low() <= truth && truth <= line.high() ? 1 : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo(14);
    }

    @Test
    void flagged_values_and_partial_winters_do_not_count() {
        List<Winter> winters = Winter.of(read(INVENTED));
        assertThat(winters).hasSize(40);
        assertThat(winters.stream().filter(winter -> !winter.complete()).map(Winter::year))
                .containsExactly(1997);
        assertThat(winters.stream().mapToDouble(Winter::minimum).min().orElseThrow())
                .isGreaterThan(-40); // the flagged -40.0 of 2004 is no minimum
    }

    /** The hour-by-hour reader and the day-by-day one must find the same winter in the same readings. */
    @Test
    void an_hourly_record_in_utc_is_moved_to_the_stations_clock() throws Exception {
        StringBuilder text = new StringBuilder();
        for (int hour = 0; hour < 24 * 3; hour++) {
            LocalDate day = LocalDate.of(1990, 1, 1).plusDays(hour / 24);
            text.append(String.format(
                    "%tY %<tm %<td %02d %5d %5d -9999 250 40 4 0 -9999%n",
                    day, hour % 24, hour == 30 ? -300 : -50, -400));
        }
        Path file = Files.writeString(folder.resolve("a"), text.toString());
        ClimateRecord record = ClimateRecords.read(List.of(file), new ClimateRecords.Told(50, 10, -8, Double.NaN));
        Winter winter = Winter.of(record).get(0);
        assertThat(winter.minimum()).isEqualTo(-30);
        assertThat(winter.date()).isEqualTo(LocalDate.of(1990, 1, 1)); // 06:00 UTC on the second is 22:00 on the first
        assertThat(winter.complete()).isFalse();
        assertThat(record.hourly().cloud()[0]).isEqualTo(0.5);
    }

    @Test
    void files_of_several_years_are_joined_and_overlaps_refused() throws Exception {
        String row = "%d 01 01 %02d   -50   -80 10200   250    40     4     0 -9999%n";
        Path a = Files.writeString(folder.resolve("a"), String.format(row, 1991, 0) + String.format(row, 1991, 1));
        Path b = Files.writeString(folder.resolve("b"), String.format(row, 1990, 0));
        ClimateRecords.Told told = new ClimateRecords.Told(50, 10, 0, Double.NaN);
        assertThat(ClimateRecords.read(List.of(a, b), told).hourly().hour())
                .hasSize(3)
                .isSorted();
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> ClimateRecords.read(List.of(a, a), told))
                .hasMessageContaining("overlaps");
    }

    /** The night of 7 January as the night file reads it, and as it is cut from the whole record. */
    @Test
    void a_night_cut_from_the_record_gives_the_digits_of_the_night_file() {
        Scenario scenario =
                ScenarioReader.read(Path.of("scenarios/first-night.yaml")).scenario();
        NightResult alone = NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
        List<RecordedNight> nights = new RecordedNights(read(TYPICAL).hourly(), NightTimes.of(scenario.plan())).all();
        assertThat(nights).hasSize(364);
        RecordedNight chosen = nights.stream()
                .filter(night -> night.date().equals(LocalDate.of(2001, 1, 7)))
                .findFirst()
                .orElseThrow();
        assertThat(chosen.meanAir()).isCloseTo(-20.124, within(0.001));
        List<RecordedNight> few = List.of(nights.get(200), chosen, nights.get(20));
        KitNight again = new NightByNight(scenario, NumericalSettings.standard())
                .worstFirst(few, 2).stream()
                        .filter(night -> night.night() == chosen)
                        .findFirst()
                        .orElseThrow();
        assertThat(again.shortfall()).isEqualTo(alone.shortfallHeat());
        assertThat(again.deficit()).isEqualTo(alone.coreHeatDeficitWorst());
        assertThat(again.demand()).isEqualTo(alone.demand());
    }

    @Test
    void southern_winters_lie_in_one_year() {
        ClimateRecord.Daily days = new ClimateRecord.Daily(
                new int[] {day(1990, 1, 5), day(1990, 7, 5), day(1990, 12, 30), day(1991, 1, 2)},
                new double[] {5, -8, 9, 7},
                new double[4],
                new double[4],
                new double[4]);
        ClimateRecord record = new ClimateRecord("x", -45, 170, 12, 300, false, days, null);
        List<Winter> winters = Winter.of(record);
        assertThat(winters).extracting(Winter::year).containsExactly(1990, 1991);
        assertThat(winters.get(0).minimum()).isEqualTo(-8);
        assertThat(winters.get(0).label(true)).isEqualTo("1990");
    }

    private static int day(int year, int month, int day) {
        return (int) LocalDate.of(year, month, day).toEpochDay();
    }

    private static ClimateRecord read(Path file) {
        return ClimateRecords.read(List.of(file), ClimateRecords.Told.NOTHING);
    }
}
