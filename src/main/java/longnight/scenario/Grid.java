package longnight.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * A file of kits, nights and people, each to be met with each. Every combination is looked at before any is run, so that a fault
 * in the last is found at once; what was read stays read, and a row's question is made anew whenever it is asked for. Threads may
 * share it.
 */
public final class Grid {
    /** More rows than this are a slip of the pen. */
    private static final long MOST = 1_000_000;

    /** A file of the grid: where it lies, and how the grid names it. */
    private record Named(Path path, String name) {}

    private final Shelf shelf = new Shelf();
    private final List<Named> kits;
    private final List<Named> nights;
    /** Empty where each night keeps its own. */
    private final List<Named> people;

    private final String digest;

    private Grid(Path file) {
        Section section = new Section(shelf.yaml(file, Place.of(file)), Tables.GRID);
        kits = files(section, "kits");
        nights = files(section, "nights");
        people = section.has("people") ? files(section, "people") : List.of();
        if ((long) kits.size() * nights.size() * Math.max(1, people.size()) > MOST) {
            throw section.place()
                    .fault(
                            "a grid of " + kits.size() + " kits, " + nights.size() + " nights and " + people.size()
                                    + " people",
                            "up to " + MOST + " rows; write less, or several grids");
        }
        for (int row = 0; row < rows(); row++) {
            check(row);
        }
        digest = shelf.digest(Place.of(file).file().toAbsolutePath().resolveSibling(""));
    }

    /**
     * Reads a grid and everything it names.
     *
     * @param file the grid
     * @throws InputFault when anything in any combination is at fault; what lies outside the model's range is no fault
     */
    public static Grid read(Path file) {
        return new Grid(file);
    }

    /** How many combinations there are. */
    public int rows() {
        return kits.size() * nights.size() * Math.max(1, people.size());
    }

    /** One digest of everything that was read: the same when, and only when, the same questions are asked. */
    public String digest() {
        return digest;
    }

    /**
     * How the grid names the files of a row: kit, night, person; the last is empty for the night's own.
     *
     * @param row from 0; kit by kit, for each night by night, for each person by person
     */
    public List<String> files(int row) {
        Named person = person(row);
        return List.of(kit(row).name(), night(row).name(), person == null ? "" : person.name());
    }

    /** The question of a row. */
    public Scenario question(int row) {
        Named person = person(row);
        return ScenarioReader.read(
                        night(row).path(), new Instead(person == null ? null : person.path(), kit(row).path()), shelf)
                .scenario();
    }

    private Named kit(int row) {
        return kits.get(row / Math.max(1, people.size()) / nights.size());
    }

    private Named night(int row) {
        return nights.get(row / Math.max(1, people.size()) % nights.size());
    }

    private @Nullable Named person(int row) {
        return people.isEmpty() ? null : people.get(row % people.size());
    }

    private List<Named> files(Section section, String key) {
        List<Named> files = new ArrayList<>();
        Map<Path, Place> seen = new HashMap<>();
        for (Value.Text name : section.names(key)) {
            shelf.yaml(name); // a missing file is told where the grid names it
            Path path = TextFile.path(name);
            @Nullable Place first = seen.putIfAbsent(path.toAbsolutePath().normalize(), name.place());
            if (first != null) {
                throw name.place()
                        .fault(
                                "\"" + name.text() + "\" for the second time",
                                "name it once; it stands in line " + first.line() + " already");
            }
            files.add(new Named(path, name.text()));
        }
        if (files.isEmpty()) {
            throw section.at(key).fault("a grid without " + key, "name at least one file");
        }
        return files;
    }

    /** A fault may lie in what comes together only here, so the message says what that is. */
    private void check(int row) {
        try {
            question(row);
        } catch (InputFault fault) {
            List<String> files = files(row);
            String met = "met with kit \"" + files.get(0) + "\" on night \"" + files.get(1) + "\""
                    + (files.get(2).isEmpty() ? "" : " with person \"" + files.get(2) + "\"");
            throw new InputFault(
                    Path.of(fault.file()),
                    fault.line(),
                    fault.column(),
                    fault.found(),
                    fault.allowed(),
                    fault.hint().isEmpty() ? met : fault.hint() + "; " + met);
        }
    }
}
