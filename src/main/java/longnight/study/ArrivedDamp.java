package longnight.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.clothing.Fabric;
import longnight.clothing.Fill;
import longnight.clothing.Garment;
import longnight.clothing.Garments;
import longnight.clothing.Outfit;
import longnight.night.Phase;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * What it means to arrive damp: so much water per dry cloth and fill in every piece worn at the start, by material. A choice of
 * ours for comparing kits, about what a sweaty march or a wet evening leaves and a hand calls damp, far from dripping:
 * engineering estimate, no source. Where the night itself says how damp a piece is, that counts.
 */
public final class ArrivedDamp {
    /** In fills, down or batt [kg/kg]. */
    public static final double FILL = 0.20;

    private static final Map<Fabric, Double> CLOTH = Map.ofEntries(
            Map.entry(Fabric.POLYESTER_KNIT, 0.40),
            Map.entry(Fabric.WOOL_KNIT, 0.40),
            Map.entry(Fabric.COTTON_KNIT, 0.80),
            Map.entry(Fabric.COTTON_DENIM, 0.80),
            Map.entry(Fabric.ACRYLIC_KNIT, 0.40),
            Map.entry(Fabric.FLEECE, 0.20),
            Map.entry(Fabric.OPEN_PILE, 0.20),
            Map.entry(Fabric.NYLON_WOVEN, 0.20),
            Map.entry(Fabric.SOFTSHELL, 0.20),
            Map.entry(Fabric.LAMINATE, 0.10),
            Map.entry(Fabric.COATED, 0.10),
            Map.entry(Fabric.LEATHER, 0.10),
            Map.entry(Fabric.RUBBER_FELT, 0.10));

    private ArrivedDamp() {}

    /** Water per dry mass of a cloth [kg/kg]. */
    public static double cloth(Fabric fabric) {
        return Objects.requireNonNull(CLOTH.get(fabric));
    }

    /** The same night begun damp. */
    static Scenario damp(Scenario night) {
        Map<String, Double> damp = new HashMap<>();
        for (Garment piece : wornFirst(night)) {
            damp.put(piece.spec().id(), of(piece));
        }
        damp.putAll(night.plan().damp());
        return night.withPlan(night.plan().withDamp(damp));
    }

    /** The same night begun dry. */
    static Scenario dry(Scenario night) {
        return night.withPlan(night.plan().withDamp(Map.of()));
    }

    private static List<Garment> wornFirst(Scenario night) {
        Phase first = night.plan().phases().get(0);
        @Nullable Outfit worn = first.outfit();
        return (worn == null ? night.outfit() : worn) instanceof Outfit.Kit kit ? kit.pieces() : List.of();
    }

    private static double of(Garment piece) {
        @Nullable Fill fill = piece.spec().fill();
        return fill == null || fill instanceof Fill.None ? cloth(Garments.fabric(piece.spec())) : FILL;
    }
}
