package longnight.study;

/** Groups of things in doubt that are asked for together what they move. */
public enum Driver {
    /** Body mass and height. */
    BUILD(Doubt.PEOPLE),
    FAT(Doubt.PEOPLE),
    AGE(Doubt.PEOPLE),
    FITNESS(Doubt.PEOPLE),
    AIR(Doubt.FORECAST),
    WIND(Doubt.FORECAST),
    HUMIDITY(Doubt.FORECAST),
    CLOUD(Doubt.FORECAST),
    PRECIPITATION(Doubt.FORECAST),
    /** The model's constants of the body, and which law of shivering. */
    BODY(Doubt.MODEL),
    CLOTHING(Doubt.MODEL),
    OUTDOORS(Doubt.MODEL),
    /** The model's constants of water, sweat, work and fuel. */
    WATER_AND_WORK(Doubt.MODEL),
    /** What the model misses besides, see {@link Draws#SKIN_MISFIT}. */
    SKIN_MISFIT(Doubt.MODEL);

    private final Doubt doubt;

    Driver(Doubt doubt) {
        this.doubt = doubt;
    }

    /** What it is a part of. */
    public Doubt doubt() {
        return doubt;
    }
}
