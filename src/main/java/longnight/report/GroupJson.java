package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import longnight.night.GroupNight;
import longnight.night.NightResult;
import longnight.study.Group;
import longnight.study.Handed;
import longnight.study.Rota;
import longnight.study.Standing;
import org.jspecify.annotations.Nullable;

/** An answer about a group as JSON, format {@value #FORMAT}; conventions as in {@link ResultJson}: SI, whatever people are shown. */
public final class GroupJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-group/1";

    static final String FILE = "group.json";

    private final Group group;
    private final JsonGenerator json;

    private GroupJson(Group group, JsonGenerator json) {
        this.group = group;
        this.json = json;
    }

    /** The answer as text, ended by a line feed. */
    public static String text(Group group) {
        return JsonText.of(json -> new GroupJson(group, json).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("sentence", new GroupWords(group, Units.METRIC).headline());
        json.writeStringField("group", group.question().name());
        json.writeStringField("night", group.weakest().result().scenario().nightName());
        JsonText.number(json, "line", Standing.LINE);
        json.writeStringField("mostExposed", group.weakest().id());
        json.writeStringField(
                "outcome", JsonText.word(group.weakest().result().verdict().outcome()));
        json.writeArrayFieldStart("people");
        for (Standing one : group.standings()) {
            json.writeStartObject();
            json.writeStringField("person", one.result().scenario().person().name());
            json.writeStringField("kit", one.result().scenario().kitName());
            JsonText.number(json, "kitMass_kg", one.result().kitMass());
            JsonText.number(json, "handLowest_degC", Summary.hand(one.result()));
            JsonText.number(json, "footLowest_degC", Summary.foot(one.result()));
            standing(one);
            json.writeEndObject();
        }
        json.writeEndArray();
        spares();
        rotas();
        json.writeNumberField("nightsRun", group.nights());
        JsonText.cautions(json, GroupWords.caution(), group.cautions());
        json.writeEndObject();
    }

    private void standing(Standing one) throws IOException {
        NightResult result = one.result();
        json.writeStringField("id", one.id());
        JsonText.number(json, "reserve", one.reserve());
        JsonText.number(json, "reserve_W", one.reserveHeat());
        JsonText.number(json, "demand", result.demand());
        JsonText.number(json, "shortfallHeat_J", result.shortfallHeat());
        JsonText.number(json, "coreHeatDeficitDawn_J", result.coreHeatDeficitDawn());
        json.writeStringField("outcome", JsonText.word(result.verdict().outcome()));
        JsonText.number(json, "from_s", result.verdict().from());
        JsonText.number(json, "stopped_s", result.stopped());
    }

    private void spares() throws IOException {
        json.writeArrayFieldStart("spares");
        for (Handed each : group.spares()) {
            json.writeStartObject();
            json.writeStringField("spare", each.spare().id());
            json.writeNumberField("count", each.spare().count());
            json.writeBooleanField("forMostExposed", each.toWeakest());
            JsonText.number(json, "mass_kg", each.spare().mass());
            JsonText.number(json, "shortfallSaved_J", each.saved());
            JsonText.number(json, "stopsLater_s", each.longer());
            JsonText.number(json, "shortfallSavedPerMass_J_kg", each.perMass());
            json.writeBooleanField("helps", each.helps());
            json.writeObjectFieldStart("wearer");
            standing(each.after());
            json.writeEndObject();
            json.writeStringField("mostExposedThen", each.weakest().id());
            JsonText.number(json, "reserveOfMostExposedThen", each.weakest().reserve());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("handedOut");
        for (Handed each : group.handout()) {
            json.writeStartObject();
            json.writeStringField("spare", each.spare().id());
            json.writeStringField("to", each.before().id());
            JsonText.number(json, "reserveBefore", each.before().reserve());
            JsonText.number(json, "reserve", each.after().reserve());
            json.writeStringField("mostExposedThen", each.weakest().id());
            JsonText.number(json, "reserveOfMostExposedThen", each.weakest().reserve());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sparesNobodyWouldPutOn");
        for (String id : group.unworn()) {
            json.writeString(id);
        }
        json.writeEndArray();
        json.writeStringField(
                "bestSpareForMostExposed",
                group.best().map(each -> each.spare().id()).orElse(null));
    }

    private void rotas() throws IOException {
        GroupNight.@Nullable Places places = group.question().places();
        if (places != null) {
            json.writeObjectFieldStart("huddle");
            JsonText.number(json, "shareTouchingInside", places.inner());
            JsonText.number(json, "shareTouchingOutside", places.outer());
            json.writeNumberField("outerPlaces", places.outerPlaces());
            JsonText.number(json, "swap_s", places.swap());
            json.writeEndObject();
        }
        json.writeArrayFieldStart("rotas");
        for (Rota rota : group.rotas()) {
            rota(rota);
        }
        json.writeEndArray();
        Rota.@Nullable Bounds bounds = group.bounds();
        if (bounds != null) {
            json.writeObjectFieldStart("evenTurnsSavedByShareTouching");
            JsonText.number(json, "low_J", bounds.low());
            JsonText.number(json, "high_J", bounds.high());
            json.writeEndObject();
        }
        @Nullable Rota together = group.together();
        if (together != null) {
            json.writeFieldName("evenTurnsWithSparesHandedOut");
            rota(together);
        }
    }

    private void rota(Rota rota) throws IOException {
        json.writeStartObject();
        json.writeStringField("turns", JsonText.word(rota.kind()));
        JsonText.number(json, "swap_s", rota.swap());
        json.writeArrayFieldStart("people");
        for (Standing one : rota.standings()) {
            json.writeStartObject();
            standing(one);
            JsonText.number(json, "outside_s", rota.outsideFor().getOrDefault(one.id(), Double.NaN));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("outside");
        for (List<String> turn : rota.outside()) {
            json.writeStartArray();
            for (String id : turn) {
                json.writeString(id);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
