package longnight.body.law;

/**
 * Law B (for the band): core and skin terms of a cold-water study behind an onset gate.
 *
 * <p>{@code M = gate [155.5 (37 - Tc) + phi (47.0 d - 1.57 d2)] / sqrt(BF)}, d = 33 - Tsk held in 0 to 14.97, phi rising from
 * its share at a neutral core to 1 when the core has fallen by 1 K. Gate: the larger of a skin gate (full 3 K below its
 * threshold) and a core gate (0.2 to 0.8 K below the set level).
 *
 * <p><b>Source.</b> Tikuisis and Giesbrecht 1999, Eur J Appl Physiol 79:221 (coefficients from memory); gate and phi:
 * engineering estimates fitted to the open human set.
 *
 * @param coreGain  [W/(m2 K)] times root of percent
 * @param skinShare phi at a neutral core [1]
 * @param gate      skin threshold of this person [degC]
 * @param bodyFat   [percent], 8 is used for leaner people
 */
public record GatedShivering(double coreGain, double skinShare, double gate, double bodyFat) implements Shivering {

    @Override
    public double heat(double trunkSkin, double meanSkin, double skinFall, double coreError) {
        double d = clamp(33.0 - meanSkin, 0.0, 14.97);
        double phi = skinShare + (1.0 - skinShare) * clamp(-coreError, 0.0, 1.0);
        double skinGate = clamp((gate - meanSkin) / 3.0, 0.0, 1.0);
        double coreGate = clamp((-coreError - 0.2) / 0.6, 0.0, 1.0);
        double drive = -coreGain * coreError + phi * (47.0 * d - 1.57 * d * d);
        return Math.max(0.0, Math.max(skinGate, coreGate) * drive / Math.sqrt(Math.max(bodyFat, 8.0)));
    }

    private static double clamp(double value, double low, double high) {
        return Math.min(high, Math.max(low, value));
    }
}
