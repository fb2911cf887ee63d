package longnight.outdoors;

/**
 * What is under the person, as a uniform half-space.
 *
 * @param name          word shown to people
 * @param conductivity  thermal conductivity [W/(m K)], 0.02 to 5
 * @param heatCapacity  volumetric heat capacity [J/(m3 K)], 2e4 to 5e6
 * @param depressionShare share of the snow-surface depression below air that applies (environment E-46): 1 snow or dry
 *     litter, 0.5 bare soil, 0.15 rock or wet soil
 * @param snow          true when the surface is snow (interface held at or below 0 degC)
 */
public record Ground(String name, double conductivity, double heatCapacity, double depressionShare, boolean snow) {}
