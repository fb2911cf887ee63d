package longnight.body.law;

/**
 * Heat production [W] from the measures that literature gives it in. Two of them are called by the same three letters
 * and differ by a quarter or more for the same person, so each has its own name here.
 *
 * <p><b>Source.</b> Comfort unit 58.2 W/m2 of body surface: ISO 7730. Exercise unit 3.5 mL of oxygen or 1 kcal per kg: 2011
 * Compendium of Physical Activities (Ainsworth et al.). Oxygen 20.1 J/mL for mixed fuel, 19.6 (fat) to 21.1 (carbohydrate):
 * from memory. <b>Check value.</b> One unit each for 70 kg and 1.8 m2: 104.8 and 81.3 W.
 */
public final class Met {
    /** Heat per oxygen used, mixed fuel [J/mL]. */
    public static final double JOULE_PER_ML = 20.1;

    private static final double KCAL = 4184.0;
    private static final double PER_AREA = 58.2;
    private static final double PER_MASS = KCAL / 3600.0;

    private Met() {}

    /** Units of thermal comfort (58.2 W/m2), with body surface [m2]. */
    public static double comfort(double units, double area) {
        return units * PER_AREA * area;
    }

    /** Units of exercise tables (1 kcal/(kg h)), with body mass [kg]. */
    public static double exercise(double units, double mass) {
        return units * PER_MASS * mass;
    }

    /** Oxygen uptake [mL/(kg min)], with the mass it is given for [kg]. */
    public static double oxygen(double uptake, double mass) {
        return uptake * mass / 60.0 * JOULE_PER_ML;
    }

    /** Dietary energy over a day [kcal/day]. */
    public static double kcalPerDay(double kcal) {
        return kcal * KCAL / 86400.0;
    }
}
