package longnight.night;

/**
 * Walking with a load.
 *
 * @param speed   [m/s], above 0 to 1.96
 * @param grade   [percent], negative downhill, -40 to 45
 * @param load    carried mass with clothing [kg], 0 to 70
 * @param surface factor on the level cost of walking [1], 1 on a hard road to 4.2 in deep snow
 */
public record March(double speed, double grade, double load, double surface) {}
