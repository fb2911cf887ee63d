package longnight.night;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longnight.air.SaturationVapour;
import longnight.assumption.ParameterSet;
import longnight.body.Body;
import longnight.body.law.Breath;
import longnight.body.law.SkinVapour;
import longnight.clothing.ClothingParameter;
import longnight.clothing.PatchStack;
import longnight.clothing.WaterClass;
import longnight.clothing.law.WetLoft;
import longnight.clothing.law.WholeBody;
import longnight.clothing.law.WindRatio;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;
import longnight.outdoors.law.Convection;
import longnight.outdoors.law.CylinderFlow;
import longnight.outdoors.law.GroundContact;
import longnight.outdoors.law.PostureExchange;
import longnight.outdoors.law.Radiation;
import longnight.outdoors.law.Rain;
import org.jspecify.annotations.Nullable;

/**
 * The node network of one run: body, a chain of cloth nodes over every patch of skin, and a column of ground under every
 * patch that is pressed on it. Holds the one right-hand side that both integrators use.
 *
 * <p>State vector: body nodes (see {@link Body}), then the chain nodes level by level (level 0 of every patch, then level 1
 * of those that have one, ...; patches sorted by chain length, so that each level is a contiguous run), then sleep
 * fraction, sleep as the set level follows it, and the mean skin of five minutes ago. A chain node sits at the outer face
 * of its layer; it stores half the heat of the layers on either side (the first stores all of the innermost one).
 *
 * <p>Not thread-safe: one network per run.
 */
final class Network {

    private static final int S = BodySegment.COUNT;
    private static final int SKIN = Body.SKIN;
    private static final int CHEST_CORE = Body.CORE + BodySegment.CHEST.ordinal();
    static final BodySegment[] SEGMENTS = BodySegment.values();
    private static final int CHEST_SKIN = Body.SKIN + BodySegment.CHEST.ordinal();
    private static final double KELVIN = 273.15;
    /** Static surface film of the clothing standards [m2 K/W] (ISO 11079:2007, from memory). */
    private static final double STATIC_FILM = WholeBody.STILL_AIR;
    /** Ground column: first cell 5 mm, each next 1.6 times thicker, nine cells to 0.56 m (numerical choice). */
    private static final int GROUND_CELLS = 9;

    private static final double FIRST_CELL = 0.005;
    private static final double CELL_GROWTH = 1.6;
    /** Resistance of bare skin pressed on ground [m2 K/W] (engineering estimate). */
    private static final double BARE_CONTACT = 0.005;
    /** Heat capacity of the contact face itself, a film of trodden snow or soil [J/(m2 K)] (numerical choice). */
    private static final double FACE_CAPACITY = 300;
    /** Water per dry mass below which cloth counts as dry [1] (numerical choice). */
    private static final double DRY = 1e-4;
    /** Melt at the snow surface: conductance above 0 degC [W/(m2 K)] and smoothing width [K] (numerical choices). */
    static final double MELT = 200.0;

    static final double MELT_WIDTH = 0.1;
    /** Shelter leaves at least this drift [m/s] (engineering estimate, no source). */
    private static final double LEAST_WIND = 0.05;
    /** Walking speed up to which the wind ratio was measured [m/s] (ISO 9920:2007, from memory). */
    private static final double FASTEST_WALK = 1.2;
    /** A warming drill stirs air and cloth like walking at this speed [m/s] (engineering estimate, no source). */
    private static final double DRILL_WALK = 0.7;

    /** Evaporative resistance between wet skin and the cloth on it, at least [m2 Pa/W]: half a millimetre of still air. */
    private static final double LEAST_SKIN_GAP = 1.1;
    /** Water that counts as moving fast, 30 g/h [kg/s], and the share of a brisk look that sweat and sleet ask for. */
    private static final double RUNNING = 0.030 / 3600;

    private static final double SHORTEST = 0.2;
    /** Most by which skin is thought ahead [K] (numerical choice). */
    private static final double AHEAD = 0.3;

    /** Air below which no snow melts on cloth as it lands [degC] (numerical choice). */
    private static final double FIRM = -5;
    /** Sleep fraction follows its target in 0.4 h, the set level follows sleep in 1 h (engineering estimates). */
    static final double SLEEP_TIME = 1440.0;

    static final double LEVEL_TIME = 3600.0;
    static final double LAG_TIME = 300.0;

    final Body body;
    final NightPlan plan;
    final Surroundings surroundings;
    final int patches;
    final int nodes;
    final int size;
    /** Index of sleep fraction; the set level's sleep and lagged skin follow it. */
    final int sleep;

    final double[] capacity;
    /** Conductance of each node towards the next inner one (skin for level 0) [W/K]; static until relinearised. */
    final double[] inner;
    /** Conductance to the environment [W/K] and its temperature [degC]. */
    final double[] outer;

    final double[] outerCelsius;
    /** First node of each level, and how many patches reach it. */
    final int[] levelStart;

    final int[] levelCount;
    /** Segment under each patch; index of the last node of each patch that faces the air, or of its contact face. */
    final int[] segmentOf;

    final int[] face;
    final Chain[] chains;
    final PatchStack[] stacks;
    final int[] chainLength;
    /** Dry resistance of each cloth node and of the gap inside it [m2 K/W]; ground and pad links [W/K] are fixed. */
    final double[] own;

    private final double[] gap;
    private final double[] ownNow;
    private final double[] gapNow;
    private final double[] patchVapour;
    /** Insensible vapour of each patch without water in its cloth [W/Pa]. */
    private final double[] insensible;
    /** Share of the way from environment to outermost node at which the surface lies [1]. */
    final double[] surfaceShare;
    /** Water in the cloth; its heat is held constant between two looks. */
    final Water water;

    private final boolean wet;
    private final double clingLeast;
    private final double clingRange;
    private final double wickingFactor;
    private final double dripTime;
    private final double[] segmentArea;
    /** Sweat that evaporates from bare skin, by segment, constant between two looks [W]. */
    private final double[] bareEvaporation = new double[S];

    /** Nodes that are cloth or pad (their store belongs to the clothing), as opposed to ground. */
    final boolean[] isCloth;

    final Phase phase;
    final Body.Circumstances circumstances = new Body.Circumstances();
    /** Heat that a bottle or a pack gives to the skin of the chest [W]. */
    double brought;
    /** Heat that rain and snow take from the cloth, constant between two looks [W]. */
    private double precipitationHeat;
    /** Rain that the finish of each patch has stood since it was last dry [s]. */
    final double[] rained;

    private final Wetting wetting;

    /** Water bound in pieces that came out of the pack for the first time [kg]. */
    double entered;

    private final double[] sweat = new double[S];
    private double sweatRate;
    /** Skin at the last look, how long that lasted [s], and how far skin is expected to be in the middle of this one [K]. */
    private final double[] skinAgo = new double[S];

    private double lookLength;
    private final double[] ahead = new double[S];
    /** Sweat of the whole body in this phase [kg]. */
    double sweatTotal;

    final Posture posture;
    /** Movement of the body through the air and of the cloth [m/s]. */
    private final double walk;
    /** Share of the surface that partners in touch leave, by segment [1]. */
    final double[] apart = new double[S];

    private final @Nullable Films films;
    private final WindRatio[] windRatio;
    private final WindRatio.Breeze[] breeze = new WindRatio.Breeze[S];
    /** Published exposed shares are of the whole skin; with contact patches set apart they apply to what is left. */
    private final double exposedFactor;

    /** Bare skin: conductance straight to the air and to the radiant surroundings by segment [W/K]. */
    final double[] bareAir = new double[S];

    final double[] bareRadiation = new double[S];
    /** Evaporation from the skin of a segment: value and slope at a skin temperature [W, W/K, degC]. */
    final double[] vapour = new double[S];

    final double[] vapourSlope = new double[S];
    final double[] vapourAt = new double[S];
    /** Latent heat of the vapour that the skin gives to cloth, by segment, constant between two looks [W]. */
    final double[] skinEvaporation = new double[S];
    /** Share of the outer conductance of each patch that is convection [1]. */
    final double[] airShare;
    /** Share of the heat made that leaves with the breath [1]. */
    double breathShare;
    /** Water that leaves with the breath per heat made [kg/J]. */
    private double breathWater;
    /** Water that went straight to the air, from breath and bare skin [kg]. */
    double straightTotal;

    final OutdoorState around = new OutdoorState();
    final Body.Control control = new Body.Control();

    /** Fixed surface coefficients by segment, for laboratory cases that state them [W/(m2 K)]. */
    record Films(double[] convection, double[] radiation) {}

    Network(
            Body body,
            List<PatchStack> outfit,
            Surroundings surroundings,
            NightPlan plan,
            Phase phase,
            double outfitResistance,
            ParameterSet<ClothingParameter> clothing,
            boolean wet,
            @Nullable Films films) {
        this.body = body;
        this.surroundings = surroundings;
        this.plan = plan;
        this.phase = phase;
        this.posture = phase.posture();
        March march = phase.march();
        walk = march != null ? Math.min(FASTEST_WALK, march.speed()) : DRILL_WALK * phase.drillShare();
        // partners cover trunk, arms and legs; head, hands and feet stay free
        double covered = 0;
        double[] areas = body.segmentAreas();
        for (BodySegment segment : SEGMENTS) {
            covered += isCoverable(segment) ? areas[segment.ordinal()] : 0.0;
        }
        for (BodySegment segment : SEGMENTS) {
            apart[segment.ordinal()] =
                    isCoverable(segment) ? Math.max(0.0, 1.0 - phase.huddle() * body.bodyArea() / covered) : 1.0;
        }
        circumstances.posture = posture;
        circumstances.maySleep = phase.sleepAllowed();
        circumstances.imposedHeat = plan.imposedHeat() * body.bodyArea();
        circumstances.work = Math.max(0.0, effort(body, phase) - body.restHeat());
        this.films = films;
        Ground ground = surroundings.ground();

        List<PatchStack> sorted = new ArrayList<>(outfit);
        boolean touching = sorted.stream().anyMatch(PatchStack::contact);
        exposedFactor = touching ? 1.0 / (1.0 - posture.contactShare()) : 1.0;
        List<Chain> cut = new ArrayList<>(sorted.stream().map(Chain::new).toList());
        cut.sort(Comparator.comparingInt(Network::chain).reversed());
        patches = cut.size();
        chains = cut.toArray(new Chain[0]);
        stacks = cut.stream().map(c -> c.stack).toArray(PatchStack[]::new);
        chainLength = new int[patches];
        segmentOf = new int[patches];
        face = new int[patches];
        int levels = patches == 0 ? 0 : chain(chains[0]);
        levelStart = new int[levels + 1];
        levelCount = new int[levels];
        for (int p = 0; p < patches; p++) {
            chainLength[p] = chain(chains[p]);
            segmentOf[p] = stacks[p].zone().segment().ordinal();
            for (int k = 0; k < chainLength[p]; k++) {
                levelCount[k]++;
            }
        }
        int next = Body.NODES;
        for (int k = 0; k < levels; k++) {
            levelStart[k] = next;
            next += levelCount[k];
        }
        levelStart[levels] = next;
        nodes = next;
        sleep = nodes;
        size = nodes + 3;

        capacity = new double[nodes];
        inner = new double[nodes];
        own = new double[nodes];
        gap = new double[nodes];
        ownNow = new double[nodes];
        gapNow = new double[nodes];
        surfaceShare = new double[patches];
        rained = new double[patches];
        outer = new double[nodes];
        outerCelsius = new double[nodes];
        isCloth = new boolean[nodes];
        airShare = new double[patches];
        patchVapour = new double[patches];
        insensible = new double[patches];
        windRatio = new WindRatio[patches];
        Arrays.setAll(breeze, each -> new WindRatio.Breeze());
        System.arraycopy(body.capacities(), 0, capacity, 0, Body.NODES);
        this.wet = wet;
        clingLeast = clothing.get(ClothingParameter.CLING_LEAST);
        clingRange = clothing.get(ClothingParameter.CLING_RANGE);
        wickingFactor = clothing.get(ClothingParameter.WICKING_FACTOR);
        dripTime = clothing.get(ClothingParameter.DRIP_TIME);
        segmentArea = areas;
        int[] breathing = new int[patches];
        double[] patchArea = new double[patches];
        for (int p = 0; p < patches; p++) {
            breathing[p] = wet && chains[p].breathes() ? chains[p].elements : 0;
            patchArea[p] = stacks[p].area();
        }
        wetting = new Wetting(this, clothing);
        water = new Water(patches, breathing, levelStart, nodes, patchArea);
        for (int p = 0; p < patches; p++) {
            windRatio[p] = new WindRatio(
                    stacks[p].airPermeability(), outfitResistance, clothing.get(ClothingParameter.WIND_RATIO_FACTOR));
            build(p, ground);
        }
        System.arraycopy(own, 0, ownNow, 0, nodes);
        System.arraycopy(gap, 0, gapNow, 0, nodes);
    }

    private static boolean isCoverable(BodySegment segment) {
        return segment != BodySegment.HEAD && segment != BodySegment.HAND && segment != BodySegment.FOOT;
    }

    /** Number of nodes over a patch: cloth; for contact also pad, contact face and ground cells. */
    private static int chain(Chain c) {
        return c.stack.contact() ? c.elements + (c.stack.padResistance() > 0 ? 1 : 0) + 1 + GROUND_CELLS : c.elements;
    }

    int node(int patch, int level) {
        return levelStart[level] + patch;
    }

    private void build(int p, @Nullable Ground ground) {
        Chain c = chains[p];
        PatchStack s = c.stack;
        double area = s.area();
        for (int k = 0; k < c.elements; k++) {
            int i = node(p, k);
            own[i] = c.resistance[k];
            gap[i] = c.gap[k];
            capacity[i] = area * c.heatCapacity[k];
            isCloth[i] = true;
            water.mass[i] = area * c.mass[k];
            water.kind[i] = c.kind[k];
            water.bindingTime[i] = c.bindingTime[k];
        }
        if (!s.contact()) {
            face[p] = c.elements == 0 ? SKIN + segmentOf[p] : node(p, c.elements - 1);
            return;
        }
        int k = c.elements;
        if (s.padResistance() > 0) {
            int i = node(p, k++);
            own[i] = s.padResistance();
            capacity[i] = area * s.padHeatCapacity();
            isCloth[i] = true;
        }
        int i = node(p, k++);
        face[p] = i;
        own[i] = 0;
        gap[i] = k == 1 ? BARE_CONTACT : 0;
        capacity[i] = area * FACE_CAPACITY;
        isCloth[i] = true;
        double cell = FIRST_CELL;
        double half = 0;
        double conductivity = java.util.Objects.requireNonNull(ground).conductivity();
        for (int g = 0; g < GROUND_CELLS; g++, k++) {
            int j = node(p, k);
            inner[j] = area * conductivity / (half + 0.5 * cell);
            capacity[j] = area * ground.heatCapacity() * cell;
            half = 0.5 * cell;
            if (g == GROUND_CELLS - 1) {
                outer[j] = area * conductivity / half;
            }
            cell *= CELL_GROWTH;
        }
    }

    /** What water leaves of the dry resistances of a patch. */
    private void wetten(int p) {
        Chain c = chains[p];
        for (int k = 0; k < c.elements; k++) {
            int i = levelStart[k] + p;
            double dry = water.mass[i];
            WetLoft loft = c.loft[k];
            if (loft == null || dry <= 0) {
                continue;
            }
            double liquid = water.liquid[i] / dry;
            double ice = water.ice[i] / dry;
            ownNow[i] = liquid + ice < DRY ? own[i] : own[i] * loft.resistance(liquid, ice);
            if (gap[i] > 0) {
                double facing = isThin(c, k) ? liquid : 0.0;
                if (k > 0 && isThin(c, k - 1)) {
                    facing += water.liquid[levelStart[k - 1] + p] / water.mass[levelStart[k - 1] + p];
                }
                gapNow[i] = facing < DRY ? gap[i] : gap[i] * WetLoft.cling(facing, clingLeast, clingRange);
            }
        }
    }

    private static boolean isThin(Chain c, int k) {
        WaterClass kind = c.kind[k];
        return kind != null && kind.isThin();
    }

    /**
     * Resistance from skin to still air with the cloth as wet as it was last looked at, uniform skin, contact left out
     * [m2 K/W].
     */
    double calmTotal() {
        double area = 0;
        double conductance = 0;
        for (int p = 0; p < patches; p++) {
            if (stacks[p].contact()) {
                continue;
            }
            double resistance = STATIC_FILM / stacks[p].areaGrowth();
            for (int k = 0; k < chains[p].elements; k++) {
                resistance += gapNow[node(p, k)] + ownNow[node(p, k)];
            }
            area += stacks[p].area();
            conductance += stacks[p].area() / resistance;
        }
        return area / conductance;
    }

    /**
     * Area through which a patch loses heat and vapour [m2]: what touches a partner loses none on the whole way from the skin out,
     * since cloth leads next to nothing sideways (engineering estimate, no source; docs/model.md). What lies on pad or ground touches nobody.
     */
    private double lossArea(int p) {
        return stacks[p].contact() ? stacks[p].area() : stacks[p].area() * apart[segmentOf[p]];
    }

    /** Links between the middles of the elements of a patch. */
    private void link(int p, double ratio) {
        double area = lossArea(p);
        double before = 0;
        int count = stacks[p].contact() ? chainLength[p] - GROUND_CELLS : chainLength[p];
        for (int k = 0; k < count; k++) {
            int i = levelStart[k] + p;
            double half = 0.5 * ownNow[i];
            inner[i] = area / (ratio * (before + gapNow[i] + half));
            before = half;
        }
    }

    /** Heat made in the body by what the phase asks for, rest included [W]. */
    private static double effort(Body body, Phase phase) {
        March march = phase.march();
        if (march != null) {
            return body.marchHeat(march.load(), march.speed(), march.grade(), march.surface());
        }
        double rest = body.restHeat();
        return rest
                + phase.drillShare()
                        * Math.max(0.0, phase.drillHeat() * body.person().mass() - rest);
    }

    /** The surroundings as the person in this phase meets them. */
    void look(double time) {
        surroundings.at(time, posture, around);
        March march = phase.march();
        double moving = march != null ? march.speed() : walk;
        if (moving > 0 || phase.windShare() < 1) {
            for (int s = 0; s < S; s++) {
                around.windAt[s] = Math.max(LEAST_WIND, around.windAt[s] * phase.windShare()) + moving;
            }
        }
        if (phase.underRoof()) {
            around.precipitation = 0;
            around.supercooledCloud = 0;
        }
    }

    // ---------------------------------------------------------------- boundary

    /**
     * Takes the environment at a time and linearises every exchange with it around a state. Everything that {@link #rates}
     * uses afterwards is linear in the node temperatures.
     */
    void relinearise(double time, double[] y) {
        look(time);
        breathShare = Breath.lossPerHeatMade(around.airCelsius, around.vapourPressure, around.pressure);
        breathWater = Breath.waterPerHeatMade(around.airCelsius, around.vapourPressure, around.pressure);
        double lewis = SkinVapour.LEWIS * 101325.0 / around.pressure;
        for (int s = 0; s < S; s++) {
            bareAir[s] = 0;
            bareRadiation[s] = 0;
            vapourAt[s] = y[SKIN + s];
            double saturation = SkinVapour.saturation(vapourAt[s]);
            vapour[s] = saturation - around.vapourPressure;
            vapourSlope[s] = SkinVapour.slope(vapourAt[s], saturation);
            breeze[s].set(around.windAt[s], walk);
        }
        double stillShare = PostureExchange.stillShare(posture) * exposedFactor;
        double windShare = PostureExchange.windShare(posture) * exposedFactor;
        for (int p = 0; p < patches; p++) {
            PatchStack stack = stacks[p];
            int s = segmentOf[p];
            if (wet) {
                wetten(p);
            }
            if (stack.contact()) {
                link(p, 1.0);
                contactFace(p, stack, y);
                if (water.length[p] > 0) {
                    // pad and ground let no vapour pass
                    linkVapour(p, 1.0, 0.0);
                    water.toAir[p] = 0;
                }
                continue;
            }
            double area = lossArea(p);
            double surface = outerCelsius[face[p]] + surfaceShare[p] * (y[face[p]] - outerCelsius[face[p]]);
            if (stack.layers() == 0) {
                surface = y[face[p]];
            }
            double still;
            double convection;
            double radiation;
            if (films != null) {
                convection = films.convection()[s];
                still = convection;
                radiation = films.radiation()[s];
            } else {
                double kelvin = 0.5 * (surface + around.airCelsius) + KELVIN;
                double forced = surroundings.turbulence()
                        * CylinderFlow.forced(around.windAt[s], stack.outerDiameter(), kelvin, around.pressure);
                still = stillShare * Convection.natural(posture, SEGMENTS[s], surface - around.airCelsius);
                convection = Convection.mixed(still, windShare * forced);
                radiation = Radiation.coefficient(
                        surface + KELVIN,
                        around.radiantCelsius + KELVIN,
                        Radiation.SURFACE_EMISSIVITY,
                        exposedFactor * PostureExchange.radiating(posture, SEGMENTS[s]));
            }
            double film = 1.0 / (lewis * convection * stack.areaGrowth());
            double cloth = 0;
            if (stack.layers() == 0) {
                bareAir[s] += area * convection;
                bareRadiation[s] += area * radiation;
            } else {
                double ratio = stack.prescribed() ? 1.0 : windRatio[p].at(breeze[s]);
                double outerFilm = stack.prescribed()
                        ? stack.areaGrowth() * (convection + radiation)
                        : stack.areaGrowth() / (STATIC_FILM * ratio);
                int i = face[p];
                double half = 0.5 * ratio * ownNow[i];
                surfaceShare[p] = 1.0 / (1.0 + outerFilm * half);
                outer[i] = area * outerFilm * surfaceShare[p];
                outerCelsius[i] =
                        (convection * around.airCelsius + radiation * around.radiantCelsius) / (convection + radiation);
                link(p, ratio);
                double vapourRatio = WindRatio.vapourFromDry(ratio);
                if (water.length[p] > 0) {
                    linkVapour(p, vapourRatio, film);
                    airShare[p] = convection / (convection + radiation);
                    patchVapour[p] = 0;
                    insensible[p] = 0;
                    continue;
                }
                for (int k = 0; k < stack.layers(); k++) {
                    cloth += vapourRatio * stack.vapourResistance()[k];
                }
            }
            airShare[p] = convection / (convection + radiation);
            patchVapour[p] = area / (film + cloth);
            // what diffuses through skin does not grow with the wind: its wettedness belongs to still air
            insensible[p] = SkinVapour.INSENSIBLE_WETTEDNESS
                    * area
                    / (1.0 / (SkinVapour.LEWIS * still * stack.areaGrowth()) + cloth);
        }
        for (int s = 0; s < S; s++) {
            double conductance = 0;
            for (int p = 0; p < patches; p++) {
                if (segmentOf[p] == s && !stacks[p].contact()) {
                    conductance += insensible[p];
                }
            }
            vapour[s] *= conductance;
            vapourSlope[s] *= conductance;
        }
    }

    /** Vapour links between the middles of the elements of a patch; the innermost goes through the skin's own resistance. */
    private void linkVapour(int p, double ratio, double film) {
        Chain c = chains[p];
        double area = lossArea(p);
        double before = Water.SKIN / Water.PER_EVAPORATIVE;
        for (int k = 0; k < c.elements; k++) {
            int i = levelStart[k] + p;
            double half = 0.5 * ratio * c.vapour[k];
            water.inward[i] = area / (Water.PER_EVAPORATIVE * (before + ratio * c.gapVapour[k] + half));
            before = half;
        }
        double skinGap = Math.max(LEAST_SKIN_GAP, ratio * c.gapVapour[0]) + 0.5 * ratio * c.vapour[0];
        water.wetSkin[p] = Math.max(water.inward[levelStart[0] + p], area / (Water.PER_EVAPORATIVE * skinGap));
        water.toAir[p] = area / (Water.PER_EVAPORATIVE * (before + film));
    }

    private void perspire(double time, double[] y) {
        body.control(y, y[sleep], y[sleep + 1], y[sleep + 2], clock(time), circumstances, control);
        sweatRate = body.sweat(control, sweat);
    }

    /**
     * Longest time [s] for which heat and water may be held apart in an interval: shorter while water moves fast, shortest
     * while sweat runs or sleet falls, whose sticking hangs on whether the cloth is just above freezing.
     *
     * @param brisk the time for water that moves fast [s]
     */
    double longestLook(double from, double to, double[] y, double brisk) {
        perspire(from, y);
        if (sweatRate > RUNNING) {
            return SHORTEST * brisk;
        }
        if (!wet) {
            return Double.POSITIVE_INFINITY;
        }
        look(0.5 * (from + to));
        if (around.precipitation > 0) {
            double humidity = around.vapourPressure / SaturationVapour.overWater(around.airCelsius + KELVIN);
            double snow = Rain.snowProbability(around.airCelsius, Math.min(1.0, humidity));
            return snow > 0.02 && around.airCelsius > FIRM ? SHORTEST * brisk : brisk;
        }
        return water.moved > RUNNING ? brisk : Double.POSITIVE_INFINITY;
    }

    /**
     * Moves water through one interval, with the surroundings as last linearised: what falls, what creeps and drips, what the
     * skin gives, and what vapour does.
     */
    void moveWater(double time, double duration, double[] y) {
        Arrays.fill(skinEvaporation, 0.0);
        Arrays.fill(bareEvaporation, 0.0);
        precipitationHeat = 0;
        perspire(time, y);
        sweatTotal += duration * sweatRate;
        if (!wet) {
            // without clothes that take water all sweat dries where it arises
            for (int s = 0; s < S; s++) {
                bareEvaporation[s] = Water.LATENT * sweat[s];
            }
            return;
        }
        for (int s = 0; s < S; s++) {
            double now = y[SKIN + s];
            double ago = lookLength > 0 ? (now - skinAgo[s]) / lookLength : 0.0;
            ahead[s] = Math.max(-AHEAD, Math.min(AHEAD, 0.5 * duration * ago));
            skinAgo[s] = now;
        }
        lookLength = duration;
        water.moved = 0;
        wetting.look();
        for (int p = 0; p < patches; p++) {
            int s = segmentOf[p];
            double area = stacks[p].area();
            double share = area / segmentArea[s];
            boolean pressed = stacks[p].contact();
            if (water.length[p] == 0) {
                if (!pressed) {
                    // bare skin gives off what sweat it can, at most as a wet surface would
                    double most = (1.0 - SkinVapour.INSENSIBLE_WETTEDNESS)
                            * patchVapour[p]
                            * (SkinVapour.saturation(y[SKIN + s]) - around.vapourPressure);
                    bareEvaporation[s] += Math.min(Water.LATENT * sweat[s] * share, Math.max(0.0, most));
                }
                continue;
            }
            water.clearSource(p);
            if (pressed) {
                wetting.soakSeat(p, duration, y);
            } else {
                precipitationHeat += wetting.fall(p, duration, y) / duration;
            }
            if (water.hasLiquid(p)) {
                water.creep(p, duration, chains[p].hold, area, wickingFactor, dripTime);
            }
            double skin = y[SKIN + s] + ahead[s];
            int next = pressed ? node(p, chains[p].elements) : face[p];
            water.advance(
                    p,
                    duration,
                    y,
                    skin,
                    SkinVapour.saturation(skin),
                    around.vapourPressure,
                    sweat[s] * share,
                    inner,
                    pressed ? inner[next] : outer[next],
                    pressed ? y[next] : outerCelsius[next],
                    capacity);
            skinEvaporation[s] += Water.LATENT * water.fromSkin[p];
        }
    }

    /** Edge loss of the contact spot, and melt where the ground is snow; both act on the contact face. */
    private void contactFace(int p, PatchStack stack, double[] y) {
        Ground ground = java.util.Objects.requireNonNull(surroundings.ground());
        int i = face[p];
        double area = stack.area();
        double conductance = area * GroundContact.edgeConductance(ground.conductivity(), stack.contactRadius());
        double flux = -conductance * around.groundDeepCelsius;
        if (ground.snow()) {
            double t = y[i];
            double root = Math.sqrt(t * t + MELT_WIDTH * MELT_WIDTH);
            double slope = area * MELT * 0.5 * (1.0 + t / root);
            conductance += slope;
            flux += area * MELT * 0.5 * (t + root) - slope * t;
        }
        outer[i] = conductance;
        outerCelsius[i] = -flux / conductance;
        outerCelsius[levelStart[chainLength[p] - 1] + p] = around.groundDeepCelsius;
    }

    // ---------------------------------------------------------------- rates

    private double clock(double time) {
        return plan.clockActive() ? plan.startOfDay() + time : Double.NaN;
    }

    /**
     * Heat gained by every node [W] and the rates of the slow states [1/s, K/s]; leaves what the controllers decided in
     * {@link #control}.
     */
    void rates(double time, double[] y, double[] rate) {
        body.control(y, y[sleep], y[sleep + 1], y[sleep + 2], clock(time), circumstances, control);
        body.innerRates(y, control, rate);
        rate[CHEST_CORE] -= breathShare * control.made;
        rate[CHEST_SKIN] += brought;
        for (int s = 0; s < S; s++) {
            double t = y[SKIN + s];
            rate[SKIN + s] -= bareAir[s] * (t - around.airCelsius)
                    + bareRadiation[s] * (t - around.radiantCelsius)
                    + vapour[s]
                    + vapourSlope[s] * (t - vapourAt[s])
                    + skinEvaporation[s]
                    + bareEvaporation[s];
        }
        double[] source = water.source;
        if (levelCount.length > 0) {
            int start = levelStart[0];
            for (int p = 0; p < patches && p < levelCount[0]; p++) {
                int i = start + p;
                double q = inner[i] * (y[SKIN + segmentOf[p]] - y[i]);
                rate[SKIN + segmentOf[p]] -= q;
                rate[i] = q - outer[i] * (y[i] - outerCelsius[i]) + source[i];
            }
        }
        for (int k = 1; k < levelCount.length; k++) {
            int start = levelStart[k];
            int below = levelStart[k - 1];
            int count = levelCount[k];
            for (int p = 0; p < count; p++) {
                double q = inner[start + p] * (y[below + p] - y[start + p]);
                rate[below + p] -= q;
                rate[start + p] = q - outer[start + p] * (y[start + p] - outerCelsius[start + p]) + source[start + p];
            }
        }
        rate[sleep] = (control.sleepTarget - y[sleep]) / SLEEP_TIME;
        rate[sleep + 1] = (y[sleep] - y[sleep + 1]) / LEVEL_TIME;
        rate[sleep + 2] = (control.meanSkin - y[sleep + 2]) / LAG_TIME;
    }

    /**
     * Adds the heat that crosses each border while the environment stays as linearised.
     *
     * @param duration length of time [s]
     * @param integral temperature of each node integrated over it [K s]
     * @param made     heat made in it [J]
     * @param books    running totals
     */
    void book(double duration, double[] integral, double made, Books books) {
        books.made += made;
        books.way[Way.BROUGHT.ordinal()] -= brought * duration;
        books.part[BodySegment.CHEST.ordinal()] -= brought * duration;
        books.way[Way.PRECIPITATION.ordinal()] += precipitationHeat * duration;
        books.way[Way.BREATH.ordinal()] += breathShare * made;
        double air = 0;
        double radiation = 0;
        double evaporation = 0;
        double fromBare = 0;
        double ground = 0;
        for (int s = 0; s < S; s++) {
            double t = integral[SKIN + s];
            double toAir = bareAir[s] * (t - around.airCelsius * duration);
            double toSurroundings = bareRadiation[s] * (t - around.radiantCelsius * duration);
            double asVapour = vapour[s] * duration + vapourSlope[s] * (t - vapourAt[s] * duration);
            air += toAir;
            radiation += toSurroundings;
            double bare = asVapour + bareEvaporation[s] * duration;
            evaporation += bare;
            fromBare += bare;
            books.part[s] += toAir + toSurroundings + asVapour + (skinEvaporation[s] + bareEvaporation[s]) * duration;
        }
        for (int p = 0; p < patches; p++) {
            if (chainLength[p] == 0) {
                continue;
            }
            int first = levelStart[0] + p;
            books.part[segmentOf[p]] += inner[first] * (integral[SKIN + segmentOf[p]] - integral[first]);
            int i = face[p];
            evaporation += Water.LATENT * water.toOutside[p] * duration;
            if (stacks[p].contact()) {
                int cell = levelStart[chainLength[p] - GROUND_CELLS] + p;
                ground += outer[i] * (integral[i] - outerCelsius[i] * duration)
                        + inner[cell] * (integral[i] - integral[cell]);
            } else {
                air += outer[i] * airShare[p] * (integral[i] - around.airCelsius * duration);
                radiation += outer[i] * (1.0 - airShare[p]) * (integral[i] - around.radiantCelsius * duration);
            }
        }
        books.way[Way.AIR.ordinal()] += air;
        books.way[Way.RADIATION.ordinal()] += radiation;
        straightTotal += breathWater * made + fromBare / Water.LATENT;
        books.way[Way.EVAPORATION.ordinal()] += evaporation;
        books.way[Way.GROUND.ordinal()] += ground;
    }

    /** Running totals of heat that crossed the borders of body and clothing since dusk [J]. */
    static final class Books {
        double made;
        final double[] way = new double[Way.values().length];
        final double[] part = new double[S];
    }

    // ---------------------------------------------------------------- start and readings

    /**
     * The state at dusk: the body at its own set level, the clothing in balance between that skin and the air, pad and ground
     * as cold as the place.
     */
    double[] start() {
        double[] y = new double[size];
        System.arraycopy(
                body.startState(plan.clockActive() ? plan.startOfDay() + phase.from() : Double.NaN),
                0,
                y,
                0,
                Body.NODES);
        look(phase.from());
        for (int p = 0; p < patches; p++) {
            double skin = y[SKIN + segmentOf[p]];
            for (int k = 0; k < chainLength[p]; k++) {
                int i = node(p, k);
                if (stacks[p].contact()) {
                    y[i] = k < chains[p].elements
                            ? skin + (around.airCelsius - skin) * (k + 0.5) / chains[p].elements
                            : around.groundDeepCelsius;
                } else {
                    y[i] = skin + (around.airCelsius - skin) * (k + 1.0) / (chainLength[p] + 1.0);
                }
            }
        }
        for (int pass = 0; pass < 12; pass++) {
            relinearise(phase.from(), y);
            for (int p = 0; p < patches; p++) {
                if (!stacks[p].contact() && chainLength[p] > 0) {
                    settle(p, y);
                }
            }
        }
        if (wet) {
            double[] skinPressure = new double[patches];
            for (int p = 0; p < patches; p++) {
                skinPressure[p] = SkinVapour.saturation(y[SKIN + segmentOf[p]]);
            }
            water.balance(y, skinPressure, around.vapourPressure);
        }
        double lag = 0;
        double[] area = body.segmentAreas();
        for (int s = 0; s < S; s++) {
            lag += area[s] * y[SKIN + s] / body.bodyArea();
        }
        y[sleep + 2] = lag;
        return y;
    }

    private void settle(int p, double[] y) {
        int last = node(p, chainLength[p] - 1);
        double resistance = 1.0 / outer[last];
        for (int k = 0; k < chainLength[p]; k++) {
            resistance += 1.0 / inner[node(p, k)];
        }
        double skin = y[SKIN + segmentOf[p]];
        double flux = (skin - outerCelsius[last]) / resistance;
        double t = skin;
        for (int k = 0; k < chainLength[p]; k++) {
            t -= flux / inner[node(p, k)];
            y[node(p, k)] = t;
        }
    }

    /** Liquid and ice in each piece worn [kg]; empty when water is not followed. */
    Map<String, Double> waterByPiece() {
        Map<String, Double> sums = new HashMap<>();
        if (!wet) {
            return sums;
        }
        for (int p = 0; p < patches; p++) {
            for (int k = 0; k < chains[p].elements; k++) {
                int i = node(p, k);
                if (water.mass[i] > 0) {
                    sums.merge(piece(p, k), water.liquid[i] + water.ice[i], Double::sum);
                }
            }
        }
        return sums;
    }

    /** Garment id of an element. */
    String piece(int p, int k) {
        return stacks[p].layerIds()[chains[p].layer[k]];
    }

    /** Sweat of the whole body at the last look [kg/s]; 0 when water is not followed. */
    double sweatRate() {
        return sweatRate;
    }

    /** Heat stored in clothing, its water and the pad, from 0 degC and liquid [J]. */
    double clothingStore(double[] y) {
        double sum = water.heat();
        for (int i = Body.NODES; i < nodes; i++) {
            if (isCloth[i]) {
                sum += capacity[i] * y[i];
            }
        }
        return sum;
    }

    /** Heat stored in the core nodes, from 0 degC [J]. */
    double coreStore(double[] y) {
        double sum = 0;
        for (int i = 0; i < Body.NODES; i++) {
            if (Body.isCoreNode(i)) {
                sum += capacity[i] * y[i];
            }
        }
        return sum;
    }

    /** Heat stored in the body outside the core, from 0 degC [J]. */
    double shellStore(double[] y) {
        double sum = 0;
        for (int i = 0; i < Body.NODES; i++) {
            if (!Body.isCoreNode(i)) {
                sum += capacity[i] * y[i];
            }
        }
        return sum;
    }

    /** True when part of the skin of a segment's zone is bare to the air. */
    boolean hasBare(Zone zone) {
        for (PatchStack s : stacks) {
            if (s.zone() == zone && s.layers() == 0 && !s.contact()) {
                return true;
            }
        }
        return false;
    }
}
