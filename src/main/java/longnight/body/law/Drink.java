package longnight.body.law;

import longnight.air.LatentHeat;

/**
 * Heat that a drink brings into the body, or that snow takes out of it. The heat capacity that the water adds to the body is
 * not counted (0.25 L: 0.4 %).
 *
 * <p>{@code m c (T - Tcore)}, water 4186 J/(kg K), ice 2100 J/(kg K) (textbook). <b>Check value.</b> 0.25 kg at 60 degC into
 * 37 degC: 24.1 kJ; 0.5 kg of snow at -15 degC: -260 kJ.
 */
public final class Drink {
    private static final double WATER = 4186;
    private static final double ICE = 2100;
    private static final double FREEZING = 273.15;

    private Drink() {}

    /**
     * Heat into the body [J], negative for a drink colder than it.
     *
     * @param mass    [kg]
     * @param celsius of the drink, 0 to 100 degC
     * @param core    temperature of the body's core [degC]
     */
    public static double heat(double mass, double celsius, double core) {
        if (!(celsius >= 0 && celsius <= 100)) {
            throw new IllegalArgumentException("drink [degC] is " + celsius + ", allowed 0 to 100");
        }
        return mass * WATER * (celsius - core);
    }

    /**
     * Heat into the body by eating snow [J], negative.
     *
     * @param mass    [kg]
     * @param celsius of the snow, 0 degC or below
     * @param core    temperature of the body's core [degC]
     */
    public static double snow(double mass, double celsius, double core) {
        if (!(celsius <= 0)) {
            throw new IllegalArgumentException("snow [degC] is " + celsius + ", allowed 0 or below");
        }
        return mass * (ICE * celsius - LatentHeat.fusion(FREEZING) - WATER * core);
    }
}
