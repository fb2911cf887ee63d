package longnight.body;

/**
 * The node tables of the reference man (74.43 kg, 1.72 m, about 15 % fat), per side for paired segments, in the order of
 * {@link longnight.figure.BodySegment}.
 *
 * <p><b>Source.</b> Tanabe, Kobayashi, Nakano, Ozeki and Konishi 2002, Energy and Buildings 34:637-646, 65-node model.
 * Capacities and most conductances agree with Stolwijk 1971 (NASA CR-1855); basal heat and flow of single nodes rest on
 * this table alone. Two entries differ from the copy at hand because its sums do not close otherwise: upper-arm fat heat
 * 0.061 W, head dilation share 0.132; upper-arm and forearm shivering shares are re-split by muscle mass (engineering
 * estimate).
 */
final class NodeTables {

    static final double AREA_TOTAL = 1.869;
    static final double BASAL_TOTAL = 83.554;
    static final double LEAN_MASS = 63.27;
    static final double FAT_MASS = 11.16;
    static final double BLOOD_CAPACITY = 2.610;
    /** Volumetric heat of blood [Wh/(L K)]. */
    static final double BLOOD_HEAT = 1.067;
    /** Muscle blood flow per watt of extra heat made there [L/h/W]. */
    static final double FLOW_PER_HEAT = 0.862;

    static final double[] AREA = {0.140, 0.175, 0.161, 0.221, 0.096, 0.063, 0.050, 0.209, 0.112, 0.056};

    /** Heat capacity [Wh/K]: core, muscle, fat, skin. */
    static final double[][] CAPACITY = {
        {2.576, 2.915, 2.471, 6.017, 0.503, 0.321, 0.082, 1.665, 0.793, 0.139},
        {0.386, 5.669, 5.022, 7.997, 1.078, 0.681, 0.037, 3.604, 1.715, 0.037},
        {0.258, 1.496, 1.322, 2.102, 0.207, 0.131, 0.052, 0.560, 0.268, 0.077},
        {0.282, 0.418, 0.386, 0.606, 0.151, 0.099, 0.099, 0.423, 0.204, 0.125}
    };

    /** Conductance to the next layer outwards [W/K]: core-muscle, muscle-fat, fat-skin. */
    static final double[][] CONDUCTANCE = {
        {1.601, 0.616, 0.594, 0.379, 0.441, 0.244, 2.181, 2.401, 1.891, 8.120},
        {13.224, 2.100, 2.018, 1.276, 2.946, 2.227, 6.484, 4.536, 2.656, 10.266},
        {16.008, 9.164, 8.700, 5.104, 7.308, 7.888, 5.858, 30.160, 7.540, 8.178}
    };

    /** Basal heat [W]: core, muscle, fat, skin. */
    static final double[][] HEAT = {
        {16.843, 21.182, 18.699, 8.050, 0.181, 0.094, 0.045, 0.343, 0.102, 0.122},
        {0.217, 2.537, 2.537, 4.067, 0.423, 0.220, 0.022, 0.824, 0.220, 0.035},
        {0.109, 0.568, 0.501, 0.804, 0.061, 0.031, 0.023, 0.151, 0.035, 0.056},
        {0.131, 0.179, 0.158, 0.254, 0.050, 0.026, 0.050, 0.122, 0.023, 0.100}
    };

    /** Basal blood flow [L/h]: core, muscle, fat, skin. */
    static final double[][] FLOW = {
        {45.00, 77.85, 76.34, 18.19, 0.320, 0.160, 0.091, 0.364, 0.071, 0.049},
        {0.870, 7.660, 7.660, 12.280, 1.280, 0.670, 0.078, 0.855, 0.070, 0.010},
        {0.340, 1.340, 1.340, 2.160, 0.160, 0.085, 0.042, 0.150, 0.019, 0.019},
        {2.240, 1.800, 1.350, 2.080, 0.860, 0.450, 0.910, 0.380, 0.110, 0.450}
    };

    /** Stolwijk 1971: flow of both legs and of both feet [L/h], for the leg-flow alternative. */
    static final double[] STOLWIJK_LEGS = {2.69, 3.43, 0.52, 2.85};

    static final double[] STOLWIJK_FEET = {0.16, 0.02, 0.05, 3.0};

    static final double[] SENSOR = {0.070, 0.149, 0.132, 0.212, 0.023, 0.012, 0.092, 0.050, 0.025, 0.017};
    static final double[] DILATION = {0.132, 0.098, 0.086, 0.138, 0.031, 0.016, 0.061, 0.092, 0.023, 0.050};
    static final double[] CONSTRICTION = {0.022, 0.065, 0.065, 0.065, 0.022, 0.022, 0.152, 0.022, 0.022, 0.152};
    static final double[] SHIVER = {0.020, 0.258, 0.227, 0.365, 0.0184, 0.0116, 0, 0.023, 0.012, 0};
    static final double[] WORK = {0, 0.091, 0.080, 0.129, 0.026, 0.014, 0.005, 0.201, 0.099, 0.005};

    /** Fat thickness of the reference man [mm], from the fat capacities with 0.92 kg/L and 2.4 kJ/(kg K). */
    static final double[] FAT_THICKNESS = {3.0, 13.94, 13.39, 15.51, 3.52, 3.39, 1.7, 4.37, 3.9, 2.24};
    /** Conductivity of fat [W/(m K)] (customary, from memory). */
    static final double FAT_CONDUCTIVITY = 0.20;

    /** Still-air film of a nude standing person [W/(m2 K)], Ichihara et al. 1997 as used by Takahashi et al. 2021. */
    static final double[] STILL_CONVECTION = {4.48, 2.91, 2.91, 2.91, 3.59, 3.59, 3.67, 2.53, 2.53, 2.04};
    /** 0.8 times measured radiation coefficients of the same source (the 0.8 is an engineering estimate). */
    static final double[] STILL_RADIATION = {
        0.8 * 4.89,
        0.8 * 4.26,
        0.8 * 4.26,
        0.8 * 4.26,
        0.8 * 4.49,
        0.8 * 4.49,
        0.8 * 4.21,
        0.8 * 5.08,
        0.8 * 5.08,
        0.8 * 6.14
    };

    private NodeTables() {}
}
