package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import longnight.night.HourRow;
import longnight.night.NightResult;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class DataFilesTest {
    private final NightResult night = NightFixture.failing();

    @Test
    void json_has_what_scripts_count_on() throws Exception {
        JsonNode json = new ObjectMapper().readTree(ResultJson.text(night));
        assertThat(json.at("/format").asText()).isEqualTo("longnight-night/1");
        List<String> keys = new ArrayList<>();
        json.fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .contains(
                        "verdict",
                        "demand",
                        "shortfallHeat",
                        "coreHeatDeficit",
                        "hours",
                        "ledger",
                        "guessed",
                        "cautions",
                        "secondOpinion",
                        "scenario",
                        "trace");
        assertThat(json.at("/verdict/outcome").asText()).isEqualTo("does-not-hold");
        assertThat(json.at("/verdict/fromClock").asText())
                .isEqualTo(Wording.clock(night, night.verdict().from()));
        assertThat(json.at("/demand").doubleValue()).isEqualTo(night.demand());
        assertThat(json.at("/shortfallHeat/total_J").doubleValue()).isEqualTo(night.shortfallHeat());
        assertThat(json.at("/coreHeatDeficit/dawn_J").doubleValue()).isEqualTo(night.coreHeatDeficitDawn());
        assertThat(json.at("/hours")).hasSize(13);
        assertThat(json.at("/hours/0/heatMade_W").isNull()).isTrue();
        assertThat(json.at("/hours/5/lostByWay_W/ground").doubleValue())
                .isEqualTo(night.hours().get(5).lostByWay()[2]);
        assertThat(json.at("/ledger/relativeClosure/heat").doubleValue()).isEqualTo(3.1e-13);
        assertThat(json.at("/guessed")).hasSize(31);
        assertThat(json.at("/cautions/0/code").asText()).isEqualTo("planning-aid");
        assertThat(json.at("/trace/core_degC")).hasSize(night.trace().core().length);
        assertThat(json.at("/secondOpinion/limitedNeutral").booleanValue()).isFalse();
        assertThat(json.at("/secondOpinion/exposureNeutral_h").isNull()).isTrue();
    }

    @Test
    void json_holds_water_food_and_plan() throws Exception {
        NightResult wet = NightFixture.wet();
        JsonNode json = new ObjectMapper().readTree(ResultJson.text(wet));
        assertThat(json.at("/water/pieces")).hasSize(7);
        assertThat(json.at("/water/pieces/2/iceAtDawn_kg").doubleValue())
                .isEqualTo(wet.water().layers().get(2).iceAtDawn());
        assertThat(json.at("/water/cost_J").doubleValue()).isEqualTo(620e3);
        assertThat(json.at("/water/trace/liquidAndIce_kg/hood/0").isNull()).isTrue();
        assertThat(json.at("/water/trace/liquidAndIce_kg/parka"))
                .hasSize(json.at("/water/trace/time_s").size());
        assertThat(json.at("/fuel/carbohydrateAtDawn").doubleValue()).isEqualTo(0.24);
        assertThat(json.at("/day/drillKept_J").doubleValue()).isEqualTo(12e3);
        assertThat(json.at("/hours/2/lostByWay_W/brought").doubleValue()).isEqualTo(-8.7);
        assertThat(json.at("/ledger/lostByWay_J/precipitation").doubleValue()).isEqualTo(12.4 * 6 * 3600);
        JsonNode plan = json.at("/scenario/plan");
        assertThat(plan.at("/phases/0/name").asText()).isEqualTo("march");
        assertThat(plan.at("/phases/0/from_s").doubleValue()).isEqualTo(-10800);
        assertThat(plan.at("/phases/0/fromClock").asText()).isEqualTo("15:30");
        assertThat(plan.at("/phases/0/march/grade_percent").doubleValue()).isEqualTo(8);
        assertThat(plan.at("/phases/1/march").isNull()).isTrue();
        assertThat(plan.at("/intakes/1/drink_degC").doubleValue()).isEqualTo(70);
        assertThat(plan.at("/heatBrought/0/name").asText()).isEqualTo("flask");
        assertThat(plan.at("/damp_kg_kg/base-top").doubleValue()).isEqualTo(0.4);
        JsonNode dry = new ObjectMapper().readTree(ResultJson.text(night));
        assertThat(dry.at("/water").isNull()).isTrue();
        assertThat(dry.at("/scenario/plan/phases")).hasSize(1);
    }

    @Test
    void csv_tells_the_water_of_every_hour() throws Exception {
        assertThat(HourCsv.text(NightFixture.easy()).lines().toList().get(3)).endsWith(",");
        NightResult wet = NightFixture.wet();
        List<String> lines = HourCsv.text(wet).lines().toList();
        assertThat(lines.get(0)).contains("lost by precipitation [W]", "lost by brought [W]");
        assertThat(lines.get(0))
                .contains(",liquid and ice in what is worn [kg],")
                .endsWith(
                        "10 % of the model's draws below [kJ]\",\"core-heat deficit, signed, 90 % of the model's draws below [kJ]\"");
        // at dusk 61 + 34 + 2 + 12 + 6 g; the hood is still in the pack
        assertThat(lines.get(1)).endsWith(",0.115,,");
        List<String> banded = HourCsv.text(wet, BandFixture.of(wet, 40, 1), Units.METRIC)
                .lines()
                .toList();
        assertThat(banded.get(1)).contains(",0.115,-10.0");
        assertThat(banded.get(1).split(",", -1)).hasSameSizeAs(lines.get(1).split(",", -1));
    }

    @Test
    void json_is_plain_and_the_same_twice() {
        assertThat(ResultJson.text(night))
                .isEqualTo(ResultJson.text(NightFixture.failing()))
                .matches("(?s)[\\x20-\\x7e\\n]+")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        assertThat(ResultJson.text(NightFixture.unrun())).doesNotContain("NaN");
    }

    @Test
    void csv_begins_with_units_and_gives_back_its_figures() throws Exception {
        String text = HourCsv.text(night);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            assertThat(parser.getHeaderNames()).allMatch(name -> name.matches(".+ \\[.+]"));
            List<CSVRecord> rows = parser.getRecords();
            assertThat(rows).hasSize(night.hours().size()).allMatch(CSVRecord::isConsistent);
            HourRow hour = night.hours().get(7);
            assertThat(Double.parseDouble(rows.get(7).get("shortfall heat [kJ]")))
                    .isCloseTo(hour.shortfall() / 1e3, within(1e-5 * hour.shortfall() / 1e3)); // six digits
            assertThat(rows.get(7).get("clock [HH:MM]")).isEqualTo("01:30");
            assertThat(rows.get(0).get("heat made [W]")).isEmpty();
        }
        assertThat(text.lines().filter(line -> line.startsWith("# "))).isNotEmpty();
        assertThat(text).startsWith("time since dusk [h],");
    }

    @Test
    void vectors_are_the_same_twice_and_name_a_face_every_reader_has() {
        String svg = new String(Charts.coreHeatDeficit(night).svg(), StandardCharsets.UTF_8);
        assertThat(new String(Charts.coreHeatDeficit(NightFixture.failing()).svg(), StandardCharsets.UTF_8))
                .isEqualTo(svg);
        assertThat(svg)
                .contains("'DejaVu Sans', sans-serif")
                .contains("font-weight:bold")
                .contains("<title")
                .contains("<desc")
                .doesNotContain("Dialog");
        assertThat(new String(Charts.whereTheHeatGoes(night).svg(), StandardCharsets.UTF_8))
                .isEqualTo(new String(Charts.whereTheHeatGoes(night).svg(), StandardCharsets.UTF_8))
                .doesNotContain("Dialog");
    }
}
