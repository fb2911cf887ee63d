package longnight.clothing;

import java.util.ArrayList;
import java.util.List;
import longnight.figure.Zone;

/**
 * A piece with everything known or derived that the heat balance needs. Made by the derivation from a
 * {@link GarmentSpec}; immutable.
 *
 * @param spec   what was written about it
 * @param pieces what lies on each zone
 */
public record Garment(GarmentSpec spec, List<ZoneLayer> pieces) {

    /** Share of what a piece covers of the chest that lies bare of it when its front is open; engineering estimate. */
    public static final double OPEN_FRONT = 0.5;

    /** True when the piece covers chest: it has a front to open. */
    public boolean canOpen() {
        return pieces.stream().anyMatch(piece -> piece.zone() == Zone.CHEST);
    }

    /**
     * The piece with its front open: the neck free, and {@link #OPEN_FRONT} of what it covered of the chest. What the wind does
     * through the opening to the rest is not counted.
     */
    public Garment opened() {
        List<ZoneLayer> open = new ArrayList<>();
        for (ZoneLayer piece : pieces) {
            if (piece.zone() == Zone.CHEST) {
                open.add(piece.covering(piece.from(), piece.to() - OPEN_FRONT * (piece.to() - piece.from())));
            } else if (piece.zone() != Zone.NECK) {
                open.add(piece);
            }
        }
        return new Garment(spec, List.copyOf(open));
    }

    /** True when the piece covers both chest and scalp: it has a hood that is up. */
    public boolean hasHood() {
        return canOpen() && pieces.stream().anyMatch(piece -> piece.zone() == Zone.SCALP);
    }

    /** The piece with its hood down: scalp and face free, all else as it was. What a hood warms on the shoulders is not counted. */
    public Garment hoodDown() {
        return new Garment(
                spec,
                pieces.stream()
                        .filter(piece -> piece.zone() != Zone.SCALP && piece.zone() != Zone.FACE)
                        .toList());
    }

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
            Zone zone,
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
            double airPermeability) {

        /** The same cloth over another interval of the zone. */
        ZoneLayer covering(double begin, double end) {
            return new ZoneLayer(
                    zone,
                    begin,
                    end,
                    thickness,
                    resistance,
                    vapourResistance,
                    arealMass,
                    fillArealMass,
                    fillDensity,
                    radiationConstant,
                    compressionConstant,
                    construction,
                    airPermeability);
        }
    }
}
