package longnight.night;

/**
 * Food or drink at a moment.
 *
 * @param time         [s from dusk, negative before it]
 * @param energy       metabolisable energy of the food [J], 0 and up
 * @param carbohydrate energy of its carbohydrate [J], 0 to {@code energy}
 * @param drink        mass of drink [kg], 0 to 2
 * @param celsius      temperature of the drink [degC], 0 to 100
 */
public record Intake(double time, double energy, double carbohydrate, double drink, double celsius) {}
