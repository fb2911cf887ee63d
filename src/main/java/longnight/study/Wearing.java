package longnight.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;

/**
 * What a phase of a plan does with a kit that is not the one for which it was written: the kinds that the phase leaves off
 * are off, the kinds that it wears open are open, and pads that it does not use stay in the pack.
 *
 * @param off    kinds of the night's kit that the phase does not wear
 * @param open   kinds that it wears open
 * @param padded whether pads lie under the body
 */
record Wearing(Set<GarmentKind> off, Set<GarmentKind> open, boolean padded) {

    static final Wearing ALL = new Wearing(EnumSet.noneOf(GarmentKind.class), EnumSet.noneOf(GarmentKind.class), true);

    /** As a phase dresses against the night's own kit. */
    static Wearing of(Outfit.Kit night, Outfit.Kit phase) {
        Set<GarmentKind> off = EnumSet.noneOf(GarmentKind.class);
        Set<GarmentKind> open = EnumSet.noneOf(GarmentKind.class);
        for (Garment piece : night.pieces()) {
            off.add(piece.spec().kind());
        }
        for (Garment piece : phase.pieces()) {
            off.remove(piece.spec().kind());
            if (night.pieces().stream().anyMatch(whole -> whole.opened().equals(piece) && !whole.equals(piece))) {
                open.add(piece.spec().kind());
            }
        }
        return new Wearing(off, open, !phase.pads().isEmpty() || night.pads().isEmpty());
    }

    List<Garment> pieces(List<Garment> all) {
        return all.stream()
                .filter(piece -> !off.contains(piece.spec().kind()))
                .map(piece -> open.contains(piece.spec().kind()) && piece.canOpen() ? piece.opened() : piece)
                .toList();
    }

    List<Pad> pads(List<Pad> all) {
        return padded ? all : List.of();
    }

    Outfit.Kit of(Outfit.Kit kit) {
        return new Outfit.Kit(pieces(kit.pieces()), pads(kit.pads()));
    }
}
