package longnight.clothing;

/** The cloth of a piece, or of its face when it is filled. */
public enum Fabric {
    POLYESTER_KNIT,
    WOOL_KNIT,
    COTTON_KNIT,
    ACRYLIC_KNIT,
    FLEECE,
    OPEN_PILE,
    NYLON_WOVEN,
    SOFTSHELL,
    LAMINATE,
    COATED,
    COTTON_DENIM,
    LEATHER,
    RUBBER_FELT
}
