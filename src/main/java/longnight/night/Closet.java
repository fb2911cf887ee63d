package longnight.night;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The water in every piece by zone, carried from phase to phase, worn or in the pack; and how warm what is worn now is. What is
 * in the pack keeps its water.
 */
final class Closet {

    /** What one piece holds on one zone: liquid, ice, bound [kg]; its mean temperature [degC], NaN when it is not worn. */
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

    /** Between garment id, zone and slice in a key. */
    static final char BREAK = '\0';

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Map<String, Entry> entries() {
        return entries;
    }

    Entry of(String key) {
        return entries.computeIfAbsent(key, k -> new Entry());
    }

    /** Forgets what a piece holds on a zone, however it was cut. */
    void clear(String place) {
        for (int n = slices(place) - 1; n >= 0; n--) {
            entries.remove(place + BREAK + n);
        }
    }

    /** In how many slices a piece was cut on a zone; 0 when it never was worn there. */
    int slices(String place) {
        int n = 0;
        while (entries.containsKey(place + BREAK + n)) {
            n++;
        }
        return n;
    }

    /** What a piece holds on a zone over all slices; dry mass 0 when it never was worn there. */
    Entry whole(String place) {
        Entry sum = new Entry();
        double warm = 0;
        int n = slices(place);
        for (int i = 0; i < n; i++) {
            Entry e = of(place + BREAK + i);
            sum.liquid += e.liquid;
            sum.ice += e.ice;
            sum.bound += e.bound;
            sum.dry += e.dry;
            sum.rained = Math.max(sum.rained, e.rained);
            warm += e.dry > 0 ? e.dry * e.celsius : 0.0;
        }
        sum.celsius = sum.dry > 0 ? warm / sum.dry : Double.NaN;
        return sum;
    }

    /** Liquid, ice and bound of a piece over all zones [kg]. */
    double[] sum(String garment) {
        double[] sum = new double[3];
        entries.forEach((key, entry) -> {
            if (key.startsWith(garment + BREAK)) {
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
            sum += e.getKey().startsWith(garment + BREAK) ? e.getValue().dry : 0.0;
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
