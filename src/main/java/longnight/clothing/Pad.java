package longnight.clothing;

/**
 * Something to sit or lie on.
 *
 * @param id         identifier
 * @param name       name shown to people
 * @param resistance thermal resistance, compressed [m2 K/W], 0.01 to 3
 * @param area       area [m2], 0.02 to 2
 * @param mass       [kg]
 * @param arealHeatCapacity [J/(m2 K)], 0 and up
 */
public record Pad(String id, String name, double resistance, double area, double mass, double arealHeatCapacity) {}
