package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import longnight.night.NightResult;
import longnight.study.Assumption;
import longnight.study.Draws;
import longnight.study.Effect;
import longnight.study.Pair;
import longnight.study.Spread;
import longnight.study.Worth;

/** An answer about what changes are worth as JSON, format {@value #FORMAT}; conventions as in {@link ResultJson}. */
public final class WorthJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-worth/1";

    static final String FILE = "worth.json";

    private final Worth worth;
    private final JsonGenerator json;

    private WorthJson(Worth worth, JsonGenerator json) {
        this.worth = worth;
        this.json = json;
    }

    /** The answer as text, ended by a line feed. */
    public static String text(Worth worth) {
        return JsonText.of(json -> new WorthJson(worth, json).write());
    }

    private void write() throws IOException {
        NightResult planned = worth.asPlanned();
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("sentence", WorthWording.answer(worth, Units.METRIC));
        json.writeObjectFieldStart("scenario");
        json.writeStringField("title", planned.scenario().title());
        json.writeStringField("night", planned.scenario().nightName());
        json.writeStringField("kit", planned.scenario().kitName());
        json.writeStringField("person", planned.scenario().person().name());
        json.writeEndObject();
        json.writeObjectFieldStart("asPlanned");
        JsonText.number(json, "demand", planned.demand());
        JsonText.number(json, "shortfallHeat_J", planned.shortfallHeat());
        JsonText.number(json, "coreHeatDeficitDawn_J", planned.coreHeatDeficitDawn());
        json.writeStringField("outcome", JsonText.word(planned.verdict().outcome()));
        json.writeEndObject();
        effects();
        pairs();
        assumptions();
        Draws draws = worth.draws();
        if (draws == null) {
            json.writeNullField("draws");
        } else {
            json.writeObjectFieldStart("draws");
            json.writeNumberField("seed", draws.seed());
            json.writeNumberField("draws", draws.size());
            json.writeNumberField("largestEffectsDrawn", Worth.DRAWN);
            json.writeEndObject();
        }
        json.writeNumberField("nightsRun", worth.nights());
        JsonText.cautions(json, WorthWording.caution(), worth.cautions());
        json.writeEndObject();
    }

    /** Above zero: saved. */
    private void effects() throws IOException {
        json.writeArrayFieldStart("effects");
        for (Effect effect : worth.effects()) {
            json.writeStartObject();
            json.writeStringField("change", JsonText.word(effect.change().kind()));
            json.writeArrayFieldStart("of");
            for (String name : effect.change().names()) {
                json.writeString(name);
            }
            json.writeEndArray();
            json.writeStringField("words", WorthWording.name(effect.change(), Units.METRIC));
            JsonText.number(json, "extraHeatSaved_W", effect.extraHeat());
            JsonText.number(json, "shortfallSaved_J", effect.shortfall());
            JsonText.number(json, "coreHeatDeficitDawnSaved_J", effect.deficit());
            JsonText.number(json, "colderNight_K", effect.kelvin());
            json.writeBooleanField("colderNightLeavesTheRange", Double.isInfinite(effect.kelvin()));
            JsonText.number(json, "mass_kg", effect.change().mass());
            JsonText.number(json, "price", effect.change().price());
            JsonText.number(json, "demand", effect.demand());
            json.writeStringField("outcome", JsonText.word(effect.outcome()));
            json.writeBooleanField("stopped", effect.stopped());
            Spread drawn = effect.drawn();
            if (drawn == null) {
                json.writeNullField("drawnShortfallSaved_J");
            } else {
                JsonText.spread(json, "drawnShortfallSaved_J", drawn);
                json.writeBooleanField("toldFromNothing", !effect.isLost());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void pairs() throws IOException {
        json.writeArrayFieldStart("pairs");
        for (Pair pair : worth.pairs()) {
            json.writeStartObject();
            json.writeStringField("one", WorthWording.name(pair.one().change(), Units.METRIC));
            json.writeStringField("other", WorthWording.name(pair.other().change(), Units.METRIC));
            JsonText.number(json, "jointlySaved_J", pair.joint());
            JsonText.number(json, "sumSaved_J", pair.sum());
            json.writeBooleanField("depend", pair.depends());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void assumptions() throws IOException {
        json.writeArrayFieldStart("assumptions");
        for (Assumption assumption : worth.assumptions()) {
            json.writeStartObject();
            json.writeStringField("kind", JsonText.word(assumption.kind()));
            json.writeStringField("name", assumption.name());
            json.writeStringField("words", WorthWording.name(assumption, Units.METRIC));
            JsonText.number(json, "shortfallMoreAtLowest_J", assumption.low());
            JsonText.number(json, "shortfallMoreAtHighest_J", assumption.high());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
