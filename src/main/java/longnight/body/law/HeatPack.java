package longnight.body.law;

/**
 * A pack that gives its heat at an even rate and is then spent. Real packs vary widely in duration and temperature, and those
 * that need air give less when it is scarce.
 *
 * @param heat     all it gives [J]
 * @param duration over which it gives it [s], above 0
 */
public record HeatPack(double heat, double duration) {

    /** Enthalpy of {@code 4 Fe + 3 O2 -> 2 Fe2O3}, 822 kJ per mole of oxide (textbook), per mass of iron [J/kg]. */
    public static final double IRON = 822e3 / (2 * 55.845e-3);

    /** Pack of iron powder that takes up air. <b>Check value.</b> 50 g of iron over 10 h: 368 kJ, 10.2 W. */
    public static HeatPack iron(double ironMass, double duration) {
        return new HeatPack(ironMass * IRON, duration);
    }

    /** Pack that sets, for example sodium acetate; latent heat [J/kg] 264 to 289 kJ/kg (reference works). */
    public static HeatPack setting(double mass, double latent, double duration) {
        return new HeatPack(mass * latent, duration);
    }

    /** Share of the heat given so far [1], with the time since it was started [s]. */
    public double given(double elapsed) {
        return Math.min(1.0, Math.max(0.0, elapsed / duration));
    }
}
