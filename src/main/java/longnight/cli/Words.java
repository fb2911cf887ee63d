package longnight.cli;

import java.util.List;
import longnight.quantity.Spelling;
import longnight.report.Prose;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** Words of the command line. */
final class Words {
    private Words() {}

    /** As {@link #oneOf(String, List)}, for an option of which the words are read late. */
    static String oneOf(String option, String word, List<String> allowed, CommandSpec spec) {
        try {
            return oneOf(word, allowed);
        } catch (TypeConversionException fault) {
            throw new ParameterException(spec.commandLine(), option + ": " + fault.getMessage());
        }
    }

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
