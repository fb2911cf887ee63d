package longnight.clothing.law;

/**
 * Layers laid one over another on a cylinder or a sphere. Each layer's resistance is referred to the area of the skin:
 * the layer's own curvature and the growth of everything below it both count.
 *
 * <p><b>Source.</b> Steady conduction in cylindrical and spherical shells, textbook. Valid for layers that touch all
 * round. Used when stacks are compiled, not in the time loop.
 */
public final class CurvedStack {
    private final double skinRadius;
    private final boolean sphere;
    private double radius;

    /**
     * @param skinRadius radius of the bare part [m], above 0
     * @param sphere     true for a sphere, false for a long cylinder
     */
    public CurvedStack(double skinRadius, boolean sphere) {
        if (!(skinRadius > 0)) {
            throw new IllegalArgumentException("skin radius is " + skinRadius + " m, allowed above 0");
        }
        this.skinRadius = skinRadius;
        this.sphere = sphere;
        this.radius = skinRadius;
    }

    /**
     * Lays a layer on top.
     *
     * @param thickness [m], 0 and up
     * @return resistance referred to skin area over the same layer's flat resistance [1], at most 1
     */
    public double add(double thickness) {
        double growthBelow = radius / skinRadius;
        double outer = radius + thickness;
        double factor;
        if (sphere) {
            factor = radius / outer / (growthBelow * growthBelow);
        } else {
            double own = thickness <= 0 ? 1 : radius / thickness * StrictMath.log(outer / radius);
            factor = own / growthBelow;
        }
        radius = outer;
        return factor;
    }

    /** Outer area over skin area [1], 1 and up. */
    public double growth() {
        double ratio = radius / skinRadius;
        return sphere ? ratio * ratio : ratio;
    }

    /** Outer radius [m]. */
    public double radius() {
        return radius;
    }
}
