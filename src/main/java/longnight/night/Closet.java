package longnight.night;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The water in the cloth and in the fill of every piece by zone, carried from phase to phase, worn or in the pack; and how warm what is worn now is. What is
 * in the pack keeps its water.
 */
final class Closet {

    /** What the cloth or the fill of one piece holds on one zone: liquid, ice, bound [kg]; its mean temperature [degC], NaN when it is not worn. */
    static final class Entry {
        double liquid;
        double ice;
        double bound;
        double celsius = Double.NaN;
        /** Dry mass of its cloth and fill [kg]. */
        double dry;
        /** Rain that its finish has stood while it was outermost [s]. */
        double rained;
    }

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Map<String, Entry> entries() {
        return entries;
    }

    Entry of(String key) {
        return entries.computeIfAbsent(key, k -> new Entry());
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    /** Liquid, ice and bound of a piece over all zones [kg]. */
    double[] sum(String garment) {
        double[] sum = new double[3];
        entries.forEach((key, entry) -> {
            if (key.startsWith(garment + '\0')) {
                sum[0] += entry.liquid;
                sum[1] += entry.ice;
                sum[2] += entry.bound;
            }
        });
        return sum;
    }

    /** Dry mass of a piece over all zones [kg]. */
    double dry(String garment) {
        double sum = 0;
        for (Map.Entry<String, Entry> e : entries.entrySet()) {
            sum += e.getKey().startsWith(garment + '\0') ? e.getValue().dry : 0.0;
        }
        return sum;
    }

    /** Water of all kinds in all pieces [kg]. */
    double held() {
        double sum = 0;
        for (Entry e : entries.values()) {
            sum += e.liquid + e.ice + e.bound;
        }
        return sum;
    }

    /** Forgets temperatures: what is not put on again is as cold as the pack. */
    void cool() {
        for (Entry e : entries.values()) {
            e.celsius = Double.NaN;
        }
    }
}
