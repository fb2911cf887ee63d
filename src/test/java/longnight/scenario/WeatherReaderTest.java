package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longnight.air.SaturationVapour;
import longnight.night.Caution;
import longnight.outdoors.Weather;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherReaderTest {
    private static final NightHours NIGHT = new NightHours(18 * 3600, 12 * 3600, 0);
    private static final String EXTREMES = """
            max: 6 °C
            min: -8 °C
            sunset: 16:30
            sunrise: 06:30
            wind: 2 m/s
            humidity: 75 %
            cloud: 2 oktas
            """;

    private final Findings findings = new Findings();

    @TempDir
    private Path folder;

    @Test
    void tableRunsThroughMidnight() {
        Weather weather = weather("""
                table:
                  - {time: 17:30, air: 10 °F, wind: 20 mph}
                  - {time: 20:00, air: 9 °F, wind: 20 mph}
                  - {time: 23:00, air: 8 °F, wind: 20 mph}
                  - {time: 24:00, air: 7 °F, wind: 20 mph}
                  - {time: 03:00, air: 7 °F, wind: 20 mph}
                  - {time: 06:00, air: 5 °F, wind: 20 mph}
                """);
        assertThat(weather.time()).containsExactly(-1800, 7200, 18000, 21600, 32400, 43200);
        assertThat(weather.airCelsius()[5]).isCloseTo(-15, within(1e-12));
        assertThat(weather.wind10()[0]).isCloseTo(8.9408, within(1e-12));
        assertThat(weather.cloud()).containsOnly(0);
        assertThat(weather.relativeHumidity()).containsOnly(0.8);
        assertThat(weather.pressure()).containsOnly(Double.NaN);
        assertThat(findings.guesses.stream().map(guess -> guess.quantity()))
                .containsExactly("relative humidity", "cloud cover", "precipitation");
        assertThat(findings.cautions).contains(Caution.WEATHER_GUESSED);
    }

    @Test
    void fileWithUnitsInItsHeader() throws IOException {
        Files.writeString(folder.resolve("night.csv"), """
                time;air [°C];wind [km/h];humidity [%];cloud [tenths];precipitation [mm/h];pressure [hPa]
                18:00;-1;36;90;5;0.4;900
                21:00;-2;36;90;5;0.4;900
                00:00;-3;36;90;5;0;900
                03:00;-4;36;90;5;0;900
                06:00;-5;36;90;5;0;900
                """);
        Weather weather = weather("file: night.csv");
        assertThat(weather.wind10()).containsOnly(10);
        assertThat(weather.cloud()).containsOnly(0.5);
        assertThat(weather.precipitation()).containsExactly(0.4, 0.4, 0, 0, 0);
        assertThat(weather.pressure()).containsOnly(90000);
        assertThat(findings.guesses).isEmpty();
        assertThat(findings.cautions).isEmpty();
    }

    @Test
    void gapInAFile() throws IOException {
        Files.writeString(
                folder.resolve("night.csv"),
                "time,air [°C],wind [m/s]\n18:00,-1,3\n20:00,-2,3\n00:00,-3,3\n06:00,-4,3\n");
        assertThat(message("file: night.csv"))
                .isEqualTo("night.csv:4:1: a gap in the weather: 4.0 h without a row before this one;"
                        + " rows follow each other within 3 h");
    }

    /**
     * Goudriaan and van Laar's curve reaches the minimum at sunrise, half an hour after this night's end; at sunset, an
     * hour and a half before its start, Parton and Logan's half sine stands at 6 - 14 (1 - sin(pi 10.17/13.72)) = 2.169.
     */
    @Test
    void courseFromExtremes() {
        Weather weather = weather(EXTREMES);
        int last = weather.time().length - 1;
        assertThat(weather.time()[last]).isEqualTo(NIGHT.duration());
        double sunset = -8 + 14 * Math.sin(Math.PI * 10.17 / 13.72);
        double end = Math.exp(-14.0 / 4);
        double start = (-8 - sunset * end + (sunset + 8) * Math.exp(-1.5 / 4)) / (1 - end);
        assertThat(weather.airCelsius()[0]).isCloseTo(start, within(1e-9));
        double dawn = (-8 - sunset * end + (sunset + 8) * Math.exp(-13.5 / 4)) / (1 - end);
        assertThat(weather.airCelsius()[last]).isCloseTo(dawn, within(1e-9)).isBetween(-8.0, -7.9);
        for (int i = 1; i <= last; i++) {
            assertThat(weather.airCelsius()[i]).isLessThan(weather.airCelsius()[i - 1]);
        }
    }

    /** The vapour pressure stays as at sunset until the air is saturated. */
    @Test
    void vapourFromExtremes() {
        Weather weather = weather(EXTREMES);
        double sunset = -8 + 14 * Math.sin(Math.PI * 10.17 / 13.72);
        double vapour = 0.75 * SaturationVapour.overWater(273.15 + sunset);
        for (int i = 0; i < weather.time().length; i++) {
            double saturation = SaturationVapour.overWater(273.15 + weather.airCelsius()[i]);
            assertThat(weather.relativeHumidity()[i]).isCloseTo(Math.min(1, vapour / saturation), within(1e-9));
        }
        assertThat(findings.cautions).contains(Caution.WEATHER_GUESSED);
    }

    /** Before sunset and after sunrise the day's half sine holds, joined without a jump. */
    @Test
    void courseWithoutJumps() {
        Weather weather = WeatherReader.read(section(EXTREMES), new NightHours(15 * 3600, 18 * 3600, 0), findings)
                .weather();
        for (int i = 1; i < weather.time().length; i++) {
            double step = weather.airCelsius()[i] - weather.airCelsius()[i - 1];
            // The steepest half hour is the first after sunrise, 14 K x sin(pi 0.5/13.72) = 1.600 K.
            assertThat(Math.abs(step)).isLessThan(1.601);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "min: -8 °C|min: 8 °C|w.yaml:2:6: \"min\" is \"8 °C\"; at most \"max\", 6 °C",
                "min: -8 °C|name: x|w.yaml:1:1: a weather without \"min\"; write \"min\" from -90 °C to 50 °C",
                "wind: 2 m/s|name: x|w.yaml:1:1: a weather without \"wind\"; write \"wind\" from 0 m/s to 60 m/s",
                "sunrise: 06:30|sunrise: 16:30|w.yaml:4:10: a night of 0.0 h from sunset to sunrise;"
                        + " allowed is from 4 h to 20 h",
                "max: 6 °C|record: r.epw|w.yaml:2:1: \"min\" without \"max\"; it goes with max and min only",
                "cloud: 2 oktas|file: n.csv|w.yaml:1:1: \"max\" beside \"file\"; write one of table, file, record, or max with min",
                "cloud: 2 oktas|night: coldest|w.yaml:7:1: \"night\" without \"record\"; it chooses a night of a record",
                "cloud: 2 oktas|cloud: 9 oktas|w.yaml:7:8: \"cloud\" is \"9 oktas\"; allowed is from 0 % to 100 %",
            })
    void faultsOfExtremes(String written, String instead, String message) {
        String text = EXTREMES.replace(written, instead);
        assertThat(text).isNotEqualTo(EXTREMES);
        assertThat(message(text)).isEqualTo(message);
    }

    @Test
    void recordNeedsANight() throws IOException {
        Files.copy(Path.of("scenarios/weather/725300-tmy3.epw"), folder.resolve("r.epw"));
        assertThat(message("record: r.epw"))
                .isEqualTo("w.yaml:1:1: a record without \"night\";"
                        + " write \"night: coldest\", or month and day as in \"night: 01-21\"");
    }

    private Section section(String text) {
        return new Section(YamlFile.read(new TextFile(folder.resolve("w.yaml"), text)), Tables.WEATHER);
    }

    private Weather weather(String text) {
        return WeatherReader.read(section(text), NIGHT, findings).weather();
    }

    private String message(String text) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> weather(text));
        assertThat(fault).as("nothing was refused").isNotNull();
        return String.valueOf(fault.getMessage()).replace(folder + "/", "");
    }
}
