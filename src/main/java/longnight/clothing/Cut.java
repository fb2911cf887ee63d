package longnight.clothing;

import java.util.EnumMap;
import java.util.Map;
import longnight.clothing.GarmentSpec.Interval;
import longnight.figure.Zone;

/**
 * How a kind of garment is usually cut: cloth, ease, fit and what it covers. Engineering estimates without a source;
 * coverage in intervals along each zone, so that a top and trousers overlap on the pelvis and a boot meets the trousers on
 * the calf.
 *
 * @param fabric    usual cloth, or face of a filled piece
 * @param clothShare share of the mass that is cloth over the body, the rest being seams, hems, zips and pockets [1]
 * @param ease      cloth area over covered skin area [1]
 * @param room      room under the piece for what is below [m]; NaN when it stretches
 * @param fit       which air gap it usually leaves
 * @param hooded    has a hood worn up
 * @param hoodFace  how far over the face a hood reaches [1]
 * @param coverage  without the hood
 */
record Cut(
        Fabric fabric,
        double clothShare,
        double ease,
        double room,
        Fit fit,
        boolean hooded,
        double hoodFace,
        Map<Zone, Interval> coverage) {

    enum Fit {
        SKIN,
        MIDDLE,
        SHELL,
        SNUG
    }

    /** Share of the shell's mass that is face and lining over the body when a piece is filled. */
    static final double FILLED_CLOTH_SHARE = 0.45;

    private static final double STRETCHES = Double.NaN;

    static Cut of(GarmentKind kind) {
        return switch (kind) {
            case BASE_TOP -> cut(Fabric.POLYESTER_KNIT, 0.75, 1.10, STRETCHES, Fit.SKIN, false, top(0.8, 0.6));
            case BASE_BOTTOM -> cut(Fabric.POLYESTER_KNIT, 0.72, 0.95, STRETCHES, Fit.SKIN, false, bottom(0.35, 0.95));
            case MID_TOP -> cut(Fabric.FLEECE, 0.68, 1.15, 0.006, Fit.MIDDLE, false, top(0.8, 0.6));
            case VEST -> cut(Fabric.FLEECE, 0.65, 1.15, 0.008, Fit.MIDDLE, false, vest());
            case WIND_TOP -> cut(Fabric.NYLON_WOVEN, 0.52, 1.25, 0.010, Fit.SHELL, true, top(0.8, 0.6));
            case RAIN_TOP -> cut(Fabric.LAMINATE, 0.57, 1.28, 0.015, Fit.SHELL, true, top(0.8, 0.6));
            case INSULATED_JACKET -> cut(Fabric.NYLON_WOVEN, 0.52, 1.20, 0.012, Fit.MIDDLE, false, top(0.8, 0.6));
            case PARKA -> cut(Fabric.NYLON_WOVEN, 0.52, 1.35, 0.035, Fit.SHELL, true, coat(0.25, 0));
            case CAPE -> cut(Fabric.NYLON_WOVEN, 0.52, 1.55, 0.080, Fit.SHELL, true, coat(0.9, 0.25));
            case TROUSERS -> cut(Fabric.NYLON_WOVEN, 0.60, 1.10, 0.005, Fit.MIDDLE, false, bottom(0.35, 0.95));
            case WIND_TROUSERS -> cut(Fabric.NYLON_WOVEN, 0.52, 1.15, 0.010, Fit.SHELL, false, bottom(0.35, 0.95));
            case RAIN_TROUSERS -> cut(Fabric.LAMINATE, 0.55, 1.20, 0.015, Fit.SHELL, false, bottom(0.35, 0.95));
            case INSULATED_TROUSERS -> cut(Fabric.NYLON_WOVEN, 0.52, 1.25, 0.020, Fit.SHELL, false, bottom(0.35, 0.95));
            case CAP -> cut(Fabric.ACRYLIC_KNIT, 0.45, 1.10, STRETCHES, Fit.SKIN, false, of(Zone.SCALP, 0, 1));
            case BALACLAVA -> cut(Fabric.FLEECE, 0.40, 1.10, STRETCHES, Fit.SKIN, false, head(0.4));
            case HOOD -> cut(Fabric.FLEECE, 0.60, 1.20, 0.012, Fit.MIDDLE, false, head(0.4));
            case NECK_TUBE -> cut(Fabric.POLYESTER_KNIT, 0.50, 1.30, STRETCHES, Fit.SKIN, false, neckTube());
            case LINER_GLOVES -> cut(Fabric.POLYESTER_KNIT, 0.80, 1.05, STRETCHES, Fit.SKIN, false, hand());
            case GLOVES -> cut(Fabric.NYLON_WOVEN, 0.60, 1.20, 0.004, Fit.SNUG, false, hand());
            case MITTENS -> cut(Fabric.NYLON_WOVEN, 0.60, 1.30, 0.010, Fit.SNUG, false, hand());
            case SOCKS -> cut(Fabric.WOOL_KNIT, 0.95, 1.0, STRETCHES, Fit.SKIN, false, foot(0.65));
            case SHOES -> cut(Fabric.LEATHER, 0.50, 1.15, 0.008, Fit.SNUG, false, of(Zone.FOOT, 0, 1));
            case BOOTS -> cut(Fabric.LEATHER, 0.50, 1.20, 0.010, Fit.SNUG, false, foot(0.90));
            case INSULATED_BOOTS -> cut(Fabric.RUBBER_FELT, 0.50, 1.25, 0.012, Fit.SNUG, false, foot(0.80));
            case BOOTIES -> cut(Fabric.NYLON_WOVEN, 0.60, 1.30, 0.012, Fit.SNUG, false, foot(0.90));
        };
    }

    private static Cut cut(
            Fabric fabric,
            double clothShare,
            double ease,
            double room,
            Fit fit,
            boolean hooded,
            Map<Zone, Interval> coverage) {
        return new Cut(fabric, clothShare, ease, room, fit, hooded, room >= 0.03 ? 0.5 : 0.4, coverage);
    }

    private static Map<Zone, Interval> of(Zone zone, double from, double to) {
        Map<Zone, Interval> map = new EnumMap<>(Zone.class);
        map.put(zone, new Interval(from, to));
        return map;
    }

    private static Map<Zone, Interval> and(Map<Zone, Interval> map, Zone zone, double from, double to) {
        map.put(zone, new Interval(from, to));
        return map;
    }

    private static Map<Zone, Interval> torso(double pelvisTo, double neckFrom) {
        Map<Zone, Interval> map = of(Zone.NECK, neckFrom, 1);
        and(map, Zone.CHEST, 0, 1);
        and(map, Zone.BACK, 0, 1);
        return and(map, Zone.PELVIS, 0, pelvisTo);
    }

    private static Map<Zone, Interval> vest() {
        return torso(0.6, 0.6);
    }

    private static Map<Zone, Interval> top(double pelvisTo, double neckFrom) {
        Map<Zone, Interval> map = and(torso(pelvisTo, neckFrom), Zone.UPPER_ARM, 0, 1);
        return and(map, Zone.FOREARM, 0, 1);
    }

    private static Map<Zone, Interval> coat(double thighTo, double calfTo) {
        Map<Zone, Interval> map = and(top(1, 0.6), Zone.THIGH, 0, thighTo);
        return calfTo > 0 ? and(map, Zone.CALF, 0, calfTo) : map;
    }

    private static Map<Zone, Interval> bottom(double pelvisFrom, double calfTo) {
        Map<Zone, Interval> map = of(Zone.PELVIS, pelvisFrom, 1);
        and(map, Zone.THIGH, 0, 1);
        return and(map, Zone.CALF, 0, calfTo);
    }

    private static Map<Zone, Interval> head(double faceTo) {
        Map<Zone, Interval> map = and(of(Zone.SCALP, 0, 1), Zone.NECK, 0, 1);
        return and(map, Zone.FACE, 0, faceTo);
    }

    private static Map<Zone, Interval> neckTube() {
        return and(of(Zone.NECK, 0, 1), Zone.FACE, 0, 0.15);
    }

    private static Map<Zone, Interval> hand() {
        return of(Zone.HAND, 0, 1);
    }

    private static Map<Zone, Interval> foot(double calfFrom) {
        return and(of(Zone.FOOT, 0, 1), Zone.CALF, calfFrom, 1);
    }
}
