package longnight.scenario;

import java.util.List;
import longnight.assumption.Guess;
import longnight.clothing.Garment;
import longnight.clothing.Pad;

/**
 * All that a wardrobe holds, ready to be worn.
 *
 * @param pieces  in the order written
 * @param pads    in the order written
 * @param guesses everything that was guessed about them
 */
public record Gear(List<Garment> pieces, List<Pad> pads, List<Guess> guesses) {
    public Gear {
        pieces = List.copyOf(pieces);
        pads = List.copyOf(pads);
        guesses = List.copyOf(guesses);
    }
}
