package longnight.night;

/**
 * One row of the hour table. Powers are means over the hour that ends here; heats are totals since dusk; temperatures are
 * instantaneous. The first row is dusk itself (powers NaN).
 *
 * @param time            seconds from dusk
 * @param clock           local clock [s after midnight, 0 to 86400)
 * @param airCelsius      [degC]
 * @param windAtBody      area-mean air speed at the body [m/s]
 * @param heatMade        [W]
 * @param lostByWay       [W], index {@link Way#ordinal()}
 * @param lostByPart      [W], index body segment ordinal (skin losses; breath is in the chest's row under no part: see ledger)
 * @param losses          all losses [W]
 * @param shortfall       shortfall heat since dusk [J]
 * @param paidByHeatMade  extra heat made since dusk [J]
 * @param paidByShell     heat taken from the shell since dusk [J]
 * @param paidByCore      heat taken from the core since dusk [J]
 * @param coreHeatDeficit core-heat deficit against the person's own set level [J], may be negative here
 * @param letGo           core payment minus core-heat deficit: let go to clock and sleep [J]
 * @param demand          4-hour mean of losses over heat at rest [1]; NaN in the first 4 h
 * @param coreCelsius     capacity-weighted core [degC]
 * @param rectalCelsius   [degC]
 * @param meanSkin        [degC]
 * @param hand            [degC]
 * @param foot            [degC]
 * @param sleep           sleep fraction [1]
 * @param shivering       shivering [W], instantaneous
 */
public record HourRow(
        double time,
        double clock,
        double airCelsius,
        double windAtBody,
        double heatMade,
        double[] lostByWay,
        double[] lostByPart,
        double losses,
        double shortfall,
        double paidByHeatMade,
        double paidByShell,
        double paidByCore,
        double coreHeatDeficit,
        double letGo,
        double demand,
        double coreCelsius,
        double rectalCelsius,
        double meanSkin,
        double hand,
        double foot,
        double sleep,
        double shivering) {}
