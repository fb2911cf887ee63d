package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import longnight.night.NightLog;
import longnight.night.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs at odd steps, over midnight and over a change of clocks; and every way to spoil one. Dusk is at 17:30, dawn at 07:00. */
class NightLogsTest {
    private static final Scenario NIGHT =
            ScenarioReader.read(Path.of("scenarios/clear-valley.yaml")).scenario();

    @TempDir
    Path folder;

    @Test
    void clock_times_run_on_past_midnight() throws Exception {
        NightLog log = read(
                "time,air [°C],note\n17:00,-9,\n20:00:30,-12,cold\n22:59,-13,\n00:30,-14,\n03:30,-15,\n06:30,-16,");
        assertThat(log.time()).containsExactly(-1800, 9030, 19740, 25200, 36000, 46800);
        assertThat(log.notes()).containsExactly(new NightLog.Note(9030, NightLog.Feeling.COLD));
        assertThat(log.core()).containsOnly(Double.NaN);
    }

    /** In Berlin clocks went back from 03:00 to 02:00 in the night to 26 October 2031: that night is an hour longer. */
    @Test
    void an_hour_that_the_clock_shows_twice_passes_twice() throws Exception {
        NightLog log =
                read("time [Europe/Berlin],air [°C]\n2031-10-25 18:30,-9\n2031-10-25 21:30,-9\n2031-10-26 00:30,-9\n"
                        + "2031-10-26 02:30,-9\n2031-10-26 02:10,-9\n2031-10-26 02:40,-9\n2031-10-26 05:30,-9");
        // 02:30 is the first one; 02:10 comes after it, so it and 02:40 are the second
        assertThat(log.time()).containsExactly(3600, 14400, 25200, 32400, 34800, 36600, 46800);
        assertThat(log.clock()).isEqualTo("Europe/Berlin");
    }

    /** In the night to 30 March 2031 they jump from 02:00 to 03:00. */
    @Test
    void an_hour_that_the_clock_jumps_over_does_not_pass() throws Exception {
        String head = "time [Europe/Berlin],air [°C]\n2031-03-29 18:30,-9\n2031-03-29 21:30,-9\n2031-03-30 00:30,-9\n";
        NightLog log = read(head + "2031-03-30 03:30,-9\n2031-03-30 06:30,-9");
        assertThat(log.time()).containsExactly(3600, 14400, 25200, 32400, 43200);
        fails(head + "2031-03-30 02:30,-9", "log.csv:5:1: the time 2031-03-30 02:30 never was");
    }

    @Test
    void a_stated_offset_knows_no_change_of_clocks() throws Exception {
        NightLog log = read("time [+01:00],air [°C]\n2031-03-29 18:30,-9\n2031-03-29 21:30,-9\n2031-03-30 00:30,-9\n"
                + "2031-03-30 02:30,-9\n2031-03-30 05:30,-9");
        assertThat(log.time()).containsExactly(3600, 14400, 25200, 32400, 43200);
        assertThat(log.clock()).isEqualTo("+01:00");
    }

    @Test
    void spoilt_logs_are_told_with_their_place() throws Exception {
        fails("time,air [°C]\n18:00,-9", "log.csv:1:1: a log with fewer than two rows");
        fails("time,air [°C]\n18:00,-9\n18:00,-9", "log.csv:3:1: the time 18:00 is not after the row before");
        fails("time,air [°C]\n18:00,-9\n25:00,-9", "log.csv:3:1: \"time\" is \"25:00\"");
        fails("time,air\n18:00,-9\n19:00,-9", "log.csv:2:7: ");
        fails("time,air [°C],pulse\n18:00,-9,60\n19:00,-9,60", "log.csv:1:15: unknown key \"pulse\"");
        fails("time,air [°C],core [°C]\n18:00,-9,52\n19:00,-9,", "log.csv:2:10: ");
        fails("time,air [°C],note\n18:00,-9,hungry\n19:00,-9,", "log.csv:2:10: ");
        fails("time,skin [°C]\n18:00,30\n19:00,30", "log.csv:2:1: a log without any air temperature");
        fails("time,air [°C]\n18:00,-9\n21:30,-9\n00:00,-9", "log.csv:3:1: a gap in the log: 3.5 h");
        fails("time,air [°C]\n21:00,-9\n23:00,-9", "log.csv:2:1: a gap in the log: 3.5 h");
        fails("time,air [°C]\n18:00,-9\n20:00,-9\n22:00,-9", "log.csv:4:1: the air of the log ends at 22:00");
        fails(
                "time [Middle/Earth],air [°C]\n2031-01-01 18:00,-9\n2031-01-01 19:00,-9",
                "log.csv:2:1: \"time\" is \"2031-01-01 18:00\" in zone \"Middle/Earth\"");
        fails("time [+01:00],air [°C]\n18:00,-9\n19:00,-9", "log.csv:2:1: \"time\" is \"18:00\"; write a date");
        fails("time,air [°C]\n2031-02-30 18:00,-9\n19:00,-9", "log.csv:2:1: \"time\" is \"2031-02-30 18:00\"");
    }

    private void fails(String text, String message) throws Exception {
        Path file = Files.writeString(folder.resolve("log.csv"), text);
        assertThatThrownBy(() -> NightLogs.read(file, NIGHT))
                .isInstanceOf(InputFault.class)
                .hasMessageStartingWith(folder + "/" + message);
    }

    private NightLog read(String text) throws Exception {
        return NightLogs.read(Files.writeString(folder.resolve("log.csv"), text), NIGHT);
    }
}
