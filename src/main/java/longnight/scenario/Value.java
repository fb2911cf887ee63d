package longnight.scenario;

import java.util.List;
import java.util.regex.Pattern;

/** What was written, with its places, before anybody asks what it means. */
sealed interface Value {

    /** Where it begins. */
    Place place();

    /** "a list", "a text": for messages. */
    String shape();

    /**
     * A word, a number with its unit, a name.
     *
     * @param text what was written
     * @param unit unit that the column's header gives to the number; empty when the text brings its own
     * @param comma whether a comma is the decimal sign of the file
     */
    record Text(Place place, String text, String unit, boolean comma) implements Value {
        private static final Pattern DECIMAL = Pattern.compile("^([+\\-\u2212]?[0-9]*),(?=[0-9])");

        Text(Place place, String text, String unit) {
            this(place, text, unit, false);
        }

        /** The text to be read as a number, with a decimal point. */
        String number() {
            return comma ? DECIMAL.matcher(text).replaceFirst("$1.") : text;
        }

        @Override
        public String shape() {
            return text.isEmpty() ? "nothing" : "the text \"" + text + "\"";
        }
    }

    /** A list. */
    record Items(Place place, List<Value> values) implements Value {
        @Override
        public String shape() {
            return "a list";
        }
    }

    /** Keys with values, in the order written, as yet with duplicates. */
    record Entries(Place place, List<Entry> entries) implements Value {
        @Override
        public String shape() {
            return "a section of keys";
        }
    }

    /** One key with its value. */
    record Entry(Text key, Value value) {}
}
