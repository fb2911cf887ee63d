package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longnight.night.Caution;
import longnight.night.Scenario;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is refused, where the finger points, and what is said. Each case changes one thing in a night that is in order;
 * messages are whole, with the folder left out.
 */
public class BadInputTest {
    private static final String NIGHT = "night.yaml";
    private static final String WARDROBE = "wardrobe.yaml";
    private static final String EVERYTHING = "";

    private static final String GOOD_NIGHT = """
            title: a test night
            person:
              name: tester
              sex: female
              age: 30 years
              height: 170 cm
              mass: 65 kg
              body-fat: 25 %
            plan: {from: 18:00, to: 06:00, posture: lying-curled, sleep: yes}
            site:
              altitude: 900 m
              place: open
              ground: snow
            weather:
              table:
                - {time: 17:00, air: -5 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
                - {time: 19:30, air: -6 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
                - {time: 22:00, air: -7 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
                - {time: 01:00, air: -8 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
                - {time: 04:00, air: -9 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
                - {time: 07:00, air: -9 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}
            kit:
              name: test kit
              wardrobe: wardrobe.yaml
              worn: [shirt, trousers, parka]
              pads: [pad]
            """;

    private static final String GOOD_WARDROBE = """
            pieces:
              - id: shirt
                kind: base-top
                mass: 150 g
              - id: trousers
                kind: trousers
                mass: 400 g
                face: open
              - id: parka
                kind: parka
                mass: 760 g
                fill: 100 g/m2
                fill-type: short-staple
                face: tight
              - id: big-parka
                kind: parka
                mass: 900 g
                fill: 130 g
                fill-type: down
                fill-power: 700 in3/oz
            pads:
              - id: pad
                mass: 55 g
                area: 0.12 m2
                thickness: 12 mm
            """;

    @TempDir
    private Path folder;

    private record Bad(String name, String file, String written, String instead, String message) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Bad bad(String name, String file, String written, String instead, String message) {
        return new Bad(name, file, written, instead, message);
    }

    static List<Bad> cases() {
        return List.of(
                bad(
                        "unknown key",
                        NIGHT,
                        "  height: 170 cm",
                        "  hieght: 170 cm",
                        "night.yaml:6:3: unknown key \"hieght\"; a person has the keys name, sex, age, height, mass, body-fat, build, fitness, heat-production; did you mean \"height\"?"),
                bad(
                        "missing unit",
                        NIGHT,
                        "170 cm",
                        "170",
                        "night.yaml:6:11: \"height\": \"170\" has no unit; write a length in m, cm, mm, km, in, ft; did you mean \"170 cm\"?"),
                bad(
                        "price without its money",
                        WARDROBE,
                        "mass: 150 g",
                        "mass: 150 g\n    price: 30",
                        "wardrobe.yaml:5:12: \"price\" is \"30\"; write the number and the three letters of its money (ISO 4217), for example \"120 EUR\""),
                bad(
                        "two moneys",
                        WARDROBE,
                        "mass: 150 g\n  - id: trousers\n    kind: trousers",
                        "mass: 150 g\n    price: 30 EUR\n  - id: trousers\n    price: 40 CHF\n    kind: trousers",
                        "wardrobe.yaml:7:12: \"price\" is \"40 CHF\" where other pieces are paid in EUR; write all prices of a wardrobe in one money"),
                bad(
                        "bare ounces of batt",
                        WARDROBE,
                        "fill: 100 g/m2",
                        "fill: 3 oz",
                        "wardrobe.yaml:12:11: \"fill\" is \"3 oz\", which can be read in two ways: 101.7 g/m2 of batt, or 85.0 g of down in the whole piece; write \"3 oz/yd2\" for batt, or \"3 oz\" with \"fill-type: down\" and \"fill-power\" for down; did you mean \"3 oz/yd2\"?"),
                bad(
                        "bare grams of batt",
                        WARDROBE,
                        "fill: 100 g/m2",
                        "fill: 100 g",
                        "wardrobe.yaml:12:11: \"fill\" is \"100 g\", which can be read in two ways: 100.0 g/m2 of batt, or 100.0 g of down in the whole piece; write \"100 g/m2\" for batt, or \"100 g\" with \"fill-type: down\" and \"fill-power\" for down; did you mean \"100 g/m2\"?"),
                bad(
                        "batt without a unit",
                        WARDROBE,
                        "fill: 100 g/m2",
                        "fill: 100",
                        "wardrobe.yaml:12:11: \"fill\" is \"100\", which can be read in two ways: 100.0 g/m2 of batt, or 100.0 g of down in the whole piece; write \"100 g/m2\" for batt, or \"100 g\" with \"fill-type: down\" and \"fill-power\" for down; did you mean \"100 g/m2\"?"),
                bad(
                        "bare ounces, type left out",
                        WARDROBE,
                        "    fill: 100 g/m2\n    fill-type: short-staple\n",
                        "    fill: 3 oz\n",
                        "wardrobe.yaml:12:11: \"fill\" is \"3 oz\", which can be read in two ways: 101.7 g/m2 of batt, or 85.0 g of down in the whole piece; write \"3 oz/yd2\" for batt, or \"3 oz\" with \"fill-type: down\" and \"fill-power\" for down"),
                bad(
                        "a hundred, type left out",
                        WARDROBE,
                        "    fill: 100 g/m2\n    fill-type: short-staple\n",
                        "    fill: 100\n",
                        "wardrobe.yaml:12:11: \"fill\" is \"100\", which can be read in two ways: 100.0 g/m2 of batt, or 100.0 g of down in the whole piece; write \"100 g/m2\" for batt, or \"100 g\" with \"fill-type: down\" and \"fill-power\" for down"),
                bad(
                        "humidity 140 %",
                        NIGHT,
                        "humidity: 80 %, cloud: 20 %",
                        "humidity: 140 %, cloud: 20 %",
                        "night.yaml:16:56: \"humidity\" is \"140 %\"; allowed is from 0 % to 100 %"),
                bad(
                        "body fat 70 %",
                        NIGHT,
                        "body-fat: 25 %",
                        "body-fat: 70 %",
                        "night.yaml:8:13: \"body-fat\" is \"70 %\"; allowed is from 4 % to 60 %"),
                bad(
                        "mass 7 kg",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: 7 kg",
                        "night.yaml:7:9: \"mass\" is \"7 kg\"; allowed is from 10 kg to 300 kg"),
                bad(
                        "wind -3",
                        NIGHT,
                        "wind: 2 m/s",
                        "wind: -3 m/s",
                        "night.yaml:16:39: \"wind\" is \"-3 m/s\"; allowed is from 0 m/s to 60 m/s"),
                bad(
                        "wind -3 with a typographic minus",
                        NIGHT,
                        "wind: 2 m/s",
                        "wind: −3 m/s",
                        "night.yaml:16:39: \"wind\" is \"−3 m/s\"; allowed is from 0 m/s to 60 m/s"),
                bad(
                        "not a number",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: .nan",
                        "night.yaml:7:9: \"mass\": \".nan\" is not a finite number; write a mass with its unit, for example 85 g"),
                bad(
                        "not a number, with a unit",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: NaN kg",
                        "night.yaml:7:9: \"mass\": \"NaN kg\" is not a finite number; write a mass with its unit, for example 85 g"),
                bad(
                        "infinity",
                        NIGHT,
                        "air: -5 °C",
                        "air: -Infinity °C",
                        "night.yaml:16:26: \"air\": \"-Infinity °C\" is not a finite number; write a temperature with its unit, for example -12 °C"),
                bad(
                        "overflow",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: 1e999 kg",
                        "night.yaml:7:9: \"mass\": \"1e999 kg\" is not a finite number; write a number of everyday size"),
                bad(
                        "unknown garment",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: [shirt, trowsers, parka]",
                        "night.yaml:25:17: unknown piece \"trowsers\"; the wardrobe has the pieces: shirt, trousers, parka, big-parka; did you mean \"trousers\"?"),
                bad(
                        "piece named twice",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: [shirt, trousers, parka, shirt]",
                        "night.yaml:25:34: \"shirt\" for the second time; there is one of it; name it once"),
                bad(
                        "two outer parkas",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: [shirt, trousers, parka, big-parka]",
                        "night.yaml:25:34: \"big-parka\", a second outer parka beside \"parka\"; one is worn, or write \"layered: yes\" to wear both over each other"),
                bad(
                        "empty wardrobe",
                        WARDROBE,
                        EVERYTHING,
                        "pieces: []\n",
                        "wardrobe.yaml:1:9: the wardrobe is empty; write at least one piece with id, kind and mass"),
                bad(
                        "empty wardrobe file",
                        WARDROBE,
                        EVERYTHING,
                        "",
                        "wardrobe.yaml:1:1: the file is empty; write keys with their values"),
                bad(
                        "duplicate key",
                        NIGHT,
                        "  sex: female\n",
                        "  sex: female\n  sex: male\n",
                        "night.yaml:5:3: key \"sex\" for the second time; write it once; it stands in line 4 already"),
                bad(
                        "duplicate id",
                        WARDROBE,
                        "- id: trousers",
                        "- id: shirt",
                        "wardrobe.yaml:5:9: id \"shirt\" for the second time; each piece has its own; line 2 has this one"),
                bad(
                        "night of zero hours",
                        NIGHT,
                        "to: 06:00",
                        "to: 18:00",
                        "night.yaml:9:25: a night of 0.0 h, from 18:00 to 18:00; allowed is from 0.5 h to 20 h"),
                bad(
                        "night of zero hours, as duration",
                        NIGHT,
                        "to: 06:00",
                        "duration: 0 h",
                        "night.yaml:9:31: \"duration\" is \"0 h\"; allowed is from 0.5 h to 20 h"),
                bad(
                        "night of 40 hours",
                        NIGHT,
                        "to: 06:00",
                        "duration: 40 h",
                        "night.yaml:9:31: \"duration\" is \"40 h\"; allowed is from 0.5 h to 20 h"),
                bad(
                        "weather begins too late",
                        NIGHT,
                        "    - {time: 17:00, air: -5 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}\n",
                        "",
                        "night.yaml:16:14: the weather begins at 19:30; it has to cover the night, 18:00 to 06:00"),
                bad(
                        "weather ends too early",
                        NIGHT,
                        "    - {time: 07:00, air: -9 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}\n",
                        "",
                        "night.yaml:20:14: the weather ends at 04:00; it has to cover the night, 18:00 to 06:00"),
                bad(
                        "gap in the table",
                        NIGHT,
                        "    - {time: 22:00, air: -7 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}\n",
                        "",
                        "night.yaml:18:14: a gap in the weather: 5.5 h without a row before this one; rows follow each other within 3 h"),
                bad(
                        "directory for the wardrobe",
                        NIGHT,
                        "wardrobe: wardrobe.yaml",
                        "wardrobe: folder",
                        "night.yaml:24:13: \"folder\" is a directory; name a file"),
                bad(
                        "missing wardrobe",
                        NIGHT,
                        "wardrobe: wardrobe.yaml",
                        "wardrobe: wardrobe.yml",
                        "night.yaml:24:13: there is no file \"wardrobe.yml\"; name a file that exists; did you mean \"wardrobe.yaml\"?"),
                bad(
                        "empty night file",
                        NIGHT,
                        EVERYTHING,
                        "",
                        "night.yaml:1:1: the file is empty; write keys with their values"),
                bad(
                        "only remarks",
                        NIGHT,
                        EVERYTHING,
                        "# nothing\n",
                        "night.yaml:1:1: the file is empty; write keys with their values"),
                bad("tab", NIGHT, "  sex: female", "\tsex: female", "night.yaml:4:1: a tab; indent with blanks"),
                bad(
                        "tab between",
                        NIGHT,
                        "  sex: female",
                        "  sex:\tfemale\n\tage",
                        "night.yaml:5:1: a tab; indent with blanks"),
                bad(
                        "list for a section",
                        NIGHT,
                        EVERYTHING,
                        "- title\n- person\n",
                        "night.yaml:1:1: a list stands where a night is described; a night has the keys title, person, site, weather, plan, kit, laboratory"),
                bad(
                        "list for the person",
                        NIGHT,
                        "plan: {from: 18:00, to: 06:00, posture: lying-curled, sleep: yes}",
                        "plan: [18:00, 06:00]",
                        "night.yaml:9:7: a list stands where a plan is described; a plan has the keys from, to, duration, posture, sleep, daily-rhythm, before, phases, meals, drinks, warm, fuel, damp"),
                bad(
                        "section for a list",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: {shirt: yes}",
                        "night.yaml:25:9: a section of keys for \"worn\"; write a list, each item after \"- \""),
                bad(
                        "text for a list",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: shirt",
                        "night.yaml:25:9: the text \"shirt\" for \"worn\"; write a list, each item after \"- \""),
                bad(
                        "section for a number",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: {value: 65 kg}",
                        "night.yaml:7:9: a section of keys for \"mass\"; write \"mass\" from 10 kg to 300 kg"),
                bad(
                        "key without value",
                        NIGHT,
                        "mass: 65 kg",
                        "mass:",
                        "night.yaml:7:3: \"mass\" has no value; write \"mass\" from 10 kg to 300 kg"),
                bad(
                        "key left out",
                        NIGHT,
                        "  mass: 65 kg\n",
                        "",
                        "night.yaml:3:3: a person without \"mass\"; write \"mass\" from 10 kg to 300 kg"),
                bad(
                        "unknown word",
                        NIGHT,
                        "posture: lying-curled",
                        "posture: lying-curld",
                        "night.yaml:9:41: \"posture\" is \"lying-curld\"; allowed is standing, chair, sitting-cross-legged, sitting-knees-up, sitting-legs-out, lying-supine, lying-curled; did you mean \"lying-curled\"?"),
                bad(
                        "unknown place",
                        NIGHT,
                        "place: open",
                        "place: forrest-edge",
                        "night.yaml:12:10: \"place\" is \"forrest-edge\"; allowed is open, snowfield, ridge, scattered-trees, forest-edge, open-forest, dense-forest, hollow, boulders, wall-lee, snow-trench, rock-overhang; did you mean \"forest-edge\"?"),
                bad(
                        "clock time",
                        NIGHT,
                        "to: 06:00",
                        "to: 6.30",
                        "night.yaml:9:25: \"to\" is \"6.30\"; write a clock time from 00:00 to 24:00, for example 18:30; did you mean \"06:30\"?"),
                bad(
                        "clock time past midnight",
                        NIGHT,
                        "to: 06:00",
                        "to: 25:00",
                        "night.yaml:9:25: \"to\" is \"25:00\"; write a clock time from 00:00 to 24:00, for example 18:30"),
                bad(
                        "to and duration",
                        NIGHT,
                        "to: 06:00",
                        "to: 06:00, duration: 12 h",
                        "night.yaml:9:32: \"duration\" beside \"to\"; write one of \"to: 06:30\" and \"duration: 12 h\""),
                bad(
                        "no end",
                        NIGHT,
                        "to: 06:00, ",
                        "",
                        "night.yaml:9:7: a plan without an end; write one of \"to: 06:30\" and \"duration: 12 h\""),
                bad(
                        "decimal comma",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: 65,5 kg",
                        "night.yaml:7:9: \"mass\": \"65,5 kg\" has a decimal comma; the decimal sign is a point; did you mean \"65.5 kg\"?"),
                bad(
                        "thousands separator",
                        NIGHT,
                        "altitude: 900 m",
                        "altitude: 1,900 m",
                        "night.yaml:11:13: \"altitude\": \"1,900 m\" has a thousands separator or a decimal comma; write digits without separators and a decimal point"),
                bad(
                        "other dimension",
                        NIGHT,
                        "mass: 65 kg",
                        "mass: 65 km",
                        "night.yaml:7:9: \"mass\": \"65 km\" is not a mass; write a mass in g, kg, oz, lb; \"km\" is a unit of a length"),
                bad(
                        "build beside body fat",
                        NIGHT,
                        "body-fat: 25 %",
                        "body-fat: 25 %\n  build: lean",
                        "night.yaml:9:3: \"build\" beside \"body-fat\"; write one of them"),
                bad(
                        "row without humidity",
                        NIGHT,
                        "wind: 2 m/s, humidity: 80 %, cloud: 20 %}\n    - {time: 22:00, air: -7 °C, wind: 2 m/s, humidity: 80 %, cloud: 20 %}",
                        "wind: 2 m/s, humidity: 80 %, cloud: 20 %}\n    - {time: 22:00, air: -7 °C, wind: 2 m/s, cloud: 20 %}",
                        "night.yaml:18:7: a row without \"humidity\", other than the first row; write it in every row or in none"),
                bad(
                        "time for the second time",
                        NIGHT,
                        "time: 22:00",
                        "time: 19:30",
                        "night.yaml:18:14: the time 19:30 for the second time; each row has a later time"),
                bad(
                        "weather that says nothing",
                        NIGHT,
                        "  table:\n",
                        "  name: dark\n  tables:\n",
                        "night.yaml:16:3: unknown key \"tables\"; a weather has the keys name, table, file, record, night, max, min, sunset, sunrise, wind, humidity, cloud; did you mean \"table\"?"),
                bad(
                        "no weather",
                        NIGHT,
                        "weather:",
                        "wether:",
                        "night.yaml:14:1: unknown key \"wether\"; a night has the keys title, person, site, weather, plan, kit, laboratory; did you mean \"weather\"?"),
                bad(
                        "laboratory beside weather",
                        NIGHT,
                        "kit:",
                        "laboratory: {nude: yes}\nkit:",
                        "night.yaml:10:1: \"site\" beside \"laboratory\"; write one of them"),
                bad(
                        "daily rhythm off outdoors",
                        NIGHT,
                        "sleep: yes",
                        "sleep: yes, daily-rhythm: no",
                        "night.yaml:9:81: \"daily-rhythm\" is \"no\"; outdoors the body's clock always runs"),
                bad(
                        "site without altitude",
                        NIGHT,
                        "  altitude: 900 m\n",
                        "",
                        "night.yaml:11:3: a site without \"altitude\"; write its height above the sea, for example \"altitude: 900 m\""),
                bad(
                        "warm ground under snow",
                        NIGHT,
                        "ground: snow",
                        "ground: snow\n  ground-temperature: 3 °C",
                        "night.yaml:14:23: \"ground-temperature\" is \"3 °C\" under snow; allowed is up to 0 °C"),
                bad(
                        "pad worn",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: [shirt, trousers, pad]",
                        "night.yaml:25:27: \"pad\" is no piece; the wardrobe has the pieces: shirt, trousers, parka, big-parka"),
                bad(
                        "shirt over parka",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: [parka, trousers, shirt]",
                        "night.yaml:25:27: \"shirt\" (base-top) over \"parka\"; pieces are listed from the skin outwards"),
                bad(
                        "nothing worn",
                        NIGHT,
                        "worn: [shirt, trousers, parka]",
                        "worn: []",
                        "night.yaml:25:9: a kit without pieces; name at least one piece"),
                bad(
                        "parka without fill",
                        WARDROBE,
                        "    fill: 100 g/m2\n    fill-type: short-staple\n",
                        "",
                        "wardrobe.yaml:9:5: \"parka\", a piece of kind parka, without \"fill\"; write the fill with its unit: \"fill: 100 g/m2\" for batt; or \"fill: 140 g\" with \"fill-power: 700 in3/oz\" for down; or \"fill-type: none\""),
                bad(
                        "down by the square metre",
                        WARDROBE,
                        "fill: 130 g",
                        "fill: 130 g/m2",
                        "wardrobe.yaml:18:11: \"fill\" is \"130 g/m2\" of down; down takes the mass of all the down in the piece, for example \"140 g\"; \"g/m2\" is a unit of a mass per area"),
                bad(
                        "down without fill power",
                        WARDROBE,
                        "    fill-power: 700 in3/oz\n",
                        "",
                        "wardrobe.yaml:18:11: down without \"fill-power\"; write the number of its label, for example \"fill-power: 700 in3/oz\""),
                bad(
                        "more down than parka",
                        WARDROBE,
                        "fill: 130 g",
                        "fill: 1300 g",
                        "wardrobe.yaml:18:11: \"fill\" is \"1300 g\" in a piece of 900 g; the fill weighs less than the piece"),
                bad(
                        "batt of 1 kg/m2",
                        WARDROBE,
                        "fill: 100 g/m2",
                        "fill: 1 kg/m2",
                        "wardrobe.yaml:12:11: \"fill\" is \"1 kg/m2\"; allowed is from 20 g/m2 to 600 g/m2"),
                bad(
                        "fill power of batt",
                        WARDROBE,
                        "fill-type: short-staple",
                        "fill-type: short-staple\n    fill-power: 700 in3/oz",
                        "wardrobe.yaml:14:5: \"fill-power\" of a batt; it is for down only"),
                bad(
                        "coverage that falls",
                        WARDROBE,
                        "face: open",
                        "face: open\n    coverage: {chest: 80 % to 20 %}",
                        "wardrobe.yaml:9:23: coverage of chest is \"80 % to 20 %\"; write a rising interval within 0 % to 100 %"),
                bad(
                        "coverage of an unknown part",
                        WARDROBE,
                        "face: open",
                        "face: open\n    coverage: {chets: 80 %}",
                        "wardrobe.yaml:9:16: a part of \"coverage\" is \"chets\"; allowed is scalp, face, neck, chest, back, pelvis, upper-arm, forearm, hand, thigh, calf, foot; did you mean \"chest\"?"),
                bad(
                        "pad without resistance",
                        WARDROBE,
                        "    thickness: 12 mm\n",
                        "",
                        "wardrobe.yaml:22:5: pad \"pad\" without \"resistance\"; write its resistance, or the thickness of its foam"),
                bad(
                        "duplicate id of a pad",
                        WARDROBE,
                        "- id: pad",
                        "- id: parka",
                        "wardrobe.yaml:22:9: id \"parka\" for the second time; each piece has its own; line 9 has this one"),
                bad(
                        "anchor",
                        NIGHT,
                        "title: a test night",
                        "title: &t a test night",
                        "night.yaml:1:8: an anchor (&t); anchors are not used here, leave it out"),
                bad(
                        "reference",
                        NIGHT,
                        "title: a test night",
                        "title: *t",
                        "night.yaml:1:8: a reference (*t); references are not used here, write the values out"),
                bad(
                        "tag",
                        NIGHT,
                        "title: a test night",
                        "title: !!java.net.URL [x]",
                        "night.yaml:1:8: a tag (!); tags are not used here, leave it out"),
                bad(
                        "second document",
                        NIGHT,
                        "kit:",
                        "---\nkit:",
                        "night.yaml:22:1: a second document in one file; write one document"),
                bad(
                        "unclosed bracket",
                        NIGHT,
                        "sleep: yes}",
                        "sleep: yes",
                        "night.yaml:10:5: no YAML from here on: expected ',' or '}', but got :, in what began in line 9; write \"key: value\", indented with blanks"),
                bad(
                        "unclosed quote",
                        NIGHT,
                        "title: a test night",
                        "title: \"a test night",
                        "night.yaml:27:1: no YAML from here on: found unexpected end of stream, in what began in line 1; write \"key: value\", indented with blanks"),
                bad(
                        "list as a key",
                        NIGHT,
                        "title: a test night",
                        "[a, b]: a test night",
                        "night.yaml:1:1: a list stands for a key; a key is a word"),
                bad(
                        "no file's name",
                        NIGHT,
                        "plan: {from: 18:00, to: 06:00, posture: lying-curled, sleep: yes}",
                        "plan: \"ward\\0robe\"",
                        "night.yaml:9:7: \"ward robe\" is no file's name; name a file"),
                bad(
                        "path through a file",
                        NIGHT,
                        "wardrobe: wardrobe.yaml",
                        "wardrobe: wardrobe.yaml/x",
                        "night.yaml:24:13: \"wardrobe.yaml/x\" cannot be read (Not a directory); name a readable file"),
                bad(
                        "device",
                        NIGHT,
                        "wardrobe: wardrobe.yaml",
                        "wardrobe: /dev/zero",
                        "night.yaml:24:13: \"/dev/zero\" is no ordinary file; name a file"),
                bad(
                        "control character",
                        NIGHT,
                        "  pads: [pad]",
                        "  pads: [pad] # \u0007",
                        "night.yaml:26:17: a character that cannot be printed; write plain text"));
    }

    @BeforeEach
    void writeGoodFiles() throws IOException {
        write(folder);
    }

    private static void write(Path place) throws IOException {
        Files.createDirectory(place.resolve("folder"));
        Files.writeString(place.resolve(NIGHT), GOOD_NIGHT);
        Files.writeString(place.resolve(WARDROBE), GOOD_WARDROBE);
    }

    @Test
    void theGoodNightIsGood() {
        Scenario scenario = read().scenario();
        assertThat(scenario.limits()).isEmpty();
        assertThat(scenario.kitName()).isEqualTo("test kit");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedAtItsPlace(Bad bad) throws IOException {
        spoil(folder, bad);
        assertThat(message()).isEqualTo(bad.message());
    }

    private static void spoil(Path place, Bad bad) throws IOException {
        Path file = place.resolve(bad.file());
        String good = Files.readString(file);
        assertThat(good).contains(bad.written());
        int at = good.indexOf(bad.written());
        String changed = bad.written().equals(EVERYTHING)
                ? bad.instead()
                : good.substring(0, at)
                        + bad.instead()
                        + good.substring(at + bad.written().length());
        Files.writeString(file, changed);
    }

    /**
     * Writes every case into a folder of its own, for tests of the whole program.
     *
     * @return the night's file of each
     */
    public static List<Path> writeAll(Path into) throws IOException {
        List<Path> nights = new ArrayList<>();
        for (Bad bad : cases()) {
            Path place = Files.createDirectory(into.resolve("case-" + nights.size()));
            write(place);
            spoil(place, bad);
            nights.add(place.resolve(NIGHT));
        }
        return nights;
    }

    @Test
    void partsOfTheFault() throws IOException {
        change(NIGHT, "height: 170 cm", "hieght: 170 cm");
        InputFault fault = fault();
        assertThat(fault.file()).isEqualTo(folder.resolve(NIGHT).toString());
        assertThat(fault.line()).isEqualTo(6);
        assertThat(fault.column()).isEqualTo(3);
        assertThat(fault.found()).isEqualTo("unknown key \"hieght\"");
        assertThat(fault.allowed()).startsWith("a person has the keys name, sex");
        assertThat(fault.hint()).isEqualTo("did you mean \"height\"?");
    }

    // --- the file itself ---

    @Test
    void noSuchFile() throws IOException {
        Files.move(folder.resolve(NIGHT), folder.resolve("nights.yaml"));
        assertThat(message())
                .isEqualTo("night.yaml: there is no file \"night.yaml\"; name a file that exists;"
                        + " did you mean \"nights.yaml\"?");
    }

    @Test
    void aDirectory() throws IOException {
        Files.delete(folder.resolve(NIGHT));
        Files.createDirectory(folder.resolve(NIGHT));
        assertThat(message()).isEqualTo("night.yaml: \"night.yaml\" is a directory; name a file");
    }

    @Test
    void aFileThatMayNotBeRead() throws IOException {
        Path file = folder.resolve(WARDROBE);
        Files.setPosixFilePermissions(file, Set.of(PosixFilePermission.OWNER_WRITE));
        Assumptions.assumeFalse(Files.isReadable(file), "the superuser may read everything");
        assertThat(message())
                .isEqualTo("night.yaml:24:13: \"wardrobe.yaml\" may not be read; name a file that you may read");
    }

    @Test
    void notUtf8() throws IOException {
        byte[] latin1 = GOOD_NIGHT.replace("tester", "t\u00e9ster").getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve(NIGHT), latin1);
        assertThat(message()).isEqualTo("night.yaml:3:10: byte 0xe9 is not UTF-8 text; save the file as UTF-8");
    }

    @Test
    void aByteOrderMarkIsFine() throws IOException {
        Files.writeString(folder.resolve(NIGHT), "\ufeff" + GOOD_NIGHT);
        assertThat(read().scenario().title()).isEqualTo("a test night");
    }

    @Test
    void windowsLineEndsAreFine() throws IOException {
        Files.writeString(
                folder.resolve(NIGHT), GOOD_NIGHT.replace("\n", "\r\n").replace("65 kg", "7 kg"));
        assertThat(message()).startsWith("night.yaml:7:9: ");
    }

    // --- hostile files ---

    @Test
    void aBombOfReferences() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 20; i++) {
            String before = "*a" + (i - 1);
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, String.join(", ", List.of(before, before, before, before))));
        }
        Files.writeString(folder.resolve(NIGHT), bomb);
        assertThat(message()).isEqualTo("night.yaml:1:5: an anchor (&a0); anchors are not used here, leave it out");
    }

    @Test
    void aTowerOfBrackets() throws IOException {
        Files.writeString(folder.resolve(NIGHT), "title: " + "[".repeat(100_000));
        assertThat(message()).startsWith("night.yaml:1:19: sections more than 12 deep;");
    }

    @Test
    void aFileWithoutEnd() throws IOException {
        Files.writeString(folder.resolve(NIGHT), "title: " + "x".repeat(1 << 20));
        assertThat(message()).isEqualTo("night.yaml:1:1: the file has more than a million characters; write less");
    }

    /** What is written goes into results and messages; neither may steer a terminal. */
    @Test
    void nothingSteersTheTerminal() throws IOException {
        change(NIGHT, "title: a test night", "title: \"a test\\e[31m night\"");
        assertThat(message())
                .isEqualTo("night.yaml:1:8: a text with a control character or over several lines;"
                        + " write plain text in one line");
        change(NIGHT, "title: \"a test\\e[31m night\"", "\"ti\\e[31m\\ntle\": a test night");
        assertThat(message()).startsWith("night.yaml:1:1: unknown key \"ti [31m tle\"");
    }

    // --- beyond the model, but not at fault ---

    @Test
    void aChildIsOutsideTheModel() throws IOException {
        change(NIGHT, "age: 30 years", "age: 9 years");
        change(NIGHT, "mass: 65 kg", "mass: 28 kg");
        assertThat(read().scenario().limits())
                .containsExactly(
                        "age is 9 years, the model was made for 14 to 90 years",
                        "mass of the person is 28 kg, the model was made for 30 to 200 kg");
        assertThat(read().cautions()).contains(Caution.OUT_OF_RANGE);
    }

    @Test
    void airBelowForty() throws IOException {
        change(NIGHT, "air: -7 °C", "air: -43 °C");
        assertThat(read().scenario().limits())
                .containsExactly("coldest air of the night is -43 degC, the model was made for -40 to 32 degC");
        change(NIGHT, "air: -43 °C", "air: -38 °C");
        assertThat(read().scenario().limits()).isEmpty();
        change(NIGHT, "ground: snow", "ground: snow\n  temperature-offset: -3 K");
        assertThat(read().scenario().limits())
                .containsExactly("coldest air of the night is -41 degC, the model was made for -40 to 32 degC");
    }

    /** Heat is no business of a model of cold: without sweat it would call a deadly night easy. */
    @Test
    void hotAir() throws IOException {
        change(NIGHT, "air: -7 °C", "air: 43 °C");
        assertThat(read().scenario().limits())
                .containsExactly("warmest air of the night is 43 degC, the model was made for -40 to 32 degC");
    }

    /** Cold before the night begins is nobody's business. */
    @Test
    void onlyTheNightCounts() throws IOException {
        change(NIGHT, "air: -5 °C", "air: -60 °C");
        change(NIGHT, "from: 18:00", "from: 19:30");
        assertThat(read().scenario().limits()).isEmpty();
    }

    // --- how ---

    private void change(String file, String written, String instead) throws IOException {
        String good = Files.readString(folder.resolve(file));
        assertThat(good).contains(written);
        Files.writeString(folder.resolve(file), good.replace(written, instead));
    }

    private Loaded read() {
        return ScenarioReader.read(folder.resolve(NIGHT));
    }

    private InputFault fault() {
        InputFault fault = catchThrowableOfType(InputFault.class, this::read);
        assertThat(fault).as("nothing was refused").isNotNull();
        return fault;
    }

    private String message() {
        return String.valueOf(fault().getMessage()).replace(folder + "/", "");
    }
}
