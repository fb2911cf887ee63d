package longnight.clothing;

import longnight.clothing.law.WetLoft;
import org.jspecify.annotations.Nullable;

/**
 * What the water chain needs of one layer of a {@link PatchStack}: the layer taken apart into the air gap inside it, its
 * cloth (face and lining together), and its fill. Resistances and masses are per SKIN area and static as in the stack; the
 * three parts sum to the stack's resistance, the two masses to its dry mass.
 *
 * @param cloth           class of the cloth
 * @param clothMass       dry cloth [kg/m2]
 * @param clothLoft       what water does to the cloth
 * @param clothResistance [m2 K/W]
 * @param clothVapour     [m2 Pa/W]
 * @param fill            class of the fill; null without one
 * @param fillMass        dry fill [kg/m2]; 0 without one
 * @param fillLoft        what water does to the fill; null without one
 * @param fillResistance  [m2 K/W]; 0 without one
 * @param fillVapour      [m2 Pa/W]; 0 without one
 * @param gapResistance   air gap inside the layer [m2 K/W]; 0 when pressed
 * @param gapVapour       [m2 Pa/W]
 * @param face            what the outer face does to rain
 * @param repels          share of the first rain that the finish throws off [1]
 * @param passes          share of what the face cannot hold that goes on inwards [1]
 * @param faceHold        water that a tight face holds [kg/m2]; 0 for an open one, where the cloth itself takes it
 * @param sorptionTime    time constant of bound water [s]
 */
public record LayerWater(
        WaterClass cloth,
        double clothMass,
        WetLoft clothLoft,
        double clothResistance,
        double clothVapour,
        @Nullable WaterClass fill,
        double fillMass,
        @Nullable WetLoft fillLoft,
        double fillResistance,
        double fillVapour,
        double gapResistance,
        double gapVapour,
        RainFace face,
        double repels,
        double passes,
        double faceHold,
        double sorptionTime) {

    /** Most liquid the cloth holds [kg/m2]. */
    public double clothHold() {
        return Math.max(faceHold, cloth.hold() * clothMass);
    }

    /** Most liquid the fill holds [kg/m2]; 0 without one. */
    public double fillHold() {
        return fill == null ? 0 : fill.hold() * fillMass;
    }
}
