package longnight.study;

import java.util.List;
import longnight.clothing.Garment;
import longnight.clothing.Pad;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/**
 * Which kit from a wardrobe has the least mass and still holds every night.
 *
 * @param nights   each person in each night; outfits say only how the phases of a plan dress, all are kits of real pieces
 * @param pieces   of the wardrobe
 * @param pads     of the wardrobe
 * @param demand   most that the hardest four hours of a night may ask, over heat at rest [1], above 0, at most 2
 * @param colder   by how much colder the weather is made than the nights say [K], 0 and up
 * @param others   how many next-lightest kits are asked for
 * @param settings of the runs that decide
 * @param threads  how many to use
 * @param mostRuns nights that may be run before the search gives up
 * @param front    shifts of the weather for which the question is asked again [K], colder is positive; empty for none
 */
public record LeastQuestion(
        List<Scenario> nights,
        List<Garment> pieces,
        List<Pad> pads,
        double demand,
        double colder,
        int others,
        NumericalSettings settings,
        int threads,
        int mostRuns,
        List<Double> front) {

    /** The same with the weather colder than the nights say by so much, and no more asked than the lightest kit. */
    LeastQuestion at(double kelvin) {
        return new LeastQuestion(nights, pieces, pads, demand, kelvin, 0, settings, threads, mostRuns, List.of());
    }
}
