package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.stream.Collectors;
import longnight.night.NightResult;
import longnight.study.Cloud;
import longnight.study.Doubt;
import longnight.study.Driver;
import longnight.study.Extent;
import longnight.study.ForecastError;
import longnight.study.Indices;
import longnight.study.PeopleRange;
import longnight.study.Spread;
import longnight.study.SpreadAnswer;
import longnight.study.SpreadAnswer.Quantity;
import longnight.study.SpreadQuestion;

/** An answer about how far a night is open as JSON, format {@value #FORMAT}; conventions as in {@link ResultJson}. */
public final class SpreadJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-spread/1";

    static final String FILE = "spread.json";

    private final SpreadAnswer answer;
    private final JsonGenerator json;

    private SpreadJson(SpreadAnswer answer, JsonGenerator json) {
        this.answer = answer;
        this.json = json;
    }

    /** The answer as text, ended by a line feed. */
    public static String text(SpreadAnswer answer) {
        return JsonText.of(json -> new SpreadJson(answer, json).write());
    }

    /** What a cloud was drawn over, in a word. */
    static String over(Cloud cloud) {
        return cloud.over().stream().sorted().map(JsonText::word).collect(Collectors.joining("+"));
    }

    private void write() throws IOException {
        NightResult given = answer.given().asWritten();
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("sentence", new SpreadWording(answer, Units.METRIC).headline());
        json.writeObjectFieldStart("scenario");
        json.writeStringField("title", given.scenario().title());
        json.writeStringField("night", given.scenario().nightName());
        json.writeStringField("kit", given.scenario().kitName());
        json.writeStringField("person", given.scenario().person().name());
        json.writeEndObject();
        question();
        side("given", answer.given());
        side("worstPlausible", answer.worst());
        drivers();
        json.writeNumberField("nightsRun", answer.nights());
        JsonText.cautions(json, SpreadWording.caution(), answer.cautions());
        json.writeEndObject();
    }

    private void question() throws IOException {
        SpreadQuestion question = answer.question();
        json.writeObjectFieldStart("question");
        json.writeArrayFieldStart("over");
        for (Doubt doubt : Doubt.values()) {
            if (question.over().contains(doubt)) {
                json.writeString(JsonText.word(doubt));
            }
        }
        json.writeEndArray();
        json.writeNumberField("seed", question.seed());
        json.writeNumberField("mostDraws", question.most());
        JsonText.number(json, "colder_K", question.colder());
        JsonText.number(json, "windier", question.windier());
        if (question.over().contains(Doubt.PEOPLE)) {
            PeopleRange people = question.people();
            json.writeObjectFieldStart("people");
            extent("mass_kg", people.mass());
            extent("height_m", people.height());
            extent("bodyFat_percent", people.fat());
            extent("age_years", people.age());
            extent("peakOxygen_mL_kg_min", people.fitness());
            json.writeEndObject();
        }
        if (question.over().contains(Doubt.FORECAST)) {
            ForecastError error = question.forecast();
            json.writeObjectFieldStart("forecastStandardDeviations");
            part("air_K", error.air());
            part("windShare", error.wind());
            part("relativeHumidity", error.humidity());
            part("cloud", error.cloud());
            part("precipitationLogarithm", error.precipitation());
            JsonText.number(json, "memory_s", ForecastError.MEMORY);
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void extent(String key, Extent extent) throws IOException {
        json.writeArrayFieldStart(key);
        json.writeNumber(extent.low());
        json.writeNumber(extent.high());
        json.writeEndArray();
    }

    private void part(String key, ForecastError.Part part) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "holding", part.holding());
        JsonText.number(json, "wandering", part.wandering());
        json.writeEndObject();
    }

    private void side(String key, SpreadAnswer.Side side) throws IOException {
        NightResult written = side.asWritten();
        json.writeObjectFieldStart(key);
        json.writeObjectFieldStart("asWritten");
        boolean stops = Double.isInfinite(side.all().shortfallHeat().nominal());
        JsonText.number(json, "demand", stops ? Double.NaN : written.demand());
        JsonText.number(json, "shortfallHeat_J", stops ? Double.NaN : written.shortfallHeat());
        JsonText.number(json, "coreHeatDeficitDawn_J", stops ? Double.NaN : written.coreHeatDeficitDawn());
        json.writeStringField("outcome", JsonText.word(written.verdict().outcome()));
        json.writeEndObject();
        json.writeArrayFieldStart("bands");
        for (Cloud cloud : side.clouds()) {
            cloud(cloud);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** An end that is null lies beyond the model's range. */
    private void cloud(Cloud cloud) throws IOException {
        json.writeStartObject();
        json.writeStringField("over", over(cloud));
        json.writeNumberField("draws", cloud.draws());
        json.writeBooleanField("settled", cloud.settled());
        JsonText.number(json, "lastMoved", cloud.moved());
        spread("shortfallHeat_J", cloud.shortfallHeat());
        spread("demand", cloud.demand());
        spread("coreHeatDeficitDawn_J", cloud.deficitDawn());
        spread("coreDawn_degC", cloud.coreDawn());
        json.writeObjectFieldStart("drawsOfTheModelThatCross");
        for (Cloud.Crossed line : Cloud.Crossed.values()) {
            JsonText.number(json, JsonText.word(line), cloud.share(line));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void spread(String key, Spread spread) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "asWritten", spread.nominal());
        JsonText.number(json, "low10", spread.low());
        JsonText.number(json, "middle50", spread.middle());
        JsonText.number(json, "high90", spread.high());
        json.writeEndObject();
    }

    private void drivers() throws IOException {
        json.writeObjectFieldStart("drivers");
        json.writeNumberField("rows", answer.rows());
        json.writeBooleanField("settled", answer.settled());
        json.writeNumberField("runsStopped", answer.stopped());
        for (Map.Entry<Quantity, Map<Driver, Indices.Index>> of :
                answer.indices().entrySet()) {
            json.writeObjectFieldStart(JsonText.word(of.getKey()));
            for (Map.Entry<Driver, Indices.Index> each : of.getValue().entrySet()) {
                json.writeObjectFieldStart(JsonText.word(each.getKey()));
                json.writeStringField("partOf", JsonText.word(each.getKey().doubt()));
                estimate("firstOrder", each.getValue().first());
                estimate("total", each.getValue().total());
                json.writeEndObject();
            }
            estimate(
                    "sumOfFirstOrders",
                    java.util.Objects.requireNonNull(answer.sums().get(of.getKey())));
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void estimate(String key, Indices.Estimate estimate) throws IOException {
        json.writeObjectFieldStart(key);
        JsonText.number(json, "value", estimate.value());
        JsonText.number(json, "low5", estimate.low());
        JsonText.number(json, "high95", estimate.high());
        json.writeEndObject();
    }
}
