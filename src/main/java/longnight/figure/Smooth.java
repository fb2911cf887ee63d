package longnight.figure;

/** Switches without a corner, for laws that a time step must not see jump. */
public final class Smooth {

    private Smooth() {}

    /** 0 below 0, 1 above 1, a cubic between them with level ends. */
    public static double step(double x) {
        double t = Math.min(1, Math.max(0, x));
        return t * t * (3 - 2 * t);
    }

    /** Lesser of two numbers with the corner rounded over about {@code width}; never above either. */
    public static double least(double a, double b, double width) {
        double d = a - b;
        return 0.5 * (a + b - Math.sqrt(d * d + width * width));
    }

    /** Part of x above 0, rounded: exactly 0 below -width, exactly x above width, with a continuous slope. */
    public static double above(double x, double width) {
        if (x <= -width) {
            return 0;
        }
        if (x >= width) {
            return x;
        }
        return (x + width) * (x + width) / (4 * width);
    }
}
