package longnight.body;

import longnight.assumption.ModelParameter;

/**
 * Constants of the body that are not exactly known. The control constants were fitted to the open set of published human
 * experiments in cold air (see docs), so agreement with those experiments is a calibration and no validation.
 */
public enum BodyParameter implements ModelParameter {
    /** Slope of shivering against skin cooling at 15 % fat, core neutral. */
    SHIVER_SKIN_SLOPE(
            5.0, 4.0, 6.0, "W/(m2 K)", "cold-air regression 15-25 degC, Timbal et al. 1976 (authors from memory)"),
    /** Core term of shivering, divided by the root of body fat in percent. */
    SHIVER_CORE_GAIN(
            155.5, 110, 200, "W/(m2 K)", "Tikuisis and Giesbrecht 1999, Eur J Appl Physiol 79:221 (from memory)"),
    /** Shivering signal temperature below which skin drives shivering, at 15 % fat. */
    SHIVER_ON(31.2, 30.5, 32.0, "degC", "engineering estimate, fitted to the open set"),
    /** Change of that threshold per percent of body fat. */
    SHIVER_ON_PER_FAT(-0.05, -0.2, 0, "K/percent", "engineering estimate, fitted to the open set"),
    /** Weight of trunk skin in the shivering signal. */
    SHIVER_TRUNK_WEIGHT(0.7, 0.4, 1.0, "1", "engineering estimate, fitted; direction of Jeong and Tokura 1988"),
    /** Warm core that does not yet brake shivering. */
    WARM_CORE_BAND(0.15, 0, 0.3, "K", "engineering estimate, fitted to the open set"),
    /** How hard a warm core brakes shivering, against the cold-core gain. */
    WARM_CORE_BRAKE(0.75, 0, 1, "1", "engineering estimate, fitted to the open set"),
    /** Shivering per rate of skin cooling, at 15 % fat. */
    SHIVER_RATE_GAIN(
            20,
            0,
            57.77,
            "W/m2 per K/min",
            "a third of the cold-air regression's 57.77; share fitted to the open set (docs/calibration.md)"),
    /** Largest non-shivering heat as a share of basal heat. */
    NON_SHIVERING(0.04, 0, 0.10, "1", "within reviews of cold-induced thermogenesis; share fitted to the open set"),
    /** Law B: share of the skin term that acts at a neutral core. */
    LAW_B_SKIN_SHARE(0.4, 0.3, 1.0, "1", "engineering estimate, fitted to the open set"),
    /** Law B: gate temperature at 15 % fat. */
    LAW_B_GATE(29.5, 29.0, 30.5, "degC", "thresholds of cold-air studies (abstracts); value fitted"),
    /** Heat-carrying share of shivering blood flow in arms and legs. */
    LIMB_SHIVER_FLOW(0.1, 0.05, 1.0, "1", "engineering estimate, fitted: counter-current in deep limb vessels"),
    /** Divisor of deep limb flow per unit of constriction signal. */
    LIMB_DEEP_DIVISOR(0.1, 0.05, 0.2, "1", "engineering estimate, fitted to the open set"),
    /** Floor of deep limb flow as a share of basal. */
    LIMB_DEEP_FLOOR(
            0.08, 0.06, 0.4, "1", "engineering estimate, fitted: whole-body conductance near 5 W/(m2 K) at 10 degC"),
    /** Floor of skin flow as a share of basal. */
    SKIN_FLOOR(
            0.08,
            0.08,
            0.2,
            "1",
            "half of plethysmographic flow (Montgomery 1977; Spealman 1945, abstracts) counts as heat"),
    /** Factor on the constriction coefficient of arm and leg skin. */
    LIMB_SKIN_CONSTRICTION(1.5, 1.0, 2.3, "1", "between Tanabe et al. 2002 and Stolwijk 1971"),
    /** Floor of fat flow as a share of basal. */
    FAT_FLOOR(0.1, 0.05, 0.3, "1", "engineering estimate, fitted to nude 10 and 5 degC runs"),
    /** Gain of constriction on the summed signal. */
    VESSEL_GAIN(9.0, 5.0, 11.5, "1/K", "between Stolwijk 1971 (5.0) and Tanabe et al. 2002 (11.5); fitted"),
    /** Weight of the core error in constriction against skin. */
    VESSEL_CORE_WEIGHT(4.0, 1.0, 6.0, "1", "Cheng et al. 1995 (from memory): core to skin about 4 to 1"),
    /** Conductance between pelvis core and thigh muscle, both sides. */
    THIGH_LINK(0.2, 0, 0.4, "W/K", "engineering estimate, fitted: tissue contact and leg veins passing the pelvis"),
    /** Weight of pelvis muscle in what a rectal probe reads. */
    RECTAL_MUSCLE(0.5, 0, 0.7, "1", "engineering estimate, fitted; an observation rule only"),
    /** Share by which leg and foot flows go from Tanabe's to Stolwijk's table. */
    LEG_FLOW(0, 0, 1, "1", "Tanabe et al. 2002 against Stolwijk 1971"),
    /** Awake sitting or standing heat over basal. */
    REST_SITTING(1.1, 0.97, 1.23, "1", "from memory, 1.0-1.2; spread 12 % between people"),
    /** Awake lying heat over basal. */
    REST_LYING(1.05, 0.93, 1.17, "1", "from memory"),
    /** Sleeping heat over basal. */
    REST_ASLEEP(0.93, 0.88, 0.97, "1", "from memory 0.90-0.95; measured 42-44 W/m2 (Westerterp-Plantenga et al. 2002)"),
    /** Half amplitude of the daily rhythm of the set level. */
    CLOCK(0.4, 0, 0.6, "K", "engineering estimate, fitted to warm nights (Kreider, Buskirk and Bass 1958)"),
    /** Fall of the set level in sleep. */
    SLEEP_SHIFT(0.7, 0, 1.0, "K", "engineering estimate, fitted to warm nights (Kreider, Buskirk and Bass 1958)"),
    /** Share of shivering that remains asleep. */
    SLEEP_SHIVER(0.4, 0.2, 1.0, "1", "engineering estimate; shivering in light sleep, Haskell et al. 1981 (abstract)"),
    /** Skin signal at which nobody sleeps. */
    SLEEP_SKIN_LOW(25.0, 23.0, 27.0, "degC", "engineering estimate, fitted to cold nights (Irving et al. 1960)"),
    /** Skin signal at which sleep is unbroken. */
    SLEEP_SKIN_HIGH(
            30.5,
            29.5,
            31.5,
            "degC",
            "J Appl Physiol 14:765, 1959 (abstract): near-continuous sleep at mean skin 30.5"),
    /** Weight of trunk skin in the sleep signal. */
    SLEEP_TRUNK_WEIGHT(0.3, 0, 0.5, "1", "engineering estimate, fitted to cold nights (Irving et al. 1960)"),
    /** Factor on the metabolic rate of walking. */
    WALK_HEAT(
            1.0,
            0.9,
            1.2,
            "1",
            "Looney et al. 2019: standard error 0.2-0.4 W/kg; up to 20 % more with heavy loads (Looney et al. 2022)"),
    /** Share of the height lost downhill that warms the walker. */
    DESCENT_HEAT(1.0, 0.5, 1.0, "1", "mechanics; what snow and scree take is an engineering estimate"),
    /** Rise of sitting still over lying. */
    SIT_STILL(0.04, 0, 0.10, "1", "Levine, Schleusner and Jensen 2000, Am J Clin Nutr 72:1451, mean and SD"),
    /** Rise of sitting and shifting over lying. */
    SIT_SHIFTING(0.54, 0.25, 0.83, "1", "Levine, Schleusner and Jensen 2000, Am J Clin Nutr 72:1451, mean and SD"),
    /** Rise of standing still over lying. */
    STAND_STILL(0.13, 0.05, 0.21, "1", "Levine, Schleusner and Jensen 2000, Am J Clin Nutr 72:1451, mean and SD"),
    /** Rise of standing and shifting over lying. */
    STAND_SHIFTING(0.94, 0.56, 1.32, "1", "Levine, Schleusner and Jensen 2000, Am J Clin Nutr 72:1451, mean and SD"),
    /** Digestion heat of a mixed meal over its energy. */
    DIGESTION_SHARE(0.10, 0.05, 0.15, "1", "Westerterp 2004, Nutr Metab 1:5"),
    /** Time from a meal to the peak of digestion heat. */
    DIGESTION_PEAK(4500, 3600, 4600, "s", "from memory: peak 60-90 min, nine tenths within 5 h"),
    /** Glycogen per mass of muscle when full. */
    GLYCOGEN_MUSCLE(
            0.0125, 0.010, 0.015, "kg/kg", "reviews (authors not noted): 300-400 g in a 70 kg man; overfed 15 g/kg"),
    /** Glycogen in the liver when full. */
    GLYCOGEN_LIVER(0.090, 0.044, 0.110, "kg", "reviews (authors not noted): 40-110 g, 44 g after a night's fast"),
    /** Share of a full store left after missed meals. */
    FUEL_MISSED_MEALS(0.6, 0.4, 0.8, "1", "engineering estimate, no source"),
    /** Share of a full store left after a hard day with little food. */
    FUEL_EXHAUSTED(0.4, 0.2, 0.5, "1", "engineering estimate, no source"),
    /** Share of heat from carbohydrate in rest and mild shivering. */
    CARBOHYDRATE_SHARE(0.40, 0.28, 0.65, "1", "Haman et al. 2002 (0.40); low and high stores, Haman et al. 2004"),
    /** Heat over rest above which all more comes from carbohydrate. */
    CARBOHYDRATE_TURN(
            2.6, 2.0, 3.0, "1", "Haman et al. 2002 and 2004 (J Physiol, PMC1464733); range is an engineering estimate"),
    /** Largest share of heat that food just eaten covers. */
    FOOD_SHARE(0.15, 0.10, 0.30, "1", "blood sugar 10-15 % (Haman et al. 2002, 2004); upper end from memory"),
    /** Share of the carbohydrate store below which the peak of shivering falls. */
    FUEL_KNEE(0.25, 0.15, 0.40, "1", "engineering estimate, no source"),
    /** Share of the peak of shivering that remains with an empty store. */
    FUEL_FLOOR(0.5, 0.4, 0.8, "1", "engineering estimate, no source: fat still burns"),
    /** Sweat per head-core error, as heat of evaporation. */
    SWEAT_CORE_GAIN(371.2, 250, 500, "W/K", "Stolwijk 1971, Tanabe et al. 2002; range is an engineering estimate"),
    /** Sweat per skin signal, as heat of evaporation. */
    SWEAT_SKIN_GAIN(33.6, 20, 50, "W/K", "Stolwijk 1971, Tanabe et al. 2002; range is an engineering estimate"),
    /** Largest rate of sweating. */
    SWEAT_CAP(1.0 / 3600, 0.5 / 3600, 1.5 / 3600, "kg/s", "engineering estimate, no source"),
    /** Share of a heat pack's output that reaches the body when worn over the base layer. */
    HEAT_PACK_TO_BODY(0.5, 0.2, 0.8, "1", "engineering estimate, no source"),
    /** Latent heat of a setting pack. */
    SETTING_PACK(276e3, 264e3, 289e3, "J/kg", "sodium acetate trihydrate, reference works"),
    /** Factor on the contact shares of a huddle. */
    HUDDLE_CONTACT(1.0, 0.5, 1.5, "1", "engineering estimate, no source"),
    /** Factor on the wind for those in the lee of a huddle. */
    HUDDLE_LEE(0.6, 0.4, 1.0, "1", "engineering estimate, no source");

    private final Span span;

    BodyParameter(double nominal, double low, double high, String unit, String source) {
        span = new Span(nominal, low, high, unit, source);
    }

    @Override
    public Span span() {
        return span;
    }
}
