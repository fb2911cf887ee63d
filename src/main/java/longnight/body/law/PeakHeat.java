package longnight.body.law;

/**
 * Largest total heat production while shivering.
 *
 * <p>{@code VO2 = 30.5 + 0.348 VO2max - 0.909 BMI - 0.233 age} [mL/kg/min], total, with 20.1 J per mL of oxygen.
 *
 * <p><b>Source.</b> Eyolfson, Tikuisis, Xu, Weseen and Giesbrecht 2001 (abstract), 15 fit adults near 25 years; oxygen
 * energy from memory. Outside 18 to 45 years or above BMI 30 the value is held at 2.5 times resting heat or more
 * (engineering estimate). <b>Check value.</b> VO2max 45, BMI 24, 30 years: 17.35 mL/kg/min = 5.81 W/kg.
 */
public final class PeakHeat {
    private PeakHeat() {}

    /**
     * Peak total heat [W].
     *
     * @param mass       [kg]
     * @param height     [m]
     * @param age        [years]
     * @param peakOxygen maximal oxygen uptake [mL/kg/min]
     * @param rest       heat at rest [W]
     */
    public static double eyolfson(double mass, double height, double age, double peakOxygen, double rest) {
        double bmi = mass / (height * height);
        double uptake = 30.5 + 0.348 * peakOxygen - 0.909 * bmi - 0.233 * age;
        return Math.max(Met.oxygen(uptake, mass), 2.5 * rest);
    }
}
