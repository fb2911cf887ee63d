package longnight.clothing;

import longnight.figure.Zone;

/**
 * One patch of skin with everything that lies over it, ready for the heat balance. Layer 0 lies next to the skin. All
 * resistances and heat capacities are referred to SKIN area (curvature included), static (no wind), posture and
 * compression included. Arrays have one entry per layer; a bare patch has none.
 *
 * @param zone             zone of the patch
 * @param area             skin area of the patch, both sides of the body together [m2]
 * @param contact          true when the patch is pressed on the ground (no air film outside, pad and ground follow)
 * @param layerIds         garment id of each layer
 * @param resistance       resistance of the layer with the air gap inside it [m2 K/W]
 * @param vapourResistance evaporative resistance of the layer with the air gap inside it [m2 Pa/W]
 * @param heatCapacity     heat capacity of the layer per skin area [J/(m2 K)]
 * @param dryMass          dry cloth and fill of the layer per skin area [kg/m2]: what can take water. Over all patches it sums
 *                         to the cloth and fill of the piece over the body; seams, hems, zips, pockets, collars, soles and
 *                         stiffening are left out (they are in the heat capacity)
 * @param areaGrowth       outer surface over skin surface [1], 1 and up
 * @param outerDiameter    diameter of the clothed part [m]
 * @param airPermeability  of all layers in series, and beside them the openings of a loose outer piece [L/(m2 s) at
 *     100 Pa]; infinite when bare
 * @param padResistance    pad under a contact patch, averaged over it [m2 K/W]; 0 elsewhere
 * @param padHeatCapacity  [J/(m2 K)]
 * @param contactRadius    equivalent radius of the contact spot [m]; 0 elsewhere
 * @param water            what water does to each layer
 * @param prescribed       true for {@link Outfit.Given}: the surface film is computed, no wind ratio is applied
 */
public record PatchStack(
        Zone zone,
        double area,
        boolean contact,
        String[] layerIds,
        double[] resistance,
        double[] vapourResistance,
        double[] heatCapacity,
        double[] dryMass,
        double areaGrowth,
        double outerDiameter,
        double airPermeability,
        double padResistance,
        double padHeatCapacity,
        double contactRadius,
        LayerWater[] water,
        boolean prescribed) {

    /** Number of layers. */
    public int layers() {
        return resistance.length;
    }
}
