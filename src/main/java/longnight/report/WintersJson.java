package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import longnight.assumption.Guess;
import longnight.night.Verdict;
import longnight.study.DesignNight;
import longnight.study.ExpectedCold;
import longnight.study.KitNight;
import longnight.study.RecordedNight;
import longnight.study.Winter;
import longnight.study.Winters;

/** A station's record as JSON, format {@value #FORMAT}; units and letters as in {@link ResultJson}. */
final class WintersJson {
    static final String FORMAT = "longnight-winters/1";

    private final Winters answer;
    private final JsonGenerator json;

    private WintersJson(Winters answer, JsonGenerator json) {
        this.answer = answer;
        this.json = json;
    }

    static String text(Winters answer) {
        return StudyTexts.json(FORMAT, answer.cautions(), json -> new WintersJson(answer, json).write());
    }

    private void write() throws IOException {
        json.writeStringField("headline", new WintersPage(answer, Units.METRIC).headline());
        json.writeStringField("station", answer.station());
        json.writeBooleanField("typicalYear", answer.typicalYear());
        json.writeBooleanField("hourly", answer.hourly());
        expected();
        json.writeArrayFieldStart("winters");
        for (Winter winter : answer.winters()) {
            json.writeStartObject();
            json.writeNumberField("year", winter.year());
            number("minimum_degC", winter.minimum());
            json.writeStringField("date", WintersPage.day(answer, winter.date()));
            number("coverage", winter.coverage());
            json.writeBooleanField("complete", winter.complete());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("designNights");
        for (int i = 0; i < answer.designs().size(); i++) {
            design(
                    answer.designs().get(i),
                    answer.kit() == null ? null : answer.designRuns().get(i));
        }
        json.writeEndArray();
        if (answer.kit() != null) {
            json.writeStringField("kit", answer.kit().kitName());
            json.writeStringField("person", answer.kit().person().name());
            number("heatFactor", answer.kit().person().heatOffset());
        }
        json.writeNumberField("nightsLeftOut", answer.incomplete());
        json.writeArrayFieldStart("nightsWorstFirst");
        for (KitNight night : answer.nights()) {
            json.writeStartObject();
            weather(night.night());
            kit(night);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void expected() throws IOException {
        ExpectedCold expected = answer.expected();
        if (expected == null) {
            json.writeNullField("expected");
            return;
        }
        json.writeObjectFieldStart("expected");
        json.writeNumberField("wintersCounted", expected.winters().size());
        json.writeNumberField("seed", expected.seed());
        json.writeNumberField("draws", expected.draws());
        number("band", ExpectedCold.BAND);
        number("gumbelMode_degC", expected.gumbel().mode());
        number("gumbelScale_K", expected.gumbel().scale());
        if (expected.gev() != null) {
            number("gevLocation_degC", expected.gev().location());
            number("gevScale_K", expected.gev().scale());
            number("gevShape", expected.gev().shape());
        }
        number("trend_K_10years", expected.trend());
        number("trendStandardError_K_10years", expected.trendError());
        json.writeArrayFieldStart("lines");
        for (ExpectedCold.Line line : expected.lines()) {
            json.writeStartObject();
            number("years", line.years());
            number("gumbel_degC", line.gumbel());
            number("low_degC", line.low());
            number("high_degC", line.high());
            number("gev_degC", line.gev());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void design(DesignNight design, @org.jspecify.annotations.Nullable KitNight run) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", word(design.kind()));
        json.writeStringField("origin", word(design.origin()));
        json.writeNumberField("chosenFrom", design.of());
        weather(design.summary());
        json.writeArrayFieldStart("guessed");
        for (Guess guess : design.guesses()) {
            json.writeString(guess.quantity() + ": " + Figures.guessedValue(guess, 3) + " " + guess.unit() + " ("
                    + guess.reason() + ")");
        }
        json.writeEndArray();
        if (run != null) {
            kit(run);
        }
        json.writeEndObject();
    }

    private void weather(RecordedNight night) throws IOException {
        json.writeStringField("evening", WintersPage.day(answer, night.date()));
        number("meanAir_degC", night.meanAir());
        number("lowestAir_degC", night.lowestAir());
        number("meanWind_m_s", night.meanWind());
        number("meanCloud", night.meanCloud());
        number("precipitation_mm", night.rain());
        json.writeBooleanField("cloudGuessed", night.cloudUnknown());
        json.writeBooleanField("precipitationGuessed", night.rainUnknown());
    }

    private void kit(KitNight night) throws IOException {
        json.writeStringField("outcome", word(night.outcome()));
        number("demand", night.demand());
        number("shortfallHeat_J", night.shortfall());
        number("coreHeatDeficit_J", night.deficit());
        number("stopped_s", night.stopped());
        json.writeArrayFieldStart("atRisk");
        for (Verdict.Part part : night.atRisk()) {
            json.writeString(word(part));
        }
        json.writeEndArray();
    }

    private void number(String key, double value) throws IOException {
        StudyTexts.number(json, key, value);
    }

    private static String word(Enum<?> constant) {
        return StudyTexts.word(constant);
    }
}
