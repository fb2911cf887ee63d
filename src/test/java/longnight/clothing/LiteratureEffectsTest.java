package longnight.clothing;

import static longnight.clothing.Kits.compile;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.clothing.law.Loft;
import longnight.clothing.law.WholeBody;
import longnight.clothing.law.WindRatio;
import longnight.figure.Posture;
import org.junit.jupiter.api.Test;

/**
 * Measured effects as range checks: where the dry cloth speaks to them, does it stay inside what was measured? The test
 * carries the range and no more; where it does not hold, the misfit is asserted as such and printed.
 */
class LiteratureEffectsTest {

    /**
     * Nielsen, Olesen and Fanger (1985), Ergonomics 28(12), abstract: sitting cuts intrinsic insulation by 8 to 18 %. Kits with
     * a filled layer from head to foot lie inside. Kits with thin legs lie at 6 %, outside: Lotens (1989, abstract) measured a
     * gain by sitting in light clothing, and the engine's factor for thin cloth stands between the two. A known misfit.
     */
    @Test
    void sittingCutsIntrinsicInsulation() {
        JsonNode range = Oracles.one("LIT-SIT").path("expected").path("reduction_pct");
        double least = range.path(0).asDouble();
        double most = range.path(1).asDouble();
        assertThat(sittingCut(Kits.TYPICAL)).isBetween(least, most);
        assertThat(sittingCut(Kits.HEAVY)).isBetween(least, most);
        assertThat(sittingCut(Kits.LIGHT)).isBetween(0.0, least);
        assertThat(sittingCut(Kits.COTTON)).isBetween(0.0, least);
    }

    private static double sittingCut(Outfit.Kit kit) {
        double cut = 100 * (1 - intrinsic(kit, Posture.CHAIR) / intrinsic(kit, Posture.STANDING));
        System.out.printf("sitting on a chair cuts intrinsic insulation by %.1f %%%n", cut);
        return cut;
    }

    private static double intrinsic(Outfit.Kit kit, Posture posture) {
        double growth = 0;
        double area = 0;
        List<PatchStack> patches = Stacks.compile(kit, posture, Kits.AREA, Kits.NOMINAL, false);
        for (PatchStack patch : patches) {
            growth += patch.area() * patch.areaGrowth();
            area += patch.area();
        }
        return Stacks.staticTotal(patches) - WholeBody.STILL_AIR * area / growth;
    }

    /** The same: the air film of a sitting person rises by up to 25 %; here by the shares that still lose heat. */
    @Test
    void sittingThickensTheAirFilm() {
        double most = Oracles.one("LIT-SIT-IA")
                .path("expected")
                .path("increase_pct_max")
                .asDouble();
        // Half convection, half radiation in calm air.
        double standing = Posture.STANDING.convectingShare() + Posture.STANDING.radiatingShare();
        double sitting = Posture.CHAIR.convectingShare() + Posture.CHAIR.radiatingShare();
        assertThat(100 * (standing / sitting - 1)).isBetween(0.0, most);
    }

    /**
     * The same: walking at 3.75 km/h cuts intrinsic insulation by 30 to 50 %. ISO 9920 gives 30.3 % at 0.7 clo and 29.4 % at 1
     * clo: the lower edge, missed by less than a point in the thicker of the two.
     */
    @Test
    void walkingCutsIntrinsicInsulation() {
        JsonNode range = Oracles.one("LIT-WALK").path("expected").path("Icl_reduction_pct");
        assertThat(walkingCut(0.7))
                .isBetween(range.path(0).asDouble(), range.path(1).asDouble());
        assertThat(walkingCut(1.0)).isBetween(29.0, range.path(0).asDouble());
    }

    private static double walkingCut(double clo) {
        double walk = 3.75 / 3.6;
        double basic = clo * WholeBody.CLO;
        double total = WholeBody.total(basic) * WindRatio.of(0.15, 300, walk, basic);
        double film = WholeBody.STILL_AIR / WholeBody.areaFactor(basic) * WindRatio.bare(0.15, walk);
        return 100 * (1 - (total - film) / basic);
    }

    /** Holmer et al. (1991), abstract: resultant insulation of people at work in the cold 12 to 54 % below the manikin's. */
    @Test
    void workInWindCutsTotalInsulation() {
        JsonNode range = Oracles.one("LIT-HOLMER91").path("expected").path("reduction_pct");
        for (double[] work : new double[][] {{1, 0.7}, {3, 1.0}, {6, 1.2}}) {
            double cut = 100 * (1 - WindRatio.of(work[0], 50, work[1], 0.35));
            System.out.printf("work at %.1f m/s in wind of %.0f m/s: -%.1f %%%n", work[1], work[0], cut);
            assertThat(cut).isBetween(range.path(0).asDouble(), range.path(1).asDouble());
        }
    }

    /** Hot-plate series of an outdoor magazine (2021): fleece 0.411 m2K/W per kg/m2. */
    @Test
    void fleece() {
        double expected = Oracles.one("LIT-FLEECE")
                .path("expected")
                .path("m2K_W_per_kg_m2")
                .asDouble();
        assertThat(Cloth.of(Fabric.FLEECE).resistance(0.2) / 0.2).isCloseTo(expected, within(0.02 * expected));
    }

    /**
     * Batts: 1.92 m2K/W per kg/m2 as the mean of the same series, 4.52 in one laboratory (Bangera et al.). The weak end of
     * the engine's range reaches the first; nothing in it reaches the second, which two-flux radiation cannot explain at
     * 6.7 kg/m3 either: the misfit stays, on the safe side.
     */
    @Test
    void battsLieBetweenTheMeasurements() {
        double low =
                Oracles.one("LIT-BATT").path("expected").path("m2K_W_per_kg_m2").asDouble();
        double high =
                Oracles.one("LIT-BATT-LAB").path("expected").path("R_m2K_W").asDouble() / 0.1;
        Map<ClothingParameter, ClothingParameter> classes = new EnumMap<>(ClothingParameter.class);
        classes.put(ClothingParameter.SHORT_STAPLE_RADIATION, ClothingParameter.SHORT_STAPLE_DENSITY);
        classes.put(ClothingParameter.CONTINUOUS_FILAMENT_RADIATION, ClothingParameter.CONTINUOUS_FILAMENT_DENSITY);
        classes.forEach((radiation, density) -> {
            double nominal = Loft.resistance(1, density.nominal(), radiation.nominal(), 1);
            double weak = Loft.resistance(1, density.nominal(), radiation.high(), 1);
            double strong = Loft.resistance(1, density.low(), radiation.low(), 1);
            System.out.printf(
                    "%s: %.2f (%.2f to %.2f) m2K/W per kg/m2; measured %.2f and %.2f%n",
                    radiation, nominal, weak, strong, low, high);
            assertThat(weak).isCloseTo(low, within(0.02));
            assertThat(nominal).isBetween(2.3, 2.8);
            assertThat(strong).isLessThan(high);
        });
    }

    /** Kurazumi et al. (2008), abstract: shares of body area that convect, radiate and touch. */
    @Test
    void posturesAsPublished() {
        JsonNode expected = Oracles.one("LIT-CONTACT").path("expected");
        Posture[] postures = {
            Posture.STANDING,
            Posture.CHAIR,
            null,
            Posture.SITTING_CROSS_LEGGED,
            null,
            Posture.SITTING_KNEES_UP,
            Posture.SITTING_LEGS_OUT,
            Posture.LYING_CURLED,
            Posture.LYING_SUPINE
        };
        for (int i = 0; i < postures.length; i++) {
            Posture posture = postures[i];
            if (posture == null) {
                continue;
            }
            assertThat(posture.convectingShare())
                    .isEqualTo(expected.path("convective").path(i).asDouble());
            assertThat(posture.contactShare())
                    .isEqualTo(expected.path("conductive").path(i).asDouble());
            if (posture != Posture.LYING_CURLED) { // measured straight, 0.712; curled hides more of itself
                assertThat(posture.radiatingShare())
                        .isEqualTo(expected.path("radiative").path(i).asDouble());
            }
        }
    }

    /** Biomed Eng Online 2018 (s12938-018-0621-2), Table 2: the rear of a seat is 527 cm2 at 8.1 kPa. */
    @Test
    void seatPressureAndArea() {
        JsonNode expected = Oracles.one("LIT-SEATP").path("expected");
        assertThat(expected.path("mean_kPa").asDouble() * 1000)
                .isBetween(ClothingParameter.PRESSURE_SITTING.nominal(), ClothingParameter.PRESSURE_SITTING.high());
        double seat = compile(Kits.TYPICAL, Posture.SITTING_KNEES_UP).stream()
                .filter(p -> p.contact() && p.zone() == longnight.figure.Zone.PELVIS)
                .mapToDouble(PatchStack::area)
                .sum();
        double measured = expected.path("contact_cm2").asDouble() * 1e-4;
        assertThat(seat).isBetween(0.7 * measured, 1.3 * measured);
    }
}
