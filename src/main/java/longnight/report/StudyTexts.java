package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import longnight.assumption.Guess;
import longnight.night.Caution;
import org.apache.commons.csv.CSVPrinter;

/** What tables and JSON of answers about many nights share: their frame and their cautions. */
final class StudyTexts {
    private StudyTexts() {}

    /** Rows of a table. */
    interface Rows {
        void print(CSVPrinter printer) throws IOException;
    }

    /** Fields of an object. */
    interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    /** As {@link HourCsv}: the header first, remarks and cautions in full as comments at the end. */
    static String table(List<String> remarks, List<Caution> cautions, Rows rows) {
        return table(remarks, cautions, Units.METRIC, rows);
    }

    /** The same with cautions in other units; the rows' are the caller's. */
    static String table(List<String> remarks, List<Caution> cautions, Units units, Rows rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, HourCsv.FORMAT)) {
            rows.print(printer);
            for (String remark : remarks) {
                printer.printComment(remark);
            }
            for (Caution caution : cautions) {
                printer.printComment(Wording.fullText(caution, units));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringBuilder does not fail
        }
        return text.toString();
    }

    /** An object with its format first and the cautions in full last, ended by a line feed; as {@link ResultJson}. */
    static String json(String name, List<Caution> cautions, Fields fields) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("format", name);
            fields.write(json);
            json.writeArrayFieldStart("cautions");
            for (Caution caution : cautions) {
                json.writeStartObject();
                json.writeStringField("code", caution.name());
                json.writeStringField("text", Wording.fullText(caution));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    static void number(JsonGenerator json, String key, double value) throws IOException {
        JsonText.number(json, key, value);
    }

    static String word(Enum<?> constant) {
        return JsonText.word(constant);
    }

    /** {@link #guess(Guess, Units)} in metric units. */
    static String guess(Guess guess) {
        return guess(guess, Units.METRIC);
    }

    static String guess(Guess guess, Units units) {
        return Prose.text(
                "notes.guessed.line",
                guess.subject(),
                units.guessedQuantity(guess),
                units.guessedValue(guess, 3),
                guess.reason());
    }
}
