package longnight.outdoors.law;

/**
 * When bare skin of the face can freeze. A warning for warm, dry, healthy people at low altitude; wet skin, metal and poor
 * circulation shorten every time. Never a safe time.
 */
public final class FaceFreezing {

    private static final double KILOMETRES_PER_HOUR = 3.6;

    /** Lower band edges are minutes from which skin can freeze; the last band ("under 2") starts at 0. */
    private static final int[][] BANDS = {{-55, 0, 2}, {-48, 2, 5}, {-40, 5, 10}, {-28, 10, 30}};

    private FaceFreezing() {}

    /**
     * Minutes within which bare skin of the face can freeze; NaN when no number is given (the risk is then low, not zero).
     * The least of the published time formula, the lower edge of the published band, and below -35 degC 0.4 times the
     * formula, because people froze up to 2.6 times sooner (Ducharme and Brajkovic 2005); not below one minute. No number
     * above -10 degC or above an index of -28. The combination is an engineering estimate, no source.
     *
     * @param airCelsius air temperature [degC]
     * @param wind10     wind at 10 m in the open [m/s]
     */
    public static double warningMinutes(double airCelsius, double wind10) {
        int index = WindChill.rounded(WindChill.index(airCelsius, wind10));
        if (!(airCelsius <= -10 && index <= -28)) {
            return Double.NaN;
        }
        double formula = susceptibleMinutes(airCelsius, wind10 * KILOMETRES_PER_HOUR);
        double minutes = Math.min(formula, bandMinutes(index)[0]);
        if (airCelsius <= -35) {
            minutes = Math.min(minutes, 0.4 * formula);
        }
        return Math.max(1, minutes);
    }

    /**
     * Minutes to frostbite of the most susceptible 5 % of people: formula attributed to the Canadian wind chill programme
     * after Tikuisis and Osczevski (read in several copies; good above 25 km/h and below 15 minutes, from memory). Not
     * below 0, where strong wind would take it.
     *
     * @param celsius           air [degC], below -4.8; NaN from there up
     * @param kilometresPerHour wind at 10 m [km/h]
     */
    static double susceptibleMinutes(double celsius, double kilometresPerHour) {
        if (!(celsius < -4.8)) {
            return Double.NaN;
        }
        return Math.max(0, -24.5 * (0.667 * kilometresPerHour + 4.8) + 2111) * StrictMath.pow(-4.8 - celsius, -1.668);
    }

    /** Published band [min, min] for a rounded wind chill index: Environment Canada; both NaN above -28. */
    static double[] bandMinutes(int index) {
        for (int[] band : BANDS) {
            if (index <= band[0]) {
                return new double[] {band[1], band[2]};
            }
        }
        return new double[] {Double.NaN, Double.NaN};
    }

    /**
     * Steady temperature of the cheek [degC], a regression seen in one copy only and attributed to the programme behind the
     * index; air [degC] and wind at 10 m [km/h], above 0. A plausibility band, no more.
     */
    static double cheekRegression(double celsius, double kilometresPerHour) {
        return (0.1 * celsius - 2.7883) * StrictMath.log(kilometresPerHour) + 0.2977 * celsius + 19.874;
    }
}
