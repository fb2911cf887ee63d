package longnight.body.law;

import longnight.figure.BodySegment;

/**
 * Sweat by the controller of the body model, and a heat balance to hold it against.
 *
 * <p>{@code 371.2 W/K x head-core error + 33.6 W/K x skin signal}, not below 0, as heat of evaporation; shared out over the skin
 * and multiplied by {@code 2^(skin error/10)} where it arises; in all never above the cap. What the skin can evaporate is not
 * decided here: what is not evaporated wets.
 *
 * <p><b>Source.</b> Stolwijk 1971 (NASA CR-1855), Tanabe et al. 2002, Energy and Buildings 34:637; cap: engineering estimate.
 *
 * @param coreGain [W/K]
 * @param skinGain [W/K]
 * @param cap      largest rate of the whole body [kg/s]
 */
public record Sweat(double coreGain, double skinGain, double cap) {
    /** Heat of evaporation from skin [J/kg] (Wenger 1972, from memory: 2.43 kJ/g). */
    public static final double LATENT = 2.43e6;

    private static final double LN2_PER_10K = StrictMath.log(2.0) / 10.0;

    /** Shares per side, Tanabe et al. 2002 (from a copy of its tables); their sum over the body is 1.002. */
    private static final double[] SHARE = {0.081, 0.146, 0.129, 0.206, 0.051, 0.026, 0.016, 0.073, 0.036, 0.018};

    /**
     * Sweat of each segment, both sides [kg/s]; returns the whole. Allocates nothing.
     *
     * @param headError  head core above its set level [K]
     * @param skinSignal sensor-weighted skin temperature above neutral [K]
     * @param skinError  skin of each segment above neutral [K]
     * @param out        result for each segment, overwritten
     */
    public double rates(double headError, double skinSignal, double[] skinError, double[] out) {
        double drive = Math.max(0.0, coreGain * headError + skinGain * skinSignal) / LATENT;
        double whole = 0;
        for (int s = 0; s < BodySegment.COUNT; s++) {
            double here = 0;
            if (drive > 0) {
                int sides = s < BodySegment.UPPER_ARM.ordinal() ? 1 : 2;
                here = drive * sides * SHARE[s] * StrictMath.exp(LN2_PER_10K * skinError[s]);
            }
            out[s] = here;
            whole += here;
        }
        if (whole > cap) {
            for (int s = 0; s < BodySegment.COUNT; s++) {
                out[s] *= cap / whole;
            }
            whole = cap;
        }
        return whole;
    }

    /**
     * Sweat that a steady heat balance asks for [kg/s], 0 to 1 kg/h: what the body makes and neither breathes out nor passes
     * through clothing at a working skin of 33 degC, over the latent heat and the efficiency of its evaporation. For cross-checks
     * and first estimates (engineering estimate, no source; regressions from warm rooms ask for sweat at any cold and are not
     * used).
     *
     * @param heat        made in the body, less external work [W]
     * @param breathShare share of it that leaves with the breath [1]
     * @param area        body surface [m2]
     * @param air         operative temperature [degC]
     * @param resistance  of clothing in motion and the air on it [m2 K/W]
     * @param efficiency  share of sweat that cools the skin [1], 0.5 to 1
     */
    public static double byHeatBalance(
            double heat, double breathShare, double area, double air, double resistance, double efficiency) {
        double left = heat * (1.0 - breathShare) - (33.0 - air) / resistance * area;
        return Math.min(1.0 / 3600.0, Math.max(0.0, left) / (LATENT * efficiency));
    }
}
