package longnight.clothing;

/**
 * Plain cloths: how thickness, resistance and permeability go with areal mass. Each row is a reference cloth at light load
 * (15 to 50 Pa); thickness and resistance scale with areal mass to a power, evaporative resistance to another.
 *
 * <p>All rows are engineering estimates without a source, except fleece: 0.41 m2K/W per kg/m2 (hot-plate series of an
 * outdoor magazine, 2021, not peer reviewed), and wool: conductivity 0.042 W/(m K) on thickness (from memory). Specific heat
 * of fibres: Morton and Hearle, Physical Properties of Textile Fibres (from memory).
 *
 * @param mass            areal mass of the reference [kg/m2]
 * @param thickness       [m]
 * @param resistance      [m2 K/W]
 * @param exponent        of areal mass in thickness and resistance
 * @param vapour          evaporative resistance [m2 Pa/W]
 * @param vapourExponent  of areal mass in it
 * @param airPermeability [L/(m2 s) at 100 Pa]
 * @param heaviest        heaviest credible cloth of its sort [kg/m2]
 * @param specificHeat    [J/(kg K)]
 */
record Cloth(
        double mass,
        double thickness,
        double resistance,
        double exponent,
        double vapour,
        double vapourExponent,
        double airPermeability,
        double heaviest,
        double specificHeat) {

    private static final double POLYESTER = 1300;
    private static final double WOOL = 1340;
    private static final double COTTON = 1300;
    private static final double NYLON = 1500;

    static final double FILL_SPECIFIC_HEAT = 1300;

    static Cloth of(Fabric fabric) {
        return switch (fabric) {
            case POLYESTER_KNIT -> new Cloth(0.130, 0.0008, 0.018, 1.5, 3, 1, 600, 0.5, POLYESTER);
            case WOOL_KNIT -> new Cloth(0.200, 0.0014, 0.032, 1.5, 5, 1, 500, 0.5, WOOL);
            case COTTON_KNIT -> new Cloth(0.150, 0.0007, 0.014, 1.5, 3, 1, 400, 0.5, COTTON);
            case ACRYLIC_KNIT -> new Cloth(0.300, 0.0030, 0.065, 1.0, 8, 1, 400, 0.5, NYLON);
            case FLEECE -> new Cloth(0.230, 0.0040, 0.0945, 1.0, 10, 1, 600, 0.4, POLYESTER);
            case OPEN_PILE -> new Cloth(0.110, 0.0050, 0.10, 1.0, 8, 1, 1200, 0.25, POLYESTER);
            case NYLON_WOVEN -> new Cloth(0.050, 0.0001, 0.003, 1.0, 4, 0.3, 12, 0.35, NYLON);
            case SOFTSHELL -> new Cloth(0.250, 0.0012, 0.025, 1.0, 11, 0.3, 50, 0.45, NYLON);
            case LAMINATE -> new Cloth(0.150, 0.0005, 0.010, 1.0, 10, 0.3, 0.5, 0.4, NYLON);
            case COATED -> new Cloth(0.150, 0.0003, 0.006, 1.0, 300, 0.3, 0, 0.5, NYLON);
            case COTTON_DENIM -> new Cloth(0.400, 0.0009, 0.020, 1.0, 8, 0.5, 80, 0.6, COTTON);
            case LEATHER -> new Cloth(0.900, 0.0012, 0.010, 1.0, 60, 0.5, 0, 2.5, 1500);
            case RUBBER_FELT -> new Cloth(2.500, 0.0080, 0.180, 1.0, 150, 0.5, 0, 8.0, 1500);
        };
    }

    double thickness(double arealMass) {
        return thickness * StrictMath.pow(arealMass / mass, exponent);
    }

    double resistance(double arealMass) {
        return resistance * StrictMath.pow(arealMass / mass, exponent);
    }

    double vapour(double arealMass) {
        return vapour * StrictMath.pow(arealMass / mass, vapourExponent);
    }
}
