package longnight.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longnight.quantity.Spelling;
import longnight.quantity.UnitSystem;
import longnight.report.Prose;
import longnight.report.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of every verb that shows results: in which units. A verb takes it as a mixin. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            descriptionKey = "units",
            defaultValue = "metric",
            converter = Words.class,
            completionCandidates = Candidates.class)
    private UnitSystem system = UnitSystem.METRIC;

    /** The units asked for. */
    Units units() {
        return Units.of(system);
    }

    private static List<String> words() {
        return Stream.of(UnitSystem.values())
                .map(system -> system.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Words as they are typed. */
    static final class Words implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String word) {
            if (!words().contains(word)) {
                String allowed = String.join(", ", words());
                throw new TypeConversionException(
                        Prose.text("fault.word", word, allowed, Spelling.suggestion(word, words()))
                                .strip());
            }
            return UnitSystem.valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /** The words, for completion. */
    static final class Candidates implements Iterable<String> {
        @Override
        public java.util.Iterator<String> iterator() {
            return words().iterator();
        }
    }
}
