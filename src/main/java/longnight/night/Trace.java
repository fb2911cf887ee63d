package longnight.night;

/**
 * The fine series for charts and event times, one entry per recorded step, the first at dusk. Heats in J since dusk,
 * temperatures in degC, demand as ratio (NaN before a full window).
 *
 * @param time            [s]
 * @param shortfall       [J]
 * @param paidByHeatMade  [J]
 * @param paidByShell     [J]
 * @param paidByCore      [J]
 * @param coreHeatDeficit against the own set level [J]
 * @param lineAt35        core-heat deficit that corresponds to a core of 35 degC at that time [J]
 * @param lineAt32        the same for 32 degC [J]
 * @param demand          [1]
 * @param core            [degC]
 * @param meanSkin        [degC]
 * @param hand            [degC]
 * @param foot            [degC]
 */
public record Trace(
        double[] time,
        double[] shortfall,
        double[] paidByHeatMade,
        double[] paidByShell,
        double[] paidByCore,
        double[] coreHeatDeficit,
        double[] lineAt35,
        double[] lineAt32,
        double[] demand,
        double[] core,
        double[] meanSkin,
        double[] hand,
        double[] foot) {}
