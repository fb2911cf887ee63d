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
 */
public record Site(
        double altitude,
        double roughnessLength,
        double shelter,
        double skyGap,
        double horizonAngle,
        double temperatureOffset,
        Ground ground) {}
