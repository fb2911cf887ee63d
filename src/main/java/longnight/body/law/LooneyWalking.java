package longnight.body.law;

/**
 * The walking law used, up and down.
 *
 * <p>{@code M/m = 1.44 + k (1.94 S^0.43 + 0.24 S^4) + 0.34 S G (1 - 1.05^(1 - 1.11^(G + 32)))} [W/kg], S in m/s, G in percent,
 * k the surface factor (not part of the published form, see {@link WalkingHeat}), m the total mass moved. One lay text reads
 * the mass as body mass alone; total mass is how the published users apply it.
 *
 * <p><b>Source.</b> Looney et al. 2019, Med Sci Sports Exerc 51:1954 (abstract; coefficients from two copies). <b>Valid</b>
 * level 0 to 1.96 m/s, standard error 0.20 W/kg; graded -40 to +45 %, 0.42 W/kg. <b>Check value.</b> 100 kg: 144, 362 and
 * 441 W at 0, 1.0 and 1.34 m/s; 695 W at 1.0 m/s and +10 %.
 */
public record LooneyWalking() implements WalkingHeat {
    static final LooneyWalking LAW = new LooneyWalking();

    @Override
    public double rate(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        WalkingHeat.requireRange(bodyMass, load, surfaceFactor, speed, 0, FASTEST, grade, STEEPEST_DOWN, STEEPEST_UP);
        double square = speed * speed;
        double level = 1.94 * StrictMath.pow(speed, 0.43) + 0.24 * square * square;
        double bend = StrictMath.pow(1.05, 1.0 - StrictMath.pow(1.11, grade + 32.0));
        return (bodyMass + load) * (1.44 + surfaceFactor * level + 0.34 * speed * grade * (1.0 - bend));
    }
}
