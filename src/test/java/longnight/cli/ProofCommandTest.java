package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The verb over folders that nobody has seen before; people and figures are invented. */
class ProofCommandTest {
    private static final String ONE = """
            id: one-hour
            source: "invented for a test"
            title: an hour at 15 °C
            assumed: {wind: [0.3 m/s], note: "all"}
            people:
              - {id: man, sex: male, age: 30 years, height: 1.80 m, mass: 75 kg, body-fat: 15 %}
            runs:
              - id: cool
                person: man
                intrinsic: 0.5 clo
                posture: chair
                wind: 0.1 m/s
                humidity: 50 %
                steps: [{air: 15 °C, for: 60 min}]
            checks:
              - name: mean skin
                reading: mean-skin
                of: [cool]
                at: 60 min
                measured: 30 °C
                gate: 20 to 34 °C
                pool: skin
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        CommandLine command = Main.commandLine();
        command.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        return Main.run(
                command, Stream.concat(Stream.of("proof"), Stream.of(args)).toArray(String[]::new));
    }

    private Path mine(String text) throws Exception {
        Path mine = Files.createDirectories(folder.resolve("mine"));
        Files.writeString(mine.resolve("one.yaml"), text);
        return mine;
    }

    @Test
    @DisplayName("a folder that meets its gates ends with 0 and fills its folder, cautions in every file")
    void fine() throws Exception {
        Path to = folder.resolve("out");
        assertThat(run(mine(ONE).toString(), "--out", to.toString(), "--threads", "1"))
                .isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .contains("only you know")
                .contains("Nothing is missed")
                .contains("Gates met with the set-up as written: 1 of 1")
                .contains("30 of 30 rows")
                .contains("Heat books close")
                .contains("not permission");
        for (String name : List.of("proof-skin.svg", "proof-parity.svg", "proof.json", "proof.txt")) {
            assertThat(Files.readString(to.resolve(name))).as(name).contains("permission");
        }
        assertThat(to.resolve("proof-core.svg")).doesNotExist();
    }

    @Test
    @DisplayName(
            "a gate that every variant misses ends with 1, its miss on top, and the answer is written all the same")
    void missed() throws Exception {
        Path to = folder.resolve("out");
        int code = run(mine(ONE.replace("20 to 34", "10 to 11")).toString(), "--out", to.toString());
        assertThat(code).isEqualTo(1);
        assertThat(out.toString().lines().toList().subList(0, 8))
                .anyMatch(line -> line.contains("one-hour: mean skin"));
        assertThat(to.resolve("proof.json")).isNotEmptyFile();
    }

    @Test
    @DisplayName("a broken file ends with 2 and one line that names the place; nothing is written")
    void broken() throws Exception {
        Path to = folder.resolve("out");
        int code = run(mine(ONE.replace("at: 60 min", "at: 60")).toString(), "--out", to.toString());
        assertThat(code).isEqualTo(2);
        assertThat(err.toString().strip().lines()).hasSize(1);
        assertThat(err.toString()).contains("one.yaml:19:9").contains("60 min");
        assertThat(out.toString()).isEmpty();
        assertThat(to).doesNotExist();
    }

    @Test
    @DisplayName("a folder that is none ends with 2")
    void none() {
        assertThat(run(folder.resolve("nowhere").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("is no folder");
    }

    @Test
    @DisplayName("JSON to the output comes alone")
    void json() throws Exception {
        assertThat(run(mine(ONE).toString(), "--json", "-")).isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/format").asText()).isEqualTo("longnight-proof/1");
        assertThat(json.at("/experiments/0/checks/0/nominal").doubleValue()).isBetween(20.0, 34.0);
        assertThat(json.at("/tables")).hasSize(4);
        assertThat(json.at("/arithmetic")).hasSize(4);
    }

    @Test
    @DisplayName("the help has a worked example")
    void help() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).contains("longnight proof my-experiments --out proof-out");
    }
}
