package longnight.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longnight.body.Person;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.outdoors.Ground;
import longnight.proof.Band;
import longnight.proof.Case;
import longnight.proof.Check;
import longnight.proof.Experiment;
import longnight.proof.Reading;
import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import longnight.quantity.Spelling;
import org.jspecify.annotations.Nullable;

/** Published experiments from files: the shipped ones, or any folder of them. */
public final class ExperimentReader {
    private static final Path SHIPPED = TextFile.SHIPPED.resolve("experiments");
    private static final String INDEX = "index.txt";
    private static final Pattern NUMBER = Pattern.compile("([-+]?[0-9]+(?:\\.[0-9]+)?)\\s*(.*)");
    private static final Pattern RANGE = Pattern.compile("([-+]?[0-9.]+)\\s*to\\s*([-+]?[0-9].*)");
    private static final double MINUTE = 60;

    /** Lightest person that a variant may make [kg]. */
    private static final int LEAST_MASS = 20;

    private static final List<String> PARTS = List.of("assumed", "people", "runs", "checks");
    private static final Experiment.Assumed NOTHING = new Experiment.Assumed(0, 0, List.of(), List.of(), "");

    /** Not used by resting people in the dry; any value in range. */
    private static final double PEAK_OXYGEN = 45;

    private final Map<String, Person> people = new LinkedHashMap<>();
    private final Map<String, Section> written = new LinkedHashMap<>();
    private final Map<String, Case> cases = new LinkedHashMap<>();

    private ExperimentReader() {}

    /** The experiments that come with the program. */
    public static List<Experiment> shipped() {
        return shipped(INDEX)
                .text()
                .lines()
                .filter(name -> !name.isBlank())
                .map(name -> read(shipped(name)))
                .toList();
    }

    private static TextFile shipped(String name) {
        Path path = SHIPPED.resolve(name);
        return TextFile.read(path, Place.of(path));
    }

    /**
     * Every YAML file of a folder, by name.
     *
     * @throws InputFault when the folder is none or holds none, or a file is at fault
     */
    public static List<Experiment> folder(Path folder) {
        Place named = Place.of(folder);
        if (!Files.isDirectory(folder)) {
            throw named.fault("\"" + folder + "\" is no folder", "name a folder of experiment files");
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.ya?ml"))
                    .sorted()
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException("cannot read " + folder, fault);
        }
        if (files.isEmpty()) {
            throw named.fault("no experiment in \"" + folder + "\"", "files end in .yaml");
        }
        Map<String, Path> ids = new LinkedHashMap<>();
        List<Experiment> experiments = new ArrayList<>();
        for (Path file : files) {
            Experiment experiment = read(TextFile.read(file, Place.of(file)));
            @Nullable Path before = ids.putIfAbsent(experiment.id(), file);
            if (before != null) {
                throw Place.of(file)
                        .fault(
                                "the id \"" + experiment.id() + "\" for the second time",
                                "it stands in " + before + " already; each file has its own");
            }
            experiments.add(experiment);
        }
        return experiments;
    }

    private static Experiment read(TextFile file) {
        return new ExperimentReader().experiment(new Section(YamlFile.read(file), Tables.EXPERIMENT));
    }

    private Experiment experiment(Section section) {
        if (section.has("cannot")) {
            for (String key : PARTS) {
                if (section.has(key)) {
                    throw section.keyAt(key).fault("\"" + key + "\" beside \"cannot\"", "write one of them");
                }
            }
            return experiment(section, List.of());
        }
        for (String key : PARTS) {
            if (!section.has(key)) {
                throw section.place()
                        .fault("an experiment without \"" + key + "\"", "write it, or why the engine \"cannot\"");
            }
        }
        double moved = section.section("assumed").quantityOr("mass", 0);
        for (Section person : section.sections("people")) {
            requireNew(person, people);
            if (person.quantity("mass") - moved < LEAST_MASS) {
                throw person.at("mass")
                        .fault(
                                "\"mass\" is \"" + person.text("mass") + "\" and may be off by "
                                        + section.section("assumed").text("mass"),
                                "at least " + LEAST_MASS + " kg must be left");
            }
            people.put(person.text("id"), person(person));
        }
        for (Section run : section.sections("runs")) {
            requireNew(run, written);
            written.put(run.text("id"), run);
            cases.put(run.text("id"), run(run));
        }
        for (String key : PARTS.subList(1, PARTS.size())) {
            if (section.sections(key).isEmpty()) {
                throw section.at(key).fault("an experiment without " + key, "write at least one");
            }
        }
        return experiment(
                section, section.sections("checks").stream().map(this::check).toList());
    }

    private Experiment experiment(Section section, List<Check> checks) {
        return new Experiment(
                section.text("id"),
                section.text("source"),
                section.text("title"),
                section.textOr("note", ""),
                section.textOr("cannot", ""),
                section.has("assumed") ? assumed(section.section("assumed")) : NOTHING,
                cases,
                checks);
    }

    private static void requireNew(Section section, Map<String, ?> before) {
        if (before.containsKey(section.text("id"))) {
            throw section.at("id").fault("the id \"" + section.text("id") + "\" for the second time", "use another");
        }
    }

    private static Experiment.Assumed assumed(Section section) {
        return new Experiment.Assumed(
                section.quantityOr("mass", 0),
                100 * section.quantityOr("body-fat", 0),
                quantities(section, "wind", Dimension.SPEED, 30),
                quantities(section, "warm-core", Dimension.TEMPERATURE_DIFFERENCE, 1),
                section.textOr("note", ""));
    }

    private static List<Double> quantities(Section section, String key, Dimension dimension, int most) {
        if (!section.has(key)) {
            return List.of();
        }
        List<Double> values = new ArrayList<>();
        for (Value.Text text : section.names(key)) {
            try {
                double value = Quantities.parse(text.text(), dimension);
                if (!(value >= 0 && value <= most)) {
                    throw text.place()
                            .fault(
                                    "\"" + text.text() + "\" in \"" + key + "\"",
                                    "allowed is from 0 to " + most + " " + dimension.engineUnit());
                }
                values.add(value);
            } catch (QuantityFault fault) {
                throw text.place().fault("\"" + text.text() + "\"", String.valueOf(fault.getMessage()));
            }
        }
        return values;
    }

    private static Person person(Section section) {
        return new Person(
                section.text("id"),
                section.word("sex", Person.Sex.class),
                section.quantity("age"),
                section.quantity("height"),
                section.quantity("mass"),
                100 * section.quantity("body-fat"),
                PEAK_OXYGEN,
                1);
    }

    // --- Runs ---

    /** The section that has a key: the run's own, or that of the run it is like. */
    private Section having(Section run, String key) {
        if (run.has(key) || !run.has("like")) {
            return run;
        }
        return having(known(run.written("like"), written, "run"), key);
    }

    private boolean has(Section run, String key) {
        return having(run, key).has(key);
    }

    private Section required(Section run, String key) {
        Section section = having(run, key);
        if (!section.has(key)) {
            throw run.place().fault("a run without \"" + key + "\"", "write it, or a run it is \"like\"");
        }
        return section;
    }

    private Case run(Section run) {
        if (run.has("like")) {
            known(run.written("like"), cases, "run");
        }
        Section wind = required(run, "wind");
        Case.Wear wear = wear(run);
        @Nullable Ground ground = ground(run, wear);
        return new Case(
                known(required(run, "person").written("person"), people, "person"),
                wear,
                required(run, "posture").word("posture", Posture.class),
                has(run, "bedtime") ? having(run, "bedtime").clock("bedtime") : Double.NaN,
                having(run, "heat").quantityOr("heat", Double.NaN),
                wind.quantity("wind"),
                required(run, "humidity").quantity("humidity"),
                having(run, "natural-wind").yesOr("natural-wind", false),
                ground,
                having(run, "ground-temperature").quantityOr("ground-temperature", Double.NaN),
                steps(required(run, "steps")));
    }

    private @Nullable Ground ground(Section run, Case.Wear wear) {
        Section on = having(run, "ground");
        if (!on.has("ground")) {
            if (has(run, "ground-temperature")) {
                throw having(run, "ground-temperature")
                        .keyAt("ground-temperature")
                        .fault("\"ground-temperature\" without \"ground\"", "write what is under the person");
            }
            return null;
        }
        if (!(wear instanceof Case.Garments)) {
            throw on.keyAt("ground")
                    .fault("\"ground\" without \"kit\"", "only real garments are pressed on a ground; leave it out");
        }
        return SiteReader.ground(on, new Findings());
    }

    private static final List<String> CLOTHES = List.of("nude", "intrinsic", "total", "parts", "cover", "kit");

    private Case.Wear wear(Section run) {
        Section by = CLOTHES.stream().anyMatch(key -> dresses(run, key)) || !run.has("like")
                ? run
                : known(run.written("like"), written, "run");
        List<String> told = CLOTHES.stream().filter(key -> dresses(by, key)).toList();
        if (told.isEmpty() && by != run && by.has("like")) {
            return wear(by);
        }
        if (told.size() != 1) {
            throw (told.isEmpty() ? run.place() : by.keyAt(told.get(1)))
                    .fault(
                            told.isEmpty()
                                    ? "a run that does not say what is worn"
                                    : "\"" + told.get(1) + "\" beside \"" + told.get(0) + "\"",
                            "write one of " + String.join(", ", CLOTHES));
        }
        if (run.has("soaked") && !told.get(0).equals("kit")) {
            throw run.keyAt("soaked")
                    .fault("\"soaked\" without \"kit\"", "only real garments hold water; leave it out");
        }
        return switch (told.get(0)) {
            case "nude" -> new Case.Parts(Map.of());
            case "intrinsic" -> new Case.Parts(everywhere(by.quantity("intrinsic")));
            case "total" -> new Case.Total(by.quantity("total"));
            case "parts" -> {
                Map<Zone, Double> on = new EnumMap<>(Zone.class);
                by.parts("parts")
                        .forEach((word, value) -> on.put(
                                Zone.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')), value));
                yield new Case.Parts(on);
            }
            case "kit" -> {
                Dress dress = KitReader.read(by.section("kit"), new Findings());
                Section wet = having(run, "soaked");
                yield new Case.Garments(dress.outfit(dress.whole(), true), wet.quantityOr("soaked", 0));
            }
            default -> cover(by.section("cover"));
        };
    }

    private static boolean dresses(Section run, String key) {
        return run.has(key) && (!key.equals("nude") || run.yes(key));
    }

    private Case.Cover cover(Section cover) {
        known(cover.written("than"), cases, "run");
        Reading reading = cover.word("reading", Reading.class);
        if (reading.isOfWholeRun() || !reading.unit().equals("°C")) {
            throw cover.at("reading").fault("a cover by " + cover.text("reading"), "name a temperature");
        }
        int at = minutes(cover, "at");
        return new Case.Cover(
                reading,
                cover.quantity("less"),
                cover.text("than"),
                at,
                cover.has("than-at") ? minutes(cover, "than-at") : at);
    }

    private static Map<Zone, Double> everywhere(double resistance) {
        Map<Zone, Double> on = new EnumMap<>(Zone.class);
        for (Zone zone : Zone.values()) {
            on.put(zone, resistance);
        }
        return on;
    }

    private static List<Case.Step> steps(Section run) {
        List<Case.Step> steps = new ArrayList<>();
        for (Section step : run.sections("steps")) {
            boolean lead = step.yesOr("lead", false);
            if (lead && !steps.isEmpty()) {
                throw step.keyAt("lead").fault("a lead-in after the first step", "only the first may be one");
            }
            steps.add(new Case.Step(
                    step.quantity("air"), step.quantityOr("radiant", Double.NaN), minutes(step, "for"), lead));
        }
        if (steps.isEmpty()) {
            throw run.at("steps").fault("a run without steps", "write at least one");
        }
        return steps;
    }

    private static int minutes(Section section, String key) {
        double minutes = section.quantity(key) / MINUTE;
        if (Math.abs(minutes - Math.rint(minutes)) > 1e-9) {
            throw section.at(key).fault("\"" + section.text(key) + "\"", "write whole minutes");
        }
        return (int) Math.rint(minutes);
    }

    private static <T> T known(Value.Text name, Map<String, T> of, String what) {
        @Nullable T found = of.get(name.text());
        if (found == null) {
            throw name.place()
                    .fault(
                            "no " + what + " \"" + name.text() + "\" before here",
                            "there are: " + String.join(", ", of.keySet()),
                            Spelling.suggestion(name.text(), of.keySet()));
        }
        return found;
    }

    // --- Checks ---

    private Check check(Section section) {
        Reading reading = section.word("reading", Reading.class);
        Check.How how = section.has("how") ? section.word("how", Check.How.class) : Check.How.MEAN;
        boolean two = how != Check.How.MEAN && how != Check.How.LEAST;
        if (two != section.has("against")) {
            throw section.at("against")
                    .fault(
                            two ? "\"how: " + section.text("how") + "\" without \"against\"" : "\"against\" alone",
                            "they go together");
        }
        @Nullable Reading against = two ? section.word("against", Reading.class) : null;
        List<String> of = runs(section, "of");
        List<String> less = section.has("less") ? runs(section, "less") : List.of();
        List<String> over = section.has("over") ? runs(section, "over") : List.of();
        boolean timed = !reading.isOfWholeRun() || against != null && !against.isOfWholeRun();
        boolean mean = section.yesOr("mean", false);
        if (timed && !mean && !section.has("at")) {
            throw section.place().fault("a reading of a minute without \"at\"", "write when, as in \"at: 120 min\"");
        }
        int at = timed && section.has("at") ? minutes(section, "at") : Check.END;
        int since = section.has("since") ? minutes(section, "since") : 0;
        for (String id : Stream.of(of, less, over).flatMap(List::stream).toList()) {
            int length = java.util.Objects.requireNonNull(cases.get(id)).minutes();
            if (at > length) {
                throw section.at("at")
                        .fault(
                                "\"at\" is \"" + section.text("at") + "\"",
                                "the run \"" + id + "\" lasts " + length + " min after its lead-in");
            }
        }
        if (mean && section.has("at") && since >= at) {
            throw section.at("at").fault("a mean up to " + section.text("at"), "it ends after \"since\"");
        }
        boolean level = how == Check.How.OTHER_AT_LEVEL
                || how == Check.How.WHERE_OTHER_AT_LEVEL
                || reading == Reading.MINUTES_TO_LEVEL;
        if (level != section.has("level")) {
            throw (level ? section.place() : section.keyAt("level"))
                    .fault(level ? "a crossing without \"level\"" : "\"level\" without a crossing", "they go together");
        }
        String levelUnit = how == Check.How.WHERE_OTHER_AT_LEVEL && against != null
                ? against.unit()
                : reading == Reading.MINUTES_TO_LEVEL ? "" : reading.unit();
        Check blank = new Check(
                section.text("name"),
                reading,
                how,
                of,
                less,
                over,
                section.has("over-how") ? section.word("over-how", Check.How.class) : how,
                at,
                since,
                mean,
                against,
                level ? number(section, "level", levelUnit) : Double.NaN,
                Double.NaN,
                Double.NaN,
                Band.NONE,
                Band.NONE,
                section.has("pool") ? section.word("pool", Check.Pool.class) : Check.Pool.NONE,
                section.textOr("basis", ""),
                Double.NaN,
                Band.NONE,
                section.textOr("missed", ""));
        return blank.beside(
                        section.has("second") ? number(section, "second", blank.unit()) : Double.NaN,
                        section.has("second-range") ? band(section, "second-range", blank.unit()) : Band.NONE)
                .against(
                        section.has("measured") ? number(section, "measured", blank.unit()) : Double.NaN,
                        section.has("spread") ? number(section, "spread", blank.unit()) : Double.NaN,
                        section.has("gate") ? band(section, "gate", blank.unit()) : Band.NONE,
                        section.has("goal") ? band(section, "goal", blank.unit()) : Band.NONE);
    }

    private List<String> runs(Section section, String key) {
        List<Value.Text> names = section.names(key);
        if (names.isEmpty()) {
            throw section.at(key).fault("no run", "name at least one");
        }
        names.forEach(name -> known(name, cases, "run"));
        return names.stream().map(Value.Text::text).toList();
    }

    private static double number(Section section, String key, String unit) {
        return number(section, key, section.text(key), unit);
    }

    private static double number(Section section, String key, String text, String unit) {
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches() || !matcher.group(2).equals(unit)) {
            String wanted = unit.isEmpty() ? "a pure number" : "a number in " + unit;
            throw section.at(key).fault("\"" + key + "\" is \"" + section.text(key) + "\"", "write " + wanted);
        }
        return Double.parseDouble(matcher.group(1));
    }

    private static Band band(Section section, String key, String unit) {
        String text = section.text(key).strip();
        if (text.startsWith("above ")) {
            return new Band(number(section, key, text.substring(6), unit), Double.NaN);
        }
        if (text.startsWith("below ")) {
            return new Band(Double.NaN, number(section, key, text.substring(6), unit));
        }
        Matcher matcher = RANGE.matcher(text);
        if (matcher.matches()) {
            double low = number(section, key, matcher.group(1), "");
            double high = number(section, key, matcher.group(2), unit);
            if (low <= high) {
                return new Band(low, high);
            }
        }
        String wanted = "20 to 30" + (unit.isEmpty() ? "" : " " + unit);
        throw section.at(key)
                .fault(
                        "\"" + key + "\" is \"" + text + "\"",
                        "write it as \"" + wanted + "\", \"above ...\" or \"below ...\"");
    }
}
