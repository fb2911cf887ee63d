package longnight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a grid to its table: the same bytes however it was worked out, and every fault before the first night is run. */
class GridCommandTest {
    private static final String GRID = """
            kits: [kits/light.yaml, kits/heavy.yaml]
            nights: [cool-clearing.yaml, cold.yaml]
            people:
              - people/student.yaml
              - people/veteran.yaml
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void copyScenarios() throws IOException {
        for (String name : List.of(
                "wardrobe.yaml",
                "cool-clearing.yaml",
                "arrival-dry.yaml",
                "wet-ridge-rain.yaml",
                "kits/light.yaml",
                "kits/heavy.yaml",
                "people/student.yaml",
                "people/veteran.yaml",
                "people/instructor.yaml",
                "kits/rain.yaml")) {
            Path there = folder.resolve(name);
            Files.createDirectories(there.getParent());
            Files.copy(Path.of("scenarios", name), there);
        }
        // colder than the model was made for: a row, no fault
        String cool = Files.readString(folder.resolve("cool-clearing.yaml"));
        Files.writeString(folder.resolve("cold.yaml"), cool.replaceAll("air: +[0-9.]+", "air: -45"));
        Files.writeString(folder.resolve("grid.yaml"), GRID);
    }

    @Test
    void threads_and_parts_do_not_show() throws Exception {
        assertThat(run("grid", file("grid.yaml"), "--out", file("one.csv"), "--threads", "1"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("one.csv: 8 rows", "Caution: A planning aid");
        assertThat(err.toString()).isEmpty(); // no terminal, no progress
        assertThat(run("grid", file("grid.yaml"), "--out", file("three.csv"), "--threads", "3"))
                .isZero();
        assertThat(run("merge", file("one.csv"), "--out", file("again.csv"), "--index", file("index.html")))
                .as(err.toString())
                .isZero();
        String index = Files.readString(folder.resolve("index.html"));
        assertThat(index)
                .contains(
                        "8 nights: ",
                        "outside the model",
                        "kits/heavy.yaml",
                        "lowest core [°C]",
                        "is a permission to go")
                .doesNotContain("<script", "http:", "https:", "Guessed: nothing");
        Files.delete(folder.resolve("again.csv"));
        Files.delete(folder.resolve("index.html"));
        for (int i = 1; i <= 3; i++) {
            assertThat(run("grid", file("grid.yaml"), "--out", file(i + ".csv"), "--part", i + "/3"))
                    .isZero();
        }
        assertThat(run("merge", file("3.csv"), file("1.csv"), file("2.csv"), "--out", file("merged.csv")))
                .as(err.toString())
                .isZero();
        Path one = folder.resolve("one.csv");
        assertThat(folder.resolve("three.csv")).hasSameBinaryContentAs(one);
        assertThat(folder.resolve("merged.csv")).hasSameBinaryContentAs(one);
        List<String> lines = Files.readAllLines(one);
        assertThat(lines.stream()
                        .skip(1)
                        .limit(8)
                        .map(line -> line.split(",")[0] + " " + line.split(",")[1] + " " + line.split(",")[2]))
                .containsExactly(
                        "kits/light.yaml cool-clearing.yaml people/student.yaml",
                        "kits/light.yaml cool-clearing.yaml people/veteran.yaml",
                        "kits/light.yaml cold.yaml people/student.yaml",
                        "kits/light.yaml cold.yaml people/veteran.yaml",
                        "kits/heavy.yaml cool-clearing.yaml people/student.yaml",
                        "kits/heavy.yaml cool-clearing.yaml people/veteran.yaml",
                        "kits/heavy.yaml cold.yaml people/student.yaml",
                        "kits/heavy.yaml cold.yaml people/veteran.yaml");
        assertThat(lines.get(3)).contains("outside-the-model", "coldest air of the night is -");
        assertThat(lines.get(1)).doesNotContain("outside-the-model");
        assertThat(Files.readString(one)).contains("# This is a tool for planning.");
        assertThat(names()).noneMatch(name -> name.endsWith(".journal") || name.contains("draft"));
    }

    @Test
    void the_index_never_takes_the_place_of_the_table() throws Exception {
        refused(
                "that is the table itself",
                "grid",
                file("grid.yaml"),
                "--out",
                file("t.csv"),
                "--index",
                file("./t.csv"));
        assertThat(folder.resolve("t.csv")).doesNotExist();
    }

    @Test
    void a_journal_of_other_inputs_is_refused() throws Exception {
        assertThat(run("grid", file("grid.yaml"), "--out", file("t.csv"))).isZero();
        Path journal = folder.resolve("t.csv.journal");
        Files.writeString(journal, "longnight-grid-journal/1 inputs=x program=y part=1/1 rows=8 columns=z\t0\n");
        refused("t.csv.journal: the journal of a broken-off run", "grid", file("grid.yaml"), "--out", file("t.csv"));
        assertThat(journal).exists();
    }

    /** The kit in the last place spoils the grid at once, and the message says who met whom. */
    @Test
    void every_combination_is_looked_at_first() throws Exception {
        grid("kits: [kits/rain.yaml, kits/light.yaml]\nnights: [cool-clearing.yaml, wet-ridge-rain.yaml]\n");
        refused(
                "wet-ridge-rain.yaml:18:19: \"batt-overtrousers\" is no piece of the kit",
                "grid",
                file("grid.yaml"),
                "--out",
                file("t.csv"));
        assertThat(err.toString())
                .contains("met with kit \"kits/light.yaml\" on night \"wet-ridge-rain.yaml\"")
                .hasLineCount(1);
    }

    @Test
    void faults_are_told_with_their_place_and_nothing_is_written() throws Exception {
        bad("kits: []\nnights: [a.yaml]\n", "grid.yaml:1:7: a grid without kits; name at least one file");
        bad("kits: [kits/light.yaml]\n", "grid.yaml:1:1: a grid without \"nights\"");
        bad(
                "kits: [kits/lihgt.yaml]\nnights: [cold.yaml]\n",
                "grid.yaml:1:8: there is no file",
                "did you mean \"light.yaml\"?");
        bad(
                "kits: [kits/light.yaml]\nnights: [cold.yaml, cold.yaml]\n",
                "grid.yaml:2:21: \"cold.yaml\" for the second time; name it once; it stands in line 2 already");
        bad(
                "kits: [kits/light.yaml]\nnihgts: [cold.yaml]\n",
                "grid.yaml:2:1: unknown key \"nihgts\"; a grid has the keys kits, nights, people; did you mean \"nights\"?");
        bad(
                "kits: [kits/light.yaml]\nnights: [cold.yaml]\npeople: [kits/heavy.yaml]\n",
                "kits/heavy.yaml:",
                "unknown key");
        bad("kits: kits/light.yaml\nnights: [cold.yaml]\n", "grid.yaml:1:7: the text");
        bad("- kits\n", "grid.yaml:1:1: a list stands where a grid is described");
        Files.writeString(folder.resolve("grid.yaml"), GRID);
        refused("--part 4/3: write I/N", "grid", file("grid.yaml"), "--part", "4/3", "--out", file("t.csv"));
        refused("--threads 0", "grid", file("grid.yaml"), "--threads", "0", "--out", file("t.csv"));
        refused("does not exist", "grid", file("grid.yaml"), "--out", file("no/t.csv"));
        refused("is a folder", "grid", file("grid.yaml"), "--out", file("kits"));
        assertThat(names()).doesNotContain("t.csv", "t.csv.journal");
        assertThat(Path.of("grid.csv")).doesNotExist();
    }

    @Test
    void parts_that_do_not_belong_together_are_not_joined() throws Exception {
        grid("kits: [kits/light.yaml, kits/heavy.yaml]\nnights: [cold.yaml]\n"); // nothing to run: quick
        for (int i = 1; i <= 2; i++) {
            assertThat(run("grid", file("grid.yaml"), "--out", file(i + ".csv"), "--part", i + "/2"))
                    .isZero();
        }
        assertThat(run("grid", file("grid.yaml"), "--out", file("third.csv"), "--part", "1/3"))
                .isZero();
        grid("kits: [kits/heavy.yaml, kits/light.yaml]\nnights: [cold.yaml]\n");
        assertThat(run("grid", file("grid.yaml"), "--out", file("other.csv"), "--part", "2/2"))
                .isZero();
        String good = Files.readString(folder.resolve("2.csv"));
        write("changed.csv", good.replace("outside-the-model", "holds-easily"));
        write("cut.csv", good.substring(0, good.indexOf("# longnight-grid")));
        write("short.csv", good.replaceFirst("kits/heavy.*\n", ""));
        write("program.csv", good.replace("program=", "program=older-"));
        write("stamp.csv", good.replace("cautions=", "cautions=none-such,"));
        write("text.csv", "a,b\n1,2\n");
        Set<String> before = names();
        merge("Part 2/2 is missing", "1.csv");
        merge("is part 1/2, and so is", "1.csv", "1.csv");
        merge("is part 1/3, which does not go with part 1/2", "1.csv", "third.csv");
        merge("other.csv: is of another grid than", "1.csv", "other.csv");
        merge("changed.csv: is not as longnight grid wrote it", "1.csv", "changed.csv");
        merge("short.csv: is not as longnight grid wrote it", "1.csv", "short.csv");
        merge("stamp.csv: is not as longnight grid wrote it", "1.csv", "stamp.csv");
        merge("cut.csv:3: ends before it says", "1.csv", "cut.csv");
        merge("program.csv: was worked out by another longnight", "1.csv", "program.csv");
        merge("text.csv:1: does not begin as a table", "1.csv", "text.csv");
        merge("none.csv: there is no such file", "1.csv", "none.csv");
        assertThat(names()).isEqualTo(before);
        assertThat(run("merge", file("1.csv"), file("2.csv"), "--out", file("m.csv")))
                .isZero();
    }

    @Test
    void help_has_examples() {
        assertThat(run("grid", "--help")).isZero();
        assertThat(run("merge", "--help")).isZero();
        assertThat(out.toString()).contains("--part 1/2", "longnight merge a.csv b.csv", "goes on", "not a permission");
    }

    private void bad(String grid, String... messages) throws IOException {
        grid(grid);
        Set<String> before = names();
        for (String message : messages) {
            refused(message, "grid", file("grid.yaml"), "--out", file("t.csv"));
        }
        assertThat(err.toString()).startsWith(folder.toString()).hasLineCount(1);
        assertThat(names()).isEqualTo(before);
    }

    private void merge(String why, String... parts) {
        String[] args = Stream.concat(
                        Stream.of("merge", "--out", file("m.csv")),
                        Stream.of(parts).map(this::file))
                .toArray(String[]::new);
        refused(why, args);
    }

    private void refused(String why, String... args) {
        err.getBuffer().setLength(0);
        out.getBuffer().setLength(0);
        assertThat(run(args)).as(why + ": " + err).isEqualTo(2);
        assertThat(err.toString()).contains(why).doesNotContain("\tat ");
        assertThat(out.toString()).isEmpty();
    }

    private void grid(String text) throws IOException {
        write("grid.yaml", text);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private int run(String... args) {
        return Main.run(Main.commandLine().setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)), args);
    }

    private Set<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
