package longnight.study;

import java.util.List;
import longnight.clothing.Garment;
import longnight.clothing.Pad;

/**
 * What is taken of one region, perhaps nothing.
 *
 * @param pieces from the skin outwards
 * @param pads   under the body
 * @param mass   [kg]
 * @param hooded covers the scalp
 */
record Choice(List<Garment> pieces, List<Pad> pads, double mass, boolean hooded) {

    Choice {
        pieces = List.copyOf(pieces);
        pads = List.copyOf(pads);
    }
}
