package longnight.scenario;

import static longnight.scenario.Key.clock;
import static longnight.scenario.Key.each;
import static longnight.scenario.Key.names;
import static longnight.scenario.Key.parts;
import static longnight.scenario.Key.quantity;
import static longnight.scenario.Key.section;
import static longnight.scenario.Key.sections;
import static longnight.scenario.Key.text;
import static longnight.scenario.Key.word;
import static longnight.scenario.Key.wordOrSection;
import static longnight.scenario.Key.yesNo;

import java.util.List;
import longnight.body.Person;
import longnight.body.law.Drill;
import longnight.body.law.Huddle;
import longnight.body.law.WalkingSurface;
import longnight.clothing.Fabric;
import longnight.clothing.FaceTightness;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.NightLog;
import longnight.outdoors.SiteWords;
import longnight.proof.Check;
import longnight.proof.Reading;
import longnight.quantity.Dimension;

/** Every key of every file of ours. A value outside a range given here is impossible, and refused. */
final class Tables {
    private static final List<String> PLACE_WORDS =
            SiteWords.exposures().stream().map(SiteWords.Exposure::word).toList();
    private static final List<String> GROUND_WORDS =
            SiteWords.floors().stream().map(floor -> floor.ground().name()).toList();

    static final Table PERSON = Table.of(
            "a person",
            text("name", "name shown in results").must(),
            word("sex", Person.Sex.class, "for the formulas of resting heat and body fat")
                    .must(),
            quantity("age", Dimension.AGE, "0 years", "120 years", "age").must(),
            quantity("height", Dimension.LENGTH, "50 cm", "250 cm", "height without shoes")
                    .must(),
            quantity("mass", Dimension.MASS, "10 kg", "300 kg", "mass without clothes")
                    .must(),
            quantity("body-fat", Dimension.FRACTION, "4 %", "60 %", "share of fat in the body's mass; else from build"),
            word("build", PersonReader.Build.class, "how fat for the height and mass; needless beside body-fat"),
            quantity(
                    "fitness",
                    Dimension.OXYGEN_UPTAKE,
                    "15 mL/kg/min",
                    "90 mL/kg/min",
                    "largest oxygen uptake; else from sex, age and mass"),
            quantity(
                    "heat-production",
                    Dimension.FRACTION,
                    "80 %",
                    "120 %",
                    "this person's heat production against the usual: less than 100 % for one who always runs cold"));

    static final Table GROUND = Table.of(
            "a ground",
            text("name", "word shown in results").must(),
            quantity("conductivity", Dimension.CONDUCTIVITY, "0.02 W/mK", "5 W/mK", "thermal conductivity")
                    .must(),
            quantity(
                            "heat-capacity",
                            Dimension.VOLUMETRIC_HEAT_CAPACITY,
                            "20 kJ/m3K",
                            "5000 kJ/m3K",
                            "heat capacity per volume")
                    .must(),
            quantity(
                            "cooling",
                            Dimension.FRACTION,
                            "0 %",
                            "100 %",
                            "how far its surface falls below the air on a clear night, as a share of what snow does")
                    .must(),
            yesNo("snow", "whether the surface is snow").must());

    static final Table SITE = Table.of(
            "a site",
            text("name", "name of the place, shown in results"),
            word("place", PLACE_WORDS, "kind of place; sets the keys that follow where they are not given"),
            quantity("altitude", Dimension.LENGTH, "-400 m", "6000 m", "height above the sea"),
            quantity("roughness", Dimension.LENGTH, "0.0001 m", "2 m", "roughness length of the country around"),
            quantity("shelter", Dimension.FRACTION, "3 %", "100 %", "share of the wind that the shelter lets through"),
            quantity("sky", Dimension.FRACTION, "0 %", "100 %", "share of the sky seen through branches or roof"),
            quantity("horizon", Dimension.ANGLE, "0°", "85°", "height of hills or trees all around"),
            quantity(
                    "temperature-offset",
                    Dimension.TEMPERATURE_DIFFERENCE,
                    "-15 K",
                    "15 K",
                    "air at the place less air of the forecast or record"),
            quantity(
                    "ground-temperature",
                    Dimension.TEMPERATURE,
                    "-40 °C",
                    "40 °C",
                    "of the undisturbed ground; at most 0 °C under snow"),
            wordOrSection("ground", GROUND_WORDS, GROUND, "what is under the person")
                    .must());

    static final Table WEATHER_ROW = Table.of(
            "a row of the weather",
            clock("time", "clock time").must(),
            quantity("air", Dimension.TEMPERATURE, "-90 °C", "50 °C", "air temperature in the shade")
                    .must(),
            quantity("wind", Dimension.SPEED, "0 m/s", "60 m/s", "mean wind in the open, 10 m above the ground")
                    .must(),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "relative humidity over liquid water"),
            quantity("cloud", Dimension.CLOUD, "0 %", "100 %", "share of the sky covered"),
            quantity(
                    "precipitation",
                    Dimension.PRECIPITATION,
                    "0 mm/h",
                    "100 mm/h",
                    "rain or melted snow from this time on"),
            quantity("pressure", Dimension.PRESSURE, "450 hPa", "1100 hPa", "pressure at the place, not at sea level"),
            quantity(
                    "sky-radiation",
                    Dimension.HEAT_FLUX,
                    "50 W/m2",
                    "600 W/m2",
                    "long-wave radiation that comes down from the whole sky"));

    static final Table LOG_ROW = Table.of(
            "a row of a night's log",
            text("time", "clock time, or date and clock time").must(),
            quantity("air", Dimension.TEMPERATURE, "-90 °C", "50 °C", "air temperature at the place, in the shade"),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "relative humidity over liquid water"),
            quantity("wind", Dimension.SPEED, "0 m/s", "60 m/s", "mean wind in the open, 10 m above the ground"),
            quantity("core", Dimension.TEMPERATURE, "30 °C", "42 °C", "of the body's core, from a pill or probe"),
            quantity("skin", Dimension.TEMPERATURE, "0 °C", "42 °C", "of the skin, or under the clothes at the trunk"),
            word("note", NightLog.Feeling.class, "what was felt or seen"));

    static final Table WEATHER = Table.of(
            "a weather",
            text("name", "name of the night, shown in results"),
            sections("table", WEATHER_ROW, "the night row by row"),
            text("file", "the night row by row, in a CSV file"),
            text("record", "an hourly record of a year, an EPW file"),
            text("night", "night of the record: month and day of its evening, or coldest"),
            quantity("max", Dimension.TEMPERATURE, "-90 °C", "50 °C", "highest temperature of the day before"),
            quantity("min", Dimension.TEMPERATURE, "-90 °C", "50 °C", "lowest temperature of the night"),
            clock("sunset", "with max and min"),
            clock("sunrise", "with max and min"),
            quantity("wind", Dimension.SPEED, "0 m/s", "60 m/s", "with max and min: mean wind, 10 m above the ground"),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "with max and min: relative humidity at sunset"),
            quantity("cloud", Dimension.CLOUD, "0 %", "100 %", "with max and min: share of the sky covered"));

    static final Table WALK = Table.of(
            "a walk",
            quantity("speed", Dimension.SPEED, "0.1 m/s", "1.96 m/s", "along the path")
                    .must(),
            quantity("grade", Dimension.FRACTION, "-40 %", "45 %", "rise over run, downhill negative")
                    .must(),
            quantity("load", Dimension.MASS, "0 kg", "70 kg", "everything worn and carried")
                    .must(),
            word("surface", WalkingSurface.class, "what is walked on; or footprint"),
            quantity("footprint", Dimension.LENGTH, "0 cm", "35 cm", "how deep a foot sinks into the snow"));

    static final Table DRILL = Table.of(
            "a drill",
            word("effort", Drill.class, "how hard").must(),
            quantity("each-hour", Dimension.TIME, "1 min", "60 min", "time of every hour spent in it")
                    .must());

    static final Table SHELTER = Table.of(
            "a shelter",
            quantity("wind", Dimension.FRACTION, "3 %", "100 %", "share of the wind at the place that it lets through")
                    .must(),
            yesNo("roof", "whether it keeps off rain and snow").must());

    static final Table PHASE = Table.of(
            "a phase",
            text("name", "name shown in results"),
            clock("from", "when it begins; at the end of the one before when missing"),
            clock("to", "when it ends"),
            quantity("duration", Dimension.TIME, "1 min", "20 h", "how long, in place of to"),
            section("walk", WALK, "for a march"),
            word("posture", Posture.class, "posture held"),
            yesNo("sleep", "whether the person may sleep"),
            names("wear", "ids of the kit's pieces worn, from the skin outwards; or kinds, as in all that follow"),
            names("off", "ids or kinds of the pieces taken off, against the phase before"),
            names("on", "ids of the pieces put on, or kinds of those worn at night"),
            each("swap", "piece by piece, \"{worn: put-on}\""),
            names("open", "ids or kinds of worn pieces whose front is open in this phase"),
            section("drill", DRILL, "exercise on the spot"),
            section("shelter", SHELTER, "shelter found"),
            word("huddle", Huddle.class, "with partners in touch"));

    static final Table MEAL = Table.of(
            "a meal",
            clock("at", "clock time").must(),
            quantity("energy", Dimension.ENERGY, "1 kJ", "20 MJ", "metabolisable energy, as on the label")
                    .must(),
            quantity("carbohydrate", Dimension.FRACTION, "0 %", "100 %", "share of that energy"));

    static final Table DRINK = Table.of(
            "a drink",
            clock("at", "clock time").must(),
            quantity("volume", Dimension.VOLUME, "0.01 L", "2 L", "how much; or mass"),
            quantity("mass", Dimension.MASS, "10 g", "2 kg", "how much"),
            quantity("temperature", Dimension.TEMPERATURE, "0 °C", "100 °C", "when drunk")
                    .must(),
            quantity("energy", Dimension.ENERGY, "0 kJ", "10 MJ", "metabolisable energy; none when missing"),
            quantity("carbohydrate", Dimension.FRACTION, "0 %", "100 %", "share of that energy"));

    static final Table WARM = Table.of(
            "a warm thing",
            text("name", "name shown in results"),
            clock("at", "clock time at which it is put inside the clothing, at the trunk")
                    .must(),
            word("kind", PlanReader.Warm.class, "bottle of water, pack of iron powder, or pack that sets")
                    .must(),
            quantity("mass", Dimension.MASS, "5 g", "3 kg", "of the water, the iron or the pack")
                    .must(),
            quantity("temperature", Dimension.TEMPERATURE, "0 °C", "100 °C", "of a bottle"),
            quantity("duration", Dimension.TIME, "5 min", "20 h", "over which a pack gives its heat"));

    static final Table PLAN = Table.of(
            "a plan",
            clock("from", "when the person settles down").must(),
            clock("to", "when the person gets up"),
            quantity("duration", Dimension.TIME, "0.5 h", "20 h", "how long, in place of to"),
            word("posture", Posture.class, "posture held, where no phase says otherwise")
                    .must(),
            yesNo("sleep", "whether the person may sleep, where no phase says otherwise")
                    .must(),
            yesNo("daily-rhythm", "whether the body's clock runs; no in laboratory cases only"),
            sections(
                    "before",
                    PHASE,
                    "what was done before, phase by phase, each with its duration, the last up to from"),
            sections("phases", PHASE, "the night phase by phase, without holes; else one phase"),
            sections("meals", MEAL, "what is eaten"),
            sections("drinks", DRINK, "what is drunk"),
            sections("warm", WARM, "bottles and heat packs"),
            word("fuel", PlanReader.FuelState.class, "how much carbohydrate is in the body at the start of the plan"),
            each("damp", "water in a piece at the start, \"{piece: 30 %}\" of its dry mass or \"{piece: 80 g}\""));

    static final Table GARMENT = Table.of(
            "a garment",
            text("id", "short name, used in kits").must(),
            text("name", "name shown in results"),
            word("kind", GarmentKind.class, "what it is").must(),
            quantity("mass", Dimension.MASS, "5 g", "6 kg", "mass of the whole piece")
                    .must(),
            text("fill", "batt: mass per area; down: mass of all the down in the piece"),
            word("fill-type", WardrobeReader.FillType.class, "what it is filled with"),
            quantity("fill-power", Dimension.FILL_POWER, "350 in3/oz", "1000 in3/oz", "of down"),
            parts("fill-by-zone", Zone.class, Dimension.AREAL_MASS, "20 g/m2", "600 g/m2", "batt where it differs"),
            quantity(
                    "construction",
                    Dimension.FRACTION,
                    "30 %",
                    "100 %",
                    "share of the down's free warmth that the sewing leaves"),
            word("fabric", Fabric.class, "cloth, or face cloth of a filled piece"),
            word("face", FaceTightness.class, "blow through it: nothing, hard, easy"),
            yesNo("hood", "has a hood, worn up"),
            parts("coverage", Zone.class, Dimension.FRACTION, "0 %", "100 %", "covered part, as in 0 % to 60 %"),
            quantity("room", Dimension.LENGTH, "0 mm", "100 mm", "room left under it for what is worn below"),
            quantity("thickness", Dimension.LENGTH, "0.05 mm", "150 mm", "thickness, lightly loaded"),
            quantity("resistance", Dimension.THERMAL_RESISTANCE, "0 m2K/W", "3 m2K/W", "of the material, flat"),
            quantity(
                    "vapour-resistance",
                    Dimension.EVAPORATIVE_RESISTANCE,
                    "0 m2Pa/W",
                    "100000 m2Pa/W",
                    "of the material"),
            quantity("air-permeability", Dimension.AIR_PERMEABILITY, "0 L/m2/s", "5000 L/m2/s", "at 100 Pa"),
            word("finish", GarmentSpec.Finish.class, "state of the water-repellent finish"),
            quantity("packed-volume", Dimension.VOLUME, "0.05 L", "60 L", "in its bag"),
            text("price", "with the three letters of its money, as in 120 EUR; one money in a wardrobe"));

    static final Table PAD = Table.of(
            "a pad",
            text("id", "short name, used in kits").must(),
            text("name", "name shown in results"),
            quantity("mass", Dimension.MASS, "5 g", "5 kg", "mass").must(),
            quantity("area", Dimension.AREA, "0.02 m2", "2 m2", "area; or length and width"),
            quantity("length", Dimension.LENGTH, "10 cm", "220 cm", "length"),
            quantity("width", Dimension.LENGTH, "10 cm", "90 cm", "width"),
            quantity("resistance", Dimension.THERMAL_RESISTANCE, "0.01 m2K/W", "3 m2K/W", "under the body's weight"),
            quantity(
                    "thickness",
                    Dimension.LENGTH,
                    "2 mm",
                    "100 mm",
                    "of closed-cell foam, when the resistance is unknown"),
            quantity("heat-capacity", Dimension.AREAL_HEAT_CAPACITY, "0 J/m2K", "20000 J/m2K", "heat capacity"));

    static final Table WARDROBE = Table.of(
            "a wardrobe",
            sections("pieces", GARMENT, "the garments").must(),
            sections("pads", PAD, "what there is to sit or lie on"));

    static final Table KIT = Table.of(
            "a kit",
            text("name", "name shown in results").must(),
            text("wardrobe", "file with the pieces, YAML or CSV").must(),
            names("worn", "ids of the pieces worn, from the skin outwards").must(),
            names("carried", "ids of pieces in the pack, for phases of the plan"),
            names("pads", "ids of the pads under the body"),
            yesNo("layered", "yes to wear two outer parkas, or two pairs of boots, over each other"));

    static final Table STEP = Table.of(
            "a step of the laboratory",
            quantity("at", Dimension.TIME, "0 h", "20 h", "time from the start").must(),
            quantity("air", Dimension.TEMPERATURE, "-90 °C", "50 °C", "air temperature")
                    .must(),
            quantity("radiant", Dimension.TEMPERATURE, "-90 °C", "50 °C", "of the walls; as the air when missing"),
            quantity("wind", Dimension.SPEED, "0 m/s", "30 m/s", "air speed at the body")
                    .must(),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "relative humidity over liquid water")
                    .must());

    static final Table LABORATORY = Table.of(
            "a laboratory",
            text("name", "name shown in results"),
            quantity("air", Dimension.TEMPERATURE, "-90 °C", "50 °C", "air temperature, when it stays"),
            quantity("radiant", Dimension.TEMPERATURE, "-90 °C", "50 °C", "of the walls; as the air when missing"),
            quantity("wind", Dimension.SPEED, "0 m/s", "30 m/s", "air speed at the body"),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "relative humidity over liquid water"),
            sections("steps", STEP, "in place of the four above: a course, straight from step to step"),
            yesNo("nude", "yes for a person without clothes"),
            parts(
                    "clothing",
                    Zone.class,
                    Dimension.THERMAL_RESISTANCE,
                    "0 clo",
                    "20 clo",
                    "resistance of what each part wears, without the air film; parts left out are bare"),
            quantity("moisture-index", Dimension.FRACTION, "5 %", "50 %", "i_m of that clothing"),
            quantity(
                    "heat",
                    Dimension.HEAT_FLUX,
                    "20 W/m2",
                    "400 W/m2",
                    "heat production held, in place of the body's own"));

    static final Table NIGHT = Table.of(
            "a night",
            text("title", "what this is about, shown in results").must(),
            section("person", PERSON, "who").must(),
            section("site", SITE, "where"),
            section("weather", WEATHER, "what comes down and blows"),
            section("plan", PLAN, "what is done").must(),
            section("kit", KIT, "what is worn"),
            section("laboratory", LABORATORY, "in place of site and weather"));

    static final Table EXPOSED = Table.of(
            "a person of an experiment",
            text("id", "name in this file").must(),
            word("sex", Person.Sex.class, "for the formula of resting heat").must(),
            quantity("age", Dimension.AGE, "14 years", "90 years", "age").must(),
            quantity("height", Dimension.LENGTH, "120 cm", "220 cm", "height").must(),
            quantity("mass", Dimension.MASS, "30 kg", "200 kg", "mass without clothes")
                    .must(),
            quantity("body-fat", Dimension.FRACTION, "4 %", "60 %", "share of fat in the body's mass")
                    .must());

    static final Table EXPOSURE_STEP = Table.of(
            "a step of a run",
            quantity("air", Dimension.TEMPERATURE, "-40 °C", "32 °C", "air temperature")
                    .must(),
            quantity("radiant", Dimension.TEMPERATURE, "-40 °C", "32 °C", "of the walls; as the air when missing"),
            quantity("for", Dimension.TIME, "1 min", "20 h", "how long, in whole minutes")
                    .must(),
            yesNo("lead", "yes for the time before the exposure, from whose end readings count; first step only"));

    static final Table COVER = Table.of(
            "a cover that is searched for",
            word("reading", Reading.class, "what is known to have fallen").must(),
            quantity("less", Dimension.TEMPERATURE_DIFFERENCE, "0 K", "20 K", "by how much")
                    .must(),
            text("than", "the run it fell from").must(),
            quantity("at", Dimension.TIME, "1 min", "20 h", "when").must(),
            quantity("than-at", Dimension.TIME, "0 min", "20 h", "when of that run; at the same time when missing"));

    static final Table RUN = Table.of(
            "a run",
            text("id", "name in this file").must(),
            text("like", "another run, from which every key that is not written here is taken"),
            text("person", "who"),
            yesNo("nude", "yes for a person without clothes"),
            quantity(
                    "intrinsic",
                    Dimension.THERMAL_RESISTANCE,
                    "0 clo",
                    "10 clo",
                    "insulation without the air film, spread evenly"),
            quantity(
                    "total",
                    Dimension.THERMAL_RESISTANCE,
                    "0.6 clo",
                    "10 clo",
                    "insulation with the standard's film, which alone is 0.55 clo"),
            parts("parts", Zone.class, Dimension.THERMAL_RESISTANCE, "0 clo", "20 clo", "insulation by part, no film"),
            section("cover", COVER, "a total insulation that the source does not give"),
            section("kit", KIT, "real garments out of a wardrobe file"),
            quantity("soaked", Dimension.FRACTION, "0 %", "100 %", "with a kit: share of what the cloth can hold"),
            wordOrSection("ground", GROUND_WORDS, GROUND, "with a kit: what is under the person; else a mesh couch"),
            quantity("ground-temperature", Dimension.TEMPERATURE, "-40 °C", "32 °C", "of that ground; else the air's"),
            word("posture", Posture.class, "held throughout"),
            clock("bedtime", "for a night: when the person lies down, free to sleep"),
            quantity("heat", Dimension.HEAT_FLUX, "20 W/m2", "400 W/m2", "heat production held by the laboratory"),
            quantity("wind", Dimension.SPEED, "0 m/s", "30 m/s", "air speed at the body"),
            quantity("humidity", Dimension.FRACTION, "0 %", "100 %", "relative humidity"),
            yesNo("natural-wind", "yes for the turbulence of wind outdoors"),
            sections("steps", EXPOSURE_STEP, "what the air is set to, one after the other"));

    static final Table CHECK = Table.of(
            "a check",
            text("name", "what it is, for people, without its unit").must(),
            word("reading", Reading.class, "what is read off each run").must(),
            word("how", Check.How.class, "how several runs become one figure; mean when missing"),
            names("of", "the runs").must(),
            names("less", "runs whose figure is taken off"),
            names("over", "runs by whose figure is divided"),
            word("over-how", Check.How.class, "how theirs become one figure; as \"how\" when missing"),
            quantity(
                    "at",
                    Dimension.TIME,
                    "0 min",
                    "20 h",
                    "when, from the end of the lead-in; a mean without it goes to the end of the run"),
            quantity("since", Dimension.TIME, "0 min", "20 h", "from when a change or a mean counts"),
            yesNo("mean", "yes for the mean from since to at"),
            word("against", Reading.class, "the other reading of a slope or a crossing"),
            text("level", "the level that is passed, a pure number or with its unit"),
            text("measured", "what the source says, with its unit"),
            text("spread", "its standard deviation or half range, with the unit"),
            text(
                    "gate",
                    "\"LOW to HIGH UNIT\", \"above LOW UNIT\" or \"below HIGH UNIT\": outside, the physics is wrong"),
            text("goal", "the same, tighter: outside, it counts against the score"),
            word("pool", Check.Pool.class, "which pooled error it enters"),
            text("basis", "why these bands"),
            text("second", "what another calculation of the same gave, with the unit"),
            text("second-range", "its range, as in a gate"),
            text("missed", "why a band is missed, as far as it is known"));

    static final Table ASSUMED = Table.of(
            "what is assumed",
            quantity("mass", Dimension.MASS, "0 kg", "30 kg", "how far the mass is moved, up and down"),
            quantity("body-fat", Dimension.FRACTION, "0 %", "20 %", "how far the fat is moved, up and down"),
            names("wind", "other air speeds"),
            names("warm-core", "other starts: how far the core lies above its set level"),
            text("note", "what is assumed, in words"));

    static final Table EXPERIMENT = Table.of(
            "an experiment",
            text("id", "short name").must(),
            text("source", "authors, year, journal, and how its figures were obtained")
                    .must(),
            text("title", "what was done, in words").must(),
            text("note", "what to know about it"),
            text("cannot", "why the engine cannot express it, in place of the keys that follow"),
            section("assumed", ASSUMED, "what the source does not say"),
            sections("people", EXPOSED, "who took part"),
            sections("runs", RUN, "what was done to them"),
            sections("checks", CHECK, "what was measured, and what is held against it"));

    static final Table GRID = Table.of(
            "a grid",
            names("kits", "files, one kit each").must(),
            names("nights", "night files").must(),
            names("people", "files, one person each; each night's own person when missing"));

    static final Table MEMBER = Table.of(
            "a member of a group",
            text("id", "short name within the group, shown in results").must(),
            section("person", PERSON, "who").must(),
            section("kit", KIT, "what this member wears; the night's own kit when missing"));

    static final Table SPARE = Table.of(
            "a spare",
            text("id", "id of a piece or a pad of the wardrobe").must(),
            text("count", "how many of it there are, 1 to 9; one when missing"));

    static final Table PLACES = Table.of(
            "places of a huddle",
            word("inner", Huddle.class, "with partners in touch at an inner place")
                    .must(),
            word("outer", Huddle.class, "the same at an outer place").must(),
            text("outer-places", "how many outer places there are, 1 to 11; 2 when missing, the ends of a row"),
            quantity("swap", Dimension.TIME, "10 min", "20 h", "time from one change of places to the next")
                    .must());

    static final Table GROUP = Table.of(
            "a group",
            text("name", "name of the group, shown in results").must(),
            text("night", "night file; its person gives way to the people, its kit to theirs")
                    .must(),
            sections("people", MEMBER, "who is out, 2 to 12").must(),
            text("wardrobe", "file with the spares, YAML or CSV"),
            sections("spares", SPARE, "what anybody may put on besides"),
            section("huddle", PLACES, "inner and outer places, changed in turn"));

    /** Whether sections of such a section may stand in files of their own, named in their place. */
    static boolean namesFiles(Table table) {
        return table == NIGHT || table == MEMBER;
    }

    /** The tables that stand for a whole file or a section of one; the others are reached from these. */
    static final List<Table> ALL = List.of(
            NIGHT,
            PERSON,
            SITE,
            GROUND,
            WEATHER,
            WEATHER_ROW,
            LOG_ROW,
            PLAN,
            PHASE,
            WALK,
            DRILL,
            SHELTER,
            MEAL,
            DRINK,
            WARM,
            KIT,
            LABORATORY,
            STEP,
            WARDROBE,
            GARMENT,
            PAD,
            EXPERIMENT,
            ASSUMED,
            EXPOSED,
            RUN,
            EXPOSURE_STEP,
            COVER,
            CHECK,
            GRID,
            GROUP,
            MEMBER,
            SPARE,
            PLACES);

    private Tables() {}
}
