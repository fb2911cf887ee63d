package longnight.body;

import longnight.assumption.ParameterSet;
import longnight.body.law.AirSlopeShivering;
import longnight.body.law.BodyArea;
import longnight.body.law.Breath;
import longnight.body.law.Fuel;
import longnight.body.law.GatedShivering;
import longnight.body.law.PeakHeat;
import longnight.body.law.RestingHeat;
import longnight.body.law.SetLevel;
import longnight.body.law.Shivering;
import longnight.body.law.SkinVapour;
import longnight.body.law.Sweat;
import longnight.body.law.WalkingHeat;
import longnight.figure.BodySegment;
import longnight.figure.Posture;

/**
 * One person's body, compiled into flat arrays: ten segments of core, muscle, fat and skin and a blood pool, scaled to the
 * person, with the person's own neutral steady state as set points. Immutable and safe to share; what changes lives in the
 * caller's node array and in {@link Control}.
 *
 * <p>Node index = layer x 10 + segment, layers from core (0) to skin (3), blood last.
 *
 * <p><b>Source.</b> Node balance: Stolwijk 1971, Tanabe et al. 2002. Own neutral state as set points: as Tikuisis, Gonzalez
 * and Pandolf 1988. Scaling by area, lean and fat mass: derived from geometry. Control constants: {@link BodyParameter}.
 */
public final class Body {

    /** Number of nodes. */
    public static final int NODES = 41;
    /** Index of the first core node. */
    public static final int CORE = 0;
    /** Index of the first muscle node. */
    public static final int MUSCLE = 10;
    /** Index of the first fat node. */
    public static final int FAT = 20;
    /** Index of the first skin node. */
    public static final int SKIN = 30;
    /** Index of the blood pool. */
    public static final int BLOOD = 40;

    private static final int S = BodySegment.COUNT;
    private static final int HEAD = BodySegment.HEAD.ordinal();
    private static final int CHEST = BodySegment.CHEST.ordinal();
    private static final int PELVIS = BodySegment.PELVIS.ordinal();
    private static final int THIGH = BodySegment.THIGH.ordinal();
    private static final double NEUTRAL_BLOOD = 36.8;
    private static final double LN2_PER_10K = StrictMath.log(2.0) / 10.0;
    /**
     * Blood for working limb muscle passes the counter-current of the deep vessels as long as the muscle is cold, as when it
     * shivers, and the less heat it carries the colder the muscle is; within 1 K of the blood the exchange is bypassed. Widths
     * in K: engineering estimates, no source. With full flow a march after a cold night would draw the core below 32 degC in
     * minutes, which nobody has seen; afterdrops of 0.5 degC are what is known (Giesbrecht et al. 1994).
     */
    private static final double WARM_LIMB = 1.0;

    private static final double COLD_LIMB = 2.0;

    /** Blood flow to warm working muscle [W/K per W]: flow in proportion to heat, no counter-current. */
    private static final double WORK_FLOW = NodeTables.BLOOD_HEAT * NodeTables.FLOW_PER_HEAT;

    private static final double NEUTRAL_HUMIDITY = 0.5;
    private static final double SEA_LEVEL = 101325.0;

    private final Person person;
    private final BodyOptions options;
    private final Shivering shivering;

    private final double bodyArea;
    private final double basal;
    private final double peakExtra;
    private final double[] area = new double[S];
    private final double[] capacity = new double[NODES];
    private final double[] d1 = new double[S];
    private final double[] d2 = new double[S];
    private final double[] d3 = new double[S];
    private final double[] heat = new double[BLOOD];
    private final double[] flow = new double[BLOOD];
    private final double[] sensor = new double[S];
    private final double[] dilation = new double[S];
    private final double[] constriction = new double[S];
    private final double[] shiverShare = new double[S];
    private final double[] workShare = new double[S];
    private final double[] shiverFlow = new double[S];
    private final double[] areaShare = new double[S];
    private final double[] trunkShare = new double[S];
    private final double[] neutral;
    private final double neutralOperative;

    private final double walkFactor;
    private final double descentShare;
    private final Sweat sweat;
    private final Fuel fuel;
    private final double vesselGain;
    private final double vesselCoreWeight;
    private final double skinFloor;
    private final double fatFloor;
    private final double limbFloor;
    private final double limbDivisor;
    private final double thighLink;
    private final double rectalMuscle;
    private final double restAwakeSitting;
    private final double restAwakeLying;
    private final double restAsleep;
    private final double nonShivering;
    private final double clock;
    private final double sleepShift;
    private final double sleepShiver;
    private final double sleepLow;
    private final double sleepHigh;
    private final double sleepTrunk;

    private Body(Person person, ParameterSet<BodyParameter> p, BodyOptions options, double operative) {
        this.person = person;
        this.options = options;
        bodyArea = BodyArea.duBois(person.mass(), person.height());
        double own = RestingHeat.mifflin(person.mass(), person.height(), person.age(), person.sex() == Person.Sex.MALE);
        basal = (Double.isNaN(options.basalHeat()) ? own : options.basalHeat()) * person.heatOffset();
        restAwakeSitting = p.get(BodyParameter.REST_SITTING);
        restAwakeLying = p.get(BodyParameter.REST_LYING);
        restAsleep = p.get(BodyParameter.REST_ASLEEP);
        double restingNow = restAwakeSitting * basal;
        peakExtra = Double.isNaN(options.peakHeat())
                ? PeakHeat.eyolfson(person.mass(), person.height(), person.age(), person.peakOxygen(), restingNow)
                        - restingNow
                : options.peakHeat();
        thighLink = p.get(BodyParameter.THIGH_LINK);
        scale(p);
        walkFactor = p.get(BodyParameter.WALK_HEAT);
        descentShare = p.get(BodyParameter.DESCENT_HEAT);
        sweat = new Sweat(
                p.get(BodyParameter.SWEAT_CORE_GAIN),
                p.get(BodyParameter.SWEAT_SKIN_GAIN),
                p.get(BodyParameter.SWEAT_CAP));
        double leanMass = person.mass() * (1.0 - person.bodyFat() / 100.0);
        fuel = new Fuel(
                Fuel.fullStore(leanMass, p.get(BodyParameter.GLYCOGEN_MUSCLE), p.get(BodyParameter.GLYCOGEN_LIVER)),
                p.get(BodyParameter.CARBOHYDRATE_SHARE),
                p.get(BodyParameter.CARBOHYDRATE_TURN),
                p.get(BodyParameter.FOOD_SHARE),
                p.get(BodyParameter.FUEL_KNEE),
                p.get(BodyParameter.FUEL_FLOOR));
        vesselGain = p.get(BodyParameter.VESSEL_GAIN);
        vesselCoreWeight = p.get(BodyParameter.VESSEL_CORE_WEIGHT);
        skinFloor = p.get(BodyParameter.SKIN_FLOOR);
        fatFloor = p.get(BodyParameter.FAT_FLOOR);
        limbFloor = p.get(BodyParameter.LIMB_DEEP_FLOOR);
        limbDivisor = p.get(BodyParameter.LIMB_DEEP_DIVISOR);
        rectalMuscle = p.get(BodyParameter.RECTAL_MUSCLE);
        nonShivering = p.get(BodyParameter.NON_SHIVERING);
        clock = p.get(BodyParameter.CLOCK);
        sleepShift = p.get(BodyParameter.SLEEP_SHIFT);
        sleepShiver = p.get(BodyParameter.SLEEP_SHIVER);
        sleepLow = p.get(BodyParameter.SLEEP_SKIN_LOW);
        sleepHigh = p.get(BodyParameter.SLEEP_SKIN_HIGH);
        sleepTrunk = p.get(BodyParameter.SLEEP_TRUNK_WEIGHT);
        double fat = person.bodyFat();
        shivering = switch (options.law()) {
            case AIR_SLOPE ->
                new AirSlopeShivering(
                        p.get(BodyParameter.SHIVER_SKIN_SLOPE),
                        p.get(BodyParameter.SHIVER_CORE_GAIN),
                        p.get(BodyParameter.SHIVER_ON) + p.get(BodyParameter.SHIVER_ON_PER_FAT) * (fat - 15.0),
                        p.get(BodyParameter.SHIVER_TRUNK_WEIGHT),
                        p.get(BodyParameter.WARM_CORE_BAND),
                        p.get(BodyParameter.WARM_CORE_BRAKE),
                        p.get(BodyParameter.SHIVER_RATE_GAIN),
                        fat);
            case GATED ->
                new GatedShivering(
                        p.get(BodyParameter.SHIVER_CORE_GAIN),
                        p.get(BodyParameter.LAW_B_SKIN_SHARE),
                        Math.min(31.0, Math.max(25.0, p.get(BodyParameter.LAW_B_GATE) - 0.2 * (fat - 15.0))),
                        fat);
        };
        neutral = new double[NODES];
        neutralOperative = Double.isNaN(operative) ? findOperative() : operative;
        solveNeutral(neutralOperative, neutral);
    }

    /** The body of a person with given constants and model choices. */
    public static Body of(Person person, ParameterSet<BodyParameter> parameters, BodyOptions options) {
        return new Body(person, parameters, options, Double.NaN);
    }

    /**
     * The same, with the neutral state taken at a given operative temperature instead of a blood temperature of 36.8 degC.
     *
     * @param operative operative temperature of the neutral state [degC]
     */
    public static Body of(
            Person person, ParameterSet<BodyParameter> parameters, BodyOptions options, double operative) {
        return new Body(person, parameters, options, operative);
    }

    private void scale(ParameterSet<BodyParameter> p) {
        double lean = person.mass() * (1.0 - person.bodyFat() / 100.0) / NodeTables.LEAN_MASS;
        double fat = person.mass() * person.bodyFat() / 100.0 / NodeTables.FAT_MASS;
        double ra = bodyArea / NodeTables.AREA_TOTAL;
        double rm = basal / NodeTables.BASAL_TOTAL;
        double legs = p.get(BodyParameter.LEG_FLOW);
        double limbSkin = p.get(BodyParameter.LIMB_SKIN_CONSTRICTION);
        double limbShiver = p.get(BodyParameter.LIMB_SHIVER_FLOW);
        double lr = lean / ra;
        for (BodySegment segment : BodySegment.values()) {
            int s = segment.ordinal();
            double n = segment.multiplicity();
            boolean bony = segment == BodySegment.HAND || segment == BodySegment.FOOT;
            double fatFactor = bony ? ra : fat;
            double dr = bony ? 1.0 : fat / ra;
            area[s] = n * NodeTables.AREA[s] * ra;
            capacity[CORE + s] = 3600.0 * n * NodeTables.CAPACITY[0][s] * lean;
            capacity[MUSCLE + s] = 3600.0 * n * NodeTables.CAPACITY[1][s] * lean;
            capacity[FAT + s] = 3600.0 * n * NodeTables.CAPACITY[2][s] * fatFactor;
            capacity[SKIN + s] = 3600.0 * n * NodeTables.CAPACITY[3][s] * lean;
            double rmf = NodeTables.AREA[s] / NodeTables.CONDUCTANCE[1][s];
            double rfs = NodeTables.AREA[s] / NodeTables.CONDUCTANCE[2][s];
            double fatResistance = NodeTables.FAT_THICKNESS[s] / 1000.0 / NodeTables.FAT_CONDUCTIVITY;
            double w = bony ? 0.0 : Math.min(0.7, Math.max(0.0, (fatResistance - rfs) / rmf));
            d1[s] = n * NodeTables.CONDUCTANCE[0][s] * ra / lr;
            d2[s] = area[s] / (rmf * ((1.0 - w) * lr + w * dr));
            d3[s] = area[s] / (rfs * dr);
            for (int layer = 0; layer < 4; layer++) {
                heat[layer * S + s] = n * NodeTables.HEAT[layer][s] * rm;
                double table = n * NodeTables.FLOW[layer][s];
                flow[layer * S + s] =
                        NodeTables.BLOOD_HEAT * rm * ((1.0 - legs) * table + legs * alternative(segment, layer, table));
            }
            sensor[s] = n * NodeTables.SENSOR[s];
            dilation[s] = n * NodeTables.DILATION[s] * NodeTables.BLOOD_HEAT;
            boolean armOrLeg = segment.isLimb() && !bony;
            constriction[s] = NodeTables.CONSTRICTION[s] * (armOrLeg ? limbSkin : 1.0);
            shiverShare[s] = n * NodeTables.SHIVER[s];
            workShare[s] = n * NodeTables.WORK[s];
            shiverFlow[s] = NodeTables.BLOOD_HEAT * NodeTables.FLOW_PER_HEAT * (segment.isLimb() ? limbShiver : 1.0);
        }
        capacity[BLOOD] = 3600.0 * NodeTables.BLOOD_CAPACITY * lean;
        double trunk = 0;
        double shiverSum = 0;
        double workSum = 0;
        for (int s = 0; s < S; s++) {
            areaShare[s] = area[s] / bodyArea;
            trunk += BodySegment.values()[s].isTrunk() ? area[s] : 0.0;
            shiverSum += shiverShare[s];
            workSum += workShare[s];
        }
        for (int s = 0; s < S; s++) {
            trunkShare[s] = BodySegment.values()[s].isTrunk() ? area[s] / trunk : 0.0;
            shiverShare[s] /= shiverSum;
            workShare[s] /= workSum;
        }
    }

    private static double alternative(BodySegment segment, int layer, double table) {
        double thigh = NodeTables.CAPACITY[1][THIGH];
        double calf = NodeTables.CAPACITY[1][BodySegment.CALF.ordinal()];
        return switch (segment) {
            case THIGH -> NodeTables.STOLWIJK_LEGS[layer] * thigh / (thigh + calf);
            case CALF -> NodeTables.STOLWIJK_LEGS[layer] * calf / (thigh + calf);
            case FOOT -> NodeTables.STOLWIJK_FEET[layer];
            default -> table;
        };
    }

    // ---------------------------------------------------------------- neutral state

    private double findOperative() {
        double[] t = new double[NODES];
        double x0 = 27.0;
        double x1 = 31.0;
        double f0 = solveNeutral(x0, t) - NEUTRAL_BLOOD;
        double f1 = solveNeutral(x1, t) - NEUTRAL_BLOOD;
        for (int i = 0; i < 60 && Math.abs(x1 - x0) > 1e-10; i++) {
            double x2 = x1 - f1 * (x1 - x0) / (f1 - f0);
            x0 = x1;
            f0 = f1;
            x1 = x2;
            f1 = solveNeutral(x1, t) - NEUTRAL_BLOOD;
            if (f1 == f0) {
                break;
            }
        }
        return x1;
    }

    /** Steady state, nude in still air at 50 % humidity, basal flows, awake heat; returns the blood temperature. */
    private double solveNeutral(double operative, double[] t) {
        double airVapour = NEUTRAL_HUMIDITY * SkinVapour.saturation(operative);
        double made = restAwakeSitting * basal;
        double breath = made * Breath.lossPerHeatMade(operative, airVapour, SEA_LEVEL);
        for (int i = 0; i < NODES; i++) {
            t[i] = i < SKIN ? 36.0 : 34.0;
        }
        double[] diagonal = new double[BLOOD];
        double[] right = new double[BLOOD];
        double[] blood = new double[BLOOD];
        for (int pass = 0; pass < 200; pass++) {
            double before = t[BLOOD];
            double change = 0;
            for (int s = 0; s < S; s++) {
                int c = CORE + s;
                int m = MUSCLE + s;
                int f = FAT + s;
                int k = SKIN + s;
                double hc = NodeTables.STILL_CONVECTION[s];
                double dry = area[s] * (hc + NodeTables.STILL_RADIATION[s]);
                double saturation = SkinVapour.saturation(t[k]);
                double wet = area[s] * SkinVapour.INSENSIBLE_WETTEDNESS * SkinVapour.LEWIS * hc;
                double slope = SkinVapour.slope(t[k], saturation);
                double link = s == THIGH ? thighLink : 0.0;
                double coreLink = s == PELVIS ? thighLink : 0.0;
                diagonal[c] = flow[c] + d1[s] + coreLink;
                diagonal[m] = flow[m] + d1[s] + d2[s] + link;
                diagonal[f] = flow[f] + d2[s] + d3[s];
                diagonal[k] = flow[k] + d3[s] + dry + wet * slope;
                right[c] = heat[c] - (s == CHEST ? breath : 0.0) + coreLink * t[MUSCLE + THIGH];
                right[m] = heat[m] + workShare[s] * (made - basal) + link * t[CORE + PELVIS];
                right[f] = heat[f];
                right[k] = heat[k] + dry * operative + wet * (airVapour - saturation + slope * t[k]);
                // eliminate from core to skin, once for the right side and once for the blood column
                blood[c] = flow[c];
                blood[m] = flow[m];
                blood[f] = flow[f];
                blood[k] = flow[k];
                eliminate(c, m, d1[s], diagonal, right, blood);
                eliminate(m, f, d2[s], diagonal, right, blood);
                eliminate(f, k, d3[s], diagonal, right, blood);
            }
            double bloodDiagonal = 0;
            double bloodRight = 0;
            for (int s = 0; s < S; s++) {
                int c = CORE + s;
                int m = MUSCLE + s;
                int f = FAT + s;
                int k = SKIN + s;
                right[k] /= diagonal[k];
                blood[k] /= diagonal[k];
                right[f] = (right[f] + d3[s] * right[k]) / diagonal[f];
                blood[f] = (blood[f] + d3[s] * blood[k]) / diagonal[f];
                right[m] = (right[m] + d2[s] * right[f]) / diagonal[m];
                blood[m] = (blood[m] + d2[s] * blood[f]) / diagonal[m];
                right[c] = (right[c] + d1[s] * right[m]) / diagonal[c];
                blood[c] = (blood[c] + d1[s] * blood[m]) / diagonal[c];
                bloodDiagonal += flow[c] * (1 - blood[c])
                        + flow[m] * (1 - blood[m])
                        + flow[f] * (1 - blood[f])
                        + flow[k] * (1 - blood[k]);
                bloodRight += flow[c] * right[c] + flow[m] * right[m] + flow[f] * right[f] + flow[k] * right[k];
            }
            t[BLOOD] = bloodRight / bloodDiagonal;
            for (int i = 0; i < BLOOD; i++) {
                double next = right[i] + blood[i] * t[BLOOD];
                change = Math.max(change, Math.abs(next - t[i]));
                t[i] = next;
            }
            if (change < 1e-12 && Math.abs(t[BLOOD] - before) < 1e-12) {
                break;
            }
        }
        return t[BLOOD];
    }

    private static void eliminate(
            int inner, int outer, double link, double[] diagonal, double[] right, double[] blood) {
        double factor = link / diagonal[inner];
        diagonal[outer] -= factor * link;
        right[outer] += factor * right[inner];
        blood[outer] += factor * blood[inner];
    }

    // ---------------------------------------------------------------- control

    /** Everything the controllers decide at one moment; reused by the caller. */
    public static final class Control {
        /** Blood flow times heat of blood of each node [W/K]. */
        public final double[] flow = new double[BLOOD];
        /** Heat made in each node [W]. */
        public final double[] heat = new double[BLOOD];
        /** All heat made [W]. */
        public double made;
        /** Of which by shivering and non-shivering cold response [W]. */
        public double shivering;
        /** Shift of the set level by clock and sleep [K]. */
        public double setShift;
        /** Area-mean skin [degC]. */
        public double meanSkin;
        /** Area-mean skin of the trunk [degC]. */
        public double trunkSkin;
        /** Rectal temperature [degC]. */
        public double rectal;
        /** Head core above its set level [K]. */
        public double headError;
        /** Sensor-weighted skin above neutral [K]. */
        public double skinSignal;
        /** Skin of each segment above neutral [K]. */
        public final double[] skinError = new double[S];
        /** Sleep fraction that the person tends to [1]. */
        public double sleepTarget;
    }

    /** What the person does and is held to; set by the caller before the controllers run. */
    public static final class Circumstances {
        /** Posture. */
        public Posture posture = Posture.SITTING_KNEES_UP;
        /** Whether sleep is allowed. */
        public boolean maySleep;
        /** Total heat imposed [W]; NaN for the person's own. */
        public double imposedHeat = Double.NaN;
        /** Heat of muscle work above rest: walking, a drill [W]. */
        public double work;
        /** Heat of digestion [W]. */
        public double digestion;
        /** What fatigue leaves of the peak of shivering [1]. */
        public double peakFactor = 1;
    }

    /**
     * Runs the controllers. Allocates nothing.
     *
     * @param t           node temperatures [degC], index as described above
     * @param sleep       sleep fraction [1]
     * @param sleepLevel  sleep fraction as followed by the set level [1]
     * @param laggedSkin  mean skin of five minutes ago [degC]
     * @param secondsOfDay local clock [s after midnight]; NaN to stop the daily rhythm
     * @param now         what the person does
     * @param out         result
     */
    public void control(
            double[] t,
            double sleep,
            double sleepLevel,
            double laggedSkin,
            double secondsOfDay,
            Circumstances now,
            Control out) {
        double meanSkin = 0;
        double trunkSkin = 0;
        double skinSignal = 0;
        for (int s = 0; s < S; s++) {
            double skin = t[SKIN + s];
            meanSkin += areaShare[s] * skin;
            trunkSkin += trunkShare[s] * skin;
            skinSignal += sensor[s] * (skin - neutral[SKIN + s]);
        }
        double shift =
                (Double.isNaN(secondsOfDay) ? 0.0 : SetLevel.clockShift(secondsOfDay, clock)) - sleepShift * sleepLevel;
        double headError = t[CORE + HEAD] - neutral[CORE + HEAD] - shift;
        double coreError = t[BLOOD] - neutral[BLOOD] - shift;
        double dilate = Math.max(0.0, 117.0 * headError + 7.5 * skinSignal);
        double constrict = Math.max(0.0, -vesselGain * (vesselCoreWeight * headError + skinSignal));

        double resting = basal
                * ((now.posture.isLying() ? restAwakeLying : restAwakeSitting) * (1.0 - sleep) + restAsleep * sleep);
        double shiver =
                bodyArea * shivering.heat(trunkSkin, meanSkin, Math.max(0.0, (laggedSkin - meanSkin) / 5.0), coreError);
        shiver = Math.min(shiver, Math.max(0.0, peakExtra * now.peakFactor));
        shiver *= Math.min(1.0, Math.max(0.0, (t[BLOOD] - 30.0) / 3.0));
        shiver *= 1.0 - (1.0 - sleepShiver) * sleep;
        double mild = nonShivering * basal * Math.min(1.0, Math.max(0.0, (34.0 - meanSkin) / 4.0));
        // working muscle does the work of shivering
        shiver = Math.max(0.0, Math.max(shiver, mild) - now.work);
        double imposed = now.imposedHeat;
        double work = now.work;
        double digestion = now.digestion;
        if (!Double.isNaN(imposed)) {
            shiver = Math.max(0.0, imposed - resting);
            resting = imposed - shiver;
            work = 0;
            digestion = 0;
        }

        // below basal every node rests less; above it the surplus is muscle work of sitting
        double basalFactor = Math.min(1.0, (1.0 - sleep) + restAsleep * sleep);
        if (!Double.isNaN(imposed) && resting < basal * basalFactor) {
            basalFactor = resting / basal;
        }
        double surplus = resting - basal * basalFactor;
        for (int s = 0; s < S; s++) {
            int c = CORE + s;
            int m = MUSCLE + s;
            int f = FAT + s;
            int k = SKIN + s;
            double shiverHere = shiver * shiverShare[s];
            out.heat[c] = heat[c] * basalFactor;
            double workHere = work * workShare[s];
            out.heat[m] = heat[m] * basalFactor + surplus * workShare[s] + workHere + shiverHere;
            out.heat[f] = heat[f] * basalFactor;
            out.heat[k] = heat[k] * basalFactor;
            double skinError = t[k] - neutral[k];
            out.skinError[s] = skinError;
            double narrowed = 1.0 / (1.0 + constriction[s] * constrict);
            double skin = (flow[k] + dilation[s] * dilate) * narrowed * StrictMath.exp(LN2_PER_10K * skinError);
            out.flow[k] = Math.max(skin, skinFloor * flow[k]);
            double fatShare = Math.max(fatFloor, narrowed);
            double deepShare = 1.0;
            if (s >= BodySegment.UPPER_ARM.ordinal()) {
                if (options.limbs() == BodyOptions.Limbs.EFFECTIVE) {
                    deepShare = Math.max(limbFloor, 1.0 / (1.0 + limbDivisor * constrict));
                    fatShare = deepShare;
                } else {
                    deepShare = Math.max(limbFloor, narrowed);
                }
            }
            out.flow[c] = flow[c] * deepShare;
            double deepMuscle = deepShare;
            double workFlow = WORK_FLOW;
            if (work > 0 && s >= BodySegment.UPPER_ARM.ordinal()) {
                double colder = Math.max(0.0, t[BLOOD] - t[m]);
                double open = smoothStep(1.0 - colder / WARM_LIMB);
                double shut = shiverFlow[s] / (1.0 + colder / COLD_LIMB);
                workFlow = shut + (WORK_FLOW - shut) * open;
                deepMuscle = deepShare + (1.0 - deepShare) * open * Math.min(1.0, work / restHeat());
            }
            out.flow[m] = flow[m] * deepMuscle + shiverFlow[s] * shiverHere + workFlow * workHere;
            out.flow[f] = flow[f] * fatShare;
        }
        out.heat[CORE + PELVIS] += digestion;
        out.made = resting + shiver + work + digestion;
        out.headError = headError;
        out.skinSignal = skinSignal;
        out.shivering = shiver;
        out.setShift = shift;
        out.meanSkin = meanSkin;
        out.trunkSkin = trunkSkin;
        out.rectal = rectal(t);
        double sleepSkin = sleepTrunk * trunkSkin + (1.0 - sleepTrunk) * meanSkin;
        out.sleepTarget = now.maySleep
                ? smoothStep((sleepSkin - sleepLow) / (sleepHigh - sleepLow)) * smoothStep((out.rectal - 35.2) / 0.3)
                : 0.0;
    }

    private static double smoothStep(double x) {
        double u = Math.min(1.0, Math.max(0.0, x));
        return u * u * (3.0 - 2.0 * u);
    }

    /**
     * Rates of heat gain inside the body: heat made, blood, conduction. Skin exchange with what lies outside and the breath
     * are the caller's.
     *
     * @param t    node temperatures [degC]
     * @param now  what the controllers decided
     * @param rate heat gained by each node [W], overwritten
     */
    public void innerRates(double[] t, Control now, double[] rate) {
        double blood = t[BLOOD];
        double toBlood = 0;
        for (int s = 0; s < S; s++) {
            double core = t[CORE + s];
            double muscle = t[MUSCLE + s];
            double fat = t[FAT + s];
            double skin = t[SKIN + s];
            double q1 = d1[s] * (core - muscle);
            double q2 = d2[s] * (muscle - fat);
            double q3 = d3[s] * (fat - skin);
            double b0 = now.flow[CORE + s] * (blood - core);
            double b1 = now.flow[MUSCLE + s] * (blood - muscle);
            double b2 = now.flow[FAT + s] * (blood - fat);
            double b3 = now.flow[SKIN + s] * (blood - skin);
            rate[CORE + s] = now.heat[CORE + s] + b0 - q1;
            rate[MUSCLE + s] = now.heat[MUSCLE + s] + b1 + q1 - q2;
            rate[FAT + s] = now.heat[FAT + s] + b2 + q2 - q3;
            rate[SKIN + s] = now.heat[SKIN + s] + b3 + q3;
            toBlood -= b0 + b1 + b2 + b3;
        }
        double link = thighLink * (t[CORE + PELVIS] - t[MUSCLE + THIGH]);
        rate[CORE + PELVIS] -= link;
        rate[MUSCLE + THIGH] += link;
        rate[BLOOD] = toBlood;
    }

    /**
     * Sweat of each segment, both sides [kg/s]; returns the whole.
     *
     * @param now what the controllers decided
     * @param out result by segment, overwritten
     */
    public double sweat(Control now, double[] out) {
        return sweat.rates(now.headError, now.skinSignal, now.skinError, out);
    }

    /**
     * Heat made in the body while walking [W]: metabolic rate less what goes into height.
     *
     * @param load    everything worn and carried [kg]
     * @param speed   [m/s]
     * @param grade   [percent], negative downhill
     * @param surface factor on the level cost [1]
     */
    public double marchHeat(double load, double speed, double grade, double surface) {
        return walkFactor * WalkingHeat.of(person.mass(), load, speed, grade, surface)
                - WalkingHeat.externalWork(person.mass() + load, speed, grade, descentShare);
    }

    /** Carbohydrate store and what its emptying does to the peak of shivering. */
    public Fuel fuel() {
        return fuel;
    }

    // ---------------------------------------------------------------- readings

    /** What a rectal probe reads [degC]. */
    public double rectal(double[] t) {
        return (1.0 - rectalMuscle) * t[CORE + PELVIS] + rectalMuscle * t[MUSCLE + PELVIS];
    }

    /** True for the nodes whose heat counts as the core: head and trunk cores and blood. */
    public static boolean isCoreNode(int node) {
        return node <= PELVIS || node == BLOOD;
    }

    /** Capacity-weighted mean of the core nodes [degC]. */
    public double coreMean(double[] t) {
        double sum = 0;
        for (int i = 0; i <= PELVIS; i++) {
            sum += capacity[i] * t[i];
        }
        return (sum + capacity[BLOOD] * t[BLOOD]) / coreCapacity();
    }

    /** Heat capacity of the core nodes [J/K]. */
    public double coreCapacity() {
        double sum = capacity[BLOOD];
        for (int i = 0; i <= PELVIS; i++) {
            sum += capacity[i];
        }
        return sum;
    }

    /**
     * A starting state: the neutral state with the inner nodes shifted to the set level of the hour, so that nobody begins
     * the night in debt to the clock (skin unshifted, fat by half; engineering estimate).
     *
     * @param secondsOfDay local clock [s after midnight]; NaN for no daily rhythm
     */
    public double[] startState(double secondsOfDay) {
        double[] t = neutral.clone();
        double shift = Double.isNaN(secondsOfDay) ? 0.0 : SetLevel.clockShift(secondsOfDay, clock);
        for (int i = 0; i < NODES; i++) {
            t[i] += i == BLOOD || i < FAT ? shift : i < SKIN ? 0.5 * shift : 0.0;
        }
        return t;
    }

    /** The person. */
    public Person person() {
        return person;
    }

    /** DuBois area [m2]. */
    public double bodyArea() {
        return bodyArea;
    }

    /** Basal heat [W]. */
    public double basalHeat() {
        return basal;
    }

    /** Heat at rest, 1.1 times basal: the yardstick of demand and shortfall [W]. */
    public double restHeat() {
        return restAwakeSitting * basal;
    }

    /** Largest total heat while shivering [W]. */
    public double peakHeat() {
        return restHeat() + peakExtra;
    }

    /** Skin area of each segment, both sides [m2]; a copy. */
    public double[] segmentAreas() {
        return area.clone();
    }

    /** Heat capacity of each node [J/K]; a copy. */
    public double[] capacities() {
        return capacity.clone();
    }

    /** Neutral temperature of each node [degC]; a copy. */
    public double[] neutralState() {
        return neutral.clone();
    }

    /** Operative temperature of the neutral state, nude in still air [degC]. */
    public double neutralOperative() {
        return neutralOperative;
    }

    /** Conductances between layers [W/K]: core-muscle, muscle-fat, fat-skin, each by segment; a copy. */
    public double[][] conductances() {
        return new double[][] {d1.clone(), d2.clone(), d3.clone()};
    }

    /** Basal heat by node [W]; a copy. */
    public double[] basalHeats() {
        return heat.clone();
    }

    /** Basal blood flow times heat of blood by node [W/K]; a copy. */
    public double[] basalFlows() {
        return flow.clone();
    }

    /** Still-air convection of the neutral state by segment [W/(m2 K)]; a copy. */
    public static double[] stillConvection() {
        return NodeTables.STILL_CONVECTION.clone();
    }

    /** Still-air radiation of the neutral state by segment [W/(m2 K)]; a copy. */
    public static double[] stillRadiation() {
        return NodeTables.STILL_RADIATION.clone();
    }
}
