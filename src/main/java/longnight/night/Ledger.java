package longnight.night;

/**
 * The night's books. All heats in J over the whole night.
 *
 * @param made          heat made
 * @param rest          heat at rest over the same time
 * @param lostByWay     index {@link Way#ordinal()}
 * @param lostByPart    through the skin of each segment (all ways but breath), index body segment ordinal
 * @param breath        through the airways
 * @param storedCore    change of the core's store (negative: cooled)
 * @param storedShell   change of the rest of the body's store
 * @param storedClothing change of the clothing's and pad's store
 * @param turnedOver    heat made plus losses, the measure for closure
 * @param heatClosure   |made - losses - change of the body's store| / turnedOver
 * @param partClosure   |sum by part + breath - sum by way| / turnedOver
 * @param payerClosure  |payers - shortfall| / turnedOver
 */
public record Ledger(
        double made,
        double rest,
        double[] lostByWay,
        double[] lostByPart,
        double breath,
        double storedCore,
        double storedShell,
        double storedClothing,
        double turnedOver,
        double heatClosure,
        double partClosure,
        double payerClosure) {}
