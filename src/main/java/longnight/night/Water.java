package longnight.night;

import java.util.Arrays;
import longnight.air.SaturationVapour;
import longnight.clothing.WaterClass;
import longnight.clothing.law.WaterHold;
import org.jspecify.annotations.Nullable;

/**
 * Water in the cloth of one network: bound, liquid and ice at every cloth node, vapour that moves between them, condenses,
 * freezes, melts and dries.
 *
 * <p>Once per interval the chain over each patch is solved for vapour pressures and end temperatures together (Newton; a
 * node holds water at the end and is saturated, or gives up all it has), with the heat that the nodes store and the skin as it is. What comes out, water moved
 * and heat set free, is then held constant while the heat steps run through the interval, so that every joule and every gram
 * is booked once. Store changes are exact: what a chain gains is what enters from the skin and from outside less what leaves.
 *
 * <p>Heat of water is counted from liquid water: vapour carries the latent heat, ice lacks the heat of fusion, bound water
 * lacks a constant heat of sorption.
 *
 * <p><b>Sources.</b> Latent heat 2.45 MJ/kg, fusion 0.334 MJ/kg (textbook, near 20 and 0 degC); mean heat of sorption 0.25
 * MJ/kg (Morton and Hearle, from memory, near 65 % humidity). Skin's resistance to insensible vapour 2.0e9 Pa m2 s/kg:
 * engineering estimate, gives 10 to 13 g/h over the whole body. Melting and freezing 60 W/(m2 K): engineering estimate.
 */
final class Water {

    static final double LATENT = 2.45e6;
    static final double FUSION = 3.34e5;
    static final double SORPTION = 2.5e5;
    /** Resistance of the skin to insensible vapour [Pa m2 s/kg]. */
    static final double SKIN = 2.0e9;
    /** Evaporative resistance to vapour resistance [J/kg]: the latent heat at skin temperature of the clothing standards. */
    static final double PER_EVAPORATIVE = 2.43e6;

    private static final double MELTING = 60.0;
    private static final double NOTHING = 1e-12;
    private static final int PASSES = 40;
    /** Passes that take the whole Newton step; later ones take half of it. */
    private static final int UNDAMPED = 12;
    /** A pass that moves no temperature by more than this [K], and no pressure by more than that over {@link #PASCAL}. */
    private static final double SETTLED = 1e-3;

    private static final double PASCAL = 1e-2;
    /** Latent heat over gas constant of vapour [K], for slopes of saturation in Newton's method. */
    private static final double CLAPEYRON_WATER = 5380;

    private static final double CLAPEYRON_ICE = 6140;
    private static final double KELVIN = 273.15;

    static long CALLS, TOTAL, FAILS; // DEBUG
    final int patches;
    final int[] length;
    final int[] levelStart;
    final double[] area;
    final double[] liquid;
    final double[] ice;
    final double[] bound;
    /** Dry mass that binds and holds [kg], what it is, and how fast it binds [s]. */
    final double[] mass;

    final @Nullable WaterClass[] kind;
    final double[] bindingTime;
    /** Vapour conductance towards the next inner node (skin for level 0) and from the last node to the air [kg/(s Pa)]. */
    final double[] inward;

    final double[] toAir;
    /** Conductance from wet skin to the innermost element [kg/(s Pa)], not less than the dry one. */
    final double[] wetSkin;
    /** Heat set free at each node [W] during the interval. */
    final double[] source;
    /** Vapour from the skin into, and out of, each patch's chain during the interval [kg/s]. */
    final double[] fromSkin;

    final double[] toOutside;

    /** Totals since dusk [kg]: vapour from the skin, vapour to the air, water taken in from outside, water lost as drip. */
    double skinTotal;

    double airTotal;
    double outsideTotal;
    double dripTotal;

    private final double[] p = new double[64];
    private final double[] t = new double[64];
    private final double[] saturation = new double[64];
    private final double[] slope = new double[64];
    private final double[] deposit = new double[64];
    private final double[] binding = new double[64];
    private final double[] melted = new double[64];
    private final double[] meltedSlope = new double[64];
    private final double[] bindingByPressure = new double[64];
    private final double[] bindingByTemperature = new double[64];
    private final double[] stepT = new double[64];
    private final double[] stepP = new double[64];
    private final double[] carryTT = new double[64];
    private final double[] carryTP = new double[64];
    private final double[] carryPT = new double[64];
    private final double[] carryPP = new double[64];
    private final boolean[] wet = new boolean[64];
    private final double[] pressure;

    Water(int patches, int[] length, int[] levelStart, int nodes, double[] area) {
        this.patches = patches;
        this.length = length;
        this.levelStart = levelStart;
        this.area = area;
        liquid = new double[nodes];
        ice = new double[nodes];
        bound = new double[nodes];
        mass = new double[nodes];
        kind = new WaterClass[nodes];
        bindingTime = new double[nodes];
        Arrays.fill(bindingTime, 1200);
        inward = new double[nodes];
        toAir = new double[patches];
        wetSkin = new double[patches];
        source = new double[nodes];
        fromSkin = new double[patches];
        toOutside = new double[patches];
        pressure = new double[nodes];
    }

    /** Water of all kinds in all chains [kg]. */
    double held() {
        double sum = 0;
        for (int i = 0; i < liquid.length; i++) {
            sum += liquid[i] + ice[i] + bound[i];
        }
        return sum;
    }

    /** Heat of the water in all chains, from liquid [J]. */
    double heat() {
        double sum = 0;
        for (int i = 0; i < ice.length; i++) {
            sum -= FUSION * ice[i] + SORPTION * bound[i];
        }
        return sum;
    }

    private double regain(int i, double humidity) {
        WaterClass k = kind[i];
        return k == null ? 0.0 : k.regain(humidity);
    }

    /** Puts the bound water in balance with a steady flow of vapour through dry cloth at the temperatures given. */
    void balance(double[] y, double[] skinPressure, double airPressure) {
        for (int patch = 0; patch < patches; patch++) {
            int n = length[patch];
            if (n == 0) {
                continue;
            }
            double resistance = 1.0 / toAir[patch];
            for (int k = 0; k < n; k++) {
                resistance += 1.0 / inward[levelStart[k] + patch];
            }
            double flux = (skinPressure[patch] - airPressure) / resistance;
            double here = skinPressure[patch];
            for (int k = 0; k < n; k++) {
                int i = levelStart[k] + patch;
                here -= flux / inward[i];
                double full = SaturationVapour.stable(y[i] + KELVIN);
                pressure[i] = Math.min(here, full);
                bound[i] = mass[i] * regain(i, pressure[i] / full);
            }
        }
    }

    /**
     * One interval of one patch.
     *
     * @param patch        which
     * @param dt           length [s]
     * @param y            state at its start [degC]
     * @param skin         skin temperature [degC]
     * @param skinPressure vapour pressure at the skin [Pa]
     * @param airPressure  vapour pressure of the air [Pa]
     * @param sweat        liquid sweat under the patch [kg/s]: it evaporates from the skin as far as vapour gets away, the rest
     *     goes into the innermost cloth
     * @param inner        heat conductance towards the next inner node [W/K]
     * @param beyond       heat conductance from the last element to what lies outside it: the environment, pad or ground [W/K]
     * @param beyondCelsius temperature of that [degC]
     * @param capacity     heat capacity [J/K]
     */
    void advance(
            int patch,
            double dt,
            double[] y,
            double skin,
            double skinPressure,
            double airPressure,
            double sweat,
            double[] inner,
            double beyond,
            double beyondCelsius,
            double[] capacity) {
        int n = length[patch];
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            t[k] = y[i];
            p[k] = pressure[i];
            wet[k] = store(i) > NOTHING;
        }
        CALLS++;
        for (int pass = 0; pass < PASSES; pass++) {
            TOTAL++;
            if (pass == PASSES - 1) FAILS++;
            boolean changed = newton(
                    patch,
                    n,
                    dt,
                    y,
                    skin,
                    skinPressure,
                    airPressure,
                    sweat,
                    inner,
                    beyond,
                    beyondCelsius,
                    capacity,
                    pass);
            if (!changed) {
                break;
            }
        }
        evaluate(patch, n, dt, y, skinPressure, airPressure, sweat);
        double into = fromSkin(patch, skinPressure - p[0], sweat);
        double evaporated = into - inward[levelStart[0] + patch] * (skinPressure - p[0]);
        double drip = Math.max(0.0, sweat - evaporated) * dt;
        liquid[levelStart[0] + patch] += drip;
        skinTotal += drip;
        double kept = 0;
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            boolean frozen = isIce(i, y[i]);
            double amount = Math.max(deposit[k] * dt, -store(i));
            // what the one phase has not is taken from the other
            double asIce = frozen ? Math.max(amount, -ice[i]) : Math.min(0.0, amount + liquid[i]);
            ice[i] += asIce;
            liquid[i] += amount - asIce;
            double bind = Math.max(binding[k] * dt, -bound[i]);
            bound[i] += bind;
            double melt = Math.min(ice[i], Math.max(-liquid[i], melted[k] * dt));
            ice[i] -= melt;
            liquid[i] += melt;
            pressure[i] = p[k];
            kept += amount + bind;
            source[i] += (LATENT * (amount + bind) + FUSION * asIce + SORPTION * bind - FUSION * melt) / dt;
        }
        fromSkin[patch] = into;
        toOutside[patch] = into - kept / dt;
        skinTotal += into * dt;
        airTotal += toOutside[patch] * dt;
    }

    /** Whether vapour meets ice at a node: it is below freezing, or only ice is there. */
    private boolean isIce(int i, double celsius) {
        return celsius < 0 ? liquid[i] <= NOTHING || ice[i] > NOTHING : ice[i] > NOTHING && liquid[i] <= NOTHING;
    }

    /** Vapour from the skin into the innermost element at a pressure difference, sweat that dries included [kg/s]. */
    private double fromSkin(int patch, double gradient, double sweat) {
        double dry = inward[levelStart[0] + patch];
        return dry * gradient + Math.min(sweat, Math.max(0.0, (wetSkin[patch] - dry) * gradient));
    }

    private double fromSkinSlope(int patch, double gradient, double sweat) {
        double dry = inward[levelStart[0] + patch];
        double more = (wetSkin[patch] - dry) * gradient;
        return more > 0 && more < sweat ? wetSkin[patch] : dry;
    }

    /** Saturation, binding and melting with their slopes at the temperatures and pressures as they stand. */
    private void laws(int patch, int n, double dt) {
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double kelvin = t[k] + KELVIN;
            saturation[k] = SaturationVapour.stable(kelvin);
            slope[k] = saturation[k] * (t[k] < 0 ? CLAPEYRON_ICE : CLAPEYRON_WATER) / (kelvin * kelvin);
            binding[k] = 0;
            bindingByPressure[k] = 0;
            bindingByTemperature[k] = 0;
            if (mass[i] > 0 && kind[i] != null) {
                double rate = 1.0 / (bindingTime[i] + dt);
                double humidity = Math.min(1.0, Math.max(0.0, p[k] / saturation[k]));
                double here = regain(i, humidity);
                binding[k] = rate * (mass[i] * here - bound[i]);
                if (p[k] < saturation[k]) {
                    double near = humidity > 0.5 ? humidity - 0.01 : humidity + 0.01;
                    double steep = rate * mass[i] * (regain(i, near) - here) / (near - humidity) / saturation[k];
                    bindingByPressure[k] = steep;
                    bindingByTemperature[k] = -steep * humidity * slope[k];
                }
            }
            double rate = MELTING * area[patch] * t[k] / FUSION;
            double most = ice[i] / dt;
            double least = -liquid[i] / dt;
            melted[k] = Math.min(most, Math.max(least, rate));
            meltedSlope[k] = rate < most && rate > least ? MELTING * area[patch] / FUSION : 0.0;
        }
    }

    /** Net inflow of vapour of a node [kg/s]. */
    private double inflow(int patch, int n, int k, double skinPressure, double airPressure, double sweat) {
        double in = k == 0
                ? fromSkin(patch, skinPressure - p[0], sweat)
                : inward[levelStart[k] + patch] * (p[k - 1] - p[k]);
        double out =
                k + 1 < n ? inward[levelStart[k + 1] + patch] * (p[k] - p[k + 1]) : toAir[patch] * (p[k] - airPressure);
        return in - out;
    }

    /** What each node keeps, with everything as it stands. */
    private void evaluate(
            int patch, int n, double dt, double[] y, double skinPressure, double airPressure, double sweat) {
        laws(patch, n, dt);
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            deposit[k] = wet[k] ? inflow(patch, n, k, skinPressure, airPressure, sweat) - binding[k] : -store(i) / dt;
        }
    }

    /**
     * One Newton pass over temperatures and pressures of a patch together: the two rows of every node make a chain of two by
     * two blocks. A node either holds water at its end and is saturated, or gives up all it has.
     *
     * @return whether anything still moved
     */
    private boolean newton(
            int patch,
            int n,
            double dt,
            double[] y,
            double skin,
            double skinPressure,
            double airPressure,
            double sweat,
            double[] inner,
            double beyond,
            double beyondCelsius,
            double[] capacity,
            int pass) {
        laws(patch, n, dt);
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            boolean last = k + 1 == n;
            double heatIn = inner[i];
            double heatOut = last ? beyond : inner[levelStart[k + 1] + patch];
            double vapourIn = k == 0 ? fromSkinSlope(patch, skinPressure - p[0], sweat) : inward[i];
            double vapourOut = last ? toAir[patch] : inward[levelStart[k + 1] + patch];
            double net = inflow(patch, n, k, skinPressure, airPressure, sweat);
            double latent = LATENT + (isIce(i, y[i]) ? FUSION : 0.0);
            double set = wet[k]
                    ? latent * net + (LATENT + SORPTION - latent) * binding[k]
                    : (LATENT + SORPTION) * binding[k] - latent * store(i) / dt;
            double bound = LATENT + SORPTION - (wet[k] ? latent : 0.0);
            double heat = capacity[i] / dt * (y[i] - t[k])
                    + heatIn * ((k == 0 ? skin : t[k - 1]) - t[k])
                    - heatOut * (t[k] - (last ? beyondCelsius : t[k + 1]))
                    + set
                    - FUSION * melted[k];
            double a = capacity[i] / dt + heatIn + heatOut - bound * bindingByTemperature[k] + FUSION * meltedSlope[k];
            double b = (wet[k] ? latent * (vapourIn + vapourOut) : 0.0) - bound * bindingByPressure[k];
            double c;
            double d;
            double vapour;
            if (wet[k]) {
                c = -slope[k];
                d = 1.0;
                vapour = saturation[k] - p[k];
            } else {
                c = bindingByTemperature[k];
                d = vapourIn + vapourOut + bindingByPressure[k];
                vapour = net - binding[k] + store(i) / dt;
            }
            if (k > 0) {
                // off-diagonal block to the node inside: heat by temperature, heat by pressure, vapour by pressure
                double low = -heatIn;
                double lowVapour = wet[k] ? -latent * vapourIn : 0.0;
                double cross = wet[k] ? 0.0 : -vapourIn;
                heat -= low * stepT[k - 1] + lowVapour * stepP[k - 1];
                vapour -= cross * stepP[k - 1];
                a -= low * carryTT[k - 1] + lowVapour * carryPT[k - 1];
                b -= low * carryTP[k - 1] + lowVapour * carryPP[k - 1];
                c -= cross * carryPT[k - 1];
                d -= cross * carryPP[k - 1];
            }
            double determinant = 1.0 / (a * d - b * c);
            double up = last ? 0.0 : -heatOut;
            double upVapour = last || !wet[k] ? 0.0 : -latent * vapourOut;
            double upCross = last || wet[k] ? 0.0 : -vapourOut;
            carryTT[k] = determinant * d * up;
            carryTP[k] = determinant * (d * upVapour - b * upCross);
            carryPT[k] = determinant * -c * up;
            carryPP[k] = determinant * (a * upCross - c * upVapour);
            stepT[k] = determinant * (d * heat - b * vapour);
            stepP[k] = determinant * (a * vapour - c * heat);
        }
        double moved = 0;
        double share = pass < UNDAMPED ? 1.0 : 0.5;
        for (int k = n - 1; k >= 0; k--) {
            if (k + 1 < n) {
                stepT[k] -= carryTT[k] * stepT[k + 1] + carryTP[k] * stepP[k + 1];
                stepP[k] -= carryPT[k] * stepT[k + 1] + carryPP[k] * stepP[k + 1];
            }
            moved = Math.max(moved, Math.max(Math.abs(stepT[k]), PASCAL * Math.abs(stepP[k])));
        }
        for (int k = 0; k < n; k++) {
            t[k] += share * stepT[k];
            p[k] = Math.max(0.0, p[k] + share * stepP[k]);
        }
        boolean changed = moved > SETTLED;
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double most = saturation[k] + slope[k] * share * stepT[k];
            if (wet[k]) {
                double kept = inflow(patch, n, k, skinPressure, airPressure, sweat) - binding[k];
                if (kept * dt < -store(i)) {
                    wet[k] = false;
                    changed = true;
                }
            } else if (p[k] > most * (1 + 1e-9)) {
                wet[k] = true;
                changed = true;
            }
        }
        return changed;
    }

    /** No heat set free yet in this interval. */
    void clearSource(int patch) {
        for (int k = 0; k < length[patch]; k++) {
            source[levelStart[k] + patch] = 0;
        }
    }

    /** Heat given to one element [W] in this interval. */
    void give(int patch, int element, double power) {
        source[levelStart[element] + patch] += power;
    }

    /** True when liquid lies anywhere over the patch. */
    boolean hasLiquid(int patch) {
        for (int k = 0; k < length[patch]; k++) {
            if (liquid[levelStart[k] + patch] > NOTHING) {
                return true;
            }
        }
        return false;
    }

    /** Liquid creeps between neighbours and drips from what is over-full. */
    void creep(int patch, double dt, double[] hold, double patchArea, double factor, double dripTime) {
        int n = length[patch];
        for (int k = 0; k + 1 < n; k++) {
            int i = levelStart[k] + patch;
            int j = levelStart[k + 1] + patch;
            WaterClass a = kind[i];
            WaterClass b = kind[j];
            double holdA = hold[k] * patchArea;
            double holdB = hold[k + 1] * patchArea;
            if (a == null || b == null || holdA <= 0 || holdB <= 0) {
                continue;
            }
            double flow = factor
                    * patchArea
                    * dt
                    * WaterHold.wicking(liquid[i] / holdA, liquid[j] / holdB, a.wicking(), b.wicking());
            // never past balance
            double balance = (liquid[i] * holdB - liquid[j] * holdA) / (holdA + holdB);
            flow = flow > 0 ? Math.min(flow, Math.max(0.0, balance)) : Math.max(flow, Math.min(0.0, balance));
            liquid[i] -= flow;
            liquid[j] += flow;
        }
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double over = WaterHold.excess(liquid[i], hold[k] * patchArea);
            if (over > 0) {
                double m = over * -StrictMath.expm1(-dt / dripTime);
                liquid[i] -= m;
                dripTotal += m;
            }
        }
    }

    private double store(int i) {
        return liquid[i] + ice[i];
    }
}
