package longnight.body.law;

/**
 * Metabolic rate of walking with a load, standing included at speed 0. Rival laws exist; {@link #of} is the one used.
 *
 * <p>What a law gives is the metabolic rate, not the heat: uphill a part becomes height, downhill height becomes heat.
 * Heat in the body = rate - {@link #externalWork}.
 *
 * <p><b>Surface.</b> A surface factor multiplies the cost of level walking above standing. Pandolf's own form multiplies the
 * climbing term as well and is kept as published; in the two others climbing is not multiplied, because lifting a mass costs
 * the same on any ground and a saving downhill must not grow in deep snow (engineering estimate, no source).
 *
 * <p><b>Heavy loads.</b> All laws here come from light to moderate loads and stay below what heavy packs cost: 10 to 20 % more
 * is likely once the load exceeds 0.4 of body mass (Looney et al. 2018 and 2022, abstracts; 12 to 33 % for Pandolf's form,
 * Drain et al. 2017, size from memory). {@link #isHeavy} tells; nothing is added.
 */
public interface WalkingHeat {
    /** Fastest level walk measured for the nominal law [m/s]. */
    double FASTEST = 1.96;
    /** Steepest descent of the nominal law [percent]. */
    double STEEPEST_DOWN = -40.0;
    /** Steepest climb of the nominal law [percent]. */
    double STEEPEST_UP = 45.0;
    /** Heaviest load of any of the laws [kg]. */
    double HEAVIEST = 70.0;

    /**
     * Metabolic rate [W].
     *
     * @param bodyMass      [kg], above 0
     * @param load          everything worn and carried [kg], 0 to 70
     * @param speed         along the path [m/s]; 0 for standing; range of the law
     * @param grade         rise over run [percent], negative downhill; range of the law
     * @param surfaceFactor [1], 1 for road to 4.2 for deep snow, see {@link WalkingSurface}
     * @throws IllegalArgumentException outside the law's range, or for NaN
     */
    double rate(double bodyMass, double load, double speed, double grade, double surfaceFactor);

    /** Metabolic rate [W] by the law used, {@link LooneyWalking}. */
    static double of(double bodyMass, double load, double speed, double grade, double surfaceFactor) {
        return LooneyWalking.LAW.rate(bodyMass, load, speed, grade, surfaceFactor);
    }

    /**
     * Power that goes into height [W], negative downhill: {@code m g v sin(slope)}, and downhill the share of it that ends
     * as heat in the walker and not in the ground.
     *
     * <p>Mechanics; level walking does no net external work. <b>Check value.</b> 100 kg, 1 m/s, 10 %: 97.6 W.
     *
     * @param totalMass    body and load [kg]
     * @param speed        along the path [m/s]
     * @param grade        [percent], signed
     * @param descentShare share of the height lost that warms the walker [1]
     */
    static double externalWork(double totalMass, double speed, double grade, double descentShare) {
        double slope = grade / 100.0;
        double power = totalMass * 9.80665 * speed * slope / Math.sqrt(1.0 + slope * slope);
        return grade < 0.0 ? descentShare * power : power;
    }

    /**
     * Metabolic rate at maximal oxygen uptake [W]. A march that asks for more cannot be walked; half of it is a hard day
     * (from memory).
     *
     * @param bodyMass   [kg]
     * @param peakOxygen [mL/(kg min)]
     */
    static double aerobicCeiling(double bodyMass, double peakOxygen) {
        return Met.oxygen(peakOxygen, bodyMass);
    }

    /** True when the load exceeds 0.4 of body mass and every law here is 10 to 20 % low or more. */
    static boolean isHeavy(double bodyMass, double load) {
        return load > 0.4 * bodyMass;
    }

    /** Refuses what no law knows, and what this one does not. */
    static void requireRange(
            double bodyMass,
            double load,
            double surfaceFactor,
            double speed,
            double slowest,
            double fastest,
            double grade,
            double down,
            double up) {
        requireBetween("body mass [kg]", bodyMass, Double.MIN_VALUE, Double.MAX_VALUE);
        requireBetween("load [kg]", load, 0.0, HEAVIEST);
        requireBetween("surface factor [1]", surfaceFactor, 1.0, WalkingSurface.DEEPEST);
        requireBetween("speed [m/s]", speed, slowest, fastest);
        requireBetween("grade [percent]", grade, down, up);
    }

    private static void requireBetween(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + ", allowed " + low + " to " + high);
        }
    }
}
