package longnight.body.law;

/**
 * Rival walking law of exercise prescription: {@code VO2 = 3.5 + k 0.1 S + 1.8 S G} [mL/(kg min)], S in m/min, G a fraction, k
 * the surface factor (not part of the published form, see {@link WalkingHeat}). Published per kg of body; here per kg of body
 * and load (engineering estimate).
 *
 * <p><b>Source.</b> ACSM's Guidelines for Exercise Testing and Prescription, 10th edition. <b>Valid</b> from 50 m/min and not
 * downhill; upper limit 100 m/min from memory. <b>Check value.</b> 80 kg, 1.34 m/s, level: 309 W.
 */
public record AcsmWalking() implements WalkingHeat {
    private static final double SLOWEST = 50.0 / 60.0;
    private static final double QUICKEST = 100.0 / 60.0;

    @Override
    public double rate(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        WalkingHeat.requireRange(bodyMass, load, surfaceFactor, speed, SLOWEST, QUICKEST, grade, 0, STEEPEST_UP);
        double perMinute = 60.0 * speed;
        double uptake = 3.5 + surfaceFactor * 0.1 * perMinute + 1.8 * perMinute * grade / 100.0;
        return Met.oxygen(uptake, bodyMass + load);
    }

    /**
     * Stepping up and down a step [W]: {@code VO2 = 3.5 + 0.2 f + 1.33 x 1.8 f h}. Valid 12 to 30 steps/min (from memory).
     *
     * @param mass   [kg]
     * @param rhythm steps per minute
     * @param height of the step [m]
     */
    public static double stepping(double mass, double rhythm, double height) {
        return Met.oxygen(3.5 + 0.2 * rhythm + 1.33 * 1.8 * rhythm * height, mass);
    }
}
