package longnight.cli;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import longnight.quantity.UnitSystem;
import longnight.report.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** The option of every verb that shows results: in which units. A verb takes it as a mixin. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            descriptionKey = "units",
            defaultValue = "metric",
            converter = Systems.class,
            completionCandidates = Systems.class)
    private UnitSystem system = UnitSystem.METRIC;

    /** The units asked for. */
    Units units() {
        return Units.of(system);
    }

    /** The system asked for. */
    UnitSystem system() {
        return system;
    }

    private static List<String> words() {
        return Stream.of(UnitSystem.values())
                .map(system -> system.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Words as they are typed. */
    static final class Systems implements ITypeConverter<UnitSystem>, Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return words().iterator();
        }

        @Override
        public UnitSystem convert(String word) {
            return UnitSystem.valueOf(Words.oneOf(word, words()).toUpperCase(Locale.ROOT));
        }
    }
}
