package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import longnight.clothing.Fabric;
import longnight.night.Verdict;
import longnight.study.Air;
import longnight.study.ArrivedDamp;
import longnight.study.Coldest;
import longnight.study.Draws;
import longnight.study.Limit;
import longnight.study.Spread;
import org.jspecify.annotations.Nullable;

/** An answer about the coldest night as JSON, format {@value #FORMAT}; conventions as in {@link ResultJson}. */
public final class ColdestJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-coldest/1";

    static final String FILE = "coldest.json";

    private final Coldest coldest;
    private final JsonGenerator json;

    private ColdestJson(Coldest coldest, JsonGenerator json) {
        this.coldest = coldest;
        this.json = json;
    }

    /** The answer as text, ended by a line feed. */
    public static String text(Coldest coldest) {
        return JsonText.of(json -> new ColdestJson(coldest, json).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("sentence", ColdestWording.answer(coldest, Units.METRIC));
        json.writeObjectFieldStart("scenario");
        json.writeStringField("title", coldest.night().title());
        json.writeStringField("night", coldest.night().nightName());
        json.writeStringField("kit", coldest.night().kitName());
        json.writeEndObject();
        json.writeObjectFieldStart("line");
        json.writeStringField("measure", JsonText.word(coldest.line().measure()));
        json.writeNumberField(
                switch (coldest.line().measure()) {
                    case DEMAND -> "limit";
                    case SHORTFALL_HEAT -> "limit_J_m2";
                    case CORE_HEAT_DEFICIT -> "limit_J";
                },
                coldest.line().limit());
        json.writeEndObject();
        json.writeObjectFieldStart("asGiven");
        air(coldest.air());
        JsonText.number(json, "demand", coldest.asGiven().demand());
        verdict(coldest.asGiven().verdict());
        json.writeEndObject();
        curves();
        table();
        damp();
        Draws draws = coldest.draws();
        if (draws == null) {
            json.writeNullField("draws");
        } else {
            json.writeObjectFieldStart("draws");
            json.writeNumberField("seed", draws.seed());
            json.writeNumberField("draws", draws.size());
            json.writeStringField("sentence", ColdestWording.bands(draws, Units.METRIC));
            json.writeEndObject();
        }
        json.writeNumberField("nightsRun", coldest.nights());
        JsonText.cautions(json, ColdestWording.caution(), coldest.cautions());
        json.writeEndObject();
    }

    private void curves() throws IOException {
        json.writeArrayFieldStart("curves");
        for (Coldest.Curve curve : coldest.curves()) {
            json.writeStartObject();
            json.writeStringField("person", curve.person().name());
            json.writeStringField("begun", curve.damp() ? "damp" : "dry");
            json.writeArrayFieldStart("limits");
            limit(Double.NaN, curve.ownWind());
            for (int i = 0; i < curve.limits().size(); i++) {
                limit(Coldest.WINDS.get(i), curve.limits().get(i));
            }
            json.writeEndArray();
            drawn(curve.drawn());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** In the night's own course of wind. An end outside the model's air is null, and its word says on which side it lies. */
    private void drawn(@Nullable Spread drawn) throws IOException {
        if (drawn == null) {
            json.writeNullField("drawnMeanAir_degC");
            return;
        }
        JsonText.spread(json, "drawnMeanAir_degC", drawn);
        json.writeObjectFieldStart("drawnReach");
        json.writeStringField("p10", JsonText.word(reach(drawn.low())));
        json.writeStringField("p50", JsonText.word(reach(drawn.middle())));
        json.writeStringField("p90", JsonText.word(reach(drawn.high())));
        json.writeEndObject();
    }

    private static Limit.Reach reach(double celsius) {
        if (Double.isFinite(celsius)) {
            return Limit.Reach.FOUND;
        }
        return celsius < 0 ? Limit.Reach.COLDER_THAN_MODEL : Limit.Reach.NOT_EVEN_WARM;
    }

    /** Wind null: the night's own course. */
    private void limit(double wind, Limit limit) throws IOException {
        json.writeStartObject();
        JsonText.number(json, "steadyWind10m_m_s", wind);
        json.writeStringField("reach", JsonText.word(limit.reach()));
        if (limit.reach() == Limit.Reach.FOUND) {
            air(limit.air());
        }
        JsonText.number(json, "warmerThanGiven_K", limit.shift());
        json.writeArrayFieldStart("carriedAgain");
        for (Limit.Stretch stretch : limit.again()) {
            json.writeStartObject();
            json.writeNumberField("warmestMeanAir_degC", stretch.warmest());
            json.writeNumberField("coldestMeanAir_degC", stretch.coldest());
            json.writeBooleanField("endsAtModelRange", stretch.open());
            json.writeEndObject();
        }
        json.writeEndArray();
        verdict(limit.verdict());
        json.writeEndObject();
    }

    private void table() throws IOException {
        json.writeArrayFieldStart("table");
        for (Coldest.Cell cell : coldest.table()) {
            json.writeStartObject();
            air(cell.air());
            json.writeNumberField("steadyWind10m_m_s", cell.wind());
            JsonText.number(json, "demand", cell.demand());
            verdict(cell.verdict());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void damp() throws IOException {
        json.writeObjectFieldStart("begunDampWaterPerDryMass");
        json.writeNumberField("fill", ArrivedDamp.FILL);
        for (Fabric fabric : Fabric.values()) {
            json.writeNumberField(JsonText.word(fabric), ArrivedDamp.cloth(fabric));
        }
        json.writeEndObject();
    }

    private void air(Air air) throws IOException {
        json.writeNumberField("meanAir_degC", air.mean());
        json.writeNumberField("lowestAir_degC", air.lowest());
    }

    private void verdict(@Nullable Verdict verdict) throws IOException {
        if (verdict == null) {
            return;
        }
        json.writeStringField("outcome", JsonText.word(verdict.outcome()));
        JsonText.number(json, "doesNotHoldFrom_s", verdict.from());
        json.writeArrayFieldStart("atRisk");
        for (Verdict.AtRisk risk : verdict.atRisk()) {
            json.writeStartObject();
            json.writeStringField("part", JsonText.word(risk.part()));
            JsonText.number(json, "from_s", risk.time());
            JsonText.number(json, "lowest_degC", risk.lowest());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
