package longnight.body.law;

/**
 * How much dearer walking is than on a road.
 *
 * <p><b>Source.</b> Soule and Goldman 1972 (road, dirt road, packed snow and sand from a copy, the others from memory); snow by
 * depth of the footprint: Pandolf, Haisman and Goldman 1976. A newer cubic law in sinkage from snow density is not used: at
 * 21 cm it asks 8.0 where the measured form has 3.0.
 */
public enum WalkingSurface {
    ROAD(1.0),
    DIRT_ROAD(1.1),
    LIGHT_BRUSH(1.2),
    PACKED_SNOW(1.3),
    HEAVY_BRUSH(1.5),
    SWAMP(1.8),
    LOOSE_SAND(2.1);

    /** Largest factor given out, at a footprint of 35 cm, the deepest of the table. */
    public static final double DEEPEST = 4.2;

    private final double factor;

    WalkingSurface(double factor) {
        this.factor = factor;
    }

    /** Surface factor [1]. */
    public double factor() {
        return factor;
    }

    /**
     * Surface factor of snow [1]: {@code 1.3 + 0.082 D}, D in cm, held at 4.2.
     *
     * @param footprint how deep a foot sinks in [m], 0 or more
     */
    public static double snow(double footprint) {
        if (!(footprint >= 0)) {
            throw new IllegalArgumentException("footprint [m] is " + footprint + ", allowed 0 or more");
        }
        return Math.min(DEEPEST, PACKED_SNOW.factor + 8.2 * footprint);
    }
}
