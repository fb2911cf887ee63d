package longnight.body.law;

/**
 * Basal heat production.
 *
 * <p>{@code BMR = (10 m + 6.25 h - 5 age + s) kcal/day}, m in kg, h in cm, s = +5 for men, -161 for women.
 *
 * <p><b>Source.</b> Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241. <b>Valid</b> 19 to 78 years.
 * <b>Check value.</b> 74.43 kg, 172 cm, 30-year-old man: 81.1 W.
 */
public final class RestingHeat {
    private static final double WATT_PER_KCAL_DAY = 4184.0 / 86400.0;

    private RestingHeat() {}

    /**
     * Basal heat [W].
     *
     * @param mass   body mass [kg]
     * @param height height [m]
     * @param age    age [years]
     * @param male   true for the men's constant
     */
    public static double mifflin(double mass, double height, double age, boolean male) {
        return (10.0 * mass + 625.0 * height - 5.0 * age + (male ? 5.0 : -161.0)) * WATT_PER_KCAL_DAY;
    }
}
