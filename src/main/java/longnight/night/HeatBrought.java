package longnight.night;

/**
 * Something warm carried inside the clothing, at the trunk.
 *
 * @param name    word shown to people
 * @param time    when it is put there [s from dusk]
 * @param bottle  mass of water in a bottle [kg]; 0 for a pack
 * @param celsius temperature of the bottle at that time [degC]
 * @param heat    heat of a pack that reaches the body [J]; 0 for a bottle
 * @param duration how long a pack gives [s]
 */
public record HeatBrought(String name, double time, double bottle, double celsius, double heat, double duration) {}
