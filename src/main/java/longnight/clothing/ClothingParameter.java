package longnight.clothing;

import longnight.assumption.ModelParameter;

/** Constants of cloth that are not exactly known. */
public enum ClothingParameter implements ModelParameter {
    // --- Fills ---
    SHORT_STAPLE_RADIATION(
            0.15,
            0.10,
            0.30,
            "W kg/(m4 K)",
            "two-flux radiation for fibres of 6 um radius, after Farnworth 1983; high end: 1.92 m2K/W per kg/m2, mean of"
                    + " bare non-woven batts in a hot-plate series of 2021 (not peer reviewed)"),
    CONTINUOUS_FILAMENT_RADIATION(
            0.22,
            0.15,
            0.322,
            "W kg/(m4 K)",
            "two-flux radiation for fibres of 9 to 10 um radius, after Farnworth 1983; high end as for short staple"),
    ACTIVE_BATT_RADIATION(0.18, 0.12, 0.25, "W kg/(m4 K)", "engineering estimate, no source"),
    SHORT_STAPLE_DENSITY(9, 6, 12, "kg/m3", "engineering estimate, no source"),
    CONTINUOUS_FILAMENT_DENSITY(8, 6, 10, "kg/m3", "engineering estimate, no source"),
    ACTIVE_BATT_DENSITY(12, 10, 15, "kg/m3", "engineering estimate, no source"),
    BATT_CONSTRUCTION(
            0.90, 0.85, 1.0, "1", "engineering estimate, no source: quilted 0.9, laminated without stitches 1"),
    DOWN_RADIATION(
            0.06,
            0.03,
            0.10,
            "W kg/(m4 K)",
            "two-flux radiation for an effective fibre radius of 2 to 3 um, after Farnworth 1983; not measured"),
    DOWN_OVERFILL(1.2, 1.0, 1.3, "1", "common practice, no source"),
    DOWN_FILL_POWER_KEPT(0.90, 0.80, 1.0, "1", "engineering estimate, no source: loss of fill power in use"),
    DOWN_CONSTRUCTION(
            0.70, 0.60, 0.90, "1", "common practice, no source (R-03): sewn shut 0.6 to 0.8, box-shaped chambers 0.9"),

    // --- Gaps ---
    GAP_NEXT_TO_SKIN(0.00075, 0.0005, 0.001, "m", "engineering estimate, no source"),
    GAP_MIDDLE(0.003, 0.002, 0.004, "m", "engineering estimate, no source"),
    GAP_SHELL(0.004, 0.003, 0.005, "m", "engineering estimate, no source"),
    GAP_SNUG(0.0015, 0.001, 0.002, "m", "engineering estimate, no source: hands and feet"),
    SHOULDER_SHARE(
            0.15, 0.10, 0.25, "1", "engineering estimate, no source: share of chest and back on which cloth hangs"),
    SQUEEZE_PRESSURE(
            200, 50, 400, "Pa", "engineering estimate, no source: most that a tight piece presses on what is under it"),

    // --- Posture (on the part that is not pressed on the ground) ---
    BENT_PUFFY(
            0.85,
            0.78,
            0.95,
            "1",
            "engineering estimate within Nielsen, Olesen and Fanger 1985 (sitting cuts intrinsic insulation by 8 to 18 %)"),
    HALF_BENT_PUFFY(0.88, 0.80, 0.96, "1", "as BENT_PUFFY; chair, legs out"),
    SUPINE_PUFFY(0.92, 0.85, 1.0, "1", "engineering estimate, no source"),
    BENT_THIN(0.95, 0.90, 1.0, "1", "as BENT_PUFFY; thin cloth"),

    // --- Contact ---
    SOFT_SURFACE(
            1.75,
            1.5,
            2.0,
            "1",
            "engineering estimate: clothed on a soft ground over nude on a hard floor (Kurazumi et al. 2008)"),
    PRESSURE_SITTING(
            6000,
            4000,
            8110,
            "Pa",
            "engineering estimate; 8.1 kPa under the rear of a seat, Biomed Eng Online 2018 (s12938-018-0621-2) Table 2"),
    PRESSURE_LYING(3500, 2700, 4000, "Pa", "body weight over contact area, 75 kg on 0.10 to 0.15 of body area"),
    THIN_UNDER_BODY(0.85, 0.80, 0.90, "1", "engineering estimate, no source"),
    FLEECE_UNDER_BODY(0.60, 0.50, 0.70, "1", "engineering estimate, no source"),
    PAD_FOOTPRINT(2.0, 1.5, 3.0, "1", "engineering estimate, no source: ground under a part over the area it touches"),

    // --- Wind ---
    OPENINGS_PERMEABILITY(
            100,
            50,
            200,
            "L/(m2 s)",
            "engineering estimate, no source: hem, cuffs and collar of a loose piece, at 100 Pa"),
    OPENINGS_SHARE(0.035, 0.02, 0.05, "1", "engineering estimate, no source: openings over the area of a loose piece"),
    WIND_RATIO_FACTOR(1.0, 0.9, 1.1, "1", "engineering estimate, no source: spread between published corrections"),

    // --- Water ---
    WET_LOFT_LEAST_SHIFT(
            0, -0.1, 0.1, "1", "engineering estimate, no source: added to the share of loft that is left when soaked"),
    WET_LOFT_RANGE(1, 0.6, 1.5, "1", "engineering estimate, no source: factor on the water over which loft is lost"),
    WATER_CONDUCTION(0.45, 0.30, 0.60, "W/(m K)", "engineering estimate, no source; high end: water as a whole"),
    FROST_CONDUCTION(0.3, 0.1, 0.6, "1", "engineering estimate, no source: share of frost that conducts as a whole"),
    FROST_ON_LOFT(0.3, 0.1, 0.6, "1", "engineering estimate, no source: weight of frost in the loss of loft"),
    CLING_LEAST(
            0.40,
            0.35,
            0.45,
            "1",
            "engineering estimate: brings soaked ordinary clothing to 0.63 to 0.68 of its dry total (Castellani et al."
                    + " 2001 and a life-raft study of 2007 to 2009)"),
    CLING_RANGE(0.30, 0.20, 0.45, "1", "engineering estimate, no source: water per dry mass over which gaps close"),
    SORPTION_TIME_THIN(1200, 600, 2400, "s", "engineering estimate, no source: bound water of thin cloth"),
    SORPTION_TIME_LOFTY(3600, 1800, 7200, "s", "engineering estimate, no source: bound water of fills and fleece"),
    WICKING_FACTOR(1, 0.3, 3, "1", "engineering estimate, no source: factor on all wicking coefficients"),
    SOAKED_FROM_GROUND(
            0.5,
            0.3,
            0.8,
            "1",
            "engineering estimate, no source: of snow melted under the body, what enters the cloth"),
    DRIP_TIME(60, 20, 300, "s", "engineering estimate, no source: time in which excess water drains"),
    FACE_HOLD(0.075, 0.05, 0.10, "kg/m2", "engineering estimate, no source: water in a wetted-out tight face"),
    FINISH_NEW(0.90, 0.80, 0.95, "1", "engineering estimate, no source: share of first rain thrown off"),
    FINISH_WORN(0.60, 0.40, 0.75, "1", "as FINISH_NEW"),
    FINISH_GONE(0.20, 0.0, 0.30, "1", "as FINISH_NEW"),
    FINISH_HALF_TIME(7200, 3600, 14400, "s", "engineering estimate, no source: steady rain that halves a finish"),
    PASSED_BY_TIGHT_FACE(0.20, 0.10, 0.35, "1", "engineering estimate, no source: of what the face cannot hold"),
    PASSED_BY_LOOSE_FACE(0.40, 0.25, 0.60, "1", "as PASSED_BY_TIGHT_FACE"),
    WETTED_FACE_VAPOUR(2, 1.5, 3, "1", "engineering estimate, no source: vapour resistance of a wetted-out face"),
    COLD_MEMBRANE_VAPOUR(
            2, 1, 3, "1", "engineering estimate; direction: Osczevski 2003, DRDC TR 2003-070 (abstract): at -10 degC");

    private final Span span;

    ClothingParameter(double nominal, double low, double high, String unit, String source) {
        span = new Span(nominal, low, high, unit, source);
    }

    @Override
    public Span span() {
        return span;
    }
}
