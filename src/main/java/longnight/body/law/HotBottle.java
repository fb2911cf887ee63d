package longnight.body.law;

/**
 * A bottle of hot water inside the clothing, cooling towards skin and outside. Once it is colder than the skin it takes heat:
 * it is a load then, and nothing hides that.
 *
 * <p>Exact solution of a lumped body between two constant temperatures over a step (textbook); water 4186 J/(kg K).
 * <b>Check value.</b> 1 kg from 80 to 35 degC: 188.4 kJ.
 *
 * @param mass    of water [kg]
 * @param toSkin  conductance to the skin [W/K], not both 0
 * @param outside conductance through the clothing outside it [W/K]
 */
public record HotBottle(double mass, double toSkin, double outside) {
    private static final double WATER = 4186;

    /** Heat the bottle gives from one temperature to another [J]. */
    public double heat(double from, double to) {
        return mass * WATER * (from - to);
    }

    /**
     * Temperature after a step [degC].
     *
     * @param now  at its start [degC]
     * @param skin skin under the bottle [degC]
     * @param air  temperature outside the clothing [degC]
     * @param time length of the step [s]
     */
    public double after(double now, double skin, double air, double time) {
        double rest = rest(skin, air);
        return rest + (now - rest) * StrictMath.exp(-time * (toSkin + outside) / (mass * WATER));
    }

    /** Heat given to the skin over a step [J], negative when it takes; arguments as above. */
    public double given(double now, double skin, double air, double time) {
        double rest = rest(skin, air);
        double part = heat(now, after(now, skin, air, time)) / (toSkin + outside);
        return toSkin * (part + (rest - skin) * time);
    }

    private double rest(double skin, double air) {
        return (toSkin * skin + outside * air) / (toSkin + outside);
    }
}
