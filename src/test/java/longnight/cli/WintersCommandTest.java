package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longnight.night.Caution;
import longnight.report.Prose;
import longnight.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb on shipped and on spoilt records. */
class WintersCommandTest {
    private static final String INVENTED = "scenarios/weather/invented-winters.dly";
    private static final String TYPICAL = "scenarios/weather/725300-tmy3.epw";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void the_example_of_the_help_runs() throws Exception {
        Path there = folder.resolve("hilltop");
        assertThat(run(
                        INVENTED,
                        "--latitude",
                        "61",
                        "--longitude",
                        "10",
                        "--utc-offset",
                        "1",
                        "--night",
                        "scenarios/first-night.yaml",
                        "--out",
                        there.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("40 winters in the record, 39 of them complete")
                .contains("1997/98 (66 %)")
                .contains("seed 1")
                .contains("once in 10 years")
                .contains("no nights to run")
                .doesNotContain("°");
        assertThat(BrowserPage.check(there)).contains("1997/98", "seed 1", "lowest air [°C]");
        for (String kind : List.of("clear-calm", "windy", "wet")) {
            Path file = there.resolve(kind + ".yaml");
            assertThat(ScenarioReader.read(file).scenario().limits()).isEmpty();
        }
        String help = help();
        assertThat(help).contains("Example", "longnight winters scenarios/weather/invented-winters.dly", "windy.yaml");
    }

    /** The same in both systems, where they differ; JSON does not. */
    @Test
    void both_unit_systems_say_the_same() throws Exception {
        List<String> lows = new ArrayList<>();
        for (String units : List.of("metric", "imperial")) {
            Path there = folder.resolve(units);
            out.getBuffer().setLength(0);
            assertThat(run(INVENTED, "--latest", "40", "--units", units, "--out", there.toString()))
                    .as(err.toString())
                    .isZero();
            assertThat(BrowserPage.check(there))
                    .contains(units.equals("metric") ? "lowest air [°C]" : "lowest air [°F]");
            if (units.equals("imperial")) {
                assertThat(out.toString()).contains(" F ", " mph", " in;").doesNotContain(" C ", " m/s", " mm", " kJ");
            }
            lows.addAll(Files.readAllLines(there.resolve("winters.csv")).subList(0, 2));
        }
        assertThat(lows.get(0)).contains("lowest air [degC]");
        assertThat(lows.get(2)).contains("lowest air [degF]");
        double celsius = Double.parseDouble(lows.get(1).split(",", -1)[1]);
        assertThat(Double.parseDouble(lows.get(3).split(",", -1)[1])).isCloseTo(1.8 * celsius + 32, within(1e-4));
        assertThat(folder.resolve("imperial/winters.json"))
                .hasSameBinaryContentAs(folder.resolve("metric/winters.json"));
        assertThat(run(INVENTED, "--units", "nautical")).isEqualTo(2);
    }

    @Test
    void json_to_the_output_comes_alone() throws Exception {
        assertThat(run(INVENTED, "--json", "-", "--latest", "40")).isZero();
        JsonNode expected = new ObjectMapper().readTree(out.toString()).at("/expected");
        assertThat(expected.at("/wintersCounted").asInt()).isEqualTo(39);
        assertThat(expected.at("/lines/2/years").asDouble()).isEqualTo(10);
        assertThat(Files.list(folder)).isEmpty();
    }

    @Test
    void a_typical_year_tells_no_return_period_and_says_why() throws Exception {
        assertThat(run(TYPICAL, "--out", folder.resolve("o").toString())).isZero();
        assertThat(out.toString()).contains("typical year", "No N-year night", "NOT the coldest to expect");
        assertThat(folder.resolve("o/coldest-to-expect.png")).doesNotExist();
        JsonNode json =
                new ObjectMapper().readTree(folder.resolve("o/winters.json").toFile());
        assertThat(json.at("/expected").isNull()).isTrue();
        assertThat(json.at("/cautions").findValuesAsText("code")).contains("TYPICAL_YEAR");
    }

    /** A week of the typical year keeps this quick; threads must not matter, and the coldest night must lead the rank. */
    @Test
    void a_kit_in_every_night_is_ranked_alike_by_one_thread_and_by_three() throws Exception {
        List<String> lines = new ArrayList<>(Files.readAllLines(Path.of(TYPICAL)));
        for (int i = 8; i < lines.size(); i++) {
            if (i < 8 + 24 * 4 || i > 8 + 24 * 8) {
                String[] cells = lines.get(i).split(",", -1);
                cells[6] = "99.9"; // dry bulb missing
                lines.set(i, String.join(",", cells));
            }
        }
        Path record = Files.write(folder.resolve("week.epw"), lines);
        String[] texts = new String[2];
        for (int k = 0; k < 2; k++) {
            out.getBuffer().setLength(0);
            assertThat(run(
                            record.toString(),
                            "--night",
                            "scenarios/first-night.yaml",
                            "--json",
                            "-",
                            "--threads",
                            k == 0 ? "1" : "3"))
                    .isZero();
            texts[k] = out.toString();
        }
        assertThat(texts[1]).isEqualTo(texts[0]);
        JsonNode json = new ObjectMapper().readTree(texts[0]);
        assertThat(json.at("/nightsWorstFirst")).hasSize(3);
        assertThat(json.at("/nightsWorstFirst/0/evening").asText()).isEqualTo("01-06");
        assertThat(json.at("/nightsLeftOut").asInt()).isEqualTo(361);
    }

    @Test
    void every_file_carries_every_caution() throws Exception {
        assertThat(run(TYPICAL, "--out", folder.resolve("a").toString())).isZero();
        assertThat(run(INVENTED, "--out", folder.resolve("b").toString())).isZero();
        int seen = 0;
        for (String each : List.of("a", "b")) {
            List<Caution> cautions = each.equals("a")
                    ? List.of(Caution.PLANNING_AID, Caution.WEATHER_GUESSED, Caution.TYPICAL_YEAR)
                    : List.of(Caution.PLANNING_AID, Caution.WEATHER_GUESSED);
            try (Stream<Path> files = Files.list(folder.resolve(each))) {
                for (Path file :
                        files.filter(f -> !f.toString().endsWith(".png")).toList()) {
                    String text = flat(Files.readString(file, StandardCharsets.UTF_8)
                            .replaceAll("<[^>]*>", " ")
                            .replace("&quot;", "\"")
                            .replace("&apos;", "'"));
                    for (Caution caution : cautions) {
                        assertThat(text)
                                .as(file.toString())
                                .containsAnyOf(
                                        flat(Prose.text("caution." + caution + ".short")),
                                        flat(full(caution)),
                                        flat(full(caution).replace("\"", "\\\"").replace("\n", "\\n")));
                    }
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(11);
    }

    private static String full(Caution caution) {
        return caution == Caution.PLANNING_AID
                ? Prose.text("caution.PLANNING_AID.full")
                : Prose.text("caution." + caution + ".short");
    }

    private static String flat(String text) {
        return text.replaceAll("[\\s#]+", " ");
    }

    @Test
    void impossible_wishes_are_bad_input_and_nothing_is_written() throws Exception {
        String at = folder.resolve("o").toString();
        assertThat(run(INVENTED, "--years", "1", "--out", at)).isEqualTo(2);
        assertThat(run(INVENTED, "--threads", "0", "--out", at)).isEqualTo(2);
        assertThat(run(INVENTED, "--latitude", "91", "--out", at)).isEqualTo(2);
        assertThat(run(INVENTED, "--kit", "scenarios/kits/heavy.yaml", "--out", at))
                .isEqualTo(2);
        assertThat(run(INVENTED, "--night", "scenarios/laboratory.yaml", "--out", at))
                .isEqualTo(2);
        assertThat(err.toString()).contains("--years 1: from 1.1 to 1000", "a laboratory has no weather");
        assertThat(out.toString()).isEmpty();
        assertThat(Files.list(folder)).isEmpty();
    }

    @Test
    void a_spoilt_record_is_told_with_its_place() throws Exception {
        List<String> lines = Files.readAllLines(Path.of(INVENTED));
        String second = lines.get(1);
        bad("odd.dly", second.substring(0, 21) + " -7x7" + second.substring(26), "odd.dly:1:22: the TMIN is \"-7x7\"");
        bad("hot.dly", second.substring(0, 29) + "  999" + second.substring(34), "hot.dly:1:30: the TMIN is \"999\"");
        bad("month.dly", second.substring(0, 15) + "13" + second.substring(17), "month.dly:1:16: the month is \"13\"");
        bad("two.dly", second + "\nXY" + second.substring(2), "two.dly:2:1: station \"XY000INVENT\"");
        bad("twice.dly", second + "\n" + second, "twice.dly:2:22: a second TMIN of 1980-10-01");
        bad(
                "feb.dly",
                String.format(Locale.ROOT, "XX000INVENT198102TMIN%s", "  -10   ".repeat(31)),
                "feb.dly:1:246: a value for a day that no calendar has: 1981-2-29");
        bad("x.csv", "XX000INVENT,19811301,TMIN,-10,,,,", "x.csv:1:17: the month is \"13\"");
        bad("y.csv", "XX000INVENT,19811201,TMIN,cold,,,,", "y.csv:1:27: the TMIN is \"cold\"");
        bad("what.txt", "hello", "what.txt:1:1: the first line is of no known record");
        bad("hours", "1990 01 01 00 -50 -80 10200 250 40 4 0 -9999", "hours: the times of an ISD-Lite record are UTC");
    }

    @Test
    void a_spoilt_hourly_record_is_told_with_its_place() throws Exception {
        String row = "1990 01 01 00   -50   -80 10200   250    40     4     0 -9999";
        bad("a", row + "\n" + row, "a:2:1: this time for the second time", "--utc-offset", "1");
        bad("b", row.replace("-50", "-5o") + "\n", "b:1:1: the first line is of no known record", "--utc-offset", "1");
        bad("c", row + "\n" + row.replace("-80", "-8x"), "c:2:23: the dew point is \"-8x\"", "--utc-offset", "1");
        bad("d", row + "\n1990 02 30 00 -50 -80 1 250 40 4", "d:2:23: the pressure is \"1\"", "--utc-offset", "1");
        bad(
                "e",
                row + "\n1990 02 30 00 -50 -80 9999 250 40 4",
                "e:2:1: a day that no calendar has",
                "--utc-offset",
                "1");
    }

    private void bad(String name, String text, String message, String... options) throws Exception {
        Path file = Files.writeString(folder.resolve(name), text);
        err.getBuffer().setLength(0);
        String[] args = Stream.concat(
                        Stream.of(file.toString(), "--out", folder.resolve("o").toString()), Stream.of(options))
                .toArray(String[]::new);
        assertThat(run(args)).as(err.toString()).isEqualTo(2);
        assertThat(err.toString()).startsWith(folder.resolve("") + "/" + message);
        assertThat(out.toString()).isEmpty();
        Files.delete(file);
        assertThat(Files.list(folder)).isEmpty();
    }

    private String help() {
        out.getBuffer().setLength(0);
        assertThat(run("--help")).isZero();
        return out.toString();
    }

    private int run(String... args) {
        String[] all = Stream.concat(Stream.of("winters"), Stream.of(args)).toArray(String[]::new);
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), all);
    }
}
