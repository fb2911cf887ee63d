package longnight.clothing.law;

/**
 * Insulation in moving air over insulation at rest, for one part of the body with the cloth on it. The ratio applies to
 * the whole resistance, skin to air, whose static air film is 0.085 m2 K/W on the outer surface; the film must not be
 * thinned a second time.
 *
 * <p><b>Sources.</b> Thick clothing: ISO 11079:2007, correction of total insulation for wind, walking and air permeability
 * (from memory); below 1 L/(m2 s) the permeability counts as 1, and the ratio never exceeds 1. Light clothing: ISO
 * 9920:2007 as restated in J Physiol Anthropol 2020, 39:23, Table 1; the speed is held at the minimum of the regression
 * (3.34 m/s), and the ratio never lies above that for thick clothing. In between, 1.2 to 1.6 clo, a linear blend
 * (engineering estimate, no source). Valid to 18 m/s, walking to 1.2 m/s, permeability to 1000 L/(m2 s).
 *
 * <p>Immutable; {@link #at} allocates nothing.
 */
public final class WindRatio {
    private static final double CLO = WholeBody.CLO;
    private static final double LIGHT_BELOW = 1.2 * CLO;
    private static final double THICK_ABOVE = 1.6 * CLO;
    private static final double REST = 0.15;
    private static final double LIGHT_LIMIT = REST + 0.281 / (2 * 0.044);
    private static final double BARE_LIMIT = REST + 0.533 / (2 * 0.069);
    private static final double FULLY_LIGHT = 0.6 * CLO;
    private static final double TOTAL_AT_FULLY_LIGHT = WholeBody.total(FULLY_LIGHT);

    private final double logPermeability;
    private final double powerPermeability;
    private final double resistance;
    private final double total;
    private final double factor;

    /**
     * @param airPermeability of all layers in series [L/(m2 s) at 100 Pa], 0 to infinity
     * @param resistance      intrinsic static resistance of the cloth, without the air film [m2 K/W], 0 and up
     * @param factor          the law's own uncertainty, 1 for none
     */
    public WindRatio(double airPermeability, double resistance, double factor) {
        double p = Math.min(Math.max(airPermeability, 1), 1000);
        this.logPermeability = StrictMath.log(p);
        this.powerPermeability = StrictMath.exp(0.075 * logPermeability);
        this.resistance = Math.max(0, resistance);
        this.total = WholeBody.total(this.resistance);
        this.factor = factor;
    }

    /**
     * Ratio [1], above 0, at most 1.
     *
     * @param speed air speed at this part of the body [m/s], 0 to 18; below 0.15 counts as 0.15
     * @param walk  walking speed [m/s], 0 to 1.2; 0 for a still person
     */
    public double at(double speed, double walk) {
        Breeze breeze = new Breeze();
        breeze.set(speed, walk);
        return at(breeze);
    }

    /** What wind and walking make alike of all that is worn in them, to be reckoned once. */
    public static final class Breeze {
        private double v;
        private double walk;
        private double thick;
        private double clothed = Double.NaN;
        private double bare = Double.NaN;

        /** Speeds as in {@link WindRatio#at(double, double)}. */
        public void set(double speed, double walking) {
            double now = Math.max(speed, REST);
            if (now != v || walking != walk) {
                v = now;
                walk = walking;
                thick = StrictMath.exp(-0.15 * v - 0.22 * walk);
                clothed = Double.NaN;
                bare = Double.NaN;
            }
        }

        private double clothed() {
            if (Double.isNaN(clothed)) {
                clothed = WindRatio.clothed(Math.min(v, LIGHT_LIMIT), walk);
            }
            return clothed;
        }

        private double bare() {
            if (Double.isNaN(bare)) {
                bare = WindRatio.bare(Math.min(v, BARE_LIMIT), walk);
            }
            return bare;
        }
    }

    /** Ratio [1] as {@link #at(double, double)}. */
    public double at(Breeze breeze) {
        double thick = Math.min(1, 0.54 * powerPermeability * breeze.thick - 0.06 * logPermeability + 0.5);
        double ratio = thick;
        if (resistance < THICK_ABOVE) {
            double light = Math.min(lightAt(breeze), thick);
            double share = Math.min(1, Math.max(0, (resistance - LIGHT_BELOW) / (THICK_ABOVE - LIGHT_BELOW)));
            ratio = light + share * (thick - light);
        }
        return Math.min(1, ratio * factor);
    }

    private double lightAt(Breeze breeze) {
        if (resistance >= FULLY_LIGHT) {
            return breeze.clothed();
        }
        return ((FULLY_LIGHT - resistance) * breeze.bare() * WholeBody.STILL_AIR
                        + resistance * breeze.clothed() * TOTAL_AT_FULLY_LIGHT)
                / (FULLY_LIGHT * total);
    }

    /** One-off form of the constructor and {@link #at}. */
    public static double of(double speed, double airPermeability, double walk, double resistance) {
        return new WindRatio(airPermeability, resistance, 1).at(speed, walk);
    }

    /** ISO 9920:2007, clothing of 0.6 clo and more, to 3.5 m/s [1]. */
    public static double clothed(double v, double walk) {
        double x = v - REST;
        return StrictMath.exp(-0.281 * x + 0.044 * x * x - 0.492 * walk + 0.176 * walk * walk);
    }

    /** ISO 9920:2007, the bare body's air layer, to 3.5 m/s [1]. */
    public static double bare(double v, double walk) {
        double x = v - REST;
        return StrictMath.exp(-0.533 * x + 0.069 * x * x - 0.462 * walk + 0.201 * walk * walk);
    }

    /** ISO 9920:2007, evaporative resistance, to 3.5 m/s [1]. */
    public static double vapour(double v, double walk) {
        double x = v - REST;
        return StrictMath.exp(-0.468 * x + 0.080 * x * x - 0.874 * walk + 0.358 * walk * walk);
    }

    /**
     * Ratio of evaporative resistance from the ratio of dry resistance [1], ISO 9920:2007: 0.3 - 0.5 c + 1.2 c2, which has
     * its smallest value at c = 0.21.
     *
     * @param dry ratio of dry resistance [1], above 0, at most 1
     */
    public static double vapourFromDry(double dry) {
        double c = Math.max(dry, 0.5 / 2.4);
        return 0.3 - 0.5 * c + 1.2 * c * c;
    }

    /**
     * A second law for thick clothing [1], Havenith and Nilsson (2004), with the erratum of 2005 (from memory), valid for
     * 0.4 to 18 m/s. It is milder than the one in use by up to 0.08.
     */
    public static double havenithNilsson(double v, double walk, double airPermeability) {
        double x = v - 0.4;
        return StrictMath.exp((-0.0512 * x + 0.794e-3 * x * x - 0.0639 * walk)
                * StrictMath.pow(Math.min(Math.max(airPermeability, 1), 1000), 0.1434));
    }
}
