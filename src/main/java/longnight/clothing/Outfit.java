package longnight.clothing;

import java.util.List;
import java.util.Map;
import longnight.figure.Posture;
import longnight.figure.Zone;

/** What a person wears and sits on. */
public sealed interface Outfit {

    /**
     * Real pieces, from skin outwards in the order in which they are worn; and what is under the body.
     *
     * @param pieces worn pieces, innermost first
     * @param pads   pads and mats under the body
     */
    record Kit(List<Garment> pieces, List<Pad> pads) implements Outfit {}

    /**
     * A given intrinsic resistance per zone, for laboratory cases; zones that are missing are bare. An empty map is a nude
     * person.
     *
     * @param resistance intrinsic dry resistance, without the surface air film [m2 K/W], 0 and up
     * @param moisturePermeability index i_m [1] from which the vapour resistance follows, 0.05 to 0.5
     */
    record Given(Map<Zone, Double> resistance, double moisturePermeability) implements Outfit {}

    /**
     * Patches made beforehand for one body, for bounds: what no real pieces make.
     *
     * @param byPosture patches for each posture that will be held; their areas are those of the body
     */
    record Patches(Map<Posture, List<PatchStack>> byPosture) implements Outfit {}
}
