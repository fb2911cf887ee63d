package longnight.clothing;

import java.util.List;

/**
 * A piece with everything known or derived that the heat balance needs. Made by the derivation from a
 * {@link GarmentSpec}; immutable.
 *
 * @param spec   what was written about it
 * @param pieces what lies on each zone
 */
public record Garment(GarmentSpec spec, List<ZoneLayer> pieces) {

    /**
     * The piece as it lies on one zone, flat, dry and unloaded.
     *
     * @param zone             zone covered
     * @param from             near end of the covered interval [1]
     * @param to               far end [1]
     * @param thickness        free thickness [m]
     * @param resistance       flat resistance without gaps [m2 K/W]
     * @param vapourResistance [m2 Pa/W]
     * @param arealMass        dry mass per garment area [kg/m2]
     * @param fillArealMass    fill mass per area [kg/m2]; 0 for a plain fabric
     * @param fillDensity      free bulk density of the fill [kg/m3]; 0 for a plain fabric
     * @param radiationConstant C of C-61b [W kg/(m4 K)]; 0 for a plain fabric
     * @param compressionConstant K of C-67 [Pa m9/kg3]; 0 for a plain fabric
     * @param construction     factor on the fill's resistance [1]
     * @param airPermeability  [L/(m2 s) at 100 Pa]
     */
    public record ZoneLayer(
            longnight.figure.Zone zone,
            double from,
            double to,
            double thickness,
            double resistance,
            double vapourResistance,
            double arealMass,
            double fillArealMass,
            double fillDensity,
            double radiationConstant,
            double compressionConstant,
            double construction,
            double airPermeability) {}
}
