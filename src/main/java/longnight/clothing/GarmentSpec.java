package longnight.clothing;

import java.util.Map;
import longnight.figure.Zone;
import org.jspecify.annotations.Nullable;

/**
 * What somebody knows of a piece: label facts, and any measured value that replaces a derived one. Whatever is null is
 * derived and listed as guessed. Immutable.
 *
 * @param id            identifier in the wardrobe, not blank
 * @param name          name shown to people
 * @param kind          what it is
 * @param mass          mass of the whole piece [kg], 0.005 to 6
 * @param fabric        cloth, or face cloth of a filled piece; null to take the kind's usual one
 * @param fill          fill; null for none
 * @param face          how hard it is to blow through; null to take the fabric's usual value
 * @param hooded        has a hood that is worn up; null to take the kind's usual value
 * @param coverage      covered interval of each zone; null to take the kind's usual coverage
 * @param room          room left under the piece for what is worn below it [m], 0 to 0.1; null to take the kind's usual fit
 * @param thickness     thickness at light load [m]; null to derive
 * @param resistance    local, flat thermal resistance of the piece without air gaps [m2 K/W]; null to derive
 * @param vapourResistance local evaporative resistance [m2 Pa/W]; null to derive
 * @param airPermeability at 100 Pa [L/(m2 s)]; null to derive
 * @param condition     state of the water-repellent finish
 * @param packedVolume  [m3]; null when unknown
 * @param price         in any money unit; null when unknown
 */
public record GarmentSpec(
        String id,
        String name,
        GarmentKind kind,
        double mass,
        @Nullable Fabric fabric,
        @Nullable Fill fill,
        @Nullable FaceTightness face,
        @Nullable Boolean hooded,
        @Nullable Map<Zone, Interval> coverage,
        @Nullable Double room,
        @Nullable Double thickness,
        @Nullable Double resistance,
        @Nullable Double vapourResistance,
        @Nullable Double airPermeability,
        Finish condition,
        @Nullable Double packedVolume,
        @Nullable Double price) {

    /** The same piece under another id. */
    public GarmentSpec called(String other) {
        return new GarmentSpec(
                other,
                name,
                kind,
                mass,
                fabric,
                fill,
                face,
                hooded,
                coverage,
                room,
                thickness,
                resistance,
                vapourResistance,
                airPermeability,
                condition,
                packedVolume,
                price);
    }

    /** Covered part of a zone, 0 (near end) to 1 (far end). */
    public record Interval(double from, double to) {}

    /** Water-repellent finish. */
    public enum Finish {
        NEW,
        WORN,
        GONE
    }
}
