package longnight.clothing;

import static longnight.clothing.ClothingParameter.WET_LOFT_LEAST_SHIFT;
import static longnight.clothing.ClothingParameter.WET_LOFT_RANGE;

import longnight.assumption.ParameterSet;
import longnight.clothing.law.Sorption;
import longnight.clothing.law.WetLoft;

/**
 * How a fill or a cloth takes water. Loft, hold and wicking: engineering estimates, no source (notes C-74, C-77). Regain at
 * 65 % humidity and its cap: Morton and Hearle, Physical Properties of Textile Fibres (from memory); acrylic, leather and
 * boot felt are low-confidence.
 */
public enum WaterClass {
    DOWN(0.15, 0.5, 5, 3, 0, 0.13, 0.33),
    TREATED_DOWN(0.30, 1.2, 3, 1.5, 0, 0.13, 0.33),
    SHORT_STAPLE(0.65, 1.5, 4, 2, 1e-6, 0.004, 0.01),
    CONTINUOUS_FILAMENT(0.75, 2.0, 4, 1.5, 1e-6, 0.004, 0.01),
    ACTIVE_BATT(0.75, 2.0, 3, 1.2, 1e-6, 0.004, 0.01),
    FLEECE(0.90, 2.0, 3, 1.0, 1e-5, 0.004, 0.01),
    WOOL(0.90, 1.0, 2, 1.0, 1e-5, 0.15, 0.33),
    COTTON(0.80, 0.5, 2.5, 1.2, 1e-5, 0.075, 0.24),
    ACRYLIC(0.90, 1.0, 2, 1.0, 1e-5, 0.015, 0.03),
    POLYESTER_KNIT(1, 1, 2, 0.8, 1e-5, 0.004, 0.01),
    NYLON(1, 1, 1, 0.5, 1e-6, 0.04, 0.08),
    /** Laminates and coatings: the cloth that carries them takes water, nothing goes through. */
    MEMBRANE(1, 1, 0.5, 0.3, 0, 0.04, 0.08),
    LEATHER(1, 1, 0.5, 0.5, 0, 0.15, 0.30),
    BOOT_FELT(0.90, 1.0, 0.5, 0.5, 0, 0.01, 0.02);

    /** Cells of the tables of regain. */
    private static final int CELLS = 1024;

    private final double least;
    private final double range;
    private final double hold;
    private final double wrung;
    private final double wicking;
    /** {@link Sorption#regain} by cells of humidity: the cubic through value and slope at both ends of each. */
    private final double[] regain;

    WaterClass(
            double least, double range, double hold, double wrung, double wicking, double regain65, double regainCap) {
        this.least = least;
        this.range = range;
        this.hold = hold;
        this.wrung = wrung;
        this.wicking = wicking;
        regain = new double[4 * CELLS];
        double h = 1.0 / CELLS;
        for (int i = 0; i < CELLS; i++) {
            double y0 = Sorption.regain(i * h, regain65, regainCap);
            double y1 = Sorption.regain((i + 1) * h, regain65, regainCap);
            double s0 = h * Sorption.regainSlope(i * h, regain65, regainCap);
            double s1 = h * Sorption.regainSlope((i + 1) * h, regain65, regainCap);
            regain[4 * i] = y0;
            regain[4 * i + 1] = s0;
            regain[4 * i + 2] = 3 * (y1 - y0) - 2 * s0 - s1;
            regain[4 * i + 3] = 2 * (y0 - y1) + s0 + s1;
        }
    }

    static WaterClass of(Fabric fabric) {
        return switch (fabric) {
            case POLYESTER_KNIT -> POLYESTER_KNIT;
            case WOOL_KNIT -> WOOL;
            case COTTON_KNIT, COTTON_DENIM -> COTTON;
            case ACRYLIC_KNIT -> ACRYLIC;
            case FLEECE, OPEN_PILE -> FLEECE;
            case NYLON_WOVEN, SOFTSHELL -> NYLON;
            case LAMINATE, COATED -> MEMBRANE;
            case LEATHER -> LEATHER;
            case RUBBER_FELT -> BOOT_FELT;
        };
    }

    static WaterClass of(Fill.Down down) {
        return down.treated() ? TREATED_DOWN : DOWN;
    }

    static WaterClass of(Fill.Batt batt) {
        return switch (batt.type()) {
            case SHORT_STAPLE -> SHORT_STAPLE;
            case CONTINUOUS_FILAMENT -> CONTINUOUS_FILAMENT;
            case ACTIVE -> ACTIVE_BATT;
        };
    }

    /** Most liquid it holds per dry mass before it drips [kg/kg]. */
    public double hold() {
        return hold;
    }

    /** Most liquid left per dry mass after wringing or shaking [kg/kg]. */
    public double wrung() {
        return wrung;
    }

    /** Wicking coefficient [kg/(m2 s)] between a full and a dry layer in touch; 0 for what does not wick. */
    public double wicking() {
        return wicking;
    }

    /** Bound water in balance [kg/kg] with air of the given humidity [1]: {@link Sorption#regain} within 1e-7. */
    public double regain(double humidity) {
        double x = CELLS * Math.min(1, Math.max(0, humidity));
        int i = Math.min(CELLS - 1, (int) x);
        double u = x - i;
        int j = 4 * i;
        return regain[j] + u * (regain[j + 1] + u * (regain[j + 2] + u * regain[j + 3]));
    }

    /** Slope of {@link #regain}; humidity inside 0 to 1. */
    public double regainSlope(double humidity) {
        double x = CELLS * humidity;
        int i = Math.min(CELLS - 1, (int) x);
        double u = x - i;
        int j = 4 * i;
        return CELLS * (regain[j + 1] + u * (2 * regain[j + 2] + u * 3 * regain[j + 3]));
    }

    /** True where nothing of thickness can collapse: gaps beside it close when it is wet. */
    public boolean isThin() {
        return switch (this) {
            case WOOL, COTTON, ACRYLIC, POLYESTER_KNIT, NYLON, MEMBRANE -> true;
            default -> false;
        };
    }

    /** A fill of this class in place, {@link WetLoft#fill}. */
    WetLoft fill(double density, double radiation, ParameterSet<ClothingParameter> parameters) {
        return WetLoft.fill(least(parameters), range(parameters), density, radiation, constants(parameters));
    }

    /** A cloth of this class, {@link WetLoft#cloth}. */
    WetLoft cloth(double arealMass, double thickness, double resistance, ParameterSet<ClothingParameter> parameters) {
        return WetLoft.cloth(
                least(parameters), range(parameters), arealMass, thickness, resistance, constants(parameters));
    }

    private double least(ParameterSet<ClothingParameter> parameters) {
        return least == 1 ? 1 : Math.min(1, least + parameters.get(WET_LOFT_LEAST_SHIFT));
    }

    private double range(ParameterSet<ClothingParameter> parameters) {
        return range * parameters.get(WET_LOFT_RANGE);
    }

    private static WetLoft.Constants constants(ParameterSet<ClothingParameter> parameters) {
        return new WetLoft.Constants(
                parameters.get(ClothingParameter.WATER_CONDUCTION),
                parameters.get(ClothingParameter.FROST_CONDUCTION),
                parameters.get(ClothingParameter.FROST_ON_LOFT));
    }
}
