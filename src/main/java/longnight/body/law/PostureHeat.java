package longnight.body.law;

import longnight.figure.Posture;

/**
 * Heat of an awake person who does not walk, over the same person lying still, by posture and by how much of the time is
 * spent shifting about. Shivering is not in it. Lying and shifting was not measured and is not credited.
 *
 * <p><b>Source.</b> Levine, Schleusner and Jensen 2000, Am J Clin Nutr 72:1451: 24 fasting adults of 76 kg in comfort, lying
 * 5.4 kJ/min; rise sitting 4 (SD 6), sitting and fidgeting 54 (29), standing 13 (8), standing and fidgeting 94 (38) percent.
 *
 * @param sitting        rise of sitting still [1]
 * @param sittingShifts  rise of sitting and shifting all the time [1]
 * @param standing       rise of standing still [1]
 * @param standingShifts rise of standing and shifting all the time [1]
 */
public record PostureHeat(double sitting, double sittingShifts, double standing, double standingShifts) {

    /**
     * Heat over lying still [1], 1 or more.
     *
     * @param posture  posture
     * @param shifting share of the time spent shifting about [1], 0 to 1
     */
    public double overLying(Posture posture, double shifting) {
        if (posture.isLying()) {
            return 1.0;
        }
        double still = posture == Posture.STANDING ? standing : sitting;
        double restless = posture == Posture.STANDING ? standingShifts : sittingShifts;
        return 1.0 + still + (restless - still) * shifting;
    }
}
