package longnight.body.law;

/**
 * What a meal holds and the heat of digesting it.
 *
 * <p>Digestion heat is a share of the meal's energy, given off as a pulse {@code t/p^2 exp(-t/p)} with its peak at time p. Its
 * integral is that share exactly, whatever the steps, because the caller asks for the share given off up to a time.
 *
 * <p><b>Source.</b> Shares: Westerterp 2004, Nutr Metab 1:5 (mixed diet 5 to 15 %; fat 0 to 3, carbohydrate 5 to 10, protein 20
 * to 30 % from memory, here mid-range). Shape: from memory, peak 60 to 90 min, spread over 3 to 6 h. Energy densities: from
 * memory, as on food labels. Alcohol is no fuel here: it lets go of heat and blunts shivering.
 */
public final class Food {
    /** Metabolisable energy of carbohydrate [J/kg]. */
    public static final double CARBOHYDRATE = 17e6;
    /** Metabolisable energy of protein [J/kg]. */
    public static final double PROTEIN = 17e6;
    /** Metabolisable energy of fat [J/kg]. */
    public static final double FAT = 37e6;

    private Food() {}

    /** Metabolisable energy [J] of carbohydrate, protein and fat [kg]. */
    public static double energy(double carbohydrate, double protein, double fat) {
        return CARBOHYDRATE * carbohydrate + PROTEIN * protein + FAT * fat;
    }

    /** Digestion heat [J] of carbohydrate, protein and fat [kg]. */
    public static double digestion(double carbohydrate, double protein, double fat) {
        return 0.075 * CARBOHYDRATE * carbohydrate + 0.25 * PROTEIN * protein + 0.015 * FAT * fat;
    }

    /**
     * Share of a meal's digestion heat given off so far [1], 0 before the meal, towards 1.
     *
     * @param elapsed since the meal [s]
     * @param peak    time of the peak [s]
     */
    public static double givenOff(double elapsed, double peak) {
        if (elapsed <= 0) {
            return 0;
        }
        double x = elapsed / peak;
        return 1.0 - (1.0 + x) * StrictMath.exp(-x);
    }
}
