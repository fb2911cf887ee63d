package longnight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.Zone;
import longnight.outdoors.OutdoorState;

/**
 * Which kits somebody would put on; common practice, no source. One piece of a kind; of wind and rain jacket, of wind and rain
 * trousers, of parka and cape, and of shoes and boots, one; two pads at most; worn in the usual order. Always a top with
 * sleeves, something over the legs and something to walk in; in air below 0 degC also something on head and hands.
 */
final class DressRules {

    private static final int MOST_PADS = 2;

    /** Of each set, one piece. */
    private static final List<Set<GarmentKind>> ONE_OF = List.of(
            EnumSet.of(GarmentKind.WIND_TOP, GarmentKind.RAIN_TOP),
            EnumSet.of(GarmentKind.WIND_TROUSERS, GarmentKind.RAIN_TROUSERS),
            EnumSet.of(GarmentKind.PARKA, GarmentKind.CAPE),
            EnumSet.of(GarmentKind.SHOES, GarmentKind.BOOTS, GarmentKind.INSULATED_BOOTS));

    private static final Set<GarmentKind> TOPS = EnumSet.of(GarmentKind.BASE_TOP, GarmentKind.MID_TOP);
    private static final Set<GarmentKind> FOOTWEAR =
            EnumSet.of(GarmentKind.SHOES, GarmentKind.BOOTS, GarmentKind.INSULATED_BOOTS);

    private DressRules() {}

    /** Every choice within a region, lightest first. */
    static List<Choice> choices(Region region, List<Garment> pieces, List<Pad> pads, boolean freezing) {
        List<Choice> all = new ArrayList<>();
        if (region == Region.PADS) {
            padChoices(pads, 0, List.of(), all);
        } else {
            List<List<Garment>> byKind = new ArrayList<>();
            Map<GarmentKind, List<Garment>> kinds = new EnumMap<>(GarmentKind.class);
            for (Garment piece : pieces) {
                if (region.holds(piece.spec().kind())) {
                    kinds.computeIfAbsent(piece.spec().kind(), kind -> new ArrayList<>())
                            .add(piece);
                }
            }
            byKind.addAll(kinds.values());
            pieceChoices(byKind, 0, List.of(), all);
            all.removeIf(choice -> !isDecent(region, choice, freezing));
        }
        all.sort(Comparator.comparingDouble(Choice::mass));
        return all;
    }

    private static void padChoices(List<Pad> pads, int from, List<Pad> taken, List<Choice> all) {
        all.add(new Choice(
                List.of(), taken, taken.stream().mapToDouble(Pad::mass).sum(), false));
        for (int k = from; k < pads.size() && taken.size() < MOST_PADS; k++) {
            padChoices(pads, k + 1, with(taken, pads.get(k)), all);
        }
    }

    private static void pieceChoices(List<List<Garment>> byKind, int kind, List<Garment> taken, List<Choice> all) {
        if (kind == byKind.size()) {
            all.add(of(taken));
            return;
        }
        pieceChoices(byKind, kind + 1, taken, all);
        for (Garment piece : byKind.get(kind)) {
            List<Garment> more = with(taken, piece);
            if (goesTogether(more)) {
                pieceChoices(byKind, kind + 1, more, all);
            }
        }
    }

    private static Choice of(List<Garment> taken) {
        double mass = taken.stream().mapToDouble(piece -> piece.spec().mass()).sum();
        return new Choice(Dressing.inOrder(taken), List.of(), mass, covers(taken, Zone.SCALP));
    }

    private static boolean covers(List<Garment> pieces, Zone zone) {
        return pieces.stream().anyMatch(piece -> piece.pieces().stream().anyMatch(layer -> layer.zone() == zone));
    }

    private static boolean goesTogether(List<Garment> pieces) {
        for (Set<GarmentKind> kinds : ONE_OF) {
            if (pieces.stream()
                            .filter(piece -> kinds.contains(piece.spec().kind()))
                            .count()
                    > 1) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDecent(Region region, Choice choice, boolean freezing) {
        return switch (region) {
            case TORSO -> hasAny(choice, TOPS);
            case LEGS -> !choice.pieces().isEmpty();
            case FEET -> hasAny(choice, FOOTWEAR);
            case HANDS -> !freezing || !choice.pieces().isEmpty();
            case HEAD, PADS -> true;
        };
    }

    private static boolean hasAny(Choice choice, Set<GarmentKind> kinds) {
        return choice.pieces().stream()
                .anyMatch(piece -> kinds.contains(piece.spec().kind()));
    }

    /** Whether a whole kit may be put on. Shares no code with the search over regions but these rules. */
    static boolean allows(Outfit.Kit kit, boolean freezing) {
        Set<GarmentKind> seen = EnumSet.noneOf(GarmentKind.class);
        for (Garment piece : kit.pieces()) {
            if (!seen.add(piece.spec().kind())) {
                return false;
            }
        }
        List<GarmentKind> order =
                kit.pieces().stream().map(piece -> piece.spec().kind()).toList();
        if (!goesTogether(kit.pieces())
                || kit.pads().size() > MOST_PADS
                || Dressing.firstClash(order, false) != null
                || order.stream().noneMatch(TOPS::contains)
                || order.stream().noneMatch(Region.LEGS::holds)
                || order.stream().noneMatch(FOOTWEAR::contains)) {
            return false;
        }
        return !freezing || order.stream().anyMatch(Region.HANDS::holds) && covers(kit.pieces(), Zone.SCALP);
    }

    /**
     * Whether somebody so dressed would put on one more piece: none of its kind and none that it rivals is on, and it goes in the
     * usual order under and over what is.
     */
    static boolean takes(Outfit.Kit kit, Garment piece) {
        List<GarmentKind> worn = Rewear.added(kit, piece).pieces().stream()
                .map(each -> each.spec().kind())
                .toList();
        return kit.pieces().stream()
                        .noneMatch(each -> each.spec().kind() == piece.spec().kind())
                && isNoRival(kit, piece)
                && Dressing.firstClash(worn, false) == null;
    }

    private static boolean isNoRival(Outfit.Kit kit, Garment piece) {
        return ONE_OF.stream()
                .filter(kinds -> kinds.contains(piece.spec().kind()))
                .noneMatch(kinds -> kit.pieces().stream()
                        .anyMatch(each -> kinds.contains(each.spec().kind())));
    }

    /** Whether one more pad goes under somebody who has these. */
    static boolean takesPad(Outfit.Kit kit, Pad pad) {
        return kit.pads().size() < MOST_PADS
                && kit.pads().stream().noneMatch(each -> each.id().equals(pad.id()));
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }

    /** Whether the air of any of the nights falls below 0 degC. */
    static boolean isFreezing(List<Trial> trials) {
        OutdoorState state = new OutdoorState();
        for (Trial trial : trials) {
            for (double t = 0; t <= trial.scenario().plan().duration(); t += 900) {
                trial.scenario().surroundings().at(t, state);
                if (state.airCelsius < 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
