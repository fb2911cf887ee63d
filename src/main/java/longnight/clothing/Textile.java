package longnight.clothing;

import longnight.clothing.Garment.ZoneLayer;

/**
 * How much of a piece is cloth and fill over the body: what takes water. The rest of its mass is seams, hems, zips,
 * pockets, collars, soles and stiffening.
 *
 * @param clothPerArea dry cloth, face and lining together, per garment area [kg/m2]
 * @param mass         dry cloth and fill of the whole piece [kg]
 */
record Textile(double clothPerArea, double mass) {

    static Textile of(Garment garment) {
        GarmentSpec spec = garment.spec();
        Cut cut = Cut.of(spec.kind());
        double area = 0;
        double fill = 0;
        for (ZoneLayer layer : garment.pieces()) {
            double here = Garments.skinArea(layer.zone()) * (layer.to() - layer.from()) * cut.ease();
            area += here;
            fill += here * layer.fillArealMass();
        }
        Cloth cloth = Cloth.of(Garments.fabric(spec));
        double perArea;
        if (Garments.isFilled(spec)) {
            perArea = Garments.shellMass(spec, fill, area, cloth);
        } else if (padded(spec.kind())) {
            perArea = cut.clothShare() * spec.mass() / area;
        } else {
            perArea = Garments.clothMass(spec, area, cloth);
        }
        return new Textile(perArea, perArea * area + fill);
    }

    /** Kinds that hold more than their face cloth even when no fill is named. */
    private static boolean padded(GarmentKind kind) {
        return kind == GarmentKind.GLOVES || kind == GarmentKind.MITTENS || kind == GarmentKind.BOOTIES;
    }
}
