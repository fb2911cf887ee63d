package longnight.body.law;

/**
 * Law A (nominal): skin-led, with the slope measured in cold air, braked by a warm core.
 *
 * <p>Signal {@code Ts = w Ttrunk + (1 - w) Tmean}; {@code M = a sqrt(15/BF) max(0, Ton - Ts) + g y / sqrt(BF) + rate}, y the
 * fall of the core below its set level, negative (a brake) beyond a small dead band when it is warmer; rate = gain x
 * cooling rate of the skin, faded out between 30.5 and 32.5 degC.
 *
 * <p><b>Source.</b> Slope: regression in 15 to 25 degC air, Timbal et al. 1976 (authors from memory). Core gain and root of
 * fat: Tikuisis and Giesbrecht 1999 (from memory), structure also Tikuisis, Bell and Jacobs 1991. Threshold, trunk weight,
 * brake and rate share: engineering estimates fitted to the open human set.
 *
 * @param skinSlope     [W/(m2 K)] at 15 % fat
 * @param coreGain      [W/(m2 K)] times root of percent
 * @param threshold     [degC], this person's
 * @param trunkWeight   [1]
 * @param warmBand      [K]
 * @param warmBrake     [1]
 * @param rateGain      [W/m2 per K/min] at 15 % fat
 * @param bodyFat       [percent], 8 is used for leaner people
 */
public record AirSlopeShivering(
        double skinSlope,
        double coreGain,
        double threshold,
        double trunkWeight,
        double warmBand,
        double warmBrake,
        double rateGain,
        double bodyFat)
        implements Shivering {

    @Override
    public double heat(double trunkSkin, double meanSkin, double skinFall, double coreError) {
        double root = Math.sqrt(Math.max(bodyFat, 8.0));
        double fatFactor = Math.sqrt(15.0) / root;
        double signal = trunkWeight * trunkSkin + (1.0 - trunkWeight) * meanSkin;
        double skinPart = skinSlope * fatFactor * Math.max(0.0, threshold - signal);
        double y = coreError < 0.0 ? -coreError : -warmBrake * Math.max(0.0, coreError - warmBand);
        double fade = Math.min(1.0, Math.max(0.0, (32.5 - meanSkin) / 2.0));
        double ratePart = rateGain * fatFactor * skinFall * fade;
        return Math.max(0.0, skinPart + coreGain / root * y + ratePart);
    }
}
