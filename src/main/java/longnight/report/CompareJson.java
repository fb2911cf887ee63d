package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import longnight.night.Caution;
import longnight.night.NightResult;
import longnight.study.ComparedBand;
import longnight.study.Comparison;
import longnight.study.Pressure;
import longnight.study.Stress;
import org.jspecify.annotations.Nullable;

/** A comparison as JSON, format {@value #FORMAT}; the manners of {@link ResultJson}. */
public final class CompareJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-compare/1";

    static final String FILE = "compare.json";

    private CompareJson() {}

    /** The comparison as text, ended by a line feed. */
    public static String text(Comparison.Answer answer) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeStringField("varied", Summary.word(answer.varied()));
            json.writeArrayFieldStart("compared");
            ComparedBand band = answer.band();
            for (int i = 0; i < answer.all().size(); i++) {
                one(json, answer.all().get(i), band == null ? null : band.all().get(i));
            }
            json.writeEndArray();
            if (band == null) {
                json.writeNullField("draws");
            } else {
                json.writeObjectFieldStart("draws");
                json.writeNumberField("seed", band.seed());
                json.writeNumberField("draws", band.draws());
                json.writeEndObject();
            }
            json.writeArrayFieldStart("notes");
            for (String note : Compared.notes(answer, Units.METRIC)) {
                json.writeString(note);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("cautions");
            for (Caution caution : Compared.cautions(answer)) {
                json.writeStartObject();
                json.writeStringField("code", Summary.word(caution));
                json.writeStringField("text", Wording.fullText(caution));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void one(JsonGenerator json, Comparison.One one, ComparedBand.@Nullable Entry drawn)
            throws IOException {
        NightResult result = one.result();
        json.writeStartObject();
        json.writeStringField("name", one.name());
        json.writeStringField("title", result.scenario().title());
        json.writeStringField("night", result.scenario().nightName());
        json.writeStringField("kit", result.scenario().kitName());
        json.writeStringField("person", result.scenario().person().name());
        json.writeStringField("verdict", (Wording.verdict(result) + " " + Wording.atRisk(result)).strip());
        for (Summary.Column column : Summary.COLUMNS) {
            if (column.kind() == Summary.Kind.WORD) {
                json.writeStringField(column.key(), column.cell(result));
            } else {
                JsonText.number(json, column.key(), column.value().applyAsDouble(result));
            }
        }
        Pressure pressure = one.pressure();
        if (pressure != null) {
            json.writeObjectFieldStart("shortfallHeatSaved_J");
            for (Stress stress : Stress.values()) {
                JsonText.number(json, Summary.word(stress), pressure.saved().getOrDefault(stress, Double.NaN));
            }
            json.writeEndObject();
            json.writeArrayFieldStart("limitedBy");
            for (Stress stress : pressure.limiting()) {
                json.writeString(Summary.word(stress));
            }
            json.writeEndArray();
        }
        if (drawn == null) {
            json.writeNullField("drawn");
        } else {
            json.writeObjectFieldStart("drawn");
            json.writeNumberField("holding", drawn.holding());
            amount(json, "demand", drawn.demand());
            amount(json, "shortfallHeat_J", drawn.shortfallHeat());
            amount(json, "coreHeatDeficitEnd_J", drawn.deficitDawn());
            if (Double.isNaN(drawn.shortfallHeat().more().low())) {
                json.writeNullField("toldFromFirst");
            } else {
                json.writeStringField("toldFromFirst", Summary.word(Compared.told(drawn)));
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void amount(JsonGenerator json, String key, ComparedBand.Amount amount) throws IOException {
        JsonText.spread(json, key, amount.own());
        JsonText.spread(json, key + "_lessFirst", amount.more());
    }
}
