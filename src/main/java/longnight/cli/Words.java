package longnight.cli;

import java.util.List;
import longnight.quantity.Spelling;
import longnight.report.Prose;
import picocli.CommandLine.TypeConversionException;

/** Words of the command line. */
final class Words {
    private Words() {}

    /** The word itself when it is allowed; refused with the nearest otherwise. */
    static String oneOf(String word, List<String> allowed) {
        if (!allowed.contains(word)) {
            throw new TypeConversionException(
                    Prose.text("fault.word", word, String.join(", ", allowed), Spelling.suggestion(word, allowed))
                            .strip());
        }
        return word;
    }
}
