package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files read back. */
class CheckCommandTest {
    @TempDir
    Path folder;

    static List<Path> shipped() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("scenarios"))) {
            // a weather or a site by itself, and a grid, are no files of their own for this verb
            return files.filter(file -> file.toString().matches(".*\\.yaml|.*wardrobe\\.csv"))
                    .filter(file -> !file.toString().matches(".*(lessons/(frost|open-snow|wind)|grids/.*)\\.yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void every_shipped_file_reads_back(Path file) {
        Session session = Session.of("check", file.toString());
        assertThat(session.code()).as(session.err()).isZero();
        assertThat(session.out()).contains("no fault found", "Guessed", "Caution: A planning aid");
        assertThat(session.out().lines()).allMatch(line -> line.length() <= 114);
    }

    @Test
    void tells_in_words_and_in_both_systems_and_every_guess_with_its_reason() throws Exception {
        Path file = write("p.yaml", "{name: Wren, sex: female, age: 30 years, height: 5.5 ft, mass: 60.0 kg}");
        assertThat(Session.flat(Session.of("check", file.toString()).out()))
                .contains("read as a person")
                .contains("height 5.5 ft = 168 cm = 66 in (height without shoes)")
                .contains("mass 60.0 kg = 132 lb (mass without clothes)")
                .contains("Guessed (2)", "body fat", "Deurenberg", "build middle as none was given");
    }

    @Test
    void a_guess_is_told_in_both_systems() throws Exception {
        Path file = write("w.yaml", "pieces: [{id: coat, kind: parka, mass: 900 g, fill: 100 g/m2}]");
        assertThat(Session.flat(Session.of("check", file.toString()).out()))
                .contains(
                        "mass 900 g = 31.7 oz", "fill 100 g/m2 = 2.95 oz/yd2", "coat: room under it 35 mm = 1.38 in (");
    }

    /** One fault in each piece but the last: all are told, in the order of the file, each as the night would tell it. */
    @Test
    void tells_every_fault_of_a_wardrobe() throws Exception {
        Path file = write("w.yaml", """
                pieces:
                  - {id: a, kind: base-top, mass: 150}
                  - {id: b, kind: base-tip, mass: 150 g, fabrik: wool}
                  - {id: c, kind: parka, mass: 800 g, fill: 3 oz}
                  - {id: d, kind: parka, mass: 800 g}
                  - {id: a, kind: cap, mass: 80 g}
                  - {id: e, kind: cap, mass: 80 g}
                pads:
                  - {id: p, mass: 60 g}
                """);
        Session session = Session.of("check", file.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.out()).isEmpty();
        assertThat(session.err()
                        .lines()
                        .map(line -> line.substring(file.toString().length())))
                .satisfiesExactly(
                        line -> assertThat(line).startsWith(":2:35: \"mass\": \"150\" has no unit"),
                        line -> assertThat(line).startsWith(":3:19: \"kind\" is \"base-tip\""),
                        line -> assertThat(line).startsWith(":3:42: unknown key \"fabrik\""),
                        line -> assertThat(line).startsWith(":4:45: \"fill\" is \"3 oz\""),
                        line -> assertThat(line).startsWith(":5:5: \"d\", a piece of kind parka, without \"fill\""),
                        line -> assertThat(line).startsWith(":6:10: id \"a\" for the second time"),
                        line -> assertThat(line).startsWith(":9:5: a pad without \"area\""));
    }

    @Test
    void tells_every_fault_of_a_spreadsheet() throws Exception {
        Path file = write("w.csv", "id;kind;mass [g]\na;base-top;x\nb;hat;80\nc;cap;80\n");
        Session session = Session.of("check", file.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err()).contains("w.csv:2:12: ", "w.csv:3:3: ").hasLineCount(2);
    }

    /** The first line is the one that the night prints, whatever else there is. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "title: x\nperson: {name: me, sex: femal, age: 30, height: 170 cm, mass: 60 kg}\nplan: {from: 18}\nkit: k.yaml\n",
                "title: x\nperson: nobody.yaml\nplan: {from: 18:00, to: 06:00, posture: sit, sleep: maybe}\n",
                "title: x\nmoon: full\n",
                "title: [\n",
            })
    void begins_with_the_message_of_the_night(String text) throws Exception {
        Path file = write("n.yaml", text);
        Session night = Session.of("night", file.toString(), "--json", "-");
        Session check = Session.of("check", file.toString());
        assertThat(night.code()).isEqualTo(2);
        assertThat(check.code()).isEqualTo(2);
        assertThat(check.out()).isEmpty();
        assertThat(check.err()).startsWith(night.err());
        assertThat(check.err().lines()).doesNotHaveDuplicates();
    }

    @Test
    void a_night_tells_the_faults_of_the_files_it_names() throws Exception {
        write("k.yaml", "{name: k, wardrobe: w.yaml, worn: [a], pads: []}");
        write("w.yaml", "pieces: [{id: a, kind: cap, mass: 80}, {id: b, kind: cap}]");
        write("p.yaml", "{name: me, sex: female, age: 30, height: 170, mass: 60 kg}");
        Path night = write("n.yaml", """
                title: x
                person: p.yaml
                plan: {from: 18:00, to: 06:00, posture: sitting-knees-up, sleep: yes}
                site: {altitude: 300 m, place: open, ground: turf}
                weather: {max: 2 °C, min: -4 °C, sunset: 18:00, sunrise: 06:30, wind: 2 m/s}
                kit: k.yaml
                """);
        Session session = Session.of("check", night.toString());
        assertThat(session.code()).isEqualTo(2);
        assertThat(session.err())
                .contains("p.yaml:1:30: ", "p.yaml:1:42: ", "w.yaml:1:35: ", "w.yaml:1:40: ")
                .hasLineCount(4);
    }

    private Path write(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }
}
