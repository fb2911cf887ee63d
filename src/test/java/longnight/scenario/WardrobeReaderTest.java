package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import longnight.clothing.Fill;
import longnight.clothing.GarmentSpec;
import longnight.figure.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WardrobeReaderTest {

    /** R-07, the two labels that are clear: 100.0 and 101.7 g/m2, to 0.1 %. */
    @ParameterizedTest
    @CsvSource({"100 g/m2, 0.1000", "3 oz/yd2, 0.1017", "100 g/m², 0.1", "100 gsm, 0.1"})
    void clearLabels(String label, double expected) {
        Fill.Batt batt = (Fill.Batt) piece("fill: " + label).fill();
        assertThat(batt.arealMass()).isCloseTo(expected, within(0.001 * expected));
        assertThat(batt.type()).isEqualTo(Fill.BattType.SHORT_STAPLE);
    }

    /** R-07, the three that are not: both readings are shown. */
    @ParameterizedTest
    @CsvSource({
        "3 oz, 101.7 g/m2 of batt, 85.0 g of down",
        "100 g, 100.0 g/m2 of batt, 100.0 g of down",
        "100, 100.0 g/m2 of batt, 100.0 g of down"
    })
    void unclearLabels(String label, String batt, String down) {
        assertThat(message("fill: " + label))
                .startsWith("w.yaml:5:11: \"fill\" is \"" + label + "\", which can be read in two ways: " + batt
                        + ", or " + down + " in the whole piece; write ");
    }

    @Test
    void typeLeftOutIsAGuess() {
        assertThat(wardrobe("fill: 100 g/m2").pieces().get("coat").guesses())
                .anyMatch(guess ->
                        guess.quantity().equals("class of batt") && guess.word().equals("short-staple"));
        assertThat(wardrobe("fill: 100 g/m2\n    fill-type: active")
                        .pieces()
                        .get("coat")
                        .guesses())
                .isEmpty();
    }

    /** An ounce in the whole piece, with fill power, is down without being called so. */
    @Test
    void downByItsFillPower() {
        Fill.Down down =
                (Fill.Down) piece("fill: 3 oz\n    fill-power: 700 in3/oz").fill();
        assertThat(down.fillMass()).isCloseTo(0.0850486, within(1e-7));
        assertThat(down.fillPower()).isCloseTo(0.4046259, within(1e-6)); // 700 x 5.78037e-4
        assertThat(down.treated()).isFalse();
        assertThat(down.constructionFactor()).isNaN();
        Fill.Down treated = (Fill.Down)
                piece("fill: 85 g\n    fill-power: 800 cuin\n    fill-type: treated-down\n    construction: 72 %")
                        .fill();
        assertThat(treated.treated()).isTrue();
        assertThat(treated.constructionFactor()).isEqualTo(0.72);
    }

    @Test
    void everythingMeasured() {
        GarmentSpec spec = piece("""
                fill: 100 g/m2
                    fill-by-zone: {forearm: 60 g/m2}
                    fabric: nylon-woven
                    face: tight
                    hood: no
                    coverage: {chest: 100 %, thigh: 0 % to 25 %}
                    room: 35 mm
                    thickness: 14 mm
                    resistance: 1.6 clo
                    vapour-resistance: 35 m2Pa/W
                    air-permeability: 1 cfm
                    finish: new
                    packed-volume: 7 L
                    price: 129,50 EUR""");
        assertThat(((Fill.Batt) spec.fill()).byZone()).isEqualTo(Map.of(Zone.FOREARM, 0.06));
        assertThat(spec.coverage())
                .isEqualTo(Map.of(
                        Zone.CHEST, new GarmentSpec.Interval(0, 1), Zone.THIGH, new GarmentSpec.Interval(0, 0.25)));
        assertThat(spec.hooded()).isFalse();
        assertThat(spec.room()).isEqualTo(0.035);
        assertThat(spec.thickness()).isEqualTo(0.014);
        assertThat(spec.resistance()).isCloseTo(0.248, within(1e-12));
        assertThat(spec.vapourResistance()).isEqualTo(35);
        assertThat(spec.airPermeability()).isCloseTo(5.08, within(1e-12));
        assertThat(spec.condition()).isEqualTo(GarmentSpec.Finish.NEW);
        assertThat(spec.packedVolume()).isEqualTo(0.007);
        assertThat(spec.price()).isEqualTo(129.5);
    }

    @Test
    void fourFactsLeaveTheRestOpen() {
        GarmentSpec spec = piece("fill: 100 g/m2\n    face: tight");
        assertThat(spec.fabric()).isNull();
        assertThat(spec.coverage()).isNull();
        assertThat(spec.room()).isNull();
        assertThat(spec.resistance()).isNull();
        assertThat(spec.name()).isEqualTo("coat");
    }

    // --- spreadsheets ---

    @Test
    void commasQuotesAndBlankLines() {
        WardrobeReader.Wardrobe read =
                csv("id,name,kind,mass\na,\"top, \"\"thin\"\"\",base-top,150 g\n\nb,,mid-top,1 lb\n");
        assertThat(read.pieces().get("a").spec().name()).isEqualTo("top, \"thin\"");
        assertThat(read.pieces().get("b").spec().name()).isEqualTo("b");
        assertThat(read.pieces().get("b").spec().mass()).isEqualTo(0.45359237);
    }

    /** What spreadsheets of the world save: the same two pieces and a pad each time. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "id,kind,mass,room\na,base-top,0.15 kg,2.5 mm\nb,cap,80 g,\n",
                "id;kind;mass [kg];room [mm]\r\na;base-top;0,15;2,5\r\nb;cap;0,08;\r\n",
                "id;kind;mass;room\na;base-top;0,15 kg;2,5 mm\nb;cap;80 g;\n",
                "id\tkind\tmass (g)\troom (mm)\ra\tbase-top\t150\t2,5\rb\tcap\t80\t\r",
                "sep=;\r\nid;kind;mass;room\r\na;base-top;150 g;2.5 mm\r\nb;cap;80 g\r\n",
                "\"sep=\t\"\nid\tkind\tmass\troom\na\tbase-top\t150 g\t2.5 mm\nb\tcap\t80 g\n",
                ";;;;;\r\n;ID;Kind;Mass [g];;Room [mm]\r\n;;;;;\r\n;a;base-top;150;;2,5\r\n   \r\n;b;cap;80;;\r\n;;;;;\r\n",
                "# mine\n\"id\",\"kind\",\"mass [g]\",\"room [mm]\"\n\"a\",\"base-top\",\"150\",\"2.5\"\n\"b\",\"cap\",\"80\",\"\"",
                "id,kind\u00a0,mass,room\na\u00a0,\u00a0base-top,150\u00a0g,2.5\u202fmm\nb,cap,80 g,\n"
            })
    void spreadsheetsOfTheWorld(String text) {
        WardrobeReader.Wardrobe read = csv(text);
        assertThat(read.pieces().keySet()).containsExactly("a", "b");
        assertThat(read.pieces().get("a").spec().mass()).isCloseTo(0.15, within(1e-12));
        assertThat(read.pieces().get("a").spec().room()).isCloseTo(0.0025, within(1e-12));
        assertThat(read.pieces().get("b").spec().mass()).isCloseTo(0.08, within(1e-12));
        assertThat(read.pieces().get("b").spec().room()).isNull();
    }

    /** Byte order marks of both widths. */
    @Test
    void marksOfByteOrder(@TempDir Path folder) throws Exception {
        String text = "id\tkind\tmass\u00a0[g]\na\tcap\t80\n";
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Path file = folder.resolve("w.csv");
            Files.write(file, ("\ufeff" + text).getBytes(charset));
            assertThat(WardrobeReader.read(TextFile.read(file, Place.of(file))).pieces())
                    .as(charset.name())
                    .containsKey("a");
        }
    }

    /** A comma in a name is a comma, also where commas are decimal signs; so is a quote that quotes nothing. */
    @Test
    void namesKeepTheirSigns() {
        WardrobeReader.Wardrobe read = csv(
                "id;name;kind;fill;face;mass [kg]\na;2,5 mm \"thick\" fleece;parka;100,5 g/m2;tight;0,9\nb;c;cap;;;0,08\n");
        assertThat(read.pieces().get("a").spec().name()).isEqualTo("2,5 mm \"thick\" fleece");
        assertThat(((Fill.Batt) read.pieces().get("a").spec().fill()).arealMass())
                .isCloseTo(0.1005, within(1e-12));
        InputFault fault =
                catchThrowableOfType(InputFault.class, () -> csv("id;name;kind;mass\na;12\" long;base-tip;80 g\n"));
        assertThat(fault.getMessage()).startsWith("w.csv:2:12: \"kind\" is \"base-tip\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id,kind,mas\\na,base-top,150 g|w.csv:1:9: unknown key \"mas\"; a garment has the keys",
                "id,kind,mass\\na,base-top,150|w.csv:2:12: \"mass\": \"150\" has no unit;",
                "id,kind,mass [g]\\na,base-top,150 g|w.csv:2:12: \"mass\": \"150 g\" is not a plain number;",
                "id,kind,mass [gr]\\na,base-top,150|w.csv:2:12: \"mass\": \"gr\" is no unit of a mass;",
                "id,kind,mass [kg]\\na,base-top,\"0,15\"|w.csv:2:12: \"mass\": \"0,15\" has a decimal comma;",
                "id;kind;mass [g]\\na;base-top;1,250|w.csv:2:12: \"mass\": \"1,250\" has a thousands separator or a decimal comma;",
                "id;kind;mass [g];room\\na;base-top;150,5;2.5 mm|w.csv:2:12: \"mass\": \"150,5\" has a decimal comma;",
                "id,kind,mass\\na,base-top,150 g,x|w.csv:2:18: \"x\" in a column without a name;",
                "id,kind,mass\\n\"a\"x,base-top,150 g|w.csv:2:1: a row that cannot be taken apart;",
                "id,kind,mass\\na,base-top,150 g\\nb,\"base-top,150 g|w.csv:3:1: a row that cannot be taken apart;",
                "id,kind,mass,id\\na,base-top,150 g,b|w.csv:1:14: key \"id\" for the second time;",
                "id,kind,mass\\na,base-top,150 g\\n# remark\\n\\n a ,base-top,150 g|w.csv:5:2: id \"a\" for the second time;",
                "id,name,kind,mass\\na,\"x\\ny, z\",base-tip,150 g|w.csv:3:7: \"kind\" is \"base-tip\";",
                "id,kind,mass\\n|w.csv:1:1: the wardrobe is empty;",
                "''|w.csv:1:1: the file is empty;",
                "id,kind,mass,face\\np,pad,60 g,tight|w.csv:1:14: unknown key \"face\"; a pad has the keys",
            })
    void spreadsheetFaults(String text, String message) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> csv(text.replace("\\n", "\n")));
        assertThat(fault).as("nothing was refused").isNotNull();
        assertThat(fault.getMessage()).startsWith(message);
    }

    private static WardrobeReader.Wardrobe csv(String text) {
        return WardrobeReader.read(new TextFile(Path.of("w.csv"), text));
    }

    private static WardrobeReader.Wardrobe wardrobe(String rest) {
        String text = "pieces:\n  - id: coat\n    kind: parka\n    mass: 900 g\n    " + rest + "\n";
        return WardrobeReader.read(new TextFile(Path.of("w.yaml"), text));
    }

    private static GarmentSpec piece(String rest) {
        return wardrobe(rest).pieces().get("coat").spec();
    }

    private static String message(String rest) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> wardrobe(rest));
        assertThat(fault).as("nothing was refused").isNotNull();
        return String.valueOf(fault.getMessage());
    }
}
