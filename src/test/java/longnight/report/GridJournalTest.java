package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import longnight.night.NightResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is left of a run that was broken off at any byte. */
class GridJournalTest {
    private static final List<NightResult> NIGHTS = List.of(
            NightFixture.easy(),
            NightFixture.failing(),
            NightFixture.stopped(),
            NightFixture.wet(),
            NightFixture.unrun());

    @TempDir
    Path folder;

    @Test
    void rows_come_in_any_order_and_stand_in_theirs() throws Exception {
        String whole = whole(0, 1, 2, 3, 4);
        assertThat(whole(4, 2, 0, 3, 1)).isEqualTo(whole);
        List<String> lines = whole.lines().toList();
        assertThat(lines.get(0)).startsWith("kit file,night file,person file,kit,night,person,outcome");
        assertThat(lines.get(1)).startsWith("k0,n,,").contains("holds-easily");
        assertThat(lines.get(5)).startsWith("k4,n,,").contains("outside-the-model");
        assertThat(lines.get(6)).startsWith("# longnight-grid/1 inputs=digest program=1 part=1/1 rows=5/5 check=");
        for (NightResult night : NIGHTS) {
            night.cautions()
                    .forEach(caution -> assertThat(whole)
                            .contains(Wording.fullText(caution)
                                    .lines()
                                    .findFirst()
                                    .orElseThrow()));
        }
        assertThat(folder.resolve("t.csv.journal")).doesNotExist();
    }

    /** Cut at every byte: what is whole stays, the torn end goes, and the table comes out the same. */
    @Test
    void a_torn_end_is_cut_off_and_nothing_else() throws Exception {
        String whole = whole(0, 1, 2, 3, 4);
        Path table = folder.resolve("t.csv");
        Path journal = GridJournal.beside(table);
        try (GridJournal open = open("digest", "1", Part.WHOLE)) {
            add(open, 0, 1, 2);
        }
        byte[] bytes = Files.readAllBytes(journal);
        int[] ends = IntStream.range(0, bytes.length)
                .filter(i -> bytes[i] == '\n')
                .map(i -> i + 1)
                .toArray();
        assertThat(ends).hasSize(4);
        for (int cut = 0; cut <= bytes.length; cut++) {
            Files.write(journal, Arrays.copyOf(bytes, cut));
            int left = cut;
            int rows = (int)
                    Math.max(0, Arrays.stream(ends).filter(end -> end <= left).count() - 1);
            try (GridJournal open = open("digest", "1", Part.WHOLE)) {
                assertThat(open.done()).as("cut at " + cut).isEqualTo(rows);
                assertThat(Files.size(journal)).isEqualTo(ends[rows]);
                if (cut % 97 == 0 || cut == bytes.length) {
                    IntStream.range(0, 5).filter(open::lacks).forEach(row -> add(open, row));
                    open.finish(table);
                    assertThat(table).hasContent(whole);
                }
            }
        }
        // a last line that is whole but wrong is torn as well
        byte[] wrong = bytes.clone();
        wrong[bytes.length - 40] ^= 1;
        Files.write(journal, wrong);
        try (GridJournal open = open("digest", "1", Part.WHOLE)) {
            assertThat(open.done()).isEqualTo(2);
        }
    }

    @Test
    void what_does_not_belong_is_refused_and_left_alone() throws Exception {
        Path journal = GridJournal.beside(folder.resolve("t.csv"));
        try (GridJournal open = open("digest", "1", Part.WHOLE)) {
            add(open, 0, 1);
            refused("another run", "digest", "1", Part.WHOLE);
        }
        byte[] bytes = Files.readAllBytes(journal);
        refused("other inputs", "other", "1", Part.WHOLE);
        refused("other inputs", "digest", "2", Part.WHOLE);
        refused("other inputs", "digest", "1", new Part(1, 2));
        assertThat(Files.readAllBytes(journal)).isEqualTo(bytes);

        byte[] damaged = bytes.clone();
        int second = new String(bytes, StandardCharsets.UTF_8).indexOf('\n') + 10;
        damaged[second] ^= 1;
        Files.write(journal, damaged);
        refused(":2: this line of the journal is damaged", "digest", "1", Part.WHOLE);
        assertThat(Files.readAllBytes(journal)).isEqualTo(damaged);

        Files.writeString(journal, "my notes\n");
        refused("no journal of this verb", "digest", "1", Part.WHOLE);
        assertThat(journal).hasContent("my notes\n");
    }

    @Test
    void parts_are_written_as_they_are_counted() {
        assertThat(Part.parse("2/3")).isEqualTo(new Part(2, 3));
        for (int of = 1; of < 6; of++) {
            int sum = 0;
            for (int number = 1; number <= of; number++) {
                Part part = new Part(number, of);
                assertThat(IntStream.range(0, 7).filter(part::has).count()).isEqualTo(part.share(7));
                sum += part.share(7);
            }
            assertThat(sum).isEqualTo(7);
        }
        for (String bad : List.of("0/3", "4/3", "1", "1/0", "a/b", "1/3/3", "-1/3", "1 / 3", "")) {
            assertThatThrownBy(() -> Part.parse(bad)).as(bad).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private void refused(String why, String digest, String program, Part part) {
        assertThatThrownBy(() -> open(digest, program, part))
                .isInstanceOf(DataFault.class)
                .hasMessageContaining(why)
                .hasMessageStartingWith(folder.toString());
    }

    private String whole(int... order) throws Exception {
        Path table = folder.resolve("t.csv");
        try (GridJournal open = open("digest", "1", Part.WHOLE)) {
            add(open, order);
            open.finish(table);
        }
        return Files.readString(table);
    }

    private GridJournal open(String digest, String program, Part part) throws Exception {
        return GridJournal.open(folder.resolve("t.csv"), digest, program, 5, part);
    }

    private static void add(GridJournal journal, int... rows) {
        for (int row : rows) {
            journal.add(row, List.of("k" + row, "n", ""), NIGHTS.get(row));
        }
    }
}
