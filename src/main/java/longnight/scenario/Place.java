package longnight.scenario;

import java.nio.file.Path;

/**
 * Where something stands in a file.
 *
 * @param file   the file, as the person named it
 * @param line   line, from 1; 0 for the file as a whole
 * @param column column in characters, from 1; 0 for the line or the file as a whole
 */
record Place(Path file, int line, int column) {

    static Place of(Path file) {
        return new Place(file, 0, 0);
    }

    /** The fault at this place. */
    InputFault fault(String found, String allowed, String hint) {
        return new InputFault(file, line, column, found, allowed, hint);
    }

    InputFault fault(String found, String allowed) {
        return fault(found, allowed, "");
    }

    @Override
    public String toString() {
        return line == 0 ? file.toString() : file + ":" + line + ":" + column;
    }
}
