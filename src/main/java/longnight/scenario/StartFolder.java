package longnight.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longnight.figure.Posture;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.UnitSystem;

/** A first folder of files for somebody who has none: a night, kits, a wardrobe, a person, a page to read. It runs as it is. */
public final class StartFolder {
    /** What is asked; the answers are read by the keys that the files have. */
    public enum Question {
        NAME(Tables.PERSON, "name", "me", "me"),
        SEX(Tables.PERSON, "sex", "female", "female"),
        AGE(Tables.PERSON, "age", "35 years", "35 years"),
        HEIGHT(Tables.PERSON, "height", "170 cm", "67 in"),
        MASS(Tables.PERSON, "mass", "68 kg", "150 lb"),
        COLD(Tables.WEATHER, "min", "-5 °C", "23 °F"),
        WIND(Tables.WEATHER, "wind", "10 km/h", "6 mph"),
        POSTURE(List.of("sit", "lie")),
        KIT(List.of("typical", "light", "warm"));

        private final Key key;
        private final String metric;
        private final String imperial;

        Question(Table table, String key, String metric, String imperial) {
            this.key = table.key(key);
            this.metric = metric;
            this.imperial = imperial;
        }

        Question(List<String> words) {
            key = Key.word(name().toLowerCase(Locale.ROOT), words, "");
            metric = words.get(0);
            imperial = words.get(0);
        }

        /** The answer taken when there is none; written as anyone may write it. */
        public String usual(UnitSystem system) {
            return system == UnitSystem.METRIC ? metric : imperial;
        }

        /** Words to choose from; empty where there is no choice of words. */
        public List<String> words() {
            return key.words();
        }

        /**
         * Reads an answer as the files are read.
         *
         * @return the answer, stripped
         * @throws InputFault when it will not do
         */
        public String read(String answer) {
            return Section.read(new Value.Text(Place.of(Path.of("--" + Key.wordOf(this))), answer.strip(), ""), key);
        }
    }

    /** How much warmer the day before is than the night; engineering estimate, no source [K]. */
    private static final double DAY_ABOVE_NIGHT = 7;

    private static final Map<String, String> FILES = files();

    private StartFolder() {}

    /**
     * The files, path to text; their schemas are not among them.
     *
     * @param answers as {@link Question#read} gave them, to all questions
     * @param caution what the page to read ends with
     */
    public static Map<String, String> write(Map<Question, String> answers, String caution) {
        boolean lies = answer(answers, Question.POSTURE).equals("lie");
        double min = Quantities.parse(answer(answers, Question.COLD), Dimension.TEMPERATURE);
        Key warmest = Tables.WEATHER.key("max");
        double most = Quantities.parse(warmest.high(), Dimension.TEMPERATURE);
        Map<String, String> slots = new LinkedHashMap<>();
        answers.forEach((question, text) -> slots.put(Key.wordOf(question), text));
        slots.put("name", quoted(answer(answers, Question.NAME)));
        slots.put(
                "title",
                quoted("A night at " + answer(answers, Question.COLD) + " with the " + answer(answers, Question.KIT)
                        + " kit"));
        slots.put(
                "max",
                Quantities.format(
                        Math.min(most, min + DAY_ABOVE_NIGHT),
                        Dimension.TEMPERATURE,
                        answer(answers, Question.COLD).endsWith("F") ? UnitSystem.IMPERIAL : UnitSystem.METRIC));
        slots.put("posture", Key.wordOf(lies ? Posture.LYING_CURLED : Posture.SITTING_KNEES_UP));
        slots.put("pad", lies ? "mat" : "sit-pad");
        slots.put("caution", caution);
        Map<String, String> written = new LinkedHashMap<>();
        FILES.forEach((path, resource) -> written.put(path, filled(resource(resource), slots)));
        return written;
    }

    private static String answer(Map<Question, String> answers, Question question) {
        String answer = answers.get(question);
        if (answer == null) {
            throw new IllegalArgumentException("no answer to " + question);
        }
        return answer;
    }

    /** Path in the folder to name of the template. */
    private static Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("README.txt", "README.txt");
        files.put("night.yaml", "night.yaml");
        files.put("wardrobe.yaml", "wardrobe.yaml");
        files.put("people/me.yaml", "person.yaml");
        for (String kit : Question.KIT.words()) {
            files.put("kits/" + kit + ".yaml", "kit-" + kit + ".yaml");
        }
        return files;
    }

    /** A text as YAML and JSON both write it; it holds no control characters, {@link Section} sees to that. */
    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    /** Slots filled in one pass, so that no answer is taken for a slot. */
    private static String filled(String template, Map<String, String> slots) {
        return Pattern.compile("\\$\\{([a-z]+)}")
                .matcher(template)
                .replaceAll(slot -> Matcher.quoteReplacement(slots.getOrDefault(slot.group(1), slot.group())));
    }

    private static String resource(String name) {
        try (InputStream in = StartFolder.class.getResourceAsStream("start/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the template " + name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
