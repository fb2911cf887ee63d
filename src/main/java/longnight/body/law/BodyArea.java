package longnight.body.law;

/**
 * Body surface area.
 *
 * <p>{@code A = 0.202 m^0.425 h^0.725} [m2], mass in kg, height in m.
 *
 * <p><b>Source.</b> DuBois and DuBois 1916 (from memory). <b>Check value.</b> 74.43 kg, 1.72 m: 1.8690 m2.
 */
public final class BodyArea {
    private BodyArea() {}

    /**
     * DuBois area [m2].
     *
     * @param mass   body mass [kg]
     * @param height height [m]
     */
    public static double duBois(double mass, double height) {
        return 0.202 * StrictMath.pow(mass, 0.425) * StrictMath.pow(height, 0.725);
    }
}
