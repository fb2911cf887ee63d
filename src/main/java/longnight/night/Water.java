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
 * <p>Once per interval the chain over each patch is solved for vapour pressures and end temperatures together (Newton, three
 * node states: dry, wet, running out), with the heat that the nodes store and the skin as it is. What comes out, water moved
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
    private static final double SETTLED = 1e-3;
    private static final double KELVIN = 273.15;

    private enum State {
        DRY,
        WET,
        RUNNING_OUT
    }

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
    private final double[] bindingSlope = new double[64];
    private final double[] melted = new double[64];
    private final boolean[] meltFixed = new boolean[64];
    private final double[] diagonal = new double[64];
    private final double[] upper = new double[64];
    private final double[] right = new double[64];
    private final State[] state = new State[64];
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
     * @param outer        heat conductance to the environment [W/K]
     * @param outerCelsius its temperature [degC]
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
            double[] outer,
            double[] outerCelsius,
            double[] capacity) {
        int n = length[patch];
        skinIsWet = false;
        sweatHere = sweat;
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            t[k] = y[i];
            p[k] = pressure[i];
            boolean wet = liquid[i] + ice[i] > NOTHING;
            state[k] = wet ? State.WET : State.DRY;
            meltFixed[k] = false;
            melted[k] = 0;
        }
        for (int pass = 0; pass < PASSES; pass++) {
            boolean changed = solveVapour(patch, n, dt, skinPressure, airPressure);
            double moved = solveHeat(patch, n, dt, y, skin, inner, outer, outerCelsius, capacity);
            if (!changed && moved < SETTLED) {
                break;
            }
        }
        double gradient = skinPressure - p[0];
        double dry = inward[levelStart[0] + patch] * gradient;
        double into = sweat > 0
                ? dry + Math.min(sweat, Math.max(0.0, (wetSkin[patch] - inward[levelStart[0] + patch]) * gradient))
                : dry;
        double drip = Math.max(0.0, sweat - (into - dry)) * dt;
        liquid[levelStart[0] + patch] += drip;
        skinTotal += drip;
        double kept = 0;
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            boolean frozen = isIce(i, y[i]);
            double store = frozen ? ice[i] : liquid[i];
            double amount = Math.max(deposit[k] * dt, -store);
            double bind = Math.max(binding[k] * dt, -bound[i]);
            if (frozen) {
                ice[i] = store + amount;
            } else {
                liquid[i] = store + amount;
            }
            bound[i] += bind;
            double melt = Math.min(ice[i], Math.max(-liquid[i], melted[k] * dt));
            ice[i] -= melt;
            liquid[i] += melt;
            pressure[i] = p[k];
            kept += amount + bind;
            source[i] += (LATENT * (amount + bind) + (frozen ? FUSION * amount : 0.0) + SORPTION * bind - FUSION * melt)
                    / dt;
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

    private boolean solveVapour(int patch, int n, double dt, double skinPressure, double airPressure) {
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double kelvin = t[k] + KELVIN;
            saturation[k] = SaturationVapour.stable(kelvin);
            slope[k] = SaturationVapour.stable(kelvin + 0.01) / 0.01 - saturation[k] / 0.01;
            double rate = mass[i] / (bindingTime[i] + dt);
            double humidity = Math.min(1.0, Math.max(0.0, p[k] / saturation[k]));
            double here = regain(i, humidity);
            if (rate > 0 && here > 0) {
                double near = humidity > 0.5 ? humidity - 0.01 : humidity + 0.01;
                binding[k] = here * rate - bound[i] / (bindingTime[i] + dt);
                bindingSlope[k] = (regain(i, near) - here) / (near - humidity) * rate / saturation[k];
            } else {
                binding[k] = 0;
                bindingSlope[k] = 0;
            }
        }
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double in = k == 0 && skinIsWet ? wetSkin[patch] : inward[i];
            double out = k + 1 < n ? inward[levelStart[k + 1] + patch] : toAir[patch];
            double below = k == 0 ? skinPressure : 0.0;
            if (state[k] == State.WET) {
                diagonal[k] = 1.0;
                upper[k] = 0.0;
                right[k] = saturation[k];
            } else {
                double release = state[k] == State.RUNNING_OUT ? store(i) / dt : 0.0;
                diagonal[k] = in + out + bindingSlope[k];
                upper[k] = -out;
                right[k] = release
                        - binding[k]
                        + bindingSlope[k] * p[k]
                        + in * below
                        + (k == 0 && !skinIsWet ? sweatHere : 0.0);
                if (k == n - 1) {
                    upper[k] = 0.0;
                    right[k] += out * airPressure;
                }
                if (k > 0) {
                    double factor = -in / diagonal[k - 1];
                    diagonal[k] -= factor * upper[k - 1];
                    right[k] -= factor * right[k - 1];
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double next = (right[k] - (k + 1 < n ? upper[k] * p[k + 1] : 0.0)) / diagonal[k];
            binding[k] += bindingSlope[k] * (next - p[k]);
            p[k] = next;
        }
        boolean changed = false;
        if (sweatHere > 0) {
            boolean shouldBeWet = sweatHere > (wetSkin[patch] - inward[levelStart[0] + patch]) * (skinPressure - p[0]);
            changed = shouldBeWet != skinIsWet;
            skinIsWet = shouldBeWet;
        }
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double in = k == 0 ? fromSkinAt(patch, skinPressure - p[0]) : inward[i] * (p[k - 1] - p[k]);
            double out = k + 1 < n
                    ? inward[levelStart[k + 1] + patch] * (p[k] - p[k + 1])
                    : toAir[patch] * (p[k] - airPressure);
            switch (state[k]) {
                case WET -> {
                    deposit[k] = in - out - binding[k];
                    if (deposit[k] * dt < -store(i)) {
                        state[k] = store(i) > NOTHING ? State.RUNNING_OUT : State.DRY;
                        changed = true;
                    }
                }
                case RUNNING_OUT -> {
                    deposit[k] = -store(i) / dt;
                    if (p[k] > saturation[k]) {
                        state[k] = State.WET;
                        changed = true;
                    }
                }
                default -> {
                    deposit[k] = 0;
                    if (p[k] > saturation[k] * (1 + 1e-9)) {
                        state[k] = State.WET;
                        changed = true;
                    }
                }
            }
        }
        return changed;
    }

    /** Vapour from the skin into the innermost element at a pressure difference [kg/s]. */
    private double fromSkinAt(int patch, double gradient) {
        double dry = inward[levelStart[0] + patch];
        return skinIsWet ? wetSkin[patch] * gradient : dry * gradient + sweatHere;
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
        return ice[i] > NOTHING && liquid[i] <= NOTHING
                ? ice[i]
                : liquid[i] > NOTHING && ice[i] <= NOTHING ? liquid[i] : Math.max(liquid[i], ice[i]);
    }

    private double solveHeat(
            int patch,
            int n,
            double dt,
            double[] y,
            double skin,
            double[] inner,
            double[] outer,
            double[] outerCelsius,
            double[] capacity) {
        double[] lower = heatLower;
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            double in = inner[i];
            double out = k + 1 < n ? inner[levelStart[k + 1] + patch] : outer[i];
            boolean frozen = isIce(i, y[i]);
            double latent = LATENT + (frozen ? FUSION : 0.0);
            double d = capacity[i] / dt + in + out;
            double r = capacity[i] / dt * y[i]
                    + latent * deposit[k]
                    + (LATENT + SORPTION) * binding[k]
                    + (k == 0 ? in * skin : 0.0)
                    + (k + 1 < n ? 0.0 : out * outerCelsius[i]);
            double lo = k == 0 ? 0.0 : -in;
            double up = k + 1 < n ? -out : 0.0;
            if (state[k] == State.WET) {
                double vin = inward[i];
                double vout = k + 1 < n ? inward[levelStart[k + 1] + patch] : toAir[patch];
                double own = latent * (vin + vout) * slope[k];
                d += own;
                r += own * t[k];
                if (k > 0 && state[k - 1] == State.WET) {
                    double link = latent * vin * slope[k - 1];
                    lo -= link;
                    r -= link * t[k - 1];
                }
                if (k + 1 < n && state[k + 1] == State.WET) {
                    double link = latent * vout * slope[k + 1];
                    up -= link;
                    r -= link * t[k + 1];
                }
            }
            boolean melting = t[k] > 0 ? ice[i] > NOTHING : liquid[i] > NOTHING;
            if (meltFixed[k]) {
                r -= FUSION * melted[k];
            } else if (melting) {
                double c = MELTING * area[patch];
                d += c;
            }
            diagonal[k] = d;
            lower[k] = lo;
            upper[k] = up;
            right[k] = r;
        }
        for (int k = 1; k < n; k++) {
            double factor = lower[k] / diagonal[k - 1];
            diagonal[k] -= factor * upper[k - 1];
            right[k] -= factor * right[k - 1];
        }
        double moved = 0;
        for (int k = n - 1; k >= 0; k--) {
            double next = (right[k] - (k + 1 < n ? upper[k] * t[k + 1] : 0.0)) / diagonal[k];
            moved = Math.max(moved, Math.abs(next - t[k]));
            t[k] = next;
        }
        for (int k = 0; k < n; k++) {
            int i = levelStart[k] + patch;
            if (!meltFixed[k]) {
                boolean melting = t[k] > 0 ? ice[i] > NOTHING : liquid[i] > NOTHING;
                double rate = melting ? MELTING * area[patch] * t[k] / FUSION : 0.0;
                double most = ice[i] / dt;
                double least = -liquid[i] / dt;
                if (rate > most || rate < least) {
                    meltFixed[k] = true;
                    rate = rate > most ? most : least;
                    moved = 1;
                }
                melted[k] = rate;
            }
        }
        return moved;
    }

    private final double[] heatLower = new double[64];
    private boolean skinIsWet;
    private double sweatHere;
}
