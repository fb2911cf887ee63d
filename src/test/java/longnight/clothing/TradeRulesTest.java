package longnight.clothing;

import static longnight.clothing.Kits.compile;
import static longnight.clothing.Kits.down;
import static longnight.clothing.Kits.kit;
import static longnight.clothing.Kits.piece;
import static longnight.clothing.Kits.spec;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.assumption.Guess;
import longnight.clothing.Garment.ZoneLayer;
import longnight.clothing.law.Loft;
import longnight.figure.Posture;
import longnight.figure.Zone;
import org.junit.jupiter.api.Test;

/** Rules of the trade that cloth alone decides: common practice, no source. Notes. */
class TradeRulesTest {

    private static ZoneLayer chest(Garment garment) {
        return garment.pieces().stream()
                .filter(l -> l.zone() == Zone.CHEST)
                .findFirst()
                .orElseThrow();
    }

    /** same mass of down, rising fill power; warmer, but less than in proportion. */
    @Test
    void fillPowerIsAnEfficiency() {
        double before = 0;
        double first = 0;
        for (double fillPower : new double[] {450, 650, 800, 900}) {
            double now = chest(piece("parka", GarmentKind.PARKA, 0.42, down(100, fillPower)))
                    .resistance();
            assertThat(now).isGreaterThan(before);
            first = first == 0 ? now : first;
            before = now;
        }
        assertThat(before / first).isBetween(1.2, 2.0);
    }

    /** 60 g of the best down against 120 g of middling. */
    @Test
    void warmthNeedsWeightToo() {
        double best = chest(piece("a", GarmentKind.INSULATED_JACKET, 0.25, down(60, 900)))
                .resistance();
        double more = chest(piece("b", GarmentKind.INSULATED_JACKET, 0.31, down(120, 650)))
                .resistance();
        assertThat(more).isGreaterThan(best * 1.2);
    }

    /** the sewn share is told, with the overfill and the fill power kept, and can be said instead. */
    @Test
    void sewnShareOfTheLoftIsTold() {
        GarmentSpec spec = spec("jacket", GarmentKind.INSULATED_JACKET, 0.25, null, down(85, 700), null);
        Garments.Derived derived = Garments.derive(spec);
        assertThat(derived.guesses())
                .anySatisfy(guess -> {
                    assertThat(guess.quantity()).isEqualTo("share of the loft kept by the construction");
                    assertThat(guess.value()).isEqualTo(0.7);
                    assertThat(guess.reason()).contains("R-03");
                })
                .anySatisfy(guess -> assertThat(guess.quantity()).isEqualTo("overfill"))
                .anySatisfy(guess -> assertThat(guess.quantity()).isEqualTo("share of the fill power kept in use"));
        Fill.Down down = (Fill.Down) Kits.down(85, 700);
        Fill box = new Fill.Down(down.fillMass(), down.fillPower(), false, 0.9);
        Garments.Derived said = Garments.derive(spec("jacket", GarmentKind.INSULATED_JACKET, 0.25, null, box, null));
        assertThat(said.guesses())
                .noneMatch(guess -> guess.quantity().equals("share of the loft kept by the construction"));
        assertThat(chest(said.garment()).resistance())
                .isGreaterThan(chest(derived.garment()).resistance());
    }

    /** fill is mass per area times area, zone by zone; two layers add; an oversized parka has 1.3 to 1.7 m2. */
    @Test
    void battIsMassPerAreaTimesArea() {
        Garments.Derived one = Garments.derive(spec("parka", GarmentKind.PARKA, 0.44, null, Kits.batt(100), null));
        Garments.Derived two = Garments.derive(spec("parka", GarmentKind.PARKA, 0.58, null, Kits.batt(200), null));
        double area = one.guesses().stream()
                .filter(guess -> guess.quantity().equals("area of the piece"))
                .findFirst()
                .orElseThrow()
                .value();
        assertThat(area).isBetween(1.3, 1.7);
        assertThat(fillMass(one.garment())).isCloseTo(0.100 * area, within(0.02 * 0.100 * area));
        assertThat(fillMass(two.garment())).isCloseTo(2 * fillMass(one.garment()), within(1e-9));
    }

    private static double fillMass(Garment garment) {
        double mass = 0;
        for (ZoneLayer layer : garment.pieces()) {
            mass += layer.fillArealMass()
                    * Garments.skinArea(layer.zone())
                    * (layer.to() - layer.from())
                    * Cut.of(garment.spec().kind()).ease();
        }
        return mass;
    }

    /** a heavier face makes a heavier jacket, not a warmer one. */
    @Test
    void denierIsNotWarmth() {
        double thin = whole(0.40);
        double thick = whole(0.40 + 0.09); // 42 to 105 g/m2 of face on 1.1 m2, with seams
        assertThat(thick / thin).isCloseTo(1, within(0.02));
    }

    private static double whole(double mass) {
        Garment jacket = piece("jacket", GarmentKind.INSULATED_JACKET, mass, Kits.batt(100));
        return Stacks.staticTotal(compile(kit(Kits.THIN_TOP, Kits.THIN_TIGHTS, jacket), Posture.STANDING));
    }

    /** a fifth of the area with a tenth of the fill loses more than the mean fill would say. */
    @Test
    void coldStripsCostMoreThanTheirShare() {
        Garment even = piece("even", GarmentKind.PARKA, 0.42, down(190, 800));
        List<ZoneLayer> strips = new ArrayList<>();
        for (ZoneLayer layer : even.pieces()) {
            double length = layer.to() - layer.from();
            double seam = layer.from() + 0.2 * length;
            strips.add(scaled(layer, layer.from(), seam, 0.1));
            strips.add(scaled(layer, seam, layer.to(), (1 - 0.2 * 0.1) / 0.8));
        }
        Garment striped = new Garment(even.spec(), strips);
        double warm = Stacks.staticTotal(compile(kit(even), Posture.STANDING));
        double cold = Stacks.staticTotal(compile(kit(striped), Posture.STANDING));
        assertThat(cold).isLessThan(warm * 0.99);
    }

    private static ZoneLayer scaled(ZoneLayer l, double from, double to, double share) {
        double fill = Loft.resistance(l.fillArealMass(), l.fillDensity(), l.radiationConstant(), l.construction());
        return new ZoneLayer(
                l.zone(),
                from,
                to,
                l.thickness() * share,
                l.resistance() - fill + share * fill,
                l.vapourResistance() * share,
                l.arealMass(),
                l.fillArealMass() * share,
                l.fillDensity(),
                l.radiationConstant(),
                l.compressionConstant(),
                l.construction(),
                l.airPermeability());
    }

    /** R-19, the half that cloth decides: a tight parka crushes what is under it. The draught of a loose one is wind's. */
    @Test
    void snugParkaCrushesWhatIsUnderIt() {
        double[] warmth = new double[3];
        double[] rooms = {0.005, 0.035, 0.080};
        for (int i = 0; i < 3; i++) {
            Garment parka = Garments.derive(spec("parka", GarmentKind.PARKA, 0.44, null, Kits.batt(100), rooms[i]))
                    .garment();
            warmth[i] = Stacks.staticTotal(
                    compile(kit(Kits.WOOL_TOP, Kits.WOOL_TIGHTS, Kits.VEST, parka), Posture.STANDING));
        }
        assertThat(warmth[0]).isLessThan(0.99 * warmth[1]);
        assertThat(warmth[2]).isGreaterThanOrEqualTo(warmth[1]);
    }

    /** Whole-body insulation of four kits at rest in calm air; bounds as a second calculation of the same kits found. */
    @Test
    void kitsLieWhereTheyShould() {
        String[] names = {"light", "typical", "heavy", "cotton"};
        Outfit.Kit[] kits = {Kits.LIGHT, Kits.TYPICAL, Kits.HEAVY, Kits.COTTON};
        double[] low = {1.5, 2.3, 3.0, 1.3};
        double[] high = {2.0, 3.0, 3.7, 2.0};
        for (int i = 0; i < kits.length; i++) {
            List<PatchStack> sitting = compile(kits[i], Posture.SITTING_KNEES_UP);
            double clo = Stacks.staticTotal(sitting) / 0.155;
            double standing = Stacks.staticTotal(compile(kits[i], Posture.STANDING)) / 0.155;
            System.out.printf(
                    "%s: %.2f clo sitting, %.2f standing, %d patches sitting%n",
                    names[i], clo, standing, sitting.size());
            assertThat(clo).isBetween(low[i], high[i]);
        }
    }

    @Test
    void whatIsDerivedIsTold() {
        Garments.Derived derived = Garments.derive(spec("parka", GarmentKind.PARKA, 0.44, null, Kits.batt(100), null));
        assertThat(derived.guesses()).allSatisfy(guess -> {
            assertThat(guess.subject()).isEqualTo("parka");
            assertThat(guess.reason()).isNotBlank();
            assertThat(Double.isFinite(guess.value()) && !guess.unit().isEmpty())
                    .isNotEqualTo(!guess.word().isEmpty());
        });
        assertThat(derived.guesses().stream().map(Guess::quantity)).doesNotHaveDuplicates();
        GarmentSpec said = new GarmentSpec(
                "shirt",
                "shirt",
                GarmentKind.BASE_TOP,
                0.2,
                Fabric.WOOL_KNIT,
                null,
                null,
                false,
                Map.of(Zone.CHEST, new GarmentSpec.Interval(0, 1)),
                0.0,
                0.001,
                0.03,
                4.0,
                400.0,
                GarmentSpec.Finish.NEW,
                null,
                null);
        assertThat(Garments.derive(said).guesses().stream().map(Guess::quantity))
                .containsExactlyInAnyOrder("area of the piece", "mass of the cloth per area");
        ZoneLayer layer = Garments.derive(said).garment().pieces().get(0);
        assertThat(layer.resistance()).isEqualTo(0.03);
        assertThat(layer.thickness()).isEqualTo(0.001);
        assertThat(layer.vapourResistance()).isEqualTo(4);
        assertThat(layer.airPermeability()).isEqualTo(400);
    }

    @Test
    void measuredResistanceOfAFilledPieceIsKept() {
        GarmentSpec spec = new GarmentSpec(
                "jacket",
                "jacket",
                GarmentKind.INSULATED_JACKET,
                0.4,
                null,
                Kits.batt(100),
                null,
                null,
                null,
                null,
                null,
                0.31,
                null,
                null,
                GarmentSpec.Finish.NEW,
                null,
                null);
        ZoneLayer layer = chest(Garments.derive(spec).garment());
        double fill = Loft.resistance(
                layer.fillArealMass(), layer.fillDensity(), layer.radiationConstant(), layer.construction());
        assertThat(layer.resistance()).isEqualTo(0.31);
        assertThat(fill).isLessThan(0.31).isGreaterThan(0.2);
    }

    @Test
    void impossiblePiecesAreRefused() {
        refused(spec("x", GarmentKind.PARKA, 0.44, null, null, null), "needs a fill");
        refused(spec("x", GarmentKind.PARKA, 7, null, Kits.batt(100), null), "mass is 7.0");
        refused(spec("x", GarmentKind.PARKA, Double.NaN, null, Kits.batt(100), null), "mass is NaN");
        refused(spec("x", GarmentKind.PARKA, 1, null, Kits.batt(900), null), "batt is 0.9");
        refused(
                spec("x", GarmentKind.PARKA, 1, null, new Fill.Down(0.1, 800, false, 0.7), null),
                "fill power is 800.0");
        refused(spec("x", GarmentKind.MID_TOP, 0.3, null, null, 0.5), "room is 0.5");
    }

    private static void refused(GarmentSpec spec, String says) {
        assertThatThrownBy(() -> Garments.derive(spec))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(says)
                .hasMessageContaining("x: ");
    }

    /** Every kind can be worn from its four facts alone, and weighs what it should where it lies. */
    @Test
    void everyKindDerives() {
        for (GarmentKind kind : GarmentKind.values()) {
            boolean insulated = Cut.of(kind).fabric() == Fabric.NYLON_WOVEN;
            Garment garment = Garments.derive(spec("x", kind, 0.3, null, insulated ? Kits.batt(80) : null, null))
                    .garment();
            assertThat(garment.pieces()).isNotEmpty();
            double mass = 0;
            for (ZoneLayer layer : garment.pieces()) {
                assertThat(layer.resistance()).isPositive().isLessThan(1);
                double skin = Garments.REFERENCE_AREA[layer.zone().segment().ordinal()]
                        * layer.zone().shareOfSegment()
                        * (layer.to() - layer.from());
                mass += layer.arealMass() * skin * Cut.of(kind).ease();
            }
            assertThat(mass).as(kind.name()).isCloseTo(0.3, within(1e-9));
        }
    }
}
