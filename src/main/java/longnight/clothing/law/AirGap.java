package longnight.clothing.law;

/**
 * A still air gap between two layers of cloth: conduction and radiation side by side.
 *
 * <p><b>Source.</b> Parallel-plate radiation and conduction, textbook; emissivity of cloth against cloth 0.82 and the
 * upper limit of 12 mm, beyond which convection takes over: engineering estimates, no source (note C-14). Diffusion of
 * vapour: D = 2.26e-5 (T/273.15)^1.81 m2/s, from memory (note C-71).
 */
public final class AirGap {
    /** Conductivity of still air in cloth [W/(m K)], 0.0241 + 7.6e-5 t at 10 degC (from memory, note C-60). */
    public static final double AIR_CONDUCTIVITY = 0.0249;

    private static final double GAP_CONDUCTIVITY = 0.025;
    private static final double MEAN_TEMPERATURE = 283.15;
    private static final double EMISSIVITY = 0.82;
    private static final double STEFAN_BOLTZMANN = 5.670374e-8;
    private static final double RADIATION =
            4 * EMISSIVITY * STEFAN_BOLTZMANN * MEAN_TEMPERATURE * MEAN_TEMPERATURE * MEAN_TEMPERATURE;
    private static final double CONVECTION_LIMIT = 0.012;

    private static final double GAS_CONSTANT_VAPOUR = 461.5;
    private static final double LATENT_HEAT = 2.43e6;
    /** Evaporative resistance per metre of still air [m Pa/W]. */
    private static final double VAPOUR_PER_METRE = GAS_CONSTANT_VAPOUR
            * MEAN_TEMPERATURE
            / (2.26e-5 * StrictMath.pow(MEAN_TEMPERATURE / 273.15, 1.81))
            / LATENT_HEAT;

    private AirGap() {}

    /**
     * Thermal resistance [m2 K/W] of a gap.
     *
     * @param thickness [m], 0 and up; more than 12 mm counts as 12 mm
     */
    public static double resistance(double thickness) {
        if (thickness <= 0) {
            return 0;
        }
        return 1 / (GAP_CONDUCTIVITY / Math.min(thickness, CONVECTION_LIMIT) + RADIATION);
    }

    /**
     * Evaporative resistance [m2 Pa/W] of still air, in a gap or between the fibres of a fill.
     *
     * @param thickness [m], 0 and up
     */
    public static double vapourResistance(double thickness) {
        return VAPOUR_PER_METRE * Math.max(0, thickness);
    }
}
