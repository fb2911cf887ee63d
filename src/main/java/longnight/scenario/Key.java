package longnight.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import org.jspecify.annotations.Nullable;

/**
 * One key of a file: what may stand there. The tables of keys are the one place that knows; reading, the lists in
 * messages and any published description of the format come from here.
 *
 * @param name      as written in a file
 * @param about     what it says, for people
 * @param form      what kind of value it takes
 * @param required  whether it must be there
 * @param dimension what a quantity measures; null for other forms
 * @param low       smallest value allowed, as people write it; empty for other forms
 * @param high      largest value allowed
 * @param words     words allowed; empty for other forms
 * @param inner     keys of the section, or of each item of a list; null for other forms
 */
record Key(
        String name,
        String about,
        Form form,
        boolean required,
        @Nullable Dimension dimension,
        String low,
        String high,
        List<String> words,
        @Nullable Table inner) {

    /** Kinds of values. */
    enum Form {
        TEXT,
        QUANTITY,
        WORD,
        YES_NO,
        CLOCK,
        /** A list of names. */
        NAMES,
        SECTION,
        /** A section, or a word that stands for one. */
        WORD_OR_SECTION,
        /** A list of sections. */
        SECTIONS,
        /** A quantity for each of some parts; the parts are the words. */
        PARTS,
        /** A text for each of some names. */
        EACH
    }

    static Key text(String name, String about) {
        return new Key(name, about, Form.TEXT, false, null, "", "", List.of(), null);
    }

    static Key quantity(String name, Dimension dimension, String low, String high, String about) {
        return new Key(name, about, Form.QUANTITY, false, dimension, low, high, List.of(), null);
    }

    static Key word(String name, List<String> words, String about) {
        return new Key(name, about, Form.WORD, false, null, "", "", words, null);
    }

    static Key word(String name, Class<? extends Enum<?>> words, String about) {
        return word(name, wordsOf(words), about);
    }

    static Key yesNo(String name, String about) {
        return new Key(name, about, Form.YES_NO, false, null, "", "", List.of("yes", "no"), null);
    }

    static Key clock(String name, String about) {
        return new Key(name, about, Form.CLOCK, false, null, "", "", List.of(), null);
    }

    static Key names(String name, String about) {
        return new Key(name, about, Form.NAMES, false, null, "", "", List.of(), null);
    }

    static Key section(String name, Table inner, String about) {
        return new Key(name, about, Form.SECTION, false, null, "", "", List.of(), inner);
    }

    static Key wordOrSection(String name, List<String> words, Table inner, String about) {
        return new Key(name, about, Form.WORD_OR_SECTION, false, null, "", "", words, inner);
    }

    static Key sections(String name, Table inner, String about) {
        return new Key(name, about, Form.SECTIONS, false, null, "", "", List.of(), inner);
    }

    static Key parts(
            String name, Class<? extends Enum<?>> parts, Dimension dimension, String low, String high, String about) {
        return new Key(name, about, Form.PARTS, false, dimension, low, high, wordsOf(parts), null);
    }

    static Key each(String name, String about) {
        return new Key(name, about, Form.EACH, false, null, "", "", List.of(), null);
    }

    Key must() {
        return new Key(name, about, form, true, dimension, low, high, words, inner);
    }

    /** The range in words: "from 30 kg to 200 kg". */
    String range() {
        return "from " + low + " to " + high;
    }

    boolean allows(double value) {
        return value >= Quantities.parse(low, dimensionOf()) && value <= Quantities.parse(high, dimensionOf());
    }

    Dimension dimensionOf() {
        if (dimension == null) {
            throw new IllegalStateException(name + " is no quantity");
        }
        return dimension;
    }

    Table innerOf() {
        if (inner == null) {
            throw new IllegalStateException(name + " is no section");
        }
        return inner;
    }

    /** Enum constants as words of a file: UPPER_ARM is upper-arm. */
    static List<String> wordsOf(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(Key::wordOf).toList();
    }

    static String wordOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
