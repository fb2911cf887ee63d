package longnight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import longnight.night.Caution;
import longnight.study.Spread;

/** How all JSON of ours is written: keys in order, ASCII only, null for what is not a number, a line feed at the end. */
final class JsonText {
    private JsonText() {}

    /** Writes a document. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    static String of(Body body) {
        StringWriter text = new StringWriter();
        JsonFactory factory = JsonFactory.builder()
                .configure(JsonWriteFeature.ESCAPE_NON_ASCII, true)
                .build();
        DefaultPrettyPrinter lines = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        try (JsonGenerator json = factory.createGenerator(text)) {
            json.setPrettyPrinter(lines);
            body.write(json);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault); // a StringWriter does not fail
        }
        return text.append('\n').toString();
    }

    static void number(JsonGenerator json, String key, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(key, value);
        } else {
            json.writeNullField(key);
        }
    }

    /** Null where so many draws left the model's range that there is no such quantile. */
    static void spread(JsonGenerator json, String key, Spread spread) throws IOException {
        json.writeObjectFieldStart(key);
        number(json, "nominal", spread.nominal());
        number(json, "p10", spread.low());
        number(json, "p50", spread.middle());
        number(json, "p90", spread.high());
        json.writeEndObject();
    }

    static void cautions(JsonGenerator json, String own, List<Caution> cautions) throws IOException {
        json.writeStringField("caution", own);
        json.writeArrayFieldStart("cautions");
        for (Caution caution : cautions) {
            json.writeStartObject();
            json.writeStringField("code", word(caution));
            json.writeStringField("text", Wording.fullText(caution));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
