package longnight.clothing;

/** What a piece is; sets its usual coverage, fit and place in the dressing order (clothing.md 3.2, trade sheet). */
public enum GarmentKind {
    BASE_TOP,
    BASE_BOTTOM,
    MID_TOP,
    VEST,
    WIND_TOP,
    RAIN_TOP,
    INSULATED_JACKET,
    PARKA,
    CAPE,
    TROUSERS,
    WIND_TROUSERS,
    RAIN_TROUSERS,
    INSULATED_TROUSERS,
    CAP,
    BALACLAVA,
    HOOD,
    NECK_TUBE,
    LINER_GLOVES,
    GLOVES,
    MITTENS,
    SOCKS,
    SHOES,
    BOOTS,
    INSULATED_BOOTS,
    BOOTIES
}
