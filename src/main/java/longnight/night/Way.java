package longnight.night;

/** The ways by which heat leaves the body. The order is the order of every array indexed by way. */
public enum Way {
    /** Convection to the air, from cloth or bare skin. */
    AIR,
    /** Long-wave radiation to sky, ground and trees. */
    RADIATION,
    /** Through seat, back and soles into the ground. */
    GROUND,
    /** Vapour through the skin that leaves through the clothes. */
    EVAPORATION,
    /** Warming and wetting the breath. */
    BREATH,
    /** Heat that stays in the clothing and pad (negative when they cool). */
    CLOTHING_STORE,
    /** Warming and melting the rain and snow that settle on the clothes. */
    PRECIPITATION,
    /** Heat brought from outside: hot drink, bottle, heat pack (negative: a gain). */
    BROUGHT
}
