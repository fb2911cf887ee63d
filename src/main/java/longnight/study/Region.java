package longnight.study;

import java.util.EnumSet;
import java.util.Set;
import longnight.clothing.GarmentKind;
import longnight.figure.Zone;

/** Parts of a kit whose pieces are chosen together: what lies over what is settled within one of them, save for overlaps. */
enum Region {
    TORSO(EnumSet.of(
            GarmentKind.BASE_TOP,
            GarmentKind.MID_TOP,
            GarmentKind.VEST,
            GarmentKind.WIND_TOP,
            GarmentKind.RAIN_TOP,
            GarmentKind.INSULATED_JACKET,
            GarmentKind.PARKA,
            GarmentKind.CAPE)),
    LEGS(EnumSet.of(
            GarmentKind.BASE_BOTTOM,
            GarmentKind.TROUSERS,
            GarmentKind.WIND_TROUSERS,
            GarmentKind.RAIN_TROUSERS,
            GarmentKind.INSULATED_TROUSERS)),
    HEAD(EnumSet.of(GarmentKind.NECK_TUBE, GarmentKind.CAP, GarmentKind.BALACLAVA, GarmentKind.HOOD)),
    HANDS(EnumSet.of(GarmentKind.LINER_GLOVES, GarmentKind.GLOVES, GarmentKind.MITTENS)),
    FEET(EnumSet.of(
            GarmentKind.SOCKS, GarmentKind.BOOTIES, GarmentKind.SHOES, GarmentKind.BOOTS, GarmentKind.INSULATED_BOOTS)),
    PADS(EnumSet.noneOf(GarmentKind.class));

    private final Set<GarmentKind> kinds;

    Region(Set<GarmentKind> kinds) {
        this.kinds = kinds;
    }

    /** Zones that mostly its pieces cover; none for what lies under the body. */
    Set<Zone> zones() {
        return switch (this) {
            case TORSO -> EnumSet.of(Zone.CHEST, Zone.BACK, Zone.UPPER_ARM, Zone.FOREARM);
            case LEGS -> EnumSet.of(Zone.PELVIS, Zone.THIGH, Zone.CALF);
            case HEAD -> EnumSet.of(Zone.SCALP, Zone.NECK, Zone.FACE);
            case HANDS -> EnumSet.of(Zone.HAND);
            case FEET -> EnumSet.of(Zone.FOOT);
            case PADS -> EnumSet.noneOf(Zone.class);
        };
    }

    boolean holds(GarmentKind kind) {
        return kinds.contains(kind);
    }
}
