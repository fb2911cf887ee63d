package longnight.body.law;

/**
 * Body fat from body mass index when nobody measured it.
 *
 * <p>{@code BF = 1.20 BMI + 0.23 age - 10.8 (men) - 5.4} [percent].
 *
 * <p><b>Source.</b> Deurenberg, Weststrate and Seidell 1991 (from memory). <b>Check value.</b> 80 kg, 1.78 m, 35-year-old
 * man: 22.2 percent.
 */
public final class BodyFat {
    private BodyFat() {}

    /** Body fat [percent] from mass [kg], height [m], age [years] and sex. */
    public static double deurenberg(double mass, double height, double age, boolean male) {
        return 1.20 * mass / (height * height) + 0.23 * age - (male ? 10.8 : 0.0) - 5.4;
    }
}
