package longnight.clothing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longnight.assumption.ParameterSet;
import longnight.figure.Posture;
import longnight.figure.Zone;
import org.jspecify.annotations.Nullable;

/** Invented pieces and kits for tests: four facts each, as a label gives them. */
final class Kits {
    static final double[] AREA = Garments.REFERENCE_AREA;
    static final ParameterSet<ClothingParameter> NOMINAL = ParameterSet.nominal(ClothingParameter.class);
    static final double IN3_PER_OZ = 5.78037e-4;

    private Kits() {}

    static GarmentSpec spec(
            String id,
            GarmentKind kind,
            double mass,
            @Nullable Fabric fabric,
            @Nullable Fill fill,
            @Nullable Double room) {
        return new GarmentSpec(
                id,
                id,
                kind,
                mass,
                fabric,
                fill,
                null,
                null,
                null,
                room,
                null,
                null,
                null,
                null,
                GarmentSpec.Finish.NEW,
                null,
                null);
    }

    static Garment piece(String id, GarmentKind kind, double mass) {
        return Garments.derive(spec(id, kind, mass, null, null, null)).garment();
    }

    static Garment piece(String id, GarmentKind kind, double mass, Fabric fabric) {
        return Garments.derive(spec(id, kind, mass, fabric, null, null)).garment();
    }

    static Garment piece(String id, GarmentKind kind, double mass, Fill fill) {
        return Garments.derive(spec(id, kind, mass, null, fill, null)).garment();
    }

    static Fill batt(double gramsPerSquareMetre) {
        return new Fill.Batt(Fill.BattType.CONTINUOUS_FILAMENT, gramsPerSquareMetre / 1000, Map.of());
    }

    static Fill down(double grams, double fillPower) {
        return new Fill.Down(grams / 1000, fillPower * IN3_PER_OZ, false, Double.NaN);
    }

    static Outfit.Kit kit(Garment... pieces) {
        return new Outfit.Kit(List.of(pieces), List.of());
    }

    static Pad pad(String id, double resistance, double area) {
        return new Pad(id, id, resistance, area, 0.1, 400);
    }

    static final Garment THIN_TOP = piece("thin top", GarmentKind.BASE_TOP, 0.155);
    static final Garment THIN_TIGHTS = piece("thin tights", GarmentKind.BASE_BOTTOM, 0.120);
    static final Garment WOOL_TOP = piece("wool top", GarmentKind.BASE_TOP, 0.245, Fabric.WOOL_KNIT);
    static final Garment WOOL_TIGHTS = piece("wool tights", GarmentKind.BASE_BOTTOM, 0.185, Fabric.WOOL_KNIT);
    static final Garment WIND_JACKET = piece("wind jacket", GarmentKind.WIND_TOP, 0.095);
    static final Garment TROUSERS = piece("trousers", GarmentKind.TROUSERS, 0.235);
    static final Garment VEST = piece("vest", GarmentKind.VEST, 0.150, batt(60));
    static final Garment PARKA = piece(
            "parka", GarmentKind.PARKA, 0.440, batt(0.1, Map.of(Zone.SCALP, 0.06, Zone.NECK, 0.06, Zone.FACE, 0.06)));
    static final Garment HEAVY_PARKA = piece(
            "heavy parka",
            GarmentKind.PARKA,
            0.885,
            batt(
                    0.13,
                    Map.of(
                            Zone.CHEST,
                            0.23,
                            Zone.BACK,
                            0.23,
                            Zone.PELVIS,
                            0.23,
                            Zone.SCALP,
                            0.1,
                            Zone.NECK,
                            0.1,
                            Zone.FACE,
                            0.1)));
    static final Garment OVERTROUSERS = piece("overtrousers", GarmentKind.INSULATED_TROUSERS, 0.305, batt(80));
    static final Garment HEAVY_OVERTROUSERS =
            piece("heavy overtrousers", GarmentKind.INSULATED_TROUSERS, 0.520, batt(130));
    static final Garment DOWN_JACKET = Garments.derive(new GarmentSpec(
                    "down jacket",
                    "down jacket",
                    GarmentKind.INSULATED_JACKET,
                    0.220,
                    null,
                    down(85, 700),
                    null,
                    true,
                    null,
                    0.008,
                    null,
                    null,
                    null,
                    null,
                    GarmentSpec.Finish.WORN,
                    null,
                    null))
            .garment();
    static final Garment COTTON_HOODIE = Garments.derive(new GarmentSpec(
                    "cotton hoodie",
                    "cotton hoodie",
                    GarmentKind.MID_TOP,
                    0.465,
                    Fabric.COTTON_KNIT,
                    null,
                    null,
                    true,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    GarmentSpec.Finish.GONE,
                    null,
                    null))
            .garment();
    static final Garment JEANS = piece("jeans", GarmentKind.TROUSERS, 0.410, Fabric.COTTON_DENIM);
    static final Garment CAP = piece("cap", GarmentKind.CAP, 0.060);
    static final Garment BALACLAVA = piece("balaclava", GarmentKind.BALACLAVA, 0.080);
    static final Garment LINERS = piece("liner gloves", GarmentKind.LINER_GLOVES, 0.045);
    static final Garment MITTENS = piece("mittens", GarmentKind.MITTENS, 0.190);
    static final Garment HEAVY_MITTENS = piece("heavy mittens", GarmentKind.MITTENS, 0.330);
    static final Garment COTTON_GLOVES = piece("cotton gloves", GarmentKind.GLOVES, 0.070, Fabric.COTTON_KNIT);
    static final Garment SOCKS = piece("socks", GarmentKind.SOCKS, 0.090);
    static final Garment BOOTS = piece("boots", GarmentKind.BOOTS, 1.9);
    static final Garment WINTER_BOOTS = piece("winter boots", GarmentKind.INSULATED_BOOTS, 2.7);
    static final Garment COTTON_SOCKS = piece("cotton socks", GarmentKind.SOCKS, 0.060, Fabric.COTTON_KNIT);
    static final Garment SHOES = piece("shoes", GarmentKind.SHOES, 1.0);

    static final Pad SIT_PAD = pad("sit pad", 0.30, 0.12);
    static final Pad MAT = pad("mat", 0.35, 0.60);

    static final Outfit.Kit LIGHT = new Outfit.Kit(
            List.of(CAP, THIN_TOP, THIN_TIGHTS, TROUSERS, WIND_JACKET, DOWN_JACKET, LINERS, SOCKS, BOOTS),
            List.of(SIT_PAD));
    static final Outfit.Kit TYPICAL = new Outfit.Kit(
            List.of(
                    CAP,
                    THIN_TOP,
                    THIN_TIGHTS,
                    TROUSERS,
                    WIND_JACKET,
                    VEST,
                    OVERTROUSERS,
                    PARKA,
                    LINERS,
                    MITTENS,
                    SOCKS,
                    BOOTS),
            List.of(SIT_PAD));
    static final Outfit.Kit HEAVY = new Outfit.Kit(
            List.of(
                    BALACLAVA,
                    WOOL_TOP,
                    WOOL_TIGHTS,
                    TROUSERS,
                    WIND_JACKET,
                    VEST,
                    HEAVY_OVERTROUSERS,
                    HEAVY_PARKA,
                    LINERS,
                    HEAVY_MITTENS,
                    SOCKS,
                    WINTER_BOOTS),
            List.of(MAT));
    static final Outfit.Kit COTTON = new Outfit.Kit(
            List.of(CAP, COTTON_HOODIE, JEANS, WIND_JACKET, DOWN_JACKET, COTTON_GLOVES, COTTON_SOCKS, SHOES),
            List.of());

    private static Fill batt(double arealMass, Map<Zone, Double> byZone) {
        return new Fill.Batt(Fill.BattType.CONTINUOUS_FILAMENT, arealMass, byZone);
    }

    static List<PatchStack> compile(Outfit outfit, Posture posture) {
        return Stacks.compile(outfit, posture, AREA, NOMINAL);
    }

    static Outfit.Kit with(Outfit.Kit kit, Garment... more) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        pieces.addAll(List.of(more));
        return new Outfit.Kit(pieces, kit.pads());
    }
}
