package longnight.outdoors;

/**
 * Where the person sits. Words such as "forest" or "hollow" are turned into these numbers before they come here.
 *
 * @param altitude        altitude of the place [m], -400 to 6000
 * @param roughnessLength aerodynamic roughness length of the surroundings [m], 1e-4 to 2 (Davenport-Wieringa)
 * @param shelter         factor on the wind from walls, rocks, trees at the place [1], 0.03 to 1
 * @param skyGap          share of the sky seen through canopy or roof [1], 0 to 1
 * @param horizonAngle    elevation of the obstacle ring [rad], 0 to 1.5
 * @param temperatureOffset added to the record's air temperature [K] (lapse, cold pool), -15 to 15
 * @param ground          what is under the person
 * @param groundCelsius   temperature of the undisturbed ground [degC], -40 to 40, at most 0 under snow; NaN when unknown
 *     (then guessed from the air, see {@link SiteClimate})
 */
public record Site(
        double altitude,
        double roughnessLength,
        double shelter,
        double skyGap,
        double horizonAngle,
        double temperatureOffset,
        Ground ground,
        double groundCelsius) {

    /** @throws IllegalArgumentException when a value is NaN (ground temperature excepted) or outside its range */
    public Site {
        Ranges.require("site altitude [m]", altitude, -400, 6000);
        Ranges.require("site roughnessLength [m]", roughnessLength, 1e-4, 2);
        Ranges.require("site shelter [1]", shelter, 0.03, 1);
        Ranges.require("site skyGap [1]", skyGap, 0, 1);
        Ranges.require("site horizonAngle [rad]", horizonAngle, 0, 1.5);
        Ranges.require("site temperatureOffset [K]", temperatureOffset, -15, 15);
        if (!Double.isNaN(groundCelsius)) {
            Ranges.require("site groundCelsius [degC]", groundCelsius, -40, ground.snow() ? 0 : 40);
        }
    }

    /** The same place with another share of the sky seen [1]. */
    public Site withSky(double gap) {
        return new Site(
                altitude, roughnessLength, shelter, gap, horizonAngle, temperatureOffset, ground, groundCelsius);
    }

    /** A site whose ground temperature nobody measured. */
    public Site(
            double altitude,
            double roughnessLength,
            double shelter,
            double skyGap,
            double horizonAngle,
            double temperatureOffset,
            Ground ground) {
        this(altitude, roughnessLength, shelter, skyGap, horizonAngle, temperatureOffset, ground, Double.NaN);
    }
}
