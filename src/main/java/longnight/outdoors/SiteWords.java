package longnight.outdoors;

import java.util.List;
import java.util.Optional;
import longnight.outdoors.law.SnowConductivity;

/**
 * Words for places and grounds and the numbers they stand for. Every number is a guess that a caller must show and let
 * people override; none of it is measured at the place.
 */
public final class SiteWords {

    private static final String ROUGHNESS = "roughness: Davenport-Wieringa classes (Stull)";
    private static final String ESTIMATE = "engineering estimate, no source";

    /**
     * A kind of place.
     *
     * @param word              the word
     * @param roughnessLength   [m]
     * @param shelter           factor on wind near the ground [1]
     * @param skyGap            share of the sky seen through canopy or roof [1]
     * @param horizonAngle      obstacle ring [rad]
     * @param temperatureOffset against the record's air [K]
     * @param source            where the numbers come from
     */
    public record Exposure(
            String word,
            double roughnessLength,
            double shelter,
            double skyGap,
            double horizonAngle,
            double temperatureOffset,
            String source) {

        /**
         * Roughness [m] with this ground: snow buries grass, not trees (Davenport-Wieringa: snow-covered fields 0.005).
         * With the grass value the wind at a sitter's height would be taken a quarter too low.
         */
        public double roughnessOn(Ground ground) {
            return ground.snow() && roughnessLength <= 0.03 ? Math.min(roughnessLength, 0.005) : roughnessLength;
        }
    }

    /**
     * A kind of ground.
     *
     * @param ground the ground, named by the word
     * @param source where its numbers come from
     */
    public record Floor(Ground ground, String source) {}

    private static final List<Exposure> EXPOSURES = List.of(
            place("open", 0.03, 1, 1, 0, 0, ROUGHNESS + ", open grass"),
            place("snowfield", 0.005, 1, 1, 0, 0, ROUGHNESS + ", snow-covered fields"),
            place(
                    "ridge",
                    0.005,
                    1,
                    1,
                    0,
                    0,
                    ROUGHNESS + ", bare snow; the speed-up over a crest is not modelled: raise the wind yourself"),
            place("scattered-trees", 0.25, 1, 0.9, 0.1, 0, ROUGHNESS + "; sky " + ESTIMATE),
            place("forest-edge", 0.03, 0.7, 0.5, 0, 0, ESTIMATE),
            place("open-forest", 0.03, 0.6, 0.5, 0, 0, "0.3 to 0.5 of the open wind at 1.5 m, sky: from memory"),
            place("dense-forest", 0.03, 0.3, 0.15, 0, 0, "0.1 to 0.3 of the open wind at 1.5 m, sky: from memory"),
            place(
                    "hollow",
                    0.03,
                    0.7,
                    1,
                    0.17,
                    -4,
                    ESTIMATE + "; cold pool -2 to -8 K, in closed basins far more (Whiteman et al. 2004)"),
            place("boulders", 0.03, 0.4, 0.8, 0.2, 0, ESTIMATE),
            place(
                    "wall-lee",
                    0.03,
                    0.3,
                    0.75,
                    0,
                    0,
                    "solid wall at two heights' distance, from memory; sky " + ESTIMATE),
            place("snow-trench", 0.005, 0.1, 1, 0.8, 0, "0.05 to 0.1 of the open wind, from memory"),
            place("rock-overhang", 0.03, 0.4, 0.2, 0, 0, ESTIMATE));

    private static final List<Floor> FLOORS = List.of(
            snow("snow", 350),
            snow("packed-snow", 450),
            floor("ice", 2.35, 1.88e6, 0.5, "Moene and van Dam 2014, table 2.2"),
            floor("dry-soil", 0.24, 1.28e6, 0.5, "sandy soil, dry: Moene and van Dam 2014, table 2.2"),
            floor("moist-soil", 0.9, 2.27e6, 0.5, "clay soil, moist: Moene and van Dam 2014, table 2.2"),
            floor("wet-soil", 1.4, 3.10e6, 0.15, "clay soil, wet: Moene and van Dam 2014, table 2.2"),
            floor("frozen-soil", 1.3, 1.82e6, 0.5, "moist clay times 1.45 (k) and 0.8 (C), from memory"),
            floor("turf", 0.27, 2.13e6, 0.5, "peat, half wet: Moene and van Dam 2014, table 2.2"),
            floor("wet-turf", 0.50, 4.01e6, 0.15, "peat, wet: Moene and van Dam 2014, table 2.2"),
            floor("rock", 2.9, 2.03e6, 0.15, "Moene and van Dam 2014, table 2.2"),
            floor("litter", 0.065, 0.10e6, 1, "like dry peat; from memory, low confidence"),
            floor("boughs", 0.085, 0.20e6, 1, "0.1 m under load; from memory, low confidence"));

    private SiteWords() {}

    /** All words for places, with their numbers. */
    public static List<Exposure> exposures() {
        return EXPOSURES;
    }

    /** All words for grounds, with their numbers. */
    public static List<Floor> floors() {
        return FLOORS;
    }

    /** The place a word stands for; empty when the word is unknown. */
    public static Optional<Exposure> exposure(String word) {
        return EXPOSURES.stream().filter(e -> e.word().equals(word)).findFirst();
    }

    /** The ground a word stands for; empty when the word is unknown. */
    public static Optional<Floor> floor(String word) {
        return FLOORS.stream().filter(f -> f.ground().name().equals(word)).findFirst();
    }

    private static Exposure place(
            String word, double roughness, double shelter, double gap, double horizon, double offset, String source) {
        return new Exposure(word, roughness, shelter, gap, horizon, offset, source);
    }

    /** Heat capacity of snow: that of ice by mass, 2090 J/(kg K), textbook. */
    private static Floor snow(String word, double density) {
        return new Floor(
                new Ground(word, SnowConductivity.calonne(density), 2090 * density, 1, true),
                "Calonne et al. 2011 at " + Math.round(density) + " kg/m3 (snow under a person); density " + ESTIMATE);
    }

    private static Floor floor(String word, double k, double c, double depressionShare, String source) {
        return new Floor(new Ground(word, k, c, depressionShare, false), source + "; surface cooling " + ESTIMATE);
    }
}
