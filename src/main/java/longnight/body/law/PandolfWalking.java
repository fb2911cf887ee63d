package longnight.body.law;

/**
 * Rival walking law: the older load-carriage form, with its downhill correction.
 *
 * <p>Level and uphill {@code M = 1.5 W + 2.0 (W + L)(L/W)^2 + k (W + L)(1.5 V^2 + 0.35 V G)} [W]. Downhill the same with signed
 * G, less {@code k [G (W + L) V/3.5 - (W + L)(G + 6)^2/W + 25 - V^2]}, G signed in both places. Copies of the correction that
 * use the absolute grade make -8 % dearer than level, against its authors' own measurement. The correction starts 10 to 30 W
 * above level; from 0 to -2 % a straight line leads into it, and it is held at standing
 * where slow descents would fall below (both engineering estimates).
 *
 * <p>The level form alone must never see a negative grade: 80 kg with 20 kg at 1.34 m/s and -10 % would cost -67 W.
 *
 * <p><b>Source.</b> Pandolf, Givoni and Goldman 1977, J Appl Physiol 43:577; Santee, Allison, Blanchard and Small 2001,
 * Aviat Space Environ Med 72:562, and Yokota et al. 2004 (both from copies). <b>Valid</b> 0 to 2 m/s, load 0 to 70 kg; downhill
 * measured to -12 %. Slow unloaded walking comes out too low (40 % at 1.6 km/h against Levine et al. 2000), heavy loads too.
 */
public record PandolfWalking() implements WalkingHeat {
    /** Steepest descent measured for the correction [percent]. */
    public static final double STEEPEST_MEASURED = -12.0;

    private static final double BLEND = -2.0;

    @Override
    public double rate(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        WalkingHeat.requireRange(bodyMass, load, surfaceFactor, speed, 0, 2.0, grade, STEEPEST_MEASURED, STEEPEST_UP);
        if (grade >= 0) {
            return level(bodyMass, load, speed, grade, surfaceFactor);
        }
        double start = level(bodyMass, load, speed, 0, surfaceFactor);
        double corrected = downhill(bodyMass, load, speed, Math.min(grade, BLEND), surfaceFactor);
        double weight = Math.min(1.0, grade / BLEND);
        return Math.max(level(bodyMass, load, 0, 0, 1), start + weight * (corrected - start));
    }

    /**
     * The form of 1977 alone [W]; arguments as in {@link WalkingHeat#rate}.
     *
     * @throws IllegalArgumentException for a grade below 0
     */
    static double level(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        if (!(grade >= 0)) {
            throw new IllegalArgumentException("grade [percent] is " + grade + ", this form holds from 0 upwards");
        }
        return signed(bodyMass, load, speed, grade, surfaceFactor);
    }

    /** The corrected form alone [W], grade below 0. At rest the correction has no meaning and is left out. */
    static double downhill(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        double total = bodyMass + load;
        double off = grade + 6.0;
        double correction =
                surfaceFactor * (grade * total * speed / 3.5 - total * off * off / bodyMass + 25.0 - speed * speed);
        // the constant terms belong to walking: they come in over the first half metre per second (engineering
        // estimate)
        double moving = Math.min(1.0, speed / 0.5);
        return signed(bodyMass, load, speed, grade, surfaceFactor) - moving * correction;
    }

    private static double signed(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        double total = bodyMass + load;
        double ratio = load / bodyMass;
        return 1.5 * bodyMass
                + 2.0 * total * ratio * ratio
                + surfaceFactor * total * (1.5 * speed * speed + 0.35 * speed * grade);
    }
}
