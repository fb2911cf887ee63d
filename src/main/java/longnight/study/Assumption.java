package longnight.study;

/**
 * What the answer owes to something nobody knows exactly.
 *
 * @param kind  what sort of thing
 * @param name  of the input, or of the constants that move together
 * @param from  lowest value tried, as text with its unit; empty where words tell it
 * @param to    highest value tried
 * @param low   change of the night's shortfall heat at the lowest value [J]; NaN where a run stopped early
 * @param high  the same at the highest value [J]
 */
public record Assumption(Kind kind, String name, String from, String to, double low, double high) {
    /** Sorts of what is assumed. */
    public enum Kind {
        /** Of the weather, the person or the plan. */
        INPUT,
        /** Constants of the model, to the ends of their published ranges. */
        MODEL
    }

    /** By how much it moves the night at most [J]; infinite where it ends a run. */
    public double moves() {
        return Math.max(size(low), size(high));
    }

    private static double size(double value) {
        return Double.isNaN(value) ? Double.POSITIVE_INFINITY : Math.abs(value);
    }
}
