package longnight.night;

/**
 * Food and drink for the night.
 *
 * @param made         heat made since dusk [J]
 * @param aboveRest    of which above rest [J]
 * @param eaten        energy eaten from the first phase on [J]
 * @param storeAtDusk  share of the carbohydrate store at dusk [1]
 * @param storeAtDawn  share at dawn [1]
 * @param lowestPeak   smallest factor on the peak of shivering that fatigue left [1]
 * @param waterLost    by breath, skin and sweat since dusk, the drink that makes up for it [kg]
 * @param sweatBefore  sweat before dusk [kg]
 */
public record FuelReport(
        double made,
        double aboveRest,
        double eaten,
        double storeAtDusk,
        double storeAtDawn,
        double lowestPeak,
        double waterLost,
        double sweatBefore) {}
