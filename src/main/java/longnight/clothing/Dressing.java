package longnight.clothing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What people wear over each other, and in which order: common practice, no source. */
public final class Dressing {

    private static final Set<GarmentKind> PARKAS = EnumSet.of(GarmentKind.PARKA);
    private static final Set<GarmentKind> FOOTWEAR =
            EnumSet.of(GarmentKind.SHOES, GarmentKind.BOOTS, GarmentKind.INSULATED_BOOTS);

    /** Kinds that lie next to the skin, and what nobody wears below them. */
    private static final Map<GarmentKind, Set<GarmentKind>> NEVER_BELOW = new EnumMap<>(Map.of(
            GarmentKind.BASE_TOP,
            EnumSet.of(
                    GarmentKind.MID_TOP,
                    GarmentKind.VEST,
                    GarmentKind.WIND_TOP,
                    GarmentKind.RAIN_TOP,
                    GarmentKind.INSULATED_JACKET,
                    GarmentKind.PARKA,
                    GarmentKind.CAPE),
            GarmentKind.BASE_BOTTOM,
            EnumSet.of(
                    GarmentKind.TROUSERS,
                    GarmentKind.WIND_TROUSERS,
                    GarmentKind.RAIN_TROUSERS,
                    GarmentKind.INSULATED_TROUSERS),
            GarmentKind.LINER_GLOVES,
            EnumSet.of(GarmentKind.GLOVES, GarmentKind.MITTENS),
            GarmentKind.SOCKS,
            FOOTWEAR));

    /** From the skin outwards, where the kinds are worn over each other. */
    private static final List<GarmentKind> OUTWARDS = List.of(
            GarmentKind.BASE_TOP,
            GarmentKind.BASE_BOTTOM,
            GarmentKind.MID_TOP,
            GarmentKind.VEST,
            GarmentKind.TROUSERS,
            GarmentKind.WIND_TOP,
            GarmentKind.WIND_TROUSERS,
            GarmentKind.INSULATED_JACKET,
            GarmentKind.INSULATED_TROUSERS,
            GarmentKind.PARKA,
            GarmentKind.RAIN_TROUSERS,
            GarmentKind.RAIN_TOP,
            GarmentKind.CAPE,
            GarmentKind.NECK_TUBE,
            GarmentKind.CAP,
            GarmentKind.BALACLAVA,
            GarmentKind.HOOD,
            GarmentKind.LINER_GLOVES,
            GarmentKind.GLOVES,
            GarmentKind.MITTENS,
            GarmentKind.SOCKS,
            GarmentKind.BOOTIES,
            GarmentKind.SHOES,
            GarmentKind.BOOTS,
            GarmentKind.INSULATED_BOOTS);

    private Dressing() {}

    /** Why two pieces do not go together. */
    public enum Reason {
        SECOND_PARKA,
        SECOND_FOOTWEAR,
        WRONG_ORDER
    }

    /**
     * Two pieces that nobody wears so.
     *
     * @param lower  place of the inner one in the list
     * @param upper  place of the outer one
     * @param reason why
     */
    public record Clash(int lower, int upper, Reason reason) {}

    /**
     * The first clash in a list of pieces, or null.
     *
     * @param worn    kinds from the skin outwards
     * @param layered whether two parkas or pairs of footwear may be worn over each other
     */
    public static @Nullable Clash firstClash(List<GarmentKind> worn, boolean layered) {
        @Nullable Clash clash = null;
        if (!layered) {
            clash = second(worn, PARKAS, Reason.SECOND_PARKA);
            clash = clash == null ? second(worn, FOOTWEAR, Reason.SECOND_FOOTWEAR) : clash;
        }
        return clash == null ? wrongOrder(worn) : clash;
    }

    private static @Nullable Clash second(List<GarmentKind> worn, Set<GarmentKind> kinds, Reason reason) {
        int first = -1;
        for (int i = 0; i < worn.size(); i++) {
            if (kinds.contains(worn.get(i))) {
                if (first >= 0) {
                    return new Clash(first, i, reason);
                }
                first = i;
            }
        }
        return null;
    }

    private static @Nullable Clash wrongOrder(List<GarmentKind> worn) {
        for (int i = 0; i < worn.size(); i++) {
            Set<GarmentKind> never = NEVER_BELOW.getOrDefault(worn.get(i), EnumSet.noneOf(GarmentKind.class));
            for (int j = 0; j < i; j++) {
                if (never.contains(worn.get(j))) {
                    return new Clash(j, i, Reason.WRONG_ORDER);
                }
            }
        }
        return null;
    }

    /** Shoes and boots: one pair is worn. */
    public static boolean isFootwear(GarmentKind kind) {
        return FOOTWEAR.contains(kind);
    }

    /** Place of a kind in the usual order from the skin outwards; only kinds on the same part of the body compare. */
    public static int rank(GarmentKind kind) {
        return OUTWARDS.indexOf(kind);
    }

    /**
     * The pieces in the usual order from the skin outwards; of one kind, those come first that are listed first.
     *
     * @param pieces in any order
     */
    public static List<Garment> inOrder(List<Garment> pieces) {
        List<Garment> ordered = new ArrayList<>(pieces);
        ordered.sort(Comparator.comparingInt(piece -> rank(piece.spec().kind())));
        return List.copyOf(ordered);
    }
}
