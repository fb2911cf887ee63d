package longnight.night;

/** Air in which the model has an answer. */
public final class ModelRange {
    /** Coldest air for which the model was made [degC]: the breath's law ends there. */
    public static final double COLDEST_AIR = -40;

    /** Warmest air [degC]: a nude person at rest is in balance there, and nobody's sweat is reckoned beyond. */
    public static final double WARMEST_AIR = 32;

    private ModelRange() {}
}
