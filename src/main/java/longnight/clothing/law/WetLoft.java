package longnight.clothing.law;

/**
 * What water does to the thickness and the dry thermal resistance of one fill or cloth. Immutable, made once for a layer
 * and asked in the time loop: one exponential and one division a call at most.
 *
 * <p>Loft falls with water per dry mass X towards a least share, {@code l = least + (1 - least) exp(-X/range)}; what is left
 * conducts as air, as radiation (less of it, being denser) and as water in the volume that is left. Ice weighs less than
 * liquid in the loss of loft and, per volume, conducts about three times as well but hangs together less.
 *
 * <p><b>Source.</b> Engineering estimates, no source: shape and every constant (note C-74). Only the order of the fills
 * is known: Donovan (1986), US patent 4588635, says that down loses loft when wet and that fine polyester keeps more.
 * Collapse of the air gap beside wet cloth: fitted (note L-33) to total resistances of soaked ordinary clothing of 0.63 to
 * 0.68 of dry (two studies: a life-raft study of 2007 to 2009, and Castellani et al. 2001, J Appl Physiol 90:939).
 *
 * <p>Holds for dry heat only. Heat that evaporation carries is booked where the water is.
 */
public final class WetLoft {
    private static final double WATER_DENSITY = 1000;

    /** Conductivity of ice over that of water, rounded; textbook, 2.2 over 0.57. */
    private static final double ICE_OVER_WATER = 3;

    private static final double CORNER = 0.05;

    /**
     * The constants that all layers share.
     *
     * @param conduction      beta: conductivity per volume share of liquid [W/(m K)]
     * @param frostConduction share of the ice that conducts as a whole [1]
     * @param frostOnLoft     weight of ice in the loss of loft [1]
     */
    public record Constants(double conduction, double frostConduction, double frostOnLoft) {}

    private final double least;
    private final double range;
    private final double still;
    private final double radiating;
    private final double wet;
    private final double iceConducts;
    private final double iceCollapses;

    private WetLoft(double least, double range, double density, double still, double radiating, Constants constants) {
        if (!(least > 0 && least <= 1 && range > 0 && density > 0 && still > 0 && radiating >= 0)) {
            throw new IllegalArgumentException("wet loft: least " + least + " (allowed above 0 to 1), range " + range
                    + ", density " + density + " kg/m3, conductivity " + still + " W/(m K) (allowed above 0)");
        }
        this.least = least;
        this.range = range;
        this.still = still;
        this.radiating = radiating;
        this.wet = constants.conduction() * density / WATER_DENSITY;
        this.iceConducts = ICE_OVER_WATER * constants.frostConduction();
        this.iceCollapses = constants.frostOnLoft();
    }

    /**
     * A batt or down.
     *
     * @param least     share of the thickness left when soaked [1], above 0 to 1
     * @param range     water per dry mass over which loft is lost [1]
     * @param density   dry bulk density in place [kg/m3]
     * @param radiation C of {@link Loft} [W kg/(m4 K)]
     */
    public static WetLoft fill(double least, double range, double density, double radiation, Constants constants) {
        return new WetLoft(least, range, density, AirGap.AIR_CONDUCTIVITY, radiation / density, constants);
    }

    /**
     * A cloth, whose dry conductivity follows from its thickness and resistance.
     *
     * @param arealMass  dry mass per cloth area [kg/m2]
     * @param thickness  [m]
     * @param resistance dry [m2 K/W]
     */
    public static WetLoft cloth(
            double least, double range, double arealMass, double thickness, double resistance, Constants constants) {
        return new WetLoft(least, range, arealMass / thickness, thickness / resistance, 0, constants);
    }

    /**
     * Share of the dry thickness left [1]; the vapour path through a fill shortens with it.
     *
     * @param liquid liquid per dry mass [kg/kg], 0 and up
     * @param ice    ice per dry mass [kg/kg], 0 and up
     */
    public double loft(double liquid, double ice) {
        return least == 1 ? 1 : least + (1 - least) * StrictMath.exp(-(liquid + iceCollapses * ice) / range);
    }

    /** Share of the dry thermal resistance left [1]. Arguments as in {@link #loft}. */
    public double resistance(double liquid, double ice) {
        return resistance(loft(liquid, ice), liquid, ice);
    }

    /** As {@link #resistance(double, double)}, when the share of thickness left is known already. */
    public double resistance(double loft, double liquid, double ice) {
        double conductivity = still + radiating * loft + wet * (liquid + iceConducts * ice) / loft;
        return loft * (still + radiating) / conductivity;
    }

    /**
     * Share of its dry resistance that an air gap keeps beside wet thin cloth [1]: wet cloth clings. The greater of
     * {@code least} and exp(-X/range) with a rounded corner, 1 when dry.
     *
     * @param water liquid per dry mass of the cloths that face the gap, summed [kg/kg]
     * @param least share left when soaked [1]
     * @param range [kg/kg]
     */
    public static double cling(double water, double least, double range) {
        return rounded(StrictMath.exp(-water / range), least) - rounded(1, least) + 1;
    }

    private static double rounded(double a, double b) {
        return 0.5 * (a + b + Math.sqrt((a - b) * (a - b) + CORNER * CORNER));
    }
}
