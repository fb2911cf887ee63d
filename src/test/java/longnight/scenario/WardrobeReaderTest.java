package longnight.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import longnight.clothing.Fill;
import longnight.clothing.GarmentSpec;
import longnight.figure.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                    packed-volume: 7 L""");
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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "id,kind,mas\\na,base-top,150 g|w.csv:1:9: unknown key \"mas\"; a garment has the keys",
                "id,kind,mass\\na,base-top,150|w.csv:2:12: \"mass\": \"150\" has no unit;",
                "id,kind,mass [g]\\na,base-top,150 g|w.csv:2:12: \"mass\": \"150 g\" is not a plain number;",
                "id,kind,mass [gr]\\na,base-top,150|w.csv:2:12: \"mass\": \"gr\" is no unit of a mass;",
                "id;kind;mass [kg]\\na;base-top;0,15|w.csv:2:12: \"mass\": \"0,15\" has a decimal comma;",
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
