package longnight.outdoors;

/**
 * What is under the person, as a uniform half-space.
 *
 * @param name          word shown to people, not blank
 * @param conductivity  thermal conductivity [W/(m K)], 0.02 to 5
 * @param heatCapacity  volumetric heat capacity [J/(m3 K)], 2e4 to 5e6
 * @param depressionShare share of the snow-surface depression below air that applies, 0 to 1: 1 snow or dry litter, 0.5
 *     bare soil, 0.15 rock or wet soil (engineering estimate, no source; note E-46)
 * @param snow          true when the surface is snow (interface held at or below 0 degC)
 */
public record Ground(String name, double conductivity, double heatCapacity, double depressionShare, boolean snow) {

    /** @throws IllegalArgumentException when a value is NaN or outside its range, or the name is blank */
    public Ground {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a ground needs a name");
        }
        Ranges.require("ground conductivity [W/(m K)]", conductivity, 0.02, 5);
        Ranges.require("ground heatCapacity [J/(m3 K)]", heatCapacity, 2e4, 5e6);
        Ranges.require("ground depressionShare [1]", depressionShare, 0, 1);
    }

    /** Thermal effusivity [J/(m2 K s^0.5)]. */
    public double effusivity() {
        return Math.sqrt(conductivity * heatCapacity);
    }
}
