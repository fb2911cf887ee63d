package longnight.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import longnight.assumption.ParameterSet;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.night.Caution;
import longnight.night.ModelRange;
import longnight.night.NightPlan;
import longnight.night.Scenario;
import longnight.outdoors.Chamber;
import longnight.outdoors.OutdoorParameter;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Site;
import longnight.outdoors.SiteClimate;
import longnight.outdoors.Surroundings;
import org.jspecify.annotations.Nullable;

/**
 * Night files to scenarios. A night file is YAML; its sections person, site, weather and kit may each stand in a file of
 * their own, named in their place, and a kit names the wardrobe it is taken from. File names count from the file in
 * which they are written.
 */
public final class ScenarioReader {
    private ScenarioReader() {}

    /**
     * Reads a night file and everything it names.
     *
     * @param night the file
     * @throws InputFault when anything in it is at fault; a question outside the model's range is no fault, but listed in
     *     {@link Scenario#limits()}
     */
    public static Loaded read(Path night) {
        return read(night, Instead.NOTHING);
    }

    /**
     * The same with another person or kit than the night file's own.
     *
     * @param night   the file
     * @param instead files that take the place of its sections
     * @throws InputFault as above
     */
    public static Loaded read(Path night, Instead instead) {
        return read(night, instead, new Shelf());
    }

    /**
     * One digest of everything that {@link #read(Path, Instead)} reads: the same when, and only when, the same question is asked.
     *
     * @throws InputFault as above
     */
    public static String digest(Path night, Instead instead) {
        Shelf shelf = new Shelf();
        read(night, instead, shelf);
        return shelf.digest(Place.of(night).file().toAbsolutePath().resolveSibling(""));
    }

    /** The same with files that other readings share. */
    static Loaded read(Path night, Instead instead, Shelf shelf) {
        return read(night(night, shelf), Others.of(instead, shelf), new Findings(shelf));
    }

    /**
     * A night for a member of a group.
     *
     * @param member a section with a person, and perhaps with a kit in place of the night's own
     */
    static Loaded read(Path night, Section member, Shelf shelf) {
        return read(
                night(night, shelf),
                new Others(
                        () -> member.sectionOrFile("person", shelf),
                        member.has("kit") ? () -> member.sectionOrFile("kit", shelf) : null),
                new Findings(shelf));
    }

    /**
     * Everything in the wardrobe from which a night's kit is taken.
     *
     * @param night   the file
     * @param instead files that take the place of its sections
     * @throws InputFault when the wardrobe is at fault, or the night has no kit
     */
    public static Gear gear(Path night, Instead instead) {
        Shelf shelf = new Shelf();
        Section file = night(night, shelf);
        if (instead.kit() == null && !file.has("kit")) {
            throw file.place().fault("a night without \"kit\"", "write what is worn");
        }
        Section kit = section(file, "kit", Others.of(instead, shelf).kit(), shelf);
        return KitReader.gear(shelf.wardrobe(kit.written("wardrobe")));
    }

    /**
     * Everything in a wardrobe.
     *
     * @param wardrobe the file
     * @throws InputFault when anything in it is at fault
     */
    public static Gear wardrobe(Path wardrobe) {
        return KitReader.gear(WardrobeReader.read(TextFile.read(wardrobe, Place.of(wardrobe))));
    }

    private static Section night(Path file, Shelf shelf) {
        Value root = shelf.yaml(file, Place.of(file));
        FileKind kind = FileKind.of(root);
        if (kind != FileKind.NIGHT) {
            throw root.place()
                    .fault(
                            "this is a " + kind.word() + " file, no night",
                            "name a night file; \"longnight check\" reads any of them");
        }
        return new Section(root, Tables.NIGHT);
    }

    /** What takes the place of sections of a night; null for the night's own. Read when wanted, so that faults come in their order. */
    private record Others(
            @Nullable Supplier<Section> person, @Nullable Supplier<Section> kit) {
        static Others of(Instead instead, Shelf shelf) {
            return new Others(of(instead.person(), Tables.PERSON, shelf), of(instead.kit(), Tables.KIT, shelf));
        }

        private static @Nullable Supplier<Section> of(@Nullable Path file, Table table, Shelf shelf) {
            return file == null ? null : () -> new Section(shelf.yaml(file, Place.of(file)), table);
        }
    }

    private static Loaded read(Section night, Others instead, Findings findings) {
        Shelf shelf = findings.shelf;
        boolean indoors = night.has("laboratory");
        for (String key : List.of("site", "weather")) {
            if (indoors && night.has(key)) {
                throw night.keyAt(key).fault("\"" + key + "\" beside \"laboratory\"", "write one of them");
            }
            if (!indoors && !night.has(key)) {
                throw night.place().fault("a night without \"" + key + "\"", "write site and weather, or laboratory");
            }
        }
        Person person = PersonReader.read(section(night, "person", instead.person(), shelf), findings);
        Section plan = night.sectionOrFile("plan", shelf);
        NightHours hours = PlanReader.hours(plan);
        @Nullable Section laboratory = indoors ? night.sectionOrFile("laboratory", shelf) : null;

        Outfit outfit;
        @Nullable Dress dress = null;
        String kitName;
        if (laboratory != null && LaboratoryReader.dresses(laboratory)) {
            if (night.has("kit") || instead.kit() != null) {
                throw night.keyAt("kit").fault("\"kit\" beside the laboratory's clothing", "write one of them");
            }
            outfit = LaboratoryReader.clothing(laboratory, findings);
            kitName = laboratory.has("clothing") ? "laboratory clothing" : "nude";
        } else if (night.has("kit") || instead.kit() != null) {
            Section kit = section(night, "kit", instead.kit(), shelf);
            dress = KitReader.read(kit, findings);
            outfit = dress.outfit(dress.whole(), true);
            kitName = kit.text("name");
        } else {
            throw night.place()
                    .fault(
                            "a night without \"kit\"",
                            "write what is worn" + (indoors ? ", or clothing or nude in the laboratory" : ""));
        }

        NightPlan nightPlan = PlanReader.read(plan, hours, laboratory, dress, person, findings);
        Surroundings surroundings;
        String nightName;
        if (laboratory != null) {
            Chamber chamber = LaboratoryReader.chamber(laboratory, hours.duration());
            surroundings = chamber;
            nightName = laboratory.textOr("name", "laboratory");
        } else {
            Section place = night.sectionOrFile("site", shelf);
            WeatherReader.Found weather = WeatherReader.read(night.sectionOrFile("weather", shelf), hours, findings);
            Site site = SiteReader.read(place, weather.altitude(), findings);
            surroundings = new SiteClimate(
                    site,
                    weather.weather(),
                    nightPlan.firstOfNight().posture(),
                    ParameterSet.nominal(OutdoorParameter.class));
            String where = place.textOr("name", "");
            nightName = where.isEmpty() || weather.name().isEmpty()
                    ? where + weather.name()
                    : where + ", " + weather.name();
            if (nightName.isEmpty()) {
                nightName = night.text("title");
            }
        }
        checkAir(surroundings, hours, findings);
        if (!findings.limits.isEmpty()) {
            findings.cautions.add(Caution.OUT_OF_RANGE);
        }
        Scenario scenario = new Scenario(
                night.text("title"),
                nightName,
                kitName,
                person,
                outfit,
                surroundings,
                nightPlan,
                List.copyOf(findings.guesses),
                List.copyOf(findings.cautions),
                List.copyOf(findings.limits));
        return new Loaded(scenario, List.copyOf(findings.cautions));
    }

    private static void checkAir(Surroundings surroundings, NightHours hours, Findings findings) {
        OutdoorState state = new OutdoorState();
        double coldest = Double.POSITIVE_INFINITY;
        double warmest = Double.NEGATIVE_INFINITY;
        for (double time = -hours.before(); time < hours.duration() + 60; time += 60) {
            surroundings.at(Math.min(time, hours.duration()), state);
            coldest = Math.min(coldest, state.airCelsius);
            warmest = Math.max(warmest, state.airCelsius);
        }
        findings.limit("coldest air of the night", coldest, ModelRange.COLDEST_AIR, ModelRange.WARMEST_AIR, "degC");
        if (coldest >= ModelRange.COLDEST_AIR) {
            findings.limit("warmest air of the night", warmest, ModelRange.COLDEST_AIR, ModelRange.WARMEST_AIR, "degC");
        }
    }

    /** A section of the night, or what takes its place. */
    private static Section section(Section night, String key, @Nullable Supplier<Section> instead, Shelf shelf) {
        return instead == null ? night.sectionOrFile(key, shelf) : instead.get();
    }
}
