package longnight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import longnight.night.NightResult;
import longnight.study.Effect;
import longnight.study.Pocket;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** The folder of a pocket sheet: the sheet, its table, JSON (format {@value #FORMAT}, conventions as in {@link ResultJson}), notes. */
public final class PocketFiles {
    /** Name and version of the format. */
    public static final String FORMAT = "longnight-pocket/1";

    static final String SHEET = "pocket.pdf";
    private static final String TABLE = "pocket.csv";
    private static final String JSON = "pocket.json";

    /** Every file that the folder may hold. */
    public static final List<String> NAMES = List.of(SHEET, TABLE, JSON, Notes.FILE);

    private PocketFiles() {}

    /**
     * All of them.
     *
     * @param day that the sheet carries; null for none
     */
    public static Bundle of(Pocket pocket, Units units, Paper paper, @Nullable LocalDate day) {
        String json = json(pocket);
        return new Bundle(NAMES)
                .sheet(SHEET, () -> PocketSheet.pdf(pocket, units, paper, MadeBy.fingerprint(json), day))
                .file(TABLE, csv(pocket, units))
                .file(JSON, json)
                .notes(Notes.FILE, notes(pocket, units));
    }

    private static String csv(Pocket pocket, Units units) {
        List<String> remarks = List.of(Wording.who(pocket.asPlanned()), Wording.verdict(pocket.asPlanned()));
        return StudyTexts.table(remarks, pocket.cautions(), units, printer -> rows(pocket, units, printer));
    }

    private static void rows(Pocket pocket, Units units, CSVPrinter printer) throws IOException {
        printer.printRecord(
                "mean air" + HourCsv.unit(units, Measure.TEMPERATURE),
                "lowest air" + HourCsv.unit(units, Measure.TEMPERATURE),
                "person",
                "steady wind at 10 m" + HourCsv.unit(units, Measure.WIND),
                "begun",
                "demand [1]",
                "outcome",
                "does not hold from [HH:MM]");
        for (Pocket.Row row : pocket.rows()) {
            for (int person = 0; person < pocket.people().size(); person++) {
                for (int wind = 0; wind < Pocket.WINDS.size(); wind++) {
                    for (boolean damp : new boolean[] {false, true}) {
                        Pocket.Cell cell = row.cell(person, wind, damp);
                        double from = cell.verdict().from();
                        printer.printRecord(
                                Figures.exact(units.value(
                                        Measure.TEMPERATURE, row.air().mean())),
                                Figures.exact(units.value(
                                        Measure.TEMPERATURE, row.air().lowest())),
                                Wording.clean(pocket.people().get(person).name()),
                                Figures.exact(units.value(Measure.WIND, Pocket.WINDS.get(wind))),
                                damp ? "damp" : "dry",
                                Figures.exact(cell.demand()),
                                JsonText.word(cell.verdict().outcome()),
                                Double.isNaN(from) ? "" : Wording.clock(pocket.asPlanned(), from));
                    }
                }
            }
        }
    }

    /** The answer as text, ended by a line feed. */
    public static String json(Pocket pocket) {
        NightResult planned = pocket.asPlanned();
        return StudyTexts.json(FORMAT, pocket.cautions(), json -> {
            json.writeObjectFieldStart("scenario");
            json.writeStringField("title", planned.scenario().title());
            json.writeStringField("night", planned.scenario().nightName());
            json.writeStringField("kit", planned.scenario().kitName());
            json.writeEndObject();
            json.writeStringField("sentence", Wording.verdict(planned));
            JsonText.number(json, "demand", planned.demand());
            JsonText.number(json, "shortfallHeat_J", planned.shortfallHeat());
            json.writeArrayFieldStart("table");
            for (Pocket.Row row : pocket.rows()) {
                row(json, pocket, row);
            }
            json.writeEndArray();
            effects(json, "helps", pocket.helps());
            effects(json, "omissions", pocket.omissions());
            json.writeNumberField("nightsRun", pocket.nights());
        });
    }

    private static void row(JsonGenerator json, Pocket pocket, Pocket.Row row) throws IOException {
        for (int person = 0; person < pocket.people().size(); person++) {
            for (int wind = 0; wind < Pocket.WINDS.size(); wind++) {
                for (boolean damp : new boolean[] {false, true}) {
                    Pocket.Cell cell = row.cell(person, wind, damp);
                    json.writeStartObject();
                    JsonText.number(json, "meanAir_degC", row.air().mean());
                    json.writeStringField("person", pocket.people().get(person).name());
                    JsonText.number(json, "wind10_m_per_s", Pocket.WINDS.get(wind));
                    json.writeStringField("begun", damp ? "damp" : "dry");
                    JsonText.number(json, "demand", cell.demand());
                    json.writeStringField(
                            "outcome", JsonText.word(cell.verdict().outcome()));
                    JsonText.number(json, "from_s", cell.verdict().from());
                    json.writeEndObject();
                }
            }
        }
    }

    private static void effects(JsonGenerator json, String name, List<Effect> effects) throws IOException {
        json.writeArrayFieldStart(name);
        for (Effect effect : effects) {
            json.writeStartObject();
            json.writeStringField("change", JsonText.word(effect.change().kind()));
            json.writeArrayFieldStart("names");
            for (String each : effect.change().names()) {
                json.writeString(each);
            }
            json.writeEndArray();
            JsonText.number(json, "extraHeatSaved_W", effect.extraHeat());
            JsonText.number(json, "shortfallSaved_J", effect.shortfall());
            JsonText.number(json, "massAdded_kg", effect.change().mass());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static String notes(Pocket pocket, Units units) {
        StringBuilder text = new StringBuilder();
        told(pocket, units).forEach(line -> text.append(line).append("\n\n"));
        text.append(Notes.end(pocket.cautions(), pocket.asPlanned().guessed(), units));
        return Wording.clean(text.toString());
    }

    /** What the sheet tells beside its table, on the terminal and in the notes; without the cautions. */
    private static List<String> told(Pocket pocket, Units units) {
        PocketWords words = new PocketWords(pocket, units);
        return List.of(
                Prose.text("pocket.title") + " " + Wording.who(pocket.asPlanned()),
                Wording.verdict(pocket.asPlanned(), units),
                headed("kit", words.kit()),
                headed("when", words.onAndOff()),
                headed("helps", words.helps()),
                headed("omissions", words.omissions()),
                headed("eat", words.food() + " " + words.drill()),
                headed("guessed", words.guessed(false)));
    }

    private static String headed(String head, String text) {
        return Prose.text("pocket.head." + head) + " " + text;
    }

    /** The page on the terminal, lines ended by a line feed. */
    public static String page(Pocket pocket, Units units, Paper paper) {
        List<String> paragraphs = new java.util.ArrayList<>(told(pocket, units));
        paragraphs.add(Prose.text("pocket.sheet", SHEET, paper.name().toLowerCase(Locale.ROOT)));
        paragraphs.add(Prose.text("caution.heading") + ": "
                + pocket.cautions().stream()
                        .map(caution -> Wording.shortText(caution, units))
                        .collect(java.util.stream.Collectors.joining(" ")));
        return Console.paragraphs(paragraphs);
    }
}
