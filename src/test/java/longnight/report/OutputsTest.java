package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputsTest {
    private static final List<String> ALL = Bundle.all(Outputs.NIGHT);

    @TempDir
    Path folder;

    @Test
    void a_new_folder_is_made_with_all_that_belongs_in_it() throws Exception {
        Path out = folder.resolve("a/b");
        Outputs.Written written = Outputs.write(NightFixture.wet(), out);
        assertThat(written.note()).isNull();
        assertThat(names(out)).containsExactlyInAnyOrderElementsOf(ALL);
        assertThat(written.files()).containsExactlyInAnyOrderElementsOf(ALL);
        assertThat(names(folder.resolve("a"))).containsExactly("b");
    }

    @Test
    void results_are_as_readable_by_others_as_any_new_file() throws Exception {
        Path out = folder.resolve("out");
        Outputs.write(NightFixture.easy(), out);
        Path plain = Files.createDirectory(folder.resolve("plain"));
        Path file = Files.writeString(plain.resolve("file"), "");
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(Files.getPosixFilePermissions(out)).isEqualTo(Files.getPosixFilePermissions(plain));
            assertThat(Files.getPosixFilePermissions(out.resolve(HourCsv.FILE)))
                    .isEqualTo(Files.getPosixFilePermissions(file));
        }
    }

    @Test
    void a_second_run_replaces_its_own_files_and_leaves_others_alone() throws Exception {
        Files.writeString(folder.resolve("diary.txt"), "mine");
        Outputs.write(NightFixture.wet(), folder);
        byte[] easy = Files.readAllBytes(folder.resolve(HourCsv.FILE));
        Outputs.write(NightFixture.failing(), folder);
        assertThat(Files.readAllBytes(folder.resolve(HourCsv.FILE))).isNotEqualTo(easy);
        assertThat(folder.resolve("diary.txt")).hasContent("mine");
        // a night in which nothing gets wet has no chart of water, and an earlier one does not stay
        assertThat(names(folder)).hasSize(ALL.size() - 3).noneMatch(name -> name.startsWith(Charts.WATER));
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_refused_and_kept() throws Exception {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        for (Path out : List.of(file, file.resolve("deeper"))) {
            assertThatThrownBy(() -> Outputs.write(NightFixture.easy(), out))
                    .isInstanceOf(UnwritableException.class)
                    .hasMessageContaining(file.toString())
                    .hasMessageContaining("not a folder");
        }
        assertThat(file).hasContent("mine");
        assertThat(names(folder)).containsExactly("out");
    }

    @Test
    void a_folder_in_the_place_of_a_file_is_refused_before_anything_is_replaced() throws Exception {
        Files.writeString(folder.resolve(HourCsv.FILE), "earlier");
        Files.createDirectory(folder.resolve(ResultJson.FILE));
        assertThatThrownBy(() -> Outputs.write(NightFixture.easy(), folder))
                .isInstanceOf(UnwritableException.class)
                .hasMessageContaining(ResultJson.FILE);
        assertThat(folder.resolve(HourCsv.FILE)).hasContent("earlier");
        assertThat(names(folder)).containsExactlyInAnyOrder(HourCsv.FILE, ResultJson.FILE);
    }

    @Test
    void when_a_move_fails_half_way_the_earlier_files_come_back() throws Exception {
        Path drafts = Files.createDirectory(folder.resolve("drafts"));
        Path there = Files.createDirectory(folder.resolve("there"));
        for (String name : ALL) {
            Files.writeString(there.resolve(name), "earlier");
        }
        Files.writeString(there.resolve("diary.txt"), "mine");
        for (String name : ALL.subList(0, 4)) { // the fifth draft is missing: its move fails
            Files.writeString(drafts.resolve(name), "new");
        }
        assertThatThrownBy(() -> Outputs.swap(ALL, java.util.Set.copyOf(ALL), drafts, there))
                .isInstanceOf(java.io.IOException.class);
        for (String name : ALL) {
            assertThat(there.resolve(name)).hasContent("earlier");
        }
        assertThat(names(there)).hasSize(ALL.size() + 1);
    }

    @Test
    void an_old_picture_does_not_stay_beside_new_figures() throws Exception {
        Path drafts = Files.createDirectory(folder.resolve("drafts"));
        Path there = Files.createDirectory(folder.resolve("there"));
        Files.writeString(there.resolve(Charts.DEFICIT + ".png"), "of another night");
        Files.writeString(drafts.resolve(HourCsv.FILE), "new");
        Outputs.swap(ALL, java.util.Set.of(HourCsv.FILE), drafts, there);
        assertThat(names(there)).containsExactly(HourCsv.FILE);
    }

    @Test
    void a_machine_that_cannot_draw_still_gets_every_figure() throws Exception {
        Bundle bundle = Outputs.of(NightFixture.easy()).picture(Charts.HEAT, () -> {
            throw new InternalError("Fontconfig head is null");
        });
        Outputs.Written written = Outputs.write(bundle, folder);
        assertThat(written.note()).contains("Fontconfig head is null");
        assertThat(names(folder)).containsExactlyInAnyOrder(HourCsv.FILE, ResultJson.FILE, Notes.FILE);
        assertThat(Files.readString(folder.resolve(Notes.FILE))).contains("Fontconfig head is null");
    }

    @Test
    void a_file_that_the_verb_does_not_own_is_refused() {
        assertThatThrownBy(() -> new Bundle(List.of("a.csv")).file("b.csv", ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("b.csv");
    }

    @Test
    void a_single_file_is_whole_or_refused() throws Exception {
        Path file = folder.resolve("night.json");
        Outputs.write("{}", file);
        Outputs.write("{ }", file);
        assertThat(file).hasContent("{ }");
        assertThatThrownBy(() -> Outputs.write("{}", folder)).isInstanceOf(UnwritableException.class);
        assertThatThrownBy(() -> Outputs.write("{}", folder.resolve("no/such.json")))
                .isInstanceOf(UnwritableException.class);
        assertThat(names(folder)).containsExactly("night.json");
    }

    private static List<String> names(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
