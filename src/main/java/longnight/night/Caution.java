package longnight.night;

/** A code for a caution that belongs to a result; its text lives in the report's one file of prose. */
public enum Caution {
    /** The general text that travels with every output. */
    PLANNING_AID,
    /** Core below 34 degC: extrapolation. */
    EXTRAPOLATION,
    /** Input outside the range in which the model was made. */
    OUT_OF_RANGE,
    /** Hands or feet below a limit before the core is. */
    EXTREMITIES,
    /** Bare face can freeze. */
    FACE,
    /** Water was not followed in this run: rain, sweat and damp are left out. */
    DRY_ONLY,
    /** Precipitation falls in this night and was not followed. */
    PRECIPITATION_IGNORED,
    /** Rain or wet snow wets the clothing: uptake constants are estimates. */
    WETTING,
    /** Carbohydrate runs low: the peak of shivering falls. */
    FUEL_LOW,
    /** Body fat or other personal facts were guessed. */
    PERSON_GUESSED,
    /** Very fat person: late shivering and warm core are known misfits. */
    HIGH_BODY_FAT,
    /** Over 65: constricts and shivers less than the model's people. */
    OLDER_PERSON,
    /** Sky or wind was guessed. */
    WEATHER_GUESSED,
    /** The record is a typical year and holds no extremes. */
    TYPICAL_YEAR
}
