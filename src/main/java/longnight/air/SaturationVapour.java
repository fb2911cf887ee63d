package longnight.air;

/**
 * Saturation pressure of water vapour: Murphy and Koop 2005, QJRMS 131:1539. Arguments in K, results in Pa. No check of
 * the argument is made here: these laws run inside the time loop.
 */
public final class SaturationVapour {

    private SaturationVapour() {}

    /** Over liquid water, supercooled too [Pa], equation 10; 123 to 332 K. */
    public static double overWater(double kelvin) {
        return StrictMath.exp(logOverWater(kelvin));
    }

    /** Over ice [Pa], equation 7; 110 to 273.16 K. */
    public static double overIce(double kelvin) {
        return StrictMath.exp(logOverIce(kelvin));
    }

    /** Over ice below 0 degC, over water from there up [Pa]: what air in contact with a surface can hold. */
    public static double stable(double kelvin) {
        return kelvin < Temperature.ZERO_CELSIUS ? overIce(kelvin) : overWater(kelvin);
    }

    /** Slope of {@link #overWater} [Pa/K], the same equation differentiated. */
    public static double overWaterSlope(double kelvin) {
        return overWater(kelvin) * logSlopeOverWater(kelvin);
    }

    /** Slope of {@link #overIce} [Pa/K], the same equation differentiated. */
    public static double overIceSlope(double kelvin) {
        return overIce(kelvin) * logSlopeOverIce(kelvin);
    }

    /** Cells of the table [1/K], its first temperature and its last [degC]. */
    private static final int PER_KELVIN = 2;

    private static final int COLDEST = -100;
    private static final int HOTTEST = 100;
    private static final double[] CUBIC = cubics();

    /** Cubic through value and slope at both ends of each half kelvin; 0 degC, where ice meets water, is a border. */
    private static double[] cubics() {
        int cells = (HOTTEST - COLDEST) * PER_KELVIN;
        double[] c = new double[4 * cells];
        double h = 1.0 / PER_KELVIN;
        for (int i = 0; i < cells; i++) {
            double a = Temperature.ZERO_CELSIUS + COLDEST + i * h;
            boolean ice = i < -COLDEST * PER_KELVIN;
            double y0 = ice ? overIce(a) : overWater(a);
            double y1 = ice ? overIce(a + h) : overWater(a + h);
            double s0 = h * (ice ? overIceSlope(a) : overWaterSlope(a));
            double s1 = h * (ice ? overIceSlope(a + h) : overWaterSlope(a + h));
            c[4 * i] = y0;
            c[4 * i + 1] = s0;
            c[4 * i + 2] = 3 * (y1 - y0) - 2 * s0 - s1;
            c[4 * i + 3] = 2 * (y0 - y1) + s0 + s1;
        }
        return c;
    }

    /** {@link #stable} from a table, within 1e-8 of it [Pa]; -100 to 100 degC, at the border beyond. For the time loop. */
    public static double tabled(double celsius) {
        double x = (Math.min(HOTTEST - 1e-9, Math.max(COLDEST, celsius)) - COLDEST) * PER_KELVIN;
        int i = (int) x;
        double u = x - i;
        int j = 4 * i;
        return CUBIC[j] + u * (CUBIC[j + 1] + u * (CUBIC[j + 2] + u * CUBIC[j + 3]));
    }

    /** Slope of {@link #tabled} [Pa/K]. */
    public static double tabledSlope(double celsius) {
        double x = (Math.min(HOTTEST - 1e-9, Math.max(COLDEST, celsius)) - COLDEST) * PER_KELVIN;
        int i = (int) x;
        double u = x - i;
        int j = 4 * i;
        return PER_KELVIN * (CUBIC[j + 1] + u * (2 * CUBIC[j + 2] + u * 3 * CUBIC[j + 3]));
    }

    static double logOverWater(double t) {
        double ln = StrictMath.log(t);
        return 54.842763
                - 6763.22 / t
                - 4.210 * ln
                + 0.000367 * t
                + StrictMath.tanh(0.0415 * (t - 218.8)) * (53.878 - 1331.22 / t - 9.44523 * ln + 0.014025 * t);
    }

    static double logOverIce(double t) {
        return 9.550426 - 5723.265 / t + 3.53068 * StrictMath.log(t) - 0.00728332 * t;
    }

    static double logSlopeOverWater(double t) {
        double tanh = StrictMath.tanh(0.0415 * (t - 218.8));
        double bracket = 53.878 - 1331.22 / t - 9.44523 * StrictMath.log(t) + 0.014025 * t;
        return 6763.22 / (t * t)
                - 4.210 / t
                + 0.000367
                + 0.0415 * (1 - tanh * tanh) * bracket
                + tanh * (1331.22 / (t * t) - 9.44523 / t + 0.014025);
    }

    static double logSlopeOverIce(double t) {
        return 5723.265 / (t * t) + 3.53068 / t - 0.00728332;
    }
}
