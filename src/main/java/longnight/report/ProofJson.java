package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import longnight.night.Caution;
import longnight.proof.Band;
import longnight.proof.Check;
import longnight.proof.Experiment;
import longnight.proof.Outcome;
import longnight.proof.Proof;
import longnight.proof.SelfCheck;
import longnight.proof.StandardTable;

/** Experiments and what came of them as JSON, format {@value #FORMAT}. */
public final class ProofJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-proof/1";

    static final String FILE = "proof.json";

    private ProofJson() {}

    /** The document, ended by a line feed. */
    public static String text(Proof proof) {
        List<Outcome> outcomes = proof.outcomes();
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            score(json, Outcome.score(outcomes));
            json.writeArrayFieldStart("experiments");
            for (Outcome outcome : outcomes) {
                json.writeStartObject();
                json.writeStringField("id", outcome.experiment().id());
                json.writeStringField("source", outcome.experiment().source());
                json.writeStringField("title", outcome.experiment().title());
                json.writeArrayFieldStart("checks");
                for (Outcome.Row row : outcome.rows()) {
                    row(json, row);
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("cannot");
            for (Experiment experiment : proof.cannot()) {
                json.writeStartObject();
                json.writeStringField("id", experiment.id());
                json.writeStringField("source", experiment.source());
                json.writeStringField("reason", experiment.cannot());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("tables");
            for (StandardTable table : proof.tables()) {
                table(json, table);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("arithmetic");
            for (SelfCheck check : proof.checks()) {
                json.writeStartObject();
                json.writeStringField("what", JsonText.word(check.what()));
                JsonText.number(json, "value", check.value());
                JsonText.number(json, "limit", check.limit());
                json.writeEndObject();
            }
            json.writeEndArray();
            JsonText.cautions(json, Prose.text("caution.heading"), List.of(Caution.PLANNING_AID));
            json.writeEndObject();
        });
    }

    private static void table(JsonGenerator json, StandardTable table) throws IOException {
        json.writeStartObject();
        json.writeStringField("table", JsonText.word(table.kind()));
        json.writeNumberField("rows", table.rows().size());
        json.writeNumberField("within", table.met());
        JsonText.number(json, "tolerance", table.kind().tolerance());
        JsonText.number(json, "bias", table.bias());
        JsonText.number(json, "rmsd", table.deviation());
        JsonText.number(json, "worst", table.worst());
        json.writeEndObject();
    }

    private static void score(JsonGenerator json, Outcome.Score score) throws IOException {
        json.writeObjectFieldStart("score");
        json.writeNumberField("gates", score.gates());
        json.writeNumberField("gatesMetNominal", score.gatesMet());
        json.writeNumberField("gatesMetByAnyVariant", score.gatesAny());
        JsonText.number(json, "goalsNominal", score.goals());
        JsonText.number(json, "goalsByAnyVariant", score.goalsAny());
        for (Check.Pool pool : score.pools().keySet()) {
            Outcome.Pooled pooled = score.pools().get(pool);
            json.writeObjectFieldStart(JsonText.word(pool));
            json.writeNumberField("count", pooled.count());
            JsonText.number(json, "bias", pooled.bias());
            JsonText.number(json, "rmsd", pooled.rmsd());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void row(JsonGenerator json, Outcome.Row row) throws IOException {
        Check check = row.check();
        json.writeStartObject();
        json.writeStringField("name", check.name());
        json.writeStringField("reading", JsonText.word(check.reading()));
        json.writeStringField("unit", check.unit().isEmpty() ? "1" : check.unit());
        JsonText.number(json, "measured", check.measured());
        JsonText.number(json, "spread", check.spread());
        band(json, "gate", check.gate());
        band(json, "goal", check.goal());
        JsonText.number(json, "nominal", row.nominal());
        JsonText.number(json, "low", row.low());
        JsonText.number(json, "high", row.high());
        json.writeStringField("basis", check.basis());
        JsonText.number(json, "second", check.second());
        band(json, "secondRange", check.secondRange());
        json.writeStringField("missed", check.missed());
        json.writeEndObject();
    }

    private static void band(JsonGenerator json, String name, Band band) throws IOException {
        if (band.exists()) {
            json.writeObjectFieldStart(name);
            JsonText.number(json, "low", band.low());
            JsonText.number(json, "high", band.high());
            json.writeEndObject();
        }
    }
}
