package longnight.outdoors.law;

/** A warm body on cold ground: exact solutions to hold a numerical ground against. */
public final class GroundContact {

    private GroundContact() {}

    /**
     * Flux [W/m2] through a resistance into a half-space that was colder by {@code difference} at time 0: the textbook
     * solution of conduction into a semi-infinite solid with surface convection (Carslaw and Jaeger 1959).
     *
     * @param difference temperature difference at the start [K]
     * @param resistance clothing and pad [m2 K/W], above 0
     * @param effusivity of the ground [J/(m2 K s^0.5)]
     * @param time       [s], 0 or more
     */
    public static double flux(double difference, double resistance, double effusivity, double time) {
        return difference / resistance * erfcx(Math.sqrt(time) / (resistance * effusivity));
    }

    /** Temperature of the plane where two half-spaces of given effusivities are pressed together (textbook). */
    public static double interfaceTemperature(double effusivity1, double t1, double effusivity2, double t2) {
        return (effusivity1 * t1 + effusivity2 * t2) / (effusivity1 + effusivity2);
    }

    /**
     * Steady conductance [W/(m2 K)] of a warm disc on a half-space, mean over the disc: total flow 4 k a dT (Carslaw and
     * Jaeger 1959, from memory). To be added beside the one-dimensional flow.
     */
    public static double edgeConductance(double conductivity, double radius) {
        return 4 * conductivity / (Math.PI * radius);
    }

    /** Scaled complementary error function exp(x^2) erfc(x), x 0 or more; relative error below 1e-13. */
    static double erfcx(double x) {
        if (x < 2) {
            double term = x;
            double sum = x;
            for (int n = 1; n < 60; n++) {
                term *= 2 * x * x / (2 * n + 1);
                sum += term;
            }
            return StrictMath.exp(x * x) - 2 / Math.sqrt(Math.PI) * sum;
        }
        double fraction = x;
        for (int n = 120; n > 0; n--) {
            fraction = x + 0.5 * n / fraction;
        }
        return 1 / (Math.sqrt(Math.PI) * fraction);
    }
}
