package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import longnight.assumption.Guess;
import longnight.body.Person;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.BodySegment;
import longnight.figure.Zone;
import longnight.night.Caution;
import longnight.night.DayReport;
import longnight.night.FuelReport;
import longnight.night.HeatBrought;
import longnight.night.HourRow;
import longnight.night.Intake;
import longnight.night.Ledger;
import longnight.night.March;
import longnight.night.NightPlan;
import longnight.night.NightResult;
import longnight.night.Phase;
import longnight.night.Scenario;
import longnight.night.SecondOpinion;
import longnight.night.Trace;
import longnight.night.Verdict;
import longnight.night.WaterReport;
import longnight.night.Way;
import longnight.study.Band;
import longnight.study.Draws;
import longnight.study.Factor;
import longnight.study.Spread;
import org.jspecify.annotations.Nullable;

/**
 * The whole result as JSON, format {@value #FORMAT}. SI; the unit of every number ends its key ({@code _J}, {@code _W},
 * {@code _degC}, {@code _s} ...; a key without one is a pure number). What is not a number is null. Keys keep their order;
 * letters beyond ASCII are escaped, so that the text passes through any terminal unharmed. A key may be added within a
 * version; none changes its meaning.
 */
public final class ResultJson {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-night/1";

    static final String FILE = "night.json";

    private final NightResult result;
    private final @Nullable Band band;
    private final JsonGenerator json;

    private ResultJson(NightResult result, @Nullable Band band, JsonGenerator json) {
        this.result = result;
        this.band = band;
        this.json = json;
    }

    /** The result without a band as text, ended by a line feed. */
    public static String text(NightResult result) {
        return text(result, null);
    }

    /** The result as text, ended by a line feed. */
    public static String text(NightResult result, @Nullable Band band) {
        return JsonText.of(json -> new ResultJson(result, band, json).write());
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        verdict();
        number("demand", result.demand());
        moment("demandWindowEnd", result.demandTime());
        shortfall();
        deficit();
        band();
        number("wholeBodyDebt_J", result.wholeBodyDebt());
        number("wholeBodyDebt_J_m2", result.wholeBodyDebt() / result.bodyArea());
        number("restHeat_W", result.restHeat());
        number("bodyArea_m2", result.bodyArea());
        number("maximalShivering_W", result.maximalShivering());
        number("kitMass_kg", result.kitMass());
        number("kitResistance_m2K_W", result.kitResistance());
        moment("stopped", result.stopped());
        hours();
        ledger(result.ledger());
        water(result.water());
        fuel(result.fuel());
        day(result.day());
        guessed();
        cautions();
        secondOpinion(result.secondOpinion());
        scenario(result.scenario());
        trace(result.trace());
        json.writeEndObject();
    }

    private void verdict() throws IOException {
        Verdict verdict = result.verdict();
        json.writeObjectFieldStart("verdict");
        json.writeStringField("outcome", word(verdict.outcome()));
        json.writeStringField("sentence", Wording.verdict(result));
        moment("from", verdict.from());
        json.writeArrayFieldStart("reasons");
        for (Verdict.Crossing crossing : verdict.reasons()) {
            json.writeStartObject();
            json.writeStringField("line", word(crossing.line()));
            moment("from", crossing.time());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("atRisk");
        for (Verdict.AtRisk risk : verdict.atRisk()) {
            json.writeStartObject();
            json.writeStringField("part", word(risk.part()));
            moment("from", risk.time());
            number("lowest_degC", risk.lowest());
            number("warning_min", risk.warningMinutes());
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("limits", verdict.limits());
        json.writeBooleanField("extrapolated", verdict.extrapolated());
        json.writeEndObject();
    }

    private void shortfall() throws IOException {
        json.writeObjectFieldStart("shortfallHeat");
        number("total_J", result.shortfallHeat());
        number("total_J_m2", result.shortfallHeat() / result.bodyArea());
        number("paidByHeatMade_J", atEnd(HourRow::paidByHeatMade));
        number("paidByShell_J", atEnd(HourRow::paidByShell));
        number("paidByCore_J", atEnd(HourRow::paidByCore));
        json.writeEndObject();
    }

    private void deficit() throws IOException {
        json.writeObjectFieldStart("coreHeatDeficit");
        number("dawn_J", result.coreHeatDeficitDawn());
        number("worst_J", result.coreHeatDeficitWorst());
        moment("worst", result.worstTime());
        number("deadBand_J", Figures.DEAD_BAND);
        number("letGoToClockAndSleep_J", atEnd(HourRow::letGo));
        json.writeEndObject();
    }

    private void band() throws IOException {
        if (band == null) {
            json.writeNullField("band");
            return;
        }
        json.writeObjectFieldStart("band");
        json.writeStringField("sentence", Wording.band(result, band, Units.METRIC));
        json.writeNumberField("seed", band.seed());
        json.writeNumberField("draws", band.draws());
        json.writeNumberField("holding", band.holding());
        number("shareOfModelThatHolds", (double) band.holding() / band.draws());
        json.writeNumberField("leftModelRange", band.stopped());
        number("longestStep_s", band.settings().step());
        number("longestLook_s", band.settings().boundary());
        spread("demand", band.demand());
        spread("shortfallHeat_J", band.shortfallHeat());
        spread("coreHeatDeficitDawn_J", band.deficitDawn());
        spread("coreHeatDeficitWorst_J", band.deficitWorst());
        spread("coreDawn_degC", band.coreDawn());
        spread("lowestHand_degC", band.lowestHand());
        spread("lowestFoot_degC", band.lowestFoot());
        if (result.water() != null) {
            spread("waterDawn_kg", band.waterDawn());
        }
        json.writeArrayFieldStart("course");
        for (int i = 0; i < band.times().length; i++) {
            json.writeStartObject();
            moment("time", band.times()[i]);
            spread("coreHeatDeficit_J", band.deficit().get(i));
            json.writeEndObject();
        }
        json.writeEndArray();
        drawn();
        json.writeEndObject();
    }

    private void drawn() throws IOException {
        json.writeObjectFieldStart("drawn");
        number("exponent", Draws.PEAK);
        number("shareOfSecondShiveringLaw", Draws.GATED_SHARE);
        number("skinMisfit_K", Draws.SKIN_MISFIT);
        json.writeArrayFieldStart("constants");
        for (Factor factor : Draws.factors()) {
            if (factor.members().isEmpty()) {
                continue;
            }
            json.writeStartArray(); // those that move together
            for (Factor.Member member : factor.members()) {
                json.writeStartObject();
                json.writeStringField("name", member.parameter().name());
                number("nominal", member.parameter().nominal());
                number("low", member.low());
                number("high", member.high());
                json.writeStringField("unit", member.parameter().unit());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void spread(String key, Spread spread) throws IOException {
        JsonText.spread(json, key, spread);
    }

    private void hours() throws IOException {
        json.writeArrayFieldStart("hours");
        for (HourRow row : result.hours()) {
            json.writeStartObject();
            number("time_s", row.time());
            json.writeStringField("clock", Figures.clock(row.clock()));
            number("air_degC", row.airCelsius());
            number("windAtBody_m_s", row.windAtBody());
            number("heatMade_W", row.heatMade());
            byConstant("lostByWay_W", Way.values(), row.lostByWay());
            byConstant("lostByPart_W", BodySegment.values(), row.lostByPart());
            number("losses_W", row.losses());
            number("shortfallHeat_J", row.shortfall());
            number("paidByHeatMade_J", row.paidByHeatMade());
            number("paidByShell_J", row.paidByShell());
            number("paidByCore_J", row.paidByCore());
            number("coreHeatDeficit_J", row.coreHeatDeficit());
            number("letGoToClockAndSleep_J", row.letGo());
            number("demand", row.demand());
            number("core_degC", row.coreCelsius());
            number("rectal_degC", row.rectalCelsius());
            number("meanSkin_degC", row.meanSkin());
            number("hand_degC", row.hand());
            number("foot_degC", row.foot());
            number("sleep", row.sleep());
            number("shivering_W", row.shivering());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void ledger(Ledger ledger) throws IOException {
        json.writeObjectFieldStart("ledger");
        number("made_J", ledger.made());
        number("rest_J", ledger.rest());
        byConstant("lostByWay_J", Way.values(), ledger.lostByWay());
        byConstant("lostByPart_J", BodySegment.values(), ledger.lostByPart());
        number("breath_J", ledger.breath());
        number("storedCore_J", ledger.storedCore());
        number("storedShell_J", ledger.storedShell());
        number("storedClothing_J", ledger.storedClothing());
        number("turnedOver_J", ledger.turnedOver());
        json.writeObjectFieldStart("relativeClosure");
        number("heat", ledger.heatClosure());
        number("parts", ledger.partClosure());
        number("payers", ledger.payerClosure());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void water(@Nullable WaterReport water) throws IOException {
        if (water == null) {
            json.writeNullField("water");
            return;
        }
        json.writeObjectFieldStart("water");
        json.writeArrayFieldStart("pieces");
        for (WaterReport.Layer piece : water.layers()) {
            json.writeStartObject();
            json.writeStringField("id", piece.id());
            number("dryMass_kg", piece.dryMass());
            number("liquidAtDusk_kg", piece.liquidAtDusk());
            number("iceAtDusk_kg", piece.iceAtDusk());
            number("boundAtDusk_kg", piece.boundAtDusk());
            number("liquidAtDawn_kg", piece.liquidAtDawn());
            number("iceAtDawn_kg", piece.iceAtDawn());
            number("boundAtDawn_kg", piece.boundAtDawn());
            json.writeEndObject();
        }
        json.writeEndArray();
        number("before_kg", water.before());
        number("fromSkin_kg", water.fromSkin());
        number("fromOutside_kg", water.fromOutside());
        number("toAir_kg", water.toAir());
        number("drained_kg", water.drained());
        number("heldAtDusk_kg", water.heldAtDusk());
        number("heldAtDawn_kg", water.heldAtDawn());
        number("cost_J", water.cost());
        number("closure_kg", water.closure());
        json.writeObjectFieldStart("trace");
        series("time_s", water.traceTime());
        json.writeObjectFieldStart("liquidAndIce_kg");
        for (int i = 0; i < water.trace().length; i++) {
            series(water.layers().get(i).id(), water.trace()[i]);
        }
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndObject();
    }

    private void fuel(@Nullable FuelReport fuel) throws IOException {
        if (fuel == null) {
            json.writeNullField("fuel");
            return;
        }
        json.writeObjectFieldStart("fuel");
        number("made_J", fuel.made());
        number("aboveRest_J", fuel.aboveRest());
        number("eaten_J", fuel.eaten());
        number("carbohydrateAtDusk", fuel.storeAtDusk());
        number("carbohydrateAtDawn", fuel.storeAtDawn());
        number("lowestPeakOfShivering", fuel.lowestPeak());
        number("waterLost_kg", fuel.waterLost());
        number("sweatBefore_kg", fuel.sweatBefore());
        json.writeEndObject();
    }

    private void day(@Nullable DayReport day) throws IOException {
        if (day == null) {
            json.writeNullField("day");
            return;
        }
        json.writeObjectFieldStart("day");
        number("sweatingAfter_s", day.sweatingAfter());
        number("coolingAfter_s", day.coolingAfter());
        number("drillMade_J", day.drillMade());
        number("drillLost_J", day.drillLost());
        number("drillKept_J", day.drillKept());
        json.writeEndObject();
    }

    private void guessed() throws IOException {
        json.writeArrayFieldStart("guessed");
        for (Guess guess : result.guessed()) {
            json.writeStartObject();
            json.writeStringField("subject", guess.subject());
            json.writeStringField("quantity", guess.quantity());
            if (Double.isNaN(guess.value())) {
                json.writeStringField("word", guess.word());
            } else {
                number("value", guess.value());
                json.writeStringField("unit", guess.unit());
            }
            json.writeStringField("reason", guess.reason());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void cautions() throws IOException {
        json.writeArrayFieldStart("cautions");
        for (Caution caution : result.cautions()) {
            json.writeStartObject();
            json.writeStringField("code", word(caution));
            json.writeStringField("text", Wording.fullText(caution));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void secondOpinion(@Nullable SecondOpinion opinion) throws IOException {
        if (opinion == null) {
            json.writeNullField("secondOpinion");
            return;
        }
        json.writeObjectFieldStart("secondOpinion");
        json.writeStringField("standard", "ISO 11079:2007");
        number("heat_W_m2", opinion.heat());
        number("air_degC", opinion.airCelsius());
        number("wind_m_s", opinion.wind());
        number("requiredMinimal_m2K_W", opinion.requiredMinimal());
        number("requiredNeutral_m2K_W", opinion.requiredNeutral());
        number("available_m2K_W", opinion.available());
        json.writeBooleanField("limitedMinimal", Double.isFinite(opinion.exposureMinimal()));
        number("exposureMinimal_h", opinion.exposureMinimal());
        json.writeBooleanField("limitedNeutral", Double.isFinite(opinion.exposureNeutral()));
        number("exposureNeutral_h", opinion.exposureNeutral());
        json.writeBooleanField("insideRange", opinion.insideRange());
        json.writeEndObject();
    }

    private void scenario(Scenario scenario) throws IOException {
        json.writeObjectFieldStart("scenario");
        json.writeStringField("title", scenario.title());
        json.writeStringField("night", scenario.nightName());
        json.writeStringField("kit", scenario.kitName());
        person(scenario.person());
        plan(scenario.plan());
        outfit(scenario.outfit());
        if (scenario.surroundings().ground() != null) {
            json.writeStringField("ground", scenario.surroundings().ground().name());
        }
        texts("limits", scenario.limits());
        json.writeEndObject();
    }

    private void person(Person person) throws IOException {
        json.writeObjectFieldStart("person");
        json.writeStringField("name", person.name());
        json.writeStringField("sex", word(person.sex()));
        number("age_years", person.age());
        number("height_m", person.height());
        number("mass_kg", person.mass());
        number("bodyFat_percent", person.bodyFat());
        number("peakOxygen_mL_kg_min", person.peakOxygen());
        number("heatFactor", person.heatOffset());
        json.writeEndObject();
    }

    private void plan(NightPlan plan) throws IOException {
        json.writeObjectFieldStart("plan");
        json.writeStringField("start", Figures.clock(plan.startOfDay()));
        number("startOfDay_s", plan.startOfDay());
        number("duration_s", plan.duration());
        json.writeStringField("posture", word(plan.firstOfNight().posture()));
        json.writeBooleanField("sleepAllowed", plan.firstOfNight().sleepAllowed());
        json.writeBooleanField("clockActive", plan.clockActive());
        number("imposedHeat_W_m2", plan.imposedHeat());
        json.writeArrayFieldStart("phases");
        for (Phase phase : plan.phases()) {
            phase(phase);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("intakes");
        for (Intake intake : plan.intakes()) {
            json.writeStartObject();
            moment("at", intake.time());
            number("energy_J", intake.energy());
            number("carbohydrate_J", intake.carbohydrate());
            number("drink_kg", intake.drink());
            number("drink_degC", intake.drink() > 0 ? intake.celsius() : Double.NaN);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("heatBrought");
        for (HeatBrought warm : plan.heats()) {
            json.writeStartObject();
            json.writeStringField("name", warm.name());
            moment("at", warm.time());
            number("bottle_kg", warm.bottle());
            number("bottle_degC", warm.bottle() > 0 ? warm.celsius() : Double.NaN);
            number("pack_J", warm.heat());
            number("packDuration_s", warm.duration());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("damp_kg_kg");
        for (Map.Entry<String, Double> piece : new TreeMap<>(plan.damp()).entrySet()) {
            number(piece.getKey(), piece.getValue());
        }
        json.writeEndObject();
        number("carbohydrateAtStart", plan.fuel());
        json.writeEndObject();
    }

    private void phase(Phase phase) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", phase.name());
        moment("from", phase.from());
        moment("to", phase.to());
        json.writeStringField("posture", word(phase.posture()));
        json.writeBooleanField("sleepAllowed", phase.sleepAllowed());
        March march = phase.march();
        if (march == null) {
            json.writeNullField("march");
        } else {
            json.writeObjectFieldStart("march");
            number("speed_m_s", march.speed());
            number("grade_percent", march.grade());
            number("load_kg", march.load());
            number("surfaceFactor", march.surface());
            json.writeEndObject();
        }
        number("drillShare", phase.drillShare());
        number("drillHeat_W_kg", phase.drillHeat());
        number("huddleShare", phase.huddle());
        number("windShare", phase.windShare());
        json.writeBooleanField("underRoof", phase.underRoof());
        Outfit worn = phase.outfit() == null ? result.scenario().outfit() : phase.outfit();
        texts(
                "worn",
                worn instanceof Outfit.Kit kit
                        ? kit.pieces().stream()
                                .map(garment -> garment.spec().id())
                                .toList()
                        : List.of());
        json.writeEndObject();
    }

    private void outfit(Outfit outfit) throws IOException {
        json.writeObjectFieldStart("outfit");
        if (outfit instanceof Outfit.Kit kit) {
            json.writeArrayFieldStart("pieces");
            for (Garment garment : kit.pieces()) {
                json.writeStartObject();
                json.writeStringField("id", garment.spec().id());
                json.writeStringField("name", garment.spec().name());
                json.writeStringField("kind", word(garment.spec().kind()));
                number("mass_kg", garment.spec().mass());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("pads");
            for (Pad pad : kit.pads()) {
                json.writeStartObject();
                json.writeStringField("id", pad.id());
                json.writeStringField("name", pad.name());
                number("resistance_m2K_W", pad.resistance());
                number("area_m2", pad.area());
                number("mass_kg", pad.mass());
                json.writeEndObject();
            }
            json.writeEndArray();
        } else if (outfit instanceof Outfit.Given given) {
            json.writeObjectFieldStart("resistance_m2K_W");
            for (Zone zone : Zone.values()) {
                number(word(zone), given.resistance().getOrDefault(zone, 0.0));
            }
            json.writeEndObject();
            number("moisturePermeabilityIndex", given.moisturePermeability());
        }
        json.writeEndObject();
    }

    private void trace(Trace trace) throws IOException {
        json.writeObjectFieldStart("trace");
        series("time_s", trace.time());
        series("shortfallHeat_J", trace.shortfall());
        series("paidByHeatMade_J", trace.paidByHeatMade());
        series("paidByShell_J", trace.paidByShell());
        series("paidByCore_J", trace.paidByCore());
        series("coreHeatDeficit_J", trace.coreHeatDeficit());
        series("lineAt35_J", trace.lineAt35());
        series("lineAt32_J", trace.lineAt32());
        series("demand", trace.demand());
        series("core_degC", trace.core());
        series("meanSkin_degC", trace.meanSkin());
        series("hand_degC", trace.hand());
        series("foot_degC", trace.foot());
        json.writeEndObject();
    }

    private void series(String key, double[] values) throws IOException {
        json.writeArrayFieldStart(key);
        for (double value : values) {
            number(value);
        }
        json.writeEndArray();
    }

    private void byConstant(String key, Enum<?>[] constants, double[] values) throws IOException {
        if (values.length == 0) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        for (Enum<?> constant : constants) {
            number(word(constant), values[constant.ordinal()]);
        }
        json.writeEndObject();
    }

    private double atEnd(ToDoubleFunction<HourRow> column) {
        return Wording.hasRun(result) ? column.applyAsDouble(Wording.lastHour(result)) : Double.NaN;
    }

    /** A moment of the night, as seconds since dusk and as local clock; null for both when it never came. */
    private void moment(String key, double time) throws IOException {
        number(key + "_s", time);
        if (Double.isFinite(time)) {
            json.writeStringField(key + "Clock", Wording.clock(result, time));
        } else {
            json.writeNullField(key + "Clock");
        }
    }

    private void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void number(String key, double value) throws IOException {
        JsonText.number(json, key, value);
    }

    private void number(double value) throws IOException {
        number(json, value);
    }

    private static void number(JsonGenerator json, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumber(value);
        } else {
            json.writeNull();
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
