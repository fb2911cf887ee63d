package longnight.clothing;

import static longnight.clothing.Kits.compile;
import static longnight.clothing.Kits.kit;
import static longnight.clothing.Kits.piece;
import static longnight.clothing.Kits.spec;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.law.AirGap;
import longnight.clothing.law.Loft;
import longnight.clothing.law.WholeBody;
import longnight.clothing.law.WindRatio;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.figure.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Patches: areas, layers, fit, contact, pads. */
class StacksTest {
    private static final List<Outfit> OUTFITS = List.of(
            Kits.LIGHT,
            Kits.TYPICAL,
            Kits.HEAVY,
            Kits.COTTON,
            kit(),
            new Outfit.Given(Map.of(), 0.38),
            new Outfit.Given(Map.of(Zone.CHEST, 0.155), 0.38));

    @ParameterizedTest
    @EnumSource(Posture.class)
    void areasOfEachSegmentSumToTheBody(Posture posture) {
        for (Outfit outfit : OUTFITS) {
            for (double scale : new double[] {0.7, 1, 1.4}) {
                double[] area = Arrays.stream(Kits.AREA).map(a -> a * scale).toArray();
                double[] sum = new double[BodySegment.COUNT];
                for (PatchStack patch : Stacks.compile(outfit, posture, area, Kits.NOMINAL)) {
                    assertThat(patch.area()).isPositive();
                    sum[patch.zone().segment().ordinal()] += patch.area();
                }
                for (int i = 0; i < sum.length; i++) {
                    assertThat(sum[i]).isCloseTo(area[i], within(1e-14));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Posture.class)
    void everyNumberIsSaneAndCurvatureOnlyTakes(Posture posture) {
        for (Outfit.Kit kit : List.of(Kits.LIGHT, Kits.TYPICAL, Kits.HEAVY, Kits.COTTON)) {
            for (PatchStack patch : compile(kit, posture)) {
                assertThat(patch.areaGrowth()).isGreaterThanOrEqualTo(1).isLessThan(3);
                assertThat(patch.outerDiameter()).isGreaterThan(0.05).isLessThan(0.6);
                assertThat(patch.airPermeability()).isGreaterThanOrEqualTo(0);
                for (int i = 0; i < patch.layers(); i++) {
                    String id = patch.layerIds()[i];
                    Garment garment = kit.pieces().stream()
                            .filter(g -> g.spec().id().equals(id))
                            .findFirst()
                            .orElseThrow();
                    ZoneLayer layer = garment.pieces().stream()
                            .filter(l -> l.zone() == patch.zone())
                            .findFirst()
                            .orElseThrow();
                    double flat = layer.resistance() + AirGap.resistance(0.005);
                    assertThat(patch.resistance()[i]).isPositive().isLessThanOrEqualTo(flat);
                    assertThat(patch.vapourResistance()[i]).isPositive();
                    assertThat(patch.heatCapacity()[i]).isPositive();
                    assertThat(patch.dryMass()[i]).isPositive();
                }
            }
        }
    }

    /** Cloth and fill of each piece are all there, whoever wears it and however, and no more than the piece weighs. */
    @ParameterizedTest
    @EnumSource(Posture.class)
    void dryMassIsTheClothAndFillOfThePiece(Posture posture) {
        for (Outfit.Kit kit : List.of(Kits.LIGHT, Kits.TYPICAL, Kits.HEAVY, Kits.COTTON)) {
            for (double scale : new double[] {0.7, 1, 1.4}) {
                double[] area = Arrays.stream(Kits.AREA).map(a -> a * scale).toArray();
                List<PatchStack> patches = Stacks.compile(kit, posture, area, Kits.NOMINAL);
                for (Garment piece : kit.pieces()) {
                    double sum = 0;
                    for (PatchStack patch : patches) {
                        for (int i = 0; i < patch.layers(); i++) {
                            if (patch.layerIds()[i].equals(piece.spec().id())) {
                                sum += patch.area() * patch.dryMass()[i];
                            }
                        }
                    }
                    assertThat(sum)
                            .as("%s", piece.spec().id())
                            .isCloseTo(Textile.of(piece).mass(), within(1e-12))
                            .isBetween(0.2 * piece.spec().mass(), piece.spec().mass());
                }
            }
        }
    }

    /** All of the down, and of the batt what its areal mass says. */
    @Test
    void fillIsInTheDryMass() {
        double fill = 0;
        for (PatchStack patch : compile(kit(Kits.DOWN_JACKET), Posture.SITTING_KNEES_UP)) {
            for (LayerWater layer : patch.water()) {
                assertThat(layer.fill()).isEqualTo(WaterClass.DOWN);
                fill += patch.area() * layer.fillMass();
            }
        }
        assertThat(fill).isCloseTo(0.085, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Posture.class)
    void partsOfALayerMakeUpTheLayer(Posture posture) {
        for (Outfit outfit : OUTFITS) {
            for (PatchStack patch : compile(outfit, posture)) {
                assertThat(patch.water()).hasSize(patch.layers());
                for (int i = 0; i < patch.layers(); i++) {
                    LayerWater w = patch.water()[i];
                    assertThat(w.gapResistance() + w.clothResistance() + w.fillResistance())
                            .isCloseTo(patch.resistance()[i], within(1e-15));
                    assertThat(w.gapVapour() + w.clothVapour() + w.fillVapour())
                            .isCloseTo(patch.vapourResistance()[i], within(1e-12));
                    assertThat(w.clothMass() + w.fillMass()).isCloseTo(patch.dryMass()[i], within(1e-15));
                    assertThat(w.gapResistance()).isNotNegative();
                    assertThat(w.clothResistance()).isNotNegative();
                    assertThat(w.clothVapour()).isPositive();
                    assertThat(w.clothMass()).isPositive();
                    assertThat(w.fill() == null).isEqualTo(w.fillLoft() == null).isEqualTo(w.fillMass() == 0);
                    assertThat(w.clothHold()).isPositive();
                    assertThat(w.passes()).isBetween(0.0, 1.0);
                    assertThat(w.repels()).isBetween(0.0, 0.95);
                }
            }
        }
    }

    @Test
    void facesAndClasses() {
        LayerWater rain = first(piece("rain", GarmentKind.RAIN_TOP, 0.4));
        assertThat(rain.face()).isEqualTo(RainFace.WATERPROOF);
        assertThat(rain.passes()).isZero();
        assertThat(rain.repels()).isEqualTo(0.9);
        LayerWater wind = first(Kits.WIND_JACKET);
        assertThat(wind.face()).isEqualTo(RainFace.TIGHT);
        assertThat(wind.passes()).isEqualTo(0.2);
        LayerWater hoodie = first(Kits.COTTON_HOODIE);
        assertThat(hoodie.face()).isEqualTo(RainFace.OPEN);
        assertThat(hoodie.cloth()).isEqualTo(WaterClass.COTTON);
        assertThat(hoodie.repels()).isZero();
        assertThat(first(Kits.PARKA).fill()).isEqualTo(WaterClass.CONTINUOUS_FILAMENT);
        assertThat(first(Kits.VEST).cloth()).isEqualTo(WaterClass.NYLON);
    }

    private static LayerWater first(Garment garment) {
        return compile(kit(garment), Posture.STANDING).stream()
                .filter(patch -> patch.zone() == Zone.CHEST)
                .findFirst()
                .orElseThrow()
                .water()[0];
    }

    /** The worked trunk stack of the check values, through the same compilation that a night uses. */
    @Test
    void workedTrunkStack() {
        JsonNode row = Oracles.one("EX-TRUNK");
        Garment base = plain("base", GarmentKind.MID_TOP, 0.0, 0.0014, 0.032, 600);
        Garment fleece = plain("fleece", GarmentKind.MID_TOP, 0.0019, 0.004, 0.095, 600);
        double loft = 0.1 / 9;
        GarmentSpec battSpec = spec("batt", GarmentKind.INSULATED_JACKET, 0.3, null, Kits.batt(100), 0.0089);
        Garment batt = new Garment(
                battSpec,
                List.of(new ZoneLayer(
                        Zone.PELVIS,
                        0,
                        1,
                        loft,
                        Loft.resistance(0.1, 9, 0.15, 0.9),
                        25,
                        0.2,
                        0.1,
                        9,
                        0.15,
                        Loft.compressionConstant(15, 9),
                        0.9,
                        50)));
        double below = 0.0014 + 0.0005 + 0.004 + 0.003 + loft;
        Garment shell = plain("shell", GarmentKind.WIND_TOP, below + 0.003, 0.0005, 0.010, 15);
        PatchStack patch = compile(kit(base, fleece, batt, shell), Posture.STANDING).stream()
                .filter(p -> p.zone() == Zone.PELVIS)
                .findFirst()
                .orElseThrow();
        double curved = Arrays.stream(patch.resistance()).sum();
        double total = curved + WholeBody.STILL_AIR / patch.areaGrowth();
        check(row, "curved_sum", curved);
        check(row, "f", patch.areaGrowth());
        check(row, "RT_static", total);
        JsonNode wind = row.path("inputs").path("wind");
        for (int i = 0; i < wind.size(); i++) {
            double ratio = WindRatio.of(
                    wind.path(i).path(0).asDouble(), wind.path(i).path(1).asDouble(), 0, curved);
            double expected = row.path("expected").path("RT_wind").path(i).asDouble();
            assertThat(total * ratio).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
        }
        // The patch's own permeability is that of its layers in series: 600, 600, 50 and 15.
        assertThat(patch.airPermeability()).isCloseTo(1 / (2 / 600.0 + 1 / 50.0 + 1 / 15.0), within(1e-9));
        assertThat(Stacks.windRatio(patch, Kits.NOMINAL).at(8, 0))
                .isEqualTo(WindRatio.of(8, patch.airPermeability(), 0, curved));
    }

    private static void check(JsonNode row, String name, double value) {
        double expected = row.path("expected").path(name).asDouble();
        assertThat(value).as(name).isCloseTo(expected, within(Oracles.tolerance(row, expected)));
    }

    private static Garment plain(
            String id, GarmentKind kind, double room, double thickness, double resistance, double permeability) {
        GarmentSpec spec = spec(id, kind, 0.2, null, null, room);
        return new Garment(
                spec,
                List.of(new ZoneLayer(Zone.PELVIS, 0, 1, thickness, resistance, 5, 0.2, 0, 0, 0, 0, 1, permeability)));
    }

    @Test
    void moreBattNeverInsulatesLessWhenThereIsRoom() {
        for (Posture posture : Posture.values()) {
            double before = 0;
            for (double mass = 20; mass <= 300; mass += 5) {
                Garment parka = Garments.derive(spec("parka", GarmentKind.PARKA, 0.9, null, Kits.batt(mass), null))
                        .garment();
                double now = Stacks.staticTotal(compile(kit(Kits.THIN_TOP, Kits.THIN_TIGHTS, parka), posture));
                assertThat(now).isGreaterThan(before);
                before = now;
            }
        }
    }

    @Test
    void tighterOuterPieceIsNeverWarmer() {
        Garment middle = piece("jacket", GarmentKind.INSULATED_JACKET, 0.4, Kits.batt(100));
        double before = 0;
        for (double room = 0; room <= 0.08; room += 0.001) {
            Garment shell = Garments.derive(spec("shell", GarmentKind.WIND_TOP, 0.1, null, null, room))
                    .garment();
            double now = Stacks.staticTotal(compile(kit(Kits.THIN_TOP, middle, shell), Posture.STANDING));
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void squeezingTakesAtMostWhatTheCapAllows() {
        Garment middle = piece("jacket", GarmentKind.INSULATED_JACKET, 0.4, Kits.batt(100));
        double loose = chest(kit(Kits.THIN_TOP, middle), Posture.STANDING);
        Garment shell = Garments.derive(spec("shell", GarmentKind.WIND_TOP, 0.1, null, null, 0.0))
                .garment();
        PatchStack tight = patch(kit(Kits.THIN_TOP, middle, shell), Posture.STANDING, Zone.CHEST);
        double crushed = tight.resistance()[0] + tight.resistance()[1];
        assertThat(crushed).isLessThan(0.8 * loose).isGreaterThan(0.3 * loose);
    }

    @Test
    void underTheBodyGapsGoAndFillsKeepAboutAQuarter() {
        Outfit.Kit kit = kit(piece("parka", GarmentKind.PARKA, 0.44, Kits.down(190, 800)));
        PatchStack free = patch(kit, Posture.STANDING, Zone.PELVIS);
        PatchStack pressed = contact(kit, Posture.SITTING_KNEES_UP, Zone.PELVIS);
        assertThat(pressed.resistance()[0] / free.resistance()[0]).isBetween(0.15, 0.40);
        assertThat(pressed.areaGrowth()).isEqualTo(1);
        assertThat(pressed.contactRadius()).isEqualTo(0.17);
    }

    @Test
    void padsHelpInOrderAndFeetComeLast() {
        Outfit.Kit bare = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of());
        Outfit.Kit small = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of(Kits.pad("half", 0.30, 0.05)));
        Outfit.Kit sit = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of(Kits.SIT_PAD));
        Outfit.Kit mat = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of(Kits.MAT));
        Outfit.Kit both = new Outfit.Kit(Kits.TYPICAL.pieces(), List.of(Kits.SIT_PAD, Kits.MAT));
        Posture posture = Posture.SITTING_KNEES_UP;
        assertThat(contact(bare, posture, Zone.PELVIS).padResistance()).isZero();
        double half = contact(small, posture, Zone.PELVIS).padResistance();
        assertThat(half).isGreaterThan(0).isLessThan(0.5 * 0.30);
        assertThat(contact(sit, posture, Zone.PELVIS).padResistance()).isCloseTo(0.30, within(1e-12));
        assertThat(contact(sit, posture, Zone.FOOT).padResistance()).isZero();
        assertThat(contact(mat, posture, Zone.FOOT).padResistance()).isCloseTo(0.35, within(1e-12));
        assertThat(contact(both, posture, Zone.PELVIS).padResistance()).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void nothingUnderTheBodyMeansNothingPressed() {
        for (Posture posture : Posture.values()) {
            assertThat(Stacks.compile(Kits.TYPICAL, posture, Kits.AREA, Kits.NOMINAL, false))
                    .noneMatch(PatchStack::contact);
        }
    }

    @Test
    void givenResistanceIsTakenAsItIs() {
        Map<Zone, Double> resistance = new EnumMap<>(Zone.class);
        for (Zone zone : Zone.values()) {
            resistance.put(zone, 0.155);
        }
        List<PatchStack> patches = compile(new Outfit.Given(resistance, 0.38), Posture.LYING_SUPINE);
        assertThat(patches).allSatisfy(patch -> {
            assertThat(patch.prescribed()).isTrue();
            assertThat(patch.contact()).isFalse();
            assertThat(patch.resistance()).containsExactly(0.155);
            assertThat(patch.areaGrowth()).isCloseTo(1.28, within(0.001)); // ISO 9920: 1 + 0.28 per clo
        });
        assertThat(compile(new Outfit.Given(Map.of(), 0.38), Posture.LYING_SUPINE))
                .allMatch(patch -> patch.layers() == 0);
    }

    @Test
    void hemsCutZonesAndSliversAreJoined() {
        List<PatchStack> pelvis = compile(kit(Kits.THIN_TOP, Kits.THIN_TIGHTS), Posture.STANDING).stream()
                .filter(p -> p.zone() == Zone.PELVIS)
                .toList();
        assertThat(pelvis).hasSize(3);
        assertThat(pelvis.get(0).layerIds()).containsExactly("thin top");
        assertThat(pelvis.get(1).layerIds()).containsExactly("thin top", "thin tights");
        assertThat(pelvis.get(2).layerIds()).containsExactly("thin tights");
        GarmentSpec odd = new GarmentSpec(
                "odd",
                "odd",
                GarmentKind.MID_TOP,
                0.3,
                null,
                null,
                null,
                null,
                Map.of(Zone.PELVIS, new GarmentSpec.Interval(0, 0.345)),
                null,
                null,
                null,
                null,
                null,
                GarmentSpec.Finish.NEW,
                null,
                null);
        List<PatchStack> merged =
                compile(kit(Kits.THIN_TIGHTS, Garments.derive(odd).garment()), Posture.STANDING).stream()
                        .filter(p -> p.zone() == Zone.PELVIS)
                        .toList();
        assertThat(merged).hasSize(2);
    }

    @Test
    void otherConstantsAreFeltAndHandMadePiecesStay() {
        var weak = Kits.NOMINAL.with(ClothingParameter.CONTINUOUS_FILAMENT_RADIATION, 0.322);
        double nominal = Stacks.staticTotal(compile(Kits.HEAVY, Posture.STANDING));
        double low = Stacks.staticTotal(Stacks.compile(Kits.HEAVY, Posture.STANDING, Kits.AREA, weak));
        assertThat(low).isLessThan(0.95 * nominal);
        Garment parka = Kits.PARKA;
        Garment byHand = new Garment(parka.spec(), parka.pieces().subList(0, 3));
        assertThat(Garments.under(byHand, weak)).isSameAs(byHand);
    }

    @Test
    void everyParameterIsWithinItsRangeAndNamesASource() {
        for (ClothingParameter parameter : ClothingParameter.values()) {
            assertThat(parameter.nominal()).isBetween(parameter.low(), parameter.high());
            assertThat(parameter.low()).isLessThan(parameter.high());
            assertThat(parameter.source()).isNotBlank();
            for (double value : new double[] {parameter.low(), parameter.high()}) {
                double total = Stacks.staticTotal(Stacks.compile(
                        Kits.TYPICAL, Posture.SITTING_KNEES_UP, Kits.AREA, Kits.NOMINAL.with(parameter, value)));
                assertThat(total).isBetween(0.2, 0.6);
            }
        }
    }

    /** The draught of a loose outer piece, note R-19: none when tight, covered or filled; full from 80 mm on. */
    @Test
    void looseOuterPieceLetsAirIn() {
        double full = ClothingParameter.OPENINGS_PERMEABILITY.nominal() * ClothingParameter.OPENINGS_SHARE.nominal();
        double cloth = openness(kit(parka(0.020)));
        assertThat(openness(kit(parka(0.005)))).isEqualTo(cloth);
        assertThat(openness(kit(parka(0.050)))).isCloseTo(cloth + 0.5 * full, within(1e-12));
        assertThat(openness(kit(parka(0.080)))).isCloseTo(cloth + full, within(1e-12));
        assertThat(openness(kit(parka(0.100)))).isCloseTo(cloth + full, within(1e-12));
        Garment under = piece("jacket", GarmentKind.INSULATED_JACKET, 0.4, Kits.batt(100));
        double filled = openness(kit(under, parka(0.050)));
        assertThat(filled).isLessThan(1 / (2 / cloth) + 0.5 * full);
        Garment shell = Garments.derive(spec("shell", GarmentKind.WIND_TOP, 0.1, null, null, 0.0))
                .garment();
        assertThat(openness(kit(parka(0.080), shell))).isLessThan(cloth);
        // With no wind it changes nothing that can be felt: the correction for wind moves by less than half a percent.
        double tight = WindRatio.of(0.15, cloth, 0, 0.4);
        assertThat(WindRatio.of(0.15, cloth + full, 0, 0.4)).isBetween(0.995 * tight, tight);
        assertThat(WindRatio.of(8, cloth + full, 0, 0.4)).isLessThan(0.98 * WindRatio.of(8, cloth, 0, 0.4));
    }

    private static Garment parka(double room) {
        return Garments.derive(spec("parka", GarmentKind.PARKA, 0.44, null, Kits.batt(100), room))
                .garment();
    }

    private static double openness(Outfit.Kit kit) {
        return patch(kit, Posture.STANDING, Zone.CHEST).airPermeability();
    }

    @Test
    void badAreasAreRefused() {
        double[] area = Kits.AREA.clone();
        area[3] = Double.NaN;
        assertThatThrownBy(() -> Stacks.compile(Kits.LIGHT, Posture.STANDING, area, Kits.NOMINAL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    private static double chest(Outfit.Kit kit, Posture posture) {
        return Arrays.stream(patch(kit, posture, Zone.CHEST).resistance()).sum();
    }

    private static PatchStack patch(Outfit.Kit kit, Posture posture, Zone zone) {
        return compile(kit, posture).stream()
                .filter(p -> p.zone() == zone && !p.contact())
                .findFirst()
                .orElseThrow();
    }

    private static PatchStack contact(Outfit.Kit kit, Posture posture, Zone zone) {
        return compile(kit, posture).stream()
                .filter(p -> p.zone() == zone && p.contact())
                .findFirst()
                .orElseThrow();
    }
}
