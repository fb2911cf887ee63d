package longnight.body.law;

/**
 * Carbohydrate that a body can burn through a night, and what running low does to shivering. Immutable; the caller keeps two
 * numbers, the store and the food not yet used [J].
 *
 * <p><b>Split.</b> Carbohydrate gives a fixed share of all heat up to a multiple of rest, and all heat above it. Food covers at
 * most a share of the heat and at most 60 g/h, and never refills the store within a night. The store gives the rest; near its
 * end it gives less, in proportion, and fat takes over, so it never runs below nothing.
 *
 * <p><b>Effect.</b> None on heat made until the store is down to the knee; from there the peak of shivering falls smoothly to
 * the floor at an empty store. There is no cliff: the clock formulas for the end of shivering were outlasted in 18 of 24
 * trials (Tikuisis, Eyolfson, Xu and Giesbrecht 2002, Eur J Appl Physiol 87:50).
 *
 * <p><b>Source.</b> Shares 0.40 at 2.6 x rest: Haman et al. 2002 (muscle 30, blood sugar 10, fat 50, protein 10 %); extra heat
 * above it from carbohydrate alone: Haman et al. 2004, J Physiol (PMC1464733); same heat with low and high stores over 2 h:
 * Haman et al. 2004. Knee, floor and the limit on food: engineering estimate, no source. In walking the split takes more
 * carbohydrate than people who walk do (Romijn et al. 1993, direction from memory): a march leaves less here than in life.
 *
 * @param full      store when full [J]
 * @param share     share of heat from carbohydrate up to the turn [1]
 * @param turn      heat over rest above which all more comes from carbohydrate [1]
 * @param foodShare largest share of heat that food just eaten covers [1]
 * @param knee      share of the store below which the peak falls [1], above 0
 * @param floor     share of the peak left when the store is empty [1]
 */
public record Fuel(double full, double share, double turn, double foodShare, double knee, double floor) {
    /** Heat of burning glucose [J/kg] (textbook, from memory). */
    public static final double GLUCOSE = 15.6e6;
    /** Heat of burning body fat [J/kg] (textbook, from memory). */
    public static final double FAT = 39.5e6;

    /** Muscle in lean mass [1]: 29 kg in the 73 kg reference man of ICRP 89, 2002 (from memory). */
    private static final double MUSCLE = 0.47;

    /** Most that the gut takes up, 60 g/h [W] (from memory). */
    private static final double UPTAKE = 0.060 / 3600.0 * GLUCOSE;

    /** Time in which the gut hands over what is left, when little is left [s] (engineering estimate). */
    private static final double GUT_TIME = 1800.0;

    /**
     * Store when full [J].
     *
     * @param leanMass body without fat [kg]
     * @param inMuscle glycogen per mass of muscle [kg/kg]
     * @param inLiver  glycogen in the liver [kg]
     */
    public static double fullStore(double leanMass, double inMuscle, double inLiver) {
        return GLUCOSE * (inMuscle * MUSCLE * leanMass + inLiver);
    }

    /** Carbohydrate asked for [W] at a metabolic rate and a resting rate [W]. */
    public double demand(double rate, double rest) {
        double low = turn * rest;
        return share * Math.min(rate, low) + Math.max(0.0, rate - low);
    }

    /**
     * Of the demand, what food just eaten covers [W].
     *
     * @param rate metabolic rate [W]
     * @param rest resting rate [W]
     * @param gut  carbohydrate eaten and not yet used [J]
     */
    public double fromFood(double rate, double rest, double gut) {
        return Math.min(Math.min(UPTAKE, foodShare * rate), Math.min(demand(rate, rest), gut / GUT_TIME));
    }

    /**
     * Of the demand, what the store gives [W].
     *
     * @param rate  metabolic rate [W]
     * @param rest  resting rate [W]
     * @param gut   carbohydrate eaten and not yet used [J]
     * @param store what is left of the store [J]
     */
    public double fromStore(double rate, double rest, double gut, double store) {
        double ready = Math.min(1.0, Math.max(0.0, store / (knee * full)));
        return ready * (demand(rate, rest) - fromFood(rate, rest, gut));
    }

    /** Factor on the peak of shivering [1], floor to 1, with what is left of the store [J]. */
    public double peakFactor(double store) {
        double u = Math.min(1.0, Math.max(0.0, store / (knee * full)));
        return floor + (1.0 - floor) * u * u * (3.0 - 2.0 * u);
    }
}
