package longnight.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.night.Phase;
import longnight.night.Scenario;
import org.jspecify.annotations.Nullable;

/**
 * The same night in other clothes, phase by phase.
 *
 * <ul>
 *   <li>A piece taken away is gone from every phase, and so is the water it was said to hold.
 *   <li>A piece added is worn in the phases of the night that wear all of the kit; in all others it waits in the pack, and it
 *       begins dry.
 *   <li>A piece exchanged is replaced in every phase that wears it, as damp per dry mass as the one before it.
 *   <li>Two pieces swapped are swapped in every phase that wears them one directly over the other.
 * </ul>
 */
final class Rewear {
    private Rewear() {}

    static Scenario without(Scenario night, String id) {
        return every(dampOf(night, id, null), kit -> kept(kit, id));
    }

    static Scenario with(Scenario night, Garment piece) {
        Set<String> whole = ids((Outfit.Kit) night.outfit());
        List<Phase> phases = night.plan().phases().stream()
                .map(phase -> phase.from() >= 0 && phase.outfit() instanceof Outfit.Kit kit && ids(kit).equals(whole)
                        ? phase.wearing(added(kit, piece))
                        : phase)
                .toList();
        Outfit.Kit all = (Outfit.Kit) night.outfit();
        return night.withPlan(night.plan().withPhases(phases)).withOutfit(night.kitName(), added(all, piece));
    }

    static Scenario exchanged(Scenario night, String id, Garment piece) {
        return every(
                dampOf(night, id, piece.spec().id()),
                kit -> new Outfit.Kit(
                        kit.pieces().stream()
                                .map(each -> each.spec().id().equals(id) ? piece : each)
                                .toList(),
                        kit.pads()));
    }

    static Scenario swapped(Scenario night, String lower, String upper) {
        return every(night, kit -> {
            List<Garment> pieces = new ArrayList<>(kit.pieces());
            for (int i = 0; i + 1 < pieces.size(); i++) {
                if (pieces.get(i).spec().id().equals(lower)
                        && pieces.get(i + 1).spec().id().equals(upper)) {
                    pieces.add(i, pieces.remove(i + 1));
                    break;
                }
            }
            return new Outfit.Kit(pieces, kit.pads());
        });
    }

    static Scenario hoodDown(Scenario night, String id) {
        return every(
                night,
                kit -> new Outfit.Kit(
                        kit.pieces().stream()
                                .map(each -> each.spec().id().equals(id) ? each.hoodDown() : each)
                                .toList(),
                        kit.pads()));
    }

    /** Other pads in every phase that lies on pads. */
    static Scenario on(Scenario night, List<Pad> pads) {
        return every(
                night, kit -> kit.pads().isEmpty() && kit != night.outfit() ? kit : new Outfit.Kit(kit.pieces(), pads));
    }

    /** A change made to what is worn in every phase. */
    static Scenario every(Scenario night, UnaryOperator<Outfit.Kit> change) {
        List<Phase> phases = night.plan().phases().stream()
                .map(phase -> phase.outfit() instanceof Outfit.Kit kit ? phase.wearing(change.apply(kit)) : phase)
                .toList();
        return night.withPlan(night.plan().withPhases(phases))
                .withOutfit(night.kitName(), change.apply((Outfit.Kit) night.outfit()));
    }

    private static Outfit.Kit kept(Outfit.Kit kit, String id) {
        List<Garment> pieces = kit.pieces().stream()
                .filter(each -> !each.spec().id().equals(id))
                .toList();
        if (pieces.isEmpty()) {
            throw new IllegalStateException("nothing left to wear without " + id);
        }
        return new Outfit.Kit(pieces, kit.pads());
    }

    /** Over the outermost piece whose kind is not usually worn over it. */
    static Outfit.Kit added(Outfit.Kit kit, Garment piece) {
        List<Garment> pieces = new ArrayList<>(kit.pieces());
        int rank = Dressing.rank(piece.spec().kind());
        int at = pieces.size();
        while (at > 0 && Dressing.rank(pieces.get(at - 1).spec().kind()) > rank) {
            at--;
        }
        pieces.add(at, piece);
        return new Outfit.Kit(pieces, kit.pads());
    }

    /** Hands the water of a piece on, or drops it. */
    private static Scenario dampOf(Scenario night, String id, @Nullable String heir) {
        Map<String, Double> damp = new HashMap<>(night.plan().damp());
        @Nullable Double share = damp.remove(id);
        if (share == null) {
            return night;
        }
        if (heir != null) {
            damp.put(heir, share);
        }
        return night.withPlan(night.plan().withDamp(damp));
    }

    static Set<String> ids(Outfit.Kit kit) {
        Set<String> ids = new LinkedHashSet<>();
        kit.pieces().forEach(piece -> ids.add(piece.spec().id()));
        return ids;
    }
}
