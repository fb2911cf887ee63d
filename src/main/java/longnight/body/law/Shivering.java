package longnight.body.law;

/** A law for extra heat production by shivering. Two rival forms exist; each belongs to the same shell and vessels. */
public interface Shivering {

    /**
     * Heat of shivering per body area before the peak cap, low-core fade and sleep [W/m2], not negative.
     *
     * @param trunkSkin  area-mean skin temperature of chest, back and pelvis [degC]
     * @param meanSkin   area-mean skin temperature of the body [degC]
     * @param skinFall   how fast the mean skin cools [K/min], 0 when it warms
     * @param coreError  blood temperature minus the person's own set level [K]
     */
    double heat(double trunkSkin, double meanSkin, double skinFall, double coreError);
}
