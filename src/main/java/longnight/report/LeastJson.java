package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.study.LeastAnswer;
import longnight.study.LeastAnswer.Found;
import longnight.study.LeastAnswer.Nothing;
import longnight.study.Proof;
import org.jspecify.annotations.Nullable;

/** The lightest kit as JSON, format {@value #FORMAT}; the manners of {@link ResultJson}. */
public final class LeastJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-least/1";

    static final String FILE = "least.json";

    private LeastJson() {}

    /** The answer as text, ended by a line feed. */
    public static String text(LeastAnswer answer) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeStringField("headline", LeastWords.headline(answer, Units.METRIC));
            JsonText.number(json, "line", answer.question().demand());
            JsonText.number(json, "colder_K", answer.question().colder());
            json.writeArrayFieldStart("nights");
            for (String night : answer.nights()) {
                json.writeString(night);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("kits");
            for (Found found : answer.proof().found()) {
                kit(json, found);
            }
            json.writeEndArray();
            without(json, answer);
            proof(json, answer.proof());
            nothing(json, answer.nothing());
            front(json, answer);
            json.writeArrayFieldStart("cautions");
            for (Caution caution : LeastWords.cautions(answer)) {
                json.writeStartObject();
                json.writeStringField("code", Summary.word(caution));
                json.writeStringField("text", Wording.fullText(caution));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void kit(JsonGenerator json, Found found) throws IOException {
        json.writeStartObject();
        JsonText.number(json, "mass_kg", found.mass());
        JsonText.number(json, "demand", found.demand());
        json.writeArrayFieldStart("pieces");
        for (String id : LeastWords.ids(found.kit())) {
            json.writeString(id);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("nights");
        for (NightResult night : found.nights()) {
            json.writeStartObject();
            json.writeStringField("verdict", (Wording.verdict(night) + " " + Wording.atRisk(night)).strip());
            JsonText.number(json, "demand", night.demand());
            JsonText.number(json, "coreHeatDeficitDawn_J", night.coreHeatDeficitDawn());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void without(JsonGenerator json, LeastAnswer answer) throws IOException {
        json.writeArrayFieldStart("without");
        for (LeastAnswer.Without each : answer.without()) {
            json.writeStartObject();
            json.writeStringField("piece", each.id());
            JsonText.number(json, "mass_kg", each.mass());
            json.writeBooleanField("allowed", each.allowed());
            JsonText.number(json, "demand", each.demand());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void proof(JsonGenerator json, Proof proof) throws IOException {
        json.writeObjectFieldStart("proof");
        json.writeBooleanField("complete", proof.complete());
        JsonText.number(json, "noAdequateKitBelow_kg", proof.lower());
        JsonText.number(json, "kits", proof.kits());
        JsonText.number(json, "refutedByBound", proof.byBound());
        json.writeNumberField("refutedByDryRun", proof.byDryRun());
        json.writeNumberField("refutedByRun", proof.byRun());
        json.writeNumberField("boundRuns", proof.boundRuns());
        json.writeNumberField("dryRuns", proof.dryRuns());
        json.writeNumberField("runs", proof.runs());
        json.writeEndObject();
    }

    private static void nothing(JsonGenerator json, @Nullable Nothing nothing) throws IOException {
        if (nothing == null) {
            json.writeNullField("nearest");
            return;
        }
        json.writeObjectFieldStart("nearest");
        json.writeFieldName("kit");
        kit(json, nothing.best());
        JsonText.number(json, "warmer_K", nothing.warmer());
        json.writeStringField("helpsMost", nothing.most().toLowerCase(java.util.Locale.ROOT));
        JsonText.number(json, "helpsBy", nothing.helps());
        json.writeEndObject();
    }

    private static void front(JsonGenerator json, LeastAnswer answer) throws IOException {
        json.writeArrayFieldStart("front");
        for (LeastAnswer.Point point : answer.front()) {
            json.writeStartObject();
            JsonText.number(json, "meanAir_degC", point.air());
            JsonText.number(json, "mass_kg", point.mass());
            JsonText.number(json, "noAdequateKitBelow_kg", point.lower());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
