package longnight.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longnight.night.Scenario;
import longnight.quantity.Dimension;
import longnight.report.Prose;
import longnight.study.Extent;
import longnight.study.PeopleRange;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Who may sit there: a group with a name, and ranges in place of the group's. */
final class PeopleOptions {
    private static final String BETWEEN = " to ";
    private static final double PERCENT = 100;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // filled in by the parser
    private CommandSpec spec;

    @Option(names = "--group", paramLabel = "GROUP", descriptionKey = "group")
    private @Nullable String group;

    @Option(names = "--mass", paramLabel = "RANGE", descriptionKey = "mass")
    private @Nullable String mass;

    @Option(names = "--height", paramLabel = "RANGE", descriptionKey = "height")
    private @Nullable String height;

    @Option(names = "--fat", paramLabel = "RANGE", descriptionKey = "fat")
    private @Nullable String fat;

    @Option(names = "--age", paramLabel = "RANGE", descriptionKey = "age")
    private @Nullable String age;

    @Option(names = "--fitness", paramLabel = "RANGE", descriptionKey = "fitness")
    private @Nullable String fitness;

    private PeopleRange.Group named = PeopleRange.Group.LIKE;
    private final List<UnaryOperator<PeopleRange>> changes = new ArrayList<>();

    /**
     * Reads them.
     *
     * @param used whether anything asks for people
     */
    void read(boolean used) {
        if (group != null) {
            requireUsed("--group", used);
            List<String> words = Stream.of(PeopleRange.Group.values())
                    .map(PeopleOptions::word)
                    .toList();
            named = PeopleRange.Group.values()[words.indexOf(Words.oneOf("--group", group, words, spec))];
        }
        range("--mass", mass, Dimension.MASS, PeopleRange.MASSES, 1, PeopleRange::withMass, used);
        range("--height", height, Dimension.LENGTH, PeopleRange.HEIGHTS, 1, PeopleRange::withHeight, used);
        range("--fat", fat, Dimension.FRACTION, PeopleRange.FATS, PERCENT, PeopleRange::withFat, used);
        range("--age", age, Dimension.AGE, PeopleRange.AGES, 1, PeopleRange::withAge, used);
        range("--fitness", fitness, Dimension.OXYGEN_UPTAKE, PeopleRange.FITNESSES, 1, PeopleRange::withFitness, used);
    }

    /** The people about the one of a night. */
    PeopleRange of(Scenario night) {
        PeopleRange people = PeopleRange.of(named, night);
        for (UnaryOperator<PeopleRange> change : changes) {
            people = change.apply(people);
        }
        return people;
    }

    private static String word(PeopleRange.Group group) {
        return group.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void range(
            String option,
            @Nullable String text,
            Dimension dimension,
            Extent allowed,
            double perEngine,
            BiFunction<PeopleRange, Extent, PeopleRange> change,
            boolean used) {
        if (text == null) {
            return;
        }
        requireUsed(option, used);
        String[] ends = text.split(BETWEEN, -1);
        if (ends.length != 2) {
            throw fault("fault.spread.range", option, text, Prose.text("example." + option.substring(2)));
        }
        double[] found = new double[2];
        for (int i = 0; i < 2; i++) {
            found[i] = perEngine
                    * Amounts.between(
                            option,
                            ends[i].strip(),
                            dimension,
                            allowed.low() / perEngine,
                            allowed.high() / perEngine,
                            spec);
        }
        if (found[0] > found[1]) {
            throw fault("fault.spread.order", option, text);
        }
        Extent range = new Extent(found[0], found[1]);
        changes.add(people -> change.apply(people, range));
    }

    private void requireUsed(String option, boolean used) {
        if (!used) {
            throw fault("fault.spread.unused", option, "people");
        }
    }

    private ParameterException fault(String key, String... slots) {
        return new ParameterException(spec.commandLine(), Prose.text(key, slots));
    }
}
